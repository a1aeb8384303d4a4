#include "tools/bench_frames/live.h"

#include <SDL.h>
#include <imgui.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <atomic>
#include <chrono>
#include <fstream>
#include <mutex>
#include <optional>
#include <sstream>
#include <thread>

#include "engine/words/result.h"
#include "field/app/app.h"
#include "field/shell/sdl_events.h"
#include "field/shell/window.h"
#include "field/store/clock.h"

namespace hemline {

namespace {

using Clock = std::chrono::steady_clock;
constexpr float window_w = 1280, window_h = 800;
/// From the roof and back: a reading is keyed in and kept, and undone.
constexpr std::array<const char*, 9> round = {"edge A", "digit 4", "back", "digit 6", "keep",
                                              "leave",  "history", "undo", "leave"};

/// Shared by the window's thread, which draws, and the hand's, which touches.
struct Meeting {
    std::mutex lock;
    std::vector<Target> targets;
    std::optional<Clock::time_point> edge_asked;  ///< when a touch or a lift was sent
    bool edge_down = false;                       ///< which of them
    bool edge_seen = false;                       ///< the app has drawn itself with it
    std::vector<double> took_ms;
    std::atomic<int> presented = 0;
    std::atomic<bool> closed = false;  ///< the window is gone, or never came
};

void drawn(Meeting& meeting, const Ui& ui) {
    const std::scoped_lock hold(meeting.lock);
    meeting.targets = ui.targets();
    if (meeting.edge_asked && ImGui::GetIO().MouseDown[0] == meeting.edge_down) {
        meeting.edge_seen = true;
    }
}

void presented(Meeting& meeting) {
    const std::scoped_lock hold(meeting.lock);
    ++meeting.presented;
    if (meeting.edge_asked && meeting.edge_seen) {
        meeting.took_ms.push_back(
            std::chrono::duration<double, std::milli>(Clock::now() - *meeting.edge_asked).count());
        meeting.edge_asked.reset();
    }
}

/// Sends a touch or lift and waits until it has been presented.
bool send(Meeting& meeting, bool down, Box box) {
    SDL_Event event{};
    event.type = down ? SDL_FINGERDOWN : SDL_FINGERUP;
    event.tfinger.touchId = 1;
    event.tfinger.x = box.mid_x() / window_w;
    event.tfinger.y = box.mid_y() / window_h;
    {
        const std::scoped_lock hold(meeting.lock);
        meeting.edge_asked = Clock::now();
        meeting.edge_down = down;
        meeting.edge_seen = false;
    }
    SDL_PushEvent(&event);
    const auto late = Clock::now() + std::chrono::seconds(2);
    for (;;) {
        {
            const std::scoped_lock hold(meeting.lock);
            if (!meeting.edge_asked) {
                return true;
            }
        }
        if (Clock::now() > late) {
            return false;
        }
        std::this_thread::sleep_for(std::chrono::microseconds(200));
    }
}

/// A tap as long as a person's: 30 to 90 ms, and a pause after it.
bool tap(Meeting& meeting, const std::string& name, int turn) {
    std::optional<Box> box;
    {
        const std::scoped_lock hold(meeting.lock);
        for (const Target& target : meeting.targets) {
            if (target.name == name) {
                box = target.box;
            }
        }
    }
    if (!box || !send(meeting, true, *box)) {
        return false;
    }
    std::this_thread::sleep_for(std::chrono::milliseconds(30 + turn * 7 % 61));
    const bool lifted = send(meeting, false, *box);
    std::this_thread::sleep_for(std::chrono::milliseconds(90 + turn * 11 % 47));
    return lifted;
}

long cpu_ticks() {
    std::ifstream stat("/proc/self/stat");
    std::string line;
    std::getline(stat, line);
    std::istringstream after(line.substr(line.rfind(')') + 2));
    std::string skipped;
    for (int i = 0; i < 11; ++i) {  // state is field 3, utime 14
        after >> skipped;
    }
    long user = 0;
    long system = 0;
    after >> user >> system;
    return user + system;
}

void measure_memory(LiveFigures& figures) {
    std::ifstream smaps("/proc/self/smaps_rollup");
    std::string line;
    while (std::getline(smaps, line)) {
        std::istringstream words(line);
        std::string name;
        long kb = 0;
        words >> name >> kb;
        if (name == "Private_Clean:" || name == "Private_Dirty:") {
            figures.private_kb += kb;
        } else if (name == "Pss:") {
            figures.pss_kb = kb;
        }
    }
}

void touch_and_rest(Meeting& meeting, LiveFigures& figures, int touches, int idle_seconds) {
    while (meeting.presented < 3) {
        if (meeting.closed) {
            return;
        }
        std::this_thread::sleep_for(std::chrono::milliseconds(20));
    }
    if (!tap(meeting, "demo", 0)) {
        figures.wrong = "there is no demo to tap";
        return;
    }
    meeting.took_ms.clear();
    for (int i = 0; i < touches; ++i) {
        const std::string name = round.at(static_cast<std::size_t>(i) % round.size());
        if (!tap(meeting, name, i)) {
            figures.wrong = "\"" + name + "\" is not there, or its touch was never drawn";
            return;
        }
        if (name == "keep" || name == "undo") {
            figures.saving_ms.push_back(meeting.took_ms.back());  // of its lift, which saves
        }
    }
    figures.touch_ms = meeting.took_ms;
    std::sort(figures.touch_ms.begin(), figures.touch_ms.end());
    std::sort(figures.saving_ms.begin(), figures.saving_ms.end());
    std::this_thread::sleep_for(std::chrono::milliseconds(700));
    measure_memory(figures);
    const int frames = meeting.presented;
    const long ticks = cpu_ticks();
    std::this_thread::sleep_for(std::chrono::seconds(idle_seconds));
    figures.idle_ticks = cpu_ticks() - ticks;
    figures.idle_frames = meeting.presented - frames;
}

}  // namespace

LiveFigures run_live(const Assets& assets, const std::filesystem::path& jobs_folder, int touches,
                     int idle_seconds) {
    AppOptions options;
    options.screen.people = {{"Installer", Way::cut}};
    options.jobs_folder = jobs_folder;
    options.device = 1;
    options.wall_ms = wall_ms;
    options.wake = wake_window;
    App app(assets, std::move(options));
    Meeting meeting;
    LiveFigures figures;
    WindowOptions window;
    window.presented = [&] { presented(meeting); };
    window.may_close = [&] { return app.settle(); };
    const Scene scene{.draw =
                          [&](Ui& ui) {
                              app.draw(ui);
                              drawn(meeting, ui);
                          },
                      .palette = [&]() -> const Palette& { return app.palette(); }};
    std::thread hand([&] {
        touch_and_rest(meeting, figures, touches, idle_seconds);
        if (meeting.closed) {
            return;
        }
        SDL_Event quit{};
        quit.type = SDL_QUIT;
        SDL_PushEvent(&quit);
    });
    const std::optional<Problem> problem = show_window(window, scene);
    meeting.closed = true;
    hand.join();
    if (problem) {
        figures.wrong = problem->what.english();
    }
    return figures;
}

}  // namespace hemline
