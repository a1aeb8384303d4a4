#include "engine/record/thing.h"

#include <tuple>

#include "engine/record/thing_names.h"
#include "engine/trim/practice.h"

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

namespace {

Text trim_name(const std::string& trim, const ThingNames& names) {
    return names.trim ? names.trim(trim) : Text(trim);
}

/// A rule of practice, or what a trim is bent to.
Text rule_name(const std::string& key, const ThingNames& names) {
    return key.rfind(section_thing, 0) == 0
               ? say("the section of {1}", trim_name(key.substr(section_thing.size()), names))
               : say("the rule \"{1}\"", spoken_rule(key));
}

}  // namespace

Text name_of(const Thing& thing, const ThingNames& names) {
    switch (thing.subject) {
        case Subject::none:
            return say("one number");
        case Subject::job:
            return say("the job's name");
        case Subject::rule:
            return rule_name(thing.name, names);
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
            return say("the step \"{1}\" of {2}", names.step ? names.step(thing) : Text(thing.step),
                       thing.piece > 0 ? piece_name(thing) : say("edge {1}", thing.name));
        case Subject::finish:
            return say("the finish of edge {1}", thing.name);
        case Subject::plan:
            return say("the plan for {1}", trim_name(thing.name, names));
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

Text name_of(const Thing& thing) { return name_of(thing, {}); }

}  // namespace hemline
