#include "field/touch/box.h"

#include <algorithm>

namespace hemline {

Box take_top(Box& from, float h) {
    const float cut = std::clamp(h, 0.0F, from.h);
    const Box strip{from.x, from.y, from.w, cut};
    from.y += cut;
    from.h -= cut;
    return strip;
}

Box take_bottom(Box& from, float h) {
    const float cut = std::clamp(h, 0.0F, from.h);
    from.h -= cut;
    return {from.x, from.bottom(), from.w, cut};
}

Box take_left(Box& from, float w) {
    const float cut = std::clamp(w, 0.0F, from.w);
    const Box strip{from.x, from.y, cut, from.h};
    from.x += cut;
    from.w -= cut;
    return strip;
}

Box take_right(Box& from, float w) {
    const float cut = std::clamp(w, 0.0F, from.w);
    from.w -= cut;
    return {from.right(), from.y, cut, from.h};
}

Box inset(Box box, float d) { return inset(box, d, d); }

Box inset(Box box, float dx, float dy) {
    const float x = std::min(dx, box.w / 2);
    const float y = std::min(dy, box.h / 2);
    return {box.x + x, box.y + y, box.w - 2 * x, box.h - 2 * y};
}

std::vector<Box> columns(Box box, int n, float gap) {
    std::vector<Box> boxes;
    const auto count = static_cast<float>(n);
    const float w = std::max(0.0F, (box.w - gap * (count - 1)) / count);
    for (int i = 0; i < n; ++i) {
        boxes.push_back({box.x + static_cast<float>(i) * (w + gap), box.y, w, box.h});
    }
    return boxes;
}

std::vector<Box> rows(Box box, int n, float gap) {
    std::vector<Box> boxes;
    const auto count = static_cast<float>(n);
    const float h = std::max(0.0F, (box.h - gap * (count - 1)) / count);
    for (int i = 0; i < n; ++i) {
        boxes.push_back({box.x, box.y + static_cast<float>(i) * (h + gap), box.w, h});
    }
    return boxes;
}

Box common_of(Box a, Box b) {
    const float x = std::max(a.x, b.x);
    const float y = std::max(a.y, b.y);
    return {x, y, std::max(0.0F, std::min(a.right(), b.right()) - x),
            std::max(0.0F, std::min(a.bottom(), b.bottom()) - y)};
}

std::optional<PartOfLine> part_in(Box box, float from_x, float from_y, float to_x, float to_y) {
    // The part of the line that lies between the box's sides, then between its top and bottom.
    PartOfLine part;
    const auto keep_between = [&](float at, float way, float low, float high) {
        if (way == 0) {
            return low <= at && at <= high;
        }
        const float a = (low - at) / way, b = (high - at) / way;
        part.from = std::max(part.from, std::min(a, b));
        part.to = std::min(part.to, std::max(a, b));
        return part.from <= part.to;
    };
    const bool is_in = keep_between(from_x, to_x - from_x, box.x, box.right()) &&
                       keep_between(from_y, to_y - from_y, box.y, box.bottom());
    return is_in ? std::optional(part) : std::nullopt;
}

bool is_crossed(Box box, float from_x, float from_y, float to_x, float to_y) {
    return part_in(box, from_x, from_y, to_x, to_y).has_value();
}

}  // namespace hemline
