#include "engine/trim/meeting.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "engine/trim/flat_shape.h"

namespace hemline {

namespace {

constexpr double may_touch_mm = 0.1;    // metal may touch
constexpr double one_plane_cos = 1e-6;  // 1 - cos of the angle up to which planes are the same
constexpr double overlap_most_mm2 = 1;
constexpr double least_sine = 1e-6;  // sine of the angle from which on planes cross

double off_plane(const Face& face, const Space& p) { return dot(p - face.corners[0], face.normal); }

/// The point in the plane of the face, in nm, so that flat_shape can work on it.
FlatPoint in_plane(const Face& face, const Space& p) {
    const Space u = unit(face.corners[1] - face.corners[0]);
    const Space v = cross(face.normal, u);
    const Space from = p - face.corners[0];
    return {std::llround(dot(from, u) * 1e6), std::llround(dot(from, v) * 1e6)};
}

FlatOutline outline_in(const Face& plane, const Face& face) {
    FlatOutline outline;
    for (const Space& corner : face.corners) {
        outline.push_back(in_plane(plane, corner));
    }
    return outline;
}

bool inside(const FlatOutline& outline, FlatPoint p) {
    bool in = false;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const FlatPoint& a = outline[i];
        const FlatPoint& b = outline[(i + 1) % outline.size()];
        if ((a.y > p.y) == (b.y > p.y)) {
            continue;
        }
        const double t = static_cast<double>(p.y - a.y) / static_cast<double>(b.y - a.y);
        in ^= static_cast<double>(p.x) <
              static_cast<double>(a.x) + t * static_cast<double>(b.x - a.x);
    }
    return in;
}

double to_edge(const Space& p, const Space& a, const Space& b) {
    const Space way = b - a;
    const double square = dot(way, way);
    const double t = square == 0 ? 0 : std::clamp(dot(p - a, way) / square, 0.0, 1.0);
    return length_of(p - (a + way * t));
}

double to_edges(const Face& face, const Space& p) {
    double least = length_of(p - face.corners[0]);
    for (std::size_t i = 0; i < face.corners.size(); ++i) {
        least = std::min(least,
                         to_edge(p, face.corners[i], face.corners[(i + 1) % face.corners.size()]));
    }
    return least;
}

Text named(const Face& face, const FlatPattern& pattern) {
    const Text leg = spoken(pattern.legs.names[face.leg]);
    return face.is_tab ? say("{1}'s tab", leg) : leg;
}

const Face* main_face(const std::vector<Face>& faces, const FlatPattern& pattern, LegName name) {
    for (const Face& face : faces) {
        if (!face.is_tab && pattern.legs.names[face.leg] == name) {
            return &face;
        }
    }
    return nullptr;
}

/// The corners of the flange's cut at the given end of the edge, from fold to free edge.
std::vector<Space> end_corners(const FlatPattern& pattern, const Face& face, Side side,
                               Length past) {
    std::vector<Space> corners;
    const FlatOutline& outline = pattern.panels[face.leg];
    const std::int64_t middle = pattern.length.nm() / 2;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const bool right = outline[i].x > middle;
        const bool at_end = side == Side::right ? right : !right;
        const bool in_metal = side == Side::right ? outline[i].x <= (pattern.length - past).nm()
                                                  : outline[i].x >= past.nm();
        if (at_end && in_metal) {
            corners.push_back(face.corners[i]);
        }
    }
    return corners;
}

void check_flanges(Meeting& meeting, const FlatPattern& left, const FlatPattern& right,
                   const Joint& joint) {
    const Face* a = main_face(meeting.left, left, LegName::flange);
    const Face* b = main_face(meeting.right, right, LegName::flange);
    if (a == nullptr || b == nullptr) {
        return;
    }
    const double gap =
        std::max(farthest_mm(*b, end_corners(left, *a, Side::right, joint.left_past)),
                 farthest_mm(*a, end_corners(right, *b, Side::left, joint.right_past)));
    const double most = static_cast<double>(joint.gap_most.nm()) / 1e6;
    meeting.gap_mm = std::max(meeting.gap_mm, gap);
    if (gap > most) {
        meeting.faults.push_back({say("The two flanges stand apart at the corner."),
                                  say("Cut the miter by the pitch and the corner as measured."),
                                  gap});
    }
    if (goes_through(*a, *b, most) || goes_through(*b, *a, most)) {
        meeting.faults.push_back({say("The two flanges run through one another at the corner."),
                                  say("Cut the miter further back."), gap});
    }
}

void check_corner_tabs(Meeting& meeting, const FlatPattern& right, const Joint& joint) {
    const Face* face = main_face(meeting.right, right, LegName::face);
    const double most = static_cast<double>(joint.gap_most.nm()) / 1e6;
    for (const Face& tab : meeting.left) {
        if (!tab.is_tab || tab.side != Side::right || face == nullptr) {
            continue;
        }
        double off = 0;
        for (const Space& corner : tab.corners) {
            off = std::max(off, std::abs(off_plane(*face, corner)));
        }
        meeting.gap_mm = std::max(meeting.gap_mm, off);
        if (off > most) {
            meeting.faults.push_back({say("The tab does not lie against its neighbour's face."),
                                      say("Fold the tab by 180° less the corner."), off});
        }
    }
}

/// Where the face passes through the plane of the other, as stretches along the line that the two
/// planes share: between corners that lie more than `touch` to either side.
std::vector<std::pair<double, double>> stretches_through(const Face& face, const Face& other,
                                                         const Space& line, double touch) {
    std::vector<double> places;
    const std::size_t count = face.corners.size();
    if (count == 0) {
        return {};
    }
    std::optional<std::size_t> before;  // the last corner clear of the plane
    for (std::size_t i = 0; i < 2 * count; ++i) {
        const double off = off_plane(other, face.corners[i % count]);
        if (std::abs(off) <= touch) {
            continue;
        }
        if (before && i >= count) {
            const std::size_t last = *before;
            const double last_off = off_plane(other, face.corners[last % count]);
            if ((off > 0) != (last_off > 0)) {
                // Past a corner that lies in the plane, that corner is the place.
                const Space& p = face.corners[(last + (i - last) / 2) % count];
                const Space& q = face.corners[(i - (i - last - 1) / 2) % count];
                const double from = off_plane(other, p), to = off_plane(other, q);
                const double t = from == to ? 0 : from / (from - to);
                places.push_back(dot(p + (q - p) * std::clamp(t, 0.0, 1.0), line));
            }
        }
        before = i;
    }
    std::sort(places.begin(), places.end());
    std::vector<std::pair<double, double>> stretches;
    for (std::size_t i = 0; i + 1 < places.size(); i += 2) {
        stretches.emplace_back(places[i], places[i + 1]);
    }
    return stretches;
}

}  // namespace

double farthest_mm(const Face& face, const std::vector<Space>& points) {
    double most = 0;
    const FlatOutline outline = outline_in(face, face);
    for (const Space& p : points) {
        const double off = std::abs(off_plane(face, p));
        most = std::max(most, inside(outline, in_plane(face, p)) ? off : to_edges(face, p));
    }
    return most;
}

bool goes_through(const Face& a, const Face& b, double touch) {
    const Space line = cross(a.normal, b.normal);
    if (length_of(line) < least_sine) {
        return false;
    }
    const auto of_a = stretches_through(a, b, unit(line), touch);
    const auto of_b = stretches_through(b, a, unit(line), touch);
    for (const auto& p : of_a) {
        for (const auto& q : of_b) {
            if (std::min(p.second, q.second) - std::max(p.first, q.first) > touch) {
                return true;
            }
        }
    }
    return false;
}

double overlap_mm2(const Face& a, const Face& b) {
    if (1 - std::abs(dot(a.normal, b.normal)) > one_plane_cos) {
        return 0;
    }
    for (const Space& corner : b.corners) {
        if (std::abs(off_plane(a, corner)) > may_touch_mm) {
            return 0;
        }
    }
    return shared_mm2(outline_in(a, a), outline_in(a, b));
}

std::vector<FoldFault> tab_faults(const FlatPattern& pattern) {
    std::vector<FoldFault> faults;
    const auto faces = fold_up(pattern, step_of(FoldStep::finished), {});
    for (std::size_t i = 0; i < faces.size(); ++i) {
        for (std::size_t j = 0; j < faces.size(); ++j) {
            if (i == j || !faces[i].is_tab) {
                continue;
            }
            const Text one = named(faces[i], pattern), other = named(faces[j], pattern);
            const double shared = faces[j].is_tab && i < j ? overlap_mm2(faces[i], faces[j]) : 0;
            if (shared > overlap_most_mm2) {
                faults.push_back({say("The {1} and the {2} lie in the same place.", one, other),
                                  say("Clip one of them back to the line where they meet."),
                                  std::sqrt(shared)});
            } else if (goes_through(faces[i], faces[j], may_touch_mm)) {
                faults.push_back({say("The {1} and the {2} run through one another.", one, other),
                                  say("Clip the tab, or cut the leg back to its fold."), 0});
            }
        }
    }
    return faults;
}

Meeting corner_meeting(const FlatPattern& left, const FlatPattern& right, const Joint& joint) {
    const FoldProgress done = step_of(FoldStep::finished);
    const auto mm = [](Length length) { return static_cast<double>(length.nm()) / 1e6; };
    Meeting meeting;
    meeting.left = fold_up(left, done, resting(left, joint.pitch));
    const Space corner{mm(left.length - joint.left_past), 0, 0};
    const Placing straight =
        shifted(resting(right, joint.pitch), {corner.x - mm(joint.right_past), 0, 0});
    meeting.right = fold_up(right, done,
                            turned_in_plan(straight, corner, degrees_of(half_turn - joint.corner)));
    check_flanges(meeting, left, right, joint);
    check_corner_tabs(meeting, right, joint);
    return meeting;
}

Meeting lap_meeting(const FlatPattern& under, const FlatPattern& over, Slope pitch, Length lap) {
    const FoldProgress done = step_of(FoldStep::finished);
    Meeting meeting;
    meeting.left = fold_up(under, done, resting(under, pitch));
    const double from = static_cast<double>((under.length - lap).nm()) / 1e6;
    meeting.right = fold_up(over, done, shifted(resting(over, pitch), {from, 0, 0}));
    const auto by_x = [](const Space& a, const Space& b) { return a.x < b.x; };
    for (const Face& a : meeting.left) {
        const Face* b = main_face(meeting.right, over, LegName::hem);
        if (a.is_tab || under.legs.names[a.leg] != LegName::hem || b == nullptr) {
            continue;
        }
        const double bind = std::max_element(a.corners.begin(), a.corners.end(), by_x)->x -
                            std::min_element(b->corners.begin(), b->corners.end(), by_x)->x;
        if (bind > may_touch_mm) {
            meeting.faults.push_back({say("The two hems bind in the lap."),
                                      say("Notch the lower piece's hem past the lap."), bind});
        }
    }
    return meeting;
}

}  // namespace hemline
