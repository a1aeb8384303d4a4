// What a program that was killed had written and not synced yet: made to last before it is called
// saved.
#pragma once

#include <filesystem>
#include <optional>

#include "engine/words/result.h"
#include "field/store/disk.h"

namespace hemline {

/// Syncs every journal in the folder, and the folder. A journal whose sync fails is written anew
/// beside and moved into its place, for a second sync may pass over what the first has lost.
/// Problem: that fails too.
std::optional<Problem> make_journals_last(Disk& disk, const std::filesystem::path& folder);

}  // namespace hemline
