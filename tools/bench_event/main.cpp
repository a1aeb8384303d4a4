// bench_event: what an event costs, from the touch that makes it to the disk and to the next plan.
//
//   build/native/bench_event [FOLDER]    saves in FOLDER, on the disk that is to be measured
#include <unistd.h>

#include <cstdio>
#include <filesystem>
#include <string>
#include <thread>

#include "engine/words/result.h"
#include "field/app/demo.h"
#include "field/store/assets.h"
#include "field/store/folders.h"
#include "tools/bench_event/replanning.h"
#include "tools/bench_event/saving.h"

namespace {

using namespace hemline;

constexpr int saves = 500, edges = 70;

void tell(const char* what, const Times& times) {
    std::printf("%-46s median %8.3f ms   p99 %8.3f ms   of %zu\n", what, times.at(50), times.at(99),
                times.rising.size());
    std::fflush(stdout);
}

/// A touch has 33 ms until its frame (RAIL: 50 ms until something is seen); planning may take half
/// of that.
bool tell_within(const char* what, const Times& times, double limit) {
    tell(what, times);
    const bool fine = times.at(99) <= limit;
    std::printf("%-46s p99 at most %.0f ms: %s\n", "", limit, fine ? "fine" : "OVER");
    return fine;
}

int fail(const Problem& problem) {
    std::fprintf(stderr, "bench_event: %s %s\n", problem.what.english().c_str(),
                 problem.mend.english().c_str());
    return 1;
}

}  // namespace

int main(int count, char** words) {
    if (count > 2) {
        std::fprintf(stderr, "usage: bench_event [FOLDER]\n");
        return 2;
    }
    const Result<std::filesystem::path> assets_in = assets_folder();
    const Result<Assets> assets = assets_in ? read_assets(*assets_in) : assets_in.problem();
    const Result<DemoRoof> demo = assets ? read_demo(assets->catalogue) : assets.problem();
    if (!demo) {
        return fail(demo.problem());
    }
    double load = 0;
    getloadavg(&load, 1);
    std::printf("load of the machine at the start %.1f, of %u cores\n", load,
                std::thread::hardware_concurrency());
    const std::filesystem::path folder =
        (count == 2 ? std::filesystem::path(words[1]) : std::filesystem::temp_directory_path()) /
        ("hemline-bench-" + std::to_string(getpid()));
    std::filesystem::create_directories(folder);
    const Result<SavingTimes> saving = time_saving(folder, saves);
    std::filesystem::remove_all(folder);
    if (!saving) {
        return fail(saving.problem());
    }
    tell("bare write + fdatasync", saving->bare);
    tell("append, whole: id, frame, write, fdatasync", saving->append);
    std::printf("%-46s median %8.2f x\n", "append / bare",
                saving->append.at(50) / saving->bare.at(50));
    bool fine = tell_within("append handed to the saver, on the UI's thread", saving->hand_over, 1);
    fine = tell_within("replan after an event, demo roof (CPU)",
                       replan_after_each_event(demo->edges, assets->catalogue, assets->practice),
                       16) &&
           fine;
    fine = tell_within(
               "replan after an event, 70 invented edges (CPU)",
               replan_after_each_event(invented_edges(edges), assets->catalogue, assets->practice),
               16) &&
           fine;
    return fine ? 0 : 1;
}
