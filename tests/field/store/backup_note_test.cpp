// How old the last backup is, in words, and the note that it is known by.
#include "field/store/backup_note.h"

#include <doctest/doctest.h>

#include "engine/words/result.h"
#include "field/store/whole_file.h"
#include "tests/field/store/temporary_folder.h"

using namespace hemline;

namespace {
constexpr std::int64_t minute = 60'000, hour = 60 * minute, day = 24 * hour, now = 100 * day;
}

TEST_CASE("A note is read as it was written, and none or a spoiled one is no backup") {
    TemporaryFolder job;
    Disk disk;
    CHECK_FALSE(read_backup_note(job.path()).has_value());
    CHECK_FALSE(write_backup_note(disk, job.path(), {1'767'225'600'123, 41}).has_value());
    const auto note = read_backup_note(job.path());
    REQUIRE(note.has_value());
    CHECK(note->wall_ms == 1'767'225'600'123);
    CHECK(note->events == 41);
    CHECK_FALSE(write_whole_file(disk, job.path() / ".backup", Bytes{'x', ' ', '1'}).has_value());
    CHECK_FALSE(read_backup_note(job.path()).has_value());
}

TEST_CASE("The age of a backup is said in plain words, with what is not in it") {
    CHECK(words_on({}, now, 3) == "Never backed up to a file.");
    CHECK(words_on(BackupNote{now, 3}, now, 3) == "Last backup just now; all is in it.");
    CHECK(words_on(BackupNote{now + day, 3}, now, 3) == "Last backup just now; all is in it.");
    CHECK(words_on(BackupNote{now - 2 * minute, 3}, now, 4) ==
          "Last backup 2 minutes ago; what came since is not in it: 1 entry.");
    CHECK(words_on(BackupNote{now - 119 * minute, 3}, now, 3) ==
          "Last backup 119 minutes ago; all is in it.");
    CHECK(words_on(BackupNote{now - 2 * hour, 3}, now, 15) ==
          "Last backup 2 hours ago; what came since is not in it: 12 entries.");
    CHECK(words_on(BackupNote{now - 47 * hour, 3}, now, 3) ==
          "Last backup 47 hours ago; all is in it.");
    CHECK(words_on(BackupNote{now - 2 * day, 3}, now, 3) ==
          "Last backup 2 days ago; all is in it.");
}
