#include "engine/body/next_around.h"

#include <numbers>
#include <optional>

namespace hemline {

namespace {

/// How far `way` lies clockwise from `from`, above 0 to a whole turn.
double clockwise_from(PlanVector from, PlanVector way) {
    const double angle = std::atan2(-turn(from, way), dot(from, way));
    return angle > 1e-12 ? angle : angle + 2 * std::numbers::pi;
}

/// Of the courses that begin where `last` ends, the first one clockwise from the way back.
std::optional<std::size_t> next_after(const Course& last, std::span<const Course> courses,
                                      std::span<const PlanVector> places) {
    const PlanVector back = places[last.from] - places[last.to];
    std::optional<std::size_t> next;
    double least = 0;
    for (std::size_t i = 0; i < courses.size(); ++i) {
        if (courses[i].from != last.to) {
            continue;
        }
        const double angle = clockwise_from(back, places[courses[i].to] - places[last.to]);
        if (!next || angle < least) {
            next = i;
            least = angle;
        }
    }
    return next;
}

}  // namespace

std::vector<std::vector<Course>> walks_of(std::vector<Course> courses,
                                          std::span<const PlanVector> places) {
    std::vector<std::vector<Course>> walks;
    while (!courses.empty()) {
        std::vector<Course> walk = {courses.back()};
        courses.pop_back();
        while (walk.back().to != walk.front().from) {
            const std::optional<std::size_t> next = next_after(walk.back(), courses, places);
            if (!next) {
                break;
            }
            walk.push_back(courses[*next]);
            courses.erase(courses.begin() + static_cast<std::ptrdiff_t>(*next));
        }
        if (walk.back().to == walk.front().from) {
            walks.push_back(std::move(walk));
        }
    }
    return walks;
}

}  // namespace hemline
