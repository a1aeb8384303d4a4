#include "engine/handover/plain_names.h"

#include <algorithm>
#include <map>
#include <memory>

#include "engine/trim/practice.h"
#include "engine/words/path_text.h"

namespace hemline {

namespace {

using ById = std::map<EventId, const Event*>;

Text offcut_words(const ById& by_id, EventId id) {
    const auto found = by_id.find(id);
    const auto* const cut =
        found == by_id.end() ? nullptr : std::get_if<PieceCut>(&found->second->fact);
    return cut == nullptr ? say("a piece that is not here")
                          : say("piece {1}", cut->edge + "/" + std::to_string(cut->piece));
}

/// A strike of a strike is not followed any further.
Text event_words(EventId id, const Names& names) {
    const Fact* const fact = names.event(id);
    if (fact == nullptr) {
        return say("something that is not here");
    }
    return struck_by(*fact) ? say("something crossed out before") : describe(*fact, names);
}

constexpr std::size_t device_digits = 16;
constexpr std::string_view hex = "0123456789abcdef", digits = "0123456789";

/// How many bytes from `at` on are an event's id; 0: none begins there.
std::size_t id_at(std::string_view text, std::size_t at) {
    const bool inside = at > 0 && hex.find(text[at - 1]) != std::string_view::npos;
    const std::size_t dash = std::min(text.find_first_not_of(hex, at), text.size());
    if (inside || dash - at != device_digits || dash == text.size() || text[dash] != '-') {
        return 0;
    }
    const std::size_t end = std::min(text.find_first_not_of(digits, dash + 1), text.size());
    return parse_event_id(text.substr(at, end - at)) ? end - at : 0;
}

}  // namespace

Names plain_names(std::span<const Event> events) {
    const auto by_id = std::make_shared<ById>();
    for (const Event& event : events) {
        by_id->emplace(event.id, &event);
    }
    Names names;
    names.step = [](const StepSaid& done) {
        return done.piece > 0 ? glued(spaced(done.step), " ", done.piece) : spaced(done.step);
    };
    names.trim = [](const std::string& trim) { return spaced(trim); };
    names.rule = [](const std::string& key) { return spoken_rule(key); };
    names.offcut = [by_id](EventId id) { return offcut_words(*by_id, id); };
    names.event = [by_id](EventId id) {
        const auto found = by_id->find(id);
        return found == by_id->end() ? nullptr : &found->second->fact;
    };
    return names;
}

PageWords without_ids(const PageWords& words, const Names& names) {
    if (!names.event) {
        return words;
    }
    return {words.language, [words, names](const Text& text) {
                const std::string whole = words.in_words(text);
                std::string plain;
                for (std::size_t at = 0; at < whole.size();) {
                    const std::size_t size = id_at(whole, at);
                    plain += size == 0 ? whole.substr(at, 1)
                                       : "\"" +
                                             words.in_words(event_words(
                                                 *parse_event_id(whole.substr(at, size)), names)) +
                                             "\"";
                    at += std::max<std::size_t>(1, size);
                }
                return plain;
            }};
}

}  // namespace hemline
