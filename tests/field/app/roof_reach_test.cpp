// Every edge of a roof is reached on its drawing by one gloved finger, which comes down up to 4 mm
// beside where it is aimed; where edges lie too close, through what is offered or by looking
// closer.
#include <doctest/doctest.h>
#include <imgui.h>

#include <algorithm>

#include "engine/handover/sides_file.h"
#include "field/screens/roof/closer_sheet.h"
#include "field/store/new_job.h"
#include "tests/engine/trim/sections.h"
#include "tests/field/app/journey.h"
#include "tests/field/app/layout_walks.h"

using namespace hemline;

namespace {

constexpr int touches_most = 4;  // our choice

/// The pages of 7, 8, 10 and 13 in screens, as in layout_test.
constexpr Size2 pages_mm[] = {{150, 90}, {172, 108}, {215, 135}, {280, 175}};

/// How far outside the box, along one side of the page.
float outside(Box box, ImVec2 at) {
    return std::max(std::max(box.x - at.x, at.x - box.right()),
                    std::max(box.y - at.y, at.y - box.bottom()));
}

/// Upright, the drawing lies at the top of the list.
Box plan_in_view(Journey& crew) {
    const Box page = crew.screen->ui().page();
    const bool in_list = page.h > page.w && !crew.screen->has_target("whole roof");
    const auto top = [&] {
        return crew.screen->has_target("roof plan") ? crew.screen->target("roof plan").bottom() : 0;
    };
    for (float before = -1; in_list && (top() == 0 || top() > before + 1);) {
        before = top();
        crew.screen->drag_from(page.w / 2, page.h * 0.55F, 0, 25);
    }
    return crew.screen->target("roof plan");
}

/// The box that the roof was laid out for, before buttons were cut off below it.
Box laid_out_in(const Journey& crew, Box plan) {
    for (const Target& target : crew.screen->ui().targets()) {
        const bool below = target.name == "whole roof" || target.name == "closer";
        if (below) {
            plan.h = std::max(plan.h, target.box.bottom() - plan.y);
        }
    }
    return plan;
}

/// Where somebody would touch that line: as far from the letters of others as it goes.
std::optional<ImVec2> aim_on(Journey& crew, const std::string& edge) {
    Ui& ui = crew.screen->ui();
    const Box box = plan_in_view(crew);
    const CloserLook look = crew.app->left_off().drafts.roof.closer;
    const Box all = inset(laid_out_in(crew, box), ui.mm(7.5F));
    const RoofSheet whole =
        fitted_sheet(roof_sheet(ui, crew.state(), all), all, inset(box, ui.mm(7.5F)));
    const RoofSheet sheet = look.times > 0 ? closer_sheet(ui, whole, look, box) : whole;
    std::optional<ImVec2> best;
    float most = -1e9F;
    for (const SheetLine& line : sheet.lines) {
        if (line.work == nullptr || line.work->edge.id != edge) {
            continue;
        }
        for (int i = 0; i <= 40; ++i) {
            const float t = static_cast<float>(i) / 40;
            const ImVec2 at{line.from.x + line.along.x * line.length * t,
                            line.from.y + line.along.y * line.length * t};
            float clear = -outside(box, at);
            for (const Target& target : ui.targets()) {
                if (target.name.rfind("roof ", 0) == 0 && target.name != "roof plan") {
                    clear = std::min(clear, outside(target.box, at));
                }
            }
            if (clear > most) {
                most = clear;
                best = at;
            }
        }
    }
    return best;
}

void touch(Journey& crew, ImVec2 at) {
    crew.screen->push({TouchKind::down, 0, at.x, at.y});
    crew.screen->touch({TouchKind::up, 0, at.x, at.y});
    crew.screen->frames(2, 0.25);
}

/// The touches that it took, up to one more than may be, and on what.
struct Reached {
    int touches = 0;
    std::string way;
};
Reached touches_to(Journey& crew, const std::string& edge, ImVec2 beside_mm) {
    const float mm = crew.screen->ui().mm(1);
    Reached reached;
    while (++reached.touches <= touches_most) {
        std::optional<ImVec2> aim;
        for (const std::string& name : {"near " + edge, "roof " + edge}) {
            if (!aim && crew.screen->has_target(name)) {
                const Box box = crew.screen->target(name);
                aim = ImVec2(box.mid_x(), box.mid_y());
                reached.way += name + "; ";
            }
        }
        if (!aim) {
            aim = aim_on(crew, edge);
            reached.way +=
                aim ? "its line at " + std::to_string(aim->x) + " " + std::to_string(aim->y) + "; "
                    : "not in view; ";
        }
        if (!aim) {
            break;
        }
        touch(crew, {aim->x + beside_mm.x * mm, aim->y + beside_mm.y * mm});
        if (crew.where().screen != Screen::roof) {
            reached.way += "opens " + crew.where().edge;
            reached.touches = crew.where().edge == edge ? reached.touches : touches_most + 1;
            return reached;
        }
    }
    reached.touches = touches_most + 1;
    return reached;
}

/// Back to the roof as a whole.
void go_back(Journey& crew) {
    while (crew.where().screen != Screen::roof) {
        crew.tap("leave");
    }
}

int reach_all(Journey& crew, const std::vector<ImVec2>& beside) {
    int most = 0;
    for (const EdgeWork& work : crew.state().job.edges) {
        const std::string edge = work.edge.id;
        for (const ImVec2 off : beside) {
            const Reached reached = touches_to(crew, edge, off);
            CHECK_MESSAGE(reached.touches <= touches_most,
                          edge << " is not reached by a finger " << off.x << ", " << off.y
                               << " mm beside it: " << reached.way);
            most = std::max(most, reached.touches);
            if (crew.screen->has_target("whole roof")) {
                crew.tap("whole roof");
            }
            go_back(crew);
        }
    }
    return most;
}

/// A job with that roof of tests/walks, walked.
std::filesystem::path walked_job(const Journey& crew, const std::string& walk) {
    const auto bytes = read_file(std::filesystem::path(std::getenv("HEMLINE_SOURCE")) /
                                 "tests/walks" / (walk + ".csv"));
    REQUIRE(bytes.ok());
    const auto sides = read_sides(std::string(bytes->begin(), bytes->end()));
    std::vector<Fact> facts = {JobStarted{walk, "common practice"}};
    const WalkedBody body = walk_of("1", std::get<0>(sides).bodies.front());
    const std::vector<Fact> walked = facts_of_walk({}, body, {}, catalogue_of_assets());
    facts.insert(facts.end(), walked.begin(), walked.end());
    const std::filesystem::path folder = crew.folder.path() / walk;
    Disk disk;
    REQUIRE(write_new_job(disk, folder, facts, "Ada", 7, 1'760'000'000'000).ok());
    return folder;
}

const std::vector<ImVec2> straight = {{0, 0}};
const std::vector<ImVec2> gloved = {{4, 0}, {-4, 0}, {0, 4}, {0, -4}};

}  // namespace

TEST_CASE("Every edge of the demo house is reached by a gloved finger on 7 in") {
    Journey crew(885, 531);
    crew.tap("demo");
    MESSAGE("at most " << reach_all(crew, {{4, 0}}) << " touches");
}

TEST_CASE("Every edge of the demo house is reached by touch on 7 and 10 in, both ways up" *
          doctest::test_suite("large")) {
    for (const Size2 size :
         {Size2{885, 531}, Size2{531, 885}, Size2{1280, 800}, Size2{800, 1280}}) {
        const float w = size.w, h = size.h;
        CAPTURE(w);
        Journey crew(w, h);
        crew.tap("demo");
        MESSAGE(w << " x " << h << ": at most " << reach_all(crew, straight) << " touches");
    }
}

TEST_CASE("Every edge is reached by a gloved finger, whatever the size, on the demo and on walks" *
          doctest::test_suite("large")) {
    for (const Size2& page : pages_mm) {
        for (const bool upright : {false, true}) {
            const float w = (upright ? page.h : page.w) * px_per_mm_unknown;
            const float h = (upright ? page.w : page.h) * px_per_mm_unknown;
            for (const std::string walk :
                 {"", "ell", "tee", "tee_as_wide", "u", "zee", "turret", "two_pitches"}) {
                CAPTURE(w);
                CAPTURE(walk);
                if (!walk.empty() && (&page == &pages_mm[1] || &page == &pages_mm[3])) {
                    continue;  // 7 and 10 in are enough for these
                }
                Journey crew(w, h);
                if (walk.empty()) {
                    crew.tap("demo");
                } else {
                    crew.open_job(walked_job(crew, walk));
                    crew.screen->frames(2);
                    go_back(crew);
                }
                reach_all(crew, gloved);
            }
        }
    }
}

TEST_CASE("Looked at closer, a drag moves the drawing, and a touch leads back to the whole roof") {
    Journey crew;
    crew.tap("demo");
    const Box a = crew.screen->target("roof A"), b = crew.screen->target("roof B");
    touch(crew, {b.mid_x(), a.mid_y()});  // the corner of A and B
    REQUIRE(crew.screen->has_target("closer"));
    crew.tap("closer");
    CHECK(crew.screen->has_target("whole roof"));
    CHECK_FALSE(crew.screen->has_target("roof E"));  // far from there
    const Box plan = crew.screen->target("roof plan");
    const float before = crew.app->left_off().drafts.roof.closer.x_mm;
    crew.screen->drag_from(plan.mid_x(), plan.mid_y(), 25, 0);
    CHECK(crew.app->left_off().drafts.roof.closer.x_mm - before ==
          doctest::Approx(25).epsilon(0.3));
    CHECK(crew.screen->has_target("whole roof"));  // no solid: that is for the whole
    crew.tap("whole roof");
    CHECK(crew.screen->has_target("roof E"));
    CHECK_FALSE(crew.screen->has_target("whole roof"));
}
