// The cut card: a piece as it lies on the sawhorse, with every mark measured from the end where the
// tape hooks.
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
#include <utility>
#include <vector>

#include "engine/record/event_id.h"
#include "engine/trim/end_metal.h"
#include "engine/words/result_declared.h"
#include "engine/work/fixing.h"

namespace hemline {

struct Job;
struct Plan;

enum class MarkKind {
    lap_line,      ///< edge of the visible part
    bead,          ///< a bead of sealant across flange and face
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
    corner_top,    ///< where two square-cut faces meet, at the fold of flange and face
    corner_low,    ///< the same line meets the lower edge of the face here
    corner_point,  ///< the middle of a hip or valley meets the corner of the two eaves, or the
                   ///< ridge
    mitre_near,    ///< outer edge of the leg on this roof; cut from here to the corner point
    mitre_far,     ///< outer edge of the leg on the other roof; cut from here to the corner point
    end_fold,      ///< the end folded down here to close it
    turn_up,       ///< the end turned up here against the wall
    kick_fold,     ///< slit along the bend from the end to here, and turned out
    wrap_end,      ///< a headwall's wall leg cut away from here to the end; the deck leg runs on
    wrap_fold,    ///< the wall's corner: wall leg slit from the bend, and folded round it from here
    wrap_top,     ///< that fold meets the wall leg's free edge here, where it is not square
    valley_fold,  ///< outer edge of the flange; folded up from here to the corner line, where the
                  ///< other roof begins
    end_cut,      ///< cut the stick through here
};

struct Mark {
    MarkKind kind = MarkKind::end_cut;
    Length at;                  ///< from the hooked (left) end
    Side toward = Side::right;  ///< the end it belongs to; waste falls on this side
};

struct Card {
    std::string edge, trim;
    Text trim_name;
    EdgeKind kind = EdgeKind::eave;
    TrimRole role = TrimRole::main;
    int piece = 0, pieces = 0;
    Length cut, covers, lap;
    EndWork left = EndWork::square, right = EndWork::square;
    Side edge_left = Side::left;  ///< the metal's end toward the edge's left, or its foot
    Side hooks = Side::left;      ///< which end the tape hooks
    std::optional<Side> hand;     ///< for an end piece: the end of the edge that it closes
    /// Of the two roofs it lies on, this one and the other, where they differ.
    std::optional<std::pair<Slope, Slope>> pitches;
    std::vector<Leg> legs;          ///< for drawing: from the leg that lies away toward you
    std::vector<Mark> marks;        ///< in tape order from the hooked end, the end cut last
    std::vector<ScrewLine> screws;  ///< along each leg that is fastened, from the hooked end
    ScrewedTo screwed_to = ScrewedTo::deck;
    Text screw_places;                ///< from a seam, of screws in closures; else empty
    int stick = 0;                    ///< number of the stick in the plan; 0: cut already
    std::optional<EventId> offcut;    ///< take this offcut instead of a new stick
    Length stick_length, stick_from;  ///< where on the stick the piece begins
    Length left_over;                 ///< what this cut leaves of the stick after it
    Text waits_for;                   ///< empty, or why the piece cannot be cut yet and what to do
};

/// The card of a piece. Problem: no such edge, run or piece; names those that exist.
Result<Card> make_card(const Job& job, const Plan& plan, const Catalogue& catalogue,
                       std::string_view edge, TrimRole role, int piece);

/// Whether metal is cut at the mark; other marks are lines to fold, to seal or to align by. A hip's
/// or valley's miter is folded, not cut, where a tab is left at that end.
bool is_cut_at(const Card& card, const Mark& mark);
/// Whether waste lies on one side of the mark: a slit and a notch across a fold leave none.
bool leaves_waste(const Card& card, const Mark& mark);

/// Held by clips outside its hems, never by screws: a fastener in the waterway leaks.
bool clips_hems(const Card& card);
/// "10 screws, first at 2 in, last at 104 in"; for what stands on closures "14 screws, 7 a leg, two
/// a pan: 4 in and 12 in from a seam"; why there is none.
Text screws_told(const Card& card);

/// "tab fold".
Text spoken(MarkKind kind);
Text spoken(EndWork end);

}  // namespace hemline
