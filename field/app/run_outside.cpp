// What lies outside the open job: lists of jobs, the crew folder, folders and files.
#include <algorithm>

#include "engine/words/result.h"
#include "field/app/app.h"
#include "field/store/folder_view.h"
#include "field/store/folders.h"
#include "field/store/job_folder.h"

namespace hemline {

namespace {

namespace fs = std::filesystem;

/// Ids, as the crew folder names them, of the jobs that are on this tablet.
std::vector<std::string> ids_of(const std::vector<fs::path>& jobs) {
    std::vector<std::string> ids;
    for (const fs::path& job : jobs) {
        const Result<JobRecord> record = read_job_folder(job);
        for (const Event& event : record ? record->events : std::vector<Event>()) {
            if (std::holds_alternative<JobStarted>(event.fact)) {
                ids.push_back(print_event_id(event.id));
            }
        }
    }
    return ids;
}

}  // namespace

/// Problem: there may be more jobs.
news::JobsListed App::listed(const std::vector<fs::path>& elsewhere) const {
    const Result<std::vector<fs::path>> here = list_jobs(options_.jobs_folder);
    news::JobsListed all;
    if (here) {
        all.jobs = *here;
    } else {
        all.problem = here.problem();
    }
    for (const fs::path& job : elsewhere) {
        const Result<bool> is_job = holds_journals(job);
        if (!is_job || *is_job) {
            all.jobs.push_back(job);
        }
    }
    return all;
}

void App::run(const deed::ListJobs& deed) { tell(listed(deed.elsewhere)); }

void App::run(const deed::LookOutside& deed) {
    news::OutsideSeen seen;
    if (deed.kept.hand_over) {
        if (const auto files = job_files_in(*deed.kept.hand_over)) {
            seen.files = *files;
        } else {
            seen.problems.push_back(files.problem());
        }
    }
    if (deed.kept.crew) {
        if (const auto jobs = options_.hand_over.in_crew(*deed.kept.crew)) {
            seen.in_crew = *jobs;
        } else {
            seen.problems.push_back(jobs.problem());
        }
    }
    const news::JobsListed jobs = listed(deed.kept.jobs);
    const std::vector<std::string> here = ids_of(jobs.jobs);
    const auto is_here = [&](const JobInCrew& job) {
        return std::find(here.begin(), here.end(), job.id) != here.end();
    };
    seen.in_crew.erase(std::remove_if(seen.in_crew.begin(), seen.in_crew.end(), is_here),
                       seen.in_crew.end());
    tell(seen);
    tell(jobs);
}

void App::run(const deed::FindFolders& deed) {
    const StartingFolders places = starting_folders();
    const fs::path home = places.folders.empty() ? fs::path("/") : places.folders.front();
    std::error_code error;
    const bool there = deed.used && fs::is_directory(*deed.used, error);
    tell(news::FoldersFound{places.folders, look_into(there ? *deed.used : home), places.problem});
}

void App::run(const deed::LookIntoFolder& deed) { tell(news::FolderSeen{look_into(deed.folder)}); }

void App::run(const deed::PutJobIntoFile& deed) {
    if (journal_ && settle()) {
        tell(news::PutIntoFileDone{options_.hand_over.put_into_file(
            journal_->record().folder, deed.folder, journal_->refused(), page_words())});
    }
}

void App::run(const deed::KeepFolders& deed) {
    if (const auto problem = options_.hand_over.keep(deed.kept)) {
        tell(news::Added{said(*problem)});
    }
}

void App::run(const deed::Carry& deed) {
    if (!journal_) {
        return;
    }
    const JobRecord& record = journal_->record();
    if (crew_.is_started()) {
        crew_.give(record.events);
    } else {
        crew_.start({deed.crew, record.folder, journal_->device()}, options_.disk, record.events);
    }
}

void App::run(const deed::StopCarrying& /*deed*/) { crew_.stop(); }

/// Not while something is being saved: the save wakes the screen again when it returns.
void App::hear_crew() {
    if (session_.open && !session_.open->under_way.empty()) {
        return;
    }
    const std::optional<CrewNews> news = crew_.news();
    if (!news || !journal_) {
        return;
    }
    news::CrewCarried carried{openings_, news->taken_in.size(), news->given_out, news->problem,
                              news->number_used_elsewhere};
    carried.now_ms = news->problem ? 0 : options_.wall_ms();
    if (carried.taken_in > 0) {
        journal_->take_in(news->taken_in);
        carried.events = journal_->record().events;
    }
    tell(carried);
}

}  // namespace hemline
