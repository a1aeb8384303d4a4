// Opening a job for writing: who may, what is found, and what is set aside.
#include "field/store/journal_file.h"

#include <doctest/doctest.h>

#include <cerrno>
#include <csignal>
#include <fstream>
#include <string>

#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include "engine/record/job.h"
#include "engine/words/result.h"
#include "tests/engine/record/eave_record.h"
#include "tests/engine/record/same_event.h"
#include "tests/field/store/readings.h"
#include "tests/field/store/temporary_folder.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

Bytes read(const fs::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

TEST_CASE("What is appended is in the file when append returns, and is found again") {
    const TemporaryFolder folder;
    const fs::path job = folder.path() / "eave";
    {
        const auto opened = JournalFile::open(job, device, Opening::new_job);
        REQUIRE(opened);
        JournalFile& journal = **opened;
        CHECK(journal.record().events.empty());
        for (std::int64_t n = 1; n <= 3; ++n) {
            const auto event = journal.append(reading(n), "Ada", {}, 1000);
            REQUIRE(event);
            CHECK(event->id == EventId{device, static_cast<std::uint32_t>(n)});
            CHECK(event->by == "Ada");
            CHECK(read_journal(read(job / "00c0ffee00c0ffee.journal")).events.size() ==
                  static_cast<std::size_t>(n));
        }
        CHECK(journal.record().events[0].when < journal.record().events[1].when);
    }
    const auto again = JournalFile::open(job, device);
    REQUIRE(again);
    CHECK((*again)->record().events.size() == 3);
    CHECK((*again)->record().set_aside.empty());
    CHECK((*again)->append(reading(4), "Ada", {}, 1)->id.sequence == 4);
    CHECK(same_events(read_job_folder(job)->events, (*again)->record().events));
}

TEST_CASE("A second copy of the program is kept out until the first has closed the job") {
    const TemporaryFolder folder;
    const fs::path job = folder.path() / "eave";
    {
        const auto first = JournalFile::open(job, device, Opening::new_job);
        REQUIRE(first);
        REQUIRE((*first)->append(reading(1), "", {}, 1));
        const auto second = JournalFile::open(job, device);
        REQUIRE_FALSE(second);
        CHECK(second.problem().what.english().find("is open in another copy") != std::string::npos);
        CHECK(second.problem().mend == "Close it there, then open it here.");
        CHECK(read_job_folder(job)->events.size() == 1);  // looking is always allowed
    }
    CHECK(JournalFile::open(job, device));
}

TEST_CASE("A torn tail is moved into a file of its own, and said; writing goes on after it") {
    const std::vector<Event> events = eave_record();
    const Bytes whole = journal_of(events);
    const std::size_t last = frame_of(events.back()).size();
    for (std::size_t lost = 1; lost < last; ++lost) {
        CAPTURE(lost);
        const TemporaryFolder folder;
        const fs::path file = folder.path() / (print_device(eave_device) + ".journal");
        write(file, {whole.begin(), whole.end() - static_cast<std::ptrdiff_t>(lost)});
        const auto opened = JournalFile::open(file, eave_device);  // named by its journal
        REQUIRE(opened);
        REQUIRE((*opened)->record().events.size() == events.size() - 1);
        REQUIRE((*opened)->record().set_aside.size() == 1);
        const FileSetAside& torn = (*opened)->record().set_aside[0];
        const std::size_t offset = whole.size() - last;
        CHECK(torn.kept_in.filename() ==
              print_device(eave_device) + "-torn-" + std::to_string(offset) + ".bytes");
        CHECK(read(torn.kept_in) == Bytes(whole.begin() + static_cast<std::ptrdiff_t>(offset),
                                          whole.end() - static_cast<std::ptrdiff_t>(lost)));
        CHECK(fs::file_size(file) == offset);
        CHECK(explain(torn).english().find("They are kept in") != std::string::npos);
        REQUIRE((*opened)->append(reading(1), "", {}, 1));
        const JournalRead after = read_journal(read(file));
        CHECK(after.events.size() == events.size());
        CHECK(after.set_aside.empty());
    }
}

TEST_CASE("Two tears at the same byte are both kept") {
    const TemporaryFolder folder;
    const fs::path file = folder.path() / (print_device(device) + ".journal");
    for (const Bytes& tail : {Bytes{1, 2, 3}, Bytes{4, 5}}) {
        write(file, tail);
        REQUIRE(JournalFile::open(folder.path(), device));
    }
    CHECK(read(folder.path() / (print_device(device) + "-torn-0.bytes")) == Bytes{1, 2, 3});
    CHECK(read(folder.path() / (print_device(device) + "-torn-0-2.bytes")) == Bytes{4, 5});
}

/// A disk on which a program is killed before it can cut a torn tail off.
class KilledBeforeTheCut : public Disk {
  public:
    int truncate(int /*file*/, std::size_t /*size*/) override { return -1; }
};

/// A disk with no room for a single byte more.
class NoRoom : public Disk {
  public:
    ssize_t write(int /*file*/, const std::uint8_t* /*bytes*/, std::size_t /*size*/) override {
        errno = ENOSPC;
        return -1;
    }
};

TEST_CASE("A torn tail that cannot be kept leaves no empty files, however often it is tried") {
    const TemporaryFolder folder;
    const fs::path file = folder.path() / (print_device(device) + ".journal");
    write(file, {1, 2, 3});
    for (int tries = 0; tries < 5; ++tries) {
        CHECK_FALSE(JournalFile::open(folder.path(), device, Opening::existing,
                                      std::make_shared<NoRoom>()));
        CHECK(job_files(folder.path())->size() == 1);
    }
    for (int tries = 0; tries < 5; ++tries) {
        CHECK_FALSE(JournalFile::open(folder.path(), device, Opening::existing,
                                      std::make_shared<KilledBeforeTheCut>()));
    }
    REQUIRE(JournalFile::open(folder.path(), device));
    CHECK(job_files(folder.path())->size() == 2);
    CHECK(read(folder.path() / (print_device(device) + "-torn-0.bytes")) == Bytes{1, 2, 3});
}

TEST_CASE("Another device's journal is read and never written, torn or not") {
    const TemporaryFolder folder;
    const Bytes whole = journal_of(eave_record());
    const Bytes torn(whole.begin(), whole.end() - 5);
    const fs::path other = folder.path() / (print_device(eave_device) + ".journal");
    write(other, torn);
    const auto opened = JournalFile::open(folder.path(), device);
    REQUIRE(opened);
    CHECK((*opened)->record().events.size() == eave_record().size() - 1);
    const auto mine = (*opened)->append(reading(1), "", {}, 1);
    REQUIRE(mine);
    CHECK(mine->id == EventId{device, 1});
    CHECK(eave_record()[14].when < mine->when);  // past all it has seen, though the clock says 1
    CHECK(read(other) == torn);
    CHECK(
        explain((*opened)->record().set_aside.at(0)).english().find("They stay where they are.") !=
        std::string::npos);
    CHECK(fs::exists(folder.path() / (print_device(device) + ".journal")));
}

TEST_CASE("What the journal could not give back is refused, and nothing is written") {
    const TemporaryFolder folder;
    const auto opened = JournalFile::open(folder.path(), device, Opening::new_job);
    REQUIRE(opened);
    for (const std::string& by : {std::string(5000, 'x'), std::string("\xFF")}) {
        const auto refused = (*opened)->append(reading(1), by, {}, 1);
        REQUIRE_FALSE(refused);
        CHECK(refused.problem().what.english().find("Not saved.") == 0);
        CHECK(refused.problem().what.english().find("by: ") != std::string::npos);
    }
    CHECK_FALSE((*opened)->append(ReadingTaken{"A", ReadingOf::edge, -inches(1)}, "", {}, 1));
    CHECK_FALSE(fs::exists(folder.path() / (print_device(device) + ".journal")));
    CHECK((*opened)->append(reading(1), "Ada", {}, 1)->id.sequence == 1);
}

TEST_CASE("A job that is not there, or is no job, is a problem that leaves nothing behind") {
    const TemporaryFolder folder;
    const auto missing = JournalFile::open(folder.path() / "none", device);
    REQUIRE_FALSE(missing);
    CHECK(missing.problem().what.english().find("There is no job at") == 0);
    CHECK_FALSE(fs::exists(folder.path() / "none"));
    const auto empty = JournalFile::open(folder.path(), device);
    REQUIRE_FALSE(empty);
    CHECK(empty.problem().what.english().find("it holds no .journal file") != std::string::npos);
    CHECK(fs::is_empty(folder.path()));
    write(folder.path() / "file", {1});
    CHECK_FALSE(JournalFile::open(folder.path() / "file", device));
    CHECK_FALSE(JournalFile::open(folder.path() / "file", device, Opening::either));
    CHECK_FALSE(JournalFile::open(folder.path() / "file" / "job", device, Opening::new_job));
    CHECK_FALSE(read_job_folder(folder.path() / "file"));
    CHECK_FALSE(read_job_folder(folder.path() / "none.journal"));
}

TEST_CASE("A new job is not begun over one that is there") {
    const TemporaryFolder folder;
    write(folder.path() / (print_device(eave_device) + ".journal"), journal_of(eave_record()));
    const auto again = JournalFile::open(folder.path(), device, Opening::new_job);
    REQUIRE_FALSE(again);
    CHECK(again.problem().what.english().find("already") != std::string::npos);
    CHECK(JournalFile::open(folder.path(), device, Opening::either));
}

TEST_CASE("A pipe or a folder with a journal's name does not hang or crash the reading") {
    const TemporaryFolder folder;
    fs::create_directory(folder.path() / "a.journal");
    write(folder.path() / (print_device(eave_device) + ".journal"), journal_of(eave_record()));
    CHECK(read_job_folder(folder.path())->events.size() == eave_record().size());
    REQUIRE(::mkfifo((folder.path() / "b.journal").c_str(), 0600) == 0);
    const auto pipe = read_job_folder(folder.path());
    REQUIRE_FALSE(pipe);
    CHECK(pipe.problem().what.english().find("is not a file") != std::string::npos);
}

/// A child that appends for ever and tells each saved event's number through the pipe.
[[noreturn]] void append_until_killed(const fs::path& job, int told) {
    const auto opened = JournalFile::open(job, device, Opening::either);
    while (opened) {
        const auto event = (*opened)->append(reading(1), "Ada", {}, 1000);
        if (!event || ::write(told, &event->id.sequence, sizeof event->id.sequence) < 0) {
            break;
        }
    }
    ::_exit(1);
}

TEST_CASE("Killed at any moment, a job opens with every event that was called saved") {
    const TemporaryFolder folder;
    const fs::path job = folder.path() / "eave";
    std::uint32_t saved = 0;
    for (int round = 0; round < 12; ++round) {
        int ends[2];
        REQUIRE(::pipe(ends) == 0);
        const pid_t child = ::fork();
        REQUIRE(child >= 0);
        if (child == 0) {
            append_until_killed(job, ends[1]);
        }
        ::close(ends[1]);
        const std::uint32_t until = saved + 1 + static_cast<std::uint32_t>(round * 3);
        std::uint32_t told = 0;
        while (saved < until && ::read(ends[0], &told, sizeof told) == sizeof told) {
            saved = told;
        }
        ::usleep(static_cast<useconds_t>(round * 137));
        ::kill(child, SIGKILL);
        while (::read(ends[0], &told, sizeof told) == sizeof told) {
            saved = told;
        }
        ::close(ends[0]);
        ::waitpid(child, nullptr, 0);
        REQUIRE(saved >= until);

        const auto opened = JournalFile::open(job, device);
        REQUIRE(opened);
        const std::vector<Event>& events = (*opened)->record().events;
        CHECK(events.size() >= saved);
        CHECK(events.size() <= saved + 1);  // one may be complete, not yet reported
        for (std::size_t i = 0; i < events.size(); ++i) {
            CHECK(events[i].id.sequence == i + 1);
        }
        saved = static_cast<std::uint32_t>(events.size());
    }
}

}  // namespace
}  // namespace hemline
