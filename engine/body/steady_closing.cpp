#include "engine/body/steady_closing.h"

#include <algorithm>
#include <cmath>

namespace hemline {

namespace {

constexpr double unread_off_nm = 1e9;  // as outline_adjust.cpp takes up what is left
constexpr double least_side_nm = 1e6;  // as close_sides() refuses

double off_of(Length length, Tape tape) {
    return static_cast<double>(allowed_difference(length, tape).nm()) / 2;
}

}  // namespace

SteadyClosing::SteadyClosing(std::span<const BodySide> sides, Tape tape) : tape_(tape) {
    double heading = 0;
    Angle turned;
    for (const BodySide& side : sides) {
        Side made = {{std::cos(heading), std::sin(heading)}, {}, unread_off_nm, 0};
        if (side.length) {
            made.is_read = true;
            made.nm = static_cast<double>(side.length->nm());
            made.off = off_of(*side.length, tape);
        }
        made.inward = is_upright(side) ? 0 : 12 / rise_in_12_of(*side.pitch);
        sides_.push_back(made);
        heading += radians_of(half_turn - side.corner);
        turned += half_turn - side.corner;
        is_settled_ = is_settled_ && off_of_stated(side.corner) == Angle();
    }
    std::vector<Side> closed = sides_;
    is_settled_ = is_settled_ && turned == full_turn && imply_lengths(closed);
}

std::optional<std::vector<MovingSide>> SteadyClosing::with(std::size_t side, Length length) const {
    if (!is_settled_) {
        return {};
    }
    std::vector<Side> sides = sides_;
    sides[side].nm = static_cast<double>(length.nm());
    sides[side].off = off_of(length, tape_);
    if (!imply_lengths(sides)) {
        return {};
    }
    std::vector<MovingSide> moved = walked(sides);
    double all_tapes = 0;
    for (const Side& one : sides) {
        all_tapes += one.is_read ? one.off : 0;
    }
    std::vector<SideWithin> within;
    within.reserve(sides.size());
    for (std::size_t i = 0; i < moved.size(); ++i) {
        if (dot(moved[i].to - moved[i].from, sides[i].way) < least_side_nm) {
            return {};
        }
        within.push_back({sides[i].is_read ? sides[i].off : all_tapes, 0});
    }
    return put_in_line(std::move(moved), within);
}

/// Of sides without one, what closes the walk; false: that is not settled.
bool SteadyClosing::imply_lengths(std::vector<Side>& sides) const {
    PlanVector miss;
    std::vector<Side*> unread;
    for (Side& side : sides) {
        if (side.nm) {
            miss = miss + side.way * *side.nm;
        } else {
            unread.push_back(&side);
        }
    }
    if (unread.size() == 1) {
        unread[0]->nm = -dot(miss, unread[0]->way);
    } else if (unread.size() == 2) {
        const PlanVector one = unread[0]->way, other = unread[1]->way;
        const double area = turn(one, other);
        if (std::abs(area) <= 1e-6) {
            return false;
        }
        unread[0]->nm = -turn(miss, other) / area;
        unread[1]->nm = -turn(one, miss) / area;
    }
    return unread.size() <= 2;
}

/// Lengths changed as little as closes the walk, each by the square of what it may be off.
std::vector<MovingSide> SteadyClosing::walked(const std::vector<Side>& sides) const {
    PlanVector miss;
    double xx = 0, xy = 0, yy = 0;
    for (const Side& side : sides) {
        const double weight = side.off * side.off;
        miss = miss + side.way * *side.nm;
        xx += weight * side.way.x * side.way.x;
        xy += weight * side.way.x * side.way.y;
        yy += weight * side.way.y * side.way.y;
    }
    const double area = xx * yy - xy * xy;
    const PlanVector pull = {(xy * miss.y - yy * miss.x) / area,
                             (xy * miss.x - xx * miss.y) / area};
    std::vector<MovingSide> made;
    made.reserve(sides.size());
    PlanVector at;
    for (const Side& side : sides) {
        const double nm = *side.nm + side.off * side.off * dot(side.way, pull);
        made.push_back({at, at + side.way * nm, side.inward});
        at = made.back().to;
    }
    made.back().to = made.front().from;
    return made;
}

}  // namespace hemline
