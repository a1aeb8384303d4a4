// A new edge: its two ends, the side fitted first, with a fascia wrap or without.
#include <algorithm>
#include <string>
#include <vector>

#include "field/screens/frame.h"
#include "field/screens/screens.h"

namespace hemline {

namespace {

constexpr End ends[] = {End::gable, End::corner_out, End::corner_in, End::wall, End::open};

/// The first letter not yet used: A…Z, then A2, B2, …
std::string free_id(const Job& job) {
    for (int round = 1; round < 100; ++round) {
        for (char letter = 'A'; letter <= 'Z'; ++letter) {
            const std::string id =
                std::string(1, letter) + (round == 1 ? "" : std::to_string(round));
            if (job.find(id) == nullptr) {
                return id;
            }
        }
    }
    return "edge";
}

constexpr float gap_mm = 3, label_mm = 30;
constexpr float low_mm = 80;  // a body as low has its labels beside the choices

struct Choices {
    Ui& ui;
    Box rest;  ///< below what is drawn already
    bool low;
};

/// As many columns as have room for the longest word.
int columns_for(const Ui& ui, const std::vector<std::string>& words, float w) {
    float widest = ui.mm(target_min);
    for (const std::string& word : words) {
        widest = std::max(widest, ui.label_width(word));
    }
    const float gap = ui.mm(gap_mm);
    const int fit = static_cast<int>((w + gap) / (widest + gap));
    return std::clamp(fit, 1, static_cast<int>(words.size()));
}

template <class Value, std::size_t N, class Words>
void draw_choice(Choices& at, const char* label, const Value (&values)[N], Words words_of,
                 Value& chosen) {
    Ui& ui = at.ui;
    const float gap = ui.mm(gap_mm);
    const float row_h = ui.mm(at.low ? target_min : 12);
    Box place = at.rest;
    if (at.low) {
        const Box head = take_left(place, ui.mm(label_mm));
        const float h = ui.paragraph_height(head.w, label, Size::small);
        ui.paragraph(head.x, head.y + (row_h - h) / 2, head.w, label, Size::small);
    } else {
        ui.text(place.x, place.y, label, Size::bold);
        take_top(place, ui.line_height(Size::bold) + ui.mm(1));
    }
    std::vector<std::string> words;
    for (const Value value : values) {
        words.emplace_back(words_of(value));
    }
    const int wide = columns_for(ui, words, place.w);
    const Size largest =
        ui.label_size(words, columns({place.x, place.y, place.w, row_h}, wide, gap).front());
    for (std::size_t i = 0; i < N; ++i) {
        const auto column = i % static_cast<std::size_t>(wide);
        if (column == 0 && i > 0) {
            take_top(place, row_h + gap);
        }
        const Box row{place.x, place.y, place.w, row_h};
        if (ui.button(std::string(label) + " " + words[i], words[i],
                      columns(row, wide, gap)[column],
                      values[i] == chosen ? Look::chosen : Look::plain, largest)) {
            chosen = values[i];
        }
    }
    take_top(at.rest, place.y + row_h + gap - at.rest.y);
}

}  // namespace

Wish draw_add_edge(Ui& ui, const State& state, Drafts& drafts) {
    Wish wish;
    drafts.edge.id = free_id(state.job);
    const Frame frame =
        open_frame(ui, state, "New eave " + drafts.edge.id + " · seen from outside",
                   {{"leave", "Roof"}, {"keep edge", "Add this eave", Look::primary}});
    const Box list = ui.begin_scroll("new edge", frame.body);
    Choices at{ui, list, !ui.portrait() && frame.body.h < ui.mm(low_mm)};
    const auto end_words = [](End end) { return spoken(end); };
    draw_choice(at, "left end", ends, end_words, drafts.edge.left);
    draw_choice(at, "right end", ends, end_words, drafts.edge.right);
    constexpr Side sides[] = {Side::left, Side::right};
    draw_choice(
        at, "fitted first from the", sides, [](Side side) { return word_of(side); },
        drafts.edge.first);
    constexpr bool wraps[] = {false, true};
    draw_choice(
        at, "fascia wrap", wraps, [](bool wrap) { return wrap ? "with a wrap" : "no wrap"; },
        drafts.edge.wrap);
    ui.end_scroll(at.rest.y - list.y - ui.mm(gap_mm));
    if (frame.tapped == "leave") {
        wish.go = Where{Place::roof, {}};
    } else if (frame.tapped == "keep edge") {
        wish.fact = EdgeAdded{drafts.edge};
        wish.go = Where{Place::reading, drafts.edge.id};
    }
    return wish;
}

}  // namespace hemline
