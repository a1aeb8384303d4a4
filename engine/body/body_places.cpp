#include "engine/body/body_places.h"

#include <algorithm>
#include <cmath>

namespace hemline {

namespace {

/// A pitch is read to 1/16 in over 12 in: so far may its top be off, for each unit of run.
constexpr double pitch_off = 1 / 192.0;

/// Above its eaves; how far it goes on under its host says nothing.
double top_of(const BodyAlone& body) {
    std::vector<bool> hidden(body.places.size());
    for (const InnerLine& line : body.lines.lines) {
        if (body.said[line.left].kind == SideKind::open ||
            body.said[line.right].kind == SideKind::open) {
            hidden[line.from] = hidden[line.to] = true;
        }
    }
    double top = 0;
    for (std::size_t i = 0; i < body.places.size(); ++i) {
        top = std::max(top, hidden[i] ? 0 : body.places[i].z);
    }
    return top;
}

/// What puts its top at the host's height, where the two are as high but for their pitches.
double to_same_top(const BodyAlone& body, double height, const HostPlane& host) {
    const double top = top_of(body);
    double run = 0;
    for (const MovingSide& side : body.sides) {
        run = std::max(run, side.inward * top);
    }
    const double host_run = (host.top - host.eave) / host.rise;
    const double higher = host.top - (height + top);
    return top > 0 && std::abs(higher) < pitch_off * (run + host_run) ? higher : 0;
}

/// Where an eave comes out from under a plane.
PlanVector out_from_under(const EndlessPlane& under, PlanVector from, PlanVector along,
                          double height) {
    const double falls = dot(along, under.inside) * under.rise;
    return std::abs(falls) < 1e-6 ? from
                                  : from + along * ((height - under.height_over(from)) / falls);
}

}  // namespace

HostPlane host_plane_of(const BodyAlone& host, std::size_t eave, const BodyPlace& place,
                        const std::optional<EndlessPlane>& under) {
    HostPlane made;
    const std::size_t plane = host.lines.plane_of[eave], n = host.said.size();
    static_cast<EndlessPlane&>(made) = endless_plane(host.sides[plane], place);
    made.along = place.turned(line_of(host.sides[plane]).along);
    made.begins = place.in_roof(host.sides[eave].from);
    if (under && host.said[(eave + n - 1) % n].kind == SideKind::open) {
        made.begins = out_from_under(*under, made.begins, made.along, made.eave);
    }
    made.top = made.eave;
    for (const InnerLine& line : host.lines.lines) {
        if (line.left == plane || line.right == plane) {
            made.top = std::max({made.top, made.eave + host.places[line.from].z,
                                 made.eave + host.places[line.to].z});
        }
    }
    return made;
}

BodyPlace place_running_in(const BodyAlone& body, const RunsInto& said, const HostPlane& host) {
    const MovingSide& front = body.sides[front_of(body.said, body.sides)];
    const PlanVector way = line_of(front).along;
    BodyPlace place;
    place.along = {dot(way, host.along), turn(way, host.along)};
    place.at = host.begins + host.along * static_cast<double>(said.along.nm()) +
               host.inside * static_cast<double>(said.up.nm()) - place.turned(front.from);
    place.height = host.eave + static_cast<double>(said.rise.nm());
    place.height += to_same_top(body, place.height, host);
    return place;
}

bool lies_under_host(const RoofBody& body) {
    return body.host &&
           std::any_of(body.sides.begin(), body.sides.end(),
                       [&](const BodySide& side) { return side.meets == body.host->eave; });
}

BodyPlace place_under_eave(const RoofBody& low, std::span<const MovingSide> sides,
                           std::size_t transition, double rise, const MovingSide& eave) {
    // What the lower body's plan is in the upper one's: turned round, its end on the eave's left
    // end.
    const MovingSide& top = sides[transition];
    const PlanVector way = line_of(top).along, along = line_of(eave).along, onto = along * -1;
    BodyPlace in_upper;
    in_upper.along = {dot(way, onto), turn(way, onto)};
    in_upper.at = eave.from - in_upper.turned(top.to);
    if (lies_under_host(low)) {
        const PlanVector front = in_upper.in_roof(sides[front_of(low.sides, sides)].from);
        in_upper.at = in_upper.at + along * (static_cast<double>(low.host->along.nm()) -
                                             dot(front - eave.from, along));
    }
    in_upper.height = -rise;
    return in_upper;
}

BodyPlace turned_back(const BodyPlace& place) {
    BodyPlace back;
    back.along = {place.along.x, -place.along.y};
    back.at = back.turned(place.at) * -1;
    back.height = -place.height;
    return back;
}

BodyPlace one_in_other(const BodyPlace& outer, const BodyPlace& inner) {
    return {outer.in_roof(inner.at), outer.turned(inner.along), outer.height + inner.height};
}

EndlessPlane seen_from(const BodyPlace& place, const EndlessPlane& plane) {
    EndlessPlane moved = plane;
    moved.inside = place.turned(plane.inside);
    moved.begin = dot(place.in_roof(plane.inside * plane.begin), moved.inside);
    moved.eave = plane.eave + place.height;
    return moved;
}

std::size_t front_of(std::span<const BodySide> sides, std::span<const MovingSide> moving) {
    const auto open = std::find_if(sides.begin(), sides.end(), [](const BodySide& side) {
        return side.kind == SideKind::open;
    });
    if (open == sides.end()) {
        return 0;
    }
    const PlanVector way = line_of(moving[static_cast<std::size_t>(open - sides.begin())]).along;
    for (std::size_t i = 0; i < sides.size(); ++i) {
        if (dot(line_of(moving[i]).along, way) < -1 + 1e-6) {
            return i;
        }
    }
    return 0;
}

}  // namespace hemline
