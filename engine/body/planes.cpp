#include "engine/body/planes.h"

#include "engine/body/next_around.h"

namespace hemline {

namespace {

std::vector<Course> courses_round(std::size_t plane, std::span<const MovingSide> sides,
                                  const InnerLines& lines) {
    std::vector<Course> courses;
    for (std::size_t i = 0; i < sides.size(); ++i) {
        if (lines.plane_of[i] == plane) {
            courses.push_back({i, (i + 1) % sides.size(), i});
        }
    }
    for (const InnerLine& line : lines.lines) {
        const std::size_t left = lines.plane_of[line.left], right = lines.plane_of[line.right];
        if (left == plane && right != plane) {
            courses.push_back({line.from, line.to, right});
        } else if (right == plane && left != plane) {
            courses.push_back({line.to, line.from, left});
        }
    }
    return courses;
}

}  // namespace

std::vector<Plane> planes_of(std::span<const MovingSide> sides, const InnerLines& lines) {
    std::vector<PlanVector> places;
    for (const LinePlace& place : lines.places) {
        places.push_back(place.at);
    }
    std::vector<Plane> planes;
    for (std::size_t i = 0; i < sides.size(); ++i) {
        if (sides[i].inward == 0 || lines.plane_of[i] != i) {
            continue;
        }
        Plane plane = {i, {}};
        for (const std::vector<Course>& around : walks_of(courses_round(i, sides, lines), places)) {
            std::vector<std::size_t> piece;
            for (const Course& course : around) {
                piece.push_back(course.from);
            }
            plane.pieces.push_back(std::move(piece));
        }
        planes.push_back(std::move(plane));
    }
    return planes;
}

double area_of(const Plane& plane, const InnerLines& lines) {
    double area = 0;
    for (const std::vector<std::size_t>& piece : plane.pieces) {
        for (std::size_t i = 0; i < piece.size(); ++i) {
            area +=
                turn(lines.places[piece[i]].at - lines.places[piece[0]].at,
                     lines.places[piece[(i + 1) % piece.size()]].at - lines.places[piece[0]].at) /
                2;
        }
    }
    return area;
}

}  // namespace hemline
