#include "engine/trim/end_metal.h"

#include <algorithm>
#include <utility>

#include "engine/roof/cut_offset.h"
#include "engine/roof/edge_shape.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

/// An end of an edge, with what its metal is computed from.
struct EndOfEdge {
    const Edge& edge;
    Side side;
    Trim trim;
    const Practice& practice;
    CornerTabs tabs;

    [[nodiscard]] End end() const { return end_at(edge, side); }
    [[nodiscard]] bool carries_tab() const {
        return (side == Side::left ? tabs.left : tabs.right).value_or(side == first_fitted(edge));
    }
    /// Tab, lap or fold by the practice rule for this end.
    [[nodiscard]] Length tab() const {
        return end_allowance(end(), side, carries_tab() ? side : other(side), practice);
    }
    /// How far a leg is cut back at the edge's corner, on the grid; corner.pitch1 is the pitch of
    /// the roof under the leg.
    [[nodiscard]] std::optional<Length> back(LegName leg,
                                             const std::optional<RoofCorner>& corner) const {
        const Length width = leg_width(trim, leg);
        if (!corner || width <= Length() || trim.role != TrimRole::main) {
            return {};
        }
        const Result<Length> exact = flange_mitre_setback(width, *corner);
        return exact ? std::optional(nearest_on(*exact, practice.cut_grid)) : std::nullopt;
    }
    [[nodiscard]] EndMetal with(EndWork work, Length tab) const {
        EndMetal metal;
        metal.work = work;
        metal.tab = tab;
        return metal;
    }
};

Length run_past(const EndMetal& metal) {
    const Length none;
    return std::max({none, -metal.near_back.value_or(none), -metal.far_back.value_or(none)});
}

/// How far a square-cut face leans into the corner, on the grid; 0 of a plumb one.
Length lean_at(const EndOfEdge& at) {
    const auto corner = roof_corner(at.edge, at.side);
    if (at.edge.fascia != Fascia::square_cut || at.edge.kind != EdgeKind::eave || !corner) {
        return {};
    }
    const auto exact = square_face_setback(leg_width(at.trim, LegName::face), *corner);
    return exact ? nearest_on(*exact, at.practice.cut_grid) : Length();
}

/// Eave and high eave, and their wraps.
EndMetal along_the_house(const EndOfEdge& at) {
    const Length tab = at.tab();
    const auto flange_back = at.back(LegName::flange, roof_corner(at.edge, at.side));
    EndMetal metal = at.with(EndWork::square, tab);
    switch (at.end()) {
        case End::gable:
            metal.work = tab > Length() ? EndWork::gable_tab : EndWork::square;
            return metal;
        case End::corner_out:
            metal.work = tab > Length() ? EndWork::corner_tab : EndWork::corner_mitre;
            metal.near_back = flange_back;
            metal.lean = lean_at(at);
            metal.past = std::max(Length(), -metal.lean);
            return metal;
        case End::corner_in:
            metal.work = EndWork::corner_in;
            metal.near_back = flange_back;
            metal.lean = lean_at(at);
            metal.past = std::max(run_past(metal), -metal.lean);
            // A trim without a flange does not go past the line: the faces butt.
            metal.tab =
                at.trim.role == TrimRole::main && leg_width(at.trim, LegName::flange) > Length()
                    ? tab
                    : Length();
            return metal;
        default:
            return metal;
    }
}

EndMetal up_the_gable(const EndOfEdge& at) {
    const bool foot = at.side == Side::left;
    EndMetal metal = at.with(EndWork::folded, at.tab());
    if (at.end() == End::open) {
        metal.work = EndWork::square;
    } else if (at.end() == End::wall) {
        return at.with(EndWork::turn_up, at.practice.turn_up);
    }
    const bool meets_eave_or_peak =
        at.end() == End::eave || (!foot && (at.end() == End::ridge || at.end() == End::hip));
    if (!meets_eave_or_peak) {
        return metal;
    }
    metal.work = foot ? EndWork::eave_return : EndWork::peak;
    // At a square-cut fascia the foot is square to the slope; the peak is plumb in both cases.
    if (at.edge.pitch && (!foot || at.edge.fascia == Fascia::plumb)) {
        const Result<Length> offset =
            plumb_offset(leg_width(at.trim, LegName::face), *at.edge.pitch);
        metal.plumb = offset ? nearest_on(*offset, at.practice.cut_grid) : Length();
        metal.past = foot ? metal.plumb : Length();
    }
    return metal;
}

/// Both legs of a hip or valley cut along the lines of the two eaves at its foot.
void cut_legs(const EndOfEdge& at, EndMetal& metal) {
    auto corner = roof_corner(at.edge, Side::left);
    metal.near_back = at.back(LegName::flange, corner);
    if (corner) {
        std::swap(corner->pitch1, corner->pitch2);
    }
    metal.far_back = at.back(LegName::face, corner);
}

/// Hip and valley: at the foot both legs are cut along the two eaves, at a ridge the valley's are.
EndMetal up_the_corner(const EndOfEdge& at) {
    const Edge& edge = at.edge;
    const bool valley = !turns_out(edge.kind);
    EndMetal metal = at.with(EndWork::folded, at.tab());
    if (at.end() == End::open) {
        metal.work = EndWork::square;
    } else if (at.end() == End::wall) {
        return at.with(EndWork::turn_up, at.practice.turn_up);
    } else if (at.side == Side::left && at.end() == End::eave) {
        metal.work = EndWork::eave_foot;
        cut_legs(at, metal);
        metal.past = run_past(metal);
    } else if (valley && at.end() == End::ridge) {
        metal.work = EndWork::top_mitre;
        // The ridge runs as the eaves do, so the legs meet it at the foot's angle, turned inward.
        cut_legs(at, metal);
        for (std::optional<Length>* back : {&metal.near_back, &metal.far_back}) {
            *back = *back ? std::optional(absolute(**back)) : std::nullopt;
        }
    }
    return metal;
}

/// A corner of the walls that stand on the roof, of a dormer, chimney or curb:
///
///            wall │ sidewall, over it, down onto the headwall's metal
///        ─────────┘·····┐      the deck leg of the headwall runs past the corner, so that what
///        headwall       │      runs down the sidewall lands on it
std::optional<EndMetal> at_wall_corner(const EndOfEdge& at) {
    const EdgeKind kind = at.edge.kind;
    const bool low_wall = kind == EdgeKind::headwall;
    const bool foot = kind == EdgeKind::sidewall && at.side == Side::left;
    if (!low_wall && !foot) {
        return {};
    }
    if (at.end() == End::corner_in) {
        return at.with(EndWork::turn_up, at.practice.turn_up);
    }
    if (at.end() != End::corner_out) {
        return {};
    }
    EndMetal metal = at.with(low_wall ? EndWork::apron_corner : EndWork::wall_foot, Length());
    metal.past = low_wall ? at.practice.apron_past : at.practice.wall_lap;
    metal.wrap = low_wall ? at.practice.apron_wrap : metal.past;
    if (foot && at.edge.pitch) {
        const auto offset = plumb_offset(leg_width(at.trim, LegName::face), *at.edge.pitch);
        metal.plumb = offset ? nearest_on(*offset, at.practice.cut_grid) : Length();
    }
    return metal;
}

/// Ridge, sidewall, headwall, transition.
EndMetal across_the_roof(const EndOfEdge& at) {
    if (const auto corner = at_wall_corner(at)) {
        return *corner;
    }
    switch (at.end()) {
        case End::open:
            return at.with(EndWork::square, at.tab());
        case End::wall:
            return at.with(EndWork::turn_up, at.practice.turn_up);
        case End::corner_out:
        case End::corner_in:
            return at.with(at.carries_tab() ? EndWork::corner_tab : EndWork::square, at.tab());
        case End::eave:
            if (is_sloped(at.edge.kind) && at.side == Side::left) {
                return at.with(EndWork::kick_out, at.practice.kick_out);
            }
            break;
        case End::gable:
            // What stands on closures stands as high as the seams: the fold must close that.
            if (facts_of(at.edge.kind).closed != Closed::no_side) {
                return at.with(EndWork::folded, std::max(at.tab(), end_fold_least(at.practice)));
            }
            break;
        default:
            break;
    }
    return at.with(EndWork::folded, at.tab());
}

/// The uphill side of a curb: both corners are wrapped, since the trims at its sides lie under it.
EndMetal round_the_curb(const EndOfEdge& at) {
    switch (at.end()) {
        case End::corner_out:
            return at.with(EndWork::corner_tab, at.practice.tab_corner_out);
        case End::wall:
            return at.with(EndWork::turn_up, at.practice.turn_up);
        default:
            return at.with(EndWork::square, at.tab());
    }
}

}  // namespace

EndMetal end_metal(const Edge& edge, Side side, const Trim& trim, const Practice& practice,
                   const CornerTabs& tabs) {
    const EndOfEdge at{edge, side, fitted_to(trim, edge), practice, tabs};
    if (trim.role == TrimRole::cleat) {
        return {};
    }
    switch (facts_of(edge.kind).ends) {
        case EndsLike::eave:
            return along_the_house(at);
        case EndsLike::gable:
            return up_the_gable(at);
        case EndsLike::valley:
            return up_the_corner(at);
        case EndsLike::wall:
            return across_the_roof(at);
        case EndsLike::curb:
            return round_the_curb(at);
        case EndsLike::nothing:
            break;
    }
    return {};
}

}  // namespace hemline
