#include "field/screens/page/frame.h"

#include <imgui.h>

#include <algorithm>
#include <string_view>

#include "engine/words/first_use.h"
#include "field/screens/page/key_grid.h"
#include "field/state/edge_view.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float notice_mm_least = 14;
constexpr float way_out_beside_mm = 110, way_out_w_mm = 40;
/// The way out takes as little height as possible: below it are what was keyed in and the keys.
constexpr float way_out_h_mm = target_min, way_out_words_mm = 13;
constexpr float margin_x_mm = 6, margin_y_mm = 4, margin_least_mm = 2.5F;
constexpr float beside_keys_mm = 8, beside_keys_least_mm = 5;
/// A page lower than this has no room for four rows of keys above the actions.
constexpr float low_mm = 123;
constexpr float first_lines_most = 2.5F;  // of what a page is about
constexpr std::string_view between = " · ";
constexpr const char* language_target = "language";

Text saved_words(const State& state) {
    const std::int64_t fresh = state.outside.crew_new;
    const Text mark = state.saving == Saving::saved    ? Text("✓ ")
                      : state.saving == Saving::failed ? Text("! ")
                                                       : Text("");
    const Text saved = glued(mark, state.saved);
    return fresh > 0 && state.saving != Saving::failed
               ? say("{1} new from the crew · {2}", fresh, saved)
               : saved;
}

void rule(const Ui& ui, Box strip) {
    ui.ink()->AddLine({strip.x, strip.bottom()}, {strip.right(), strip.bottom()}, ui.colours().ink,
                      ui.mm(0.3F));
}

/// Of words broken at spaces.
float last_line_width(const Ui& ui, const std::string& words, float w) {
    std::size_t from = 0;
    for (std::size_t at = words.find(' '); at != std::string::npos; at = words.find(' ', at + 1)) {
        const std::size_t next = words.find(' ', at + 1);
        if (ui.text_width(Text(words.substr(from, next - from)), Size::bold) > w) {
            from = at + 1;
        }
    }
    return ui.text_width(Text(words.substr(from)), Size::bold);
}

/// What does not fit on a line with "saved": what it is about, then the rest of the title in small
/// letters, as many lines as it takes. "Saved" stands at the right of the first of them that has
/// room for it. Returns the height used.
float draw_title_lines(Ui& ui, const std::string& title, const Text& saved, Colour saved_colour,
                       Box page) {
    const std::size_t cut = title.find(between);
    const std::string about = title.substr(0, cut);
    const Text first(about);
    const Text rest(cut == std::string::npos ? "" : title.substr(cut + between.size()));
    const float saved_w = ui.text_width(saved, Size::small) + ui.mm(3);
    const float line = ui.line_height(Size::bold), small = ui.line_height(Size::small);
    const bool is_long = ui.paragraph_height(page.w, first, Size::bold) > first_lines_most * line;
    const bool is_a_line = is_long || ui.text_width(first, Size::bold) <= page.w;
    float h = line;
    if (is_a_line) {
        ui.text(page.x, page.y, ui.shortened(first, Size::bold, page.w), Size::bold);
    } else {
        h = ui.paragraph(page.x, page.y, page.w, first, Size::bold);
    }
    const bool beside_first = !is_long && last_line_width(ui, about, page.w) + saved_w <= page.w;
    const bool beside_rest = ui.text_width(rest, Size::small) + saved_w <= page.w;
    float saved_y = page.y + h - (line + small) / 2;
    if (!beside_first) {
        saved_y = page.y + h + (beside_rest ? 0 : ui.paragraph_height(page.w, rest, Size::small));
    }
    if (!rest.empty() && beside_rest) {
        ui.text(page.x, page.y + h, rest, Size::small);
        h += small;
    } else if (!rest.empty()) {
        h += ui.paragraph(page.x, page.y + h, page.w, rest, Size::small);
    }
    ui.text(page.right(), saved_y, saved, Size::small, Align::right, saved_colour);
    return std::max(h, saved_y + small - page.y);
}

/// The page on which an edge is met first: the crew's English word stands beside its Spanish one.
bool begins_an_edge(const State& state) {
    const EdgeWork* const work = edge_of(state, state.where.edge);
    return state.where.screen == Screen::add_edge || state.where.screen == Screen::look ||
           (state.where.screen == Screen::reading && work != nullptr && work->readings.empty());
}

void draw_title(Ui& ui, const State& state, const Text& whole, float above, Box& page) {
    take_top(page, above);
    const std::string title = ui.in_words(begins_an_edge(state) ? at_first_use(whole) : whole);
    const Text saved = saved_words(state);
    const Colour colour = state.saving == Saving::failed ? ui.colours().ink : ui.colours().soft;
    float h = ui.line_height(Size::bold);
    if (ui.text_width(Text(title), Size::bold) + ui.mm(3) + ui.text_width(saved, Size::small) <=
        page.w) {
        ui.text(page.x, page.y, Text(title), Size::bold);
        ui.text(page.right(), page.y + ui.mm(0.8F), saved, Size::small, Align::right, colour);
    } else {
        h = draw_title_lines(ui, title, saved, colour, page);
    }
    rule(ui, take_top(page, h + ui.mm(1) + above / 2));
    take_top(page, ui.mm(2));
}

/// The part of the strip that the keys leave, on the side where more is left.
Box beside(Box strip, const Box& keys, float gap) {
    strip.y = keys.y;
    strip.h = keys.h;
    const float left = keys.x - strip.x, right = strip.right() - keys.right();
    Box room = strip;
    room.w = std::max(0.0F, std::max(left, right) - gap);
    room.x = left > right ? strip.x : keys.right() + gap;
    return room;
}

/// Cuts the margins off the page. Keys may be nearer to its edge than words.
Box inside_margins(const Ui& ui, bool keys_beside, bool keys_below) {
    const Box page = ui.page();
    float x = ui.mm(margin_x_mm);
    float y = ui.mm(margin_y_mm);
    if (keys_beside) {
        y = std::clamp((page.h - key_room(ui).h) / 2, ui.mm(margin_least_mm), y);
        x = ui.mm(margin_y_mm);
    } else if (keys_below) {
        x = std::clamp((page.w - key_room(ui).w) / 2, ui.mm(margin_least_mm), x);
        y = x;
    }
    return inset(page, x, std::min(y, ui.mm(margin_y_mm)));
}

/// The browser could not save: what was saved before can still be put into a file.
bool backup_is_due(const State& state) {
    return state.saving == Saving::failed && state.can.gives_files && !state.events.empty();
}

/// The notice, and beside or below it the way out, when the job's disk takes nothing more.
struct Notice {
    bool way_out = false, beside = false;
    float words_w = 0, whole = 0;  ///< with the gap below
};

Notice notice_of(const Ui& ui, const State& state, float w) {
    Notice notice;
    notice.way_out = !state.notice.empty() && (state.outside.stuck || backup_is_due(state));
    notice.beside = notice.way_out && w >= ui.mm(way_out_beside_mm);
    notice.words_w = w - (notice.beside ? ui.mm(way_out_w_mm + gap_mm) : 0);
    const float words = band_height(ui, state.notice, notice.words_w);
    const float button = ui.mm(way_out_h_mm + gap_mm);
    notice.whole = notice.beside    ? std::max(words, button)
                   : notice.way_out ? words + button
                                    : words;
    return notice;
}

/// A notice takes a third of the page at most; longer words scroll.
float notice_height(const Ui& ui, const State& state, Box page) {
    const Notice notice = notice_of(ui, state, page.w);
    const bool below = notice.way_out && !notice.beside;
    const float least = below ? way_out_words_mm + way_out_h_mm + gap_mm : notice_mm_least;
    return std::min(notice.whole, std::max(ui.mm(least), page.h * 0.3F));
}

/// When the job goes on in another folder, or what was saved goes into a file, what was keyed in
/// stays.
Wished draw_way_out(Ui& ui, const State& state, Box button) {
    if (state.outside.stuck) {
        const bool tapped = ui.button("go on elsewhere", say("Go on in another folder"), button);
        return tapped ? Wished(ChooseFolder{Choosing::go_on}) : std::nullopt;
    }
    const bool tapped = ui.button("back up now", say("Back up to a file now"), button);
    return tapped ? Wished(Errand::back_up) : std::nullopt;
}

Wished draw_notice(Ui& ui, const State& state, Box& page) {
    Wished wish;
    const Notice notice = notice_of(ui, state, page.w);
    const Band band = state.asks_first || state.saving == Saving::failed ? Band::doubt : Band::news;
    Box place = take_top(page, notice_height(ui, state, page));
    if (notice.way_out) {
        Box button = notice.beside ? take_right(place, ui.mm(way_out_w_mm))
                                   : take_bottom(place, ui.mm(way_out_h_mm + gap_mm));
        button.h = ui.mm(way_out_h_mm);
        wish = draw_way_out(ui, state, button);
    }
    place.w = notice.words_w;
    if (place.h >= band_height(ui, state.notice, place.w)) {
        draw_band(ui, state.notice, place, band);
        return wish;
    }
    place.h -= ui.mm(gap_mm);
    const Box list = ui.begin_scroll("notice", place);
    ui.end_scroll(draw_band(ui, state.notice, list, band) - ui.mm(gap_mm));
    return wish;
}

}  // namespace

bool keys_stand_aside(const Ui& ui, const KeysWanted& keys) {
    return keys.count > 0 && !ui.portrait() && ui.page().h < ui.mm(low_mm);
}

Frame open_frame(Ui& ui, const State& state, const Text& title, const std::vector<Action>& actions,
                 KeysWanted keys) {
    Frame frame;
    const bool aside = keys_stand_aside(ui, keys);
    Box page = inside_margins(ui, aside, keys.count > 0 && ui.portrait());
    if (aside) {
        frame.keys = keys_beside(ui, page, keys.count, ui.mm(beside_keys_least_mm));
        draw_title(ui, state, title, 0, page);
    } else {
        draw_title(ui, state, title, ui.mm(1), page);
    }
    const ActionRows rows(ui, actions, page.w);
    frame.tapped = rows.draw(ui, take_bottom(page, rows.height()));
    take_bottom(page, actions.empty() ? 0 : ui.mm(gap_mm));
    if (keys.count > 0 && ui.portrait()) {
        const float above = ui.mm(keys.above_mm) + notice_height(ui, state, page);
        const Box under = page;
        frame.keys = keys_below(ui, page, keys.count, above);
        frame.beside_keys = beside(under, frame.keys, ui.mm(gap_mm));
    } else if (keys.count > 0 && !aside) {
        frame.keys = keys_beside(ui, page, keys.count, ui.mm(beside_keys_mm));
    }
    frame.wish = draw_notice(ui, state, page);
    if (frame.tapped == language_target) {
        frame.wish = Toggle::language;
    }
    frame.body = page;
    return frame;
}

Action other_language(const State& state) {
    return {language_target, Text(next_language(*state.assets, state.language).name())};
}

float band_height(const Ui& ui, const Text& words, float w) {
    return words.empty() ? 0
                         : ui.paragraph_height(w - ui.mm(6), words, Size::body) + ui.mm(3 + gap_mm);
}

float draw_band(Ui& ui, const Text& words, Box box, Band band) {
    const float used = band_height(ui, words, box.w);
    if (used <= 0) {
        return 0;
    }
    const Palette& p = ui.colours();
    const ImVec2 from(box.x, box.y), to(box.right(), box.y + used - ui.mm(gap_mm));
    const float round = ui.mm(1);
    if (band == Band::danger) {
        ui.ink()->AddRectFilled(from, to, p.warn, round);
    } else if (band == Band::doubt) {
        ui.ink()->AddRectFilled(from, to, p.key, round);
        const float half = ui.mm(0.35F);
        ui.ink()->AddRect({from.x + half, from.y + half}, {to.x - half, to.y - half}, p.ink, round,
                          0, 2 * half);
    } else {
        ui.ink()->AddRectFilled(from, {from.x + ui.mm(1.2F), to.y}, p.chalk);
    }
    ui.paragraph(box.x + ui.mm(3), box.y + ui.mm(1.5F), box.w - ui.mm(6), words, Size::body,
                 band == Band::danger ? IM_COL32_BLACK : p.ink);
    ui.mark_warning(band != Band::news);
    return used;
}

Text day_and_time(WallTime time) { return say("{1}, {2}", day_name(time), clock_time(time)); }

}  // namespace hemline
