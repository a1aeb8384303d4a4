// Jobs put together, stopped at any call of the disk by an error or by a kill: nothing is lost, the
// place where a new job is to be holds all of it or nothing, and the same again makes it whole.
#include <doctest/doctest.h>

#include <cerrno>
#include <fstream>
#include <functional>
#include <random>
#include <unordered_map>

#include <sys/wait.h>
#include <unistd.h>

#include "engine/handover/job_file.h"
#include "engine/record/job.h"
#include "engine/words/result.h"
#include "field/store/drafts.h"
#include "field/store/folder_draft.h"
#include "field/store/folders.h"
#include "field/store/job_carrying.h"
#include "field/store/job_merge.h"
#include "field/store/journal_file.h"
#include "field/store/listing.h"
#include "field/store/whole_file.h"
#include "tests/field/store/lost_power.h"
#include "tests/field/store/readings.h"
#include "tests/field/store/temporary_folder.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

constexpr std::uint64_t desk_tablet = 0x7ab1e7U;

/// Stops at a given call: with an error, or by ending the program.
class StoppingDisk : public Disk {
  public:
    enum class How { no_room, killed };
    StoppingDisk(How how, int calls) : how_(how), left_(calls) {}
    [[nodiscard]] bool was_stopped() const { return left_ < 0; }

    int open(const fs::path& path, int flags) override {
        return stops() ? -1 : Disk::open(path, flags);
    }
    ssize_t write(int file, const std::uint8_t* bytes, std::size_t size) override {
        return stops() ? -1 : Disk::write(file, bytes, size);
    }
    int sync(int file) override { return stops() ? -1 : Disk::sync(file); }
    int truncate(int file, std::size_t size) override {
        return stops() ? -1 : Disk::truncate(file, size);
    }
    int rename(const fs::path& from, const fs::path& to) override {
        return stops() ? -1 : Disk::rename(from, to);
    }
    int remove(const fs::path& file) override { return stops() ? -1 : Disk::remove(file); }

  private:
    bool stops() {
        if (left_-- != 0) {
            return false;
        }
        if (how_ == How::killed) {
            ::_exit(9);
        }
        errno = ENOSPC;
        return true;
    }
    How how_;
    int left_;
};

/// A journal of `events` events; the first begins a job.
void write_job(const fs::path& job, std::uint64_t device, std::int64_t events) {
    const auto journal = *JournalFile::open(job, device, Opening::either);
    for (std::int64_t n = 0; n < events; ++n) {
        const Fact fact = n == 0 ? Fact(JobStarted{"House", ""})
                                 : Fact(ReadingTaken{"A", ReadingOf::edge, sixteenths(n)});
        REQUIRE(journal->append(fact, "", {}, n));
    }
}

Journals journals_of(const fs::path& job) {
    const fs::path jobs[] = {job};
    return *gather_journals(jobs);
}

/// Two jobs to put together; house has a second journal of its device and a stretch of damage.
struct Desk {
    TemporaryFolder home;
    fs::path house = home.path() / "jobs" / "House", stick = home.path() / "stick" / "House";

    Desk() {
        write_job(house, ada, 7);
        write_job(stick, ben, 4);
        const fs::path journal = house / (print_device(ada) + ".journal");
        fs::copy(journal, house / (print_device(ada) + "-2.journal"));
        std::ofstream(journal, std::ios::app) << "scratched";
    }
    [[nodiscard]] Journals both() const {
        const fs::path jobs[] = {house, stick};
        return *gather_journals(jobs);
    }
};

using Attempt = std::function<std::optional<Problem>(Disk&, const Desk&)>;
using Check = std::function<void(const Desk&, bool whole)>;

/// Stops the attempt at every call in turn, looks whether nothing is lost, and does it again.
void stop_everywhere(const Attempt& attempt, const Check& check) {
    int calls = 0;
    for (const auto how : {StoppingDisk::How::no_room, StoppingDisk::How::killed}) {
        for (int call = 0;; ++call) {
            const Desk desk;
            StoppingDisk disk(how, call);
            bool stopped = false;
            if (how == StoppingDisk::How::killed) {
                const pid_t child = ::fork();
                if (child == 0) {
                    ::_exit(attempt(disk, desk) ? 1 : 0);
                }
                int status = 0;
                REQUIRE(::waitpid(child, &status, 0) == child);
                stopped = WIFEXITED(status) && WEXITSTATUS(status) == 9;
                REQUIRE((stopped || status == 0));
            } else {
                const auto problem = attempt(disk, desk);
                stopped = disk.was_stopped();
                REQUIRE(problem.has_value() == stopped);
            }
            CAPTURE(call);
            check(desk, !stopped);
            if (!stopped) {
                break;
            }
            ++calls;
            Disk sound;
            REQUIRE_FALSE(attempt(sound, desk));
            check(desk, true);
        }
    }
    CHECK(calls > 10);
}

std::vector<std::string> drafts_in(const fs::path& folder) {
    std::vector<std::string> found;
    for (const auto& entry : fs::recursive_directory_iterator(folder)) {
        const std::string name = entry.path().filename().string();
        if (is_draft(name) || is_folder_draft(name)) {
            found.push_back(entry.path().filename().string());
        }
    }
    return found;
}

template <class T>
std::optional<Problem> problem_of(const Result<T>& result) {
    return result ? std::nullopt : std::optional<Problem>(result.problem());
}

TEST_CASE("A merge into a fuller job that is stopped at any call loses no event and no damage") {
    stop_everywhere(
        [](Disk& disk, const Desk& desk) {
            return problem_of(merge_into(disk, desk.house, journals_of(desk.stick), desk_tablet));
        },
        [](const Desk& desk, bool whole) {
            const Journals house = journals_of(desk.house);
            CHECK(read_journal(house.of_device.at(ada)).events.size() == 7);
            CHECK(house.damage.count(Bytes{'s', 'c', 'r', 'a', 't', 'c', 'h', 'e', 'd'}) == 1);
            CHECK(journals_of(desk.stick).of_device.size() == 1);
            if (whole) {
                CHECK(house == desk.both());
                CHECK(journals_in(desk.house)->size() == 2);
                CHECK(drafts_in(desk.home.path()).empty());
            }
        });
}

TEST_CASE("A merge into a new job that is stopped at any call is whole or not there") {
    stop_everywhere(
        [](Disk& disk, const Desk& desk) {
            return problem_of(merge_into(disk, desk.home.path() / "out", desk.both(), desk_tablet));
        },
        [](const Desk& desk, bool whole) {
            const fs::path out = desk.home.path() / "out";
            if (whole || fs::exists(out)) {
                CHECK(journals_of(out) == desk.both());
            }
            if (whole) {
                CHECK(drafts_in(desk.home.path()).empty());
            }
        });
}

TEST_CASE("A job file taken in that is stopped at any call makes one whole job or none") {
    stop_everywhere(
        [](Disk& disk, const Desk& desk) {
            const fs::path jobs = desk.home.path() / "jobs";
            return problem_of(take_in_journals(disk, journals_of(desk.stick), *list_jobs(jobs),
                                               jobs, desk_tablet));
        },
        [](const Desk& desk, bool whole) {
            const auto jobs = *list_jobs(desk.home.path() / "jobs");
            CHECK((jobs.size() == 1 || jobs.size() == 2));
            CHECK(read_job_folder(desk.house)->events.size() == 7);
            for (const fs::path& job : jobs) {
                CHECK((job == desk.house || journals_of(job) == journals_of(desk.stick)));
            }
            if (whole) {
                CHECK(jobs.size() == 2);
                CHECK(drafts_in(desk.home.path()).empty());
            }
        });
}

TEST_CASE(
    "Going on in another folder that is stopped at any call copies all of the job or nothing") {
    stop_everywhere(
        [](Disk& disk, const Desk& desk) {
            const fs::path stick = desk.home.path() / "other stick";
            fs::create_directories(stick);
            const auto there = *list_jobs(stick);  // it may have gone on before it was killed
            return there.empty() ? problem_of(go_on_in(disk, desk.house, stick, desk_tablet))
                                 : std::nullopt;
        },
        [](const Desk& desk, bool whole) {
            const auto jobs = *list_jobs(desk.home.path() / "other stick");
            CHECK(jobs.size() <= 1);
            for (const fs::path& job : jobs) {
                CHECK(journals_of(job) == journals_of(desk.house));
            }
            if (whole) {
                CHECK(jobs.size() == 1);
                CHECK(drafts_in(desk.home.path()).empty());
            }
        });
}

/// What a power cut before any call of the deed leaves is laid out in `after`, and looked at.
void cut_everywhere(const std::function<bool(Disk&, const fs::path& root)>& deed,
                    const std::function<void(const fs::path& root)>& check) {
    const Desk desk;
    const fs::path root = desk.home.path();
    Image image;
    for (const auto& entry : fs::recursive_directory_iterator(root)) {
        if (entry.is_regular_file()) {
            image[entry.path().lexically_relative(root).string()] = *read_file(entry.path());
        }
    }
    RememberingDisk disk(root);
    REQUIRE(deed(disk, root));
    const TemporaryFolder after;
    std::mt19937 random(20'260'504);
    PowerCut power(image);
    for (std::size_t call = 0; call <= disk.calls.size(); ++call) {
        for (int again = 0; again < 8; ++again) {
            const Cut cuts[] = {Cut::dropped, Cut::torn, Cut::reordered};
            lay_out(power.image(cuts[again % 3], random), after.path() / "disk");
            CAPTURE(call);
            check(after.path() / "disk");
        }
        if (call < disk.calls.size()) {
            power.done(disk.calls[call]);
        }
    }
    CHECK(disk.calls.size() > 10);
}

TEST_CASE("A power cut before any call of a merge into a fuller job loses no event and no damage") {
    cut_everywhere(
        [](Disk& disk, const fs::path& root) {
            const auto stick = journals_of(root / "stick" / "House");
            return merge_into(disk, root / "jobs" / "House", stick, desk_tablet).ok();
        },
        [](const fs::path& root) {
            const Journals house = journals_of(root / "jobs" / "House");
            CHECK(read_journal(house.of_device.at(ada)).events.size() == 7);
            CHECK(house.damage.count(Bytes{'s', 'c', 'r', 'a', 't', 'c', 'h', 'e', 'd'}) == 1);
            const fs::path jobs[] = {root / "jobs" / "House", root / "stick" / "House"};
            const Journals both = *gather_journals(jobs);
            Disk sound;
            REQUIRE(merge_into(sound, jobs[0], journals_of(jobs[1]), desk_tablet));
            CHECK(journals_of(jobs[0]) == both);
        });
}

TEST_CASE("A power cut before any call of a merge into a new job leaves all of it or nothing") {
    cut_everywhere(
        [](Disk& disk, const fs::path& root) {
            const fs::path jobs[] = {root / "jobs" / "House", root / "stick" / "House"};
            return merge_into(disk, root / "out", *gather_journals(jobs), desk_tablet).ok();
        },
        [](const fs::path& root) {
            const fs::path jobs[] = {root / "jobs" / "House", root / "stick" / "House"};
            const Journals both = *gather_journals(jobs);
            const fs::path out = root / "out";
            CHECK((!fs::exists(out) || journals_of(out) == both));
            Disk sound;
            REQUIRE(merge_into(sound, out, both, desk_tablet));
            CHECK(journals_of(out) == both);
        });
}

TEST_CASE("Frames that lie in another device's journal are in one file or the other all the time") {
    // Put there by hand: each journal under the other's name.
    stop_everywhere(
        [](Disk& disk, const Desk& desk) {
            const auto name = [](std::uint64_t device) {
                return print_device(device) + ".journal";
            };
            if (!fs::exists(desk.house / name(ben))) {
                fs::copy(desk.stick / name(ben), desk.house / "between");
                fs::rename(desk.house / name(ada), desk.house / name(ben));
                fs::rename(desk.house / "between", desk.house / name(ada));
                fs::remove(desk.house / (print_device(ada) + "-2.journal"));
            }
            return problem_of(merge_into(disk, desk.house, journals_of(desk.stick), desk_tablet));
        },
        [](const Desk& desk, bool whole) {
            const Journals house = journals_of(desk.house);
            CHECK(read_journal(house.of_device.at(ada)).events.size() == 7);
            CHECK(read_journal(house.of_device.at(ben)).events.size() == 4);
            CHECK((!whole || journals_in(desk.house)->size() == 2));
        });
}

TEST_CASE("Remains of an earlier try are cleaned away and said") {
    const Desk desk;
    const fs::path out = desk.home.path() / "out";
    fs::create_directory(desk.home.path() / ".out.new");
    std::ofstream(desk.home.path() / ".out.new" / "half.journal") << "half";
    Disk disk;
    const auto merged = merge_into(disk, out, desk.both(), desk_tablet);
    REQUIRE(merged);
    CHECK(merged->said.english().find("half done was cleaned away") != std::string::npos);
    CHECK(journals_of(out) == desk.both());
    // In a job's folder too, and where a program was stopped before the first event.
    std::ofstream(out / ".syncthing.x.journal.123.tmp") << "half";
    CHECK_FALSE(merge_into(disk, out, desk.both(), desk_tablet)->said.empty());
    CHECK(merge_into(disk, out, desk.both(), desk_tablet)->said.empty());
    const fs::path begun = desk.home.path() / "begun";
    fs::create_directory(begun);
    std::ofstream(begun / ".lock");
    std::ofstream(begun / ".device-000000000000ada1") << "1 1\n";
    CHECK_FALSE(merge_into(disk, begun, desk.both(), desk_tablet)->said.empty());
    CHECK(journals_of(begun) == desk.both());
}

TEST_CASE("A new job is not put among things that are none") {
    const Desk desk;
    const fs::path out = desk.home.path() / "out";
    fs::create_directory(out);
    Disk disk;
    CHECK(merge_into(disk, out, desk.both(), desk_tablet));  // an empty folder counts as none
    const fs::path photos = desk.home.path() / "photos";
    fs::create_directory(photos);
    std::ofstream(photos / "roof.jpg") << "roof";
    CHECK_FALSE(merge_into(disk, photos, desk.both(), desk_tablet));
    CHECK(fs::file_size(photos / "roof.jpg") == 4);
    CHECK(drafts_in(desk.home.path()).empty());
}

TEST_CASE("Two programs do not build the same job at once") {
    const Desk desk;
    Disk disk;
    const auto first = FolderDraft::begin(disk, desk.home.path() / "out");
    REQUIRE(first);
    CHECK_FALSE(merge_into(disk, desk.home.path() / "out", desk.both(), desk_tablet));
    std::ofstream((*first)->path() / "x.journal") << "x";
    CHECK_FALSE((*first)->put_in_place());
    CHECK(fs::exists(desk.home.path() / "out" / "x.journal"));
}

TEST_CASE("A job file is not taken in as a new job while one cannot be read that it may be of") {
    const Desk desk;
    const fs::path jobs = desk.home.path() / "jobs";
    fs::create_symlink("nowhere", desk.house / "000000000000ada2.journal");
    Disk disk;
    const auto taken =
        take_in_journals(disk, journals_of(desk.stick), *list_jobs(jobs), jobs, desk_tablet);
    REQUIRE_FALSE(taken);
    CHECK(taken.problem().what.english().find("cannot be told whether") != std::string::npos);
    CHECK(list_jobs(jobs)->size() == 1);
    // One that can be read and is the file's takes it in all the same.
    fs::copy(desk.stick, jobs / "Stick", fs::copy_options::recursive);
    const auto again =
        take_in_journals(disk, journals_of(desk.stick), *list_jobs(jobs), jobs, desk_tablet);
    REQUIRE(again);
    CHECK_FALSE(again->is_new);
}

TEST_CASE("A file that changed since it was read is not replaced by a merge") {
    /// Someone without the lock appends while the drafts are written.
    class Busy : public Disk {
      public:
        explicit Busy(fs::path file) : file_(std::move(file)) {}
        int sync(int file) override {
            if (!std::exchange(done_, true)) {
                std::ofstream(file_, std::ios::app) << "an event that is just arriving";
            }
            return Disk::sync(file);
        }

      private:
        fs::path file_;
        bool done_ = false;
    };
    const Desk desk;
    const fs::path journal = desk.house / (print_device(ada) + ".journal");
    Busy disk(journal);
    const auto size = fs::file_size(journal);
    CHECK_FALSE(merge_into(disk, desk.house, journals_of(desk.stick), desk_tablet));
    CHECK(fs::file_size(journal) > size);
    CHECK(merge_into(disk, desk.house, journals_of(desk.stick), desk_tablet));
    const Bytes arriving = *read_file(journal), kept = journals_of(desk.house).of_device.at(ada);
    CHECK(arriving == kept);
    CHECK(journals_of(desk.house).damage.size() == 2);  // as it was read first, and then
}

TEST_CASE(
    "A merge whose bytes do not read back as they were written replaces and removes nothing") {
    /// Says it has written what it has not.
    class Lying : public Disk {
      public:
        ssize_t write(int file, const std::uint8_t* bytes, std::size_t size) override {
            Bytes others(bytes, bytes + size);
            others.back() ^= 1U;
            return Disk::write(file, others.data(), size);
        }
    };
    const Desk desk;
    const Journals before = journals_of(desk.house);
    Lying disk;
    CHECK_FALSE(merge_into(disk, desk.house, journals_of(desk.stick), desk_tablet));
    CHECK(journals_of(desk.house) == before);
    CHECK(journals_in(desk.house)->size() == 2);
}

TEST_CASE("Two stretches of damage with the same checksum and size are both kept") {
    // Of 2^18 texts some two share their CRC-32: about 2^36 / 2^33 pairs (birthday bound).
    std::unordered_map<std::uint32_t, std::uint32_t> seen;
    Journals journals;
    for (std::uint32_t n = 0; journals.damage.empty() && n < (1U << 22U); ++n) {
        const auto text = [](std::uint32_t number) {
            const std::string digits = "scratch " + std::to_string(1'000'000'000U + number * 977U);
            return Bytes(digits.begin(), digits.end());
        };
        const auto [other, is_new] = seen.emplace(crc32_of(text(n)), n);
        if (!is_new && text(other->second).size() == text(n).size()) {
            journals.damage = {text(n), text(other->second)};
        }
    }
    REQUIRE(journals.damage.size() == 2);
    const Desk desk;
    Disk disk;
    journals.of_device = journals_of(desk.stick).of_device;
    const fs::path out = desk.home.path() / "out";
    REQUIRE(merge_into(disk, out, journals, desk_tablet));
    CHECK(journals_of(out).damage == journals.damage);
    const auto packed = pack_job(journals, {});
    REQUIRE(packed);
    CHECK(unpack_job(*packed)->damage == journals.damage);
}

}  // namespace
}  // namespace hemline
