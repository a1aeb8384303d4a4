#include "engine/work/prop.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace hemline {

namespace {

constexpr double head_mm = 7;
constexpr int head_corners = 8;
constexpr double person_mm = 110;  // not to scale: as high as the picture has room for

}  // namespace

std::optional<LegPatch> patch_of(const std::vector<Facet>& piece, std::size_t leg) {
    LegPatch patch;
    std::vector<Space> corners;
    for (const Facet& facet : piece) {
        if (facet.leg == leg && !facet.is_tab) {
            patch.normal = facet.normal;
            corners.insert(corners.end(), facet.corners.begin(), facet.corners.end());
        }
    }
    if (corners.empty()) {
        return {};
    }
    // Along is x: the piece lies so. Across leads away from the main bend, which is where y and z
    // are 0.
    patch.across = unit(cross(patch.normal, patch.along));
    const auto low_high = [&](const Space& direction) {
        const auto [low, high] = std::minmax_element(
            corners.begin(), corners.end(),
            [&](const Space& a, const Space& b) { return dot(a, direction) < dot(b, direction); });
        return std::pair(dot(*low, direction), dot(*high, direction));
    };
    auto [low, high] = low_high(patch.across);
    if (std::abs(high) < std::abs(low)) {
        patch.across = patch.across * -1;
        std::tie(low, high) = low_high(patch.across);
    }
    patch.wide = high - low;
    patch.at_bend = patch.across * low + patch.normal * dot(corners.front(), patch.normal);
    std::tie(patch.x0, patch.x1) = low_high(patch.along);
    return patch;
}

Facet figure(std::vector<Space> corners) {
    Facet facet;
    facet.normal = unit(cross(corners[1] - corners[0], corners[2] - corners[1]));
    facet.rims.assign(corners.size(), Rim::cut);
    facet.corners = std::move(corners);
    return facet;
}

Prop sheet(Stuff stuff, const LegPatch& on, double x0, double x1, double a0, double a1, double up) {
    return {stuff,
            {figure({on.at(x0, a0, up), on.at(x1, a0, up), on.at(x1, a1, up), on.at(x0, a1, up)})}};
}

Prop upright(Stuff stuff, const LegPatch& on, double x0, double a0, double x1, double a1,
             double from, double to) {
    return {
        stuff,
        {figure({on.at(x0, a0, from), on.at(x1, a1, from), on.at(x1, a1, to), on.at(x0, a0, to)})}};
}

Prop heads(const LegPatch& on, const std::vector<double>& xs, double a, double up) {
    Prop prop{Stuff::fastener, {}};
    for (const double x : xs) {
        std::vector<Space> round;
        for (int i = 0; i < head_corners; ++i) {
            const double turn = 2 * std::numbers::pi * i / head_corners;
            round.push_back(on.at(x + head_mm * std::cos(turn), a + head_mm * std::sin(turn), up));
        }
        prop.facets.push_back(figure(std::move(round)));
    }
    return prop;
}

Prop block(Stuff stuff, const LegPatch& on, double x0, double x1, double a0, double a1, double from,
           double to) {
    Prop prop = sheet(stuff, on, x0, x1, a0, a1, to);
    const auto add = [&](double xa, double aa, double xb, double ab) {
        const Prop side = upright(stuff, on, xa, aa, xb, ab, from, to);
        prop.facets.push_back(side.facets.front());
    };
    add(x0, a0, x1, a0);
    add(x1, a0, x1, a1);
    add(x1, a1, x0, a1);
    add(x0, a1, x0, a0);
    return prop;
}

Prop person(const LegPatch& on, double x, double a) {
    const double h = person_mm;
    Prop prop{Stuff::person, {}};
    const auto stroke = [&](double x0, double x1, double from, double to) {
        prop.facets.push_back(
            upright(Stuff::person, on, x0, a, x1, a, from * h, to * h).facets.front());
    };
    stroke(x - 10, x - 3, 0, 0.45);
    stroke(x + 3, x + 10, 0, 0.45);
    stroke(x - 12, x + 12, 0.45, 0.82);
    stroke(x - 6, x + 6, 0.86, 1);
    return prop;
}

std::vector<Facet> moved(std::vector<Facet> facets, const Space& by) {
    for (Facet& facet : facets) {
        for (Space& corner : facet.corners) {
            corner = corner + by;
        }
    }
    return facets;
}

Prop moved(Prop prop, const Space& by) {
    prop.facets = moved(std::move(prop.facets), by);
    return prop;
}

Props moved(Props props, const Space& by) {
    for (Prop& prop : props) {
        prop = moved(std::move(prop), by);
    }
    return props;
}

Props both(Props one, const Props& other) {
    one.insert(one.end(), other.begin(), other.end());
    return one;
}

}  // namespace hemline
