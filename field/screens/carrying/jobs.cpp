// Jobs on this tablet: open one, start one, or try the invented demo roof.
#include "engine/words/path_text.h"
#include "field/screens/carrying/promise.h"
#include "field/screens/page/frame.h"
#include "field/screens/page/letters.h"
#include "field/screens/screens.h"

namespace hemline {

namespace {

void draw_welcome(Ui& ui, Box& page) {
    take_top(page,
             ui.paragraph(page.x, page.y, page.w, say("No job here yet."), Size::title) + ui.mm(2));
    take_top(page, ui.paragraph(page.x, page.y, page.w,
                                say("Start a job for your own roof, or try the demo roof: an "
                                    "invented house with every kind of edge.")) +
                       ui.mm(4));
    take_top(page, ui.paragraph(
                       page.x, page.y, page.w,
                       say("This tool goes after local codes, the maker's printed instructions and "
                           "a licensed professional, never before them. Tie off at 6 ft and more."),
                       Size::body, ui.colours().soft));
}

/// Asked once: sizes are right only on a screen that was measured.
void draw_scale_question(Ui& ui, Box& page, Wished& wish) {
    take_top(page, ui.paragraph(page.x, page.y, page.w,
                                say("Nobody measured this screen yet: buttons may be too small for "
                                    "a glove. It takes a bank card.")) +
                       ui.mm(2));
    const std::vector<Box> places = columns(take_top(page, ui.mm(12)), 2, ui.mm(3));
    if (ui.button("measure screen", say("Lay a card on it"), places[0])) {
        wish = Go{{Screen::calibrate, {}}};
    }
    if (ui.button("scale later", say("Not now"), places[1])) {
        wish = PutOffScale{};
    }
    take_top(page, ui.mm(4));
}

}  // namespace

Wished draw_jobs(Ui& ui, const State& state, Drafts& drafts) {
    std::vector<Action> actions = {
        {"by", state.by.empty() ? say("Who holds it?") : say("Held by {1}", state.by)},
        {"light", say("Day or night")},
        {"screen size", say("Screen size")},
        other_language(state)};
    if (state.outside.there) {
        actions.push_back({"hand over", say("Hand over")});
    }
    actions.push_back({"new job", say("New job")});
    actions.push_back({"demo", say("Demo roof"), Look::primary});
    const Frame frame = open_frame(ui, state, say("Hemline · jobs on this tablet"), actions);
    Wished wish = frame.wish;
    const Box body = frame.body;
    Box list = ui.begin_scroll("jobs", body);
    const float top = list.y;
    if (state.ask_scale) {
        draw_scale_question(ui, list, wish);
    }
    if (state.promised == Promised::refused && !state.jobs.empty()) {
        take_top(list, draw_band(ui, promise_words(state.promised), list));
    }
    if (state.jobs.empty()) {
        draw_welcome(ui, list);
    }
    for (const std::filesystem::path& job : state.jobs) {
        const std::string name = job.filename().string();
        const bool elsewhere = job.parent_path() != state.jobs.front().parent_path();
        std::string target = "job " + name;
        Text label(name);
        if (elsewhere) {
            const std::string where = job.parent_path().string();
            target += " in " + where;
            label = glued(name, "\n", say("in {1}", path_text(where)));
        }
        if (ui.button(target, label, take_top(list, ui.mm(16)))) {
            wish = OpenJob{job};
        }
        take_top(list, ui.mm(3));
    }
    if (state.can.chooses_files &&
        ui.button("choose file", say("Open a job file"), take_top(list, ui.mm(14)))) {
        wish = Errand::choose_file;
    }
    take_top(list, ui.mm(6));
    if (ui.button("made of", say("What it is made of"), take_top(list, ui.mm(12)))) {
        wish = Go{{Screen::notices, {}}};
    }
    ui.end_scroll(list.y - top);
    if (frame.tapped == "demo") {
        wish = StartDemo{};
    } else if (frame.tapped == "new job") {
        drafts.person.naming_job = true;
        wish = Go{{Screen::person, {}}};
    } else if (frame.tapped == "by") {
        drafts.person.naming_job = false;
        wish = Go{{Screen::person, {}}};
    } else if (frame.tapped == "screen size") {
        wish = Go{{Screen::calibrate, {}}};
    } else if (frame.tapped == "hand over") {
        wish = Go{{Screen::hand_over, {}}};
    } else if (frame.tapped == "light") {
        wish = Toggle::light;
    }
    return wish;
}

}  // namespace hemline
