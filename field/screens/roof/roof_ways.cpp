#include "field/screens/roof/roof_ways.h"

#include <algorithm>
#include <string>
#include <vector>

namespace hemline {

namespace {

struct Elsewhere {
    Screen screen;
    const char* name;
    Text label;
};

std::vector<Elsewhere> ways_from(const State& state) {
    std::vector<Elsewhere> ways;
    if (const std::size_t apart = state.job.conflicts.size(); apart > 0) {
        ways.push_back({Screen::apart, "apart", say("! {1} where tablets disagree", apart)});
    }
    if (state.way == Way::tick_off) {
        ways.push_back({Screen::day, "day", say("Day sheet")});
    }
    if (!state.plan.runs.empty()) {
        ways.push_back({Screen::sticks, "sticks", say("Sticks")});
    }
    ways.push_back({Screen::rules, "rules", say("Rules")});
    if (state.outside.there) {
        ways.push_back({Screen::hand_over, "hand over", say("Hand over")});
    }
    if (state.can.gives_files) {
        ways.push_back({Screen::backup, "backup", say("Backup to a file")});
    }
    return ways;
}

/// At most four beside one another, fewer where their words are wider.
std::vector<Box> places_for(const Ui& ui, const std::vector<Text>& labels, std::size_t count,
                            Box& box) {
    constexpr std::size_t wide_most = 4;
    float least = ui.mm(target_min);
    for (const Text& label : labels) {
        least = std::max(least, ui.label_width(label));
    }
    const float gap = ui.mm(3);
    const auto fit = static_cast<std::size_t>((box.w + gap) / (least + gap));
    const std::size_t most = std::clamp(fit, std::size_t{1}, wide_most);
    const std::size_t lines = (count + most - 1) / most;
    const std::size_t wide = (count + lines - 1) / lines;
    std::vector<Box> places;
    for (std::size_t line = 0; line < lines; ++line) {
        take_top(box, line > 0 ? gap : 0);
        for (const Box& place : columns(take_top(box, ui.mm(14)), static_cast<int>(wide), gap)) {
            places.push_back(place);
        }
    }
    return places;
}

/// Beside the only way, or below several.
void draw_backup_age(Ui& ui, const State& state, bool beside, Box place, Box& box) {
    const Box words = beside ? place : box;
    const float used =
        ui.paragraph(words.x, words.y, words.w, state.backed_up, Size::small, ui.colours().soft);
    take_top(box, beside ? 0 : used);
}

}  // namespace

void draw_ways(Ui& ui, const State& state, Box& box, Wished& wish) {
    const std::vector<Elsewhere> ways = ways_from(state);
    if (ways.empty()) {
        return;
    }
    const bool backup_alone = ways.size() == 1 && state.can.gives_files;
    std::vector<Text> labels;
    labels.reserve(ways.size());
    for (const Elsewhere& way : ways) {
        labels.push_back(way.label);
    }
    const std::vector<Box> places = places_for(ui, labels, backup_alone ? 2 : ways.size(), box);
    const Size largest = ui.label_size(labels, places.front());
    for (std::size_t i = 0; i < ways.size(); ++i) {
        if (ui.button(ways[i].name, ways[i].label, places[i], Look::plain, largest)) {
            wish = Go{Where{ways[i].screen, {}}};
        }
    }
    if (state.can.gives_files) {
        draw_backup_age(ui, state, backup_alone, places.back(), box);
    }
    take_top(box, ui.mm(3));
}

}  // namespace hemline
