#include "field/screens/roof/closer_sheet.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "field/screens/roof/tilted_box.h"

namespace hemline {

namespace {

const SheetLine* line_of(const RoofSheet& sheet, const std::string& edge) {
    const auto found = std::find_if(
        sheet.lines.begin(), sheet.lines.end(),
        [&](const SheetLine& line) { return line.work != nullptr && line.work->edge.id == edge; });
    return found == sheet.lines.end() ? nullptr : &*found;
}

/// A place goes over to another, and what lies around it is so many times larger.
struct Enlarging {
    ImVec2 about, to;
    float by = 1;

    [[nodiscard]] ImVec2 placed(ImVec2 p) const {
        return {to.x + (p.x - about.x) * by, to.y + (p.y - about.y) * by};
    }
    [[nodiscard]] ImVec2 whence(ImVec2 p) const {
        return {about.x + (p.x - to.x) / by, about.y + (p.y - to.y) / by};
    }
};

/// What is looked at lies in the middle, and moved from there.
Enlarging enlarging_for(const Ui& ui, const RoofSheet& whole, const CloserLook& look, Box box) {
    Enlarging enlarging{{box.mid_x(), box.mid_y()},
                        {box.mid_x() + ui.mm(look.x_mm), box.mid_y() + ui.mm(look.y_mm)},
                        std::pow(closer_by, static_cast<float>(look.times))};
    if (const SheetLine* const line = line_of(whole, look.about)) {
        enlarging.about = moved(line->from, line->along, line->length * look.along);
    }
    return enlarging;
}

RoofSheet enlarged(const RoofSheet& whole, const Enlarging& enlarging) {
    const auto placed = [&](ImVec2 p) { return enlarging.placed(p); };
    RoofSheet sheet = whole;
    for (SheetLine& line : sheet.lines) {
        line.from = placed(line.from);
        line.to = placed(line.to);
        line.length *= enlarging.by;
    }
    for (SheetPlane& plane : sheet.planes) {
        for (std::vector<ImVec2>& piece : plane.pieces) {
            std::transform(piece.begin(), piece.end(), piece.begin(), placed);
        }
        for (auto& [from, to] : plane.seams) {
            from = placed(from);
            to = placed(to);
        }
    }
    for (SheetGap& gap : sheet.gaps) {
        gap = {placed(gap.from), placed(gap.to)};
    }
    return sheet;
}

/// Cuts the line off where it leaves the box; false: all of it is outside.
bool cut_to(SheetLine& line, Box box) {
    float first = 0, last = line.length;
    const auto keep = [&](float at, float way, float low, float high) {
        if (std::abs(way) < 1e-6F) {
            return at >= low && at <= high;
        }
        const float a = (low - at) / way, b = (high - at) / way;
        first = std::max(first, std::min(a, b));
        last = std::min(last, std::max(a, b));
        return true;
    };
    if (!keep(line.from.x, line.along.x, box.x, box.right()) ||
        !keep(line.from.y, line.along.y, box.y, box.bottom()) || last <= first) {
        return false;
    }
    const ImVec2 from = line.from;
    line.from = moved(from, line.along, first);
    line.to = moved(from, line.along, last);
    line.length = last - first;
    return true;
}

}  // namespace

RoofSheet closer_sheet(const Ui& ui, const RoofSheet& whole, const CloserLook& look, Box box) {
    RoofSheet sheet = enlarged(whole, enlarging_for(ui, whole, look, box));
    std::vector<SheetLine> shown;
    for (SheetLine line : sheet.lines) {
        if (cut_to(line, box)) {
            shown.push_back(std::move(line));
        }
    }
    sheet.lines = std::move(shown);
    return sheet;
}

RoofSheet fitted_sheet(const RoofSheet& whole, Box from, Box to) {
    const float by = std::min(to.w / std::max(1.0F, from.w), to.h / std::max(1.0F, from.h));
    return enlarged(whole, {{from.mid_x(), from.mid_y()}, {to.mid_x(), to.mid_y()}, by});
}

CloserLook closer_look(const Ui& ui, const RoofSheet& whole, const CloserLook& look, Box box,
                       const std::string& edge, ImVec2 touch) {
    const SheetLine* const line = line_of(whole, edge);
    if (line == nullptr) {
        return look;
    }
    const Enlarging now = enlarging_for(ui, whole, look, box);
    const ImVec2 at = now.whence(touch);
    const float far =
        std::clamp((at.x - line->from.x) * line->along.x + (at.y - line->from.y) * line->along.y,
                   0.0F, line->length);
    const ImVec2 about = moved(line->from, line->along, far);
    const float by = now.by * closer_by / ui.mm(1);
    return {look.times + 1, edge, far / std::max(0.001F, line->length), (about.x - at.x) * by,
            (about.y - at.y) * by};
}

}  // namespace hemline
