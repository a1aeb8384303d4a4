// The pitch from the tablet: laid on the deck, then turned end for end on the same spot.
#include <cstdio>

#include "engine/words/result.h"
#include "field/screens/page/frame.h"
#include "field/screens/reading/keep_pitch.h"
#include "field/screens/screens.h"
#include "field/state/edge_view.h"

namespace hemline {

namespace {

std::string tenths(double value) {
    char text[32];
    std::snprintf(text, sizeof text, "%.1f°", value);
    return text;
}

/// "22.6°, 5.0 in 12".
std::string words_of(Slope slope) {
    char text[48];
    std::snprintf(text, sizeof text, "%.1f°, %.1f in 12", degrees_of(slope), rise_in_12_of(slope));
    return text;
}

Text advice(const TiltDraft& draft) {
    if (draft.taking) {
        return say("Hold still …");
    }
    if (draft.first.empty()) {
        return say("Lay the tablet flat on the deck, screen up. Then take it.");
    }
    if (draft.turned.empty()) {
        return say("Turn it end for end on the same spot. Then take it again.");
    }
    return {};
}

}  // namespace

Wished draw_tilt(Ui& ui, const State& state, Drafts& drafts) {
    const EdgeWork* const work = edge_of(state, state.where.edge);
    if (work == nullptr) {
        return Go{{Screen::roof, {}}};
    }
    TiltDraft& draft = drafts.tilt;
    const bool both = !draft.first.empty() && !draft.turned.empty() && !draft.taking;
    const Result<Tilt> tilt = tilt_of(draft.first, draft.turned);
    const bool done = both && tilt;
    std::vector<Action> actions{
        {"leave", say("Key it in")},
        {"start over", say("Start over"), draft.first.empty() ? Look::off : Look::plain}};
    if (done) {
        add_keep_pitch(actions, state, *work, true);
    } else {
        actions.push_back(
            {"take", say("Take it"), draft.taking || both ? Look::off : Look::primary});
    }
    const Frame frame = open_frame(
        ui, state, say("{1} · pitch by the tablet's own sensor", title_of(work->edge)), actions);
    Wished wish = frame.wish;
    float y = frame.body.y;
    const auto line = [&](const Text& words, Size size) {
        y += ui.paragraph(frame.body.x, y, frame.body.w, words, size) + ui.mm(2);
    };
    if (done) {
        line(Text(words_of(slope_of(*tilt))), Size::title);
        line(say("The readings spread by {1}; the sensor's own error of {2} has cancelled.",
                 tenths(tilt->spread), tenths(tilt->own_error)),
             Size::body);
    } else if (both) {
        y += draw_band(ui, said(tilt.problem()), frame.body);
    } else {
        line(advice(draft), Size::title);
        if (!draft.first.empty() && !draft.taking) {
            line(say("First reading taken; it spread by {1}.", tenths(spread_of(draft.first))),
                 Size::body);
        }
    }
    line(say("A tablet slides: hold it, and stay tied off."), Size::bold);
    if (frame.tapped == "take") {
        draft.taking = true;
        draft.coming.clear();
    } else if (frame.tapped == "start over") {
        draft = {};
    } else if (Wished kept =
                   done ? keep_pitch(frame.tapped, state, *work, slope_of(*tilt)) : Wished()) {
        wish = std::move(kept);
    } else if (frame.tapped == "leave") {
        Where where = state.where;
        where.screen = Screen::pitch;
        wish = Go{where};
    }
    return wish;
}

}  // namespace hemline
