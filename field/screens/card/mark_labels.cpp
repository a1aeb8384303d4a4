#include "field/screens/card/mark_labels.h"

#include <imgui.h>

#include <algorithm>
#include <string>
#include <string_view>

namespace hemline {

namespace {

constexpr float below_shelf_mm = 0.9F;
constexpr int lines_most = 3;

float widest_word(const Ui& ui, std::string_view words) {
    float widest = 0;
    while (!words.empty()) {
        const std::string_view word = words.substr(0, words.find(' '));
        widest = std::max(widest, ui.text_width(Text(word), Size::small));
        words.remove_prefix(std::min(words.size(), word.size() + 1));
    }
    return widest;
}

/// The least width, but not below `least`, at which the words need no more lines.
float width_for(const Ui& ui, const Text& words, int lines, float least) {
    const float h = (static_cast<float>(lines) + 0.5F) * ui.line_height(Size::small);
    float narrow = std::max(least, widest_word(ui, ui.in_words(words)) + 1);
    if (ui.paragraph_height(narrow, words, Size::small) <= h) {
        return narrow;
    }
    float wide = std::max(narrow, ui.text_width(words, Size::small) + 1);
    while (wide - narrow > 1) {
        const float middle = (narrow + wide) / 2;
        (ui.paragraph_height(middle, words, Size::small) <= h ? wide : narrow) = middle;
    }
    return wide;
}

LabelsLaid lay_at(const Ui& ui, const std::vector<MarkLabel>& labels,
                  const std::vector<float>& places, Tapes tapes, Size size, Box box) {
    LabelsLaid laid{size, tapes.both, {}};
    const float value_h = ui.mm(below_shelf_mm) + ui.figure_height(size, tapes.marks) +
                          (tapes.both ? ui.line_height(Size::small) : 0);
    for (int lines = 1; lines <= lines_most; ++lines) {
        std::vector<LabelWanted> wanted;
        for (std::size_t i = 0; i < labels.size(); ++i) {
            const MarkLabel& label = labels[i];
            const float value_w =
                std::max(ui.figure_width(label.at, tapes.marks, size),
                         ui.text_width(on_other_tape(label.at, tapes), Size::small));
            const float w = std::min(box.w, width_for(ui, label.deed, lines, value_w));
            wanted.push_back({places[i], w,
                              value_h + ui.paragraph_height(w, label.deed, Size::small),
                              label.half});
        }
        LabelRows rows = rows_of(wanted, box, ui.mm(1));
        if (laid.rows.labels.empty() || rows.height < laid.rows.height) {
            laid.rows = std::move(rows);
        }
    }
    return laid;
}

}  // namespace

std::vector<MarkLabel> labels_of(const Card& card) {
    std::vector<MarkLabel> labels;
    for (const Mark& mark : card.marks) {
        const Text deed = spoken(mark.kind);
        if (!labels.empty() && labels.back().at == mark.at) {
            labels.back().deed = joined({labels.back().deed, deed}, ", ");
            continue;
        }
        const Side half = mark.at * 2 < card.cut ? Side::left : Side::right;
        labels.push_back({mark.at, half, deed});
    }
    return labels;
}

LabelsLaid lay_labels(const Ui& ui, const std::vector<MarkLabel>& labels,
                      const std::vector<float>& places, Tapes tapes, Box box) {
    const Tapes one{tapes.marks, false};
    if (tapes.both) {
        LabelsLaid laid = lay_at(ui, labels, places, tapes, Size::title, box);
        if (laid.rows.height <= box.h) {
            return laid;
        }
    }
    LabelsLaid laid = lay_at(ui, labels, places, one, Size::title, box);
    return laid.rows.height <= box.h ? laid : lay_at(ui, labels, places, one, Size::bold, box);
}

void draw_labels(Ui& ui, const std::vector<MarkLabel>& labels, const LabelsLaid& laid, Marks marks,
                 float tape) {
    const Colour chalk = ui.colours().chalk;
    const float thick = ui.mm(0.5F);
    for (std::size_t i = 0; i < labels.size(); ++i) {
        const auto& [box, leader] = laid.rows.labels[i];
        Spot from{leader.front().x, tape};
        for (std::size_t n = 1; n < leader.size() && box.bottom() > tape; ++n) {
            if (leader[n].y > tape) {  // else it is scrolled up past the tape
                ui.ink()->AddLine({from.x, from.y}, {leader[n].x, leader[n].y}, chalk, thick);
                from = leader[n];
            }
        }
        ui.to_be_seen(box);
        ui.ink()->AddLine({box.x, box.y}, {box.right(), box.y}, chalk, thick);
        float y = box.y + ui.mm(below_shelf_mm);
        ui.figure(box.x, y, labels[i].at, marks, laid.size, Align::left, chalk);
        y += ui.figure_height(laid.size, marks);
        const Text other = on_other_tape(labels[i].at, {marks, laid.both});
        y += other.empty() ? 0 : ui.paragraph(box.x, y, box.w, other, Size::small);
        ui.paragraph(box.x, y, box.w, labels[i].deed, Size::small);
    }
}

}  // namespace hemline
