// What saving an event costs, beside the disk's share of it.
#pragma once

#include <filesystem>
#include <optional>

#include "engine/words/result.h"
#include "tools/bench_event/figures.h"

namespace hemline {

struct SavingTimes {
    Times append;     ///< JournalFile::append: id, frame, write, fdatasync
    Times bare;       ///< write + fdatasync of as many bytes to a separate file
    Times hand_over;  ///< what the drawing thread spends when the saver has a thread
};

/// `count` events of each, in turns, in a folder that is made and removed. Problem: the disk's.
Result<SavingTimes> time_saving(const std::filesystem::path& folder, int count);

}  // namespace hemline
