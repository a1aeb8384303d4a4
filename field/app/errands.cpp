// What a touch asks the machine for: a job as a file, a piece on paper or as a drawing.
#include "engine/handover/day_page.h"
#include "engine/handover/dxf.h"
#include "engine/handover/piece_papers.h"
#include "engine/handover/svg.h"
#include "engine/work/piece_pattern.h"
#include "field/app/app.h"
#include "field/state/edge_view.h"
#include "field/state/told.h"
#include "field/store/clock.h"
#include "field/store/file_name.h"

namespace hemline {

namespace {

Bytes bytes_of(const std::string& text) { return Bytes(text.begin(), text.end()); }

/// Paper speaks as the tablet does.
PageWords words_of(const State& state) {
    if (state.language == Language::english) {
        return english_on(state.marks);
    }
    return {"es",
            [&state](const Text& text) { return state.assets->spanish.of(text, state.marks); }};
}

}  // namespace

void App::run(Errand errand, const Drafts& drafts) {
    const Platform& platform = options_.platform;
    switch (errand) {
        case Errand::back_up:
            back_up();
            break;
        case Errand::choose_file:
            if (platform.choose) {
                platform.choose();
            }
            break;
        case Errand::ask_promise:
            if (platform.ask_promise) {
                platform.ask_promise();
            }
            break;
        case Errand::print_day:
            print_day(drafts);
            break;
        case Errand::print_card:
        case Errand::print_templates:
        case Errand::give_svg:
        case Errand::give_dxf:
            put_on_paper(errand, drafts.paper_a4);
            break;
    }
}

void App::print_day(const Drafts& drafts) {
    if (options_.platform.print && drafts.day_ms) {
        const DaySpan day = day_around(*drafts.day_ms);
        options_.platform.print(day_page(day_sheet(state_.job, state_.events, day),
                                         day_name({day.from_ms}),
                                         drafts.paper_a4 ? Paper::a4 : Paper::letter, clock_time,
                                         names_on(state_), words_of(state_)));
    }
}

/// False, with the reason on the screen: nobody took the file.
bool App::give(const std::string& name, std::string_view kind, const Bytes& bytes) {
    if (!options_.platform.give) {
        return false;
    }
    const std::optional<Problem> problem = options_.platform.give(name, kind, bytes);
    being_given_.reset();
    state_.notice = problem ? said(*problem)
                    : options_.platform.gives_later
                        ? Text()
                        : say("Handed to the browser's downloads: {1}", name);
    return !problem;
}

void App::put_on_paper(Errand errand, bool a4) {
    const Result<Card> card = card_in_hand(state_, state_.where);
    const EdgeWork* const work = edge_of(state_, state_.where.edge);
    if (!card || work == nullptr) {
        state_.notice = card ? say("That edge is not on this job.") : said(card.problem());
        return;
    }
    const Marks marks = state_.marks;
    const Paper paper = a4 ? Paper::a4 : Paper::letter;
    const std::string title = title_of(*card, marks, english_on(marks));
    const PaperHead head{state_.job.name, day_name({wall_ms()})};
    const Result<FlatPattern> pattern = piece_pattern(*card, work->edge, job_assets_.sections);
    if (errand == Errand::print_card && options_.platform.print) {
        options_.platform.print(card_page(*card, pattern ? std::optional(*pattern) : std::nullopt,
                                          marks, head, paper, words_of(state_)));
        return;
    }
    if (!pattern) {
        state_.notice = said(pattern.problem());
        return;
    }
    const std::string name =
        file_name_of(card->edge + " " + card->trim + " " + std::to_string(card->piece));
    if (errand == Errand::print_templates && options_.platform.print) {
        const PageWords words = words_of(state_);
        const std::string said = title_of(*card, marks, words);
        options_.platform.print(
            template_page(end_drawings(*pattern, said, marks, words), said, head, paper, words));
    } else if (errand == Errand::give_svg) {
        give(name + ".svg", "image/svg+xml", bytes_of(svg_of(drawing_of(*pattern, title, marks))));
    } else if (errand == Errand::give_dxf) {
        give(name + ".dxf", "image/vnd.dxf", bytes_of(dxf_of(drawing_of(*pattern, title, marks))));
    }
}

}  // namespace hemline
