#include "field/screens/roof/roof_ways.h"

#include <algorithm>
#include <string>
#include <vector>

#include "engine/work/plane_panels.h"
#include "field/state/plane_view.h"

namespace hemline {

namespace {

struct Elsewhere {
    const char* name;
    Text label;
    Screen screen;
};

constexpr float way_mm = 11;
constexpr std::size_t ways_in_row = 3;  // on most screens
constexpr const char *missing = "lacking", *make_body = "make body", *panel_items = "lay panels";

const BodyOnJob* with_missing_edges(const State& state) {
    for (const BodyOnJob& body : state.bodies) {
        if (std::any_of(body.edges.begin(), body.edges.end(),
                        [](const EdgeOnBody& edge) { return edge.edges.empty(); })) {
            return &body;
        }
    }
    return nullptr;
}

/// Walking round the roof, as long as it is not walked, or the edges that it gives and the job
/// lacks.
void add_ways_to_walk(const State& state, std::vector<Elsewhere>& ways) {
    const bool is_open = std::any_of(state.bodies.begin(), state.bodies.end(),
                                     [](const BodyOnJob& body) { return !body.closed; });
    if (is_open) {
        ways.push_back({"walk", say("Go on walking"), Screen::walk});
    } else if (with_missing_edges(state) != nullptr) {
        ways.push_back({missing, say("Add the roof's missing edges"), Screen::roof});
    } else if (state.bodies.empty() && body_of_rows(state.job)) {
        ways.push_back({make_body, say("Make one roof of these"), Screen::roof});
    } else if (state.bodies.empty()) {
        ways.push_back({"walk", say("Walk the roof"), Screen::walk});
    }
}

Wish wish_of(const State& state, const Elsewhere& way) {
    const Where roof{Screen::roof, {}};
    if (way.name == missing) {
        return KeepAll{lacking_edges(state.job, *with_missing_edges(state), state.catalogue), roof};
    }
    if (way.name == panel_items) {
        return KeepAll{lacking_panels(state.job, state.bodies), roof};
    }
    if (way.name == make_body) {
        return KeepAll{facts_of_walk(state.job, *body_of_rows(state.job), {}, state.catalogue),
                       roof};
    }
    return Go{Where{way.screen, {}}};
}

std::vector<Elsewhere> ways_from(const State& state) {
    std::vector<Elsewhere> ways;
    if (const std::size_t apart = state.job.conflicts.size(); apart > 0) {
        ways.push_back({"apart", say("! {1} where tablets disagree", apart), Screen::apart});
    }
    const std::size_t before = ways.size();
    add_ways_to_walk(state, ways);
    const std::size_t ways_to_walk = ways.size() - before;
    if (state.way == Way::tick_off) {
        ways.push_back({"day", say("Day sheet"), Screen::day});
    }
    if (!state.plan.runs.empty()) {
        ways.push_back({"sticks", say("Sticks"), Screen::sticks});
    }
    ways.push_back({"rules", say("Rules"), Screen::rules});
    ways.push_back({"tablet", say("My settings"), Screen::tablet});
    if (state.outside.there) {
        ways.push_back({"hand over", say("Hand over"), Screen::hand_over});
    }
    // Also among what can be added: here it gives way to what tablets disagree on, and takes no row
    // of its own.
    const bool has_room = ways.size() % ways_in_row != 0;
    if (has_room && may_lay_panels(state)) {
        ways.push_back({panel_items, say("Lay out the panels"), Screen::roof});
    } else if (!state.bodies.empty() && ways_to_walk == 0 && before == 0 && has_room) {
        ways.push_back({"walk", say("Walk one more roof"), Screen::walk});
    }
    if (state.can.gives_files) {
        ways.push_back({"backup", say("Backup to a file"), Screen::backup});
    }
    return ways;
}

/// How many lie next to each other, in how many lines: at most four, fewer where their words are
/// wide.
struct Grid {
    std::size_t wide, lines;
};
Grid grid_for(const Ui& ui, const std::vector<Text>& labels, std::size_t count, float w) {
    constexpr std::size_t wide_most = 4;
    float least = ui.mm(target_min);
    for (const Text& label : labels) {
        least = std::max(least, ui.label_width(label));
    }
    const float gap = ui.mm(gap_mm);
    const auto fit = static_cast<std::size_t>((w + gap) / (least + gap));
    const std::size_t most = std::clamp(fit, std::size_t{1}, wide_most);
    const std::size_t lines = (count + most - 1) / most;
    return {(count + lines - 1) / lines, lines};
}

std::vector<Box> places_for(const Ui& ui, const std::vector<Text>& labels, std::size_t count,
                            Box& box) {
    const Grid grid = grid_for(ui, labels, count, box.w);
    std::vector<Box> places;
    for (std::size_t line = 0; line < grid.lines; ++line) {
        take_top(box, line > 0 ? ui.mm(gap_mm) : 0);
        for (const Box& place :
             columns(take_top(box, ui.mm(way_mm)), static_cast<int>(grid.wide), ui.mm(gap_mm))) {
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

float ways_height(const Ui& ui, const State& state, float w) {
    std::vector<Text> labels;
    for (const Elsewhere& way : ways_from(state)) {
        labels.push_back(way.label);
    }
    const auto lines = static_cast<float>(grid_for(ui, labels, labels.size(), w).lines);
    return lines * ui.mm(way_mm) + (lines - 1) * ui.mm(gap_mm);
}

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
            wish = wish_of(state, ways[i]);
        }
    }
    if (state.can.gives_files) {
        draw_backup_age(ui, state, backup_alone, places.back(), box);
    }
    take_top(box, ui.mm(3));
}

}  // namespace hemline
