// The run: its three styles side by side, drawn to scale as they will show from the ground.
#include <imgui.h>

#include "field/screens/edge_view.h"
#include "field/screens/frame.h"
#include "field/screens/screens.h"

namespace hemline {

namespace {

struct StyleRow {
    Style style;
    const char* name;
    const char* label;
};
constexpr StyleRow styles[] = {
    {Style::balanced, "balanced", "Balanced: equal ends"},
    {Style::equal, "equal", "Equal pieces"},
    {Style::full, "full", "Full sticks first"},
};

std::vector<std::optional<Length>> cut_so_far(const Run& run) {
    std::vector<std::optional<Length>> cut;
    for (const PlannedPiece& piece : run.pieces) {
        cut.push_back(piece.is_cut ? std::optional(piece.cut) : std::nullopt);
    }
    return cut;
}

/// The visible pieces in their places, seen from outside, with their visible lengths.
void draw_strip(Ui& ui, std::span<const Division> pieces, Side first, Marks marks, Box strip) {
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
        const std::string words = print_length(covers, marks);
        if (ui.text_width(words, Size::small) + ui.mm(2) < w) {
            ui.text(x + w / 2, strip.mid_y() - ui.line_height(Size::small) / 2, words, Size::small,
                    Align::centre);
        }
        begins += covers;
    }
}

std::string summary(std::span<const Division> pieces, const RunRule& rule, Marks marks) {
    const Length ends = absolute(pieces.front().covers - pieces.back().covers);
    std::string words = std::to_string(pieces.size()) +
                        (pieces.size() == 1 ? " piece"
                                            : " pieces, " + std::to_string(pieces.size() - 1) +
                                                  (pieces.size() == 2 ? " lap" : " laps"));
    if (pieces.size() > 1) {
        words += is_balanced(pieces, rule) ? ", ends equal"
                                           : ", ends differ by " + print_length(ends, marks);
    }
    return words;
}

}  // namespace

Wish draw_run(Ui& ui, const State& state) {
    Wish wish;
    const EdgeWork* const work = edge_of(state, state.where.edge);
    const Run* const run = find_run(state.plan, state.where.edge, TrimRole::main);
    const std::optional<Length> length =
        work == nullptr ? std::nullopt : work->length(state.job.practice);
    if (run == nullptr || !length) {
        wish.go = Where{Place::roof, {}};
        return wish;
    }
    const NextWork next = next_work_on(state, *work);
    const Frame frame = open_frame(
        ui, state, title_of(work->edge) + " · " + print_length(*length, state.marks) + " · the run",
        {{"leave", "Roof"},
         {"read", "Read it\nagain"},
         {"pitch", "Pitch"},
         {"next", next.label, Look::primary}});
    Box body = frame.body;
    const RunRule rule = run_rule(work->edge, TrimRole::main, *length, state.job.practice);
    const std::vector<std::optional<Length>> cut = cut_so_far(*run);
    for (const StyleRow& row : styles) {
        const Result<std::vector<Division>> pieces = divide_again(rule, row.style, cut);
        Box place = take_top(body, ui.mm(30));
        const bool chosen = work->style == row.style;
        const Box head = take_top(place, ui.mm(13));
        Box head_words = head;
        Box button = take_left(head_words, ui.mm(58));
        take_left(head_words, ui.mm(5));
        if (ui.button(std::string("style ") + row.name, row.label, inset(button, 0, ui.mm(1)),
                      chosen ? Look::chosen : Look::plain) &&
            !chosen) {
            wish.fact = StyleChosen{work->edge.id, row.style};
            wish.go = state.where;
        }
        const float text_y = head_words.mid_y() - ui.line_height(Size::body) / 2;
        if (pieces) {
            ui.text(head_words.x, text_y, summary(*pieces, rule, state.marks));
            Box strip = place;
            take_bottom(strip, ui.mm(6));
            draw_strip(ui, *pieces, work->edge.first, state.marks, inset(strip, 0, ui.mm(1)));
        } else {
            ui.paragraph(head_words.x, text_y, head_words.w,
                         pieces.problem().what + " " + pieces.problem().mend);
        }
    }
    if (frame.tapped == "leave") {
        wish.go = Where{Place::roof, {}};
    } else if (frame.tapped == "read") {
        wish.go = Where{Place::reading, work->edge.id};
    } else if (frame.tapped == "pitch") {
        wish.go = Where{Place::pitch, work->edge.id};
    } else if (frame.tapped == "next") {
        wish.go = next.where;
    }
    return wish;
}

}  // namespace hemline
