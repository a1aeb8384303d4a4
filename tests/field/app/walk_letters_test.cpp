// The walk's kinds and corners: each has its target and letters as large as its neighbors'.
#include <doctest/doctest.h>

#include <algorithm>

#include "tests/field/app/journey.h"
#include "tests/field/app/layout_walks.h"

using namespace hemline;

TEST_CASE("Every kind of side and of corner is in letters of 22' on a target of a glove's size") {
    for (const Size2 size : {Size2{885, 531}, Size2{531, 885}, Size2{1280, 800}, Size2{800, 1280},
                             Size2{1652, 1032}, Size2{1032, 1652}}) {
        const float w = size.w, h = size.h;
        for (const bool spanish : {false, true}) {
            CAPTURE(w);
            CAPTURE(spanish);
            Journey crew(w, h);
            if (spanish) {
                crew.tap("language");
            }
            crew.tap_all({"new job", "letter A", "keep name", "walk"});
            const Ui& ui = crew.screen->ui();
            for (const char* const name :
                 {"kind eave", "kind gable", "kind wall", "kind high_eave", "kind open",
                  "kind transition", "corner outside", "corner inside", "corner other"}) {
                CAPTURE(std::string(name));
                crew.tap(name);  // scrolled to where there is no room for all
                if (crew.screen->has_target("leave corner")) {
                    crew.tap("leave corner");
                }
                // Bold letters are 22' (theme.h); a button half out of view is scrolled in.
                const auto is_large = [&] {
                    const auto& all = ui.targets();
                    const auto found =
                        std::find_if(all.begin(), all.end(),
                                     [&](const Target& target) { return target.name == name; });
                    return found != all.end() && found->box.w >= ui.mm(target_min) - 0.5F &&
                           found->box.h >= ui.mm(target_min) - 0.5F &&
                           ui.label_size({Text(found->label)}, found->box) >= Size::bold;
                };
                for (int i = 0; i < 6 && !is_large(); ++i) {
                    const Box box = crew.screen->target(name);
                    crew.screen->drag_from(box.mid_x(), box.mid_y(), 0, i % 2 == 0 ? -7 : 10);
                }
                CHECK(is_large());
            }
        }
    }
}
