#include "engine/trim/folding.h"

#include <cmath>

namespace hemline {

namespace {

constexpr double nm_in_mm = 1e6;
constexpr double open_hem_degrees = 168;  // drawn open, so that the gap is seen
constexpr double tear_drop_degrees = 160;

double mm(std::int64_t nm) { return static_cast<double>(nm) / nm_in_mm; }

/// The panel beyond a bend at y, turned by degrees (+ away from the upper face).
/// `down_page`: beyond means at larger y, else at smaller y.
Placing beyond_bend(const Placing& panel, std::int64_t y, double degrees, bool down_page) {
    const double c = std::cos(radians_of(degrees));
    const double s = std::sin(radians_of(degrees)) * (down_page ? 1 : -1);
    Placing turned = panel;
    turned.across = panel.across * c - panel.normal * s;
    turned.normal = panel.normal * c + panel.across * s;
    turned.origin = panel.at({0, y}) - turned.across * mm(y);
    return turned;
}

/// The vector turned about a unit axis (Rodrigues' formula).
Space turned_about(const Space& v, const Space& axis, double degrees) {
    const double c = std::cos(radians_of(degrees)), s = std::sin(radians_of(degrees));
    return v * c + cross(axis, v) * s + axis * (dot(axis, v) * (1 - c));
}

/// The tab beyond its fold, + away from the upper face.
Placing beyond_fold(const Placing& panel, const FlatTab& tab, double degrees) {
    const Space from = panel.at(tab.fold.a), to = panel.at(tab.fold.b);
    const Space axis = unit(to - from);
    // The fold runs down the page: a right tab then turns away from the upper face by the left
    // hand, a left one by the right hand.
    const double turn = tab.side == Side::left ? degrees : -degrees;
    Placing turned;
    turned.along = turned_about(panel.along, axis, turn);
    turned.across = turned_about(panel.across, axis, turn);
    turned.normal = turned_about(panel.normal, axis, turn);
    turned.origin = from + turned_about(panel.origin - from, axis, turn);
    return turned;
}

/// How far the section's bend is turned when done: a hem keeps the gap of its kind.
double turned_by(const FlatPattern& pattern, std::size_t bend) {
    const double degrees = pattern.legs.bends[bend];
    if (std::abs(degrees) < 180) {
        return degrees;
    }
    const Hem hem = pattern.hems[bend] != Hem::none ? pattern.hems[bend] : pattern.hems[bend + 1];
    const double turn = hem == Hem::open        ? open_hem_degrees
                        : hem == Hem::tear_drop ? tear_drop_degrees
                                                : std::abs(degrees);
    return degrees < 0 ? -turn : turn;
}

Face face_of(const FlatOutline& outline, const Placing& placing, std::size_t leg) {
    Face face;
    face.leg = leg;
    face.normal = placing.normal;
    for (const FlatPoint& p : outline) {
        face.corners.push_back(placing.at(p));
    }
    return face;
}

Space turned_in_plan(const Space& v, double degrees) {
    const double c = std::cos(radians_of(degrees)), s = std::sin(radians_of(degrees));
    return {v.x * c - v.y * s, v.x * s + v.y * c, v.z};
}

}  // namespace

Space Placing::at(FlatPoint p) const { return origin + along * mm(p.x) + across * mm(p.y); }

FoldProgress step_of(FoldStep step) {
    switch (step) {
        case FoldStep::flat:
            return {0, 0};
        case FoldStep::as_cut:
            return {1, 0};
        case FoldStep::tabs_half:
            return {1, 0.5};
        case FoldStep::finished:
            break;
    }
    return {1, 1};
}

std::vector<Face> fold_up(const FlatPattern& pattern, const FoldProgress& progress,
                          const Placing& root) {
    std::vector<Placing> placings(pattern.panels.size(), root);
    for (std::size_t leg = pattern.root + 1; leg < placings.size(); ++leg) {
        placings[leg] = beyond_bend(placings[leg - 1], pattern.legs.edges[leg].nm(),
                                    turned_by(pattern, leg - 1) * progress.bends, true);
    }
    for (std::size_t leg = pattern.root; leg-- > 0;) {
        placings[leg] = beyond_bend(placings[leg + 1], pattern.legs.edges[leg + 1].nm(),
                                    turned_by(pattern, leg) * progress.bends, false);
    }
    std::vector<Face> faces;
    for (std::size_t leg = 0; leg < placings.size(); ++leg) {
        faces.push_back(face_of(pattern.panels[leg], placings[leg], leg));
    }
    for (const FlatTab& tab : pattern.tabs) {
        const Placing placing = beyond_fold(placings[tab.leg], tab, tab.degrees * progress.tabs);
        Face face = face_of(tab.outline, placing, tab.leg);
        face.is_tab = true;
        face.side = tab.side;
        faces.push_back(std::move(face));
    }
    return faces;
}

Placing resting(const FlatPattern& pattern, Slope pitch, Falls falls) {
    const double slope = radians_of(degrees_of(pitch));
    const double fall = falls == Falls::down_page ? std::sin(slope) : -std::sin(slope);
    Placing placing;
    placing.across = {0, -std::cos(slope), -fall};
    placing.normal = {0, -fall, std::cos(slope)};
    const std::int64_t bend = pattern.legs.edges[pattern.main_bend + 1].nm();
    placing.origin = placing.across * -mm(bend);
    return placing;
}

Placing turned_in_plan(const Placing& placing, const Space& about, double degrees) {
    Placing turned;
    turned.origin = about + turned_in_plan(placing.origin - about, degrees);
    turned.along = turned_in_plan(placing.along, degrees);
    turned.across = turned_in_plan(placing.across, degrees);
    turned.normal = turned_in_plan(placing.normal, degrees);
    return turned;
}

Placing shifted(Placing placing, const Space& by) {
    placing.origin = placing.origin + by;
    return placing;
}

}  // namespace hemline
