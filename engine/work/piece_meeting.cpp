#include "engine/work/piece_meeting.h"

#include <algorithm>
#include <cmath>

#include "engine/plan/plan.h"
#include "engine/roof/edge_shape.h"
#include "engine/words/result.h"
#include "engine/work/folded_end.h"

namespace hemline {

namespace {

constexpr double layer_mm = 2;  // gap drawn between the pieces of a lap, so that both show
/// A tab at a corner is drawn folded a little farther, so that it lies behind its neighbor's face.
constexpr double tab_behind = 1.03;

struct Neighbour {
    std::string edge;
    int piece = 0;
};

EndWork work_at(const Card& card, Side side) { return side == Side::left ? card.left : card.right; }

bool is_corner(EndWork work) {
    return work == EndWork::corner_tab || work == EndWork::corner_mitre;
}

/// The piece of the run that lies at that end of the edge.
int end_piece(const Plan& plan, const Edge& edge, Side side) {
    const Run* const run = find_run(plan, edge.id, TrimRole::main);
    if (run == nullptr || run->pieces.empty()) {
        return 0;
    }
    return side == first_fitted(edge) ? 1 : static_cast<int>(run->pieces.size());
}

/// The edge after or before this one on the walk around the roof: eaves are walked from left to
/// right.
std::string next_edge(const RoofOutline& roof, const std::string& edge, Side side) {
    const auto& lines = roof.outline.lines;
    const std::size_t n = lines.size();
    for (std::size_t i = 0; i < n; ++i) {
        if (lines[i].edge == edge) {
            return lines[(i + (side == Side::right ? 1 : n - 1)) % n].edge;
        }
    }
    return "";
}

Result<Neighbour> neighbour_of(const MeetingOf& of, const Card& card, Side side) {
    const EndWork work = work_at(card, side);
    if (work == EndWork::underlap || work == EndWork::overlap) {
        return Neighbour{card.edge, card.piece + (work == EndWork::underlap ? 1 : -1)};
    }
    if (!is_corner(work) || card.role != TrimRole::main) {
        return Problem{say("This end meets no other piece."), say("Compare it finished.")};
    }
    const std::string id = of.outline == nullptr ? "" : next_edge(*of.outline, card.edge, side);
    const EdgeWork* const other = of.job.find(id);
    if (other == nullptr || other->edge.kind != card.kind) {
        return Problem{say("Which edge comes round this corner is not recorded."),
                       say("Add the edges in walking order, the building on the left.")};
    }
    const int piece =
        end_piece(of.plan, other->edge, side == Side::right ? Side::left : Side::right);
    if (piece == 0) {
        return Problem{say("The neighbour {1} {2} is not read yet.", spoken(other->edge.kind), id),
                       say("Read it first.")};
    }
    return Neighbour{id, piece};
}

double mm(Length length) { return static_cast<double>(length.nm()) / 1e6; }

/// Away from the roof: the mean of the main legs' upper faces.
Space outward(const FlatPattern& pattern, const std::vector<Face>& faces) {
    Space sum;
    for (std::size_t leg = 0; leg < pattern.panels.size(); ++leg) {
        if (pattern.legs.names[leg] == LegName::flange ||
            pattern.legs.names[leg] == LegName::face) {
            sum = sum + faces[leg].normal;
        }
    }
    return length_of(sum) > 0 ? unit(sum) : Space{0, 0, 1};
}

/// A piece, near its end.
struct Met {
    FlatPattern end;
    std::int64_t broken_at = 0;
};

Met met(FlatPattern pattern, Side side, Length reach) {
    for (FlatTab& tab : pattern.tabs) {
        tab.degrees *= tab_behind;
    }
    Met one{near_end(pattern, side, reach), 0};
    const std::int64_t length = pattern.length.nm();
    one.broken_at = side == Side::left ? std::min(length, reach.nm())
                                       : std::max<std::int64_t>(0, length - reach.nm());
    return one;
}

std::vector<Facet> shown(const Met& one, const Placing& placing) {
    return facets_of(one.end, fold_up(one.end, step_of(FoldStep::finished), placing),
                     one.broken_at);
}

/// The two pieces side by side: the piece that ends there, and the piece that begins.
struct Pair {
    const Card &left_card, &right_card;
    const FlatPattern &left, &right;
    Placing left_at, right_at;
    Slope pitch;
};

std::vector<FoldFault> put_round_corner(Pair& pair, Angle corner, const Practice& practice) {
    const auto past = [&](EndWork work) {
        return work == EndWork::corner_tab ? practice.tab_corner_out : Length();
    };
    const Joint joint{pair.pitch, corner, past(pair.left_card.right), past(pair.right_card.left),
                      sixteenths(1)};
    const Space at{mm(pair.left.length - joint.left_past), 0, 0};
    pair.right_at = turned_in_plan(shifted(pair.right_at, {at.x - mm(joint.right_past), 0, 0}), at,
                                   degrees_of(half_turn - corner));
    return corner_meeting(pair.left, pair.right, joint).faults;
}

std::vector<FoldFault> put_in_lap(Pair& pair) {
    const bool left_is_over = pair.left_card.right == EndWork::overlap;
    const Length lap = left_is_over ? pair.right_card.lap : pair.left_card.lap;
    pair.right_at = shifted(pair.right_at, {mm(pair.left.length - lap), 0, 0});
    Placing& over = left_is_over ? pair.left_at : pair.right_at;
    const FlatPattern& above = left_is_over ? pair.left : pair.right;
    const Space out = outward(above, fold_up(above, step_of(FoldStep::finished), over));
    over = shifted(over, out * layer_mm);
    // Seen from behind, left and right change places.
    return left_is_over
               ? lap_meeting(mirrored(pair.right), mirrored(pair.left), pair.pitch, lap).faults
               : lap_meeting(pair.left, pair.right, pair.pitch, lap).faults;
}

}  // namespace

Result<ShownMeeting> piece_meeting(const MeetingOf& of, const Card& card, Side side, Length reach) {
    const Result<Neighbour> neighbour = neighbour_of(of, card, side);
    if (!neighbour) {
        return neighbour.problem();
    }
    const Result<Card> other_card =
        make_card(of.job, of.plan, of.catalogue, neighbour->edge, card.role, neighbour->piece);
    if (!other_card) {
        return other_card.problem();
    }
    const Edge& edge = of.job.find(card.edge)->edge;
    const Edge& other_edge = of.job.find(neighbour->edge)->edge;
    const auto own = piece_pattern(card, edge, of.sections);
    const auto other = piece_pattern(*other_card, other_edge, of.sections);
    if (!own || !other) {
        return own ? other.problem() : own.problem();
    }
    const bool own_is_left = side == Side::right;
    const Slope pitch = edge.pitch.value_or(rise_in_12(6));
    const Falls falls = falls_on(card.kind);
    Pair pair{own_is_left ? card : *other_card,
              own_is_left ? *other_card : card,
              own_is_left ? *own : *other,
              own_is_left ? *other : *own,
              {},
              {},
              pitch};
    pair.left_at = resting(pair.left, pitch, falls);
    pair.right_at = resting(pair.right, pitch, falls);
    ShownMeeting meeting;
    meeting.faults = is_corner(work_at(card, side))
                         ? put_round_corner(pair, stated_corner(edge, side).value_or(square_out),
                                            of.job.practice)
                         : put_in_lap(pair);
    std::vector<Facet> at_left = shown(met(pair.left, Side::right, reach), pair.left_at);
    std::vector<Facet> at_right = shown(met(pair.right, Side::left, reach), pair.right_at);
    meeting.own = own_is_left ? at_left : at_right;
    meeting.other = own_is_left ? at_right : at_left;
    meeting.other_name =
        say("piece {1} of {2} {3}", neighbour->piece, spoken(other_edge.kind), other_edge.id);
    return meeting;
}

}  // namespace hemline
