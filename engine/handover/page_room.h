// Where on a page there is room for a label: no label lies across a line or on another label.
#pragma once

#include <vector>

#include "engine/body/moving_side.h"

namespace hemline {

/// A rectangle, its middle line along `along` (of length 1).
struct PageBox {
    PlanVector middle, along = {1, 0};
    double wide = 0, high = 0;
};

class PageRoom {
  public:
    void keep_clear(PlanVector from, PlanVector to) { lines_.push_back({from, to}); }
    void take(const PageBox& box) { boxes_.push_back(box); }
    /// Whether no line runs through the box, and no box lies on it.
    [[nodiscard]] bool is_free(const PageBox& box) const;

  private:
    struct PageLine {
        PlanVector from, to;
    };
    std::vector<PageLine> lines_;
    std::vector<PageBox> boxes_;
};

/// Along the line, on either side of it, from its middle outward: the first box of that size with
/// room. `first_side`: +1 its left on the page, −1 its right. False: there is none.
bool find_room_along(const PageRoom& room, PlanVector from, PlanVector to, int first_side,
                     PageBox& box);

}  // namespace hemline
