#include "engine/record/thing.h"

#include <tuple>

namespace hemline {

bool operator<(const Thing& a, const Thing& b) {
    return std::tie(a.subject, a.name, a.role, a.piece, a.step, a.by) <
           std::tie(b.subject, b.name, b.role, b.piece, b.step, b.by);
}

bool is_on_edge(const Thing& thing) {
    return thing.subject != Subject::none && thing.subject != Subject::job &&
           thing.subject != Subject::rule && thing.subject != Subject::plan &&
           thing.subject != Subject::body;
}

Text piece_name(const Thing& thing) {
    switch (thing.role) {
        case TrimRole::main:
            break;
        case TrimRole::wrap:
            return say("fascia wrap piece {1} on edge {2}", thing.piece, thing.name);
        case TrimRole::cleat:
            return say("cleat piece {1} on edge {2}", thing.piece, thing.name);
    }
    return say("piece {1} on edge {2}", thing.piece, thing.name);
}

Text name_of(const Thing& thing) {
    switch (thing.subject) {
        case Subject::none:
            return say("one number");
        case Subject::job:
            return say("the job's name");
        case Subject::rule:
            return say("the rule \"{1}\"", thing.name);
        case Subject::edge:
            return say("what edge {1} is", thing.name);
        case Subject::reading:
            return say("the length of edge {1}", thing.name);
        case Subject::remainder:
            return say("what is left for the last piece of edge {1}", thing.name);
        case Subject::pitch:
            return say("the pitch of edge {1}", thing.name);
        case Subject::lap:
            return say("the lap of edge {1}", thing.name);
        case Subject::style:
            return say("the run of edge {1}", thing.name);
        case Subject::piece:
            return say("the cut of {1}", piece_name(thing));
        case Subject::step:
            return say("the step \"{1}\" of {2}", thing.step,
                       thing.piece > 0 ? piece_name(thing) : say("edge {1}", thing.name));
        case Subject::finish:
            return say("the finish of edge {1}", thing.name);
        case Subject::plan:
            return say("the plan for {1}", thing.name);
        case Subject::supply:
            return say("whether new sticks can be had for edge {1}", thing.name);
        case Subject::metal:
            return say("the metal that lies there for edge {1}", thing.name);
        case Subject::loss:
            return say("the loss of {1}", piece_name(thing));
        case Subject::body:
            return say("the walk round roof {1}", thing.name);
        case Subject::place:
            return say("where edge {1} lies on the roof", thing.name);
    }
    return {};
}

Text apart_words(const Thing& thing) {
    if (thing.subject == Subject::piece) {
        return say("Two tablets cut {1}: pick the one that is fitted.", piece_name(thing));
    }
    const bool measured = thing.subject == Subject::reading ||
                          thing.subject == Subject::remainder || thing.subject == Subject::pitch;
    return measured
               ? say("Two tablets disagree on {1}: pick one, or measure again.", name_of(thing))
               : say("Two tablets disagree on {1}: pick one, or enter it again.", name_of(thing));
}

}  // namespace hemline
