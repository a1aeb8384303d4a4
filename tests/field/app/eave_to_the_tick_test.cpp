// One eave from an empty start to the foreman's tick, by touches alone, and with a flat battery
// after each of them that counted.
#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "field/screens/page/frame.h"
#include "field/store/job_folder.h"
#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

namespace fs = std::filesystem;

const Length read_first = feet(46) + sixteenths(4);
const Length read_second = feet(46) + sixteenths(3);

template <class Fact>
std::vector<Fact> facts(const std::vector<Event>& events) {
    std::vector<Fact> found;
    for (const Event& event : events) {
        if (const auto* const fact = std::get_if<Fact>(&event.fact)) {
            found.push_back(*fact);
        }
    }
    return found;
}

std::vector<Length> main_cuts(const std::vector<Event>& events) {
    std::vector<Length> cuts;
    for (const PieceCut& cut : facts<PieceCut>(events)) {
        if (cut.role == TrimRole::main) {
            cuts.push_back(cut.cut);
        }
    }
    return cuts;
}

std::string words_of(const Where& where) {
    return std::to_string(static_cast<int>(where.screen)) + " " + where.edge + " " +
           std::to_string(static_cast<int>(where.role)) + " " + std::to_string(where.piece) + " " +
           std::to_string(static_cast<int>(where.reading_of));
}

/// The place, the button and the line of what comes next on the edge.
std::string next_on(const State& state, const std::string& edge) {
    const EdgeWork* const work = edge_of(state, edge);
    REQUIRE(work != nullptr);
    const NextWork next = next_work_on(state, *work);
    return words_of(next.where) + " | " + next.label.english() + " | " + next.what.english();
}

fs::path copy_of(const fs::path& job, const TemporaryFolder& folder, const std::string& name) {
    fs::path copy = folder.path() / name;
    fs::copy(job, copy, fs::copy_options::recursive);
    return copy;
}

/// Bytes that a write did not get to.
void tear_off(const fs::path& job, std::uintmax_t bytes) {
    const std::vector<fs::path> journals = *journals_in(job);
    REQUIRE(journals.size() == 1);
    fs::resize_file(journals.front(), fs::file_size(journals.front()) - bytes);
}

}  // namespace

// By hand, T = 46 ft 0 1/4 in + 1 in: ⌈(553 1/4 − 6)/(120 − 6)⌉ = 5 pieces, three full sticks
// between ends of (552 1/4 − 3 · 114)/2 = 105 1/8 in each; what is left past piece 4's end is then
// 105 1/8 − 6 = 99 1/8 in.
TEST_CASE("An eave goes from nothing to the foreman's tick by touches alone") {
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    CHECK(crew.where().screen == Screen::reading);
    crew.tap("leave");
    crew.read_edge("A", read_first, read_second, "5");
    CHECK(crew.work("A").edge.wrap);
    CHECK(crew.work("A").length(crew.state().job.practice) == read_first);

    crew.remainder_off = -sixteenths(3);  // the wall is not where the plan has it
    crew.finish_edge("A");
    CHECK(crew.where().screen == Screen::roof);

    const auto record = read_job_folder(crew.job());
    REQUIRE(record.ok());
    CHECK(record->set_aside.empty());
    const std::vector<Event>& events = record->events;
    REQUIRE(events.size() == crew.state().events.size());
    for (std::size_t i = 0; i < events.size(); ++i) {
        CHECK(events[i].id == crew.state().events[i].id);
        CHECK(describe(events[i].fact) == describe(crew.state().events[i].fact));
    }

    const Length stick = feet(10);
    CHECK(main_cuts(events) == std::vector<Length>{inches(112) + sixteenths(2), stick, stick, stick,
                                                   inches(104) + sixteenths(15)});
    const auto readings = facts<ReadingTaken>(events);
    REQUIRE(readings.size() == 3);
    CHECK(readings[0].length == read_first);
    CHECK(readings[1].length == read_second);
    CHECK(readings[2].of == ReadingOf::remainder);
    CHECK(readings[2].length == inches(98) + sixteenths(15));
    // The last cut is what is left, its lap, and nothing for an outside corner fitted second.
    CHECK(main_cuts(events).back() == readings[2].length + inches(6));

    const std::vector<Step> steps = steps_on(crew.state(), crew.work("A"));
    std::size_t answers = 0;
    for (const Step& step : steps) {
        CHECK(step.done);
        answers += step.rule->asks == Asks::cut || step.rule->asks == Asks::remainder ||
                           step.rule->asks == Asks::tick
                       ? 0U
                       : 1U;
    }
    CHECK(facts<StepAnswered>(events).size() == answers);
    for (const StepAnswered& answer : facts<StepAnswered>(events)) {
        const Text exception = answer.said().exception;
        CHECK_MESSAGE(exception.empty(), answer.step << ": " << exception);
    }
    std::size_t pieces = 0;
    for (const Run& run : crew.state().plan.runs) {
        pieces += run.edge == "A" ? run.pieces.size() : 0;
    }
    CHECK(facts<PieceCut>(events).size() == pieces);
    CHECK(facts<EdgeFinished>(events).size() == 1);
    const std::size_t walked = facts<BodyWalked>(events).size() + facts<EdgePlaced>(events).size();
    CHECK(events.size() ==
          1 + crew.state().job.edges.size() + walked + 3 + 1 + pieces + answers + 1 + 1);
    MESSAGE("eave A to its tick: " << crew.touches << " touches, " << events.size() << " events");
}

TEST_CASE("A finished eave is found finished by the next start" * doctest::test_suite("large")) {
    Journey crew;
    crew.tap("demo");
    crew.read_edge("A", read_first, read_second, "5");
    crew.finish_edge("A");
    std::vector<std::string> before;
    for (const Event& event : crew.state().events) {
        before.push_back(clock_time(wall_time(event)) + event.by + describe(event.fact).english());
    }
    const Text next_before = next_work(crew.state())->what;

    crew.start_again();
    std::vector<std::string> after;
    for (const Event& event : crew.state().events) {
        after.push_back(clock_time(wall_time(event)) + event.by + describe(event.fact).english());
    }
    CHECK(after == before);
    CHECK(crew.state().notice.empty());
    CHECK(crew.status("A") == EdgeStatus::finished);
    CHECK(crew.work("A").finished_by == "Foreman");
    CHECK(next_work(crew.state())->what == next_before);
    crew.tap("edge A");
    CHECK(crew.where().screen == Screen::steps);
    crew.tap_all({"leave", "next"});
    CHECK(crew.where().edge == "B");
    CHECK(crew.where().screen == Screen::reading);
}

TEST_CASE("After a flat battery the job opens at the very step, whatever the touch before it was" *
          doctest::test_suite("long")) {
    Journey crew;
    TemporaryFolder copies;
    std::string before;  // what came next before the event
    int opened = 0;
    std::size_t events = 0;
    crew.on_event = [&] {
        const std::string now = next_on(crew.state(), "A");
        const std::string name = std::to_string(++opened);

        const auto whole = app_on(copy_of(crew.job(), copies, name), crew.wall_ms);
        CHECK(whole->state().notice.empty());
        CHECK(whole->state().events.size() == crew.state().events.size());
        CHECK(next_on(whole->state(), "A") == now);
        if (crew.state().way == Way::cut) {  // as whoever holds a tablet that was started again
            CHECK(next_work(whole->state())->what == next_work(crew.state())->what);
        }
        // The demo ends on the roof, and so does the tick; what is asked once leads on to the step.
        if (crew.where().screen != Screen::roof && crew.where().screen != Screen::asked_once) {
            CHECK(words_of(crew.where()) ==
                  words_of(next_work_on(crew.state(), crew.work("A")).where));
        }

        if (!before.empty()) {  // it went out in the middle of the write
            const fs::path torn = copy_of(crew.job(), copies, name + " torn");
            tear_off(torn, static_cast<std::uintmax_t>(1 + opened * 7 % 40));
            const auto app = app_on(torn, crew.wall_ms);
            CHECK_FALSE(app->state().notice.empty());
            CHECK(app->state().events.size() + 1 == crew.state().events.size());
            // Of several answers by one touch, those before the last are there.
            CHECK(
                (crew.state().events.size() > events + 1 || next_on(app->state(), "A") == before));
        }
        before = now;
        events = crew.state().events.size();
    };
    crew.tap("demo");
    crew.read_edge("A", read_first, read_second, "5");
    crew.finish_edge("A");
    CHECK(opened >= 30);
}
