#include "tests/field/app/layout_walks.h"

#include <algorithm>
#include <array>
#include <fstream>

#include "engine/words/result.h"
#include "field/state/plane_view.h"
#include "field/store/job_merge.h"
#include "tests/field/app/full_disk.h"

namespace hemline {

namespace {

bool begins_with(const std::string& name, std::string_view start) {
    return name.rfind(start, 0) == 0;
}

bool is_key(const std::string& name) {
    return begins_with(name, "digit ") || begins_with(name, "inches ") ||
           begins_with(name, "sixteenths ") || name == "back" || name == "point" ||
           name == "a sixteenth more";
}

bool is_primary(const std::string& name) {
    static const std::set<std::string> primaries = {
        "demo",       "next",          "keep",        "keep name",   "cut",
        "answer",     "undo",          "keep edge",   "tick",        "to card",
        "to reading", "keep scale",    "done",        "send",        "stands",
        "use folder", "put into file", "keep number", "all so",      "go up",
        "keep next",  "not today",     "keep pitch",  "keep corner", "below"};
    return primaries.count(name) > 0;
}

/// Rows of a list may touch: lines separate them, and a near miss shows at once.
bool are_rows(const std::string& a, const std::string& b) {
    return (begins_with(a, "entry ") && begins_with(b, "entry ")) ||
           (begins_with(a, "edge ") && begins_with(b, "edge ")) ||
           (begins_with(a, "stick ") && begins_with(b, "stick "));
}

/// A touch near an edge, where no letter is nearer.
bool is_plan(const std::string& name) { return name == "roof plan"; }

/// An action that discards work is far from its neighbors; 13 mm is our choice. "Spoiled" on the
/// card only opens the page that asks how much.
bool discards(const std::string& name) {
    static const std::set<std::string> all = {"strike", "take off"};
    return all.count(name) > 0;
}

/// The name of a section's leg stands in its place: else it lies across a line or other words.
std::string past_its_place(const Ui& ui, const Target& leg) {
    for (const Words& words : ui.words()) {
        if (words.words == leg.label && words.box.y >= leg.box.y &&
            words.box.bottom() <= leg.box.bottom() &&
            (words.box.x < leg.box.x - 1 || words.box.right() > leg.box.right() + 1) &&
            words.box.x < leg.box.right() && words.box.right() > leg.box.x) {
            return "\"" + leg.label + "\" is wider than its place\n";
        }
    }
    return {};
}

/// Empty width or height between two boxes; negative where they overlap in both.
float gap_of(Box a, Box b) {
    return std::max({b.x - a.right(), a.x - b.right(), b.y - a.bottom(), a.y - b.bottom()});
}

}  // namespace

std::string faults_of(const Ui& ui) {
    constexpr float tolerance = 0.1F;  // mm: less than a pixel
    std::string faults;
    for (const std::string& fault : ui.faults()) {
        // Names of jobs, files and people may be as long as they like.
        const bool is_name = begins_with(fault, "the label of job ") ||
                             begins_with(fault, "the label of take ") ||
                             begins_with(fault, "the label of person Somebody");
        faults += is_name ? "" : fault + "\n";
    }
    const Box page = ui.page();
    const float mm = ui.mm(1);
    for (const Words& words : ui.words()) {
        if (words.box.x < 0 || words.box.right() > page.w + 1) {
            faults += "\"" + words.words + "\" runs off the page\n";
        }
    }
    const auto& targets = ui.targets();
    for (std::size_t i = 0; i < targets.size(); ++i) {
        const std::string& name = targets[i].name;
        const Box box = targets[i].box;
        faults += targets[i].label.empty() ? name + " says nothing to those who hear\n" : "";
        if (box.x < 0 || box.y < 0 || box.right() > page.w + 0.5F || box.bottom() > page.h + 0.5F) {
            faults += name + " is not wholly on the page\n";
        }
        if (begins_with(name, "leg ")) {
            faults += past_its_place(ui, targets[i]);
        }
        const float least = is_key(name) ? key_min : target_min;
        // Where the next edge is unread, going on to it is the main action, not staying here.
        const bool stays = name == "keep" &&
                           std::any_of(targets.begin(), targets.end(),
                                       [](const Target& one) { return one.name == "keep next"; });
        const float h_least = std::max(least, is_primary(name) && !stays ? primary_min : 0);
        if (box.w / mm < least - tolerance || box.h / mm < h_least - tolerance) {
            faults += name + " is only " + std::to_string(box.w / mm) + " by " +
                      std::to_string(box.h / mm) + " mm\n";
        }
        for (std::size_t j = i + 1; j < targets.size(); ++j) {
            if ((is_plan(name) && begins_with(targets[j].name, "roof ")) ||
                (is_plan(targets[j].name) && begins_with(name, "roof "))) {
                continue;
            }
            const float gap = gap_of(box, targets[j].box) / mm;
            const float wanted = are_rows(name, targets[j].name)               ? 0
                                 : discards(name) || discards(targets[j].name) ? 13
                                                                               : 3;
            if (gap < wanted - tolerance) {
                faults += name + " and " + targets[j].name + " are " + std::to_string(gap) +
                          " mm apart\n";
            }
        }
    }
    return faults;
}

namespace {

/// Edge A is sent back; B is not read.
void walk_as_foreman(Journey& crew) {
    crew.tap_all({"person Foreman", "edge B", "leave", "day", "leave", "edge A", "work"});
    crew.pass_gate();
    crew.tap_all({"answer", "leave", "next"});
    for (const EdgeValue& value : not_accepted(values_on(crew.state(), crew.work("A")))) {
        crew.tap("accept " + value.key);
    }
    crew.tap_all({"tick", "edge A", "send back", "leave", "leave"});
    crew.tap_all({"person Foreman", "way learn", "way cut", "leave", "person Apprentice"});
}

/// Where two eaves and a hip meet.
void look_closer(Journey& crew) {
    const Box b = crew.screen->target("roof B"), a = crew.screen->target("roof A");
    crew.screen->touch({TouchKind::down, 0, b.mid_x(), a.mid_y()});
    crew.screen->touch({TouchKind::up, 0, b.mid_x(), a.mid_y()});
    if (crew.on_screen) {
        crew.on_screen();
    }
    crew.tap_all({"closer", "whole roof"});
}

}  // namespace

void walk(Journey& crew) {
    const Length length = feet(46) + sixteenths(4);
    crew.tap_all({"measure screen", "lay tape", "much longer", "lay card", "leave"});
    crew.tap_all({"screen size", "later", "made of", "part cereal", "parts", "leave", "by"});
    crew.tap_all({"tablet", "light", "light", "leave", "new job", "letter A", "keep name"});
    crew.tap_all({"walk", "shape", "shape l"});
    for (const int outside : {46, 42, 24}) {
        crew.key_in(feet(outside));
        crew.tap("next");
    }
    crew.tap_all({"notation degrees", "leave", "leave", "leave", "walk"});
    crew.key_in(feet(40));
    crew.tap_all({"kind gable", "kind eave", "corner other", "digit 9", "digit 5", "keep corner"});
    crew.tap_all({"corner outside", "next"});
    crew.key_in(feet(24) + inches(6));
    crew.tap_all({"close", "leave", "next", "leave", "walk", "one back", "one back", "leave"});
    crew.tap("add edge");
    crew.tap_all({"kind transition", "left end inside corner", "right end open end"});
    crew.tap_all({"notation degrees", "digit 3", "digit 0", "keep number"});
    crew.tap_all({"ask Corner at the left", "digit 1", "digit 9", "digit 0"});
    crew.tap_all({"back", "digit 5", "back", "back", "digit 9", "digit 5", "before"});
    crew.tap_all({"keep edge", "leave", "add edge", "change one", "change A", "ask Name"});
    crew.tap_all({"ask Panels' seam", "seam snap-lock", "take off", "add edge"});
    crew.tap_all({"kind eave", "left end open end", "before", "left end open end"});
    crew.tap_all({"right end open end", "ask Name", "letter Q", "keep number"});
    crew.tap_all({"ask Trim", "before", "keep edge", "leave", "jobs"});
    crew.tap("demo");
    look_closer(crew);
    crew.tap_all({"by", "letter Z", "letter O", "letter E", "keep name"});
    crew.tap("edge A");
    crew.key_in(length);
    tap_in_vain(crew, "keep");
    crew.tap("keep");
    crew.key_in(length + inches(1));
    crew.tap_all({"keep", "keep"});  // questioned, then a third reading
    crew.tap_all({"strike one", "stays"});
    crew.key_in(length);
    crew.tap_all({"keep", "digit 1", "point", "digit 5"});
    tap_in_vain(crew, "keep");
    crew.tap("keep");
    crew.tap_all({"run", "style equal", "style full", "style balanced"});
    crew.tap_all({"lap", "inches 8", "keep", "lap", "field feet", "digit 9", "digit 9", "keep"});
    crew.tap_all({"as the job", "looks", "looks", "looks", "pitch", "leave"});
    crew.tap_all({"history", "leave", "rules", "rule lap", "inches 8", "leave"});
    crew.tap_all({"rule fixed_line", "leave", "rule cut_grid", "leave", "leave", "edge A"});
    crew.reach_card("A", TrimRole::wrap, 1);
    crew.tap_all({"spoiled", "as planned", "field feet", "leave"});
    crew.tap_all({"differently", "as planned", "field inches", "leave"});
    while (crew.where().screen != Screen::gate) {
        crew.do_next();
    }
    crew.tap_all({"dew", "digit 6", "digit 0", "humidity", "digit 8", "digit 0", "leave"});
    crew.tap_all({"watcher", "letter A", "leave", "no wind", "not here"});
    crew.tap_all({"person Foreman", "edge A", "work", "lift", "leave", "lift"});
    crew.tap_all({"reason wind is down", "leave", "by", "letter Z"});
    crew.tap_all({"letter O", "letter E", "way cut", "keep name", "edge A"});
    crew.pass_gate();
    crew.tap_all({"not safe", "go up"});
    crew.reach_step("A", "wrap_fasten", 1);
    crew.tap_all({"digit 1", "answer", "answer"});  // far too few, noted
    crew.reach_card("A", TrimRole::main, 1);
    crew.tap_all({"folded", "step cut", "step half", "end right", "step meeting", "end left"});
    crew.tap_all({"step finished", "section", "leg 1", "inches 4", "drop", "bend 1", "digit 2"});
    crew.tap_all({"turned down", "drop", "hem 3", "closed hem", "drop", "done", "to card"});
    tap_in_vain(crew, "cut");
    crew.tap("cut");
    crew.reach_step("A", "hook", 1);
    crew.tap_all({"answer wrong", "look again", "answer wrong", "answer wrong"});
    crew.reach_step("A", "string");
    crew.tap_all({"field inches", "inches 3", "sixteenths 2", "answer"});
    tap_in_vain(crew, "answer");
    crew.tap("answer");
    crew.finish_edge("A");
    crew.tap_all({"edge A", "send back", "letter L", "leave", "send back", "reason bead missing"});
    crew.tap_all({"edge A", "leave", "history", "leave"});
    walk_as_foreman(crew);
}

namespace {

/// The first stick of the list.
std::string first_stick(const Journey& crew) {
    for (const std::string& name : crew.screen->names()) {
        if (begins_with(name, "stick ")) {
            return name;
        }
    }
    FAIL("there is no stick");
    return "";
}

}  // namespace

void walk_hand_over(Journey& crew) {
    namespace fs = std::filesystem;
    const TemporaryFolder home;
    const Setting at("HOME", home.path().string());
    for (const char* folder : {"Documents", "Pictures of the roof", "crew"}) {
        fs::create_directories(home.path() / folder);
    }
    crew.tap_all({"hand over", "leave", "demo", "hand over", "put into file"});
    const std::vector<fs::path> files = *job_files_in(crew.outside.path());
    std::ofstream(crew.outside.path() / "torn.hemline.zip") << "half a file";
    crew.tap_all({"leave", "hand over", "take torn.hemline.zip"});
    crew.tap("take " + files.front().filename().string());
    crew.tap_all({"crew folder", "into crew", "up", "into crew", "use folder", "leave", "edge A"});
    crew.key_in(feet(24));
    tap_in_vain(crew, "keep");
    crew.tap_all({"go on elsewhere", "into Documents", "use folder", "keep", "leave", "jobs"});
    crew.tap_all({"hand over", "no crew folder", "leave"});
    // Another tablet read A too, out of reach, and both fitted a step of it.
    const auto apart = [&](std::uint64_t device, Length length) {
        const fs::path copy = home.path() / print_device(device);
        fs::copy(crew.folders.jobs.front(), copy);
        const auto journal = JournalFile::open(copy, device);
        REQUIRE(journal.ok());
        REQUIRE((*journal)->append(ReadingTaken{"B", ReadingOf::edge, length}, "Foreman", {}, 1));
        REQUIRE((*journal)->append(PitchTaken{"B", rise_in_12(length > feet(20) ? 5 : 6)},
                                   "Somebody with a very long name indeed", {}, 1));
        return copy;
    };
    const fs::path jobs[] = {apart(0xada, feet(12) + inches(3)), apart(0xbe4, feet(31))};
    const Result<Journals> both = gather_journals(jobs);
    REQUIRE(both.ok());
    Disk disk;
    const fs::path merged = crew.folder.path() / "Both";
    REQUIRE(merge_into(disk, merged, *both, 1));
    crew.tap_all({"hand over", "leave", "jobs", "job Both", "apart"});
    crew.tap("side " + print_event_id(crew.state().job.conflicts.front().sides.front().id));
    crew.tap_all({"next apart", "measure again", "leave", "edge B"});
    crew.tap("side " + print_event_id(crew.state().job.conflicts.front().sides.front().id));
    crew.tap("stands");
}

namespace {

/// To that step, to the card of other metal that it opens, and back.
void look_at_card(Journey& crew, const std::string& edge, const char* step, const char* card) {
    crew.reach_step(edge, step);
    if (crew.where().screen == Screen::roof) {
        crew.tap("edge " + edge);
    }
    crew.tap_all({card, "leave"});
}

/// An edge of that kind is added under the panels, and then over them, as it is usual.
void add_both_ways(Journey& crew, EdgeKind kind, End foot, End top, const char* card_step) {
    crew.tap_all({"add edge", "kind " + spoken(kind).english()});
    crew.tap("left end " + spoken(foot).english());
    crew.tap("right end " + spoken(top).english());
    const std::string under(word_of(kind)), over = under + "_channel";
    crew.tap("ask Trim");
    if (crew.screen->has_target("trim " + under)) {
        crew.tap_all({"trim " + under, "ask Trim"});
    }
    crew.tap_all({"trim " + over, "keep edge"});
    const std::string edge = crew.where().edge;
    for (int i = 0; i < 2; ++i) {
        crew.key_in(feet(11));
        crew.tap("keep");
    }
    crew.tap_all({"digit 5", "keep", "leave", "edge " + edge});
    look_at_card(crew, edge, card_step, "strip");
}

}  // namespace

void walk_meets(Journey& crew) {
    crew.tap_all({"demo", "person Apprentice"});
    crew.read_edge("C", feet(15) + inches(8), feet(15) + inches(8), "5");
    crew.reach_step("C", "membrane");
    look_at_card(crew, "C", "strip_cut", "strip");
    crew.tap_all({"leave", "edge H2"});  // its pitch is said with the roof's
    for (int i = 0; i < 2; ++i) {
        crew.key_in(feet(16));
        crew.tap("keep");
    }
    look_at_card(crew, "H2", "cap_cut", "cap");
    crew.tap("leave");
    add_both_ways(crew, EdgeKind::gable, End::eave, End::ridge, "zee_cut");
    crew.tap("leave");
    add_both_ways(crew, EdgeKind::sidewall, End::corner_out, End::wall, "channel_cut");
    crew.tap("leave");
    add_both_ways(crew, EdgeKind::sidewall, End::eave, End::wall, "channel_cut");
}

std::string panels_on(const Journey& crew, std::string_view eave) {
    for (const auto& [item, panels] : crew.state().plan.panels) {
        if (panels.eave == eave) {
            return item;
        }
    }
    FAIL("no panels lie there");
    return "";
}

void walk_panels(Journey& crew) {
    crew.tap_all({"demo", "add edge", "kind panels"});
    for (const char* eave : {"A", "C"}) {
        crew.tap("edge " + panels_on(crew, eave));
        crew.tap("seams");
        if (crew.screen->has_target("take 2")) {
            crew.tap("take 2");
        } else {
            crew.tap("leave");
        }
        for (const LaidPan& pan : panels_at(crew.state())->layout->pans) {
            if (pan.kind == PanKind::cut) {
                crew.tap("pan " + std::to_string(pan.number));
                crew.tap("plane");
                break;
            }
        }
        crew.tap("leave");
    }
    const std::string item = panels_on(crew, "A");
    crew.tap_all({"edge " + item, "pipe"});
    while (crew.where().screen == Screen::gate) {
        crew.pass_gate();
    }
    crew.tap("leave");
    crew.tap_all({"edge " + item, "steps"});
    crew.finish_edge(item);
}

void walk_sticks(Journey& crew) {
    crew.tap("demo");
    for (const char* edge : {"A", "C", "D"}) {
        const Length length = feet(edge[0] - 'A' + 24) + sixteenths(4);
        crew.read_edge(edge, length, length, "5");
        crew.tap("leave");
    }
    crew.tap_all({"sticks", "choices", "done", "choices", "leave", "sticks", "on hand"});
    crew.key_in(feet(7) + inches(6));
    crew.tap_all({"more", "more", "fewer", "keep"});
    const EventId counted = crew.state().events.back().id;
    crew.tap_all({"there " + print_event_id(counted), "fewer", "keep", "supply", "leave"});
    crew.tap_all({"on hand", "supply", "leave", "stock", "stock 12 ft", "stock 8 ft", "done"});
    crew.tap(first_stick(crew));
    crew.key_in(feet(7) + inches(5));
    crew.tap("keep");
    crew.tap(first_stick(crew));
    crew.tap("leave");
    crew.tap(first_stick(crew));
    crew.tap_all({"spoiled whole", "other trim", "other trim", "next", "leave"});
}

}  // namespace hemline
