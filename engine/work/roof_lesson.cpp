#include "engine/work/roof_lesson.h"

#include <algorithm>

#include "engine/body/explaining.h"

namespace hemline {

namespace {

constexpr std::size_t told_most = 3;

Text other_word(const Explanation& one, const BodyOnJob& body) {
    return one.pitch
               ? say("a pitch of {1}, not {2}", one.pitch_instead, *one.pitch)
               : say("side {1} {2} long", body.sides[one.sides.front()].id, one.length_instead);
}

}  // namespace

Text roof_lesson(const Job& job, const BodyOnJob& body) {
    std::vector<EdgeRead> read;
    std::vector<Text> names;
    for (const EdgeOnBody& edge : body.edges) {
        const EdgeWork* const work = edge.worked.sides.size() > 1 && edge.edges.size() == 1
                                         ? job.find(edge.edges.front())
                                         : nullptr;
        const auto agreed = work == nullptr ? std::nullopt : work->length(job.practice);
        if (agreed) {
            read.push_back({edge.worked, *agreed});
            names.emplace_back(work->edge.id);
        }
    }
    if (read.size() < 2 || !body.worked) {
        return {};
    }
    const auto explained = what_explains(bodies_of(body), job.practice.tape, read);
    if (explained.empty()) {
        return {};
    }
    std::vector<Text> words;
    for (std::size_t i = 0; i < std::min(explained.size(), told_most); ++i) {
        words.push_back(other_word(explained[i], body));
    }
    return words.size() == 1
               ? say("{1} agree on {2}. Read that again.", joined(names, ", "), words.front())
               : say("{1} agree on one of these: {2}. Read them again.", joined(names, ", "),
                     joined(words, "; "));
}

}  // namespace hemline
