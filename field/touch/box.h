// Rectangles in window pixels, made by cutting strips off others: that is all the layout there is.
//
//   Box page = …;  Box header = take_top(page, 60);  Box actions = take_bottom(page, 90);  // page:
//   rest
#pragma once

#include <optional>
#include <vector>

namespace hemline {

/// Between things on a screen.
constexpr float gap_mm = 3;

struct Box {
    float x = 0, y = 0, w = 0, h = 0;

    [[nodiscard]] constexpr float right() const { return x + w; }
    [[nodiscard]] constexpr float bottom() const { return y + h; }
    [[nodiscard]] constexpr float mid_x() const { return x + w / 2; }
    [[nodiscard]] constexpr float mid_y() const { return y + h / 2; }
    [[nodiscard]] constexpr bool holds(float px, float py) const {
        return px >= x && px < right() && py >= y && py < bottom();
    }
};

/// Cuts a strip off a side of `from` (never more than it has) and returns it.
Box take_top(Box& from, float h);
Box take_bottom(Box& from, float h);
Box take_left(Box& from, float w);
Box take_right(Box& from, float w);
/// The box less `d` on every side.
Box inset(Box box, float d);
Box inset(Box box, float dx, float dy);
/// `n` equal columns or rows with `gap` between.
std::vector<Box> columns(Box box, int n, float gap);
std::vector<Box> rows(Box box, int n, float gap);
/// The overlap; width or height 0 where they do not meet.
Box common_of(Box a, Box b);
/// The part of the straight line from one point to the other that lies in the box, in shares of it:
/// {0, 1} all of it.
struct PartOfLine {
    float from = 0, to = 1;
};
std::optional<PartOfLine> part_in(Box box, float from_x, float from_y, float to_x, float to_y);
/// Whether the straight line from one point to the other passes through the box.
bool is_crossed(Box box, float from_x, float from_y, float to_x, float to_y);

}  // namespace hemline
