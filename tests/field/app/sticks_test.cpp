// Sticks, corrections and plans to choose from, by touches alone: a touch or two from the roof, and
// the plan follows.
#include <doctest/doctest.h>

#include <algorithm>
#include <atomic>
#include <chrono>

#include "field/app/plan_search.h"
#include "field/state/pool_view.h"
#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

/// A job with eaves between gables, read twice each; the roof is before the crew.
struct Eaves : Journey {
    explicit Eaves(const std::vector<Length>& lengths) {
        tap_all({"new job", "letter A", "keep name"});
        for (const Length length : lengths) {
            tap_all({"kind eave", "left end gable", "right end gable", "keep edge"});
            key_in(length);
            tap("keep");
            key_in(length);
            tap_all({"keep", "digit 5", "keep", "leave", "add edge"});
        }
        tap("leave");
        REQUIRE(where().screen == Screen::roof);
        touches = 0;
    }
    [[nodiscard]] std::int64_t to_open() const { return state().plan.proofs.front().sticks; }
    [[nodiscard]] std::vector<Length> cuts(std::string_view edge) const {
        const Run* const run = find_run(state().plan, edge, TrimRole::main);
        REQUIRE(run != nullptr);
        std::vector<Length> lengths;
        for (const PlannedPiece& piece : run->pieces) {
            lengths.push_back(piece.cut);
        }
        return lengths;
    }
    [[nodiscard]] bool says(std::string_view words) const {
        const auto& said = screen->ui().words();
        return std::any_of(said.begin(), said.end(), [&](const Words& line) {
            return line.words.find(words) != std::string::npos;
        });
    }
    /// Taps the first target whose name begins so.
    void tap_first(std::string_view start) {
        for (const std::string& name : screen->names()) {
            if (name.rfind(start, 0) == 0) {
                tap(name);
                return;
            }
        }
        FAIL("there is none");
    }
};

/// Seventy eaves of 8 to 60 ft.
Job seventy_edges() {
    Job job;
    for (int e = 0; e < 70; ++e) {
        EdgeWork work;
        work.edge.id = "E" + std::to_string(e);
        work.edge.left = work.edge.right = End::gable;
        work.edge.pitch = rise_in_12(5);
        RecordedReading reading;
        reading.length = inches(96) + sixteenths((e * 7919) % 9984);
        work.readings = {reading, reading};
        job.edges.push_back(work);
    }
    return job;
}

}  // namespace

// T 162, r 48 each: balanced from 4 sticks, run out from 3, one lap more from 3. Worked by hand.
TEST_CASE("Three touches from the roof the crew takes the plan of three sticks") {
    Eaves crew({inches(160), inches(160)});
    CHECK(crew.to_open() == 4);
    crew.tap("sticks");
    CHECK(crew.says("4 is the fewest possible for these pieces: proved"));
    CHECK(crew.says("No plan with as few laps"));
    crew.tap("choices");
    REQUIRE(crew.state().choices.size() >= 3);
    REQUIRE(crew.state().choices[1].unbalanced == 2);
    CHECK(crew.says("2 edges run out to one side, no lap more."));
    crew.tap("take 2");
    CHECK(crew.touches == 3);
    CHECK(crew.last<PlanChosen>().sticks == 3);
    CHECK(crew.last<PlanChosen>().unbalanced == 2);
    CHECK(crew.where().screen == Screen::sticks);
    CHECK(crew.to_open() == 3);
    // Proved of these pieces; whether other divisions take fewer was not asked.
    CHECK_FALSE(crew.says("No plan with as few laps"));
    CHECK(crew.says("3 is the fewest possible for these pieces: proved"));
    const auto cuts = crew.cuts("A");
    crew.start_again();
    CHECK(crew.to_open() == 3);
    CHECK(crew.cuts("A") == cuts);
    crew.tap_all({"history", "undo", "leave"});
    CHECK(crew.to_open() == 4);
}

TEST_CASE("A plan that was taken stays while its pieces are cut") {
    Eaves crew({inches(160), inches(160)});
    crew.tap_all({"sticks", "choices", "take 2", "leave"});
    const auto cuts = crew.cuts("A");
    const auto others = crew.cuts("B");
    crew.tap("edge A");
    crew.reach_card("A", TrimRole::main, 1);
    crew.tap("cut");
    CHECK(crew.cuts("A") == cuts);
    CHECK(crew.cuts("B") == others);
    CHECK(crew.to_open() == 2);
    crew.finish_edge("A");
    CHECK(crew.cuts("A") == cuts);
    CHECK(crew.cuts("B") == others);
    CHECK(crew.state().notice.empty());  // nothing but what the crew did
}

TEST_CASE("Offcuts counted are used before new sticks, and a count can be corrected") {
    Eaves crew({inches(160), inches(160)});  // each 87 and 81 in
    crew.tap_all({"sticks", "on hand"});
    CHECK(crew.touches == 2);
    crew.key_in(feet(7) + inches(6));
    crew.tap_all({"more", "keep"});
    CHECK(crew.last<MetalCounted>().count == 2);
    CHECK(crew.last<MetalCounted>().length == inches(90));
    CHECK(crew.to_open() == 2);
    CHECK(crew.state().notice.english().find("Sticks to open: 2, not 4") != std::string::npos);
    const EventId counted = crew.state().events.back().id;
    crew.tap_all({"there " + print_event_id(counted), "fewer", "keep"});
    CHECK(crew.last<MetalCounted>().count == 1);
    CHECK(crew.state().events.back().supersedes == std::vector<EventId>{counted});
    CHECK(crew.to_open() == 3);
    crew.tap("leave");
    CHECK(crew.says("on hand"));
}

TEST_CASE("With only these sticks today the screen says which pieces must wait") {
    Eaves crew({inches(160)});
    crew.tap_all({"sticks", "on hand"});
    crew.key_in(feet(7));
    crew.tap_all({"keep", "supply", "leave"});
    CHECK(crew.last<SupplyChosen>().supply == Supply::on_hand_only);
    CHECK(crew.to_open() == 0);
    CHECK(crew.says("not every piece has one"));
    CHECK(crew.says("A/1"));
    crew.tap_all({"on hand", "supply", "leave"});
    CHECK(crew.last<SupplyChosen>().supply == Supply::as_wanted);
    CHECK(crew.to_open() == 1);
}

TEST_CASE("A stick that is only 9 ft 11 in, and one that is spoiled, are planned around") {
    Eaves crew({inches(116)});  // with its tabs 118 in
    crew.tap("sticks");
    crew.tap_first("stick ");
    CHECK(crew.where().screen == Screen::stick);
    CHECK(crew.touches == 2);
    crew.key_in(feet(9) + inches(11));
    crew.tap("keep");
    CHECK(crew.last<StickMeasured>().length == inches(119));
    CHECK(crew.to_open() == 0);
    CHECK(crew.state().plan.sticks.front().length == inches(119));
    crew.tap_first("stick ");
    crew.tap("spoiled whole");
    CHECK(crew.last<StickSpoiled>().metal.offcut.has_value());
    CHECK(crew.to_open() == 1);
    CHECK(crew.state().notice.english().find("Sticks to open: 1, not 0") != std::string::npos);
}

TEST_CASE("Sticks of 12 ft too are three touches away, and one length always stays") {
    Eaves crew({inches(140)});
    CHECK(crew.to_open() == 2);
    crew.tap_all({"sticks", "stock", "stock 12 ft"});
    CHECK(crew.touches == 3);
    CHECK(crew.state().job.practice.stock == feet(12));
    CHECK(crew.state().job.stock_shorter == std::vector<Length>{feet(10)});
    CHECK(crew.to_open() == 1);
    crew.tap_all({"stock 12 ft", "stock 10 ft"});
    CHECK(crew.state().job.practice.stock == feet(10));
    CHECK(crew.state().job.stock_shorter.empty());
}

TEST_CASE(
    "What an edge must look like is said on its run, and its own style then no longer counts") {
    Eaves crew({inches(160), inches(160)});
    crew.tap("edge A");
    crew.tap("run");
    crew.tap("style full");
    CHECK(crew.cuts("A") == std::vector<Length>{inches(120), inches(48)});
    crew.tap("looks");
    CHECK(crew.work("A").edge.looks == Looks::balanced);
    CHECK_FALSE(crew.work("A").style.has_value());
    CHECK(crew.cuts("A") == std::vector<Length>{inches(87), inches(81)});
    crew.tap("looks");
    CHECK(crew.work("A").edge.looks == Looks::free);
}

TEST_CASE("Plans are looked for beside the hand, and the shell is woken by what is found") {
    const Assets assets = assets_read();
    Eaves crew({inches(160), inches(160)});
    std::atomic<int> woken = 0;
    PlanSearch search([&] { ++woken; });
    search.start(crew.state().job, {}, assets.catalogue);
    search.settle();
    CHECK_FALSE(search.is_under_way());
    CHECK(woken == 1);
    const auto found = search.found();
    REQUIRE(found.has_value());
    CHECK(found->size() >= 3);
    CHECK_FALSE(search.found().has_value());  // reported once
}

TEST_CASE("A search that is cancelled ends at once and tells nothing") {
    const Assets assets = assets_read();
    PlanSearch search([] {});
    search.start(seventy_edges(), {}, assets.catalogue);
    const auto from = std::chrono::steady_clock::now();
    search.cancel();
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - from;
    CHECK(took.count() < 1);
    CHECK_FALSE(search.found().has_value());
    CHECK_FALSE(search.is_under_way());
}
