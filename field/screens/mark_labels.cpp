#include "field/screens/mark_labels.h"

#include <imgui.h>

#include <algorithm>

namespace hemline {

namespace {

float line_height(const Ui& ui) {
    return ui.line_height(Size::bold) + ui.mm(1.2F);
}

int rows_on(const std::vector<MarkLabel>& labels, Side half) {
    return static_cast<int>(std::count_if(labels.begin(), labels.end(),
                                          [half](const MarkLabel& l) { return l.half == half; }));
}

/// Leader from the tape down to the label's line.
void draw_leader(const Ui& ui, float x, float top, float y) {
    ui.ink()->AddLine({x, top}, {x, y + ui.line_height(Size::bold) * 0.9F}, ui.colours().chalk,
                      ui.mm(0.5F));
}

}  // namespace

std::vector<MarkLabel> labels_of(const Card& card, Marks marks) {
    std::vector<MarkLabel> labels;
    for (const Mark& mark : card.marks) {
        const std::string deed(deed_of(mark.kind));
        if (!labels.empty() && labels.back().at == mark.at) {
            labels.back().deed += ", " + deed;
            continue;
        }
        const Side half = mark.at * 2 < card.cut ? Side::left : Side::right;
        labels.push_back({mark.at, half, print_length(mark.at, marks), deed});
    }
    return labels;
}

float height_of(const Ui& ui, const std::vector<MarkLabel>& labels) {
    const int most = std::max(rows_on(labels, Side::left), rows_on(labels, Side::right));
    return static_cast<float>(most) * line_height(ui) + ui.mm(2);
}

void draw_labels(Ui& ui, const std::vector<MarkLabel>& labels, const std::vector<float>& places,
                 Box box) {
    const int left_rows = rows_on(labels, Side::left);
    int left_done = 0;
    int right_done = 0;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        const MarkLabel& label = labels[i];
        const bool left = label.half == Side::left;
        // The outermost mark of each half hangs lowest, so that no leader crosses a label.
        const int row = left ? left_rows - 1 - left_done++ : right_done++;
        const float y = box.y + ui.mm(1.5F) + static_cast<float>(row) * line_height(ui);
        const float x = places[i];
        draw_leader(ui, x, box.y, y);
        const float gap = ui.mm(1.5F);
        const float low = y + (ui.line_height(Size::bold) - ui.line_height(Size::small));
        if (left) {
            const float w =
                ui.text(x + gap, y, label.value, Size::bold, Align::left, ui.colours().chalk);
            ui.text(x + 2 * gap + w, low, label.deed, Size::small);
        } else {
            const float w =
                ui.text(x - gap, y, label.value, Size::bold, Align::right, ui.colours().chalk);
            ui.text(x - 2 * gap - w, low, label.deed, Size::small, Align::right);
        }
    }
}

}  // namespace hemline
