#include "field/screens/reading/strike.h"

#include "field/screens/page/other_tape.h"
#include "field/state/edge_view.h"

namespace hemline {

namespace {

constexpr float away_from_strike_mm = 11;  // a touch that misses a reading crosses none out

/// By its number among those that stand: what was touched, else the one in doubt, else the last.
std::size_t chosen_reading(const State& state, const EdgeWork& work, const ReadingDraft& draft,
                           std::size_t standing) {
    for (std::size_t i = 0; i < standing; ++i) {
        if (draft.which == std::to_string(i + 1)) {
            return i;
        }
    }
    const std::optional<std::size_t> odd = work.verdict(state.job.practice).odd_one_out;
    return state.where.reading_of == ReadingOf::edge && odd ? *odd : standing - 1;
}

/// A target for each reading: its length, who read it and when.
void draw_readings(Ui& ui, const std::vector<RecordedReading>& readings, std::size_t chosen,
                   ReadingDraft& draft, Box box) {
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const RecordedReading& reading = readings[i];
        const Box place = take_top(box, ui.mm(primary_min));
        take_top(box, ui.mm(gap_mm));
        if (ui.button("reading " + std::to_string(i + 1),
                      glued(reading.length, "  ", reading.by, " ", clock_time(reading.clock)),
                      place, i == chosen ? Look::chosen : Look::plain)) {
            draft.which = std::to_string(i + 1);
        }
    }
}

}  // namespace

std::vector<RecordedReading> standing_readings(const EdgeWork& work, ReadingOf of) {
    std::vector<RecordedReading> readings;
    for (const RecordedReading& reading : work.readings) {
        if (!reading.struck && reading.of == of) {
            readings.push_back(reading);
        }
    }
    return readings;
}

/// Shows the reading, large, before it is struck, because a strike cannot be undone, only read
/// again.
Wished draw_strike(Ui& ui, const State& state, const EdgeWork& work, ReadingDraft& draft) {
    const std::vector<RecordedReading> readings = standing_readings(work, state.where.reading_of);
    const std::size_t chosen = chosen_reading(state, work, draft, readings.size());
    const RecordedReading& reading = readings[chosen];
    const Frame frame = open_frame(ui, state, say("{1} · cross out a reading", title_of(work.edge)),
                                   {way_back({"stays", say("Let it stand")}),
                                    {"strike", say("Cross it out"), Look::primary, true}});
    Wished wish = frame.wish;
    Box view = frame.body;
    take_bottom(view, ui.mm(away_from_strike_mm));
    Box body = ui.begin_scroll("readings to cross out", view);
    const float top = body.y;
    ui.figure(body.x, body.y, reading.length, state.marks);
    take_top(body, ui.figure_height() + ui.mm(1));
    if (const Text other = on_other_tape(reading.length, tapes_of(state)); !other.empty()) {
        take_top(body, ui.paragraph(body.x, body.y, body.w, other));
    }
    take_top(body, ui.mm(2));
    take_top(body, ui.paragraph(body.x, body.y, body.w,
                                say("{1} read it at {2}. Crossed out, it stays in the record and "
                                    "counts no more.",
                                    reading.by, clock_time(reading.clock))) +
                       ui.mm(2));
    if (readings.size() > 1) {
        draw_readings(ui, readings, chosen, draft, body);
        take_top(body, static_cast<float>(readings.size()) * ui.mm(primary_min + gap_mm));
    }
    ui.end_scroll(body.y - top);
    if (frame.tapped == "strike") {
        draft.striking = false;
        draft.which.clear();
        wish = Keep{StruckFor{reading.id, StrikeReason::by_hand}, {}, {}, true};
    } else if (frame.tapped == "stays") {
        draft.striking = false;
    }
    return wish;
}

}  // namespace hemline
