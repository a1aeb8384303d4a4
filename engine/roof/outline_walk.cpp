#include "engine/roof/outline_walk.h"

#include <array>
#include <cmath>

#include "engine/roof/edge_shape.h"
#include "engine/roof/hip.h"

namespace hemline {

namespace {

/// The corner that the word of an end implies.
std::optional<Angle> spoken_at(const Edge& edge, Side side) {
    const bool level = !is_sloped(edge.kind);  // a hip at a gable's peak is not a corner in plan
    switch (end_at(edge, side)) {
        case End::corner_out:
            return square_out;
        case End::corner_in:
            return square_in;
        case End::hip:
            return level ? std::optional(square_out) : std::nullopt;
        case End::valley:
            return level ? std::optional(square_in) : std::nullopt;
        default:
            return {};
    }
}

bool same_sense(Angle a, Angle b) { return (a < half_turn) == (b < half_turn); }

/// An angle that a row claims, and how.
struct Claimed {
    std::optional<Angle> angle;
    CornerClaim claim;
};

/// Whether it contradicts the angle that was taken: a different figure, or a word for a turn the
/// other way.
bool is_against(const Claimed& claimed, Angle taken) {
    if (!claimed.angle) {
        return false;
    }
    return claimed.claim.by == CornerClaim::By::angle
               ? *claimed.angle != taken
               : taken == half_turn || !same_sense(*claimed.angle, taken);
}

std::optional<Angle> unspoken(const Edge& a, Side a_end, const Edge& b, Side b_start) {
    const End ends[] = {end_at(a, a_end), end_at(b, b_start)};
    if (ends[0] == End::wall || ends[1] == End::wall) {
        return {};
    }
    const bool gables[] = {is_sloped(a.kind), is_sloped(b.kind)};
    if (gables[0] != gables[1]) {
        return square_out;
    }
    const bool joint = ends[0] == End::open && ends[1] == End::open;
    return gables[0] || joint ? std::optional(half_turn) : std::nullopt;
}

WalkCorner corner_between(const Edge& a, Side a_end, const Edge& b, Side b_start) {
    using Row = CornerClaim::Row;
    using By = CornerClaim::By;
    const std::array<Claimed, 4> all = {{{stated_corner(a, a_end), {Row::before, By::angle}},
                                         {stated_corner(b, b_start), {Row::after, By::angle}},
                                         {spoken_at(a, a_end), {Row::before, By::end_word}},
                                         {spoken_at(b, b_start), {Row::after, By::end_word}}}};
    WalkCorner corner;
    for (const Claimed& claimed : all) {
        if (claimed.angle && !corner.inside) {
            corner.inside = claimed.angle;
            corner.claim = claimed.claim;
        } else if (claimed.angle && claimed.claim.row != corner.claim->row && !corner.second) {
            corner.second = claimed.claim;
        }
    }
    if (!corner.inside) {
        corner.inside = unspoken(a, a_end, b, b_start);
        return corner;
    }
    const Angle taken = *corner.inside;
    corner.within = corner.claim->by == By::angle ? off_of_stated(taken) : Angle();
    for (const Claimed& claimed : all) {
        if (is_against(claimed, taken)) {
            const bool figure = claimed.claim.by == By::angle;
            corner.against = figure ? *claimed.angle : full_turn - taken;
            corner.against_claim = claimed.claim;
            break;
        }
    }
    return corner;
}

WalkSide side_of(const WalkedEdge& walked, std::size_t index, WalkedFrom from, Tape tape) {
    WalkSide side;
    side.edge = index;
    side.from = from;
    side.length = walked.length;
    const bool gable = is_sloped(walked.edge.kind);
    if (gable && !walked.edge.pitch) {
        side.length.reset();  // its length in plan is not known
    }
    if (!side.length) {
        return side;
    }
    side.tape_nm = static_cast<double>(allowed_difference(*side.length, tape).nm()) / 2;
    if (gable) {
        const Slope pitch = *walked.edge.pitch;
        side.plan_of_one = 1 / slope_factor_of(pitch);
        side.tape_nm *= side.plan_of_one;
        const double sin = rise_in_12_of(pitch) / 12 * side.plan_of_one;
        side.pitch_nm =
            static_cast<double>(side.length->nm()) * sin * radians_of(reading_error_degrees(pitch));
    }
    return side;
}

/// Two eaves that end at a gable that no row lists.
bool lacks_gable(const WalkedEdge& a, const WalkedEdge& b) {
    const bool level = !is_sloped(a.edge.kind) && !is_sloped(b.edge.kind);
    return level && a.edge.right == End::gable && b.edge.left == End::gable &&
           !a.edge.corner_right && !b.edge.corner_left;
}

WalkedFrom way_of(std::span<const WalkedEdge> edges, std::size_t at, WalkedFrom before) {
    const auto kind = [&](std::size_t i) { return edges[i % edges.size()].edge.kind; };
    if (!is_sloped(kind(at))) {
        return WalkedFrom::left;
    }
    const EdgeKind previous = kind(at + edges.size() - 1);
    const bool after_gable = is_sloped(previous);
    const bool first = at == 0;
    const bool went_up = first ? !is_sloped(kind(1)) : before == WalkedFrom::left;
    const bool down = previous == EdgeKind::high_eave || (after_gable && went_up);
    return down ? WalkedFrom::right : WalkedFrom::left;
}

}  // namespace

Side finish_of(const WalkSide& side) {
    return side.from == WalkedFrom::left ? Side::right : Side::left;
}

Angle off_of_stated(Angle stated) {
    const Angle eighth = microdegrees(22'500'000);
    if (is_whole_number_of(stated, degrees(15)) || is_whole_number_of(stated, eighth)) {
        return {};
    }
    std::int64_t last = degrees(1).microdegrees();
    while (last > 1 && !is_whole_number_of(stated, microdegrees(last))) {
        last /= 10;
    }
    return microdegrees(last / 2);
}

Side start_of(const WalkSide& side) { return other(finish_of(side)); }

Walk lay_walk(std::span<const WalkedEdge> edges, Tape tape) {
    Walk walk;
    for (const WalkedEdge& edge : edges) {
        if (is_around_house(edge.edge.kind)) {
            walk.edges.push_back(edge);
        }
    }
    std::vector<WalkedFrom> ways;
    for (std::size_t i = 0; i < walk.edges.size(); ++i) {
        ways.push_back(way_of(walk.edges, i, ways.empty() ? WalkedFrom::right : ways.back()));
    }
    for (std::size_t i = 0; i < walk.edges.size(); ++i) {
        const std::size_t next = (i + 1) % walk.edges.size();
        const WalkedEdge& here = walk.edges[i];
        WalkSide side = side_of(here, i, ways[i], tape);
        if (lacks_gable(here, walk.edges[next])) {
            side.after.inside = square_out;
            walk.sides.push_back(side);
            WalkSide gable;
            gable.after.inside = square_out;
            walk.sides.push_back(gable);
            continue;
        }
        WalkSide ahead;
        ahead.from = ways[next];
        side.after =
            corner_between(here.edge, finish_of(side), walk.edges[next].edge, start_of(ahead));
        walk.sides.push_back(side);
    }
    return walk;
}

}  // namespace hemline
