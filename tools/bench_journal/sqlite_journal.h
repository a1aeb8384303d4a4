// The same commits in SQLite, for comparison: WAL, synchronous FULL, one transaction for each
// event.
#pragma once

#include <filesystem>
#include <vector>

#include "engine/record/event_bytes.h"

namespace hemline {

/// Milliseconds for each frame as a separate row, committed before the next.
std::vector<double> commit_in_sqlite(const std::filesystem::path& file,
                                     const std::vector<Bytes>& frames);

/// Milliseconds to fill a new database in one transaction (not timed) and read all rows back.
double read_from_sqlite(const std::filesystem::path& file, const std::vector<Bytes>& frames);

/// Milliseconds to merge the rows of three databases, each row once.
double merge_in_sqlite(const std::filesystem::path& folder,
                       const std::vector<std::vector<Bytes>>& journals);

}  // namespace hemline
