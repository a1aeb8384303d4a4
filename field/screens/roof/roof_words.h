// The words of a roof's drawing: a letter on each edge, its length along it, and each plane's fall
// and pitch. Nothing lies across a line or over other words.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "field/screens/roof/roof_sheet.h"
#include "field/screens/roof/tilted_box.h"

namespace hemline {

class RoofWords {
  public:
    RoofWords(Ui& ui, const RoofSheet& sheet, Box page, Marks marks)
        : ui_(ui),
          sheet_(sheet),
          page_(page),
          print_mark_(marks == Marks::millimetre ? millimetres(10) : inches(1)) {}

    /// The edge's letter, on its line; returns its middle, none where there is no room.
    std::optional<ImVec2> mark(const SheetLine& line);
    /// The edge's length along it.
    void length(const SheetLine& line);
    void fall(const SheetPlane& plane);
    /// Words beside a place, such as where a walk goes on.
    void beside(ImVec2 place, const Text& words);

  private:
    [[nodiscard]] bool is_free(const TiltedBox& box, const SheetLine* but = nullptr) const;
    [[nodiscard]] std::optional<TiltedBox> place_along(const SheetLine& line, float w,
                                                       float h) const;

    Ui& ui_;
    const RoofSheet& sheet_;
    Box page_;
    Length print_mark_;
    std::vector<TiltedBox> taken_;
};

/// Half of a letter's circle, in mm.
constexpr float outer_mark_mm = 3.7F, inner_mark_mm = 3.1F;

}  // namespace hemline
