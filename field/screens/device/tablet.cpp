// What a person sets: hand, units, light, language, size of the screen, and the crew's words.
#include <algorithm>
#include <string>
#include <vector>

#include "field/screens/page/frame.h"
#include "field/screens/screens.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float row_most_mm = 13, beside_mm = 8, two_columns_mm = 120, words_part = 0.48F;
constexpr float rounding_mm = 0.1F;

/// One of the ways that a thing can be; what is so is lit.
struct Choice {
    std::string name;
    Text words;
    bool lit = false;
    Wish wish;
};
using Choices = std::vector<Choice>;

Choices two_ways(const std::string& name, const Text& first, const Text& second, bool is_second,
                 const Wish& change) {
    return {{name + (is_second ? "" : " now"), first, !is_second, change},
            {name + (is_second ? " now" : ""), second, is_second, change}};
}

std::vector<Choices> settings(const Ui& ui, const State& state) {
    constexpr Colour brightest = 0xFF, half = 0x80;  // of the ground
    const bool dark = (ui.colours().paper & brightest) < half;
    std::string now;
    for (const Phrases& one : state.assets->languages) {
        now = one.tag() == state.language ? one.name() : now;
    }
    return {
        two_ways("hand", say("Right handed"), say("Left handed"), state.hand == Hand::left,
                 Toggle::hand),
        two_ways("units", say("One unit"), say("Both units"), state.both_units, Toggle::units),
        two_ways("light", say("Day"), say("Night"), dark, Toggle::light),
        two_ways("language", Text(now), other_language(state).label, false, Toggle::language),
    };
}

/// The words of this language that crews say differently.
std::vector<Choices> words_of_crew(const State& state) {
    std::vector<Choices> rows;
    for (const CrewThing& thing : crew_things) {
        if (thing.language != state.language) {
            continue;
        }
        rows.emplace_back();
        for (std::size_t i = 0; i < thing.words.size() && !thing.words[i].empty(); ++i) {
            const std::string word(thing.words[i]);
            rows.back().push_back({"word " + word, Text(word),
                                   word_said(thing, state.crew_words) == i,
                                   SayWord{std::string(thing.thing), word}});
        }
    }
    return rows;
}

/// Rows as high as asked, their letters of one size, with a gap below each.
void draw_rows(Ui& ui, const std::vector<Choices>& rows, float row_h, Box& body, Wished& wish) {
    std::size_t wide = 1;
    std::vector<Text> labels;
    for (const Choices& row : rows) {
        wide = std::max(wide, row.size());
        for (const Choice& one : row) {
            labels.push_back(one.words);
        }
    }
    for (const Choices& row : rows) {
        const auto places = columns(take_top(body, row_h), static_cast<int>(wide), ui.mm(gap_mm));
        const Size size = ui.label_size(labels, places.front());
        for (std::size_t i = 0; i < row.size(); ++i) {
            if (ui.button(row[i].name, row[i].words, places[i],
                          row[i].lit ? Look::chosen : Look::plain, size) &&
                !row[i].lit) {
                wish = row[i].wish;
            }
        }
        take_top(body, ui.mm(gap_mm));
    }
}

/// A row as high as the room allows, without the gap below it.
float row_height(const Ui& ui, float room, std::size_t rows) {
    const float h = (room + ui.mm(gap_mm - rounding_mm)) / static_cast<float>(rows);
    return std::clamp(h - ui.mm(gap_mm), ui.mm(target_min), ui.mm(row_most_mm));
}

void draw_heading(Ui& ui, Box& body) {
    const Box row = take_top(body, ui.line_height(Size::small) + ui.mm(0.5F));
    ui.text(row.x, row.y, say("What does your crew call it?"), Size::small);
}

}  // namespace

Wished draw_tablet(Ui& ui, const State& state, Drafts& /*drafts*/) {
    const Frame frame =
        open_frame(ui, state, say("My settings"),
                   {{"screen size", say("Screen size")}, {"leave", say("Back"), Look::primary}});
    Wished wish = frame.wish;
    const std::vector<Choices> set = settings(ui, state), words = words_of_crew(state);
    const bool beside = !ui.portrait() && frame.body.w >= ui.mm(two_columns_mm);
    const float room = frame.body.h - ui.line_height(Size::small) - ui.mm(0.5F);
    const float row_h = row_height(
        ui, room, beside ? std::max(set.size(), words.size()) : set.size() + words.size());
    Box list = ui.begin_scroll("settings", frame.body);
    const float top = list.y;
    if (beside) {
        Box left = take_left(list, (list.w - ui.mm(beside_mm)) * (1 - words_part));
        take_left(list, ui.mm(beside_mm));
        take_top(left, frame.body.h - room);
        draw_rows(ui, set, row_h, left, wish);
        draw_heading(ui, list);
        draw_rows(ui, words, row_h, list, wish);
        list.y = std::max(left.y, list.y);
    } else {
        draw_rows(ui, set, row_h, list, wish);
        draw_heading(ui, list);
        draw_rows(ui, words, row_h, list, wish);
    }
    ui.end_scroll(list.y - top - ui.mm(gap_mm));
    if (frame.tapped == "leave") {
        wish = Go{{state.job.name.empty() ? Screen::jobs : Screen::roof, {}}};
    } else if (frame.tapped == "screen size") {
        wish = Go{{Screen::calibrate, {}}};
    }
    return wish;
}

}  // namespace hemline
