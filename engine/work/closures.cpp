#include "engine/work/closures.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "engine/panels/panel_layout.h"
#include "engine/plan/plan.h"
#include "engine/roof/edge_shape.h"
#include "engine/trim/practice.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

/// The cosine of the angle, on the metal, between a roof's eave and the line; 1 for a level line.
struct Skew {
    std::optional<Slope> pitch;
    double cosine = 1;
};

/// One for each roof whose pans end at the edge.
std::vector<Skew> skews_of(const Edge& edge) {
    const auto corner =
        stands_over_corner(edge.kind) ? roof_corner(edge, Side::left) : std::optional<RoofCorner>();
    const auto hip = corner ? std::optional(hip_line(*corner)) : std::nullopt;
    if (hip && hip->ok()) {
        const double slope = std::cos(radians_of((*hip)->slope_degrees));
        const auto skew = [&](double from_eave) {
            return std::abs(std::cos(radians_of(from_eave))) * slope;
        };
        return {{corner->pitch1, skew((*hip)->from_eave1_degrees)},
                {corner->pitch2, skew((*hip)->from_eave2_degrees)}};
    }
    if (facts_of(edge.kind).closed == Closed::both_sides) {
        return {{edge.pitch, 1}, {other_pitch(edge), 1}};
    }
    return {{edge.pitch, 1}};
}

Length stretched(Length length, double cosine) {
    return Length::of_nm(std::llround(static_cast<double>(length.nm()) / cosine));
}

ClosureSide side_of(const Skew& skew, Length length, const Practice& practice) {
    ClosureSide side;
    side.pitch = skew.pitch;
    // Across the seams the whole line takes so much: under a seam's own width it runs along them.
    const double across = static_cast<double>(length.nm()) * skew.cosine;
    if (across <= static_cast<double>(practice.seam_foot.nm()) || skew.cosine < 1e-6) {
        return side;
    }
    side.apart = stretched(practice.seam_spacing, skew.cosine);
    side.count = parts_to_cover(length, side.apart);
    const Length clear =
        std::min(length, stretched(practice.seam_spacing - practice.seam_foot, skew.cosine));
    side.blank = round_up_to(clear + practice.closure_ear * 2, practice.cut_grid);
    side.ear_degrees = 90 - degrees_in(std::acos(std::min(1.0, skew.cosine)));
    return side;
}

std::int64_t sticks_for(const std::map<Length, std::int64_t>& alike, const Practice& practice) {
    std::int64_t sticks = 0;
    for (const auto& [blank, count] : alike) {
        const std::int64_t from_one =
            std::max<std::int64_t>(1, (practice.stock + practice.kerf).nm() /
                                          std::max<std::int64_t>(1, (blank + practice.kerf).nm()));
        sticks += (count + from_one - 1) / from_one;
    }
    return sticks;
}

/// Of each plane that ends at the edge.
std::vector<const PanClosures*> closures_laid(const Edge& edge, const Plan& plan) {
    std::vector<const PanClosures*> laid;
    for (const auto& [item, panels] : plan.panels) {
        if (panels.layout == nullptr) {
            continue;
        }
        for (const PanClosures& one : panels.layout->closures) {
            if (one.edge == edge.id) {
                laid.push_back(&one);
            }
        }
    }
    return laid;
}

std::string ear_angle(double degrees) {
    const auto count = std::llround(degrees * 10);
    return std::to_string(count / 10) + "." + std::to_string(count % 10) + "°";
}

bool are_alike(const Closures& closures) {
    return std::all_of(closures.sides.begin(), closures.sides.end(), [&](const ClosureSide& s) {
        return s.blank == closures.sides.front().blank && s.count == closures.sides.front().count;
    });
}

Text on_roof(const ClosureSide& side, const Text& what) {
    if (side.count == 0) {
        return side.pitch ? say("none on the {1} roof, whose seams run along it", *side.pitch)
                          : say("none on the roof whose seams run along it");
    }
    return side.pitch ? say("{1} of {2} on the {3} roof", side.count, what, *side.pitch)
                      : say("{1} of {2}", side.count, what);
}

Text with_ears(const ClosureSide& side) {
    if (side.count == 0 || side.ear_degrees > 89.95) {
        return side.blank;
    }
    return say("{1}, ears at {2} and {3},", side.blank, ear_angle(side.ear_degrees),
               ear_angle(180 - side.ear_degrees));
}

}  // namespace

Closures closures_of(const Edge& edge, Length length, const Practice& practice) {
    Closures closures;
    if (facts_of(edge.kind).closed == Closed::no_side || length <= Length()) {
        return closures;
    }
    closures.web = practice.seam_height;
    closures.leg = practice.closure_leg;
    closures.ear = practice.closure_ear;
    closures.girth = closures.web + closures.leg * 2;
    std::map<Length, std::int64_t> alike;
    for (const Skew& skew : skews_of(edge)) {
        closures.sides.push_back(side_of(skew, length, practice));
        closures.count += closures.sides.back().count;
        alike[closures.sides.back().blank] += closures.sides.back().count;
    }
    closures.sticks = sticks_for(alike, practice);
    return closures;
}

Closures closures_on(const Edge& edge, Length length, const Practice& practice, const Plan& plan) {
    Closures closures = closures_of(edge, length, practice);
    std::vector<const PanClosures*> laid = closures_laid(edge, plan);
    if (laid.size() != closures.sides.size()) {
        return closures;  // a plane is not laid, or two end here on one side
    }
    // Which plane is which side: by the blank that it was expected to have.
    if (laid.size() == 2 && absolute(laid[0]->blank - closures.sides[1].blank) <
                                absolute(laid[0]->blank - closures.sides[0].blank)) {
        std::swap(laid[0], laid[1]);
    }
    closures.count = 0;
    std::map<Length, std::int64_t> alike;
    for (std::size_t i = 0; i < laid.size(); ++i) {
        closures.sides[i].count = laid[i]->count;
        closures.sides[i].blank = laid[i]->blank;
        closures.count += laid[i]->count;
        for (const ClosureBlanks& one : laid[i]->blanks) {
            alike[one.blank] += one.count;
        }
    }
    closures.sticks = sticks_for(alike, practice);
    return closures;
}

bool is_pinned_at(EdgeKind kind, const Practice& practice) {
    const FixedLine line = fixed_line_of(practice);
    const bool at_top = facts_of(kind).closed != Closed::no_side;
    return (at_top && line == FixedLine::ridge) ||
           (kind == EdgeKind::eave && line == FixedLine::eave);
}

Text count_words(const Closures& closures) {
    if (are_alike(closures)) {
        return say("{1} of {2}", closures.count, closures.sides.front().blank);
    }
    return say("{1} and {2}", on_roof(closures.sides.front(), closures.sides.front().blank),
               on_roof(closures.sides.back(), closures.sides.back().blank));
}

Text bend_words(const Closures& closures) {
    if (closures.sides.empty()) {
        return {};
    }
    const Text sizes =
        are_alike(closures)
            ? with_ears(closures.sides.front())
            : say("{1} and {2}", on_roof(closures.sides.front(), with_ears(closures.sides.front())),
                  on_roof(closures.sides.back(), with_ears(closures.sides.back())));
    return say("{1} (web {2}, legs {3}, ears {4})", sizes, closures.web, closures.leg,
               closures.ear);
}

}  // namespace hemline
