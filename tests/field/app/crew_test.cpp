// A crew's tablets: what one writes shows on the other, a disagreement is shown and picked, and a
// job goes from hand to hand in a file.
#include <doctest/doctest.h>

#include <algorithm>
#include <atomic>
#include <chrono>
#include <cstdio>
#include <fstream>
#include <memory>
#include <thread>

#include "field/store/folders.h"
#include "field/store/job_folder.h"
#include "tests/field/app/full_disk.h"
#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

namespace fs = std::filesystem;
using std::chrono::milliseconds;

constexpr std::uint64_t ada = 0xada, ben = 0xbe4;

std::string said_by(const std::string& command) {
    const std::unique_ptr<std::FILE, int (*)(std::FILE*)> pipe(popen(command.c_str(), "r"),
                                                               &pclose);
    std::string said;
    for (int letter = std::fgetc(pipe.get()); letter != EOF; letter = std::fgetc(pipe.get())) {
        said += static_cast<char>(letter);
    }
    return said;
}

/// A tablet whose window is woken, as a shell's is.
struct Tablet {
    std::atomic<int> woken = 0;
    Journey hand;

    Tablet(std::uint64_t device, const fs::path& crew) : hand(device, crew, [this] { ++woken; }) {}

    /// All that is kept is saved, and given out.
    void rest() {
        REQUIRE(hand.app->settle());
        hand.screen->frames(2);
        hand.app->settle_crew();
        hand.app->settle_search();
        hand.screen->frames(2);
    }
    /// Sleeps until it is woken and something is so; what it shows then is drawn.
    template <class So>
    bool until(So so) {
        for (int i = 0; i < 1000 && !so(); ++i) {
            std::this_thread::sleep_for(milliseconds(10));
            if (woken.exchange(0) > 0) {
                hand.screen->frames(1);
            }
        }
        return so();
    }
    [[nodiscard]] std::size_t readings(const char* edge) const {
        return hand.work(edge).readings.size();
    }
    void read(const char* edge, Length length) {
        if (hand.where().screen != Screen::reading) {
            hand.tap(std::string("edge ") + edge);
        }
        hand.key_in(length);
        hand.tap("keep");
        rest();
    }
    void join() {
        hand.tap("hand over");
        const auto names = hand.screen->names();
        const auto job = std::find_if(names.begin(), names.end(), [](const std::string& name) {
            return name.rfind("join ", 0) == 0;
        });
        REQUIRE(job != names.end());
        hand.tap(*job);
        hand.tap("leave");
        REQUIRE(hand.where().screen == Screen::roof);
        rest();
    }
};

/// What a synchronizer does: each file that the other side lacks, whole, under its name at last.
void carry_over(const fs::path& from, const fs::path& to) {
    for (const auto& entry : fs::recursive_directory_iterator(from)) {
        const fs::path there = to / fs::relative(entry.path(), from);
        if (entry.is_directory()) {
            fs::create_directories(there);
        } else if (!fs::exists(there)) {
            fs::copy_file(entry.path(), there.string() + ".part");
            fs::rename(there.string() + ".part", there);
        }
    }
}

/// Two tablets whose crew folders are separate until they are joined.
struct TwoApart {
    TemporaryFolder home;
    fs::path crew_a = home.path() / "a", crew_b = home.path() / "b";
    Tablet a, b;

    TwoApart() : a(ada, made(crew_a)), b(ben, made(crew_b)) {
        a.hand.tap("demo");
        a.rest();
        carry_over(crew_a, crew_b);
        b.join();
    }
    static fs::path made(const fs::path& folder) {
        fs::create_directories(folder);
        return folder;
    }
    void join_up() const {
        carry_over(crew_a, crew_b);
        carry_over(crew_b, crew_a);
    }
};

}  // namespace

TEST_CASE("What one tablet keeps shows on the other without a restart, and then nobody is woken") {
    const TemporaryFolder home;
    Tablet a(ada, home.path());
    a.hand.tap("demo");
    a.rest();
    Tablet b(ben, home.path());
    b.join();
    CHECK(b.hand.state().job.name == a.hand.state().job.name);
    CHECK(b.hand.state().job.edges.size() == a.hand.state().job.edges.size());

    a.read("A", feet(24));
    CHECK(b.until([&] { return b.readings("A") == 1; }));
    CHECK(b.hand.where().screen == Screen::roof);
    CHECK(shows(b.hand, "1 new from the crew"));
    b.read("A", feet(24) + sixteenths(1));
    CHECK(a.until([&] { return a.readings("A") == 2; }));
    CHECK(a.hand.work("A").length(a.hand.state().job.practice).has_value());
    CHECK(a.hand.state().job.conflicts.empty());  // the second had seen the first

    a.rest();
    b.rest();
    std::this_thread::sleep_for(milliseconds(300));  // the files they wrote come back as changes
    a.woken = b.woken = 0;
    std::this_thread::sleep_for(milliseconds(700));
    CHECK(a.woken == 0);
    CHECK(b.woken == 0);
}

TEST_CASE("What is keyed in stays on the screen while the crew's events come in") {
    const TemporaryFolder home;
    Tablet a(ada, home.path());
    a.hand.tap("demo");
    a.rest();
    Tablet b(ben, home.path());
    b.join();
    b.hand.tap("edge C");
    b.hand.tap_all({"digit 1", "digit 5"});
    a.read("A", feet(24));
    CHECK(b.until([&] { return b.readings("A") == 1; }));
    CHECK(b.hand.where().screen == Screen::reading);
    CHECK(b.hand.where().edge == "C");
    b.hand.tap_all({"field inches", "inches 3", "keep"});
    CHECK(b.hand.last<ReadingTaken>().length == feet(15) + inches(3));
}

TEST_CASE("Two readings made apart are both shown, the edge waits, and the one picked stands") {
    TwoApart two;
    two.a.read("A", feet(24));
    two.b.hand.tap_all({"by", "way cut", "name Foreman"});
    two.b.read("A", feet(26));
    two.join_up();
    for (Tablet* tablet : {&two.a, &two.b}) {
        CAPTURE(tablet == &two.a);
        Journey& hand = tablet->hand;
        CHECK(tablet->until([&] { return hand.state().job.conflicts.size() == 1; }));
        CHECK(hand.status("A") == EdgeStatus::undecided);
        CHECK_FALSE(hand.work("A").undecided.empty());
        hand.tap("leave");
        REQUIRE(hand.where().screen == Screen::roof);
        CHECK(hand.screen->has_target("apart"));
        CHECK(shows(hand, "tablets disagree"));
        hand.tap("edge A");
        CHECK(hand.where().screen == Screen::apart);
        for (const char* words :
             {"24 ft", "26 ft", "Foreman", "on this tablet", "on another tablet", "waits"}) {
            CHECK_MESSAGE(shows(hand, words), words);
        }
    }
    Journey& hand = two.a.hand;
    const auto conflict = hand.state().job.conflicts.front();
    CHECK_FALSE(hand.screen->has_target("stands"));  // nothing is picked by a slip
    const auto longer = std::find_if(
        hand.state().events.begin(), hand.state().events.end(), [](const Event& event) {
            const auto* reading = std::get_if<ReadingTaken>(&event.fact);
            return reading != nullptr && reading->length == feet(26);
        });
    REQUIRE(longer != hand.state().events.end());
    hand.tap_all({"side " + print_event_id(longer->id), "stands"});
    two.a.rest();
    CHECK(hand.state().job.conflicts.empty());
    CHECK(hand.status("A") == EdgeStatus::one_reading);
    CHECK(hand.where().screen == Screen::reading);  // on with the edge
    two.join_up();
    CHECK(two.b.until([&] { return two.b.hand.state().job.conflicts.empty(); }));
    CHECK(two.b.hand.status("A") == EdgeStatus::one_reading);
}

TEST_CASE("Measured again by someone who has both readings, the edge goes on") {
    TwoApart two;
    two.a.read("A", feet(24));
    two.b.read("A", feet(26));
    two.join_up();
    Journey& hand = two.a.hand;
    CHECK(two.a.until([&] { return hand.state().job.conflicts.size() == 1; }));
    hand.tap_all({"leave", "apart", "measure again"});
    hand.key_in(feet(24) + sixteenths(1));
    hand.tap("keep");
    if (hand.state().job.conflicts.size() == 1) {
        hand.tap("keep");  // it was questioned: the other reading is two feet off
    }
    two.a.rest();
    CHECK(hand.state().job.conflicts.empty());
    CHECK(hand.work("A").length(hand.state().job.practice).has_value());
}

TEST_CASE("The page in a job's file is in the language and on the tape of the tablet") {
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    crew.key_in(feet(24) + sixteenths(1));
    crew.tap_all({"keep", "leave", "tablet", "language", "leave", "hand over", "put into file"});
    CHECK(crew.state().language == "es");
    const std::vector<fs::path> files = *job_files_in(crew.outside.path());
    REQUIRE(files.size() == 1);
    // Read by another program.
    const std::string page = said_by(
        "python3 -c 'import sys, zipfile; print(zipfile.ZipFile(sys.argv[1]).read(\"job.html\")"
        ".decode())' '" +
        files.front().string() + "'");
    for (const char* const words :
         {"lang=\"es\"", "<h2>Bordes</h2>", "<h2>Medidas</h2>", "alero", "24 ft 0 1/16 in"}) {
        CHECK_MESSAGE(page.find(words) != std::string::npos, words << " is not there");
    }
    for (const char* const words : {"Edges", "Readings", "Everything that happened", "eave"}) {
        CHECK_MESSAGE(page.find(words) == std::string::npos, words << " is there");
    }
}

TEST_CASE("A job put into a file is taken in on another tablet, and taken in again adds nothing") {
    Journey one;
    one.tap_all({"demo", "edge A"});
    one.key_in(feet(24));
    one.tap_all({"keep", "leave", "hand over", "put into file"});
    const std::vector<fs::path> files = *job_files_in(one.outside.path());
    REQUIRE(files.size() == 1);
    CHECK(shows(one, files[0].filename().string()));  // where it was put is said
    CHECK(shows(one, one.outside.path().filename().string()));
    CHECK_FALSE(shows(one, one.outside.path().string()));

    Journey other(1280, 800);
    fs::copy(files[0], other.outside.path() / files[0].filename());
    other.tap_all({"hand over", "take " + files[0].filename().string()});
    CHECK(other.state().job.name == one.state().job.name);
    CHECK(other.work("A").readings.size() == 1);
    CHECK(shows(other, "is on this tablet now"));
    other.tap("take " + files[0].filename().string());
    CHECK(list_jobs(other.folder.path())->size() == 1);
    CHECK(shows(other, "took in 0 events more"));
    // It writes there under a new number, and undo finds what it wrote.
    other.tap_all({"leave", "edge A"});
    other.key_in(feet(24));
    other.tap("keep");
    CHECK(other.state().events.back().id.device != one.state().events.front().id.device);
    CHECK(other.state().undo_target == other.state().events.back().id);
}

TEST_CASE("A file that is no job file is refused by name, says why, and changes nothing") {
    Journey crew;
    crew.tap("demo");
    const std::size_t events = crew.state().events.size();
    std::ofstream(crew.outside.path() / "picture.hemline.zip") << "not a zip at all";
    crew.tap_all({"hand over", "take picture.hemline.zip"});
    CHECK(crew.state().notice.english().find("picture.hemline.zip") != std::string::npos);
    CHECK(crew.state().events.size() == events);
    CHECK(list_jobs(crew.folder.path())->size() == 1);
    crew.tap("leave");
    CHECK(crew.where().screen == Screen::roof);
}

TEST_CASE("When the disk takes nothing the job goes on in another folder, with the value kept") {
    const TemporaryFolder home;
    fs::create_directories(home.path() / "stick");
    const Setting at("HOME", home.path().string());
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    crew.key_in(feet(24) + inches(3));
    {
        const FullDisk full;
        crew.tap("keep");
    }
    CHECK(crew.state().saving == Saving::failed);
    crew.tap("go on elsewhere");
    CHECK(crew.where().screen == Screen::folder);
    crew.tap("leave");  // thought better of it
    CHECK(crew.where().screen == Screen::reading);
    CHECK_FALSE(crew.state().notice.empty());
    crew.tap_all({"go on elsewhere", "into stick", "use folder"});
    CHECK(crew.where().screen == Screen::reading);
    crew.tap("keep");
    CHECK(crew.state().saving == Saving::saved);
    CHECK(crew.last<ReadingTaken>().length == feet(24) + inches(3));
    const auto jobs = *list_jobs(home.path() / "stick");
    REQUIRE(jobs.size() == 1);
    CHECK(replay(read_job_folder(jobs[0])->events).find("A")->readings.size() == 1);
    CHECK(crew.folders.jobs == jobs);
    crew.tap_all({"leave", "jobs"});
    CHECK(crew.state().jobs.size() == 2);  // the old copy stays as it was
}

TEST_CASE("A crew folder that is not there is said, and what was saved goes out when it is back") {
    const TemporaryFolder home;
    const fs::path crew = home.path() / "stick";
    Tablet a(ada, crew);
    a.hand.tap("demo");
    a.rest();
    CHECK(a.until([&] { return a.hand.state().outside.crew_failed; }));
    CHECK(a.hand.state().outside.crew_said.english().find("stick") != std::string::npos);
    CHECK(a.hand.state().saving == Saving::saved);
    fs::create_directories(crew);
    a.read("A", feet(24));
    CHECK(a.until([&] { return !a.hand.state().outside.crew_failed; }));
    Tablet b(ben, crew);
    b.join();
    CHECK(b.readings("A") == 1);
}
