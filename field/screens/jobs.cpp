// Jobs on this tablet: open one, start one, or try the invented demo roof.
#include "field/screens/frame.h"
#include "field/screens/letters.h"
#include "field/screens/screens.h"

namespace hemline {

namespace {

void draw_welcome(Ui& ui, Box& page) {
    take_top(page,
             ui.paragraph(page.x, page.y, page.w, "No job here yet.", Size::title) + ui.mm(2));
    take_top(page, ui.paragraph(page.x, page.y, page.w,
                                "Start a job for your own roof, or try the demo roof: an invented "
                                "boathouse with eight eaves.") +
                       ui.mm(4));
    take_top(page,
             ui.paragraph(page.x, page.y, page.w,
                          "This tool goes after local codes, the maker's printed instructions and "
                          "a licensed professional, never before them. Tie off at 6 ft and more.",
                          Size::body, ui.colours().soft));
}

}  // namespace

Wish draw_jobs(Ui& ui, const State& state, Drafts& drafts) {
    Wish wish;
    const Frame frame = open_frame(ui, state, "Hemline · jobs on this tablet",
                                   {{"by", "Held by\n" + state.by},
                                    {"light", "Day or\nnight"},
                                    {"new job", "New job"},
                                    {"demo", "Demo roof", Look::primary}});
    const Box body = frame.body;
    Box list = ui.begin_scroll("jobs", body);
    const float top = list.y;
    if (state.jobs.empty()) {
        draw_welcome(ui, list);
    }
    for (const std::filesystem::path& job : state.jobs) {
        const std::string name = job.filename().string();
        if (ui.button("job " + name, name, take_top(list, ui.mm(16)))) {
            wish.open_job = job;
        }
        take_top(list, ui.mm(3));
    }
    ui.end_scroll(list.y - top);
    if (frame.tapped == "demo") {
        wish.start_demo = true;
    } else if (frame.tapped == "new job") {
        drafts.name.clear();
        drafts.naming_job = true;
        wish.go = Where{Place::person, {}};
    } else if (frame.tapped == "by") {
        drafts.name.clear();
        drafts.naming_job = false;
        wish.go = Where{Place::person, {}};
    } else if (frame.tapped == "light") {
        wish.toggle_light = true;
    }
    return wish;
}

}  // namespace hemline
