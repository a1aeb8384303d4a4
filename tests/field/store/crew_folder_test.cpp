// Tablets that exchange segments through a folder, as a synchronizer would carry it.
#include <doctest/doctest.h>

#include <algorithm>
#include <cerrno>
#include <filesystem>
#include <fstream>

#include <sys/wait.h>
#include <unistd.h>

#include "engine/record/job.h"
#include "engine/record/standing.h"
#include "field/store/crew_folder.h"
#include "field/store/crew_watch.h"
#include "field/store/drafts.h"
#include "field/store/job_merge.h"
#include "field/store/journal_file.h"
#include "field/store/segment_name.h"
#include "field/store/whole_file.h"
#include "field/store/writer.h"
#include "tests/field/store/readings.h"
#include "tests/field/store/temporary_folder.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

/// A tablet with a job, and its way through the crew folder.
struct CrewTablet {
    fs::path job, crew;
    std::uint64_t tablet;

    Carried carry() const {
        const auto journal = *JournalFile::open(job, tablet);
        CrewFolder folder(crew, job, std::make_shared<Disk>());
        Carried carried = folder.carry(journal->record().events, journal->device());
        REQUIRE_MESSAGE(!carried.problem, (carried.problem ? carried.problem->what.english() : ""));
        return carried;
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

struct CrewBench {
    TemporaryFolder home;
    fs::path crew = home.path() / "crew";
    CrewTablet a{home.path() / "a", crew, ada}, b{home.path() / "b", crew, ben};

    CrewBench() {
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

std::map<std::string, FileStamp> segments_in_folder(const fs::path& folder) {
    return *hemline::segments_in(folder);
}

bool same_frames(const std::vector<Event>& x, const std::vector<Event>& y) {
    return std::equal(x.begin(), x.end(), y.begin(), y.end(),
                      [](const Event& a, const Event& b) { return frame_of(a) == frame_of(b); });
}

TEST_CASE("What each tablet wrote arrives at the other, each event once, and then all is quiet") {
    CrewBench bench;
    bench.a.write(ReadingTaken{"A", ReadingOf::edge, inches(101)});
    bench.b.write(ReadingTaken{"A", ReadingOf::edge, inches(102)});
    CHECK(bench.b.carry().given_out == 1);
    const Carried second = bench.a.carry();
    CHECK(second.given_out == 1);
    CHECK(second.taken_in.size() == 1);
    CHECK(bench.b.carry().taken_in.size() == 1);
    CHECK(same_frames(bench.a.events(), bench.b.events()));
    const std::size_t segments = segments_in(bench.crew).size();
    for (const CrewTablet* hand : {&bench.a, &bench.b}) {
        const Carried quiet = hand->carry();
        CHECK(quiet.given_out + quiet.taken_in.size() == 0);
    }
    CHECK(segments_in(bench.crew).size() == segments);
    CHECK(standing_of(bench.a.events()).conflicts.size() == 1);
}

TEST_CASE("A segment is never written again, and each has its writer's name") {
    CrewBench bench;
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
    CrewBench bench;
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

TEST_CASE("A job is not joined before its beginning has arrived: it could never be carried") {
    CrewBench bench;
    const fs::path first = segments_in(bench.crew).at(0);
    bench.b.write(EdgeFinished{"A", ""});
    bench.b.carry();
    const std::string job = jobs_in_crew(bench.crew)->at(0);
    const Journals all = *journals_in_crew(bench.crew, job);
    fs::rename(first, bench.home.path() / "later");
    CHECK_FALSE(journals_in_crew(bench.crew, job));
    fs::rename(bench.home.path() / "later", first);
    CHECK(*journals_in_crew(bench.crew, job) == all);
}

TEST_CASE("Segments that someone deleted are given out again; nothing is lost here") {
    CrewBench bench;
    for (const fs::path& segment : segments_in(bench.crew)) {
        fs::remove(segment);
    }
    CHECK(bench.b.carry().given_out == 2);
    CHECK(bench.a.carry().given_out == 0);
    CHECK(same_frames(bench.a.events(), bench.b.events()));
}

TEST_CASE("A tablet put back from a backup sees its own lost events and takes another number") {
    CrewBench bench;
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

/// A tablet with one reading more than the crew folder holds, restored to how it was before that
/// reading; another reading was taken on it since. `own` is the number it writes under now.
struct PutBack {
    CrewBench bench;
    EventId lost, since;

    PutBack() {
        const fs::path backup = bench.home.path() / "backup";
        fs::copy(bench.a.job, backup, fs::copy_options::recursive);
        lost = bench.a.write(ReadingTaken{"A", ReadingOf::edge, inches(101)});
        bench.a.carry();
        const std::vector<fs::path> journals = *journals_in(backup);
        for (const fs::path& journal : journals) {
            std::ofstream out(bench.a.job / journal.filename(), std::ios::binary | std::ios::trunc);
            const Bytes bytes = *read_file(journal);
            out.write(reinterpret_cast<const char*>(bytes.data()),
                      static_cast<std::streamsize>(bytes.size()));
        }
        since = bench.a.write(ReadingTaken{"A", ReadingOf::edge, inches(102)});
    }
};

TEST_CASE("Two events of one number, from a restored disk image, go out in the same carrying") {
    PutBack put;
    REQUIRE(put.lost == put.since);
    CrewTablet& a = put.bench.a;
    const auto journal = *JournalFile::open(a.job, ada);
    CrewFolder folder(a.crew, a.job, std::make_shared<Disk>());
    const std::vector<Event> events = journal->record().events;
    const Carried first = folder.carry(events, ada);
    CHECK(first.number_used_elsewhere);
    CHECK(first.given_out == 0);
    const Carried second = folder.carry(events, 0x123);  // under a new number
    CHECK(second.taken_in.size() == 1);
    CHECK(second.given_out == 1);
    put.bench.b.carry();
    CHECK(same_frames(a.events(), put.bench.b.events()));
}

/// Two tablets that each began the same roof, and a desk where the two jobs were merged.
struct BegunApart {
    TemporaryFolder home;
    fs::path crew = home.path() / "crew";
    CrewTablet a{home.path() / "a", crew, ada}, b{home.path() / "b", crew, ben},
        desk{home.path() / "desk", crew, 0xde5c};

    BegunApart() {
        fs::create_directories(crew);
        for (const CrewTablet* hand : {&a, &b}) {
            hand->write(JobStarted{"Roof", ""});
            hand->write(ReadingTaken{"A", ReadingOf::edge, inches(100)});
            hand->carry();
        }
        const fs::path jobs[] = {a.job, b.job};
        Disk disk;
        REQUIRE(merge_into(disk, desk.job, *gather_journals(jobs), 0xde5c));
    }
    void carry_twice() const {
        for (int round = 0; round < 2; ++round) {
            for (const CrewTablet* hand : {&desk, &a, &b}) {
                hand->carry();
            }
        }
    }
    [[nodiscard]] bool same_everywhere() const {
        return same_frames(a.events(), b.events()) && same_frames(a.events(), desk.events());
    }
};

TEST_CASE("Jobs begun apart meet through the crew folder once a desk has merged them") {
    BegunApart apart;
    CHECK(apart.desk.carry().given_out == 4);  // to each folder what the other has
    CHECK(apart.a.carry().taken_in.size() == 2);
    CHECK(apart.b.carry().taken_in.size() == 2);
    CHECK(apart.same_everywhere());
    // And so does what each writes from then on, whichever beginning it knew first.
    for (const CrewTablet* hand : {&apart.a, &apart.b, &apart.desk}) {
        hand->write(EdgeFinished{"A", ""});
    }
    apart.carry_twice();
    CHECK(apart.a.events().size() == 7);
    CHECK(apart.same_everywhere());
    for (const CrewTablet* hand : {&apart.a, &apart.b, &apart.desk}) {
        const Carried quiet = hand->carry();
        CHECK(quiet.given_out + quiet.taken_in.size() == 0);
    }
}

TEST_CASE("Who joins a job begun twice has all of it, whichever beginning he took") {
    BegunApart apart;
    apart.desk.carry();
    const std::vector<std::string> jobs = *jobs_in_crew(apart.crew);
    for (const std::string& job : jobs) {
        Disk disk;
        const CrewTablet c{apart.home.path() / ("c" + job), apart.crew, 0xc};
        REQUIRE(merge_into(disk, c.job, *journals_in_crew(apart.crew, job), 0xc));
        c.carry();
        CHECK(same_frames(c.events(), apart.desk.events()));
    }
}

TEST_CASE("A file that tells of a thousand beginnings makes no thousand folders") {
    CrewBench bench;
    Bytes many;
    for (std::uint32_t n = 1; n <= 1000; ++n) {
        const Bytes frame = frame_of({{0xbad, n}, {1, n}, "", {}, JobStarted{"x", ""}});
        many.insert(many.end(), frame.begin(), frame.end());
    }
    const fs::path folder = segments_in(bench.crew).at(0).parent_path();
    Disk disk;
    REQUIRE_FALSE(
        write_whole_file(disk, folder / print_segment_name({0xbad, 1, crc32_of(many)}), many));
    CHECK(bench.b.carry().taken_in.size() == 1000);
    CHECK(jobs_in_crew(bench.crew)->size() <= 32);
}

TEST_CASE(
    "A tablet that goes on notices what is deleted or spoilt in the crew folder, and gives it "
    "again") {
    CrewBench bench;
    const auto journal = *JournalFile::open(bench.a.job, ada);
    CrewFolder folder(bench.crew, bench.a.job, std::make_shared<Disk>());
    const std::vector<Event>& events = journal->record().events;
    CHECK(folder.carry(events, ada).given_out == 0);
    for (const fs::path& segment : segments_in(bench.crew)) {
        fs::remove(segment);
    }
    CHECK(folder.carry(events, ada).given_out == 2);
    for (const fs::path& segment : segments_in(bench.crew)) {
        fs::resize_file(segment, fs::file_size(segment) / 2);
    }
    CHECK(folder.carry(events, ada).given_out == 2);
    CHECK(folder.carry(events, ada).given_out == 0);
    CHECK(bench.b.carry().given_out == 0);
}

/// Fails at the requested sync and truncation.
class FailingSync : public Disk {
  public:
    int syncs_left = -1;
    int sync(int file) override {
        if (syncs_left >= 0 && syncs_left-- == 0) {
            errno = EIO;
            return -1;
        }
        return Disk::sync(file);
    }
};

TEST_CASE("What came in and could not be saved is taken in again the next time, and told then") {
    CrewBench bench;
    bench.a.write(EdgeFinished{"A", ""});
    bench.a.carry();
    const auto journal = *JournalFile::open(bench.b.job, ben);
    const auto disk = std::make_shared<FailingSync>();
    CrewFolder folder(bench.crew, bench.b.job, disk);
    disk->syncs_left = 0;
    const Carried failed = folder.carry(journal->record().events, ben);
    CHECK(failed.problem);
    CHECK(failed.taken_in.empty());
    CHECK(bench.b.events().size() == 2);
    const Carried again = folder.carry(journal->record().events, ben);
    CHECK_FALSE(again.problem);
    CHECK(again.taken_in.size() == 1);
    CHECK(same_frames(bench.a.events(), bench.b.events()));
}

TEST_CASE("Junk under a segment's name is read once, and again only when it was written to") {
    CrewBench bench;
    const fs::path folder = segments_in(bench.crew).at(0).parent_path();
    const fs::path junk = folder / print_segment_name({0xbad, 1, 0x12345678});
    std::ofstream(junk) << "no frame at all";
    std::ofstream(folder / print_segment_name({0xbad, 2, crc32_of(Bytes{'x'})})) << "x";
    CHECK(bench.b.carry().taken_in.empty());
    const auto listed = segments_in_folder(folder);
    CHECK(listed.size() == 3);
    CHECK_FALSE(read_segment(junk, {0xbad, 1, 0x12345678}));
    const FileStamp before = listed.at(junk.filename().string());
    std::ofstream(junk) << "NO frame at all";
    CHECK(segments_in_folder(folder).at(junk.filename().string()) != before);
}

TEST_CASE(
    "A segment larger than any tablet writes is passed over unread, and a link is not followed") {
    CrewBench bench;
    const fs::path folder = segments_in(bench.crew).at(0).parent_path();
    const SegmentName large{0xbad, 1, 0x12345678};
    std::ofstream(folder / print_segment_name(large)) << "";
    fs::resize_file(folder / print_segment_name(large), segment_most + 1);
    CHECK_FALSE(read_segment(folder / print_segment_name(large), large));
    const Bytes bytes{'x'};
    const SegmentName linked{0xbad, 2, crc32_of(bytes)};
    std::ofstream(bench.home.path() / "elsewhere") << "x";
    fs::create_symlink(bench.home.path() / "elsewhere", folder / print_segment_name(linked));
    CHECK_FALSE(read_segment(folder / print_segment_name(linked), linked));
}

TEST_CASE("Drafts that a killed program left are swept up; a synchroniser's and others' stay") {
    CrewBench bench;
    const fs::path folder = segments_in(bench.crew).at(0).parent_path();
    const std::string own = print_segment_name({ada, 7, 1}),
                      other = print_segment_name({ben, 7, 1});
    const fs::path left = folder / (".syncthing." + own + ".4242.tmp");
    const std::vector<fs::path> stay = {
        folder / (".syncthing." + own + ".tmp"), folder / (".syncthing." + other + ".4242.tmp"),
        folder / ".syncthing.notes.2024.tmp", bench.a.job / ".syncthing.notes.2024.tmp",
        bench.a.job / (".syncthing." + print_device(ada) + ".journal.tmp")};
    const std::vector<fs::path> go = {
        left, bench.a.job / (".syncthing." + print_device(ben) + ".journal.4242.tmp"),
        bench.a.job / (".syncthing..device-" + print_device(ada) + ".4242.tmp"),
        bench.a.job / ".syncthing..backup.4242.tmp"};
    for (const auto* some : {&stay, &go}) {
        for (const fs::path& draft : *some) {
            std::ofstream(draft) << "draft";
        }
    }
    bench.a.carry();
    CHECK(std::none_of(go.begin(), go.end(),
                       [](const fs::path& draft) { return fs::exists(draft); }));
    CHECK(std::all_of(stay.begin(), stay.end(),
                      [](const fs::path& draft) { return fs::exists(draft); }));
}

TEST_CASE("Where others may write too, only the drafts of programs that are gone are swept up") {
    const TemporaryFolder folder;
    const pid_t gone = ::fork();
    if (gone == 0) {
        ::_exit(0);
    }
    ::waitpid(gone, nullptr, 0);
    const fs::path left = folder.path() / (".syncthing.a.zip." + std::to_string(gone) + ".tmp");
    const fs::path under_way =
        folder.path() / (".syncthing.a.zip." + std::to_string(::getpid()) + ".tmp");
    std::ofstream(left) << "draft";
    std::ofstream(under_way) << "draft";
    Disk disk;
    sweep_drafts(disk, folder.path(), Sweeping::shared,
                 [](std::string_view name) { return name == "a.zip"; });
    CHECK_FALSE(fs::exists(left));
    CHECK(fs::exists(under_way));
}

TEST_CASE("What a newer program wrote is carried on byte for byte") {
    CrewBench bench;
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
