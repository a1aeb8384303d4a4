#include "field/screens/roof/walk_answers.h"

#include <algorithm>
#include <numeric>
#include <string>
#include <vector>

namespace hemline {

namespace {

constexpr float button_row_mm = 11, button_rows_mm = 13;  // of one line, of two

template <class Answer>
struct AnswerChoice {
    Answer answer;
    const char *name, *words;
};
constexpr AnswerChoice<SideKind> kind_choices[] = {
    {SideKind::eave, "kind eave", phrase("eave")},
    {SideKind::gable, "kind gable", phrase("gable end")},
    {SideKind::wall, "kind wall", phrase("wall")},
    {SideKind::high_eave, "kind high_eave", phrase("high eave")},
    {SideKind::open, "kind open", phrase("open end")},
    {SideKind::transition, "kind transition", phrase("transition")},
};
constexpr AnswerChoice<CornerAsked> corner_choices[] = {
    {CornerAsked::outside, "corner outside", phrase("outside corner")},
    {CornerAsked::inside, "corner inside", phrase("inside corner")},
    {CornerAsked::other, "corner other", phrase("other corner")},
};

template <class Answer, std::size_t n>
std::vector<Text> labels_of(const AnswerChoice<Answer> (&choices)[n]) {
    std::vector<Text> labels;
    for (const AnswerChoice<Answer>& choice : choices) {
        labels.push_back(say(choice.words));
    }
    return labels;
}

/// The least width of a button with that label in letters of the full size, on one line or two.
float least_width(const Ui& ui, const Text& label, bool two_lines) {
    const std::string words = ui.in_words(label);
    const auto width = [&](std::size_t from, std::size_t to) {
        return ui.text_width(Text(words.substr(from, to - from)), Size::bold);
    };
    float least = width(0, words.size());
    for (std::size_t at = words.find(' '); two_lines && at != std::string::npos;
         at = words.find(' ', at + 1)) {
        least = std::min(least, std::max(width(0, at), width(at + 1, words.size())));
    }
    return std::max(ui.mm(target_min), least + 2 * ui.mm(1) + 1);
}

/// Answers in rows, each as wide as its words need and an equal part of what is left.
struct Rows {
    std::vector<std::vector<float>> widths;  ///< row by row
    float h = 0;

    [[nodiscard]] float height(float gap) const {
        return static_cast<float>(widths.size()) * (h + gap) - gap;
    }
};

Rows rows_of(const Ui& ui, const std::vector<Text>& labels, float w, bool two_lines) {
    const float gap = ui.mm(gap_mm);
    Rows rows{{}, ui.mm(two_lines ? button_rows_mm : button_row_mm)};
    float left = -1;
    for (const Text& label : labels) {
        const float least = std::min(w, least_width(ui, label, two_lines));
        if (rows.widths.empty() || left < least + gap) {
            rows.widths.emplace_back();
            left = w + gap;
        }
        rows.widths.back().push_back(least);
        left -= least + gap;
    }
    for (std::vector<float>& row : rows.widths) {
        const auto count = static_cast<float>(row.size());
        const float used = std::accumulate(row.begin(), row.end(), (count - 1) * gap);
        for (float& one : row) {
            one += (w - used) / count;
        }
    }
    return rows;
}

/// As low as they go.
Rows rows_for(const Ui& ui, const std::vector<Text>& labels, float w) {
    Rows one = rows_of(ui, labels, w, false), two = rows_of(ui, labels, w, true);
    const float gap = ui.mm(gap_mm);
    return two.height(gap) < one.height(gap) ? two : one;
}

template <class Answer, std::size_t n>
std::optional<Answer> draw_answers(Ui& ui, const AnswerChoice<Answer> (&choices)[n], Answer chosen,
                                   Box& list) {
    const std::vector<Text> labels = labels_of(choices);
    const Rows rows = rows_for(ui, labels, list.w);
    const float gap = ui.mm(gap_mm);
    std::optional<Answer> tapped;
    std::size_t i = 0;
    for (const std::vector<float>& widths : rows.widths) {
        Box row = take_top(list, rows.h);
        take_top(list, gap);
        for (const float w : widths) {
            if (ui.button(choices[i].name, labels[i], take_left(row, w),
                          choices[i].answer == chosen ? Look::chosen : Look::plain, Size::bold)) {
                tapped = choices[i].answer;
            }
            take_left(row, gap);
            ++i;
        }
    }
    return tapped;
}

}  // namespace

float answers_height(const Ui& ui, float w) {
    const float gap = ui.mm(gap_mm);
    return rows_for(ui, labels_of(kind_choices), w).height(gap) + gap +
           rows_for(ui, labels_of(corner_choices), w).height(gap);
}

std::optional<SideKind> draw_kinds(Ui& ui, SideKind chosen, Box& list) {
    return draw_answers(ui, kind_choices, chosen, list);
}

std::optional<CornerAsked> draw_corners(Ui& ui, CornerAsked chosen, Box& list) {
    return draw_answers(ui, corner_choices, chosen, list);
}

}  // namespace hemline
