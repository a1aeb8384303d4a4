// The painter's order, against the eye itself: at every place on the page the facet painted last is
// the nearest one (found point by point, without the order).
#include "engine/trim/solid.h"

#include <doctest/doctest.h>

#include <cmath>
#include <random>

#include "tests/engine/trim/sections.h"

using namespace hemline;

namespace {

struct Eye {
    Space right, up, toward;
};

Eye eye_at(double turned, double raised) {
    const double a = turned * 0.0174532925, e = raised * 0.0174532925;
    return {{std::cos(a), std::sin(a), 0},
            {-std::sin(a) * std::sin(e), std::cos(a) * std::sin(e), std::cos(e)},
            {std::sin(a) * std::cos(e), -std::cos(a) * std::cos(e), std::sin(e)}};
}

/// Depth of the facet under a place of the page, if it covers it, `inside` mm or more from its
/// sides.
std::optional<double> depth_at(const Facet& facet, const Eye& eye, double x, double y,
                               double inside) {
    const double facing = dot(facet.normal, eye.toward);
    if (std::abs(facing) < 0.02) {
        return {};
    }
    double sign = 0;
    for (std::size_t i = 0; i < facet.corners.size(); ++i) {
        const Space& p = facet.corners[i];
        const Space& q = facet.corners[(i + 1) % facet.corners.size()];
        const double px = dot(p, eye.right), py = dot(p, eye.up);
        const double qx = dot(q, eye.right), qy = dot(q, eye.up);
        const double length = std::hypot(qx - px, qy - py);
        if (length < 1e-6) {
            continue;
        }
        const double off = ((qx - px) * (y - py) - (qy - py) * (x - px)) / length;
        if (std::abs(off) < inside || (sign != 0 && off * sign < 0)) {
            return {};
        }
        sign = off;
    }
    // The place in the facet's plane: p + right·x + up·y + toward·t.
    const Space at{eye.right.x * x + eye.up.x * y, eye.right.y * x + eye.up.y * y,
                   eye.right.z * x + eye.up.z * y};
    return (dot(facet.normal, facet.corners[0]) - dot(facet.normal, at)) / facing;
}

double area(const std::vector<Facet>& facets) {
    double sum = 0;
    for (const Facet& facet : facets) {
        for (std::size_t i = 1; i + 1 < facet.corners.size(); ++i) {
            const Space &a = facet.corners[0], &b = facet.corners[i], &c = facet.corners[i + 1];
            const Space u{b.x - a.x, b.y - a.y, b.z - a.z}, v{c.x - a.x, c.y - a.y, c.z - a.z};
            const Space w{u.y * v.z - u.z * v.y, u.z * v.x - u.x * v.z, u.x * v.y - u.y * v.x};
            sum += std::sqrt(dot(w, w)) / 2;
        }
    }
    return sum;
}

FlatPattern worked(const Section& section, std::int64_t rise) {
    std::vector<EndStep> steps;
    if (section.legs.size() > 2 && section.legs[0].name == LegName::flange) {
        steps = {{EndDeed::flange_cut, inches(1), {}},
                 {EndDeed::tab, inches(1), {}},
                 {EndDeed::tab_clip, {}, sixteenths(4)},
                 {EndDeed::drip_clip, inches(1), {}}};
    }
    const auto pattern = flat_pattern(section, bends_at(section, rise), feet(3), steps, {});
    REQUIRE_MESSAGE(pattern.ok(), section.trim);
    return *pattern;
}

std::vector<Facet> end_of(const FlatPattern& pattern, FoldStep step, Slope pitch) {
    const Length reach = inches(8);
    const FlatPattern end = near_end(pattern, Side::left, reach);
    return facets_of(end, fold_up(end, step_of(step), resting(end, pitch)), reach.nm());
}

}  // namespace

TEST_CASE("At every place the facet painted last is the one nearest the eye, whatever the trim") {
    std::mt19937 random(4);
    std::uniform_real_distribution<double> side(-250, 250), angle(-180, 180);
    const Sections sections = sections_of_assets();
    int hits = 0;
    for (const Section& section : sections.all()) {
        for (const std::int64_t rise : {3, 9}) {
            const std::vector<Facet> facets =
                end_of(worked(section, rise), FoldStep::tabs_half, rise_in_12(rise));
            const Eye eye = eye_at(angle(random), angle(random) / 2);
            const std::vector<Facet> painted = back_to_front(facets, eye.toward);
            CHECK(area(painted) == doctest::Approx(area(facets)).epsilon(1e-6));
            for (int i = 0; i < 2000; ++i) {
                const double x = side(random), y = side(random);
                std::optional<double> nearest, last;
                for (const Facet& facet : facets) {
                    const auto depth = depth_at(facet, eye, x, y, 0.1);
                    nearest = depth && (!nearest || *depth > *nearest) ? depth : nearest;
                }
                for (const Facet& facet : painted) {
                    const auto depth = depth_at(facet, eye, x, y, 0);  // a cut is not a side
                    last = depth ? depth : last;
                }
                if (nearest && last) {
                    ++hits;
                    CHECK(*last >= *nearest - 0.05);
                }
            }
        }
    }
    CHECK(hits > 1000);
}

TEST_CASE("The facets of an end hold all of its metal, and only the place it goes on is broken") {
    const Sections sections = sections_of_assets();
    for (const Section& section : sections.all()) {
        const FlatPattern pattern = worked(section, 6);
        const FlatPattern end = near_end(pattern, Side::left, inches(8));
        double flat = 0;
        for (const FlatOutline& panel : end.panels) {
            flat += area_mm2(panel);
        }
        for (const FlatTab& tab : end.tabs) {
            flat += area_mm2(tab.outline);
        }
        const auto facets = end_of(pattern, FoldStep::finished, rise_in_12(6));
        CHECK(area(facets) == doctest::Approx(flat).epsilon(1e-6));
        for (const Facet& facet : facets) {
            for (std::size_t i = 0; i < facet.rims.size(); ++i) {
                if (facet.rims[i] == Rim::broken) {
                    CHECK(facet.corners[i].x == doctest::Approx(8 * 25.4).epsilon(1e-6));
                }
            }
        }
    }
}

TEST_CASE("The piece goes on over the whole girth of its shown end, once on each leg") {
    const Sections sections = sections_of_assets();
    for (const Section& section : sections.all()) {
        const FlatPattern pattern = worked(section, 6);
        double broken = 0;
        std::size_t sides = 0;
        for (const Facet& facet : end_of(pattern, FoldStep::finished, rise_in_12(6))) {
            for (std::size_t i = 0; i < facet.rims.size(); ++i) {
                if (facet.rims[i] == Rim::broken) {
                    const Space& next = facet.corners[(i + 1) % facet.corners.size()];
                    broken += length_of(next - facet.corners[i]);
                    ++sides;
                }
            }
        }
        // Cut straight across: nothing of the girth is lost, and no leg is counted twice.
        const double girth = static_cast<double>(pattern.legs.edges.back().nm()) / 1e6;
        CHECK_MESSAGE(broken == doctest::Approx(girth).epsilon(1e-6), section.trim);
        CHECK_MESSAGE(sides == section.legs.size(), section.trim);
    }
}
