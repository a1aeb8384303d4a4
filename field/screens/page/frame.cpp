#include "field/screens/page/frame.h"

#include <imgui.h>

#include <algorithm>
#include <string_view>

#include "field/screens/page/key_grid.h"

namespace hemline {

namespace {

constexpr float gap_mm = 3, notice_mm_least = 14;
constexpr float way_out_beside_mm = 110, way_out_w_mm = 40;
/// The way out takes as little as it may: below it stand what was keyed in and its keys.
constexpr float way_out_h_mm = target_min, way_out_words_mm = 13;
constexpr float margin_x_mm = 6, margin_y_mm = 4, margin_least_mm = 2.5F;
constexpr float beside_keys_mm = 8, beside_keys_least_mm = 5;
/// A page lower than this has no room for four rows of keys above its actions.
constexpr float low_mm = 123;
constexpr std::string_view between = " · ";

/// The title without its last parts (" · …") where it is wider than the page.
Text fitted(const Ui& ui, std::string title, float w) {
    for (std::size_t cut = title.rfind(between);
         cut != std::string::npos && ui.text_width(Text(title), Size::bold) > w;
         cut = title.rfind(between)) {
        title.resize(cut);
    }
    return ui.shortened(Text(title), Size::bold, w);
}

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

void draw_title(Ui& ui, const State& state, const Text& whole, Box& page) {
    const Box strip = take_top(page, ui.line_height(Size::bold) + ui.mm(2.5F));
    const Text title = fitted(ui, ui.in_words(whole), strip.w);
    const float y = strip.y + ui.mm(1);
    ui.text(strip.x, y, title, Size::bold);
    const Text saved = saved_words(state);
    const float used = ui.text_width(title, Size::bold) + ui.mm(4);
    // That nothing was saved must show, whatever else does.
    if (used + ui.text_width(saved, Size::small) < strip.w) {
        ui.text(strip.right(), y + ui.mm(0.8F), saved, Size::small, Align::right,
                state.saving == Saving::failed ? ui.colours().ink : ui.colours().soft);
    } else if (state.saving == Saving::failed) {
        ui.text(strip.right(), y, Text("!"), Size::bold, Align::right);
    }
    rule(ui, strip);
    take_top(page, ui.mm(2));
}

/// In a narrow column: what it is about, then the rest of the title in small letters.
void draw_title_column(Ui& ui, const State& state, const Text& whole, Box& page) {
    const std::string title = ui.in_words(whole);
    const std::size_t cut = title.find(between);
    const std::string first = title.substr(0, cut);
    const float w = ui.text(page.x, page.y, fitted(ui, first, page.w), Size::bold);
    const Text saved = saved_words(state);
    if (w + ui.mm(3) + ui.text_width(saved, Size::small) < page.w) {
        ui.text(page.right(), page.y + ui.mm(0.8F), saved, Size::small, Align::right,
                state.saving == Saving::failed ? ui.colours().ink : ui.colours().soft);
    }
    float h = ui.line_height(Size::bold);
    if (cut != std::string::npos) {
        h += ui.paragraph(page.x, page.y + h, page.w, Text(title.substr(cut + between.size())),
                          Size::small);
    }
    rule(ui, take_top(page, h + ui.mm(1)));
    take_top(page, ui.mm(2));
}

/// What keys leave of the strip they lie in, at the side where more is left.
Box beside(Box strip, const Box& keys, float gap) {
    strip.y = keys.y;
    strip.h = keys.h;
    const float left = keys.x - strip.x, right = strip.right() - keys.right();
    Box room = strip;
    room.w = std::max(0.0F, std::max(left, right) - gap);
    room.x = left > right ? strip.x : keys.right() + gap;
    return room;
}

/// Cuts the margins off the page. Keys may lie nearer its edge than words.
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

/// A browser did not save: what it saved before can still be handed out.
bool backup_is_due(const State& state) {
    return state.saving == Saving::failed && state.can.gives_files && !state.events.empty();
}

/// The notice, and beside it or below it the way out, where the job's disk takes nothing.
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

/// A notice takes a third of the page at most, and its words scroll then.
float notice_height(const Ui& ui, const State& state, Box page) {
    const Notice notice = notice_of(ui, state, page.w);
    const bool below = notice.way_out && !notice.beside;
    const float least = below ? way_out_words_mm + way_out_h_mm + gap_mm : notice_mm_least;
    return std::min(notice.whole, std::max(ui.mm(least), page.h * 0.3F));
}

void draw_notice(Ui& ui, const State& state, Box& page) {
    const Notice notice = notice_of(ui, state, page.w);
    Box place = take_top(page, notice_height(ui, state, page));
    if (notice.way_out) {
        Box button = notice.beside ? take_right(place, ui.mm(way_out_w_mm))
                                   : take_bottom(place, ui.mm(way_out_h_mm + gap_mm));
        button.h = ui.mm(way_out_h_mm);
        if (state.outside.stuck) {
            ui.button(go_on_elsewhere, say("Go on in another folder"), button);
        } else {
            ui.button(back_up_now, say("Back up to a file now"), button);
        }
    }
    place.w = notice.words_w;
    if (place.h >= band_height(ui, state.notice, place.w)) {
        draw_band(ui, state.notice, place);
        return;
    }
    place.h -= ui.mm(gap_mm);
    const Box list = ui.begin_scroll("notice", place);
    ui.end_scroll(draw_band(ui, state.notice, list) - ui.mm(gap_mm));
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
        draw_title_column(ui, state, title, page);
    } else {
        draw_title(ui, state, title, page);
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
    draw_notice(ui, state, page);
    frame.body = page;
    return frame;
}

Action other_language(const State& state) {
    return {"language", Text(state.language == Language::english ? "Español" : "English")};
}

void take_language(const Frame& frame, Wish& wish) {
    wish.toggle_language = wish.toggle_language || frame.tapped == "language";
}

float band_height(const Ui& ui, const Text& words, float w) {
    return words.empty() ? 0
                         : ui.paragraph_height(w - ui.mm(6), words, Size::body) + ui.mm(3 + gap_mm);
}

float draw_band(Ui& ui, const Text& words, Box box) {
    const float used = band_height(ui, words, box.w);
    if (used > 0) {
        ui.ink()->AddRectFilled({box.x, box.y}, {box.right(), box.y + used - ui.mm(gap_mm)},
                                ui.colours().warn, ui.mm(1));
        ui.paragraph(box.x + ui.mm(3), box.y + ui.mm(1.5F), box.w - ui.mm(6), words, Size::body,
                     IM_COL32_BLACK);
        ui.mark_warning();
    }
    return used;
}

Text day_and_time(WallTime time) { return say("{1}, {2}", day_name(time), clock_time(time)); }

}  // namespace hemline
