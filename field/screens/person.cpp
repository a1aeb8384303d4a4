// Who holds the tablet, or what a new job is called: a name by letters, by keyboard, or one used
// before.
#include <algorithm>

#include "field/screens/frame.h"
#include "field/screens/letters.h"
#include "field/screens/screens.h"

namespace hemline {

namespace {

/// Names already on the job's events, and the three who use the tool.
std::vector<std::string> names_known(const State& state) {
    std::vector<std::string> names = {"Installer", "Foreman", "Apprentice"};
    for (const Event& event : state.events) {
        if (!event.by.empty() && std::find(names.begin(), names.end(), event.by) == names.end()) {
            names.push_back(event.by);
        }
    }
    if (names.size() > 6) {
        names.resize(6);
    }
    return names;
}

}  // namespace

Wish draw_person(Ui& ui, const State& state, Drafts& drafts) {
    Wish wish;
    const bool ready = !drafts.name.empty();
    const char* const title = drafts.naming_job ? "New job · its name" : "Who holds the tablet?";
    const Frame frame = open_frame(ui, state, title,
                                   {{"leave", "Back"},
                                    {"keep name", drafts.naming_job ? "Start the job" : "It is me",
                                     ready ? Look::primary : Look::off}});
    Box body = frame.body;
    Box shown = take_top(body, ui.mm(10));
    ui.text(shown.x, shown.y, ready ? drafts.name : "…", Size::title);
    if (!drafts.naming_job) {
        const std::vector<std::string> names = names_known(state);
        const std::vector<Box> places =
            columns(take_top(body, ui.mm(11)), static_cast<int>(names.size()), ui.mm(3));
        for (std::size_t i = 0; i < names.size(); ++i) {
            if (ui.button("name " + names[i], names[i], places[i])) {
                wish.hold_by = names[i];
            }
        }
        take_top(body, ui.mm(4));
    }
    draw_letter_keys(ui, drafts.name, body);
    if (frame.tapped == "leave") {
        wish.go = Where{state.job.name.empty() ? Place::jobs : Place::roof, {}};
    } else if (frame.tapped == "keep name" && ready) {
        if (drafts.naming_job) {
            wish.start_job = drafts.name;
        } else {
            wish.hold_by = drafts.name;
        }
    }
    return wish;
}

}  // namespace hemline
