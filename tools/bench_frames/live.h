// The real app in a real window, with a hand that touches it and a stopwatch.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "field/store/assets.h"

namespace hemline {

struct LiveFigures {
    int idle_frames = 0;            ///< presented in the idle seconds
    long idle_ticks = 0;            ///< of CPU in them, of sysconf(_SC_CLK_TCK) a second
    std::vector<double> touch_ms;   ///< touch to submitted frame, sorted
    std::vector<double> saving_ms;  ///< of them, the lifts that keep or undo a reading
    long private_kb = 0, pss_kb = 0;
    std::string wrong;  ///< why there are no figures; empty when there are
};

/// Opens the demo in `jobs_folder`, keeps readings and undoes them in `touches` touches, then
/// rests.
LiveFigures run_live(const Assets& assets, const std::filesystem::path& jobs_folder, int touches,
                     int idle_seconds);

}  // namespace hemline
