#include "engine/panels/plane_readings.h"

#include <algorithm>
#include <cmath>

#include "engine/panels/seam_layout.h"
#include "engine/roof/nearest.h"
#include "engine/roof/readings.h"
#include "engine/roof/square_check.h"

namespace hemline {

namespace {

double square_of(Length length) { return nm_of(length) * nm_of(length); }

struct Slopes {
    Length left, right;
};

Slopes slopes_of(const DeckPlane& plane, const PlaneReadings& read, Tape tape) {
    const Length worked_out = nearest_nm(plane.top);
    const Length left = read.left.value_or(read.right.value_or(worked_out));
    const Length right = read.right.value_or(left);
    const Length both[] = {left, right};
    const Verdict verdict = judge_readings(both, tape, sixteenths(1));
    return verdict.agreement == Agreement::agree ? Slopes{*verdict.length, *verdict.length}
                                                 : Slopes{left, right};
}

void doubt_slopes(const DeckPlane& plane, const PlaneReadings& read, Tape tape,
                  std::vector<Problem>& doubts) {
    for (const auto& one : {read.left, read.right}) {
        if (!one) {
            continue;
        }
        const Text what = doubt_about(*one, nearest_nm(plane.top), tape);
        if (!what.empty()) {
            doubts.push_back({what, say("Read the slope length again, square to the eave.")});
        }
    }
    if (!read.left && !read.right) {
        doubts.push_back({say("The slope length is worked out, not read."),
                          say("Read it at both ends before panels are ordered.")});
    } else if (!read.left || !read.right) {
        doubts.push_back({say("The slope length is read at one end alone."),
                          say("Read it at the other end too: the top may not be level.")});
    }
}

/// How far the top may seem longer than the eave by what the tape is off.
double unsure_of_top(const PlaneReadings& read, const Slopes& slopes, Length eave, Tape tape) {
    double unsure = nm_of(allowed_difference(eave, tape));
    for (const Length one : {*read.rising, *read.falling, slopes.left, slopes.right}) {
        unsure += nm_of(one) / nm_of(eave) * nm_of(allowed_difference(one, tape)) / 2;
    }
    return unsure;
}

void doubt_diagonals(const PlaneReadings& read, const Slopes& slopes, Length eave, Tape tape,
                     std::vector<Problem>& doubts) {
    const double longer = (square_of(*read.rising) + square_of(*read.falling) -
                           square_of(slopes.left) - square_of(slopes.right)) /
                              (2 * nm_of(eave)) -
                          nm_of(eave);
    if (std::abs(longer) > unsure_of_top(read, slopes, eave, tape)) {
        const CloseLength by{nearest_nm(std::abs(longer))};
        doubts.push_back(
            {longer > 0 ? say("By these diagonals the top is {1} longer than the eave.", by)
                        : say("By these diagonals the top is {1} shorter than the eave.", by),
             say("Read both diagonals again. If they stand, the two sides are not parallel: read "
                 "each end pan where it lies.")});
    }
}

/// Problem: no plane has these diagonals. None: square within the tape.
Result<Length> lean_of(const PlaneReadings& read, const Slopes& slopes, Length eave, Tape tape) {
    for (const auto& [slope, diagonal] :
         {std::pair(slopes.right, *read.rising), {slopes.left, *read.falling}}) {
        if (const auto corner = corner_of(eave, slope, diagonal); !corner) {
            return corner.problem();
        }
    }
    const Length level = skew_of(eave, *read.rising, *read.falling);
    const Length lean =
        level + nearest_nm((square_of(slopes.left) - square_of(slopes.right)) / (4 * nm_of(eave)));
    const Length longer = std::max(*read.rising, *read.falling);
    const double unsure =
        nm_of(longer) * nm_of(allowed_difference(longer, tape)) / (2 * nm_of(eave));
    return std::abs(nm_of(lean)) <= unsure ? Length() : lean;
}

void put_right(DeckPlane& plane, const Slopes& slopes) {
    const double before = plane.top, wide = plane.right - plane.left;
    const auto height = [&](const PlanVector& place) {
        const double share = wide > 0 ? (place.x - plane.left) / wide : 0;
        const double slope = nm_of(slopes.left) + nm_of(slopes.right - slopes.left) * share;
        return place.y / before * slope;
    };
    plane.top = 0;
    for (DeckBound& bound : plane.bounds) {
        bound.from.y = height(bound.from);
        bound.to.y = height(bound.to);
        plane.top = std::max(plane.top, bound.to.y);
    }
    plane.top_rise = slopes.right - slopes.left;
}

}  // namespace

Result<ReadPlane> read_plane(const DeckPlane& plane, const PlaneReadings& read, Tape tape) {
    ReadPlane result{plane, {}};
    doubt_slopes(plane, read, tape, result.doubts);
    const Slopes slopes = slopes_of(plane, read, tape);
    if (slopes.left <= Length() || slopes.right <= Length()) {
        return Problem{say("A slope length of nothing leaves no plane."),
                       say("Read it from the eave to the top.")};
    }
    if (read.left || read.right) {
        put_right(result.plane, slopes);
    }
    if (read.rising && read.falling) {
        const SeamFrame frame = seam_frame(plane, inches(1), Length(), Length());
        if (!frame.left.square || !frame.right.square) {
            return Problem{say("Diagonals are read between two gables or walls; this plane has "
                               "a hip or valley at its side."),
                           say("Read its hips and valleys as edges, and both slope lengths.")};
        }
        const Length eave = nearest_nm(plane.right - plane.left);
        const Result<Length> lean = lean_of(read, slopes, eave, tape);
        if (!lean) {
            return lean.problem();
        }
        result.plane.lean = *lean;
        doubt_diagonals(read, slopes, eave, tape, result.doubts);
    } else if (read.rising || read.falling) {
        result.doubts.push_back(
            {say("One diagonal alone does not show whether the plane is square."),
             say("Read the other one too.")});
    }
    return result;
}

}  // namespace hemline
