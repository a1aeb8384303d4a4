#include "field/screens/page/length_in.h"

#include <algorithm>
#include <string>
#include <string_view>

namespace hemline {

namespace {

constexpr std::string_view feet_end = " ft ";  // a line may end there

}  // namespace

void draw_length_in(Ui& ui, Length length, Tapes tapes, Box box) {
    const Text other = on_other_tape(length, tapes);
    for (const Size size : {Size::title, Size::bold}) {
        for (const Text& below : {other, Text()}) {
            const float figure_h = ui.figure_height(size, tapes.marks);
            const float h = figure_h + (below.empty() ? 0 : ui.line_height(Size::small));
            const float w = std::max(ui.figure_width(length, tapes.marks, size),
                                     ui.text_width(below, Size::small));
            if (w > box.w || h > box.h) {
                continue;
            }
            const float top = box.mid_y() - h / 2;
            ui.figure(box.mid_x(), top, length, tapes.marks, size, Align::centre);
            if (!below.empty()) {
                ui.text(box.mid_x(), top + figure_h, below, Size::small, Align::centre);
            }
            return;
        }
    }
    const std::string words = print_length(length, tapes.marks);
    const float line = ui.line_height(Size::small);
    if (ui.text_width(Text(words), Size::small) <= box.w) {
        ui.text(box.mid_x(), box.mid_y() - line / 2, Text(words), Size::small, Align::centre);
        return;
    }
    const std::size_t feet = words.find(feet_end);
    if (feet == std::string::npos || 2 * line > box.h) {
        return;
    }
    const std::string over = words.substr(0, feet + feet_end.size() - 1);
    const std::string under = words.substr(feet + feet_end.size());
    if (std::max(ui.text_width(Text(over), Size::small), ui.text_width(Text(under), Size::small)) <=
        box.w) {
        ui.text(box.mid_x(), box.mid_y() - line, Text(over), Size::small, Align::centre);
        ui.text(box.mid_x(), box.mid_y(), Text(under), Size::small, Align::centre);
    }
}

}  // namespace hemline
