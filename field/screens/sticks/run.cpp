// The run: its three styles side by side, drawn to scale as they will look from the ground.
#include <imgui.h>

#include <algorithm>

#include "engine/plan/make_plan.h"
#include "engine/roof/edge_shape.h"
#include "engine/words/result.h"
#include "field/screens/page/frame.h"
#include "field/screens/page/length_in.h"
#include "field/screens/rules/rule_meaning.h"
#include "field/screens/screens.h"
#include "field/state/edge_view.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float lap_mm = 12, cut_lengths_mm = 10, style_mm_most = 38, strip_mm_most = 15;

struct StyleRow {
    Style style;
    const char* name;
    const char* label;
};
constexpr StyleRow styles[] = {
    {Style::balanced, "balanced", phrase("Balanced: equal ends")},
    {Style::equal, "equal", phrase("Equal pieces")},
    {Style::full, "full", phrase("Full sticks first")},
};

std::vector<std::optional<Length>> cut_so_far(const Run& run) {
    std::vector<std::optional<Length>> cut;
    for (const PlannedPiece& piece : run.pieces) {
        cut.push_back(piece.is_cut ? std::optional(piece.cut) : std::nullopt);
    }
    return cut;
}

/// The visible pieces in their places, seen from outside, with their visible lengths.
void draw_strip(Ui& ui, std::span<const Division> pieces, Side first, Tapes tapes, Box strip) {
    Length edge;
    for (const Division& piece : pieces) {
        edge += piece.covers;
    }
    Length begins;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const Length covers = pieces[i].covers;
        const auto share = [&](Length part) {
            return strip.w * static_cast<float>(static_cast<double>(part.nm()) /
                                                static_cast<double>(edge.nm()));
        };
        const float w = share(covers);
        const float x =
            first == Side::left ? strip.x + share(begins) : strip.right() - share(begins) - w;
        ui.ink()->AddRectFilled({x, strip.y}, {x + w, strip.bottom()},
                                i % 2 == 0 ? ui.colours().metal : ui.colours().metal_low);
        ui.ink()->AddRect({x, strip.y}, {x + w, strip.bottom()}, ui.colours().ink, 0, 0,
                          ui.mm(0.4F));
        draw_length_in(ui, covers, tapes, {x + ui.mm(1), strip.y, w - ui.mm(2), strip.h});
        begins += covers;
    }
}

Text summary(std::span<const Division> pieces, const RunRule& rule) {
    const Length ends = absolute(pieces.front().covers - pieces.back().covers);
    const auto laps = static_cast<std::int64_t>(pieces.size()) - 1;
    if (laps == 0) {
        return say("1 piece");
    }
    return is_balanced(pieces, rule)
               ? say_count("{2} pieces, {1} lap, ends equal", "{2} pieces, {1} laps, ends equal",
                           laps, laps + 1)
               : say_count("{2} pieces, {1} lap, ends differ by {3}",
                           "{2} pieces, {1} laps, ends differ by {3}", laps, laps + 1, ends);
}

bool is_planned_so(const Run& run, std::span<const Division> pieces) {
    return std::equal(run.pieces.begin(), run.pieces.end(), pieces.begin(), pieces.end(),
                      [](const PlannedPiece& a, const Division& b) { return a.cut == b.cut; });
}

/// What the edge must look like now; a touch goes to the next choice.
Text looks_label(Looks looks) {
    switch (looks) {
        case Looks::by_preference:
            break;
        case Looks::balanced:
            return say("Must be balanced");
        case Looks::free:
            return say("May run out");
    }
    return say("Looks as the job");
}

/// How far its pieces lap, and where that comes from.
Text lap_label(const Edge& edge, const State& state) {
    const CloseLength lap{lap_on(edge, state.job.practice)};
    return edge.lap ? say("Lap {1}, on this edge", lap) : say("Lap {1}, as the job", lap);
}

Looks next_looks(Looks looks) {
    return looks == Looks::by_preference ? Looks::balanced
           : looks == Looks::balanced    ? Looks::free
                                         : Looks::by_preference;
}

/// The bars say what shows; this what is cut.
float draw_cut_lengths(Ui& ui, const Run& run, const State& state, Box box) {
    std::vector<Text> lengths;
    for (const PlannedPiece& piece : run.pieces) {
        lengths.push_back(length_on(piece.cut, tapes_of(state)));
    }
    return ui.paragraph(
               box.x, box.y, box.w,
               say("The bars say what shows. To cut as planned: {1}", joined(lengths, " · ")),
               Size::small) +
           ui.mm(1);
}

struct StripOf {
    const RunRule& rule;
    Side first;
    Tapes tapes;
};

/// A button and its pieces; on an upright screen its words between them.
float style_mm_least(const Ui& ui) { return ui.portrait() ? 32 : 20; }

/// The button of a style, its result, and its pieces as they look; true when tapped.
bool draw_style(Ui& ui, const StyleRow& row, bool chosen,
                const Result<std::vector<Division>>& pieces, const StripOf& of, Box place) {
    const Text summed = pieces ? summary(*pieces, of.rule) : said(pieces.problem());
    Box words =
        take_top(place, ui.mm(std::clamp(place.h / ui.mm(1) - strip_mm_most - 1, 10.0F, 12.0F)));
    Box button = words;
    const auto size_in = [&](float w) {
        return ui.text_width(summed, Size::body) <= w ? Size::body : Size::small;
    };
    if (ui.portrait()) {
        take_top(place, ui.mm(1));
        words = take_top(place, ui.paragraph_height(words.w, summed, size_in(words.w)) + ui.mm(1));
    } else {
        button = take_left(words, words.w * 0.36F);
        take_left(words, ui.mm(4));
    }
    const bool tapped = ui.button(std::string("style ") + row.name, say(row.label), button,
                                  chosen ? Look::chosen : Look::plain);
    const Size size = size_in(words.w);
    const float h = ui.paragraph_height(words.w, summed, size);
    ui.paragraph(words.x, words.y + std::max(0.0F, (words.h - h) / 2), words.w, summed, size);
    if (pieces) {
        take_top(place, ui.mm(1));
        place.h = std::min(place.h, ui.mm(strip_mm_most));
        draw_strip(ui, *pieces, of.first, of.tapes, place);
    }
    return tapped;
}

}  // namespace

Wished draw_run(Ui& ui, const State& state, Drafts& /*drafts*/) {
    const EdgeWork* const work = edge_of(state, state.where.edge);
    const Run* const run = find_run(state.plan, state.where.edge, TrimRole::main);
    const std::optional<Length> length =
        work == nullptr ? std::nullopt : work->length(state.job.practice);
    const Trim* const trim = run == nullptr ? nullptr : state.catalogue.find(run->trim);
    if (trim == nullptr || !length) {
        return Go{{Screen::roof, {}}};
    }
    const NextWork next = next_work_on(state, *work);
    const Frame frame = open_frame(
        ui, state,
        say("{1} · {2} · the run", title_of(work->edge), length_on(*length, tapes_of(state))),
        {{"leave", say("Roof")},
         {"read", say("Read it again")},
         {"pitch", say("Pitch")},
         {"looks", looks_label(work->edge.looks)},
         {"next", next.label, Look::primary}});
    Wished wish = frame.wish;
    // Low, or under the news of a plan, it scrolls.
    Box body = ui.begin_scroll("run", frame.body);
    const float least = ui.mm(lap_mm + 3 * gap_mm + 3 * style_mm_least(ui) + cut_lengths_mm);
    const float height = std::max(frame.body.h, least);
    body.h = height;
    Box lap = take_top(body, ui.mm(lap_mm));
    lap.w = ui.portrait() ? lap.w : lap.w / 2;
    if (ui.button("lap", lap_label(work->edge, state), lap)) {
        wish = Go{{Screen::edge_lap, work->edge.id}};
    }
    // Beside the lap, or below it.
    Box said = ui.portrait() ? body : lap;
    if (ui.portrait()) {
        take_top(said, ui.mm(1));
    } else {
        said.x = lap.right() + ui.mm(gap_mm);
        said.w = body.right() - said.x;
    }
    const float below = said.y + draw_cut_lengths(ui, *run, state, said) - lap.bottom();
    take_top(body, std::max(below + ui.mm(2), ui.mm(gap_mm)));
    const RunRule rule = run_rule(work->edge, *trim, *length, state.job.practice, run->tabs);
    const std::vector<std::optional<Length>> cut = cut_so_far(*run);
    const std::vector<Box> places = rows(body, 3, ui.mm(gap_mm));
    bool is_lit = false;
    for (std::size_t i = 0; i < 3; ++i) {
        const StyleRow& row = styles[i];
        const auto pieces = divide_again(rule, row.style, cut);
        const bool chosen = work->style == row.style;
        // Without a chosen style the edge is divided with the others, often in one of these styles.
        // Where two styles come to the same, the first.
        const bool planned = !work->style && !is_lit && pieces && is_planned_so(*run, *pieces);
        is_lit = is_lit || planned;
        Box place = places[i];
        place.h = std::min(place.h, ui.mm(style_mm_most));
        if (draw_style(ui, row, chosen || planned, pieces,
                       {rule, first_fitted(work->edge), tapes_of(state)}, place) &&
            !chosen) {
            wish = Keep{StyleChosen{work->edge.id, row.style}, state.where};
        }
    }
    ui.end_scroll(height);
    if (frame.tapped == "leave") {
        wish = Go{{Screen::roof, {}}};
    } else if (frame.tapped == "read") {
        wish = Go{{Screen::reading, work->edge.id}};
    } else if (frame.tapped == "pitch") {
        wish = Go{{Screen::pitch, work->edge.id}};
    } else if (frame.tapped == "looks") {
        wish = Keep{LooksChosen{work->edge.id, next_looks(work->edge.looks)}, state.where};
    } else if (frame.tapped == "next") {
        wish = Go{next.where};
    }
    return wish;
}

}  // namespace hemline
