// The touch program killed at any moment, in a real window that nobody sees: it opens again with
// all that it called saved, at the same step.
#include <SDL.h>
#include <doctest/doctest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <csignal>
#include <cstring>
#include <deque>
#include <random>
#include <thread>

#include "field/shell/sdl_events.h"
#include "field/shell/window.h"
#include "field/store/clock.h"
#include "field/store/folders.h"
#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

using Clock = std::chrono::steady_clock;
using std::chrono_literals::operator""ms;

constexpr float w = 1280, h = 800;
constexpr int frames_settled = 6;  // hover, touch, lift, and what the lift led to
constexpr auto pause = 90ms;       // the same key is refused within 80 ms

/// What the screen called saved: how many events, and what was next.
struct Told {
    std::uint32_t events = 0;
    std::array<char, 60> next{};
};

std::string next_of(const State& state) {
    const std::optional<NextWork> next = next_work(state);
    return next ? next->what.english() : "all is finished";
}

void key_in(std::deque<std::string>& names, Length length) {
    const LengthParts parts = take_apart(length, Marks::sixteenth);
    for (const char letter : std::to_string(parts.feet)) {
        names.push_back(std::string("digit ") + letter);
    }
    names.insert(names.end(), {"field inches", "inches " + std::to_string(parts.inches)});
    if (parts.numerator > 0) {
        names.push_back("sixteenths " + std::to_string(parts.numerator * 16 / parts.denominator));
    }
}

bool is_there(const Ui& ui, std::string_view name) {
    const auto& all = ui.targets();
    return std::any_of(all.begin(), all.end(),
                       [&](const Target& target) { return target.name == name; });
}

/// The day's questions, or the page of one of them where the program was killed on it.
std::deque<std::string> keys_at_gate(const Ui& ui) {
    if (is_there(ui, "send")) {
        return {"letter B", "send"};
    }
    return {"yes anchors", "yes ladder", "yes wires", "yes wind", "yes wet", "yes heat", "watcher",
            "letter B",    "send",       "hospital",  "letter B", "send",    "go up"};
}

std::string answer_to(Asks asks) {
    switch (asks) {
        case Asks::tick:
            return "tick";
        case Asks::cut:
            return "to card";
        case Asks::remainder:
            return "to reading";
        case Asks::side:
            return "answer left";
        default:
            return "answer";
    }
}

/// The keys that the place asks for next on the job's first edge.
std::deque<std::string> keys_for(const State& state, const Ui& ui) {
    std::deque<std::string> names;
    const EdgeWork* const work = edge_of(state, state.where.edge);
    if (is_there(ui, "below")) {  // the black button first goes to what is below the fold
        return {"below"};
    }
    switch (state.where.screen) {
        case Screen::jobs:
            return {state.jobs.empty() ? "demo" : "job " + state.jobs.front().filename().string()};
        case Screen::roof:
            return {"edge A"};
        case Screen::card:
            return {"cut"};
        case Screen::pitch:
            return {"digit 5", "keep"};
        case Screen::reading: {
            const Run* const run = find_run(state.plan, state.where.edge, TrimRole::main);
            const bool rest = state.where.reading_of == ReadingOf::remainder && run != nullptr;
            key_in(names, rest ? run->pieces.back().covers - run->lap : feet(46) + sixteenths(4));
            names.push_back("keep");
            return names;
        }
        case Screen::gate:
            return keys_at_gate(ui);
        case Screen::asked_once:
            return {"go on"};
        case Screen::steps: {
            for (const char* name : {"all so", "key in"}) {
                if (is_there(ui, name)) {
                    return {name};
                }
            }
            const std::vector<Step> steps = steps_on(state, *work);
            const Step& step = steps.at(next_step(steps).value_or(0));
            if (step.rule->asks == Asks::length) {
                key_in(names, step.length_least.value_or(Length()));
            } else if (step.rule->asks == Asks::count) {
                for (const char letter : std::to_string(step.count_least.value_or(0))) {
                    names.push_back(std::string("digit ") + letter);
                }
            }
            names.push_back(answer_to(step.rule->asks));
            return names;
        }
        case Screen::person:
            return {"name Foreman"};
        default:
            return {"leave"};
    }
}

/// In the child: the app in its window, touched by itself, until the parent kills it.
class Crew {
  public:
    Crew(const std::filesystem::path& jobs, int told) : told_(told) {
        AppOptions options;
        options.jobs_folder = jobs;
        options.device = 1;
        options.wall_ms = wall_ms;
        options.wake = wake_window;
        options.screen.people = {{"Installer", Way::cut}};
        if (const auto there = *list_jobs(jobs); !there.empty()) {
            options.job = there.front();
        }
        app_ = std::make_unique<App>(assets_read(), options);
    }
    void work() {
        std::thread([] {
            for (;;) {
                std::this_thread::sleep_for(20ms);
                wake_window();
            }
        }).detach();
        const Scene scene{.draw = [this](Ui& ui) { draw(ui); },
                          .palette = [this]() -> const Palette& { return app_->palette(); }};
        show_window({}, scene);
    }

  private:
    void draw(Ui& ui) {
        app_->draw(ui);
        const State& state = app_->state();
        if (state.saving == Saving::saved) {
            tell(state);
        }
        if (++frames_ < frames_settled || Clock::now() - touched_ < pause) {
            return;
        }
        if (names_.empty()) {
            names_ = keys_for(state, ui);
        }
        touch(ui, names_.front());
        names_.pop_front();
        touched_ = Clock::now();
        frames_ = 0;
    }
    void touch(Ui& ui, const std::string& name) const {
        const auto& all = ui.targets();
        const auto found = std::find_if(all.begin(), all.end(),
                                        [&](const Target& target) { return target.name == name; });
        if (found == all.end()) {
            std::fprintf(stderr, "killed_test: there is no \"%s\" to tap\n", name.c_str());
            ::_exit(3);
        }
        for (const auto type : {SDL_FINGERDOWN, SDL_FINGERUP}) {
            SDL_Event event{};
            event.type = type;
            event.tfinger.touchId = 1;
            event.tfinger.x = found->box.mid_x() / w;
            event.tfinger.y = found->box.mid_y() / h;
            SDL_PushEvent(&event);
        }
    }
    void tell(const State& state) {
        if (state.events.size() == said_) {
            return;
        }
        said_ = state.events.size();
        Told told;
        told.events = static_cast<std::uint32_t>(said_);
        const std::string next = next_of(state);
        std::memcpy(told.next.data(), next.data(), std::min(next.size(), told.next.size() - 1));
        if (::write(told_, &told, sizeof told) != sizeof told) {
            ::_exit(4);
        }
    }
    int told_;
    std::unique_ptr<App> app_;
    std::deque<std::string> names_;
    Clock::time_point touched_;
    int frames_ = 0;  ///< since then
    std::size_t said_ = 0;
};

/// Lets a crew work for a while and kills it. The last that it called saved.
Told work_and_kill(const std::filesystem::path& jobs, std::uint32_t events, int more_us) {
    std::array<int, 2> ends{};
    REQUIRE(::pipe(ends.data()) == 0);
    const pid_t child = ::fork();
    REQUIRE(child >= 0);
    if (child == 0) {
        ::setenv("SDL_VIDEODRIVER", "offscreen", 1);
        Crew(jobs, ends[1]).work();
        ::_exit(2);
    }
    ::close(ends[1]);
    Told told;
    while (told.events < events && ::read(ends[0], &told, sizeof told) == sizeof told) {
    }
    ::usleep(static_cast<useconds_t>(more_us));
    ::kill(child, SIGKILL);
    for (Told later; ::read(ends[0], &later, sizeof later) == sizeof later;) {
        told = later;
    }
    ::close(ends[0]);
    int status = 0;
    ::waitpid(child, &status, 0);
    REQUIRE_MESSAGE(WIFSIGNALED(status), "the window closed by itself");
    REQUIRE(told.events >= events);
    return told;
}

}  // namespace

TEST_CASE("The touch program killed at any moment opens at the step that it called saved") {
    const TemporaryFolder folder;
    std::mt19937 random(9);
    std::uint32_t events = 0;
    for (int round = 0; round < 6; ++round) {
        CAPTURE(round);
        const Told told = work_and_kill(folder.path(), events + (round == 0 ? 9 : 3),
                                        static_cast<int>(random() % 200'000));
        const auto jobs = *list_jobs(folder.path());
        REQUIRE(jobs.size() == 1);
        const auto again = app_on(jobs.front());
        events = static_cast<std::uint32_t>(again->state().events.size());
        CHECK(events >= told.events);
        // Whole on the disk, and killed before it was said: a touch confirms a piece's steps, or a
        // part's.
        CHECK(events <= told.events + 20);
        if (events == told.events) {
            CHECK(next_of(again->state()) == std::string(told.next.data()));
        }
    }
}
