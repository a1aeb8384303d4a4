#include "engine/work/edge_change.h"

#include <algorithm>

#include "engine/plan/plan.h"
#include "engine/record/job.h"
#include "engine/roof/edge_shape.h"
#include "engine/roof/outline_walk.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

bool is_corner(End end) { return end == End::corner_out || end == End::corner_in; }

/// Whether an angle can be stated there: the angle of the corner, of the eaves at the foot of a hip
/// or valley, or of the walls where nothing else says how the outline turns.
bool has_corner(const Edge& edge, Side side) {
    if (stands_over_corner(edge.kind)) {
        return side == Side::left;
    }
    const End end = end_at(edge, side);
    return is_corner(end) || (is_around_house(edge.kind) && (end == End::wall || end == End::open));
}

Text piece_words(const CutPiece& cut) {
    switch (cut.role) {
        case TrimRole::wrap:
            return say("Fascia wrap piece {1}", cut.piece);
        case TrimRole::cleat:
            return say("Cleat piece {1}", cut.piece);
        case TrimRole::main:
            break;
    }
    return say("Piece {1}", cut.piece);
}

/// Whether the piece ends at that side of the edge. A cleat's end is cut square whatever it meets.
bool carries(const CutPiece& cut, Side side, const Edge& edge, const Plan& plan) {
    if (cut.role == TrimRole::cleat) {
        return false;
    }
    const Run* const run = find_run(plan, edge.id, cut.role);
    if (run == nullptr || run->pieces.empty()) {
        return true;
    }
    return cut.piece ==
           (side == first_fitted(edge) ? run->pieces.front() : run->pieces.back()).number;
}

/// Whether another piece of its run comes before or after it.
bool has_neighbour(const CutPiece& cut, const Edge& edge, const Plan& plan) {
    const Run* const run = find_run(plan, edge.id, cut.role);
    return run == nullptr || run->pieces.size() > 1;
}

template <class Holds>
Text held(const EdgeWork& work, Holds holds) {
    const auto cut = std::find_if(work.cut.begin(), work.cut.end(), holds);
    return cut == work.cut.end() ? Text()
                                 : say("{1} is cut for it as it is. If that is wrong, mark the "
                                       "piece spoiled first.",
                                       piece_words(*cut));
}

bool holds(const CutPiece& cut, EdgeField field, const Edge& edge, const Plan& plan) {
    const bool main = cut.role == TrimRole::main;
    const bool by_foot = stands_over_corner(edge.kind);
    switch (field) {
        case EdgeField::left:
            return carries(cut, Side::left, edge, plan);
        case EdgeField::right:
            return carries(cut, Side::right, edge, plan);
        case EdgeField::corner_left:  // a hip's is in the bend of every piece
            return (by_foot && main) ||
                   (is_corner(edge.left) && carries(cut, Side::left, edge, plan));
        case EdgeField::corner_right:
            return is_corner(edge.right) && carries(cut, Side::right, edge, plan);
        case EdgeField::wrap:
            return cut.role == TrimRole::wrap;
        case EdgeField::trim:
        case EdgeField::fascia:
        case EdgeField::other_pitch:
            return main;
        case EdgeField::name:
        case EdgeField::kind:
        case EdgeField::first:
            return true;
        case EdgeField::seam:
            break;
    }
    return false;
}

}  // namespace

std::vector<EdgeField> fields_of(const Edge& edge, const Catalogue& catalogue) {
    if (!has_run(edge.kind)) {
        return {EdgeField::kind, EdgeField::name};
    }
    std::vector<EdgeField> fields = {EdgeField::kind, EdgeField::left, EdgeField::right};
    const auto add = [&](EdgeField field, bool asked) {
        if (asked) {
            fields.push_back(field);
        }
    };
    const bool around = is_around_house(edge.kind);
    const bool turns = is_corner(edge.left) || is_corner(edge.right);
    add(EdgeField::corner_left, has_corner(edge, Side::left));
    add(EdgeField::corner_right, has_corner(edge, Side::right));
    add(EdgeField::other_pitch,
        joins_two_roofs(edge.kind) || (around && !is_sloped(edge.kind) && turns));
    add(EdgeField::first, !is_sloped(edge.kind));
    add(EdgeField::wrap, catalogue.default_for(edge.kind, TrimRole::wrap) != nullptr);
    add(EdgeField::trim, trims_for(edge.kind, catalogue).size() > 1);
    add(EdgeField::fascia, around);
    add(EdgeField::seam, true);
    add(EdgeField::name, true);
    return fields;
}

std::string usual_trim(EdgeKind kind, const Catalogue& catalogue) {
    const std::vector<const Trim*> trims = trims_for(kind, catalogue);
    const auto over = std::find_if(trims.begin(), trims.end(),
                                   [](const Trim* trim) { return trim->panels == Panels::over; });
    return over == trims.begin() || over == trims.end() ? "" : (*over)->id;
}

Edge made_to(Edge edge, EdgeKind kind, const Catalogue& catalogue) {
    if (edge.kind == kind) {
        return edge;
    }
    edge.kind = kind;
    edge.left = facts_of(kind).left_usual;
    edge.right = facts_of(kind).right_usual;
    edge.corner_left.reset();
    edge.corner_right.reset();
    edge.pitch2.reset();
    edge.trim = usual_trim(kind, catalogue);
    edge.face.reset();
    edge.flange.reset();
    edge.first = Side::left;
    edge.fascia = Fascia::plumb;
    edge.wrap = edge.wrap && catalogue.default_for(kind, TrimRole::wrap) != nullptr;
    return edge;
}

Edge with_end(Edge edge, Side side, End end) {
    if (end_at(edge, side) == end) {
        return edge;
    }
    (side == Side::left ? edge.left : edge.right) = end;
    const bool of_foot = stands_over_corner(edge.kind);
    if (!of_foot) {
        stated_corner(edge, side).reset();
    }
    return edge;
}

std::vector<const Trim*> trims_for(EdgeKind kind, const Catalogue& catalogue) {
    std::vector<const Trim*> trims;
    for (const Trim& trim : catalogue.trims()) {
        if (serves(trim, kind) && trim.role == TrimRole::main) {
            trims.push_back(&trim);
        }
    }
    return trims;
}

std::optional<Problem> check_corner(const Edge& edge, Side side, Angle angle) {
    if (angle <= Angle() || angle >= full_turn) {
        return Problem{say("That is no corner: both edges would lie on one another."),
                       say("Key in the angle inside the building, above 0 and below 360 degrees.")};
    }
    const End end = end_at(edge, side);
    const bool over_corner = stands_over_corner(edge.kind);
    if (!over_corner && !is_corner(end)) {
        return {};
    }
    if (angle == half_turn) {
        return Problem{say("At 180 degrees there is no corner: the wall runs straight on."),
                       say("Key in the angle inside the building.")};
    }
    const bool hip = over_corner && turns_out(edge.kind);
    const bool out = hip || end == End::corner_out;
    if ((hip || !over_corner) && out != (angle < half_turn)) {
        return out ? Problem{say("An outside corner is under 180 degrees inside the building."),
                             say("Key in that angle, or make it an inside corner.")}
                   : Problem{say("An inside corner is over 180 degrees inside the building."),
                             say("Key in that angle, or make it an outside corner.")};
    }
    return {};
}

Text held_by_metal(const EdgeWork& work, const Plan& plan, EdgeField field) {
    return held(work, [&](const CutPiece& cut) { return holds(cut, field, work.edge, plan); });
}

Text lap_held_by_metal(const EdgeWork& work, const Plan& plan) {
    return held(work, [&](const CutPiece& cut) {
        return cut.role != TrimRole::cleat && has_neighbour(cut, work.edge, plan);
    });
}

}  // namespace hemline
