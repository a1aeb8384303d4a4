// The pictures of a step, of this piece, before, during and done: metal that is cut, folded or
// lapped, with its numbers; else the scene of the step (step_scene).
//
//      cut:   the stick        cut at the marks    its end folded      end work of one piece
//      tabs:  tab flat         half folded         folded              what a step does at an end
//      bend:  flat strip       half bent           bent                the section's own bend
//      lap:   the neighbor     coming to it        lapped
#pragma once

#include <array>

#include "engine/work/folded_end.h"
#include "engine/work/piece_meeting.h"
#include "engine/work/procedure.h"
#include "engine/work/prop.h"

namespace hemline {

struct EdgeWork;
struct Plan;

/// Which metal a step is about, and what is done to it.
enum class Shows { nothing, cut, tabs, bend, lap };
struct StepMetal {
    Shows shows = Shows::nothing;
    TrimRole role = TrimRole::main;
    int piece = 0;
    Side side = Side::left;
};

/// Nothing for a step that does not fold, cut or lap metal, such as tying off. A step at an end of
/// the edge is about the piece there.
StepMetal metal_of(const Step& step, const EdgeWork& work, const Plan& plan);

struct StepPicture {
    Text says;  ///< a sentence, with its numbers
    std::vector<Facet> own, other;
    Props props = {};
};
struct StepPictures {
    std::array<StepPicture, 3> before_during_done;
    std::vector<LegName> legs;  ///< of the piece
    std::string trim;           ///< id
    Side side = Side::left;     ///< the end that is shown
};

/// Problem: why there is nothing to show: nothing is planned there yet.
Result<StepPictures> step_pictures(const MeetingOf& of, const Step& step, const EdgeWork& work);

}  // namespace hemline
