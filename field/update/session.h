// What the program knows between two touches: what screens show, what is half keyed in, and what is
// still being done outside.
#pragma once

#include <cstdint>
#include <deque>
#include <filesystem>
#include <optional>

#include "field/state/left_off.h"
#include "field/state/state.h"
#include "field/store/backup_note.h"
#include "field/store/screen_scale.h"

namespace hemline {

/// A fact on its way to the disk, and where it was keyed in, in case it is not saved.
struct UnderWay {
    Fact fact;
    Where where;
    Drafts drafts;
    std::optional<Where> then;    ///< where it leads; none: what comes next on its edge
    bool tells_plan = true;       ///< announce what changes in the plan
    std::vector<Fact> rest = {};  ///< said by the same touch, and not handed over yet
    bool leaves_draft = false;    ///< as in Keep
};

/// The screen that is gone back to.
struct Aside {
    Where where;
    Drafts drafts;
    Text notice;
};

/// The job that is written to.
struct OpenedJob {
    int number = 0;  ///< which opening it is: news of an earlier opening comes too late
    std::filesystem::path folder;
    std::deque<UnderWay> under_way = {};  ///< handed over to be saved, the oldest first
    std::optional<BackupNote> backup = {};
    bool whole_under_way = false;  ///< it was put in place as a whole, and is being kept
};

struct Session {
    State state;
    Drafts drafts;
    std::vector<LeftAt> laid_aside;  ///< what is half keyed in on other screens, the latest last
    ScreenScale screen;              ///< the settings of this device, as saved
    bool night = false;              ///< dark ground
    float px_per_mm = 0;             ///< of window pixels
    std::uint64_t tablet = 0;
    bool keeps_later = false;  ///< files put in place are kept once the page says so
    std::optional<OpenedJob> open;
    std::optional<UnderWay> handing;  ///< asked to be saved, and not handed over yet
    std::optional<Aside> choosing;    ///< the screen from which another folder was to be chosen
    std::optional<Aside> unsigned_;   ///< something to be written, but nobody holds the tablet
    std::optional<BackupNote> being_given;
    int search = 0;  ///< number of the last search for better plans
};

}  // namespace hemline
