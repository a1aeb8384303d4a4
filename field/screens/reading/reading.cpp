// A tape reading: keys, a large readback, and a question where it can't be right.
#include <imgui.h>

#include "engine/roof/readings.h"
#include "engine/work/hook_doubt.h"
#include "field/screens/page/frame.h"
#include "field/screens/page/keypad.h"
#include "field/screens/page/readback.h"
#include "field/screens/screens.h"
#include "field/state/edge_view.h"

namespace hemline {

namespace {

constexpr float above_keys_mm = 46;  // what is said of the reading, in portrait

std::vector<RecordedReading> standing(const EdgeWork& work, ReadingOf of) {
    std::vector<RecordedReading> readings;
    for (const RecordedReading& reading : work.readings) {
        if (!reading.struck && reading.of == of) {
            readings.push_back(reading);
        }
    }
    return readings;
}

/// What the reading should come near: the first reading, or the plan's last piece less its lap.
std::optional<Length> expected(const State& state, const EdgeWork& work, ReadingOf of) {
    if (of == ReadingOf::remainder) {
        const Run* const run = find_run(state.plan, work.edge.id, TrimRole::main);
        if (run == nullptr || run->pieces.empty()) {
            return std::nullopt;
        }
        return run->pieces.back().covers - run->lap;
    }
    const std::vector<RecordedReading> readings = standing(work, of);
    return readings.empty() ? std::nullopt : std::optional(readings.front().length);
}

Text title_for(const EdgeWork& work, ReadingOf of) {
    if (of == ReadingOf::remainder) {
        return say("{1} · for the last piece", title_of(work.edge));
    }
    static constexpr const char* ordinals[] = {
        phrase("{1} · first reading"), phrase("{1} · second reading"),
        phrase("{1} · third reading"), phrase("{1} · fourth reading"),
        phrase("{1} · next reading")};
    const std::size_t taken = std::min<std::size_t>(standing(work, of).size(), 4);
    return say(ordinals[taken], title_of(work.edge));
}

/// Earlier readings, struck ones crossed out, and how the draft compares.
float draw_comparison(Ui& ui, const State& state, const EdgeWork& work, ReadingOf of, Length draft,
                      Box box) {
    float y = box.y;
    for (const RecordedReading& reading : work.readings) {
        if (reading.of != of) {
            continue;
        }
        const Text words = glued(reading.length, "  ", reading.by, " ", clock_time(reading.clock),
                                 reading.struck ? say("  crossed out") : Text());
        const float width = ui.text(box.x, y, words, Size::small, Align::left, ui.colours().soft);
        if (reading.struck) {
            const float middle = y + ui.line_height(Size::small) / 2;
            ui.ink()->AddLine({box.x, middle}, {box.x + width, middle}, ui.colours().ink,
                              ui.mm(0.3F));
        }
        y += ui.line_height(Size::small) + ui.mm(0.5F);
    }
    const Verdict verdict = work.verdict(state.job.practice);
    if (of == ReadingOf::edge && verdict.agreement >= Agreement::third) {
        y += ui.paragraph(box.x, y, box.w, explain(verdict), Size::bold) + ui.mm(1);
    }
    const std::optional<Length> near = expected(state, work, of);
    if (near && draft > Length()) {
        const Length off = draft - *near;
        const Length by = absolute(off);
        const bool again = of == ReadingOf::edge;
        const Text words = off == Length()
                               ? (again ? say("the same as the first") : say("just as planned"))
                           : off < Length() ? (again ? say("{1} shorter than the first", by)
                                                     : say("{1} shorter than planned", by))
                                            : (again ? say("{1} longer than the first", by)
                                                     : say("{1} longer than planned", by));
        y += ui.paragraph(box.x, y, box.w, words, Size::bold);
        const Length allowed = allowed_difference(*near, state.job.practice.tape);
        y += ui.paragraph(box.x, y, box.w, say("the tape allows {1}", CloseLength{allowed}),
                          Size::small, ui.colours().soft);
    } else if (near && of == ReadingOf::remainder) {
        y += ui.paragraph(box.x, y, box.w,
                          say("the plan expects {1}", length_on(*near, tapes_of(state))),
                          Size::body);
    }
    return y - box.y;
}

/// Why the length keyed in is not believed at once; empty when it is.
Text doubt_of(const State& state, const Result<Length>& length, std::optional<Length> near) {
    if (!length) {
        return {};
    }
    const Text so_long = doubt_about_so_long(*length);
    return so_long.empty() && near ? doubt_about(*length, *near, state.job.practice.tape) : so_long;
}

/// The question asked before a doubtful reading counts, or why a key was refused.
Text question(const ReadingDraft& draft, const Text& doubt) {
    if (!draft.length.refused.empty()) {
        return draft.length.refused;
    }
    return draft.doubt_shown ? doubt : Text();
}

/// The last reading, large, before it is struck: a strike is not undone, it is read again.
Wished draw_strike(Ui& ui, const State& state, const EdgeWork& work, ReadingDraft& draft) {
    const RecordedReading last = standing(work, state.where.reading_of).back();
    const Frame frame = open_frame(
        ui, state, say("{1} · cross out the last reading", title_of(work.edge)),
        {{"stays", say("Let it stand")}, {"strike", say("Cross it out"), Look::primary, true}});
    Wished wish = frame.wish;
    Box body = frame.body;
    ui.figure(body.x, body.y, last.length, state.marks);
    take_top(body, ui.figure_height() + ui.mm(1));
    if (const Text other = on_other_tape(last.length, tapes_of(state)); !other.empty()) {
        take_top(body, ui.paragraph(body.x, body.y, body.w, other));
    }
    take_top(body, ui.mm(2));
    ui.paragraph(body.x, body.y, body.w,
                 say("{1} read it at {2}. Crossed out, it stays in the record and counts no more.",
                     last.by, clock_time(last.clock)));
    if (frame.tapped == "strike") {
        wish = Keep{StruckFor{last.id, StrikeReason::by_hand}};
    } else if (frame.tapped == "stays") {
        draft.striking = false;
    }
    return wish;
}

}  // namespace

Wished draw_reading(Ui& ui, const State& state, Drafts& drafts) {
    ReadingDraft& draft = drafts.reading;
    const EdgeWork* const work = edge_of(state, state.where.edge);
    if (work == nullptr) {
        return Go{{Screen::roof, {}}};
    }
    if (draft.striking && !standing(*work, state.where.reading_of).empty()) {
        return draw_strike(ui, state, *work, draft);
    }
    const bool metric = state.marks == Marks::millimetre;
    const ReadingOf of = state.where.reading_of;
    const Length before_keys = shown_length(draft.length, metric);
    take_typed(draft.length, ui.typed(), metric);
    const Result<Length> length = length_of(draft.length, metric);
    const std::optional<Length> near = expected(state, *work, of);
    const Text doubt = doubt_of(state, length, near);
    const bool questioned = draft.doubt_shown && !doubt.empty();
    const std::vector<RecordedReading> before = standing(*work, of);

    const bool can_put_back = is_empty(draft.length) && draft.cleared;
    const Frame frame = open_frame(
        ui, state, title_for(*work, of),
        {{"leave", say("Roof")},
         {"strike last", say("Cross out the last"), before.empty() ? Look::off : Look::plain},
         {"clear", can_put_back ? say("Put it back") : say("Start again"),
          is_empty(draft.length) && !can_put_back ? Look::off : Look::plain},
         {"keep", questioned ? say("Keep it all the same") : say("Keep this reading"),
          length ? Look::primary : Look::off}},
        {metric ? digit_keys : sixteenth_keys, above_keys_mm});
    Wished wish = frame.wish;
    draw_length_keys(ui, draft.length, frame.keys, metric);
    // Another length is another question: keeping it is no answer to the former one.
    if (shown_length(draft.length, metric) != before_keys) {
        draft.doubt_shown = false;
    }
    Box body = frame.body;
    take_top(body, draw_length_fields(ui, draft.length, body, tapes_of(state)) + ui.mm(3));
    Box words = ui.begin_scroll("reading words", body);
    const float top = words.y;
    take_top(words, draw_band(ui, question(draft, doubt), words));
    if (of == ReadingOf::remainder) {
        take_top(words,
                 ui.paragraph(words.x, words.y, words.w,
                              say("From the end of the fixed piece to the end of the edge.")) +
                     ui.mm(2));
    }
    if (!draft.length.typed.empty()) {
        take_top(words,
                 ui.paragraph(words.x, words.y, words.w, say("typed: {1}", draft.length.typed)));
    }
    take_top(words, draw_comparison(ui, state, *work, of, shown_length(draft.length, metric),
                                    {words.x, words.y, words.w, words.h}));
    take_top(words, ui.mm(2));
    take_top(words, draw_band(ui, hook_doubt(state.job), words));
    ui.end_scroll(words.y - top);

    if (frame.tapped == "keep" && length) {
        if (doubt.empty() || draft.doubt_shown) {
            wish = Keep{ReadingTaken{work->edge.id, of, *length}};
        } else {
            draft.doubt_shown = true;
        }
    } else if (frame.tapped == "clear") {
        draft.doubt_shown = false;
        if (can_put_back) {
            draft.length = *draft.cleared;
            draft.cleared.reset();
        } else {
            draft.cleared = draft.length;
            draft.length = {};
        }
    } else if (frame.tapped == "strike last" && !before.empty()) {
        draft.striking = true;
    } else if (frame.tapped == "leave") {
        wish = Go{{Screen::roof, {}}};
    }
    return wish;
}

}  // namespace hemline
