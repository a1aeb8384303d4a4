// What cannot be listed or looked at is never taken for empty or not there; links are not followed
// where journals lie.
#include <doctest/doctest.h>

#include <cerrno>
#include <fstream>

#include <fcntl.h>
#include <sys/resource.h>
#include <unistd.h>

#include "engine/record/job.h"
#include "engine/words/result.h"
#include "field/store/crew_folder.h"
#include "field/store/folder_view.h"
#include "field/store/folders.h"
#include "field/store/job_carrying.h"
#include "field/store/job_merge.h"
#include "field/store/journal_file.h"
#include "field/store/kept_folders.h"
#include "field/store/listing.h"
#include "field/store/whole_file.h"
#include "tests/field/store/readings.h"
#include "tests/field/store/temporary_folder.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

/// While it lives this process may open no file more: open() fails with EMFILE (POSIX setrlimit).
class NoFileMore {
  public:
    NoFileMore() {
        REQUIRE(getrlimit(RLIMIT_NOFILE, &was_) == 0);
        const int next = ::open("/", O_RDONLY | O_CLOEXEC);
        REQUIRE(next >= 0);
        ::close(next);
        rlimit none = was_;
        none.rlim_cur = static_cast<rlim_t>(next);
        REQUIRE(setrlimit(RLIMIT_NOFILE, &none) == 0);
    }
    NoFileMore(const NoFileMore&) = delete;
    NoFileMore& operator=(const NoFileMore&) = delete;
    ~NoFileMore() { setrlimit(RLIMIT_NOFILE, &was_); }

  private:
    rlimit was_{};
};

fs::path started(const fs::path& job) {
    const auto journal = *JournalFile::open(job, device, Opening::new_job);
    REQUIRE(journal->append(JobStarted{job.filename().string(), ""}, "Ada", {}, 1));
    return job;
}

std::size_t events_in(const fs::path& job) { return read_job_folder(job)->events.size(); }

bool says(const Problem& problem, const std::string& words) {
    return said(problem).english().find(words) != std::string::npos;
}

TEST_CASE("A folder that cannot be listed is a problem in every listing, never an empty folder") {
    const TemporaryFolder home;
    const fs::path job = started(home.path() / "jobs" / "house");
    fs::create_directory(home.path() / "crew");
    const NoFileMore full;
    CHECK_FALSE(names_in(job));
    CHECK_FALSE(journals_in(job));
    CHECK_FALSE(holds_journals(job));
    CHECK_FALSE(job_files(job));
    CHECK_FALSE(read_job_folder(job));
    CHECK_FALSE(list_jobs(home.path() / "jobs"));
    CHECK_FALSE(job_files_in(job));
    CHECK_FALSE(jobs_in_crew(home.path() / "crew"));
    CHECK(look_into(home.path()).problem.has_value());
    CHECK(says(read_job_folder(job).problem(), "too many files are open"));
}

TEST_CASE("A job that cannot be listed stands in the list of jobs, and opening it says why") {
    const TemporaryFolder home;
    started(home.path() / "house");
    // A loop of links: looking at it fails, for every user (ELOOP, POSIX stat).
    fs::create_symlink(home.path() / "loop", home.path() / "loop");
    const auto jobs = list_jobs(home.path());
    REQUIRE(jobs);
    CHECK(*jobs == std::vector<fs::path>{home.path() / "house", home.path() / "loop"});
    CHECK_FALSE(JournalFile::open(home.path() / "loop", device));
}

TEST_CASE("What cannot be looked at is a problem, what is not there is none") {
    const TemporaryFolder home;
    CHECK(*what_is(home.path()) == There::folder);
    CHECK(*what_is(home.path() / "none") == There::nothing);
    fs::create_symlink("loop", home.path() / "loop");
    CHECK_FALSE(what_is(home.path() / "loop"));
    CHECK(*what_is(home.path() / "loop", Links::refused) == There::link);
    CHECK_FALSE(what_is(home.path() / "loop" / "inside"));
    CHECK_FALSE(names_in(home.path() / "none"));
}

TEST_CASE("Settings that cannot be looked at are not taken for none") {
    const TemporaryFolder home;
    const Setting data("XDG_DATA_HOME", home.path().string());
    fs::create_directories(home.path() / "hemline");
    fs::create_symlink("folders", home.path() / "hemline" / "folders");
    CHECK_FALSE(read_kept_folders());
}

TEST_CASE("A journal that is a link is not read, and the job says so") {
    const TemporaryFolder home;
    const fs::path job = started(home.path() / "house"), other = started(home.path() / "other");
    const fs::path link = job / "0000000000000001.journal";
    fs::create_symlink(other / (print_device(device) + ".journal"), link);
    const auto read = read_job_folder(job);
    REQUIRE_FALSE(read);
    CHECK(says(read.problem(), "a link to somewhere else"));
    const fs::path jobs[] = {job};
    CHECK_FALSE(gather_journals(jobs));
}

TEST_CASE("What a tablet writes never lands where a link points") {
    const TemporaryFolder home;
    const fs::path outside = home.path() / "outside", job = home.path() / "house";
    std::ofstream(outside) << "mine";
    fs::create_directory(job);
    fs::create_symlink(outside, job / ".lock");
    CHECK_FALSE(JournalFile::open(job, device, Opening::new_job));
    fs::remove(job / ".lock");
    Disk disk;
    fs::create_symlink(outside, job / "link");
    CHECK(disk.open(job / "link", O_WRONLY) == -1);
    CHECK(errno == ELOOP);
    const std::string draft = draft_name("notes." + std::to_string(::getpid()));
    fs::create_symlink(outside, job / draft);
    CHECK(write_whole_file(disk, job / "notes", Bytes{1}));
    CHECK(fs::file_size(outside) == 4);
}

TEST_CASE("A job's part of the crew folder that is a link is neither read nor written") {
    const TemporaryFolder home;
    const fs::path job = started(home.path() / "house"), crew = home.path() / "crew",
                   outside = home.path() / "outside";
    fs::create_directory(crew);
    fs::create_directory(outside);
    const std::string id = print_event_id({device, 1});
    fs::create_directory_symlink(outside, crew / id);
    CHECK(jobs_in_crew(crew)->empty());
    const auto journal = *JournalFile::open(job, device);
    CrewFolder folder(crew, job, std::make_shared<Disk>());
    CHECK(folder.carry(journal->record().events, device).problem);
    CHECK(fs::is_empty(outside));
}

TEST_CASE("A job named like a journal is begun in a folder of its own and found again") {
    const TemporaryFolder home;
    const fs::path smith = home.path() / "Smith.journal";
    started(smith);
    CHECK(events_in(smith) == 1);
    CHECK(*list_jobs(home.path()) == std::vector<fs::path>{smith});
    REQUIRE((*JournalFile::open(smith, device))->append(EdgeFinished{"A", ""}, "", {}, 2));
    CHECK(events_in(smith / (print_device(device) + ".journal")) == 2);
}

}  // namespace
}  // namespace hemline
