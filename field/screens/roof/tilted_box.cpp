#include "field/screens/roof/tilted_box.h"

#include <algorithm>
#include <cmath>

namespace hemline {

namespace {

float dot(ImVec2 a, ImVec2 b) { return a.x * b.x + a.y * b.y; }

/// Half of what the box covers in that direction.
float half_along(const TiltedBox& box, ImVec2 way) {
    const ImVec2 across{-box.along.y, box.along.x};
    return std::abs(dot(box.along, way)) * box.half_w + std::abs(dot(across, way)) * box.half_h;
}

bool are_apart(const TiltedBox& a, const TiltedBox& b, ImVec2 way) {
    const ImVec2 between{b.mid.x - a.mid.x, b.mid.y - a.mid.y};
    return std::abs(dot(between, way)) >= half_along(a, way) + half_along(b, way);
}

}  // namespace

bool do_meet(const TiltedBox& a, const TiltedBox& b) {
    const ImVec2 ways[] = {a.along, {-a.along.y, a.along.x}, b.along, {-b.along.y, b.along.x}};
    return std::none_of(std::begin(ways), std::end(ways),
                        [&](ImVec2 way) { return are_apart(a, b, way); });
}

bool is_crossed(const TiltedBox& box, ImVec2 from, ImVec2 to) {
    const ImVec2 across{-box.along.y, box.along.x};
    const auto seen = [&](ImVec2 p) {
        const ImVec2 off{p.x - box.mid.x, p.y - box.mid.y};
        return ImVec2(dot(off, box.along), dot(off, across));
    };
    const ImVec2 a = seen(from), b = seen(to);
    return is_crossed(Box{-box.half_w, -box.half_h, 2 * box.half_w, 2 * box.half_h}, a.x, a.y, b.x,
                      b.y);
}

Box upright_of(const TiltedBox& box) {
    const float w = half_along(box, {1, 0}), h = half_along(box, {0, 1});
    return {box.mid.x - w, box.mid.y - h, 2 * w, 2 * h};
}

bool is_inside(const TiltedBox& box, Box page) {
    const Box own = upright_of(box);
    return own.x >= page.x && own.y >= page.y && own.right() <= page.right() &&
           own.bottom() <= page.bottom();
}

TiltedBox grown(TiltedBox box, float by) {
    box.half_w += by;
    box.half_h += by;
    return box;
}

}  // namespace hemline
