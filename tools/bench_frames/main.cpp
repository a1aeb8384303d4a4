// bench_frames: what a frame costs, and what doing nothing costs. Needs a display; without one:
//
//   xvfb-run -a -s "-screen 0 1280x800x24" build/native/bench_frames
#include <unistd.h>

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <string>
#include <thread>
#include <vector>

#include "engine/words/result.h"
#include "field/store/folders.h"
#include "tools/bench_frames/first_paint.h"
#include "tools/bench_frames/live.h"

namespace {

using namespace hemline;

constexpr int starts = 9, touches = 300, idle_seconds = 10;

double median(std::vector<double> values) {
    std::sort(values.begin(), values.end());
    return values.empty() ? 0 : values[values.size() / 2];
}

double percentile(const std::vector<double>& sorted, int percent) {
    const std::size_t n = sorted.size();
    return n == 0 ? 0 : sorted[std::min(n - 1, n * static_cast<std::size_t>(percent) / 100)];
}

/// Prints a figure beside its limit. False when it is over.
bool tell(const char* what, double figure, double limit, const char* unit) {
    const bool fine = figure <= limit;
    std::printf("%-46s %8.1f %-5s limit %6.1f  %s\n", what, figure, unit, limit,
                fine ? "fine" : "OVER");
    return fine;
}

/// Both in turns, so that a busy moment falls on both. The first start of each, which reads the
/// disk, is not counted.
bool bench_first_paint(const std::filesystem::path& here, const std::filesystem::path& folder) {
    const std::filesystem::path mark = folder / "painted";
    std::vector<double> ours;
    std::vector<double> bare;
    for (int i = 0; i <= starts; ++i) {
        const auto a =
            first_paint_ms({(here / "hemline").string(), "--targets", mark.string()}, mark);
        const auto b =
            first_paint_ms({(here / "bench_frames").string(), "--bare", mark.string()}, mark);
        if (!a || !b) {
            std::printf("first paint: %s drew nothing within 10 s\n",
                        a ? "the bare window" : "hemline");
            return false;
        }
        if (i > 0) {
            ours.push_back(*a);
            bare.push_back(*b);
        }
    }
    std::printf("bare SDL2 + Dear ImGui window, median of %d      %6.1f ms\n", starts,
                median(bare));
    const bool fast = tell("first paint, median", median(ours), 300, "ms");
    return tell("first paint / bare window", median(ours) / median(bare), 1.5, "x") && fast;
}

bool bench_live(const Assets& assets, const std::filesystem::path& folder) {
    const LiveFigures live = run_live(assets, folder, touches, idle_seconds);
    if (!live.wrong.empty()) {
        std::printf("no figures: %s\n", live.wrong.c_str());
        return false;
    }
    std::printf(
        "touches and lifts timed                         %6zu (a panel adds up to one of its "
        "refreshes)\n",
        live.touch_ms.size());
    std::printf("touch to submitted frame, median                %6.1f ms\n",
                percentile(live.touch_ms, 50));
    bool fine =
        tell("touch to submitted frame, 99th percentile", percentile(live.touch_ms, 99), 33, "ms");
    std::printf("of them %zu that save an event: median           %6.1f ms\n",
                live.saving_ms.size(), percentile(live.saving_ms, 50));
    fine = tell("touch that saves to submitted frame, 99th pct.", percentile(live.saving_ms, 99),
                33, "ms") &&
           fine;
    fine = tell("frames drawn in 10 s at rest", live.idle_frames, 0, "") && fine;
    fine =
        tell("clock ticks of CPU in 10 s at rest", static_cast<double>(live.idle_ticks), 1, "") &&
        fine;
    std::printf("proportional memory (Pss)                       %6.1f MB\n",
                static_cast<double>(live.pss_kb) / 1024);
    return tell("private memory", static_cast<double>(live.private_kb) / 1024, 150, "MB") && fine;
}

}  // namespace

int main(int count, char** words) {
    if (count == 3 && std::string(words[1]) == "--bare") {
        return run_bare_window(words[2]);
    }
    if (count != 1) {
        std::fprintf(stderr, "usage: bench_frames\n");
        return 2;
    }
    const Result<std::filesystem::path> assets_in = assets_folder();
    const Result<Assets> assets = assets_in ? read_assets(*assets_in) : assets_in.problem();
    if (!assets) {
        std::fprintf(stderr, "bench_frames: %s %s\n", assets.problem().what.english().c_str(),
                     assets.problem().mend.english().c_str());
        return 1;
    }
    const std::filesystem::path here =
        std::filesystem::read_symlink("/proc/self/exe").parent_path();
    const std::filesystem::path folder =
        std::filesystem::temp_directory_path() / ("hemline-bench-" + std::to_string(getpid()));
    std::filesystem::create_directories(folder);
    setenv("XDG_DATA_HOME", folder.c_str(), 1);  // the programs started here write nowhere else
    double load = 0;
    getloadavg(&load, 1);
    std::printf(
        "load of the machine at the start                %6.1f (of %u cores; figures of a busy one "
        "say little)\n",
        load, std::thread::hardware_concurrency());
    const bool live = bench_live(*assets, folder / "jobs");
    const bool paint = bench_first_paint(here, folder);
    std::filesystem::remove_all(folder);
    return live && paint ? 0 : 1;
}
