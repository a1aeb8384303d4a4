#include "field/screens/length_in.h"

#include <algorithm>

namespace hemline {

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
    if (ui.text_width(words, Size::small) <= box.w) {
        ui.text(box.mid_x(), box.mid_y() - ui.line_height(Size::small) / 2, words, Size::small,
                Align::centre);
    }
}

}  // namespace hemline
