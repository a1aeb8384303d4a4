// A reading half keyed outlives the program that it was keyed into, on the day that it was left.
#include "field/app/left_off.h"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

constexpr std::int64_t day_ms = 86'400'000;

/// Half a reading of edge B, and the tablet started again.
struct Left {
    Left() {
        before.tap_all({"demo", "edge B", "digit 3", "digit 9", "field inches", "inches 11"});
        text = print_left_off(before.app->left_off());
        before.screen.reset();
        before.app.reset();
        AppOptions options;
        options.jobs_folder = before.folder.path();
        options.device = 9;
        options.wall_ms = [this] { return before.wall_ms += 1000; };
        options.screen.people = {{"Installer", Way::cut}};
        app = std::make_unique<App>(assets_read(), options);
        screen = std::make_unique<Harness>([this](Ui& ui) { app->draw(ui); });
    }
    void go_back_to(const LeftOff& left) const {
        app->go_back_to(left);
        screen->frames();
    }
    [[nodiscard]] Screen place() const { return app->state().where.screen; }
    Journey before;
    std::string text;
    std::unique_ptr<App> app;
    std::unique_ptr<Harness> screen;
};

}  // namespace

TEST_CASE("The job opens where it was left, with what was half keyed in") {
    const Left left;
    CHECK(left.place() == Screen::jobs);
    left.go_back_to(*left_off_in(left.text));
    CHECK(left.place() == Screen::reading);
    CHECK(left.app->state().where.edge == "B");
    left.screen->tap("keep");
    const Fact& kept = left.app->state().events.back().fact;
    REQUIRE(std::holds_alternative<ReadingTaken>(kept));
    CHECK(std::get<ReadingTaken>(kept).length == feet(39) + inches(11));
}

TEST_CASE("A job left on another day, or one that is gone, is not opened by itself") {
    const Left left;
    LeftOff other = *left_off_in(left.text);
    other.wall_ms -= day_ms;
    left.go_back_to(other);
    CHECK(left.place() == Screen::jobs);
    LeftOff gone = *left_off_in(left.text);
    gone.job = "another";
    left.go_back_to(gone);
    CHECK(left.place() == Screen::jobs);
}

TEST_CASE("An edge that is gone opens the roof") {
    const Left left;
    LeftOff gone = *left_off_in(left.text);
    gone.where.edge = "nowhere";
    left.go_back_to(gone);
    CHECK(left.place() == Screen::roof);
}

TEST_CASE("What was left is read again as it was printed, and other texts are nothing") {
    CHECK(rc::check([] {
        LeftOff left;
        left.job = "A roof 2";
        left.wall_ms = *rc::gen::inRange<std::int64_t>(0, 4'000'000'000'000);
        left.where = {Screen::steps,        "B",
                      TrimRole::wrap,       *rc::gen::inRange(0, 99),
                      ReadingOf::remainder, *rc::gen::inRange(0, 99)};
        left.drafts.step.length.feet = std::to_string(*rc::gen::inRange(0, 999));
        left.drafts.step.length.inches = *rc::gen::inRange(0, 12);
        left.drafts.reading.length.typed = "31-7-5/8";
        const std::optional<LeftOff> back = left_off_in(print_left_off(left));
        RC_ASSERT(back.has_value());
        RC_ASSERT(print_left_off(*back) == print_left_off(left));
    }));
    CHECK(rc::check([](const std::string& text) {
        const std::optional<LeftOff> left = left_off_in(text);
        RC_ASSERT(!left || text.find("format 1") != std::string::npos);
    }));
    for (const char* const text : {"", "format 2\nplace 1\nrole 0\nreading_of 0\nnotation 0\n",
                                   "format 1\nplace 999\nrole 0\nreading_of 0\nnotation 0\n",
                                   "format 1\nplace -1\nrole 0\nreading_of 0\nnotation 0\n"}) {
        CHECK_FALSE(left_off_in(text));
    }
}

TEST_CASE("A bend, a hem, a tilt and a half described edge are kept as they were keyed in") {
    LeftOff left;
    left.job = "A roof";
    Drafts& drafts = left.drafts;
    drafts.section.bend = 2;
    drafts.section.degrees = "13.5";
    drafts.section.hem_kind = Hem::tear_drop;
    drafts.tilt.first = {{1.5, -0.25}, {1.75, 0.5}};
    drafts.edge.edge.id = "C2";
    drafts.edge.edge.kind = EdgeKind::gable;
    drafts.edge.edge.left = End::corner_out;
    drafts.edge.edge.corner_left = Angle::of_microdegrees(91'500'000);
    drafts.edge.asked = EdgeField::right;
    drafts.edge.name.letters = "Dormer";
    drafts.send_back.reason.letters = "bead missing";
    drafts.on_hand.corrects = EventId{7, 12};
    drafts.on_hand.sticks = 4;
    drafts.folded.end = Side::right;
    const std::optional<LeftOff> back = left_off_in(print_left_off(left));
    REQUIRE(back);
    CHECK(back->drafts.section.bend == 2);
    CHECK(back->drafts.section.degrees == "13.5");
    CHECK(back->drafts.section.hem_kind == Hem::tear_drop);
    REQUIRE(back->drafts.tilt.first.size() == 2);
    CHECK(back->drafts.tilt.first[0].gamma == -0.25);
    CHECK(back->drafts.edge.edge == drafts.edge.edge);
    CHECK(back->drafts.edge.asked == EdgeField::right);
    CHECK(back->drafts.edge.name.letters == "Dormer");
    CHECK(back->drafts.send_back.reason.letters == "bead missing");
    CHECK(back->drafts.on_hand.corrects == EventId{7, 12});
    CHECK(back->drafts.on_hand.sticks == 4);
    CHECK(back->drafts.folded.end == Side::right);
}

TEST_CASE("A draft that says what no section or edge has is as if nothing were keyed in") {
    const std::string begin = "format 1\nplace 23\nrole 0\nreading_of 0\n";
    const std::optional<LeftOff> left = left_off_in(
        begin + "section.leg 65\nsection.hem_kind 9\nedge zz\nedge.asked 99\ntilt.first x\n");
    REQUIRE(left);
    CHECK(left->drafts.section.leg == -1);
    CHECK_FALSE(left->drafts.section.hem_kind);
    CHECK(left->drafts.edge.edge == Edge());
    CHECK(left->drafts.tilt.first.empty());
}
