// The crew's ways past every screen there is, and a look at each on the way: room for gloves, and
// nothing off the page.
#pragma once

#include <algorithm>
#include <functional>
#include <set>
#include <string>
#include <vector>

#include <doctest/doctest.h>

#include "tests/field/app/journey.h"

namespace hemline {

struct Size2 {
    float w, h;
};

/// FIELD sizes in mm: hit boxes 10, primary 14 high, keys 19, gaps 3. One line a fault.
std::string faults_of(const Ui& ui);

/// Looks at the screen before the crew in every size and light, once for each kind of screen.
struct Inspection {
    Journey& crew;
    std::vector<Size2> sizes;
    std::set<std::string> seen;
    std::function<std::string(const Ui&)> find_faults = faults_of;

    /// Its place, and the targets on it: the same screen with other ones is another.
    [[nodiscard]] std::string screen() const {
        std::string id = std::to_string(static_cast<int>(crew.where().screen));
        for (const std::string& name : crew.screen->names()) {
            id += "," + name;
        }
        if (crew.where().screen == Screen::steps &&
            crew.status(crew.where().edge) != EdgeStatus::finished) {
            id += crew.step(crew.where().edge).rule->id;
        }
        if (crew.where().screen == Screen::strip_card) {
            id += crew.where().edge;  // hook strip, zee and channel are drawn alike
        }
        return id + crew.state().notice.english();
    }

    void look() {
        if (!seen.insert(screen()).second) {
            return;
        }
        for (const Size2 size : sizes) {
            crew.screen->resize(size.w, size.h);
            crew.screen->frames(2);
            const Ui& ui = crew.screen->ui();
            const std::string saved = ui.in_words(crew.state().saved);
            const bool is_told = std::any_of(
                ui.words().begin(), ui.words().end(),
                [&](const Words& one) { return one.words.find(saved) != std::string::npos; });
            const std::string faults =
                find_faults(ui) + (is_told ? "" : "\"" + saved + "\" does not show\n");
            CHECK_MESSAGE(faults.empty(), "screen " << screen().substr(0, 40) << " at " << size.w
                                                    << " x " << size.h << ":\n"
                                                    << faults);
        }
        crew.screen->resize(sizes.front().w, sizes.front().h);
        crew.screen->frames(2);
    }
};

/// Passes every screen there is, but for those of sticks, of handing over and of learning.
void walk(Journey& crew);
void walk_sticks(Journey& crew);
void walk_hand_over(Journey& crew);
/// What meets the panels, as an apprentice sees it: what is asked once, membrane, the cards of
/// strips and of an end cap, gable and sidewall in both ways.
void walk_meets(Journey& crew);
/// The panels of two planes: as laid, other seams, a pan that is cut, a pipe, their steps.
void walk_panels(Journey& crew);
/// The panels on that eave.
std::string panels_on(const Journey& crew, std::string_view eave);

}  // namespace hemline
