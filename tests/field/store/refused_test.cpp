// An event that was called "not saved" never counts again, whatever call failed, after a kill and
// after a power cut; an event that was called saved always does.
#include <doctest/doctest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <set>

#include <fcntl.h>
#include <unistd.h>

#include "engine/record/job.h"
#include "engine/record/old_picks.h"
#include "engine/words/result.h"
#include "field/store/job_carrying.h"
#include "field/store/journal_file.h"
#include "tests/field/store/lost_power.h"
#include "tests/field/store/readings.h"
#include "tests/field/store/temporary_folder.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

constexpr const char* may_be_there = "It may come back";

/// What was reported about each event so far.
struct Said {
    std::vector<Event> saved, refused;
    std::vector<Event> unsure;  ///< refused, with the word that it may be there
    std::vector<Event> open;    ///< nothing was reported about it yet
};

bool holds(const std::vector<Event>& events, const Event& event) {
    return std::any_of(events.begin(), events.end(), [&](const Event& there) {
        return there.id == event.id && frame_of(there) == frame_of(event);
    });
}

/// How the events differ from what was reported; empty: they do not.
std::string wrong_in(const std::vector<Event>& events, const Said& said) {
    const std::set<EventId> struck = strikes_in(events).struck;
    for (const Event& event : said.saved) {
        if (!holds(events, event)) {
            return "a saved event is lost: " + print_event_id(event.id);
        }
    }
    std::set<EventId> may_be_struck;
    for (const std::vector<Event>* some : {&said.saved, &said.unsure, &said.open}) {
        for (const Event& event : *some) {
            if (const auto target = struck_by(event.fact)) {
                may_be_struck.insert(*target);
            }
        }
    }
    for (const Event& event : said.saved) {
        const std::optional<EventId> target = struck_by(event.fact);
        if (target && struck.count(*target) == 0) {
            return "a saved strike does not count: " + print_event_id(event.id);
        }
        if (struck.count(event.id) > 0 && may_be_struck.count(event.id) == 0) {
            return "a saved event is struck: " + print_event_id(event.id);
        }
    }
    for (const Event& event : said.refused) {
        if (holds(events, event) && struck.count(event.id) == 0) {
            return "an event that was not saved counts: " + print_event_id(event.id);
        }
    }
    std::set<EventId> ids;
    for (const Event& event : events) {
        if (!ids.insert(event.id).second) {
            return "one number for two events: " + print_event_id(event.id);
        }
    }
    return {};
}

/// Opens what is there as the next program would; it must report what is wrong and accept new
/// events.
std::string wrong_when_opened(const Image& image, const fs::path& root, const Said& said) {
    fs::create_directories(root / "job");
    for (const auto& entry : fs::directory_iterator(root / "job")) {
        if (entry.path().extension() == ".journal" || entry.path().extension() == ".bytes") {
            fs::remove(entry.path());
        }
    }
    lay_into(image, root);
    const auto disk = std::make_shared<RememberingDisk>(root);  // without real syncs: much faster
    const auto journal = JournalFile::open(root / "job", device, Opening::either, disk);
    if (!journal) {
        return "it does not open: " + journal.problem().what.english();
    }
    if (std::string wrong = wrong_in((*journal)->record().events, said); !wrong.empty()) {
        return wrong;
    }
    const auto next = (*journal)->append(EdgeFinished{"A", ""}, "", {}, 1);
    return next ? wrong_in((*read_job_folder(root / "job")).events, said)
                : "it cannot be written on";
}

/// The job's files as a killed program leaves them: what it wrote is there, synced or not.
Image left_by_a_kill(const fs::path& root) {
    Image image;
    const std::vector<fs::path> journals = *journals_in(root / "job");
    for (const fs::path& file : journals) {
        image["job/" + file.filename().string()] = *read_file(file);
    }
    return image;
}

struct Counts {
    std::size_t runs = 0, refused = 0, struck = 0, unsure = 0, kills = 0, cuts = 0, copies = 0;
};

/// Readings and now and then an undo, while the calls that `fails` names fail.
class Trial {
  public:
    Trial(std::function<bool(std::size_t)> fails, std::size_t gets_down, std::mt19937& random,
          Counts& counts)
        : random_(random), counts_(counts) {
        journal_ = *JournalFile::open(root_ / "job", device, Opening::either, disk_);
        disk_->gets_down = gets_down;
        disk_->fails = std::move(fails);
        ++counts_.runs;
    }
    void append(const Fact& fact) {
        const std::size_t calls_before = disk_->calls.size();
        const Result<Event> handed = journal_->hand_over(fact, "Ada", {}, 1);
        REQUIRE(handed);
        journal_->settle();
        const std::vector<SaveReturned> back = journal_->returned();
        REQUIRE(back.size() == 1);
        // A power cut while it is being saved: it may be there or not.
        said_.open = {*handed};
        const std::size_t calls = disk_->calls.size();
        for (std::size_t call = calls_before; call < calls; ++call) {
            cut_power();
            power_.done(disk_->calls[call]);
        }
        said_.open.clear();
        if (!back[0].problem) {
            said_.saved.push_back(*handed);
            move_unsure();
        } else if (back[0].problem->what.english().find(may_be_there) != std::string::npos) {
            said_.unsure.push_back(*handed);
            ++counts_.unsure;
        } else {
            said_.refused.push_back(*handed);
            ++counts_.refused;
            const std::vector<Event>& events = journal_->record().events;
            const bool is_struck = !events.empty() && struck_by(events.back().fact) == handed->id;
            counts_.struck += is_struck ? 1 : 0;
        }
        look(back[0].problem.has_value());
    }
    [[nodiscard]] const Said& said() const { return said_; }
    [[nodiscard]] std::size_t calls() const { return disk_->made; }

  private:
    /// What is saved after it is saved after its strike.
    void move_unsure() {
        said_.refused.insert(said_.refused.end(), said_.unsure.begin(), said_.unsure.end());
        said_.unsure.clear();
    }
    void look(bool is_refused) {
        ++counts_.kills;
        CHECK(wrong_when_opened(left_by_a_kill(root_), after_.path() / "after", said_) == "");
        cut_power();
        if (is_refused) {
            ++counts_.copies;
            RememberingDisk whole(after_.path());
            const auto there =
                go_on_in(whole, root_ / "job", after_.path(), device, journal_->refused());
            if (!said_.saved.empty()) {
                REQUIRE(there);
                Said said = said_;
                said.refused.insert(said.refused.end(), said.unsure.begin(), said.unsure.end());
                CHECK(wrong_in(read_job_folder(there->job)->events, said) == "");
                fs::remove_all(there->job);
            }
        }
    }
    void cut_power() {
        for (const Cut cut : {Cut::dropped, Cut::torn, Cut::reordered}) {
            ++counts_.cuts;
            CHECK(wrong_when_opened(power_.image(cut, random_), after_.path() / "after", said_) ==
                  "");
        }
    }

    TemporaryFolder written_, after_;
    fs::path root_ = written_.path();
    std::shared_ptr<RememberingDisk> disk_ = std::make_shared<RememberingDisk>(root_);
    PowerCut power_{{}};
    Said said_;
    std::mt19937& random_;
    Counts& counts_;
    std::shared_ptr<JournalFile> journal_;
};

/// A frame that a killed program wrote and never synced, after an event that was saved.
struct LeftUnsynced {
    TemporaryFolder folder, after;
    std::shared_ptr<RememberingDisk> disk = std::make_shared<RememberingDisk>(folder.path());
    PowerCut power{{}};
    Event written{{device, 2}, {2, 0}, "Ada", {}, reading(1)};

    LeftUnsynced() {
        const fs::path job = folder.path() / "job";
        REQUIRE(
            (*JournalFile::open(job, device, Opening::new_job, disk))->append(edge_a(), "", {}, 1));
        const int file = disk->open(job / (print_device(device) + ".journal"), O_WRONLY | O_APPEND);
        const Bytes frame = frame_of(written);
        REQUIRE(disk->write(file, frame.data(), frame.size()) ==
                static_cast<ssize_t>(frame.size()));
        ::close(file);
    }
    [[nodiscard]] auto open() const {
        return JournalFile::open(folder.path() / "job", device, Opening::existing, disk);
    }
    /// The job after a power cut that takes all that was not synced.
    [[nodiscard]] std::vector<Event> after_a_cut() {
        for (const DiskCall& call : disk->calls) {
            power.done(call);
        }
        std::mt19937 random(1);
        lay_out(power.image(Cut::dropped, random), after.path());
        return read_job_folder(after.path() / "job")->events;
    }
};

TEST_CASE("What a killed program wrote and did not sync is synced before it is shown as saved") {
    LeftUnsynced left;
    const auto journal = left.open();
    REQUIRE(journal);
    CHECK(holds((*journal)->record().events, left.written));
    CHECK(holds(left.after_a_cut(), left.written));
}

TEST_CASE("A journal whose sync fails at opening is written anew, or why not is said") {
    LeftUnsynced left;
    const std::size_t opened = left.disk->made;
    left.disk->fails = [&](std::size_t call) { return call == opened + 1; };
    {
        const auto journal = left.open();
        REQUIRE(journal);
        CHECK(holds((*journal)->record().events, left.written));
    }
    CHECK(holds(left.after_a_cut(), left.written));

    LeftUnsynced broken;
    broken.disk->fails = [](std::size_t) { return true; };
    const auto refused = broken.open();
    REQUIRE_FALSE(refused);
    CHECK(refused.problem().what.english().find(
              "What this job holds may be lost if the power goes.") == 0);
    CHECK(refused.problem().mend.english().find("Copy the job's folder") == 0);
    broken.disk->fails = {};
    CHECK(broken.open());  // and nothing was lost by it
}

/// What undo would strike: the last event that was saved and is not a strike.
std::optional<EventId> last_to_undo(const std::vector<Event>& saved) {
    const auto last = std::find_if(saved.rbegin(), saved.rend(),
                                   [](const Event& event) { return !struck_by(event.fact); });
    return last == saved.rend() ? std::nullopt : std::optional(last->id);
}

void run_script(Trial& trial, int events) {
    trial.append(edge_a());
    for (int n = 1; n < events; ++n) {
        const auto undone = n % 4 == 3 ? last_to_undo(trial.said().saved) : std::nullopt;
        trial.append(undone ? Fact(StruckFor{*undone, StrikeReason::undone}) : Fact(reading(n)));
    }
}

TEST_CASE("Whatever call fails, what is not saved never counts after a kill or a power cut") {
    const bool nightly = std::getenv("HEMLINE_NIGHTLY") != nullptr;
    std::mt19937 random(20'260'704);  // a fixed seed: what goes wrong is found again
    Counts counts;
    const int events = nightly ? 12 : 5;
    std::size_t calls = 0;
    {
        Trial whole({}, 0, random, counts);
        run_script(whole, events);
        CHECK(whole.said().saved.size() == static_cast<std::size_t>(events));
        calls = whole.calls();
    }
    for (const std::size_t length : {std::size_t{1}, std::size_t{2}, std::size_t{3}, std::size_t{4},
                                     std::size_t{6}, std::size_t{9}, SIZE_MAX}) {
        for (std::size_t first = 0; first < calls; ++first) {
            for (const std::size_t gets_down : {std::size_t{0}, std::size_t{30}, SIZE_MAX}) {
                CAPTURE(length);
                CAPTURE(first);
                CAPTURE(gets_down);
                const std::size_t unsure_before = counts.unsure;
                Trial trial(
                    [=](std::size_t call) { return call >= first && call - first < length; },
                    gets_down, random, counts);
                run_script(trial, events);
                CHECK(trial.said().saved.size() < static_cast<std::size_t>(events));
                // One failing call, or two, and it is certain.
                CHECK((length > 2 || counts.unsure == unsure_before));
            }
        }
    }
    CHECK(counts.struck > 0);
    MESSAGE(counts.runs << " runs of " << calls << " calls: " << counts.refused
                        << " events refused, " << counts.struck << " of them struck, "
                        << counts.unsure << " more that may be there and say so, " << counts.kills
                        << " kills, " << counts.cuts << " power cuts, " << counts.copies
                        << " copies");
}

}  // namespace
}  // namespace hemline
