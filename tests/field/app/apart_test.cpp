// The screen for disagreements: two picks that disagree, which of two cuts is fitted, an edge that
// is back, and a notice put away.
#include <doctest/doctest.h>

#include <algorithm>
#include <fstream>

#include "engine/record/event_bytes.h"
#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

namespace fs = std::filesystem;

const MetalTaken uncut_stick{feet(10), {}};

Event event_of(EventId id, const std::string& by, Fact fact, std::vector<EventId> supersedes = {}) {
    const std::int64_t ms =
        1'750'000'000'000 + static_cast<std::int64_t>(id.device) * 1'000 + id.sequence;
    Event event{id, {ms, 0}, by, std::move(supersedes), std::move(fact)};
    event.moment = Moment{{ms}, {}};
    return event;
}

/// A tablet whose list of jobs holds one of these events, open.
struct JobOf {
    Journey hand;

    explicit JobOf(const std::vector<Event>& events) {
        const fs::path folder = hand.folder.path() / "Shed";
        fs::create_directories(folder);
        for (const Event& event : events) {
            const Bytes frame = frame_of(event);
            std::ofstream(folder / (print_device(event.id.device) + ".journal"),
                          std::ios::binary | std::ios::app)
                .write(reinterpret_cast<const char*>(frame.data()),
                       static_cast<std::streamsize>(frame.size()));
        }
        hand.tap_all({"hand over", "leave", "job Shed"});
    }
    [[nodiscard]] bool offers(const std::string& words) const {
        const auto& all = hand.screen->ui().targets();
        return std::any_of(all.begin(), all.end(), [&](const Target& target) {
            return target.label.find(words) != std::string::npos;
        });
    }
    [[nodiscard]] bool shows(const std::string& words) const {
        const auto& all = hand.screen->ui().words();
        return std::any_of(all.begin(), all.end(), [&](const Words& line) {
            return line.words.find(words) != std::string::npos;
        });
    }
};

std::vector<Event> shed() {
    Edge edge;
    edge.id = "A";
    edge.left = edge.right = End::gable;
    edge.pitch = rise_in_12(5);
    return {event_of({1, 1}, "Ada", JobStarted{"Shed", "common practice"}),
            event_of({1, 2}, "Ada", EdgeAdded{edge})};
}

}  // namespace

TEST_CASE("Two readings picked otherwise by two people are both shown, with who picked which") {
    std::vector<Event> events = shed();
    const EventId ada{1, 3}, ben{2, 1};
    const Thing length{Subject::reading, "A", TrimRole::main, 0, "", ""};
    events.push_back(event_of(ada, "Ada", ReadingTaken{"A", ReadingOf::edge, feet(24)}));
    events.push_back(event_of(ben, "Ben", ReadingTaken{"A", ReadingOf::edge, feet(26)}));
    events.push_back(event_of({3, 1}, "Cleo", Picked{ada, length}, {ada, ben}));
    events.push_back(event_of({4, 1}, "Dan", Picked{ben, length}, {ada, ben}));
    JobOf job(events);
    REQUIRE(job.hand.state().job.conflicts.size() == 1);
    CHECK(job.shows("24 ft or 26 ft"));
    job.hand.tap("edge A");
    REQUIRE(job.hand.where().screen == Screen::apart);
    for (const char* words :
         {"Ada", "Ben", "picked by Cleo, on another tablet", "picked by Dan", "measure again"}) {
        CHECK_MESSAGE(job.shows(words), words);
    }
    job.hand.tap("side " + print_event_id({4, 1}));
    CHECK(job.offers("26 ft stands"));
    job.hand.tap("stands");
    CHECK(job.hand.state().job.conflicts.empty());
    CHECK(job.hand.last<Picked>().chosen == ben);
    CHECK(job.hand.work("A").readings.size() == 2);
    CHECK(job.hand.work("A").readings[0].struck);
    // Undo of the pick brings it back.
    job.hand.tap_all({"leave", "history", "undo", "leave"});
    CHECK(job.hand.state().job.conflicts.size() == 1);
}

TEST_CASE("Of a piece cut on two tablets the crew says which is fitted; both are metal used") {
    std::vector<Event> events = shed();
    events.push_back(
        event_of({1, 3}, "Ada", PieceCut{"A", TrimRole::main, 1, feet(9), uncut_stick}));
    events.push_back(
        event_of({2, 1}, "Ben", PieceCut{"A", TrimRole::main, 1, inches(107), uncut_stick}));
    JobOf job(events);
    job.hand.tap("apart");
    CHECK(job.shows("Two tablets cut piece 1 on edge A: pick the one that is fitted."));
    CHECK(job.shows("spare metal"));
    job.hand.tap("side " + print_event_id({2, 1}));
    CHECK(job.offers("8 ft 11 in is fitted"));
    job.hand.tap("stands");
    CHECK(job.hand.state().job.conflicts.empty());
    REQUIRE(job.hand.work("A").cut.size() == 1);
    CHECK(job.hand.work("A").cut[0].id == EventId{2, 1});
    CHECK(job.hand.state().job.sticks_opened == 2);
    CHECK(job.hand.state().events.size() == events.size() + 1);  // a single pick, and no loss
}

TEST_CASE("An edge taken off here and cut for there says so on the roof and is kept by a touch") {
    std::vector<Event> events = shed();
    events.push_back(event_of({1, 3}, "Ada", EdgeTakenOff{"A"}, {{1, 2}}));
    events.push_back(
        event_of({2, 1}, "Ben", PieceCut{"A", TrimRole::main, 1, feet(9), uncut_stick}));
    JobOf job(events);
    CHECK(job.hand.screen->has_target("edge A"));
    CHECK(job.offers("1 where tablets disagree"));
    job.hand.tap("apart");
    CHECK(job.shows("Edge A was taken off the job on one tablet"));
    CHECK(job.shows("taken off the job"));  // Ada's side, and Ben's
    CHECK(job.shows("9 ft"));
    CHECK(job.offers("It stays on the job"));
    job.hand.tap("stands");
    CHECK(job.hand.state().job.conflicts.empty());
    CHECK_FALSE(job.hand.work("A").taken_off);
}

TEST_CASE("The notice of a restored copy names what it is about and is put away by a touch") {
    std::vector<Event> events = shed();
    events.push_back(event_of({1, 3}, "Ada", PitchTaken{"A", rise_in_12(6)}));
    events.push_back(event_of({1, 3}, "Ada", ReadingTaken{"A", ReadingOf::edge, feet(24)}));
    JobOf job(events);
    job.hand.tap("apart");
    CHECK(job.shows("the pitch of edge A"));
    CHECK(job.shows("the length of edge A"));
    CHECK(job.shows("24 ft"));
    CHECK(job.shows("6/12"));
    job.hand.tap("stands");
    CHECK(job.hand.state().job.conflicts.empty());
    CHECK(job.hand.last<CopyNoted>().number == EventId{1, 3});
    CHECK(job.hand.where().screen == Screen::roof);
}

TEST_CASE("An edge changed on its page leaves its pitch and its looks to who says them") {
    Journey crew;
    crew.tap("demo");
    crew.read_edge("A", feet(24), feet(24), "5");
    const EdgeWork before = crew.work("A");
    CHECK(before.edge.pitch == rise_in_12(5));
    crew.tap_all({"leave", "add edge", "change one", "change A"});
    crew.tap_all({"ask Right end", "right end open end", "keep edge"});
    CHECK(crew.last<EdgeAdded>().edge.right == End::open);
    CHECK(crew.last<EdgeAdded>().edge.pitch == before.added.pitch);
    CHECK(crew.work("A").edge.pitch == rise_in_12(5));
}
