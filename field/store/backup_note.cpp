#include "field/store/backup_note.h"

#include <sstream>

#include "engine/words/result.h"
#include "field/store/job_folder.h"
#include "field/store/whole_file.h"

namespace hemline {

namespace {

constexpr std::int64_t minute_ms = 60'000, hour_ms = 60 * minute_ms, day_ms = 24 * hour_ms;

std::filesystem::path note_file(const std::filesystem::path& job) { return job / ".backup"; }

/// With a clock that was set back it says "just now", not a time in the future.
Text age_words(std::int64_t age_ms) {
    if (age_ms < 2 * minute_ms) {
        return say("just now");
    }
    if (age_ms < 2 * hour_ms) {
        return say_count("{1} minute ago", "{1} minutes ago", age_ms / minute_ms);
    }
    return age_ms < 2 * day_ms ? say_count("{1} hour ago", "{1} hours ago", age_ms / hour_ms)
                               : say_count("{1} day ago", "{1} days ago", age_ms / day_ms);
}

}  // namespace

std::optional<BackupNote> read_backup_note(const std::filesystem::path& job) {
    constexpr std::size_t note_size_most = 64;
    const Result<Bytes> bytes = read_file(note_file(job), note_size_most);
    if (!bytes) {
        return {};
    }
    std::istringstream text(std::string(bytes->begin(), bytes->end()));
    BackupNote note;
    return text >> note.wall_ms >> note.events ? std::optional(note) : std::nullopt;
}

std::optional<Problem> write_backup_note(Disk& disk, const std::filesystem::path& job,
                                         const BackupNote& note) {
    const std::string line =
        std::to_string(note.wall_ms) + " " + std::to_string(note.events) + "\n";
    return write_whole_file(disk, note_file(job), Bytes(line.begin(), line.end()));
}

Text words_on(const std::optional<BackupNote>& note, std::int64_t now_ms, std::size_t events_now) {
    if (!note) {
        return say("Never backed up to a file.");
    }
    const Text age = age_words(now_ms - note->wall_ms);
    if (events_now > note->events) {
        const auto since = static_cast<std::int64_t>(events_now - note->events);
        return say_count("Last backup {2}; what came since is not in it: {1} entry.",
                         "Last backup {2}; what came since is not in it: {1} entries.", since, age);
    }
    return say("Last backup {1}; all is in it.", age);
}

}  // namespace hemline
