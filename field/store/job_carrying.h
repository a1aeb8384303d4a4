// Jobs sent as files, and taken in: into the job that is here already, or as a new job.
#pragma once

#include <filesystem>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "engine/handover/page_words.h"
#include "engine/record/merge.h"
#include "engine/trim/practice.h"
#include "engine/words/result_declared.h"
#include "field/store/disk.h"

namespace hemline {

/// The ending of a job file's name. It is a zip file, and opens as such.
constexpr const char* job_file_ending = ".hemline.zip";

struct FilePut {
    std::filesystem::path file;
    std::size_t events = 0, bytes = 0;
};
/// Puts the job into FOLDER/JOB DATE TIME.hemline.zip, a name not used yet; local time. `refused`
/// (JournalFile::refused()) is left out; `words`: of its page for people (pages_of). Problem: it
/// cannot be read, packed or written.
Result<FilePut> put_into_file(Disk& disk, const std::filesystem::path& job,
                              const std::filesystem::path& folder, const Practice& practice,
                              std::int64_t wall_ms, std::optional<EventId> refused = {},
                              const std::optional<PageWords>& words = {});

/// The job files in a folder, the latest name first. Problem: it cannot be listed.
Result<std::vector<std::filesystem::path>> job_files_in(const std::filesystem::path& folder);

struct TakenIn {
    std::filesystem::path job;
    bool is_new = false;         ///< it was not on this tablet
    std::size_t new_events = 0;  ///< that were not here
    Text said;                   ///< about remains of an earlier try; mostly empty
};
/// Takes journals into that job of `jobs` which began with the same event, or into a new folder in
/// `jobs_folder`. `tablet`: this tablet's number. Not while that job is open. Problem: the journals
/// hold no job's beginning, one of the `jobs` that they may belong to cannot be read, or a folder
/// cannot be written; what was there is still there.
Result<TakenIn> take_in_journals(Disk& disk, const Journals& journals,
                                 const std::vector<std::filesystem::path>& jobs,
                                 const std::filesystem::path& jobs_folder, std::uint64_t tablet);

/// A job whose disk takes nothing more goes on in a new folder in `folder`: everything saved of it
/// is copied there, except `refused` (JournalFile::refused()). The old folder stays as it is.
/// Problem: it cannot be read or written.
struct WentOn {
    std::filesystem::path job;
    Text said;  ///< about remains of an earlier try; mostly empty
};
Result<WentOn> go_on_in(Disk& disk, const std::filesystem::path& job,
                        const std::filesystem::path& folder, std::uint64_t tablet,
                        std::optional<EventId> refused = {});

/// What a job file holds. Problem: names the file, says what is wrong with it and what to do.
Result<Journals> read_job_file(const std::filesystem::path& file);

/// The name the job began with; empty when its beginning is not there.
std::string name_of_job(const Journals& journals);

}  // namespace hemline
