// Send or back up: this job into a file, job files taken in, and the crew folder.
#include <string>

#include "engine/words/path_text.h"
#include "field/screens/page/frame.h"
#include "field/screens/screens.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

namespace fs = std::filesystem;

constexpr float row_mm = 14, two_columns_mm = 170;

void put(Ui& ui, Box& box, const Text& words, Size size = Size::body) {
    if (!words.empty()) {
        take_top(box, ui.paragraph(box.x, box.y, box.w, words, size) + ui.mm(2));
    }
}

void put_softly(Ui& ui, Box& box, const Text& words) {
    take_top(box,
             ui.paragraph(box.x, box.y, box.w, words, Size::small, ui.colours().soft) + ui.mm(2));
}

bool draw_way(Ui& ui, Box& box, const std::string& name, const Text& label) {
    const bool tapped = ui.button(name, label, take_top(box, ui.mm(row_mm)));
    take_top(box, ui.mm(gap_mm));
    return tapped;
}

void draw_files(Ui& ui, const Outside& outside, Box& box, Wished& wish) {
    put(ui, box, say("Job files"), Size::title);
    if (outside.kept.hand_over) {
        put(ui, box,
            say("They go to and come from {1}.", path_text(outside.kept.hand_over->string())));
    } else {
        put(ui, box, say("No folder for them is chosen yet."));
    }
    put(ui, box, outside.done, Size::bold);
    if (draw_way(ui, box, "file folder", say("Folder for job files"))) {
        wish = ChooseFolder{Choosing::hand_over};
    }
    put_softly(ui, box,
               outside.files.empty() ? say("No job file lies there.")
                                     : say("Job files there; a touch takes one in:"));
    for (const fs::path& file : outside.files) {
        const std::string name = file.filename().string();
        if (draw_way(ui, box, "take " + name, Text(name))) {
            wish = TakeFile{file};
        }
    }
}

void draw_crew(Ui& ui, const Outside& outside, Box& box, Wished& wish) {
    put(ui, box, say("Crew folder"), Size::title);
    if (!outside.kept.crew) {
        put(ui, box,
            say("None. With one, a synchronizer carries what each tablet writes to all the "
                "others."));
    } else {
        put(ui, box, path_text(outside.kept.crew->string()));
        if (outside.crew_failed) {
            take_top(box, draw_band(ui, outside.crew_said, box));
        } else {
            put(ui, box, outside.crew_said, Size::bold);
        }
    }
    for (const JobInCrew& job : outside.in_crew) {
        if (draw_way(ui, box, "join " + job.id, say("Take in {1}", job.name))) {
            wish = JoinCrewJob{job.id};
        }
    }
    if (draw_way(ui, box, "crew folder",
                 outside.kept.crew ? say("Another crew folder") : say("Choose a crew folder"))) {
        wish = ChooseFolder{Choosing::crew};
    }
    if (outside.kept.crew && draw_way(ui, box, "no crew folder", say("Use none any more"))) {
        wish = ForgetCrew{};
    }
}

}  // namespace

Wished draw_hand_over(Ui& ui, const State& state, Drafts& /*drafts*/) {
    const Outside& outside = state.outside;
    const bool open = !state.job.name.empty();
    const bool can_put = open && outside.kept.hand_over;
    const Frame frame =
        open_frame(ui, state, open ? say("Hand over · {1}", state.job.name) : say("Hand over"),
                   {{"leave", open ? say("Roof") : say("Jobs")},
                    {"put into file", open ? say("This job into a file") : say("No job is open"),
                     can_put ? Look::primary : Look::off}});
    Wished wish = frame.wish;
    Box list = ui.begin_scroll("hand over", frame.body);
    const float top = list.y;
    if (!ui.portrait() && list.w >= ui.mm(two_columns_mm)) {
        std::vector<Box> two = columns(list, 2, ui.mm(8));
        draw_files(ui, outside, two[0], wish);
        draw_crew(ui, outside, two[1], wish);
        list.y = std::max(two[0].y, two[1].y);
    } else {
        draw_files(ui, outside, list, wish);
        take_top(list, ui.mm(4));
        draw_crew(ui, outside, list, wish);
    }
    ui.end_scroll(list.y - top);
    if (frame.tapped == "leave") {
        wish = Go{Where{open ? Screen::roof : Screen::jobs, {}}};
    } else if (frame.tapped == "put into file" && can_put) {
        wish = PutIntoFile{};
    }
    return wish;
}

}  // namespace hemline
