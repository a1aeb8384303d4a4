// How the app is started: on which device, with which disk, clock and platform.
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>

#include "field/app/handing_over.h"
#include "field/app/platform.h"
#include "field/state/state.h"
#include "field/store/disk.h"
#include "field/store/screen_scale.h"
#include "field/theme/theme.h"

namespace hemline {

struct AppOptions {
    std::filesystem::path jobs_folder;  ///< where new jobs go and old ones are listed from
    std::uint64_t device = 0;
    std::function<std::int64_t()> wall_ms;     ///< Unix time in milliseconds
    std::optional<std::filesystem::path> job;  ///< opened at the start
    Light light = Light::day;
    float px_per_mm = px_per_mm_unknown;  ///< of window pixels
    bool ask_scale = false;               ///< the scale is not known, and nobody put off measuring
    ScreenScale screen;                   ///< what this device saved about its screen
    /// Saves it on this device; may be empty.
    std::function<std::optional<Problem>(const ScreenScale&)> keep_scale;
    /// Keeps on this device where the program is and what is half keyed in, each time that it
    /// changes; may be empty.
    std::function<std::optional<Problem>(const std::string&)> keep_left_off;
    HandOver hand_over;  ///< empty where there are no folders to choose from
    KeptFolders folders;
    std::shared_ptr<Disk> disk = std::make_shared<Disk>();
    /// Called on another thread when a save has returned or a plan was found, which draw() then
    /// takes up. Empty: there is no other thread, and each save is waited for.
    std::function<void()> wake;
    Platform platform;
    Promised promised = Promised::lasts;
};

}  // namespace hemline
