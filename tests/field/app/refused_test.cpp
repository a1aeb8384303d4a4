// What was not saved and could not be taken off the disk: it is said, and goes nowhere along.
#include <doctest/doctest.h>

#include <cerrno>
#include <filesystem>

#include <fcntl.h>

#include "engine/words/result.h"
#include "field/store/folders.h"
#include "field/store/job_carrying.h"
#include "field/store/job_folder.h"
#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

namespace fs = std::filesystem;

/// While it is stuck it takes bytes and nothing else: no sync, no cut, no new file.
class StuckDisk : public Disk {
  public:
    bool stuck = false;
    int open(const fs::path& path, int flags) override {
        return stuck && (flags & O_CREAT) != 0 ? fail() : Disk::open(path, flags);
    }
    int sync(int file) override { return stuck ? fail() : Disk::sync(file); }
    int truncate(int file, std::size_t size) override {
        return stuck ? fail() : Disk::truncate(file, size);
    }

  private:
    static int fail() {
        errno = EIO;
        return -1;
    }
};

/// A crew whose reading was kept in vain: its bytes are in the journal all the same.
struct KeptInVain {
    TemporaryFolder home;
    Setting at{"HOME", home.path().string()};
    std::shared_ptr<StuckDisk> disk = std::make_shared<StuckDisk>();
    Journey crew{disk, {}};

    KeptInVain() {
        fs::create_directories(home.path() / "stick");
        crew.tap_all({"demo", "edge A"});
        crew.key_in(feet(24) + inches(3));
        disk->stuck = true;
        crew.tap("keep");
        disk->stuck = false;
        REQUIRE(crew.state().saving == Saving::failed);
        REQUIRE(readings_in(crew.job()) == 1);
    }
    static std::size_t readings_in(const fs::path& job) {
        const Job there = replay(read_job_folder(job)->events);
        const auto& readings = there.find("A")->readings;
        return static_cast<std::size_t>(std::count_if(
            readings.begin(), readings.end(), [](const RecordedReading& r) { return !r.struck; }));
    }
};

}  // namespace

TEST_CASE("A reading that may come back after a restart says so, and is struck by the next save") {
    KeptInVain vain;
    CHECK(vain.crew.state().notice.english().find("It may come back") != std::string::npos);
    vain.crew.tap("keep");
    CHECK(vain.crew.state().saving == Saving::saved);
    CHECK(KeptInVain::readings_in(vain.crew.job()) == 1);
    vain.crew.start_again();
    CHECK(vain.crew.status("A") == EdgeStatus::one_reading);
}

TEST_CASE("A reading kept in vain, and then the tablet is put away, does not count afterwards") {
    KeptInVain vain;
    vain.crew.start_again();
    CHECK(vain.crew.status("A") == EdgeStatus::no_reading);
}

TEST_CASE("What was not saved does not go along into another folder, nor into a job file") {
    KeptInVain vain;
    vain.crew.tap_all({"go on elsewhere", "into stick", "use folder", "keep"});
    CHECK(vain.crew.state().saving == Saving::saved);
    CHECK(vain.crew.status("A") == EdgeStatus::one_reading);
    const auto jobs = *list_jobs(vain.home.path() / "stick");
    REQUIRE(jobs.size() == 1);
    CHECK(KeptInVain::readings_in(jobs[0]) == 1);

    KeptInVain again;
    again.crew.tap_all({"leave", "hand over", "put into file"});
    const auto files = *job_files_in(again.crew.outside.path());
    REQUIRE(files.size() == 1);
    const Result<Journals> journals = read_job_file(files[0]);
    REQUIRE(journals);
    for (const auto& [device, journal] : journals->of_device) {
        for (const Event& event : read_journal(journal).events) {
            CHECK_FALSE(std::holds_alternative<ReadingTaken>(event.fact));
        }
    }
}

TEST_CASE("A job whose journal cannot be synced at opening says so and can go on elsewhere") {
    const TemporaryFolder home;
    fs::create_directories(home.path() / "stick");
    const Setting at("HOME", home.path().string());
    const auto disk = std::make_shared<StuckDisk>();
    Journey crew(disk, {});
    crew.tap_all({"demo", "edge A"});
    crew.key_in(feet(24));
    crew.tap("keep");
    disk->stuck = true;
    crew.start_again();
    disk->stuck = false;
    CHECK(crew.where().screen == Screen::jobs);
    CHECK(crew.state().notice.english().find("may be lost if the power goes") != std::string::npos);
    crew.tap_all({"go on elsewhere", "into stick", "use folder"});
    CHECK(crew.where().screen == Screen::roof);
    CHECK(crew.status("A") == EdgeStatus::one_reading);
}
