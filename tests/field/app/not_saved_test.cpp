// A disk that takes nothing more: what was keyed in is not called saved and is not lost.
#include <doctest/doctest.h>

#include "field/store/folders.h"
#include "field/store/job_folder.h"
#include "tests/field/app/full_disk.h"
#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

void check_not_saved(const Journey& crew, std::size_t events) {
    CHECK(crew.state().saving == Saving::failed);
    CHECK(crew.state().saved == "not saved");
    CHECK_FALSE(crew.state().notice.empty());
    CHECK(crew.state().events.size() == events);
}

/// What is on the disk, undone events of a failed write left out.
std::size_t readings_on_disk(const Journey& crew) {
    const auto record = read_job_folder(crew.job());
    REQUIRE(record.ok());
    return replay(record->events).find("A")->readings.size();
}

}  // namespace

TEST_CASE("A reading that the disk does not take stays in the draft and is kept later") {
    for (const bool portrait : {false, true}) {
        CAPTURE(portrait);
        Journey crew(portrait ? 800 : 1280, portrait ? 1280 : 800);
        crew.tap_all({"demo", "edge A"});
        const std::size_t before = crew.state().events.size();
        crew.key_in(eave_a_length);
        tap_in_vain(crew, "keep");
        check_not_saved(crew, before);
        CHECK(crew.where().screen == Screen::reading);
        tap_in_vain(crew, "keep");  // and again
        check_not_saved(crew, before);
        CHECK(readings_on_disk(crew) == 0);

        crew.tap("keep");  // there is room again, and the value is still there
        CHECK(crew.state().saving == Saving::saved);
        CHECK(crew.state().saved.english().rfind("saved ", 0) == 0);
        CHECK(crew.state().notice.empty());
        CHECK(crew.last<ReadingTaken>().length == eave_a_length);
        crew.start_again();
        CHECK(crew.work("A").readings.size() == 1);
        CHECK(crew.status("A") == EdgeStatus::one_reading);
    }
}

TEST_CASE("A pitch, an answer and a cut that the disk does not take are asked for again") {
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    crew.key_in(eave_a_length);
    crew.tap("keep");
    crew.key_in(eave_a_length);
    crew.tap_all({"keep", "digit 5"});
    std::size_t before = crew.state().events.size();
    tap_in_vain(crew, "keep");
    check_not_saved(crew, before);
    CHECK_FALSE(crew.work("A").edge.pitch);
    crew.tap("keep");
    CHECK(crew.work("A").edge.pitch == rise_in_12(5));

    crew.reach_card("A", TrimRole::wrap, 1);
    before = crew.state().events.size();
    tap_in_vain(crew, "cut");
    check_not_saved(crew, before);
    CHECK(crew.where().screen == Screen::card);
    CHECK(crew.work("A").cut.empty());
    crew.tap("cut");
    CHECK(crew.work("A").cut.size() == 1);

    crew.reach_step("A", "wrap_fasten", 1);
    crew.key_in(crew.step("A").count_least.value_or(0));
    before = crew.state().events.size();
    tap_in_vain(crew, "answer");
    check_not_saved(crew, before);
    crew.tap("answer");
    CHECK(crew.last<StepAnswered>().count == crew.work("A").steps.back().step.answer.count);
    CHECK(crew.last<StepAnswered>().said().exception.empty());

    // Several answers by one touch: none of them is saved, and all are asked for again.
    crew.read_on("all so");
    REQUIRE(crew.screen->has_target("all so"));
    const Step step = crew.step("A");
    before = crew.state().events.size();
    tap_in_vain(crew, "all so");
    check_not_saved(crew, before);
    CHECK(crew.step("A").rule == step.rule);
    crew.tap("all so");
    CHECK(crew.state().saving == Saving::saved);
    CHECK(crew.state().events.size() > before + 2);
}

TEST_CASE("An undo that the disk does not take undoes nothing") {
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    crew.key_in(eave_a_length);
    crew.tap_all({"keep", "leave", "history"});
    const std::size_t before = crew.state().events.size();
    tap_in_vain(crew, "undo");
    check_not_saved(crew, before);
    CHECK(crew.status("A") == EdgeStatus::one_reading);
    crew.tap("undo");
    CHECK(crew.status("A") == EdgeStatus::no_reading);
}

TEST_CASE("A job that the disk does not take is not begun: its name stays to be kept again") {
    Journey crew;
    crew.tap_all({"new job", "letter B", "letter A"});
    tap_in_vain(crew, "keep name");
    check_not_saved(crew, 0);
    CHECK(crew.where().screen == Screen::person);
    CHECK(list_jobs(crew.folder.path())->empty());
    CHECK(std::filesystem::is_empty(crew.folder.path()));  // nothing is left of it
    crew.tap("keep name");
    CHECK(crew.where().screen == Screen::add_edge);
    CHECK(crew.state().job.name == "Ba");
    CHECK(crew.job().filename() == "Ba");
}

TEST_CASE("A demo that the disk does not take is not begun: the jobs stay, and say so") {
    Journey crew;
    tap_in_vain(crew, "demo");
    check_not_saved(crew, 0);
    CHECK(crew.where().screen == Screen::jobs);
    CHECK(std::filesystem::is_empty(crew.folder.path()));
    crew.tap("demo");
    CHECK(crew.where().screen == Screen::roof);
    CHECK_FALSE(crew.state().job.name.empty());
}
