// A disk that fills up, fails to sync, writes short or loses power: nothing is called saved that is
// not, and nothing saved is lost.
#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <cerrno>
#include <filesystem>
#include <optional>
#include <set>

#include <fcntl.h>
#include <unistd.h>

#include "engine/record/job.h"
#include "engine/words/result.h"
#include "field/store/job_carrying.h"
#include "field/store/journal_file.h"
#include "tests/field/store/readings.h"
#include "tests/field/store/temporary_folder.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

/// Fails on request: at the n-th call of a kind from now on.
class BrokenDisk : public Disk {
  public:
    /// Of each kind; −1: never fails.
    int writes_left = -1, syncs_left = -1, opens_left = -1, truncates_left = -1;
    int error = EIO;
    std::size_t gets_down = 0;       ///< bytes of the failing write that reach the file
    std::size_t at_once = SIZE_MAX;  ///< the most that a write takes

    int open(const fs::path& path, int flags) override {
        return fails(opens_left) ? -1 : Disk::open(path, flags);
    }
    ssize_t write(int file, const std::uint8_t* bytes, std::size_t size) override {
        if (fails(writes_left)) {
            if (gets_down > 0 && Disk::write(file, bytes, std::min(gets_down, size)) < 0) {
                return -1;
            }
            errno = error;
            return -1;
        }
        return Disk::write(file, bytes, std::min(at_once, size));
    }
    int sync(int file) override { return fails(syncs_left) ? -1 : Disk::sync(file); }
    int truncate(int file, std::size_t size) override {
        return fails(truncates_left) ? -1 : Disk::truncate(file, size);
    }

  private:
    bool fails(int& left) const {
        errno = error;
        return left >= 0 && left-- == 0;
    }
};

struct Bench {
    TemporaryFolder folder;
    std::shared_ptr<BrokenDisk> disk = std::make_shared<BrokenDisk>();
    std::shared_ptr<JournalFile> journal;

    Bench() {
        journal = *JournalFile::open(folder.path(), device, Opening::new_job, disk);
        REQUIRE(journal->append(edge_a(), "", {}, 1));
    }
    [[nodiscard]] fs::path file(const std::string& ending = "") const {
        return folder.path() / (print_device(device) + ending + ".journal");
    }
    /// What the next program finds.
    std::vector<Event> found() {
        journal.reset();
        return (*JournalFile::open(folder.path(), device))->record().events;
    }
};

TEST_CASE("A disk that writes a few bytes at a time saves all of them") {
    Bench bench;
    bench.disk->at_once = 3;
    REQUIRE(bench.journal->append(reading(1), "Ada", {}, 1));
    CHECK(bench.found().size() == 2);
}

TEST_CASE("A full disk says so with the way out, leaves nothing, and the next try begins a file") {
    Bench bench;
    const auto size = fs::file_size(bench.file());
    bench.disk->error = ENOSPC;
    bench.disk->writes_left = 0;
    bench.disk->gets_down = 20;
    const auto refused = bench.journal->append(reading(1), "Ada", {}, 1);
    REQUIRE_FALSE(refused);
    CHECK(refused.problem().what.english().find("Not saved.") == 0);
    CHECK(refused.problem().mend.english().find("Free some room") == 0);
    CHECK(bench.journal->record().events.size() == 1);
    CHECK(fs::file_size(bench.file()) == size);  // the 20 bytes are cut off again
    REQUIRE(bench.journal->append(reading(1), "Ada", {}, 1));
    CHECK(fs::file_size(bench.file()) == size);  // never touched again
    CHECK(fs::exists(bench.file("-2")));
    CHECK(readings_that_count(bench.found()) == 1);
    CHECK(job_files(bench.folder.path())->size() == 2);
}

std::size_t ids_in(const std::vector<Event>& events) {
    std::set<EventId> ids;
    for (const Event& event : events) {
        ids.insert(event.id);
    }
    return ids.size();
}

TEST_CASE("A reading whose sync failed is cut off, and entered again it is there once") {
    Bench bench;
    bench.disk->syncs_left = 0;
    REQUIRE_FALSE(bench.journal->append(reading(1), "Ada", {}, 1));
    CHECK(read_job_folder(bench.folder.path())->events.size() == 1);  // though killed here
    REQUIRE(bench.journal->append(reading(1), "Ada", {}, 1));
    const std::vector<Event> events = bench.found();
    CHECK(events.size() == 2);
    CHECK(readings_that_count(events) == 1);
}

TEST_CASE("A reading that cannot be cut off is struck at once, and entered again it counts once") {
    Bench bench;
    bench.disk->syncs_left = 0;
    bench.disk->truncates_left = 0;
    const auto refused = bench.journal->append(reading(1), "Ada", {}, 1);
    REQUIRE_FALSE(refused);
    CHECK(refused.problem().what.english().find("may come back") == std::string::npos);
    const std::vector<Event> killed_here = read_job_folder(bench.folder.path())->events;
    CHECK(killed_here.size() == 3);  // the edge, the reading and its strike
    CHECK(readings_that_count(killed_here) == 0);
    REQUIRE(bench.journal->append(reading(1), "Ada", {}, 1));
    const std::vector<Event> events = bench.found();
    CHECK(readings_that_count(events) == 1);
    CHECK(ids_in(events) == 4);
}

TEST_CASE("An undo that was not saved and cannot be cut off undoes nothing") {
    Bench bench;
    const auto kept = bench.journal->append(reading(1), "Ada", {}, 1);
    REQUIRE(kept);
    bench.disk->syncs_left = 0;
    bench.disk->truncates_left = 0;
    REQUIRE_FALSE(
        bench.journal->append(StruckFor{kept->id, StrikeReason::undone}, "Ada", {kept->id}, 1));
    CHECK(readings_that_count(bench.found()) == 1);
}

TEST_CASE("Where neither cutting off nor striking works it is said, and struck at closing") {
    Bench bench;
    bench.disk->syncs_left = 0;
    bench.disk->truncates_left = 0;
    bench.disk->opens_left = 0;  // of the file for the strike
    const auto refused = bench.journal->append(reading(1), "Ada", {}, 1);
    REQUIRE_FALSE(refused);
    CHECK(refused.problem().what.english().find("It may come back") != std::string::npos);
    REQUIRE(bench.journal->refused());
    bench.disk->opens_left = -1;
    const std::vector<Event> events = bench.found();
    CHECK(readings_that_count(events) == 0);
    CHECK(ids_in(events) == 3);
}

TEST_CASE("A job that goes on elsewhere, or in a file, leaves behind what was not saved") {
    Bench bench;
    REQUIRE(bench.journal->append(JobStarted{"Roof", ""}, "", {}, 1));
    bench.disk->syncs_left = 0;
    bench.disk->truncates_left = 0;
    bench.disk->opens_left = 0;
    REQUIRE_FALSE(bench.journal->append(reading(1), "Ada", {}, 1));
    REQUIRE(readings_that_count(read_job_folder(bench.folder.path())->events) == 1);
    const TemporaryFolder other;
    Disk whole;
    const auto refused = bench.journal->refused();
    const auto there = go_on_in(whole, bench.folder.path(), other.path(), device, refused);
    REQUIRE(there);
    CHECK(read_job_folder(there->job)->events.size() == 2);
    const auto put =
        put_into_file(whole, bench.folder.path(), other.path(), Practice{}, 1, refused);
    REQUIRE(put);
    CHECK(put->events == 2);
    CHECK(read_journal(read_job_file(put->file)->of_device.at(device)).events.size() == 2);
}

TEST_CASE("A disk that stays broken leaves no pile of files, and saves again once it is mended") {
    Bench bench;
    bench.disk->error = ENOSPC;
    for (int tries = 0; tries < 5; ++tries) {
        bench.disk->writes_left = 0;
        CHECK_FALSE(bench.journal->append(reading(1), "Ada", {}, 1));
        bench.disk->opens_left = 0;
        CHECK_FALSE(bench.journal->append(reading(1), "Ada", {}, 1));
    }
    bench.disk->writes_left = bench.disk->opens_left = -1;
    REQUIRE(bench.journal->append(reading(1), "Ada", {}, 1));
    CHECK(journals_in(bench.folder.path())->size() == 2);
    CHECK(readings_that_count(bench.found()) == 1);
}

TEST_CASE("A torn tail that cannot be kept aside is not cut off") {
    Bench bench;
    bench.journal.reset();
    {
        Disk disk;
        const int file = disk.open(bench.file(), O_WRONLY | O_APPEND);
        const std::uint8_t tail[] = {0xFE, 'H', 'E'};
        REQUIRE(disk.write(file, tail, sizeof tail) == 3);
        ::close(file);
    }
    const auto size = fs::file_size(bench.file());
    bench.disk->error = ENOSPC;
    bench.disk->writes_left = 0;
    CHECK_FALSE(JournalFile::open(bench.folder.path(), device, Opening::existing, bench.disk));
    CHECK(fs::file_size(bench.file()) == size);
    CHECK(read_job_folder(bench.folder.path())->events.size() == 1);  // it can still be looked at
    CHECK(JournalFile::open(bench.folder.path(), device, Opening::existing, bench.disk));
    CHECK(fs::file_size(bench.file()) == size - 3);
}

TEST_CASE(
    "Whatever calls fail, what was called saved is found again and nothing else counts twice") {
    CHECK(rc::check([] {
        Bench bench;
        std::vector<Event> saved = bench.journal->record().events;
        for (std::int64_t number = 1; number <= 12; ++number) {
            const auto soon = [] { return *rc::gen::inRange<int>(-1, 4); };
            bench.disk->writes_left = soon();
            bench.disk->syncs_left = soon();
            bench.disk->opens_left = soon();
            bench.disk->gets_down = *rc::gen::inRange<std::size_t>(0, 90);
            bench.disk->at_once = *rc::gen::element<std::size_t>(7, 30, SIZE_MAX);
            const auto event = bench.journal->append(reading(number), "Ada", {}, number);
            if (event) {
                saved.push_back(*event);
            }
        }
        bench.disk->writes_left = bench.disk->syncs_left = bench.disk->opens_left = -1;
        const auto last = bench.journal->append(reading(99), "Ada", {}, 1);
        RC_ASSERT(last.ok());
        saved.push_back(*last);
        const std::vector<Event> events = bench.found();
        for (const Event& event : saved) {
            RC_ASSERT(std::any_of(events.begin(), events.end(),
                                  [&](const Event& found) { return found.id == event.id; }));
        }
        RC_ASSERT(readings_that_count(events) == saved.size() - 1);
    }));
}

/// Remembers what was synced, and what the file held when the power went before a sync.
class PowerCutDisk : public Disk {
  public:
    std::size_t written = 0, synced = 0;
    bool dies_before_sync = false;
    Bytes left;

    explicit PowerCutDisk(fs::path journal) : journal_(std::move(journal)) {}
    ssize_t write(int file, const std::uint8_t* bytes, std::size_t size) override {
        const ssize_t done = Disk::write(file, bytes, size);
        written += done > 0 ? static_cast<std::size_t>(done) : 0;
        return done;
    }
    int sync(int /*file*/) override {
        if (dies_before_sync) {
            left = left.empty() ? *read_file(journal_) : left;
            errno = EIO;
            return -1;
        }
        synced = written;
        return 0;
    }

  private:
    fs::path journal_;
};

TEST_CASE(
    "After a power cut that drops or garbles what was not synced, all that was saved is there") {
    CHECK(rc::check([](const Bytes& garble) {
        const TemporaryFolder folder;
        const fs::path file = folder.path() / (print_device(device) + ".journal");
        const auto disk = std::make_shared<PowerCutDisk>(file);
        auto journal = *JournalFile::open(folder.path(), device, Opening::new_job, disk);
        const auto saved = *rc::gen::inRange<std::size_t>(1, 6);
        for (std::size_t n = 0; n < saved; ++n) {
            RC_ASSERT(journal->append(reading(1), "Ada", {}, 1).ok());
        }
        disk->dies_before_sync = true;
        RC_ASSERT(!journal->append(reading(2), "Ada", {}, 1).ok());
        journal.reset();

        Bytes bytes = disk->left;
        RC_ASSERT(bytes.size() > disk->synced);
        bytes.resize(*rc::gen::inRange<std::size_t>(disk->synced, bytes.size() + 1));
        for (std::size_t i = disk->synced; i < bytes.size() && i - disk->synced < garble.size();
             ++i) {
            bytes[i] = garble[i - disk->synced];
        }
        const std::vector<fs::path> journals = *journals_in(folder.path());
        for (const fs::path& there : journals) {
            fs::remove(there);
        }
        Disk real;
        const int made = real.open(file, O_WRONLY | O_CREAT);
        RC_ASSERT(real.write(made, bytes.data(), bytes.size()) ==
                  static_cast<ssize_t>(bytes.size()));
        ::close(made);

        const auto again = JournalFile::open(folder.path(), device);
        RC_ASSERT(again.ok());
        const std::vector<Event>& events = (*again)->record().events;
        RC_ASSERT(events.size() == saved || events.size() == saved + 1);
        for (std::size_t n = 0; n < saved; ++n) {
            RC_ASSERT(events[n].id.sequence == n + 1);
        }
        RC_ASSERT((*again)->append(reading(3), "Ada", {}, 1).ok());
    }));
}

}  // namespace
}  // namespace hemline
