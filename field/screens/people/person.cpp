// Who holds the tablet and in which role, or what a new job is called: a name by letters, by
// keyboard, or a name used before.
#include <algorithm>

#include "field/screens/page/frame.h"
#include "field/screens/page/letters.h"
#include "field/screens/screens.h"

namespace hemline {

namespace {

constexpr float names_mm = 11;
constexpr float low_mm = 60;

/// Names already on the job's events, and the names of the three roles.
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

/// The names that fit next to each other; returns the name that was tapped, or empty.
std::string draw_names(Ui& ui, const std::vector<std::string>& names, Box row) {
    const float gap = ui.mm(3);
    std::size_t fit = 0;
    float used = 0;
    float widest = 0;
    for (const std::string& name : names) {
        widest = std::max({widest, ui.label_width(Text(name)), ui.mm(target_min)});
        used = static_cast<float>(fit + 1) * (widest + gap) - gap;
        if (used > row.w) {
            break;
        }
        ++fit;
    }
    std::string tapped;
    const std::vector<Box> places = columns(row, static_cast<int>(fit), gap);
    for (std::size_t i = 0; i < fit; ++i) {
        if (ui.button("name " + names[i], say(names[i]), places[i])) {
            tapped = names[i];
        }
    }
    return tapped;
}

/// What the person is to do.
Way way_chosen(const State& state, const PersonDraft& draft) {
    if (draft.way) {
        return *draft.way;
    }
    return draft.name.letters.empty() ? state.way : way_of(state.people, draft.name.letters);
}

/// The three roles, as buttons.
void draw_ways(Ui& ui, const State& state, PersonDraft& draft, Box row) {
    const Way chosen = way_chosen(state, draft);
    const std::vector<Box> places = columns(row, static_cast<int>(ways.size()), ui.mm(3));
    for (std::size_t i = 0; i < ways.size(); ++i) {
        const std::string word(word_of(ways[i]));
        if (ui.button("way " + word, spoken(ways[i]), places[i],
                      ways[i] == chosen ? Look::chosen : Look::plain)) {
            draft.way = ways[i];
        }
    }
}

}  // namespace

Wished draw_person(Ui& ui, const State& state, Drafts& drafts) {
    PersonDraft& draft = drafts.person;
    const bool ready = !draft.name.letters.empty() || (draft.way && !state.by.empty());
    const Text title =
        draft.naming_job ? say("New job · its name") : say("Who holds the tablet, and what for?");
    const Frame frame =
        open_frame(ui, state, title,
                   {{"leave", say("Back")},
                    other_language(state),
                    {"tablet", say("My settings")},
                    {"keep name", draft.naming_job ? say("Start the job") : say("It is me"),
                     ready ? Look::primary : Look::off}});
    Wished wish = frame.wish;
    Box body = frame.body;
    const std::vector<std::string> names =
        draft.naming_job ? std::vector<std::string>() : names_known(state);
    // On a low screen the name is beside the known names.
    Box shown = take_top(body, ui.mm(names_mm));
    Box known = shown;
    if (ui.portrait() || body.h > ui.mm(low_mm)) {
        known = take_top(body, names.empty() ? 0 : ui.mm(names_mm));
    } else {
        take_left(known, known.w * 0.4F);
    }
    take_top(body, ui.mm(3));
    const std::string name =
        draft.way && draft.name.letters.empty() ? state.by : draft.name.letters;
    ui.text(shown.x, shown.y + ui.mm(1), Text(ready ? name : "…"), Size::title);
    if (const std::string tapped = draw_names(ui, names, known); !tapped.empty()) {
        wish = HoldTablet{{tapped, draft.way.value_or(way_of(state.people, tapped))}};
    }
    if (!draft.naming_job) {
        draw_ways(ui, state, draft, take_top(body, ui.mm(target_min)));
        take_top(body, ui.mm(3));
    }
    draw_letter_keys(ui, draft.name, body);
    if (frame.tapped == "leave") {
        wish = Go{Where{state.job.name.empty() ? Screen::jobs : Screen::roof, {}}};
    } else if (frame.tapped == "tablet") {
        wish = Go{{Screen::tablet, {}}};
    } else if (frame.tapped == "keep name" && ready) {
        if (draft.naming_job) {
            wish = StartJob{draft.name.letters};
        } else {
            wish = HoldTablet{{name, way_chosen(state, draft)}};
        }
    }
    return wish;
}

}  // namespace hemline
