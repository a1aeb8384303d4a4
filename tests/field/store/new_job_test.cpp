// A new job is there with all it begins with, or it is not there.
#include "field/store/new_job.h"

#include <doctest/doctest.h>

#include "field/store/folders.h"
#include "field/store/job_folder.h"
#include "tests/field/app/journey.h"
#include "tests/field/store/lost_power.h"
#include "tests/field/store/temporary_folder.h"

using namespace hemline;

namespace {

constexpr std::uint64_t boathouse_tablet = 0x5ca1ab1e;

std::vector<Fact> some_facts() {
    std::vector<Fact> facts = {JobStarted{"Heron Lane boathouse", "common practice"}};
    for (const char* id : {"A", "B", "C"}) {
        Edge edge;
        edge.id = id;
        facts.push_back(EdgeAdded{edge});
        facts.push_back(LapChosen{id, inches(6)});
    }
    return facts;
}

}  // namespace

TEST_CASE("A new job holds its facts in order, as its tablet's own, and goes on from there") {
    const TemporaryFolder folder;
    Disk disk;
    const auto job = folder.path() / "jobs" / "boathouse";
    REQUIRE(write_new_job(disk, job, some_facts(), "Ines", boathouse_tablet, 1'000).ok());
    const auto record = read_job_folder(job);
    REQUIRE(record.ok());
    REQUIRE(record->events.size() == some_facts().size());
    for (std::size_t i = 0; i < record->events.size(); ++i) {
        CHECK(record->events[i].fact == some_facts()[i]);
        CHECK(record->events[i].id == EventId{boathouse_tablet, static_cast<std::uint32_t>(i + 1)});
        CHECK(record->events[i].by == "Ines");
    }
    CHECK_FALSE(write_new_job(disk, job, some_facts(), "Ines", boathouse_tablet, 1'000).ok());
}

TEST_CASE("A new job that the disk fails on is there whole or not there, and a retry makes it") {
    std::size_t calls = 1;
    for (std::size_t works = 0; works < calls; ++works) {
        CAPTURE(works);
        const TemporaryFolder folder;
        const auto job = folder.path() / "jobs" / "boathouse";
        RememberingDisk disk(folder.path());
        disk.fails = [&](std::size_t call) { return call >= works; };
        const bool said_written =
            write_new_job(disk, job, some_facts(), "Ines", boathouse_tablet, 1'000).ok();
        calls = disk.made + 1;
        const auto there = read_job_folder(job);
        CHECK(there.ok() >= said_written);
        CHECK((!there || there->events.size() == some_facts().size()));
        disk.fails = {};
        if (!there) {
            CHECK(write_new_job(disk, job, some_facts(), "Ines", boathouse_tablet, 1'000).ok());
            CHECK(read_job_folder(job)->events.size() == some_facts().size());
        }
    }
    CHECK(calls > 5);
}

TEST_CASE("The demo roof that a disk fails on is no job without some of its edges") {
    const auto whole = [] {
        const auto disk = std::make_shared<Disk>();
        Journey crew(disk, [] {});
        crew.tap("demo");
        return crew.state().events.size();
    }();
    for (std::size_t works = 0; works < 40; ++works) {
        CAPTURE(works);
        const auto disk = std::make_shared<RememberingDisk>("/");
        Journey crew(disk, [] {});
        disk->fails = [&, from = disk->made](std::size_t call) { return call >= from + works; };
        crew.tap("demo");
        disk->fails = {};
        const auto jobs = list_jobs(crew.folder.path());
        REQUIRE(jobs.ok());
        for (const auto& job : *jobs) {
            CHECK(read_job_folder(job)->events.size() == whole);
        }
    }
}
