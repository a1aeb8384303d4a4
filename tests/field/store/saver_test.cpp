// Saving apart from the drawing thread: in what order, what is called saved when, and what a
// failure takes with it.
#include "field/store/saver.h"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <atomic>
#include <future>

#include "engine/record/job.h"
#include "field/store/journal_file.h"
#include "tests/field/store/readings.h"
#include "tests/field/store/slow_disk.h"
#include "tests/field/store/temporary_folder.h"

namespace hemline {
namespace {

using std::chrono_literals::operator""ms;

struct SaverBench {
    TemporaryFolder folder;
    std::shared_ptr<SlowDisk> disk = std::make_shared<SlowDisk>();
    std::atomic<int> woken = 0;
    std::shared_ptr<JournalFile> journal = open();

    [[nodiscard]] std::shared_ptr<JournalFile> open() {
        return *JournalFile::open(folder.path(), device, Opening::either, disk,
                                  [this] { ++woken; });
    }
    EventId hand_over(Fact fact) {
        const auto event = journal->hand_over(std::move(fact), "Ada", {}, 1);
        REQUIRE(event);
        return event->id;
    }
    [[nodiscard]] std::vector<Event> on_disk() const {
        return read_job_folder(folder.path())->events;
    }
};

TEST_CASE("Events handed over in rapid succession are saved in that order, and each wakes once") {
    SaverBench bench;
    std::vector<EventId> given = {bench.hand_over(edge_a())};
    for (std::int64_t n = 1; n < 200; ++n) {
        given.push_back(bench.hand_over(reading(n)));
    }
    bench.journal->settle();
    CHECK(bench.woken == 200);
    std::vector<EventId> saved;
    for (const SaveReturned& back : bench.journal->returned()) {
        CHECK_FALSE(back.problem);
        saved.push_back(back.id);
    }
    CHECK(saved == given);
    CHECK(bench.journal->returned().empty());  // reported once
    const auto bytes = read_file(bench.folder.path() / (print_device(device) + ".journal"));
    std::vector<EventId> written;
    for (const Event& event : read_journal(*bytes).events) {
        written.push_back(event.id);
    }
    CHECK(written == given);
}

TEST_CASE("Nothing is called saved before its sync has returned, and nobody waits for it") {
    SaverBench bench;
    bench.disk->hold();
    bench.hand_over(edge_a());  // returns at once, though the disk does not
    bench.hand_over(reading(1));
    bench.disk->await_sync();
    CHECK(bench.journal->returned().empty());
    CHECK(bench.woken == 0);
    CHECK(bench.journal->record().events.size() == 2);  // and yet it can be shown
    bench.disk->let_go();
    bench.journal->settle();
    CHECK(bench.journal->returned().size() == 2);
}

TEST_CASE("What waits behind an event that is not saved is not written, and is not saved either") {
    SaverBench bench;
    bench.hand_over(edge_a());
    bench.journal->settle();
    REQUIRE(bench.journal->returned().size() == 1);
    bench.disk->hold();
    bench.hand_over(reading(1));
    bench.disk->await_sync();
    bench.hand_over(reading(2));
    bench.disk->let_go(1);
    bench.journal->settle();
    bench.hand_over(reading(3));  // before the failure was heard of
    bench.journal->settle();
    const std::vector<SaveReturned> back = bench.journal->returned();
    REQUIRE(back.size() == 3);
    for (const SaveReturned& one : back) {
        REQUIRE(one.problem);
        CHECK(one.problem->what.english().find("Not saved.") == 0);
        CHECK(one.problem->mend.english().find("Copy the job's folder") == 0);
    }
    CHECK(bench.journal->record().events.size() == 1);
    CHECK(bench.on_disk().size() == 1);  // the reading is cut off

    bench.hand_over(reading(4));
    bench.journal->settle();
    const std::vector<SaveReturned> again = bench.journal->returned();
    REQUIRE(again.size() == 1);
    CHECK_FALSE(again[0].problem);
    CHECK(bench.on_disk().size() == 2);
    CHECK(readings_that_count(bench.on_disk()) == 1);
}

TEST_CASE(
    "What may be there all the same is struck before the next is saved, and that is not told") {
    SaverBench bench;
    bench.hand_over(edge_a());
    bench.journal->settle();
    REQUIRE(bench.journal->returned().size() == 1);
    bench.disk->hold();
    const EventId refused = bench.hand_over(reading(1));
    bench.disk->await_sync();
    bench.disk->let_go(3);  // the sync of the frame, of the cut, and of the strike's file
    bench.journal->settle();
    REQUIRE(bench.journal->returned().size() == 1);
    CHECK(bench.journal->refused() == refused);
    const EventId next = bench.hand_over(reading(2));
    bench.journal->settle();
    const std::vector<SaveReturned> back = bench.journal->returned();
    REQUIRE(back.size() == 1);
    CHECK(back[0].id == next);
    CHECK_FALSE(back[0].problem);
    CHECK_FALSE(bench.journal->refused());
    const std::vector<Event>& events = bench.journal->record().events;
    REQUIRE(events.size() == 3);
    CHECK(struck_by(events[1].fact) == refused);
    CHECK(std::is_sorted(events.begin(), events.end(),
                         [](const Event& a, const Event& b) { return a.when < b.when; }));
}

TEST_CASE("Closing waits for what is under way, and the job is locked until then") {
    SaverBench bench;
    bench.disk->hold();
    bench.hand_over(edge_a());
    bench.hand_over(reading(1));
    bench.disk->await_sync();
    std::future<void> closing = std::async(std::launch::async, [&] { bench.journal.reset(); });
    CHECK(closing.wait_for(30ms) == std::future_status::timeout);
    CHECK_FALSE(JournalFile::open(bench.folder.path(), device));
    bench.disk->let_go();
    closing.get();
    CHECK(bench.on_disk().size() == 2);
    CHECK(JournalFile::open(bench.folder.path(), device));
}

TEST_CASE(
    "A folder made for a job of which nothing is saved goes again; one that was there stays") {
    for (const bool was_there : {false, true}) {
        CAPTURE(was_there);
        const TemporaryFolder above;
        const std::filesystem::path job = above.path() / "eave";
        if (was_there) {
            std::filesystem::create_directory(job);
        }
        const auto disk = std::make_shared<SlowDisk>();
        auto journal = *JournalFile::open(job, device, Opening::new_job, disk, [] {});
        disk->let_go(2);
        REQUIRE(journal->hand_over(edge_a(), "Ada", {}, 1));
        journal.reset();
        CHECK(std::filesystem::exists(job) == was_there);
    }
}

TEST_CASE("Whatever syncs fail under way, what came back saved is found and counts once") {
    CHECK(rc::check([] {
        SaverBench bench;
        bench.journal->settle();
        bench.hand_over(edge_a());
        bench.journal->settle();
        RC_ASSERT(!bench.journal->returned().at(0).problem);
        std::vector<EventId> saved;
        const auto hear = [&] {
            for (const SaveReturned& back : bench.journal->returned()) {
                if (!back.problem) {
                    saved.push_back(back.id);
                }
            }
        };
        for (std::int64_t number = 1; number <= 20; ++number) {
            if (*rc::gen::inRange(0, 3) == 0) {
                bench.disk->let_go(*rc::gen::inRange(0, 3));
            }
            bench.hand_over(reading(number));
            if (*rc::gen::inRange(0, 2) == 0) {
                hear();
            }
        }
        bench.journal->settle();
        hear();
        bench.disk->let_go();
        bench.hand_over(reading(99));  // strikes what may be there of the last failure
        bench.journal->settle();
        hear();
        bench.journal.reset();
        const std::vector<Event> found = bench.on_disk();
        for (const EventId id : saved) {
            RC_ASSERT(std::any_of(found.begin(), found.end(),
                                  [&](const Event& event) { return event.id == id; }));
        }
        RC_ASSERT(readings_that_count(found) == saved.size());
    }));
}

}  // namespace
}  // namespace hemline
