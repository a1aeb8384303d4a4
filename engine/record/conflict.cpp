#include "engine/record/conflict.h"

#include <algorithm>

#include "engine/record/thing_names.h"
#include "engine/words/path_text.h"

namespace hemline {

namespace {

/// What two tablets did, and how to settle it.
Text apart_words(const Thing& thing, const ThingNames& names) {
    if (thing.subject == Subject::piece) {
        return say("Two tablets cut {1}: pick the one that is fitted.", piece_name(thing));
    }
    const bool measured = thing.subject == Subject::reading ||
                          thing.subject == Subject::remainder || thing.subject == Subject::pitch;
    const Text name = name_of(thing, names);
    return measured ? say("Two tablets disagree on {1}: pick one, or measure again.", name)
                    : say("Two tablets disagree on {1}: pick one, or enter it again.", name);
}

}  // namespace

Text Conflict::what() const {
    return what_of(*this, {[](const Thing& one) { return spaced(one.step); },
                           [](const std::string& trim) { return spaced(trim); }});
}

Text what_of(const Conflict& conflict, const ThingNames& names) {
    const Thing& thing = conflict.thing;
    switch (conflict.apart) {
        case Apart::values:
            break;
        case Apart::edge_back:
            return thing.piece > 0
                       ? say("Edge {1} was taken off the job on one tablet, and {2} is cut for it "
                             "on another. It is back: keep it, or undo the cut.",
                             thing.name, piece_name(thing))
                       : say("Edge {1} was taken off the job on one tablet, and metal was counted "
                             "or lost for it on another. It is back: keep it, or undo that.",
                             thing.name);
        case Apart::number_twice:
            return say(
                "A tablet was copied or put back from a backup: under one number of its stand {1} "
                "events, about {2}. All of them count; put this away when you have looked.",
                conflict.sides.size(), joined(conflict.about, ", "));
    }
    return apart_words(thing, names);
}

bool Conflict::holds(std::string_view edge) const {
    if (thing.subject == Subject::plan) {
        return std::find(edges.begin(), edges.end(), edge) != edges.end();
    }
    return thing.subject == Subject::rule || (is_on_edge(thing) && thing.name == edge);
}

}  // namespace hemline
