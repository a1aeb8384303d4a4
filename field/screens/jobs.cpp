// Jobs on this tablet: open one, start one, or try the invented demo roof.
#include "field/screens/frame.h"
#include "field/screens/letters.h"
#include "field/screens/screens.h"

namespace hemline {

Wish draw_jobs(Ui& ui, const State& state, Drafts& drafts) {
    Wish wish;
    const Frame frame = open_frame(ui, state, "Hemline · jobs on this tablet",
                                   {{"by", "Held by\n" + state.by},
                                    {"light", "Day or\nnight"},
                                    {"new job", "New job"},
                                    {"demo", "Demo roof", Look::primary}});
    Box body = frame.body;
    if (state.jobs.empty()) {
        body.y += ui.mm(4);
        body.y += ui.paragraph(body.x, body.y, body.w, "No job here yet.", Size::title) + ui.mm(3);
        body.y += ui.paragraph(body.x, body.y, body.w,
                               "Start a job for your own roof, or try the demo roof: an invented "
                               "boathouse with eight eaves.") +
                  ui.mm(8);
        ui.paragraph(body.x, body.y, body.w,
                     "This tool goes after local codes, the maker's printed instructions and a "
                     "licensed professional, never before them. Tie off at 6 ft and more.",
                     Size::body, ui.colours().soft);
    }
    const float row_height = ui.mm(16);
    const float pitch = row_height + ui.mm(3);
    const Box list = ui.begin_scroll("jobs", body, pitch * static_cast<float>(state.jobs.size()));
    float y = list.y;
    for (const std::filesystem::path& job : state.jobs) {
        const std::string name = job.filename().string();
        if (!state.jobs.empty() &&
            ui.button("job " + name, name, {list.x, y, list.w, row_height})) {
            wish.open_job = job;
        }
        y += pitch;
    }
    ui.end_scroll();
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
