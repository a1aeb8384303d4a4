// Tablets that hand each other segments through one folder, as a synchroniser would carry it.
#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>

#include "engine/record/job.h"
#include "engine/record/standing.h"
#include "field/store/crew_folder.h"
#include "field/store/crew_watch.h"
#include "field/store/job_merge.h"
#include "field/store/journal_file.h"
#include "field/store/segment_name.h"
#include "field/store/writer.h"
#include "tests/field/store/temporary_folder.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

constexpr std::uint64_t ada = 0xada, ben = 0xbe4;

/// A tablet with a job, and its way through the crew folder.
struct Hand {
    fs::path job, crew;
    std::uint64_t tablet;

    Carried carry() const {
        const auto journal = *JournalFile::open(job, tablet);
        CrewFolder folder(crew, job, std::make_shared<Disk>());
        const auto carried = folder.carry(journal->record().events, journal->device());
        REQUIRE_MESSAGE(carried, (carried ? "" : carried.problem().what));
        return *carried;
    }
    EventId write(Fact fact) const {
        return (*JournalFile::open(job, tablet, Opening::either))
            ->append(std::move(fact), "", {}, 1)
            ->id;
    }
    [[nodiscard]] std::vector<Event> events() const { return read_job_folder(job)->events; }
};

std::vector<fs::path> segments_in(const fs::path& crew) {
    std::vector<fs::path> found;
    for (const auto& entry : fs::recursive_directory_iterator(crew)) {
        if (entry.is_regular_file()) {
            found.push_back(entry.path());
        }
    }
    return found;
}

struct Bench {
    TemporaryFolder home;
    fs::path crew = home.path() / "crew";
    Hand a{home.path() / "a", crew, ada}, b{home.path() / "b", crew, ben};

    Bench() {
        fs::create_directories(crew);
        a.write(JobStarted{"Roof", ""});
        a.write(ReadingTaken{"A", ReadingOf::edge, inches(100)});
        CHECK(a.carry().given_out == 2);
        const auto jobs = *jobs_in_crew(crew);
        REQUIRE(jobs.size() == 1);
        Disk disk;
        REQUIRE(merge_into(disk, b.job, *journals_in_crew(crew, jobs[0]), ben));
    }
};

bool same_frames(const std::vector<Event>& x, const std::vector<Event>& y) {
    return std::equal(x.begin(), x.end(), y.begin(), y.end(),
                      [](const Event& a, const Event& b) { return frame_of(a) == frame_of(b); });
}

TEST_CASE("What each tablet wrote arrives at the other, each event once, and then all is quiet") {
    Bench bench;
    bench.a.write(ReadingTaken{"A", ReadingOf::edge, inches(101)});
    bench.b.write(ReadingTaken{"A", ReadingOf::edge, inches(102)});
    CHECK(bench.b.carry().given_out == 1);
    const Carried second = bench.a.carry();
    CHECK(second.given_out == 1);
    CHECK(second.taken_in.size() == 1);
    CHECK(bench.b.carry().taken_in.size() == 1);
    CHECK(same_frames(bench.a.events(), bench.b.events()));
    const std::size_t segments = segments_in(bench.crew).size();
    for (const Hand* hand : {&bench.a, &bench.b}) {
        const Carried quiet = hand->carry();
        CHECK(quiet.given_out + quiet.taken_in.size() == 0);
    }
    CHECK(segments_in(bench.crew).size() == segments);
    CHECK(standing_of(bench.a.events()).conflicts.size() == 1);
}

TEST_CASE("A segment is never written again, and each has its writer's name") {
    Bench bench;
    const fs::path first = segments_in(bench.crew).at(0);
    const Bytes before = *read_file(first);
    bench.a.write(EdgeFinished{"A", ""});
    bench.a.carry();
    CHECK(*read_file(first) == before);
    for (const fs::path& segment : segments_in(bench.crew)) {
        const auto name = parse_segment_name(segment.filename().string());
        REQUIRE(name);
        CHECK(name->crc == crc32_of(*read_file(segment)));
    }
}

TEST_CASE("A segment half arrived waits; a synchroniser's drafts and copies are passed over") {
    Bench bench;
    const auto before = segments_in(bench.crew);
    bench.a.write(EdgeFinished{"A", ""});
    bench.a.carry();
    auto all = segments_in(bench.crew);
    all.erase(std::remove_if(all.begin(), all.end(),
                             [&](const fs::path& segment) {
                                 return std::count(before.begin(), before.end(), segment) > 0;
                             }),
              all.end());
    REQUIRE(all.size() == 1);
    const fs::path segment = all[0];
    const Bytes whole = *read_file(segment);
    fs::resize_file(segment, whole.size() / 2);
    CHECK(bench.b.carry().taken_in.empty());
    std::ofstream(segment, std::ios::binary)
        .write(reinterpret_cast<const char*>(whole.data()),
               static_cast<std::streamsize>(whole.size()));
    fs::copy(segment, segment.parent_path() / "x.sync-conflict-1.hemline");
    std::ofstream(segment.parent_path() / ".syncthing.x.tmp") << "draft";
    std::ofstream(segment.parent_path() / "notes.txt") << "buy screws";
    bench.b.carry();
    CHECK(same_frames(bench.a.events(), bench.b.events()));
}

TEST_CASE("Segments that someone deleted are given out again; nothing is lost here") {
    Bench bench;
    for (const fs::path& segment : segments_in(bench.crew)) {
        fs::remove(segment);
    }
    CHECK(bench.b.carry().given_out == 2);
    CHECK(bench.a.carry().given_out == 0);
    CHECK(same_frames(bench.a.events(), bench.b.events()));
}

TEST_CASE("A tablet put back from a backup sees its own lost events and takes another number") {
    Bench bench;
    const fs::path backup = bench.home.path() / "backup";
    fs::copy(bench.a.job, backup, fs::copy_options::recursive);
    const EventId lost = bench.a.write(EdgeFinished{"A", "written after the backup"});
    bench.a.carry();
    // Put back file by file, so that even the inodes stay.
    const std::vector<fs::path> journals = *journals_in(backup);
    for (const fs::path& journal : journals) {
        std::ofstream out(bench.a.job / journal.filename(), std::ios::binary | std::ios::trunc);
        const Bytes bytes = *read_file(journal);
        out.write(reinterpret_cast<const char*>(bytes.data()),
                  static_cast<std::streamsize>(bytes.size()));
    }
    const Carried carried = bench.a.carry();
    CHECK(carried.number_used_elsewhere);
    CHECK(carried.taken_in.empty());
    Disk disk;
    REQUIRE(new_writer(disk, bench.a.job, ada));
    const Carried again = bench.a.carry();
    CHECK_FALSE(again.number_used_elsewhere);
    REQUIRE(again.taken_in.size() == 1);
    CHECK(again.taken_in[0].id == lost);
    CHECK(bench.a.write(EdgeFinished{"A", ""}).device != ada);
}

TEST_CASE("What a newer program wrote is carried on byte for byte") {
    Bench bench;
    bench.a.write(Unknown{60'000, {1, 2, 3}});
    bench.a.carry();
    bench.b.carry();
    CHECK(same_frames(bench.a.events(), bench.b.events()));
}

TEST_CASE("Names of segments are read back, and nothing else passes for one") {
    const SegmentName name{ben, 12, 0x1a2b3c4d};
    CHECK(print_segment_name(name) == "0000000000000be4-000012-1a2b3c4d.hemline");
    CHECK(parse_segment_name(print_segment_name(name))->number == 12);
    for (const char* other :
         {"", "x", "0000000000000be4-000012-1a2b3c4d.hemlin",
          "0000000000000be4-12-1a2b3c4d.hemline",
          "0000000000000be4-000012-1a2b3c4d.sync-conflict-20260504-101112-ABC.hemline",
          "0000000000000BE4-000012-1a2b3c4d.hemline", "0000000000000be4-0000x2-1a2b3c4d.hemline"}) {
        CHECK_FALSE(parse_segment_name(other));
    }
}

TEST_CASE("A watched folder says once that something came, and is quiet otherwise") {
    const TemporaryFolder folder;
    CrewWatch watch(folder.path());
    CHECK_FALSE(watch.changed());
    std::ofstream(folder.path() / "segment") << "x";
    CHECK(watch.changed());
    CHECK_FALSE(watch.changed());
}

}  // namespace
}  // namespace hemline
