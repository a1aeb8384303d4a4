// Saving while the crew goes on: what is entered shows at once and is called saved when the disk
// has confirmed it; what could not be saved comes back on the screen.
#include <doctest/doctest.h>

#include <atomic>
#include <future>
#include <thread>

#include "field/store/folders.h"
#include "field/store/job_folder.h"
#include "tests/field/app/journey.h"
#include "tests/field/store/slow_disk.h"

using namespace hemline;

namespace {

using std::chrono_literals::operator""ms;

/// A crew whose tablet saves on a separate thread, on a disk that can be paused.
struct Slow {
    std::shared_ptr<SlowDisk> disk = std::make_shared<SlowDisk>();
    std::atomic<int> woken = 0;
    Journey crew{disk, [this] { ++woken; }};

    [[nodiscard]] const State& state() const { return crew.state(); }
    /// Keeps a length, and is back on the next screen while the disk has not returned.
    void keep_held(Length length) {
        disk->hold();
        crew.key_in(length);
        crew.tap("keep");
        disk->await_sync();
    }
    /// As the window does: nothing is drawn until a save has woken it.
    void draw_when_woken(int times) {
        while (woken < times) {
            std::this_thread::yield();
        }
        crew.screen->frames(1);
    }
    void open_edge() {
        crew.tap_all({"demo", "edge A"});
        crew.app->settle();
        woken = 0;
        crew.screen->frames(1);
        REQUIRE(state().saving == Saving::saved);
    }
    [[nodiscard]] std::size_t readings_on_disk() const {
        return replay(read_job_folder(crew.job())->events).find("A")->readings.size();
    }
};

}  // namespace

TEST_CASE("A reading is on the screen while it is being saved, and is called saved afterwards") {
    Slow slow;
    slow.open_edge();
    slow.keep_held(eave_a_length);
    CHECK(slow.crew.work("A").readings.size() == 1);  // the frame did not wait for the sync
    CHECK(slow.state().saving == Saving::under_way);
    CHECK(slow.state().saved == "saving");
    slow.crew.screen->frames(5);
    CHECK(slow.state().saving == Saving::under_way);
    CHECK(slow.woken == 0);
    slow.disk->let_go();
    slow.draw_when_woken(1);
    CHECK(slow.state().saving == Saving::saved);
    CHECK(slow.state().saved.english().rfind("saved ", 0) == 0);
    CHECK(slow.readings_on_disk() == 1);
}

TEST_CASE("A reading whose sync fails is never called saved and comes back to be kept again") {
    Slow slow;
    slow.open_edge();
    slow.keep_held(eave_a_length);
    slow.disk->let_go(1);
    slow.draw_when_woken(1);
    CHECK(slow.state().saving == Saving::failed);
    CHECK(slow.state().saved == "not saved");
    CHECK(slow.state().notice.english().find("Not saved.") == 0);
    CHECK(slow.crew.work("A").readings.empty());
    CHECK(slow.crew.where().screen == Screen::reading);
    slow.crew.tap("keep");  // the value is still keyed in
    CHECK(slow.crew.app->settle());
    CHECK(slow.state().saving == Saving::saved);
    CHECK(slow.crew.last<ReadingTaken>().length == eave_a_length);
    slow.crew.start_again();
    CHECK(slow.crew.work("A").readings.size() == 1);
    CHECK(slow.crew.status("A") == EdgeStatus::one_reading);
}

TEST_CASE("Kept in rapid succession on a failing disk, all go back and the later are named") {
    Slow slow;
    slow.open_edge();
    slow.keep_held(eave_a_length);
    slow.crew.key_in(eave_a_length + sixteenths(1));
    slow.crew.tap("keep");  // goes on to the pitch
    slow.crew.tap_all({"digit 5", "keep"});
    CHECK(slow.crew.work("A").readings.size() == 2);
    CHECK(slow.crew.work("A").edge.pitch.has_value());
    slow.disk->let_go(1);
    slow.draw_when_woken(1);
    CHECK(slow.crew.where().screen == Screen::reading);
    CHECK(slow.crew.work("A").readings.empty());
    CHECK_FALSE(slow.crew.work("A").edge.pitch);
    const std::string notice = slow.state().notice.english();
    CHECK_MESSAGE(notice.find("46 ft 0 5/16 in") != std::string::npos, notice);
    CHECK_MESSAGE(notice.find("5/12") != std::string::npos, notice);
    CHECK(notice.find("46 ft 0 1/4 in") == std::string::npos);  // that reading is on the keypad
    slow.crew.tap("keep");
    CHECK(slow.crew.app->settle());
    CHECK(slow.crew.last<ReadingTaken>().length == eave_a_length);
}

TEST_CASE("The program closed while a save is under way waits for it") {
    Slow slow;
    slow.open_edge();
    const std::filesystem::path job = slow.crew.job();
    slow.keep_held(eave_a_length);
    std::future<void> closing = std::async(std::launch::async, [&] { slow.crew.app.reset(); });
    CHECK(closing.wait_for(30ms) == std::future_status::timeout);
    slow.disk->let_go();
    closing.get();
    CHECK(app_on(job)->state().job.find("A")->readings.size() == 1);
}

TEST_CASE("A window may not close over a value that was not saved, and may when asked again") {
    Slow slow;
    slow.open_edge();
    slow.keep_held(eave_a_length);
    slow.disk->let_go(1);
    CHECK_FALSE(slow.crew.app->settle());
    CHECK(slow.state().saving == Saving::failed);
    CHECK(slow.crew.where().screen == Screen::reading);
    CHECK(slow.crew.app->settle());
}

TEST_CASE("A job or a demo whose first save fails leads back to where it was asked for") {
    Slow slow;
    slow.disk->let_go(1);
    slow.crew.tap("demo");
    CHECK(slow.crew.where().screen == Screen::jobs);
    CHECK(slow.state().saving == Saving::failed);
    CHECK_FALSE(slow.state().notice.empty());
    CHECK(slow.state().jobs.empty());
    CHECK(list_jobs(slow.crew.folder.path())->empty());

    slow.crew.tap_all({"new job", "letter B"});
    slow.disk->hold();
    slow.crew.tap("keep name");
    slow.disk->await_sync();
    slow.disk->let_go(1);
    slow.crew.app->settle();
    slow.crew.screen->frames(1);
    CHECK(slow.crew.where().screen == Screen::person);
    slow.crew.tap("keep name");
    CHECK(slow.crew.app->settle());
    CHECK(slow.state().job.name == "B");
    CHECK(slow.crew.job().filename() == "B");
}

TEST_CASE("Another job is opened only after what is under way in this one is saved") {
    Slow slow;
    slow.open_edge();
    const std::filesystem::path job = slow.crew.job();
    slow.keep_held(eave_a_length);
    slow.crew.tap_all({"leave", "jobs"});
    std::thread later([&] {
        std::this_thread::sleep_for(20ms);
        slow.disk->let_go();
    });
    slow.crew.tap("demo");
    later.join();
    CHECK(app_on(job)->state().job.find("A")->readings.size() == 1);
    CHECK(slow.state().events.size() > 1);
    CHECK(slow.crew.app->settle());
}
