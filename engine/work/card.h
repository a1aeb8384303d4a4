// The cut card: one piece, every mark from the end the tape hooks, as it lies on the sawhorse.
//
//      left end (tape hooks here)                                   right end
//      ┌───────────────────────────────────────────────────────────────┬──┐ flange
//      │                                                               │ ░│
//      ├───────────────────────────────────────────────────────────────┼──┤ face
//      └──────────────────────────────────────────────────────────────/ ░░┘ kick and hem
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/record/event_id.h"
#include "engine/trim/end_metal.h"
#include "engine/words/result.h"

namespace hemline {

struct Job;
struct Plan;

enum class MarkKind {
    lap_line,      ///< edge of the visible part
    bead,          ///< one bead of sealant across flange and face
    hem_notch,     ///< hem removed from here to the end
    hem_clip_45,   ///< inner corner of the hem notch clipped
    flange_cut,    ///< flange cut square here, to the end
    flange_mitre,  ///< back edge of the flange; cut from here to the corner line
    tab_fold,      ///< tab folded here
    drip_clip_45,  ///< drip edge cut at 45° from here
    tab_end,       ///< end of the tab: clip both corners at 45°
    relief,        ///< a wrap's tab: small notch in the fold, so that it folds true
    face_cut,      ///< face, kick and hem cut away from here to the end; the flange runs on
    plumb_top,     ///< a plumb line meets the fold of flange and face here
    plumb_foot,    ///< the same line meets the lower edge of the face here
    corner_point,  ///< the middle of a hip or valley meets the corner of the two eaves, or the
                   ///< ridge
    mitre_near,    ///< outer edge of the leg on this roof; cut from here to the corner point
    mitre_far,     ///< outer edge of the leg on the other roof; cut from here to the corner point
    end_fold,      ///< the end folded down here to close it
    turn_up,       ///< the end turned up here against the wall
    kick_fold,     ///< slit along the bend from the end to here, and turned out
    end_cut,       ///< cut the stick through here
};

struct Mark {
    MarkKind kind = MarkKind::end_cut;
    Length at;                  ///< from the hooked (left) end
    Side toward = Side::right;  ///< the end it belongs to; what falls there, falls on this side
};

struct Card {
    std::string edge, trim;
    Text trim_name;
    EdgeKind kind = EdgeKind::eave;
    TrimRole role = TrimRole::main;
    int piece = 0, pieces = 0;
    Length cut, covers, lap;
    EndWork left = EndWork::square, right = EndWork::square;
    Side hooks = Side::left;          ///< which end the tape hooks
    std::optional<Side> hand;         ///< of an end piece: the end of the edge it closes
    std::vector<Leg> legs;            ///< for drawing: from the deck outward
    std::vector<Mark> marks;          ///< in tape order from the hooked end, the end cut last
    std::vector<Length> screws;       ///< centres from the hooked end
    int screw_lines = 1;              ///< along each of so many legs
    int stick = 0;                    ///< number of the stick in the plan; 0: cut already
    std::optional<EventId> offcut;    ///< take this offcut instead of a new stick
    Length stick_length, stick_from;  ///< where on the stick the piece begins
    Length left_over;                 ///< what this cut leaves of the stick after it
    Text waits_for;                   ///< empty, or why the piece cannot be cut yet, with the mend
};

/// The card of one piece. Problem: no such edge, run or piece, naming the ones there are.
Result<Card> make_card(const Job& job, const Plan& plan, const Catalogue& catalogue,
                       std::string_view edge, TrimRole role, int piece);

/// Whether metal is cut at the mark; the others are lines to fold, seal or see by. A hip's or
/// valley's mitre is folded, and no cut, where a tab is left at that end.
bool is_cut_at(const Card& card, const Mark& mark);
/// Whether waste lies on one side of the mark: a slit and a notch across a fold leave none.
bool leaves_waste(const Card& card, const Mark& mark);

/// "tab fold", and what the hand does there: "flange cut square, drip edge 45°".
Text spoken(MarkKind kind);
Text deed_of(MarkKind kind);
Text spoken(EndWork end);

}  // namespace hemline
