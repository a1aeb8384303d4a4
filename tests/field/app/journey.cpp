#include "tests/field/app/journey.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <ctime>

#include "engine/words/result.h"
#include "engine/work/confirm.h"
#include "field/app/native_hand_over.h"
#include "field/state/gate_view.h"
#include "field/store/folders.h"

namespace hemline {

namespace {

constexpr std::uint64_t device = 0x0000'5eed'0000'0001U;

std::string digit(char letter) { return std::string("digit ") + letter; }

}  // namespace

Assets assets_read() {
    const auto folder = assets_folder();
    REQUIRE_MESSAGE(folder.ok(), "set HEMLINE_ASSETS to the assets folder");
    auto assets = read_assets(*folder);
    REQUIRE(assets.ok());
    return *assets;
}

std::unique_ptr<App> app_on(const std::filesystem::path& job, std::int64_t wall_ms) {
    AppOptions options;
    options.jobs_folder = job.parent_path();
    options.device = device;
    options.wall_ms = [wall_ms] { return wall_ms; };
    options.job = job;
    options.screen.people = {{"Installer", Way::cut}};
    return std::make_unique<App>(assets_read(), options);
}

Journey::Journey(float w, float h, float px_per_mm)
    : w_(w), h_(h), px_per_mm_(px_per_mm), device_(device) {
    start({});
}

Journey::Journey(std::shared_ptr<Disk> disk, std::function<void()> wake)
    : disk_(std::move(disk)), wake_(std::move(wake)), device_(device) {
    start({});
}

Journey::Journey(std::uint64_t number, std::filesystem::path crew, std::function<void()> wake)
    : wake_(std::move(wake)), device_(number) {
    folders.crew = std::move(crew);
    start({});
}

void Journey::start(std::optional<std::filesystem::path> job_opened) {
    AppOptions options;
    options.jobs_folder = folder.path();
    options.device = device_;
    // Every touch is later than the touch before.
    options.wall_ms = [this] { return wall_ms += 1000; };
    options.job = std::move(job_opened);
    options.ask_scale = ask_scale_;
    options.screen = scale_kept.value_or(ScreenScale{});
    if (options.screen.people.empty()) {
        options.screen.people = {{"Installer", Way::cut}};  // answered before the story begins
    }
    ask_scale_ = false;
    options.keep_scale = [this](const ScreenScale& scale) {
        scale_kept = scale;
        return std::optional<Problem>();
    };
    options.platform.copy = [this](const std::string& text) { copied = text; };
    options.keep_left_off = [this](const std::string& text) {
        left_off = text;
        return std::optional<Problem>();
    };
    options.disk = disk_;
    options.wake = wake_;
    options.folders = folders;
    options.hand_over =
        native_hand_over(folder.path(), device_, assets_read().practice, options.wall_ms, disk_);
    options.hand_over.keep = [this](const KeptFolders& kept) {
        folders = kept;
        return std::optional<Problem>();
    };
    app = std::make_unique<App>(assets_read(), options);
    screen = std::make_unique<Harness>(
        [this](Ui& ui) {
            ui.set_palette(app->palette());
            app->draw(ui);
        },
        w_, h_, px_per_mm_);
}

/// A thumb moves the list (for edges the one at the right of the page) until what it looks for
/// shows.
void Journey::scroll_to(std::string_view name) {
    constexpr int most = 400;
    for (int i = 0; i < most && !screen->has_target(name); ++i) {
        const Box page = screen->ui().page();
        float x = page.w * 0.8F, y = page.h * (page.h > page.w ? 0.6F : 0.7F);
        // What is asked on a walk is at the left of its keys, or above them.
        const auto& all = screen->ui().targets();
        const auto answer = std::find_if(all.begin(), all.end(), [](const Target& target) {
            return target.name.rfind("kind ", 0) == 0 || target.name.rfind("corner ", 0) == 0;
        });
        if (where().screen == Screen::walk && answer != all.end()) {
            x = answer->box.mid_x();
            y = answer->box.mid_y();
        }
        screen->drag_from(x, y, 0, i < most / 2 ? -15.0F : 15.0F);
    }
}

/// In whatever language it is said.
bool Journey::roof_doubts() const {
    const std::string said = screen->ui().in_words(
        say("The roof says {1}, within {2}: this is {3} more.", "#", "#", "#"));
    return shows(*this, said.substr(0, said.find('#')));
}

/// Keys of the screen's own pads are typed.
void Journey::press_by_key(std::string_view name) {
    constexpr int most = 400;
    for (const std::string_view pad : {"digit ", "letter "}) {
        if (name.rfind(pad, 0) == 0 && name.size() == pad.size() + 1) {
            return screen->type(name.substr(pad.size()));
        }
    }
    for (int i = 0; i < most; ++i) {
        const std::optional<Target> on = screen->ui().focus();
        if (on && on->name == name) {
            return screen->press(Key::enter);
        }
        screen->press(Key::tab);
    }
    FAIL("the focus never came to " << std::string(name));
}

void Journey::read_on(std::string_view name) {
    constexpr int pages_most = 20;
    for (int i = 0; i < pages_most && !screen->has_target(name) && screen->has_target("below");
         ++i) {
        screen->tap("below");
        ++touches;
    }
}

void Journey::tap(std::string_view name) {
    if (by_keyboard) {
        press_by_key(name);
        ++touches;
        return;
    }
    if (where().screen == Screen::gate || name.rfind("accept ", 0) == 0 ||
        name.rfind("open ", 0) == 0) {
        scroll_to(name);
    }
    if ((name.rfind("edge ", 0) == 0 && where().screen == Screen::roof) ||
        name.rfind("ask ", 0) == 0 || name.rfind("rule ", 0) == 0 || name.rfind("hem ", 0) == 0) {
        scroll_to(name);
    }
    const bool scrolls = where().screen == Screen::walk || where().screen == Screen::roof ||
                         where().screen == Screen::panels || where().screen == Screen::tablet;
    if (scrolls && !screen->has_target(name)) {
        scroll_to(name);
    }
    read_on(name);
    const std::size_t before = state().events.size();
    screen->tap(name);
    ++touches;
    if (state().events.size() != before && on_event) {
        on_event();
    }
    if (on_screen) {
        on_screen();
    }
    // Journeys read lengths of their own: where the demo's roof says otherwise, the thumb insists.
    if (name == "keep" && where().screen == Screen::reading && state().events.size() == before &&
        roof_doubts() && !insists_) {
        insists_ = true;
        tap(name);
        insists_ = false;
    }
}

void Journey::tap_all(const std::vector<std::string>& names) {
    for (const std::string& name : names) {
        tap(name);
    }
}

void Journey::key_in(Length length) {
    if (by_keyboard) {
        screen->type(print_length(length, Marks::sixteenth) + "\n");
        return;
    }
    const LengthParts parts = take_apart(length, Marks::sixteenth);
    REQUIRE_MESSAGE(nearest_on(length, sixteenths(1)) == length, "the keys have no finer mark");
    if (parts.feet > 0) {
        for (const char letter : std::to_string(parts.feet)) {
            tap(digit(letter));
        }
    }
    tap("field inches");
    tap("inches " + std::to_string(parts.inches));
    if (parts.numerator > 0) {
        const int n = static_cast<int>(parts.numerator * 16 / parts.denominator);
        if (n % 2 == 0 || screen->has_target("sixteenths " + std::to_string(n))) {
            tap("sixteenths " + std::to_string(n));
        } else {  // a low screen has eighths, and a key for a sixteenth more
            tap("sixteenths " + std::to_string(n - 1));
            tap("a sixteenth more");
        }
    }
}

void Journey::key_in(std::int64_t count) {
    for (const char letter : std::to_string(count)) {
        tap(digit(letter));
    }
}

void Journey::read_edge(const std::string& edge, Length first, Length second,
                        const std::string& pitch) {
    tap("edge " + edge);
    key_in(first);
    tap("keep");
    key_in(second);
    tap("keep");
    REQUIRE(where().screen == Screen::pitch);
    for (const char letter : pitch) {
        tap(letter == '.' ? std::string("point") : digit(letter));
    }
    tap("keep");
}

void Journey::check_off() {
    const Person before{state().by, state().way};
    const bool handed_on = before.way != Way::tick_off;
    const auto way = [](Way to) { return "way " + std::string(word_of(to)); };
    if (handed_on) {
        tap_all({"tick", way(Way::tick_off), "name Foreman"});
    }
    for (const EdgeValue& value : not_accepted(values_on(state(), work(where().edge)))) {
        tap("accept " + value.key);
    }
    tap("tick");
    if (handed_on) {
        tap_all({"by", way(before.way), "name " + before.name});
    }
}

void Journey::pass_gate() {
    for (const char* check : {"anchors", "ladder", "wires", "wind", "wet", "heat"}) {
        tap("yes " + std::string(check));
    }
    tap("watcher");
    tap_all({"letter B", "letter E", "send"});
    if (hospital_known(state()).empty()) {
        tap_all({"hospital", "letter E", "letter L", "letter M", "send"});
    }
    tap("go up");
    if (where().screen == Screen::asked_once) {
        tap("go on");
    }
}

void Journey::answer(const Step& step) {
    read_on("");
    if (screen->has_target("all so")) {
        return tap("all so");
    }
    if (screen->has_target("key in")) {
        tap("key in");
    }
    if (step.rule->asks == Asks::length) {
        key_in(step.length_least.value_or(Length()));
    } else if (step.rule->asks == Asks::count) {
        key_in(step.count_least.value_or(0));
    }
    switch (step.rule->asks) {
        case Asks::cut:
            return tap("to card");
        case Asks::remainder:
            return tap("to reading");
        case Asks::tick:
            return check_off();
        case Asks::side:
            return tap("answer left");
        default:
            return tap("answer");
    }
}

void Journey::do_next() {
    const std::string edge = where().edge;
    switch (where().screen) {
        case Screen::card:
            tap("cut");
            break;
        case Screen::gate:
            pass_gate();
            break;
        case Screen::steps:
            answer(step(edge));
            break;
        case Screen::reading: {
            REQUIRE(where().reading_of == ReadingOf::remainder);
            const Run* const run = find_run(state().plan, edge, TrimRole::main);
            REQUIRE(run != nullptr);
            key_in(run->pieces.back().covers - run->lap + remainder_off);
            tap("keep");
            break;
        }
        default:
            FAIL("nothing to do here but to go elsewhere");
    }
}

void Journey::finish_edge(const std::string& edge) {
    for (int i = 0; i < 500 && status(edge) != EdgeStatus::finished; ++i) {
        do_next();
    }
    REQUIRE(status(edge) == EdgeStatus::finished);
}

void Journey::reach_step(const std::string& edge, std::string_view step_id, int piece) {
    for (int i = 0; i < 500; ++i) {
        const std::vector<Step> steps = steps_on(state(), work(edge));
        const auto at = next_on(state(), steps);
        if (where().screen == Screen::steps) {
            read_on("");
        }
        if (at && screen->has_target("all so")) {
            for (const std::size_t row : confirmed_with(steps, *at)) {
                const Step& one = steps[row];
                if (one.rule->id == step_id && (piece == 0 || one.piece == piece)) {
                    return tap("open " + one.rule->id + " " + std::to_string(one.piece));
                }
            }
        }
        const Step next = step(edge);
        if (where().screen != Screen::gate && next.rule->id == step_id &&
            (piece == 0 || next.piece == piece)) {
            return;
        }
        do_next();
    }
    FAIL("that step never came");
}

void Journey::reach_card(const std::string& edge, TrimRole role, int piece) {
    for (int i = 0; i < 500; ++i) {
        const Where& at = where();
        if (at.screen == Screen::card && at.edge == edge && at.role == role && at.piece == piece) {
            return;
        }
        do_next();
    }
    FAIL("that card never came");
}

void Journey::start_again() {
    const std::filesystem::path folder_of_job = job();
    screen.reset();
    app.reset();
    start(folder_of_job);
}

void Journey::kill() {
    const std::string kept = left_off;
    screen.reset();
    app.reset();
    start({});
    app->go_back_to(kept);
    screen->frames();
}

const EdgeWork& Journey::work(std::string_view edge) const {
    const EdgeWork* const found = edge_of(state(), edge);
    REQUIRE(found != nullptr);
    return *found;
}

EdgeStatus Journey::status(std::string_view edge) const { return status_on(state(), work(edge)); }

Step Journey::step(std::string_view edge) const {
    const std::vector<Step> steps = steps_on(state(), work(edge));
    const std::string singly = app->left_off().drafts.step.singly;
    const auto opened = std::find_if(steps.begin(), steps.end(), [&](const Step& step) {
        return !step.done && step.rule->id + " " + std::to_string(step.piece) == singly;
    });
    const auto next = next_on(state(), steps);
    REQUIRE(next.has_value());
    return opened == steps.end() ? steps[*next] : *opened;
}

std::filesystem::path Journey::job() const {
    const std::vector<std::filesystem::path> jobs = *list_jobs(folder.path());
    REQUIRE(jobs.size() == 1);
    return jobs.front();
}

bool shows(const Journey& crew, std::string_view part) {
    const auto& said = crew.screen->ui().words();
    return std::any_of(said.begin(), said.end(),
                       [&](const Words& one) { return one.words.find(part) != std::string::npos; });
}

const Run& run_on(const Journey& crew, std::string_view edge) {
    const Run* const run = find_run(crew.state().plan, edge, TrimRole::main);
    REQUIRE(run != nullptr);
    return *run;
}

void reach_section(Journey& crew) {
    crew.tap("demo");
    crew.read_edge("C", eave_c_length, eave_c_length, "5");
    crew.reach_card("C", TrimRole::main, 1);
    crew.tap_all({"folded", "section"});
    REQUIRE(crew.where().screen == Screen::section);
}

double processor_s() { return static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

}  // namespace hemline
