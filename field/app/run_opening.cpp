// Opens a job: an existing one, a new job, one taken in, or a job that goes on in another folder.
#include "engine/words/result.h"
#include "field/app/app.h"
#include "field/app/demo.h"
#include "field/store/folders.h"
#include "field/store/job_carrying.h"
#include "field/store/job_lock.h"
#include "field/store/new_job.h"
#include "field/store/writer.h"

namespace hemline {

namespace {

namespace fs = std::filesystem;

/// The job exists, but its disk takes nothing more.
bool may_go_on_elsewhere(const fs::path& folder) {
    const Result<bool> is_job = holds_journals(folder);
    return is_job && *is_job && (!look_into(folder).can_write || is_free(folder));
}

}  // namespace

void App::open_for(const Result<fs::path>& named, const OpenedFor& what_for) {
    if (!settle()) {
        return;
    }
    const auto opened = named ? JournalFile::open(*named, options_.device, Opening::either,
                                                  options_.disk, options_.wake)
                              : Result<std::shared_ptr<JournalFile>>(named.problem());
    if (!opened) {
        const bool stuck = named && state().outside.there && may_go_on_elsewhere(*named);
        tell(news::NotOpened{opened.problem(), journal_ == nullptr,
                             stuck ? std::optional(*named) : std::nullopt, what_for});
        return;
    }
    crew_.stop();
    journal_ = *opened;
    const JobRecord& record = journal_->record();
    tell(news::Opened{++openings_, record, journal_->device(), read_backup_note(record.folder),
                      what_for});
}

/// A job already open here is locked against a second opening.
void App::run(const deed::Open& deed) {
    const OpenedFor what_for =
        deed.left ? OpenedFor(opened_for::GoingBack{deed.left}) : OpenedFor(opened_for::Touch{});
    std::error_code not_there;
    if (journal_ && fs::equivalent(journal_->record().folder, deed.folder, not_there)) {
        tell(news::OpenAlready{what_for});
    } else {
        open_for(deed.folder, what_for);
    }
}

void App::run(const deed::OpenNew& deed) {
    open_for(new_job_folder(options_.jobs_folder, deed.name), opened_for::NewJob{deed.name});
}

void App::run(const deed::OpenDemo& deed) {
    const Result<DemoRoof> demo = read_demo(state().assets->catalogue);
    if (!demo) {
        tell(news::Told{said(demo.problem())});
        return;
    }
    if (!settle()) {
        return;
    }
    const Result<fs::path> folder = new_job_folder(options_.jobs_folder, demo->name);
    const Result<Text> written = folder
                                     ? write_new_job(*options_.disk, *folder, facts_of(*demo),
                                                     deed.by, options_.device, options_.wall_ms())
                                     : Result<Text>(folder.problem());
    if (written) {
        open_for(*folder, opened_for::Demo{});
    } else {
        tell(news::NotWritten{written.problem()});
    }
}

void App::run(const deed::Close& /*deed*/) {
    crew_.stop();
    journal_.reset();
}

void App::run(const deed::TakeNewNumber& /*deed*/) {
    if (!journal_) {
        return;
    }
    const fs::path folder = journal_->record().folder;
    crew_.stop();
    const Result<std::uint64_t> number = new_writer(*options_.disk, folder, options_.device);
    if (!number) {
        tell(news::NumberRefused{number.problem()});
        return;
    }
    journal_.reset();
    open_for(folder, opened_for::NewNumber{});
}

void App::run(const deed::GoOnIn& deed) {
    const bool is_open = journal_ && journal_->record().folder == deed.job;
    const Result<WentOn> there = options_.hand_over.go_on_in(
        deed.job, deed.folder, is_open ? journal_->refused() : std::nullopt);
    if (there) {
        open_for(there->job, opened_for::OtherFolder{*there});
    } else {
        tell(news::Told{said(there.problem())});
    }
}

void App::run(const deed::TakeIn& deed) {
    if (!settle()) {
        return;
    }
    if (deed.by_hand) {
        take_in_by_hand(deed);
    } else if (state().saving == Saving::under_way) {
        tell(news::Told{say("Something is still being saved. Open the file again in a moment.")});
    } else {
        take_in_file(deed);
    }
}

/// Closes the open job first, since the file may belong to it.
void App::take_in_by_hand(const deed::TakeIn& deed) {
    const std::optional<fs::path> was =
        journal_ ? std::optional(journal_->record().folder) : std::nullopt;
    crew_.stop();
    journal_.reset();
    const news::JobsListed jobs = listed(deed.elsewhere);
    const HandOver& deeds = options_.hand_over;
    const Result<TakenIn> taken = jobs.problem ? Result<TakenIn>(*jobs.problem)
                                  : deed.job.empty()
                                      ? deeds.take_file(deed.file, jobs.jobs)
                                      : deeds.join_crew_job(deed.crew, deed.job, jobs.jobs);
    if (taken || was) {
        open_for(taken ? taken->job : *was, opened_for::TakenIn{taken});
    } else {
        tell(news::NotTakenIn{taken.problem(), true});
    }
}

void App::take_in_file(const deed::TakeIn& deed) {
    const Result<Journals> journals = read_job_file(deed.file);
    if (!journals) {
        tell(news::NotTakenIn{journals.problem()});
        return;
    }
    const std::optional<fs::path> was =
        journal_ ? std::optional(journal_->record().folder) : std::nullopt;
    journal_.reset();  // it may be the job that the file belongs to
    const news::JobsListed jobs = listed(deed.elsewhere);
    const Result<TakenIn> taken = jobs.problem
                                      ? Result<TakenIn>(*jobs.problem)
                                      : take_in_journals(*options_.disk, *journals, jobs.jobs,
                                                         options_.jobs_folder, options_.device);
    if (taken || was) {
        open_for(taken ? taken->job : *was,
                 opened_for::TakenIn{taken, deed.file.filename().string()});
    } else {
        tell(news::NotTakenIn{taken.problem()});
    }
}

}  // namespace hemline
