// A new edge: its two ends, the side fitted first, with a fascia wrap or without.
#include <string>

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

template <class Value, std::size_t N, class Words>
void draw_choice(Ui& ui, Box& body, const char* label, const Value (&values)[N], Words words,
                 Value& chosen) {
    ui.text(body.x, body.y, label, Size::bold);
    take_top(body, ui.line_height(Size::bold) + ui.mm(1));
    const std::vector<Box> places = columns(take_top(body, ui.mm(12)), N, ui.mm(3));
    for (std::size_t i = 0; i < N; ++i) {
        const std::string word(words(values[i]));
        if (ui.button(std::string(label) + " " + word, word, places[i],
                      values[i] == chosen ? Look::chosen : Look::plain)) {
            chosen = values[i];
        }
    }
    take_top(body, ui.mm(2.5F));
}

}  // namespace

Wish draw_add_edge(Ui& ui, const State& state, Drafts& drafts) {
    Wish wish;
    drafts.edge.id = free_id(state.job);
    const Frame frame =
        open_frame(ui, state, "New eave " + drafts.edge.id + " · seen from outside",
                   {{"leave", "Roof"}, {"keep edge", "Add this eave", Look::primary}});
    Box body = frame.body;
    const auto end_words = [](End end) { return spoken(end); };
    draw_choice(ui, body, "left end", ends, end_words, drafts.edge.left);
    draw_choice(ui, body, "right end", ends, end_words, drafts.edge.right);
    constexpr Side sides[] = {Side::left, Side::right};
    draw_choice(
        ui, body, "fitted first from the", sides, [](Side side) { return word_of(side); },
        drafts.edge.first);
    constexpr bool wraps[] = {false, true};
    draw_choice(
        ui, body, "fascia wrap", wraps, [](bool wrap) { return wrap ? "with a wrap" : "no wrap"; },
        drafts.edge.wrap);
    if (frame.tapped == "leave") {
        wish.go = Where{Place::roof, {}};
    } else if (frame.tapped == "keep edge") {
        wish.fact = EdgeAdded{drafts.edge};
        wish.go = Where{Place::reading, drafts.edge.id};
    }
    return wish;
}

}  // namespace hemline
