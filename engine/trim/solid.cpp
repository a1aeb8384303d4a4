#include "engine/trim/solid.h"

#include <algorithm>
#include <cmath>

#include "engine/trim/triangles.h"

namespace hemline {

namespace {

constexpr double touch_mm = 0.01;           // a point nearer to a plane than this is on it
constexpr double closed_hem_degrees = 173;  // drawn open, so that it can be told from its leg

bool is_on_line(const FlatPoint& p, const FlatLine& line) {
    const double length = std::hypot(static_cast<double>(line.b.x - line.a.x),
                                     static_cast<double>(line.b.y - line.a.y));
    return length > 0 && std::abs(turn(line.a, line.b, p)) / length < touch_mm * 1e6;
}

/// What the outline's side from p to q is.
Rim rim_of(const FlatPattern& pattern, std::int64_t broken_at, const FlatPoint& p,
           const FlatPoint& q) {
    if (p.x == broken_at && q.x == broken_at) {
        return Rim::broken;
    }
    const auto& edges = pattern.legs.edges;
    for (std::size_t i = 1; i + 1 < edges.size(); ++i) {
        if (p.y == edges[i].nm() && q.y == edges[i].nm()) {
            return Rim::fold;
        }
    }
    for (const FlatTab& tab : pattern.tabs) {
        if (is_on_line(p, tab.fold) && is_on_line(q, tab.fold)) {
            return Rim::fold;
        }
    }
    return Rim::cut;
}

struct Plane {
    Space normal;
    double off = 0;
    [[nodiscard]] double above(const Space& p) const { return dot(normal, p) - off; }
};

Plane plane_of(const Facet& facet) { return {facet.normal, dot(facet.normal, facet.corners[0])}; }

/// The part of the facet above the plane, or (`side` -1) below it.
Facet part(const Facet& facet, const Plane& plane, double side) {
    Facet kept = facet;
    kept.corners.clear();
    kept.rims.clear();
    const std::size_t n = facet.corners.size();
    for (std::size_t i = 0; i < n; ++i) {
        const Space& p = facet.corners[i];
        const Space& q = facet.corners[(i + 1) % n];
        const double a = plane.above(p) * side, b = plane.above(q) * side;
        if (a >= 0) {
            kept.corners.push_back(p);
            kept.rims.push_back(facet.rims[i]);
        }
        if ((a < 0) != (b < 0)) {
            kept.corners.push_back(p + (q - p) * (a / (a - b)));
            kept.rims.push_back(a < 0 ? facet.rims[i] : Rim::none);  // along the cut, or after it
        }
    }
    return kept;
}

void order(std::vector<Facet> facets, const Space& toward_eye, std::vector<Facet>& out) {
    if (facets.empty()) {
        return;
    }
    const Plane plane = plane_of(facets.front());
    std::vector<Facet> above, below, on;
    for (Facet& facet : facets) {
        double high = 0, low = 0;
        for (const Space& corner : facet.corners) {
            high = std::max(high, plane.above(corner));
            low = std::min(low, plane.above(corner));
        }
        if (high <= touch_mm && low >= -touch_mm) {
            on.push_back(std::move(facet));
        } else if (low >= -touch_mm) {
            above.push_back(std::move(facet));
        } else if (high <= touch_mm) {
            below.push_back(std::move(facet));
        } else {
            above.push_back(part(facet, plane, 1));
            below.push_back(part(facet, plane, -1));
        }
    }
    const bool eye_above = dot(plane.normal, toward_eye) > 0;
    order(std::move(eye_above ? below : above), toward_eye, out);
    out.insert(out.end(), on.begin(), on.end());
    order(std::move(eye_above ? above : below), toward_eye, out);
}

}  // namespace

FlatPattern near_end(const FlatPattern& pattern, Side side, Length reach) {
    FlatPattern end = pattern;
    const std::int64_t length = pattern.length.nm();
    const std::int64_t from =
        side == Side::left ? 0 : std::max<std::int64_t>(0, length - reach.nm());
    const std::int64_t to = side == Side::left ? std::min(length, reach.nm()) : length;
    const std::int64_t low = pattern.legs.edges.back().nm();
    const FlatOutline window = tidy({{from, 0}, {from, low}, {to, low}, {to, 0}});
    for (FlatOutline& panel : end.panels) {
        const std::vector<FlatOutline> parts = parts_in(panel, window);
        const auto largest = std::max_element(
            parts.begin(), parts.end(),
            [](const auto& a, const auto& b) { return area_mm2(a) < area_mm2(b); });
        panel = largest == parts.end() ? FlatOutline() : *largest;
    }
    end.tabs.erase(std::remove_if(end.tabs.begin(), end.tabs.end(),
                                  [&](const FlatTab& tab) { return tab.side != side; }),
                   end.tabs.end());
    for (std::size_t i = 0; i < end.legs.bends.size(); ++i) {
        const Hem hem = end.hems[i] != Hem::none ? end.hems[i] : end.hems[i + 1];
        if (hem == Hem::closed) {
            end.legs.bends[i] = std::copysign(closed_hem_degrees, end.legs.bends[i]);
        }
    }
    return end;
}

std::vector<Facet> facets_of(const FlatPattern& pattern, const std::vector<Face>& faces,
                             std::int64_t broken_at) {
    std::vector<Facet> facets;
    for (std::size_t i = 0; i < faces.size(); ++i) {
        const bool is_panel = i < pattern.panels.size();
        const FlatOutline& outline =
            is_panel ? pattern.panels[i] : pattern.tabs[i - pattern.panels.size()].outline;
        const std::size_t n = outline.size();
        for (const auto& triangle : triangles_of(outline)) {
            Facet facet;
            facet.normal = faces[i].normal;
            facet.leg = faces[i].leg;
            facet.is_tab = faces[i].is_tab;
            for (std::size_t k = 0; k < 3; ++k) {
                const std::size_t p = triangle[k], q = triangle[(k + 1) % 3];
                facet.corners.push_back(faces[i].corners[p]);
                facet.rims.push_back((p + 1) % n == q
                                         ? rim_of(pattern, broken_at, outline[p], outline[q])
                                         : Rim::none);
            }
            facets.push_back(std::move(facet));
        }
    }
    return facets;
}

std::vector<Facet> plane_facets(const std::vector<Space>& corners, std::size_t leg) {
    Space normal;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        normal = normal + cross(corners[i], corners[(i + 1) % corners.size()]);
    }
    normal = unit(normal);
    // Seen along the axis that it faces most.
    const double x = std::abs(normal.x), y = std::abs(normal.y), z = std::abs(normal.z);
    FlatOutline flat;
    for (const Space& corner : corners) {
        const double across = x > y && x > z ? corner.y : corner.x;
        const double down = z >= x && z >= y ? corner.y : corner.z;
        flat.push_back({std::llround(across * 1e6), std::llround(down * 1e6)});
    }
    std::vector<Facet> facets;
    for (const auto& triangle : triangles_of(flat)) {
        // Each has its own plane: corners that were measured are not in one to the last digit.
        const Space& first = corners[triangle[0]];
        const Space own = cross(corners[triangle[1]] - first, corners[triangle[2]] - first);
        if (length_of(own) < touch_mm * touch_mm) {
            continue;
        }
        Facet facet;
        facet.normal = unit(own) * (dot(own, normal) < 0 ? -1 : 1);
        facet.leg = leg;
        for (std::size_t k = 0; k < 3; ++k) {
            const std::size_t p = triangle[k], q = triangle[(k + 1) % 3];
            const bool outer = (p + 1) % corners.size() == q || (q + 1) % corners.size() == p;
            facet.corners.push_back(corners[p]);
            facet.rims.push_back(outer ? Rim::fold : Rim::none);
        }
        facets.push_back(std::move(facet));
    }
    return facets;
}

std::vector<Facet> back_to_front(std::vector<Facet> facets, const Space& toward_eye) {
    std::vector<Facet> out;
    out.reserve(facets.size() * 2);
    order(std::move(facets), toward_eye, out);
    return out;
}

}  // namespace hemline
