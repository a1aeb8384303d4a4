// A copied folder or tablet never writes under the number of the original.
#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>

#include "engine/record/job.h"
#include "engine/words/result.h"
#include "field/store/folders.h"
#include "field/store/job_merge.h"
#include "field/store/journal_file.h"
#include "field/store/writer.h"
#include "tests/field/store/temporary_folder.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

constexpr std::uint64_t tablet = 0x00c0ffee00c0ffeeU;

EventId take(const fs::path& job, std::uint64_t device, std::int64_t sixteenth = 1) {
    const auto journal = JournalFile::open(job, device, Opening::either);
    REQUIRE(journal);
    const auto event =
        (*journal)->append(ReadingTaken{"A", ReadingOf::edge, sixteenths(sixteenth)}, "Ada", {}, 1);
    REQUIRE(event);
    return event->id;
}

void copy_folder(const fs::path& from, const fs::path& to) {
    fs::copy(from, to, fs::copy_options::recursive);
}

TEST_CASE("A tablet writes under its own number in its own folder, again and again") {
    const TemporaryFolder home;
    CHECK(take(home.path() / "job", tablet) == EventId{tablet, 1});
    CHECK(take(home.path() / "job", tablet) == EventId{tablet, 2});
    CHECK(writer_in(home.path() / "job", tablet) == tablet);
}

TEST_CASE("A copy of a job's folder is written under a number of its own") {
    const TemporaryFolder home;
    const fs::path job = home.path() / "job", copied = home.path() / "copied";
    take(job, tablet);
    copy_folder(job, copied);
    const EventId there = take(copied, tablet, 5), here = take(job, tablet, 9);
    CHECK(there.device != tablet);
    CHECK(here == EventId{tablet, 2});
    CHECK(take(copied, tablet).device == there.device);  // and stays with it
}

TEST_CASE("Another tablet that gets the folder writes under its own number") {
    const TemporaryFolder home;
    const fs::path job = home.path() / "job", copied = home.path() / "copied";
    take(job, tablet);
    copy_folder(job, copied);
    CHECK(take(copied, 77) == EventId{77, 1});
}

TEST_CASE("A tablet's number is drawn anew when its files were copied or put back") {
    const TemporaryFolder home, other;
    std::uint64_t number = 0;
    {
        const Setting set("XDG_DATA_HOME", home.path().string());
        number = *device_id();
        CHECK(*device_id() == number);
    }
    copy_folder(home.path() / "hemline", other.path() / "hemline");
    const Setting set("XDG_DATA_HOME", other.path().string());
    const std::uint64_t copied = *device_id();
    CHECK(copied != number);
    CHECK(*device_id() == copied);
}

TEST_CASE("Two copies measured apart merge to a conflict and never to one number twice") {
    const TemporaryFolder home;
    const fs::path job = home.path() / "job", copied = home.path() / "copied";
    {
        const auto journal = *JournalFile::open(job, tablet, Opening::new_job);
        Edge edge;
        edge.id = "A";
        REQUIRE(journal->append(EdgeAdded{edge}, "", {}, 1));
    }
    copy_folder(job, copied);
    take(job, tablet, 1);
    take(copied, tablet, 40);
    const fs::path both[] = {job, copied}, turned[] = {copied, job, copied};
    Disk disk;
    REQUIRE(*gather_journals(both) == *gather_journals(turned));
    REQUIRE(merge_into(disk, home.path() / "out", *gather_journals(both), tablet));
    const Result<JobRecord> record = read_job_folder(home.path() / "out");
    REQUIRE(record);
    const Job merged = replay(record->events);
    REQUIRE(merged.conflicts.size() == 1);
    CHECK(merged.conflicts[0].apart == Apart::values);
    // Measured again, having seen both: settled. And the merged folder has a new number.
    const EventId again = take(home.path() / "out", tablet, 1);
    CHECK(again.device != tablet);
    CHECK(replay(read_job_folder(home.path() / "out")->events).conflicts.empty());
    // Merging once more adds nothing and takes nothing away.
    REQUIRE(merge_into(disk, home.path() / "out", *gather_journals(both), tablet));
    CHECK(read_job_folder(home.path() / "out")->events.size() == record->events.size() + 1);
}

TEST_CASE("A merge into a folder that is open elsewhere is refused") {
    const TemporaryFolder home;
    const fs::path job = home.path() / "job";
    const auto open = *JournalFile::open(job, tablet, Opening::new_job);
    REQUIRE(open->append(JobStarted{"Roof", ""}, "", {}, 1));
    const fs::path jobs[] = {job};
    Disk disk;
    const auto refused = merge_into(disk, job, *gather_journals(jobs), tablet);
    REQUIRE_FALSE(refused);
    CHECK(refused.problem().what.english().find("open in another copy") != std::string::npos);
}

TEST_CASE("A merge keeps damage aside and joins a device's second journal to its first") {
    const TemporaryFolder home;
    const fs::path job = home.path() / "job", out = home.path() / "out";
    take(job, tablet);
    fs::copy(job / (print_device(tablet) + ".journal"),
             job / (print_device(tablet) + "-2.journal"));
    std::ofstream(job / (print_device(tablet) + "-2.journal"), std::ios::app) << "torn";
    const fs::path jobs[] = {job};
    Disk disk;
    REQUIRE(merge_into(disk, out, *gather_journals(jobs), tablet));
    CHECK(journals_in(out)->size() == 1);
    CHECK(read_job_folder(out)->set_aside.empty());
    CHECK((*gather_journals(std::span(&out, 1))).damage == std::set<Bytes>{{'t', 'o', 'r', 'n'}});
    // In place, the second journal is gone and nothing of it lost.
    REQUIRE(merge_into(disk, job, *gather_journals(jobs), tablet));
    CHECK(journals_in(job)->size() == 1);
    CHECK(*gather_journals(std::span(&out, 1)) == *gather_journals(jobs));
}

}  // namespace
}  // namespace hemline
