// The words of a procedures file, each with its meaning.
#include "engine/work/procedure_words.h"
#include "engine/words/result.h"

#include <algorithm>
#include <utility>

namespace hemline {
namespace {

constexpr std::pair<std::string_view, Each> each_words[] = {
    {"edge", Each::edge},
    {"wrap_piece", Each::wrap_piece},
    {"cleat_piece", Each::cleat_piece},
    {"trim_piece", Each::trim_piece},
    {"trim_lap", Each::trim_lap},
    {"last_trim_piece", Each::last_trim_piece},
    {"sent_back", Each::sent_back},
    {"fifth_seam", Each::fifth_seam},
    {"cut_pan", Each::cut_pan},
};

constexpr std::pair<std::string_view, Asks> asks_words[] = {
    {"done", Asks::done},     {"length", Asks::length}, {"count", Asks::count},
    {"seen", Asks::seen},     {"cut", Asks::cut},       {"remainder", Asks::remainder},
    {"tick", Asks::tick},     {"side", Asks::side},     {"safe", Asks::safe},
    {"prompt", Asks::prompt},
};

constexpr std::pair<std::string_view, Only> only_words[] = {
    {"under", Only::under},
    {"over", Only::over},
    {"pinned", Only::pinned},
    {"free", Only::free},
    {"boot", Only::boot},
    {"curb", Only::curb},
    {"cricket", Only::cricket},
    {"narrow", Only::narrow},
    {"strip", Only::strip},
    {"bare", Only::bare},
    {"two_pitches", Only::two_pitches},
    {"one_pitch", Only::one_pitch},
    {"up_the_slope", Only::up_the_slope},
    {"slanted", Only::slanted},
    {"on_plane", Only::on_plane},
};

constexpr std::pair<std::string_view, Length Practice::*> practice_lengths[] = {
    {"stock", &Practice::stock},
    {"lap", &Practice::lap},
    {"lap_valley", &Practice::lap_valley},
    {"turn_up", &Practice::turn_up},
    {"kick_out", &Practice::kick_out},
    {"apron_past", &Practice::apron_past},
    {"wall_lap", &Practice::wall_lap},
    {"sliver", &Practice::sliver},
    {"cleat_clear", &Practice::cleat_clear},
    {"hem_notch_clear", &Practice::hem_notch_clear},
    {"bead_gap", &Practice::bead_gap},
    {"bead_width", &Practice::bead_width},
    {"screw_spacing", &Practice::screw_spacing},
    {"screw_margin", &Practice::screw_margin},
    {"hook_gap_most", &Practice::hook_gap_most},
};

template <class Words>
auto meaning_of(const Words& words, std::string_view word)
    -> std::optional<decltype(std::begin(words)->second)> {
    const auto* const found = std::find_if(std::begin(words), std::end(words),
                                           [&](const auto& entry) { return entry.first == word; });
    if (found == std::end(words)) {
        return {};
    }
    return found->second;
}

}  // namespace

std::optional<Each> each_of(std::string_view word) { return meaning_of(each_words, word); }
std::optional<Only> only_of(std::string_view word) { return meaning_of(only_words, word); }
std::optional<Asks> asks_of(std::string_view word) { return meaning_of(asks_words, word); }

TrimRole role_of(Each each) {
    return each == Each::wrap_piece    ? TrimRole::wrap
           : each == Each::cleat_piece ? TrimRole::cleat
                                       : TrimRole::main;
}

std::optional<Length> practice_length(const Practice& practice, std::string_view key) {
    const auto member = meaning_of(practice_lengths, key);
    return member ? std::optional(practice.*(*member)) : std::nullopt;
}

std::optional<Length> length_limit(std::string_view word, const Practice& practice) {
    if (const auto length = practice_length(practice, word)) {
        return length;
    }
    const Result<Length> length = parse_length(word);
    return length ? std::optional(*length) : std::nullopt;
}

std::optional<std::int64_t> count_limit(std::string_view word, const PlannedCounts& planned) {
    if (word == screws_planned) {
        return planned.screws;
    }
    if (word == closures_planned) {
        return planned.closures;
    }
    if (word == rivets_planned) {
        return planned.rivets;
    }
    if (word == strip_screws_planned) {
        return planned.strip_screws;
    }
    if (word == clips_planned) {
        return planned.clips;
    }
    const bool whole =
        !word.empty() && word.size() <= 9 &&
        std::all_of(word.begin(), word.end(), [](char c) { return c >= '0' && c <= '9'; });
    return whole ? std::optional<std::int64_t>(std::stoll(std::string(word))) : std::nullopt;
}

std::vector<std::string> words_in_braces(std::string_view text) {
    std::vector<std::string> words;
    for (std::size_t open = text.find('{'); open != text.npos; open = text.find('{', open)) {
        const std::size_t close = text.find('}', open);
        if (close == text.npos) {
            break;
        }
        words.emplace_back(text.substr(open + 1, close - open - 1));
        open = close;
    }
    return words;
}

Marks marks_of(const Practice& practice) {
    const Length grid = practice.cut_grid;
    if (grid.nm() % millimetres(1).nm() == 0) {
        return Marks::millimetre;
    }
    return grid.nm() % sixteenths(1).nm() == 0 ? Marks::sixteenth : Marks::thirty_second;
}

}  // namespace hemline
