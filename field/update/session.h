// What the program knows between two touches: what screens show, what is half keyed in, and what is
// under way outside.
#pragma once

#include <cstdint>
#include <deque>
#include <filesystem>
#include <optional>

#include "field/state/drafts.h"
#include "field/state/state.h"
#include "field/store/backup_note.h"
#include "field/store/screen_scale.h"

namespace hemline {

/// A fact on its way to the disk, and where it was keyed in, in case it is not saved.
struct UnderWay {
    Fact fact;
    Where where;
    Drafts drafts;
    std::optional<Where> then;  ///< where it leads; none: what comes next on its edge
    bool tells_plan = true;     ///< what changes in the plan is told
};

/// The screen that is gone back to.
struct Aside {
    Where where;
    Drafts drafts;
    Text notice;
};

/// The job that is written to.
struct OpenedJob {
    int number = 0;  ///< which opening it is: what comes of an earlier one comes too late
    std::filesystem::path folder;
    std::deque<UnderWay> under_way = {};  ///< handed over to be saved, the oldest first
    std::optional<BackupNote> backup = {};
    bool whole_under_way = false;  ///< it was put in place whole, and is being kept
};

struct Session {
    State state;
    Drafts drafts;
    ScreenScale screen;   ///< how this device is set, as it is kept
    bool night = false;   ///< dark ground
    float px_per_mm = 0;  ///< of window pixels
    std::uint64_t tablet = 0;
    bool keeps_later = false;  ///< what is put in place whole is kept only when the page says so
    std::optional<OpenedJob> open;
    std::optional<UnderWay> handing;  ///< asked to be saved, and not handed over yet
    std::optional<Aside> choosing;    ///< what the screen was when another folder was to be chosen
    std::optional<Aside> unsigned_;   ///< something was to be written, and nobody holds the tablet
    std::optional<BackupNote> being_given;
    int search = 0;  ///< which search for better plans is the last
};

}  // namespace hemline
