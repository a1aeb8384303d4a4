#include "engine/handover/page_room.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace hemline {

namespace {

constexpr PlanVector across(PlanVector along) { return {-along.y, along.x}; }

/// Whether any of from → to lies within the box (Liang and Barsky 1984, from memory).
bool runs_through(PlanVector from, PlanVector to, const PageBox& box) {
    const PlanVector a = from - box.middle, way = to - from;
    double first = 0, last = 1;
    for (const auto& [axis, half] :
         {std::pair(box.along, box.wide / 2), std::pair(across(box.along), box.high / 2)}) {
        const double at = dot(a, axis), by = dot(way, axis);
        if (std::abs(by) < 1e-12) {
            if (std::abs(at) > half) {
                return false;
            }
            continue;
        }
        const double one = (-half - at) / by, other = (half - at) / by;
        first = std::max(first, std::min(one, other));
        last = std::min(last, std::max(one, other));
    }
    return first < last;
}

double reach(const PageBox& box, PlanVector axis) {
    return std::abs(dot(box.along, axis)) * box.wide / 2 +
           std::abs(dot(across(box.along), axis)) * box.high / 2;
}

bool overlap(const PageBox& a, const PageBox& b) {
    const std::array<PlanVector, 4> axes = {a.along, across(a.along), b.along, across(b.along)};
    return std::all_of(axes.begin(), axes.end(), [&](PlanVector axis) {
        return std::abs(dot(a.middle - b.middle, axis)) < reach(a, axis) + reach(b, axis);
    });
}

}  // namespace

bool PageRoom::is_free(const PageBox& box) const {
    return std::none_of(
               lines_.begin(), lines_.end(),
               [&](const PageLine& line) { return runs_through(line.from, line.to, box); }) &&
           std::none_of(boxes_.begin(), boxes_.end(),
                        [&](const PageBox& other) { return overlap(box, other); });
}

bool find_room_along(const PageRoom& room, PlanVector from, PlanVector to, int first_side,
                     PageBox& box) {
    const PlanVector way = to - from;
    const double length = length_of(way);
    const PlanVector along = way * (1 / length);
    const bool reads_left = along.x < -1e-9 || (std::abs(along.x) <= 1e-9 && along.y > 0);
    box.along = reads_left ? along * -1 : along;
    const PlanVector left = {along.y, -along.x};  // y runs down the page
    for (const double off : {0.62, 0.85, 1.2}) {
        for (const int side : {first_side, -first_side}) {
            for (const double at : {0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82}) {
                box.middle = from + way * at + left * (side * box.high * off);
                if (room.is_free(box)) {
                    return true;
                }
            }
        }
    }
    return false;
}

}  // namespace hemline
