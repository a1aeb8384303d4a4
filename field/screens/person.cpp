// Who holds the tablet, or what a new job is called: a name by letters, by keyboard, or one used
// before.
#include <algorithm>

#include "field/screens/frame.h"
#include "field/screens/letters.h"
#include "field/screens/screens.h"

namespace hemline {

namespace {

constexpr float names_mm = 11;
constexpr float low_mm = 60;

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

/// The names that fit beside one another; the one that was tapped, or empty.
std::string draw_names(Ui& ui, const std::vector<std::string>& names, Box row) {
    const float gap = ui.mm(3);
    std::size_t fit = 0;
    float used = 0;
    float widest = 0;
    for (const std::string& name : names) {
        widest = std::max({widest, ui.label_width(name), ui.mm(target_min)});
        used = static_cast<float>(fit + 1) * (widest + gap) - gap;
        if (used > row.w) {
            break;
        }
        ++fit;
    }
    std::string tapped;
    const std::vector<Box> places = columns(row, static_cast<int>(fit), gap);
    for (std::size_t i = 0; i < fit; ++i) {
        if (ui.button("name " + names[i], names[i], places[i])) {
            tapped = names[i];
        }
    }
    return tapped;
}

}  // namespace

Wish draw_person(Ui& ui, const State& state, Drafts& drafts) {
    Wish wish;
    const bool ready = !drafts.name.empty();
    const char* const title = drafts.naming_job ? "New job · its name" : "Who holds the tablet?";
    const Frame frame =
        open_frame(ui, state, title,
                   {{"leave", "Back"},
                    {"hand", state.hand == Hand::right ? "Left\nhanded" : "Right\nhanded"},
                    {"keep name", drafts.naming_job ? "Start the job" : "It is me",
                     ready ? Look::primary : Look::off}});
    Box body = frame.body;
    const std::vector<std::string> names =
        drafts.naming_job ? std::vector<std::string>() : names_known(state);
    // On a low screen the name stands beside the names known.
    Box shown = take_top(body, ui.mm(names_mm));
    Box known = shown;
    if (ui.portrait() || body.h > ui.mm(low_mm)) {
        known = take_top(body, names.empty() ? 0 : ui.mm(names_mm));
    } else {
        take_left(known, known.w * 0.4F);
    }
    take_top(body, ui.mm(4));
    ui.text(shown.x, shown.y + ui.mm(1), ready ? drafts.name : "…", Size::title);
    if (const std::string name = draw_names(ui, names, known); !name.empty()) {
        wish.hold_by = name;
    }
    draw_letter_keys(ui, drafts.name, drafts.digits_shown, body);
    if (frame.tapped == "leave") {
        wish.go = Where{state.job.name.empty() ? Place::jobs : Place::roof, {}};
    } else if (frame.tapped == "hand") {
        wish.toggle_hand = true;
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
