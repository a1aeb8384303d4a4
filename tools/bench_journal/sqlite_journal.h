// The same commits in SQLite, as a yardstick: WAL, synchronous FULL, one transaction an event.
#pragma once

#include <filesystem>
#include <vector>

#include "engine/record/event_bytes.h"

namespace hemline {

/// Milliseconds for each frame as a row of its own, committed before the next.
std::vector<double> commit_in_sqlite(const std::filesystem::path& file,
                                     const std::vector<Bytes>& frames);

/// Milliseconds to fill a new database in one transaction (not timed) and read all rows back.
double read_from_sqlite(const std::filesystem::path& file, const std::vector<Bytes>& frames);

/// Milliseconds to put the rows of three databases into one, each row once.
double merge_in_sqlite(const std::filesystem::path& folder,
                       const std::vector<std::vector<Bytes>>& journals);

}  // namespace hemline
