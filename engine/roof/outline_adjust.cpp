#include "engine/roof/outline_adjust.h"

#define EIGEN_MPL2_ONLY  // what is under another license is an error
#include <eigen3/Eigen/Dense>

#include "engine/require.h"

namespace hemline {

namespace {

/// A row for each that is to close: x, y, turning. So few are multiplied one by one; the code for
/// large matrices would be a tenth of the browser's engine.
using Matrix = Eigen::Matrix<double, 3, Eigen::Dynamic>;
using Vector = Eigen::VectorXd;

/// A side as it is drawn: its length and its heading.
struct Stroke {
    double nm = 0;
    double heading = 0;
};

std::vector<Eigen::Vector2d> places_of(const std::vector<Stroke>& strokes) {
    std::vector<Eigen::Vector2d> places = {Eigen::Vector2d::Zero()};
    for (const Stroke& stroke : strokes) {
        places.push_back(places.back() + stroke.nm * Eigen::Vector2d(std::cos(stroke.heading),
                                                                     std::sin(stroke.heading)));
    }
    return places;
}

std::vector<Stroke> strokes_of(const Walk& walk, const Closing& closing) {
    const std::vector<double> implied = implied_nm(closing);
    require(implied.size() == closing.unread.size(), "an adjustment of unsettled lengths");
    std::vector<Stroke> strokes;
    double heading = 0;
    std::size_t unread = 0;
    for (const WalkSide& side : walk.sides) {
        const double nm = side.length ? static_cast<double>(side.length->nm()) * side.plan_of_one
                                      : implied[unread++];
        strokes.push_back({nm, heading});
        heading += radians_of(half_turn - side.after.inside.value());
    }
    return strokes;
}

/// How the walk's end (and the sum of its turns) moves with each length and each corner, and the
/// square of how far each may be off.
struct Linear {
    Matrix moves;  ///< rows: x, y, turn; columns: lengths, then corners
    Vector variance;
};

/// Nanometers and radians do not mix well: a turn is counted in nanometers at the end of this arm.
constexpr double arm_nm = 1e10;

Linear linear_of(const Walk& walk, const std::vector<Stroke>& strokes) {
    const auto sides = static_cast<Eigen::Index>(strokes.size());
    Linear linear{Matrix::Zero(3, 2 * sides), Vector::Zero(2 * sides)};
    const std::vector<Eigen::Vector2d> places = places_of(strokes);
    for (Eigen::Index i = 0; i < sides; ++i) {
        const auto at = static_cast<std::size_t>(i);
        const WalkSide& side = walk.sides[at];
        linear.moves(0, i) = std::cos(strokes[at].heading);
        linear.moves(1, i) = std::sin(strokes[at].heading);
        // An unread length may change freely: it takes up all error in its direction.
        const double off = side.length ? side.tape_nm : 1e9;
        linear.variance(i) = off * off;
        const Eigen::Vector2d rest = places.back() - places[at + 1];
        linear.moves(0, sides + i) = -rest.y() / arm_nm;
        linear.moves(1, sides + i) = rest.x() / arm_nm;
        linear.moves(2, sides + i) = 1;
        const double turn = radians_of(side.after.within) * arm_nm;
        linear.variance(sides + i) = turn * turn;
    }
    return linear;
}

/// Changes the sides as little as possible so that the walk ends where it began.
void adjust(const Walk& walk, std::vector<Stroke>& strokes, double turn_left) {
    const Linear linear = linear_of(walk, strokes);
    const Eigen::Vector2d miss = places_of(strokes).back();
    const Eigen::Vector3d wanted(-miss.x(), -miss.y(), turn_left * arm_nm);
    const Matrix weighed = linear.moves * linear.variance.asDiagonal();
    const Eigen::Matrix3d all = linear.moves.lazyProduct(weighed.transpose());
    const Eigen::Vector3d share = all.fullPivLu().solve(wanted);
    const Vector change = weighed.transpose().lazyProduct(share);
    const auto sides = static_cast<Eigen::Index>(strokes.size());
    double turned = 0;
    for (Eigen::Index i = 0; i < sides; ++i) {
        Stroke& stroke = strokes[static_cast<std::size_t>(i)];
        stroke.nm += change(i);
        stroke.heading += turned;
        turned += change(sides + i) / arm_nm;
    }
}

}  // namespace

std::vector<PlanVector> adjusted_places(const Walk& walk, const Closing& closing) {
    std::vector<Stroke> strokes = strokes_of(walk, closing);
    // Turning is not linear: the next steps take what the first leaves.
    double turn_left = radians_of(closing.turn_left.value());
    for (int step = 0; step < 4; ++step) {
        adjust(walk, strokes, turn_left);
        turn_left = 0;
    }
    std::vector<PlanVector> places;
    for (const Eigen::Vector2d& place : places_of(strokes)) {
        places.push_back({place.x(), place.y()});
    }
    places.back() = places.front();
    return places;
}

}  // namespace hemline
