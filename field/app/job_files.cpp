// A job out into a file, and one in from a file.
#include "field/app/app.h"
#include "field/store/clock.h"
#include "field/store/folders.h"
#include "field/store/job_carrying.h"
#include "field/store/job_folder.h"

namespace hemline {

namespace fs = std::filesystem;

void App::back_up() {
    if (!journal_ || !settle()) {
        return;
    }
    const fs::path job = journal_->record().folder;
    std::error_code error;
    const fs::path folder = fs::temp_directory_path(error) / "hemline-backup";
    fs::create_directories(folder, error);
    Disk scratch;  // what lies here is only on its way
    const std::int64_t now = options_.wall_ms();
    const Result<FilePut> put = hemline::put_into_file(scratch, job, folder, assets_.practice, now);
    const Result<Bytes> bytes = put ? read_file(put->file) : Result<Bytes>(put.problem());
    fs::remove_all(folder, error);
    if (!bytes) {
        state_.notice = said(bytes.problem());
        return;
    }
    if (!give(put->file.filename().string(), "application/zip", *bytes)) {
        return;
    }
    being_given_ = BackupNote{now, put->events};
    if (!options_.platform.gives_later) {
        note_backup();
    }
}

/// The backup that was given is one only now.
void App::note_backup() {
    if (!journal_ || !being_given_) {
        return;
    }
    backup_ = std::exchange(being_given_, std::nullopt);
    if (const auto problem =
            write_backup_note(*options_.disk, journal_->record().folder, *backup_)) {
        add_notice(say("That it was made could not be noted. {1}", said(*problem)));
    }
    note_backup_age();
}

void App::given(const std::optional<Problem>& problem) {
    if (problem) {
        being_given_.reset();
        state_.notice = said(*problem);
        return;
    }
    state_.notice = say("Handed over.");
    note_backup();
}

void App::take_file(const fs::path& file) {
    if (!settle()) {
        return;
    }
    if (state_.saving == Saving::under_way) {
        state_.notice = say("Something is still being saved. Open the file again in a moment.");
        return;
    }
    const Result<Journals> journals = read_job_file(file);
    if (!journals) {
        state_.notice = said(journals.problem());
        return;
    }
    const std::optional<fs::path> was =
        journal_ ? std::optional(journal_->record().folder) : std::nullopt;
    const Where where = state_.where;
    journal_.reset();  // it may be the job that the file is of
    const std::optional<Problem> unlisted = list_jobs();
    const Result<TakenIn> taken = unlisted
                                      ? Result<TakenIn>(*unlisted)
                                      : take_in_journals(*options_.disk, *journals, state_.jobs,
                                                         options_.jobs_folder, options_.device);
    if (!taken) {
        if (was && open_journal(*was)) {
            go(where);
        }
        state_.notice = said(taken.problem());
        return;
    }
    open_job(taken->job);
    if (!journal_) {
        return;
    }
    const std::string name = file.filename().string();
    add_notice(say_count("{2} is taken in: {1} new entry.", "{2} is taken in: {1} new entries.",
                         static_cast<std::int64_t>(taken->new_events), name));
    add_notice(taken->is_new ? say("It was not on this tablet before.")
                             : say("The rest was here already."));
    add_notice(taken->said);
    wait_for_whole();
}

/// Of files put in place: a page keeps them later.
void App::wait_for_whole() {
    if (options_.platform.keeps_later) {
        whole_under_way_ = true;
        state_.saving = Saving::under_way;
        state_.saved = say("saving");
    }
}

void App::kept_whole(const std::optional<Problem>& problem) {
    if (!std::exchange(whole_under_way_, false)) {
        if (problem) {
            state_.notice = said(*problem);
        }
        return;
    }
    if (!problem) {
        if (under_way_.empty()) {
            state_.saving = Saving::saved;
            state_.saved = say("saved {1}", clock_time(wall_time(state_.events.back())));
        }
        return;
    }
    journal_.reset();
    under_way_.clear();
    state_.events.clear();
    compute();
    go({Place::jobs, {}});
    state_.saving = Saving::failed;
    state_.saved = say("not saved");
    state_.notice = say("The job file is not taken in. {1}", said(*problem));
}

void App::note_backup_age() {
    state_.backed_up =
        journal_ ? words_on(backup_, options_.wall_ms(), state_.events.size()) : Text();
}

}  // namespace hemline
