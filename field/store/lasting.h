// Syncs what a killed program had written and not synced yet, before it is called saved.
#pragma once

#include <filesystem>
#include <optional>

#include "engine/words/result_declared.h"
#include "field/store/disk.h"

namespace hemline {

/// Syncs every journal in the folder, and the folder. A journal whose sync fails is written again
/// beside it and moved into its place, because a second sync may report success without what the
/// first lost. Problem: that fails too.
std::optional<Problem> make_journals_last(Disk& disk, const std::filesystem::path& folder);

}  // namespace hemline
