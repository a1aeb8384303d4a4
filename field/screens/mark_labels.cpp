#include "field/screens/mark_labels.h"

#include <imgui.h>

#include <algorithm>
#include <limits>

namespace hemline {

namespace {

constexpr float gap_mm = 1.5F;

/// One line a label, or two where what is done does not fit beside the value.
float line_height(const Ui& ui, bool two) {
    return ui.line_height(Size::bold) + ui.mm(1.2F) + (two ? ui.line_height(Size::small) : 0);
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

float width_of(const Ui& ui, const MarkLabel& label) {
    return ui.text_width(label.value, Size::bold) + ui.text_width(label.deed, Size::small) +
           ui.mm(2 * gap_mm);
}

/// Whether every label of the left half ends before any of the right half begins.
bool share_rows(const Ui& ui, const std::vector<MarkLabel>& labels,
                const std::vector<float>& places) {
    float left_end = 0;
    float right_begin = std::numeric_limits<float>::max();
    for (std::size_t i = 0; i < labels.size(); ++i) {
        const float w = width_of(ui, labels[i]);
        if (labels[i].half == Side::left) {
            left_end = std::max(left_end, places[i] + w);
        } else {
            right_begin = std::min(right_begin, places[i] - w);
        }
    }
    return left_end + ui.mm(3) < right_begin;
}

/// Whether a label of one line would reach out of a box of that width.
bool want_two(const Ui& ui, const std::vector<MarkLabel>& labels, const std::vector<float>& places,
              Box box) {
    for (std::size_t i = 0; i < labels.size(); ++i) {
        const float w = width_of(ui, labels[i]);
        const bool left = labels[i].half == Side::left;
        if (left ? places[i] + w > box.right() : places[i] - w < box.x) {
            return true;
        }
    }
    return false;
}

}  // namespace

std::vector<MarkLabel> labels_of(const Card& card, Marks marks) {
    std::vector<MarkLabel> labels;
    for (const Mark& mark : card.marks) {
        const Text deed = spoken(mark.kind);
        if (!labels.empty() && labels.back().at == mark.at) {
            labels.back().deed = joined({labels.back().deed, deed}, ", ");
            continue;
        }
        const Side half = mark.at * 2 < card.cut ? Side::left : Side::right;
        labels.push_back({mark.at, half, print_length(mark.at, marks), deed});
    }
    return labels;
}

float height_of(const Ui& ui, const std::vector<MarkLabel>& labels,
                const std::vector<float>& places, Box box) {
    const int left = rows_on(labels, Side::left);
    const int right = rows_on(labels, Side::right);
    const int rows = share_rows(ui, labels, places) ? std::max(left, right) : left + right;
    return static_cast<float>(rows) * line_height(ui, want_two(ui, labels, places, box)) + ui.mm(2);
}

void draw_labels(Ui& ui, const std::vector<MarkLabel>& labels, const std::vector<float>& places,
                 Box box) {
    const int left_rows = rows_on(labels, Side::left);
    const int right_from = share_rows(ui, labels, places) ? 0 : left_rows;
    int left_done = 0;
    int right_done = 0;
    const bool two = want_two(ui, labels, places, box);
    for (std::size_t i = 0; i < labels.size(); ++i) {
        const MarkLabel& label = labels[i];
        const bool left = label.half == Side::left;
        // The outermost mark of each half hangs lowest, so that no leader crosses a label.
        const int row = left ? left_rows - 1 - left_done++ : right_from + right_done++;
        const float y = box.y + ui.mm(1.5F) + static_cast<float>(row) * line_height(ui, two);
        draw_leader(ui, places[i], box.y, y);
        const float x = places[i] + ui.mm(left ? gap_mm : -gap_mm);
        const Align align = left ? Align::left : Align::right;
        const float w = ui.text(x, y, label.value, Size::bold, align, ui.colours().chalk);
        if (two) {
            const float deed_w = ui.text_width(label.deed, Size::small);
            const float from =
                std::clamp(left ? x : x - deed_w, box.x, std::max(box.x, box.right() - deed_w));
            ui.text(from, y + ui.line_height(Size::bold) - ui.mm(0.5F), label.deed, Size::small);
            continue;
        }
        const float low = y + (ui.line_height(Size::bold) - ui.line_height(Size::small));
        ui.text(left ? x + w + ui.mm(gap_mm) : x - w - ui.mm(gap_mm), low, label.deed, Size::small,
                align);
    }
}

}  // namespace hemline
