#include "engine/record/conflict.h"

#include <algorithm>

namespace hemline {

Text Conflict::what() const {
    switch (apart) {
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
                "A tablet was copied or put back from a backup: its number {1} stands for {2} "
                "events, about {3}. All of them count; put this away when you have looked.",
                print_event_id(sides.front().id), sides.size(), joined(about, ", "));
    }
    return apart_words(thing);
}

bool Conflict::holds(std::string_view edge) const {
    if (thing.subject == Subject::plan) {
        return std::find(edges.begin(), edges.end(), edge) != edges.end();
    }
    return thing.subject == Subject::rule || (is_on_edge(thing) && thing.name == edge);
}

}  // namespace hemline
