// Every edge of the demo house added by touch, one question after the other: the same plan as the
// readings file gives. Then an edge is changed, and an edge taken off.
#include <doctest/doctest.h>

#include <algorithm>
#include <map>

#include "engine/handover/readings_file.h"
#include "engine/plan/make_plan.h"
#include "field/screens/edges/edge_question.h"
#include "field/store/folders.h"
#include "field/store/job_folder.h"
#include "tests/field/app/layout_walks.h"

using namespace hemline;

namespace {

std::vector<EdgeReading> rows_of(const std::string& csv) {
    const auto read = read_readings(csv, assets_read().catalogue);
    const auto* const rows = std::get_if<std::vector<EdgeReading>>(&read);
    REQUIRE(rows != nullptr);
    return *rows;
}

std::string demo_house() {
    const auto bytes = read_file(*assets_folder() / "demo" / "readings.csv");
    REQUIRE(bytes.ok());
    return {bytes->begin(), bytes->end()};
}

/// The job that the file alone makes: each row added, read once more the same, with its pitch.
Job job_of(const std::vector<EdgeReading>& rows) {
    std::vector<Event> events;
    const auto add = [&](Fact fact) {
        const auto number = static_cast<std::uint32_t>(events.size() + 1);
        events.push_back({{1, number}, {number, 0}, "", {}, std::move(fact)});
    };
    for (const EdgeReading& row : rows) {
        add(EdgeAdded{row.edge});
        add(ReadingTaken{row.edge.id, ReadingOf::edge, row.length});
        add(ReadingTaken{row.edge.id, ReadingOf::edge, row.length});
    }
    return replay(events, assets_read().practice);
}

/// Digits and a point.
void key_number(Journey& crew, Angle angle) {
    const std::string degrees = print_degrees(angle);
    for (const char letter : degrees.substr(0, degrees.find("°"))) {
        crew.tap(letter == '.' ? std::string("point") : std::string("digit ") + letter);
    }
}

void key_slope(Journey& crew, Slope pitch) {
    if (pitch.notation == SlopeNotation::degrees) {
        crew.tap("notation degrees");
    }
    key_number(crew, microdegrees(pitch.millionths));
}

/// Changes on the edge's page what is there.
void state(Journey& crew, EdgeField field, const Edge& edge) {
    crew.tap("ask " + name_of(field, edge).english());
    if (field == EdgeField::other_pitch) {
        key_slope(crew, *edge.pitch2);
    } else if (field == EdgeField::name) {
        for (const char letter : edge.id) {
            crew.tap("letter " + std::string(1, letter));
        }
    } else {
        key_number(crew, field == EdgeField::corner_left ? *edge.corner_left : *edge.corner_right);
    }
    crew.tap("keep number");
}

void add_by_hand(Journey& crew, const Edge& edge) {
    if (crew.where().screen == Screen::roof) {
        crew.tap("add edge");
    }
    crew.tap("kind " + spoken(edge.kind).english());
    crew.tap("left end " + spoken(edge.left).english());
    crew.tap("right end " + spoken(edge.right).english());
    if (edge.kind == EdgeKind::transition) {
        key_slope(crew, *edge.pitch2);
        crew.tap("keep number");
    } else if (edge.pitch2) {
        state(crew, EdgeField::other_pitch, edge);
    }
    if (edge.corner_left) {
        state(crew, EdgeField::corner_left, edge);
    }
    if (edge.corner_right) {
        state(crew, EdgeField::corner_right, edge);
    }
    if (edge.first == Side::right) {
        crew.tap_all({"ask Fitted first", "fitted first from the right"});
    }
    if (!edge.trim.empty()) {
        crew.tap_all({"ask Trim", "trim " + edge.trim});
    }
    if (edge.fascia == Fascia::square_cut) {
        crew.tap_all({"ask Fascia", "fascia square-cut"});
    }
    if (edge.seam != Seam::unknown) {
        crew.tap_all({"ask Panels' seam", "seam " + spoken(edge.seam).english()});
    }
    state(crew, EdgeField::name, edge);
    crew.tap("keep edge");
}

void read_by_hand(Journey& crew, const EdgeReading& row) {
    for (int i = 0; i < 2; ++i) {
        crew.key_in(row.length);
        crew.tap("keep");
    }
    if (crew.where().screen == Screen::pitch) {
        key_slope(crew, *row.edge.pitch);
        crew.tap("keep");
    }
    crew.tap("leave");
}

void start_job(Journey& crew) {
    crew.tap_all({"new job", "letter H", "keep name"});
    REQUIRE(crew.where().screen == Screen::add_edge);
}

void check_same_plan(const Plan& found, const Plan& wanted) {
    REQUIRE(found.runs.size() == wanted.runs.size());
    for (std::size_t r = 0; r < wanted.runs.size(); ++r) {
        CAPTURE(wanted.runs[r].edge);
        CHECK(found.runs[r].edge == wanted.runs[r].edge);
        CHECK(found.runs[r].trim == wanted.runs[r].trim);
        const auto same = [](const PlannedPiece& a, const PlannedPiece& b) {
            return a.cut == b.cut && a.covers == b.covers && a.begins == b.begins;
        };
        CHECK(std::equal(found.runs[r].pieces.begin(), found.runs[r].pieces.end(),
                         wanted.runs[r].pieces.begin(), wanted.runs[r].pieces.end(), same));
    }
    CHECK(found.sticks.size() == wanted.sticks.size());
    CHECK(found.problems.size() == wanted.problems.size());
}

void add_and_compare(const std::string& csv, std::size_t edges) {
    const std::vector<EdgeReading> rows = rows_of(csv);
    REQUIRE(rows.size() == edges);
    Journey crew;
    start_job(crew);
    for (const EdgeReading& row : rows) {
        CAPTURE(row.edge.id);
        add_by_hand(crew, row.edge);
        REQUIRE(crew.where().screen == Screen::reading);
        read_by_hand(crew, row);
        CHECK(crew.work(row.edge.id).edge == row.edge);
    }
    MESSAGE(crew.touches << " touches for " << edges << " edges");
    const Assets assets = assets_read();
    check_same_plan(crew.state().plan, make_plan(job_of(rows), assets.catalogue));
}

}  // namespace

TEST_CASE("The demo house of 27 edges, added by hand, has the plan of its readings file" *
          doctest::test_suite("long")) {
    add_and_compare(demo_house(), 27);
}

TEST_CASE("Corners, second pitches, square-cut fascias and sides, by hand and from the file") {
    add_and_compare(
        "edge,kind,trim,length,left,right,pitch,pitch2,corner_left,corner_right,first,fascia,seam\n"
        "A,eave,eave_two_part,31 ft 7 5/8 in,corner_out,corner_in,5/12,7/12,135,225,right,square,\n"
        "B,gable,,11 ft 2 in,eave,ridge,5/12,,,,,square,\n"
        "C,hip,,17 ft 10 1/8 in,eave,ridge,5/12,7/12,135,,,,\n"
        "D,valley,,14 ft 11 7/8 in,eave,ridge,5/12,6/12,225,,,,mechanical\n"
        "E,transition,,16 ft 7 5/8 in,corner_out,hip,18.4deg,30deg,120,,right,,\n"
        "F,headwall,,12 ft 6 3/8 in,wall,corner_in,3.5/12,,,240.5,,,\n"
        "G,sidewall,,6 ft 3 in,eave,corner_out,3.5/12,,,100,,,nail_strip\n"
        "H,high_eave,,16 ft 7 5/8 in,open,corner_out,30deg,,,90,right,square,\n"
        "J,ridge,,21 ft 9 3/4 in,hip,gable,5/12,7/12,,,,,\n",
        9);
}

TEST_CASE("A new gable and sidewall lie over the panels until the other way is chosen") {
    Journey crew;
    start_job(crew);
    crew.tap_all({"kind gable", "left end eave", "right end ridge"});
    const auto shows = [&](const std::string& words) {
        const auto& targets = crew.screen->ui().targets();
        return std::any_of(targets.begin(), targets.end(), [&](const Target& target) {
            return target.label.find(words) != std::string::npos;
        });
    };
    CHECK(shows("Trim: over the panels, on a zee"));
    crew.tap_all({"ask Trim", "trim gable"});
    CHECK(shows("Trim: under the panels"));
    crew.tap_all({"ask Trim", "trim gable_channel", "keep edge", "leave"});
    CHECK(crew.work("A").edge.trim == "gable_channel");
    crew.tap_all({"add edge", "kind sidewall", "left end eave", "right end wall", "ask Trim"});
    CHECK(crew.screen->has_target("trim sidewall"));
    crew.tap_all({"before", "ask Foot", "left end outside corner", "ask Trim"});
    CHECK_FALSE(crew.screen->has_target("trim sidewall"));  // it would end on panels
    crew.tap_all({"trim sidewall_channel", "keep edge"});
    CHECK(crew.state().job.edges.back().edge.trim == "sidewall_channel");
}

TEST_CASE("An edge changed is planned again, and keeps its readings") {
    Journey crew;
    start_job(crew);
    const auto rows = rows_of(
        "edge,kind,trim,length,left,right,pitch\nA,eave,,31 ft 7 5/8 in,gable,gable,5/12\n");
    add_by_hand(crew, rows[0].edge);
    read_by_hand(crew, rows[0]);
    const auto cut_in_all = [&] {
        Length sum;
        for (const PlannedPiece& piece : crew.state().plan.runs.front().pieces) {
            sum += piece.cut;
        }
        return sum;
    };
    const Length before = cut_in_all();
    crew.tap_all({"add edge", "change one", "change A"});
    CHECK_FALSE(crew.screen->has_target("keep edge"));  // nothing is otherwise yet
    crew.tap_all({"ask Right end", "right end open end", "keep edge"});
    CHECK(crew.where().screen == Screen::roof);
    CHECK(crew.work("A").edge.right == End::open);
    CHECK(crew.work("A").readings.size() == 2);
    CHECK(crew.work("A").edge.pitch == rise_in_12(5));
    CHECK(crew.state().notice.english().find("Planned again.") != std::string::npos);
    CHECK(before - cut_in_all() == inches(1));  // an open end has no tab: CONTRACT's allowances
    crew.tap_all({"history", "undo"});
    CHECK(crew.work("A").edge.right == End::gable);
}

TEST_CASE("What the metal was cut for cannot be changed, and the reason names the piece") {
    Journey crew;
    crew.tap("demo");
    crew.read_edge("B", feet(39) + inches(11), feet(39) + inches(11), "5");
    crew.reach_card("B", TrimRole::main, 1);
    crew.tap_all({"cut", "leave", "add edge", "change one", "change B"});
    crew.tap("ask Left end");
    CHECK(crew.screen->has_target("ask Left end"));  // not asked
    const auto& words = crew.screen->ui().words();
    CHECK(std::any_of(words.begin(), words.end(), [](const Words& one) {
        return one.words.find("is cut for it as it is") != std::string::npos;
    }));
    crew.tap_all({"ask Right end", "right end open end", "keep edge"});  // its piece is not cut yet
    CHECK(crew.work("B").edge.right == End::open);
    CHECK(crew.work("B").cut.size() > 0);
    crew.tap_all({"add edge", "change one", "change B", "take off"});
    CHECK(edge_of(crew.state(), "B") != nullptr);
}

TEST_CASE("An edge added by mistake is taken off, and undo puts it back with its readings") {
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    crew.key_in(feet(46));
    crew.tap_all({"keep", "leave", "add edge", "change one", "change A", "take off"});
    CHECK(crew.where().screen == Screen::roof);
    CHECK(edge_of(crew.state(), "A") == nullptr);
    CHECK(crew.state().notice.english().find("Undo puts it back") != std::string::npos);
    crew.tap_all({"history", "undo"});
    CHECK(crew.work("A").readings.size() == 1);
}

TEST_CASE("A penetration is added, flashed step by step, and ticked off") {
    Journey crew;
    start_job(crew);
    crew.tap_all({"kind penetration", "keep edge"});
    crew.pass_gate();
    REQUIRE(crew.where().screen == Screen::steps);
    CHECK_FALSE(crew.screen->has_target("run"));
    crew.finish_edge("A");
    CHECK(crew.status("A") == EdgeStatus::finished);
    CHECK(crew.work("A").finished);
}

TEST_CASE("The side a gable's foot is said to be on is its card's hand") {
    for (const bool right : {false, true}) {
        Journey crew;
        start_job(crew);
        const auto rows = rows_of(
            "edge,kind,trim,length,left,right,pitch\nA,gable,,23 ft 4 in,eave,ridge,5/12\n");
        add_by_hand(crew, rows[0].edge);
        read_by_hand(crew, rows[0]);
        crew.tap("next");
        crew.reach_step("A", "hand");
        crew.tap(right ? "answer right" : "answer left");
        CHECK(crew.work("A").steps.back().step.answer.seen == (right ? "right" : "left"));
        crew.reach_card("A", TrimRole::main, 1);
        const auto card = card_in_hand(crew.state(), crew.where());
        REQUIRE(card.ok());
        CHECK(card->hand == (right ? Side::right : Side::left));
        CHECK((right ? card->right : card->left) == EndWork::eave_return);
    }
}

TEST_CASE("While an edge is asked about, Back has the size and place that it always has") {
    Journey crew;
    crew.tap_all({"demo", "add edge", "kind eave"});
    const Ui& ui = crew.screen->ui();
    constexpr float usual_mm_most = 40;
    for (const Size2 size : {Size2{1280, 800}, Size2{800, 1280}, Size2{885, 531}}) {
        crew.screen->resize(size.w, size.h);
        crew.screen->frames(3);
        const Box roof = crew.screen->target("leave"), back = crew.screen->target("before");
        CHECK(back.w <= ui.mm(usual_mm_most) + 1);
        CHECK(back.h == doctest::Approx(roof.h));
        CHECK(back.x == doctest::Approx(roof.right() + ui.mm(gap_mm)).epsilon(0.01));
    }
}
