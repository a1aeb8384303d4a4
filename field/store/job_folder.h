// Reads a job's folder: every device's journal in it, as a single list of events.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "engine/record/event_bytes.h"
#include "engine/words/result_declared.h"
#include "field/store/listing.h"

namespace hemline {

/// A stretch of a journal that holds no event, and the file that keeps its bytes.
struct FileSetAside {
    std::filesystem::path file;
    SetAside stretch;
    std::filesystem::path kept_in;  ///< the journal, or the file it was moved to
};

/// A sentence for people: what was set aside, why, and where it is kept.
Text explain(const FileSetAside& set_aside);

struct JobRecord {
    std::filesystem::path folder;
    std::vector<Event> events;  ///< of all devices, in_order()
    std::vector<FileSetAside> set_aside;
};

/// Reads without a lock and writes nothing. `job`: the folder, or a .journal file in it. Problem:
/// no such folder, no journal in it, or a journal that cannot be read; a link is not followed.
Result<JobRecord> read_job_folder(const std::filesystem::path& job);

/// The .journal files of a job, and the .bytes files with what was set aside in it, by name.
/// Problem: no such folder, or no journal in it.
Result<std::vector<std::filesystem::path>> job_files(const std::filesystem::path& job);

constexpr std::size_t file_size_most = std::size_t{256} << 20;

/// All bytes of a regular file. Problem: it cannot be opened or read to its end, or is larger than
/// `size_most`.
Result<Bytes> read_file(const std::filesystem::path& file, std::size_t size_most = file_size_most,
                        Links links = Links::followed);

/// The .journal files in a folder, by name. Problem: there is no such folder, or it cannot be
/// listed.
Result<std::vector<std::filesystem::path>> journals_in(const std::filesystem::path& folder);

/// Whether there is a folder with a .journal file in it. Problem: it cannot be told.
Result<bool> holds_journals(const std::filesystem::path& folder);

}  // namespace hemline
