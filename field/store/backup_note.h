// When a job was last backed up to a file from this tablet, and how much it held then.
//
//   JOB/.backup    "1767225600000 41": Unix time in milliseconds, events
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>

#include "engine/words/result_declared.h"
#include "engine/words/text.h"
#include "field/store/disk.h"

namespace hemline {

struct BackupNote {
    std::int64_t wall_ms = 0;
    std::size_t events = 0;
};

/// Empty where there was no backup, or the note cannot be read.
std::optional<BackupNote> read_backup_note(const std::filesystem::path& job);
/// Problem: it cannot be written; the note is as it was.
std::optional<Problem> write_backup_note(Disk& disk, const std::filesystem::path& job,
                                         const BackupNote& note);

/// "Last backup 3 days ago; 12 entries since are not in it.", for people.
Text words_on(const std::optional<BackupNote>& note, std::int64_t now_ms, std::size_t events_now);

}  // namespace hemline
