#include "engine/body/walk_cleared.h"

#include <algorithm>

#include "engine/body/next_around.h"

namespace hemline {

namespace {

/// Places nearer than a hair to one another are one.
void gather_places(std::span<const PlanVector> corners, ClearedWalk& cleared) {
    for (const PlanVector corner : corners) {
        const auto same =
            std::find_if(cleared.places.begin(), cleared.places.end(), [&](PlanVector place) {
                return std::abs(place.x - corner.x) < 2 * hair &&
                       length_of(place - corner) < 2 * hair;
            });
        cleared.place_of.push_back(static_cast<std::size_t>(same - cleared.places.begin()));
        if (same == cleared.places.end()) {
            cleared.places.push_back(corner);
        }
    }
}

/// A stretch cut at every place that lies on it.
void cut_stretch(const ClearedWalk& cleared, std::size_t side, std::size_t from, std::size_t to,
                 std::vector<Course>& courses) {
    if (from == to) {
        return;
    }
    const PlanVector begin = cleared.places[from];
    const PlanVector whole = cleared.places[to] - begin;
    const double length = length_of(whole);
    std::vector<std::pair<double, std::size_t>> on = {{0, from}, {length, to}};
    for (std::size_t i = 0; i < cleared.places.size(); ++i) {
        const PlanVector seen = cleared.places[i] - begin;
        if (std::abs(turn(whole, seen)) >= 2 * hair * length || i == from || i == to) {
            continue;
        }
        const double ahead = dot(seen, whole) / length;
        if (ahead > 0 && ahead < length) {
            on.emplace_back(ahead, i);
        }
    }
    std::sort(on.begin(), on.end());
    for (std::size_t i = 0; i + 1 < on.size(); ++i) {
        courses.push_back({on[i].second, on[i + 1].second, side});
    }
}

/// Courses that run back over one another are taken out, and kept as met.
void take_out_back_to_back(std::vector<Course>& courses, std::vector<BackToBack>& met) {
    for (std::size_t i = 0; i < courses.size(); ++i) {
        const auto back =
            std::find_if(courses.begin() + static_cast<std::ptrdiff_t>(i) + 1, courses.end(),
                         [&](const Course& other) {
                             return other.from == courses[i].to && other.to == courses[i].from;
                         });
        if (back != courses.end()) {
            met.push_back({courses[i].side, back->side, courses[i].from, courses[i].to});
            courses.erase(back);
            courses.erase(courses.begin() + static_cast<std::ptrdiff_t>(i));
            --i;
        }
    }
}

}  // namespace

double doubled_area(const WalkAround& walk, std::span<const PlanVector> places) {
    double area = 0;
    for (std::size_t i = 0; i < walk.size(); ++i) {
        area += turn(places[walk[i].place], places[walk[(i + 1) % walk.size()].place]);
    }
    return area;
}

ClearedWalk clear_walk(std::span<const PlanVector> corners, std::span<const std::size_t> sides) {
    ClearedWalk cleared;
    gather_places(corners, cleared);
    std::vector<Course> courses;
    for (std::size_t i = 0; i < sides.size(); ++i) {
        cut_stretch(cleared, sides[i], cleared.place_of[i],
                    cleared.place_of[(i + 1) % sides.size()], courses);
    }
    take_out_back_to_back(courses, cleared.met);
    for (const std::vector<Course>& around : walks_of(courses, cleared.places)) {
        WalkAround walk;
        for (const Course& course : around) {
            walk.push_back({course.side, course.from});
        }
        cleared.walks.push_back(std::move(walk));
    }
    return cleared;
}

}  // namespace hemline
