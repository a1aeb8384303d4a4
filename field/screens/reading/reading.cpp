// A tape reading: keys, a large readback, and a question where it cannot be right.
#include <imgui.h>

#include "engine/roof/readings.h"
#include "engine/roof/rising_readings.h"
#include "engine/words/result.h"
#include "engine/work/hook_doubt.h"
#include "field/screens/edges/draw_tape_laid.h"
#include "field/screens/page/frame.h"
#include "field/screens/page/keypad.h"
#include "field/screens/page/readback.h"
#include "field/screens/reading/pasted.h"
#include "field/screens/reading/strike.h"
#include "field/screens/screens.h"
#include "field/state/edge_view.h"

namespace hemline {

namespace {

constexpr float above_keys_mm = 46;  // words about the reading, on an upright screen

std::vector<Length> standing_lengths(const EdgeWork& work, ReadingOf of) {
    std::vector<Length> lengths;
    for (const RecordedReading& reading : standing_readings(work, of)) {
        lengths.push_back(reading.length);
    }
    return lengths;
}

/// What the reading should be near to: the nearest reading before it, or the plan's last piece less
/// its lap.
std::optional<Length> expected(const State& state, const EdgeWork& work, ReadingOf of,
                               Length draft) {
    if (of == ReadingOf::remainder) {
        const Run* const run = find_run(state.plan, work.edge.id, TrimRole::main);
        if (run == nullptr || run->pieces.empty()) {
            return std::nullopt;
        }
        return run->pieces.back().covers - run->lap;
    }
    const std::vector<Length> readings = standing_lengths(work, of);
    const auto nearest = nearest_reading(readings, draft);
    return nearest ? std::optional(readings[*nearest]) : std::nullopt;
}

/// The share of the edge that the pieces before the last one cover.
double fixed_share(const State& state, const EdgeWork& work) {
    const Run* const run = find_run(state.plan, work.edge.id, TrimRole::main);
    Length whole;
    for (const PlannedPiece& piece : run == nullptr ? std::vector<PlannedPiece>() : run->pieces) {
        whole += piece.covers;
    }
    if (whole <= Length()) {
        return 0;
    }
    const Length open = run->pieces.back().covers - run->lap;
    return 1 - static_cast<double>(open.nm()) / static_cast<double>(whole.nm());
}

Text title_for(const EdgeWork& work, ReadingOf of) {
    if (of == ReadingOf::remainder) {
        return say("{1} · for the last piece", title_of(work.edge));
    }
    static constexpr const char* ordinals[] = {
        phrase("{1} · first reading"), phrase("{1} · second reading"),
        phrase("{1} · third reading"), phrase("{1} · fourth reading"),
        phrase("{1} · next reading")};
    const std::size_t taken = std::min<std::size_t>(standing_readings(work, of).size(), 4);
    return say(ordinals[taken], title_of(work.edge));
}

Text beside(Length draft, Length near, ReadingOf of) {
    const Length off = draft - near, by = absolute(off);
    if (of == ReadingOf::remainder) {
        return off == Length()  ? say("just as planned")
               : off < Length() ? say("{1} shorter than planned", by)
                                : say("{1} longer than planned", by);
    }
    return off == Length()  ? say("the same as {1}", near)
           : off < Length() ? say("{1} shorter than {2}", by, near)
                            : say("{1} longer than {2}", by, near);
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
    const std::optional<Length> near = expected(state, work, of, draft);
    if (near && draft > Length()) {
        y += ui.paragraph(box.x, y, box.w, beside(draft, *near, of), Size::bold);
        const Length allowed = allowed_apart(draft, *near, state.job.practice.tape);
        y += ui.paragraph(box.x, y, box.w, say("the tape allows {1}", CloseLength{allowed}),
                          Size::small, ui.colours().soft);
    } else if (near && of == ReadingOf::remainder) {
        y += ui.paragraph(box.x, y, box.w,
                          say("the plan expects {1}", length_on(*near, tapes_of(state))),
                          Size::body);
    }
    return y - box.y;
}

/// What the roof, worked out, says of it: never cut from.
float draw_roof_says(Ui& ui, const std::optional<ExpectedLength>& roof, Box box) {
    return roof ? ui.paragraph(
                      box.x, box.y, box.w,
                      say("the roof says {1}, within {2}", roof->length, told_margin(roof->off)),
                      Size::body) +
                      ui.mm(1)
                : 0;
}

/// Why the length keyed in is doubted; empty when it is plausible.
Text doubt_of(const State& state, const Result<Length>& length, std::optional<Length> near,
              const std::optional<ExpectedLength>& roof) {
    if (!length) {
        return {};
    }
    if (Text so_long = doubt_about_so_long(*length); !so_long.empty()) {
        return so_long;
    }
    const Tape tape = state.job.practice.tape;
    Text doubt = near ? doubt_about(*length, *near, tape) : Text();
    return doubt.empty() && roof ? roof_doubt(*length, *roof, tape) : doubt;
}

/// The question asked before a doubtful reading counts, or why a key was refused.
Text question(const ReadingDraft& draft, const Text& doubt) {
    if (!draft.length.refused.empty()) {
        return draft.length.refused;
    }
    return draft.doubt_shown ? doubt : Text();
}

}  // namespace

Wished draw_reading(Ui& ui, const State& state, Drafts& drafts) {
    ReadingDraft& draft = drafts.reading;
    const EdgeWork* const work = edge_of(state, state.where.edge);
    if (work == nullptr) {
        return Go{{Screen::roof, {}}};
    }
    if (draft.striking && !standing_readings(*work, state.where.reading_of).empty()) {
        return draw_strike(ui, state, *work, draft);
    }
    if (Wished elsewhere = take_pasted(ui, state, drafts)) {
        return elsewhere;
    }
    const bool pasted = has_pasted(drafts.pasted);
    const bool metric = state.marks == Marks::millimetre;
    const ReadingOf of = state.where.reading_of;
    const Length before_keys = shown_length(draft.length, metric);
    take_typed(ui, draft.length, metric);
    const Result<Length> length = length_of(draft.length, metric);
    const std::optional<Length> near = expected(state, *work, of, length ? *length : Length());
    const std::optional<ExpectedLength> roof =
        of == ReadingOf::edge ? expected_of(state.bodies, work->edge.id) : std::nullopt;
    const Text doubt = doubt_of(state, length, near, roof);
    const bool questioned = draft.doubt_shown && !doubt.empty();
    const std::vector<RecordedReading> before = standing_readings(*work, of);

    const bool can_put_back = is_empty(draft.length) && draft.cleared;
    const Frame frame = open_frame(
        ui, state, title_for(*work, of),
        {{"leave", say("Roof")},
         pasted
             ? Action{"skip line", say("Skip this line")}
             : Action{"strike one", say("Cross one out"), before.empty() ? Look::off : Look::plain},
         {"clear", can_put_back ? say("Put it back") : say("Start again"),
          is_empty(draft.length) && !can_put_back ? Look::off : Look::plain},
         {"keep", questioned ? say("Keep it all the same") : say("Keep this reading"),
          length ? Look::primary : Look::off}},
        {metric ? digit_keys : sixteenth_keys, above_keys_mm});
    Wished wish = frame.wish;
    draw_length_keys(ui, draft.length, frame.keys, metric);
    Box body = frame.body;
    take_top(body, draw_length_fields(ui, draft.length, body, tapes_of(state)) + ui.mm(3));
    // A changed length is a new question: saving it does not answer the earlier question.
    if (shown_length(draft.length, metric) != before_keys) {
        draft.doubt_shown = false;
    }
    Box words = ui.begin_scroll("reading words", body);
    const float top = words.y;
    take_top(words, draw_band(ui, question(draft, doubt), words));
    take_top(words, draw_pasted(ui, state, drafts.pasted, words));
    take_top(words, draw_roof_says(ui, roof, words));
    if (of == ReadingOf::remainder) {
        take_top(words,
                 ui.paragraph(words.x, words.y, words.w,
                              say("From the end of the fixed piece to the end of the edge.")) +
                     ui.mm(2));
    }
    take_top(words, draw_comparison(ui, state, *work, of, shown_length(draft.length, metric),
                                    {words.x, words.y, words.w, words.h}));
    take_top(words, ui.mm(2));
    take_top(words, draw_band(ui, hook_doubt(state.job), words));
    words.h = body.h - (words.y - top);
    draw_tape_laid(ui, {work->edge, of == ReadingOf::remainder ? fixed_share(state, *work) : 0},
                   words);
    ui.end_scroll(words.y - top);

    if (frame.tapped == "keep" && length) {
        if (doubt.empty() || draft.doubt_shown) {
            drop_line(drafts.pasted);
            wish =
                Keep{ReadingTaken{work->edge.id, of, *length}, next_pasted(state, drafts.pasted)};
        } else {
            draft.doubt_shown = true;
        }
    } else if (frame.tapped == "skip line") {
        drop_line(drafts.pasted);
        draft = {};
    } else if (frame.tapped == "clear") {
        draft.doubt_shown = false;
        if (can_put_back) {
            draft.length = *draft.cleared;
            draft.cleared.reset();
        } else {
            draft.cleared = draft.length;
            draft.length = {};
        }
    } else if (frame.tapped == "strike one" && !before.empty()) {
        draft.striking = true;
        draft.which.clear();
    } else if (frame.tapped == "leave") {
        wish = Go{{Screen::roof, {}}};
    }
    return wish;
}

}  // namespace hemline
