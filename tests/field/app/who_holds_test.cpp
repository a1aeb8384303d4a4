// Nobody holds a tablet until somebody has said so: nothing is signed with a name that nobody gave.
#include <doctest/doctest.h>

#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

/// A new tablet, of which nothing is known.
struct NewTablet {
    NewTablet() {
        AppOptions options;
        options.jobs_folder = folder.path();
        options.device = 7;
        options.wall_ms = [] { return std::int64_t{1'760'000'000'000}; };
        options.keep_scale = [this](const ScreenScale& screen) -> std::optional<Problem> {
            kept = screen;
            return {};
        };
        options.screen = kept;
        app = std::make_unique<App>(assets_read(), options);
        screen = std::make_unique<Harness>([this](Ui& ui) { app->draw(ui); });
    }
    void tap_all(const std::vector<std::string>& names) const {
        for (const std::string& name : names) {
            screen->tap(name);
        }
    }
    TemporaryFolder folder;
    ScreenScale kept;
    std::unique_ptr<App> app;
    std::unique_ptr<Harness> screen;
};

}  // namespace

TEST_CASE("What is to be written asks first who holds the tablet, and goes on where it was") {
    const NewTablet tablet;
    const State& state = tablet.app->state();
    CHECK(state.by.empty());
    tablet.screen->tap("demo");
    CHECK(state.where.screen == Screen::person);
    CHECK_FALSE(state.notice.empty());
    CHECK(state.events.empty());
    tablet.screen->tap("name Foreman");
    CHECK(state.where.screen == Screen::jobs);
    CHECK(state.by == "Foreman");
    tablet.screen->tap("demo");
    REQUIRE_FALSE(state.events.empty());
    CHECK(state.events.back().by == "Foreman");
}

TEST_CASE("A new job's name stays keyed in while it is asked who starts it") {
    const NewTablet tablet;
    tablet.tap_all({"new job", "letter B", "keep name"});
    const State& state = tablet.app->state();
    CHECK(state.where.screen == Screen::person);
    CHECK(state.events.empty());
    tablet.screen->tap("name Installer");
    tablet.screen->tap("keep name");
    CHECK(state.job.name == "B");
    CHECK(state.events.back().by == "Installer");
}

TEST_CASE("A job that others wrote is looked at without a name, and signs nothing") {
    Journey other;
    other.tap_all({"demo", "edge C"});
    other.key_in(feet(15));
    other.tap("keep");
    const std::size_t before = other.state().events.size();
    CHECK(other.state().events.back().by == "Installer");

    AppOptions options;
    options.jobs_folder = other.folder.path();
    options.device = 8;
    options.wall_ms = [] { return std::int64_t{1'770'000'000'000}; };
    const std::filesystem::path job = other.job();
    other.app.reset();
    options.job = job;
    App app(assets_read(), options);
    Harness screen([&](Ui& ui) { app.draw(ui); });
    CHECK(app.state().by.empty());
    CHECK(app.state().events.size() == before);
}
