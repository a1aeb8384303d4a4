#include "field/store/job_carrying.h"

#include <algorithm>
#include <ctime>
#include <set>
#include <system_error>

#include "engine/handover/job_file.h"
#include "engine/handover/job_pages.h"
#include "engine/record/job.h"
#include "field/store/crew_folder.h"
#include "field/store/disk_problem.h"
#include "field/store/file_name.h"
#include "field/store/folders.h"
#include "field/store/job_folder.h"
#include "field/store/job_merge.h"
#include "field/store/segment_name.h"
#include "field/store/whole_file.h"

namespace hemline {

namespace {

namespace fs = std::filesystem;

std::vector<Event> events_of(const Journals& journals) {
    std::vector<Event> events;
    for (const auto& [device, bytes] : journals.of_device) {
        for (Event& event : read_journal(bytes).events) {
            events.push_back(std::move(event));
        }
    }
    return in_order(std::move(events));
}

std::set<EventId> beginnings(const std::vector<Event>& events) {
    std::set<EventId> found;
    for (const Event& event : events) {
        if (std::holds_alternative<JobStarted>(event.fact)) {
            found.insert(event.id);
        }
    }
    return found;
}

std::string minute_of(std::int64_t wall_ms) {
    const std::time_t seconds = static_cast<std::time_t>(wall_ms / 1000);
    std::tm local{};
    localtime_r(&seconds, &local);
    char text[32];
    return std::string(text, std::strftime(text, sizeof text, "%Y-%m-%d %H%M", &local));
}

bool ends_with(const std::string& name, std::string_view ending) {
    return name.size() > ending.size() &&
           name.compare(name.size() - ending.size(), ending.size(), ending) == 0;
}

}  // namespace

Result<FilePut> put_into_file(Disk& disk, const fs::path& job, const fs::path& folder,
                              const Practice& practice, std::int64_t wall_ms) {
    const fs::path jobs[] = {job};
    const Result<Journals> journals = gather_journals(jobs);
    if (!journals) {
        return journals.problem();
    }
    const std::vector<Event> events = events_of(*journals);
    const Result<Bytes> bytes = pack_job(*journals, pages_of(events, practice));
    if (!bytes) {
        return bytes.problem();
    }
    const std::string name = file_name_of(job.filename().string()) + " " + minute_of(wall_ms);
    fs::path file = folder / (name + job_file_ending);
    std::error_code error;
    for (int number = 2; fs::exists(file, error); ++number) {
        file = folder / (name + "-" + std::to_string(number) + job_file_ending);
    }
    if (const auto problem = write_whole_file(disk, file, *bytes)) {
        return *problem;
    }
    return FilePut{file, events.size(), bytes->size()};
}

std::vector<fs::path> job_files_in(const fs::path& folder) {
    std::vector<fs::path> found;
    std::error_code error;
    for (fs::directory_iterator entry(folder, error), end; !error && entry != end;
         entry.increment(error)) {
        const std::string name = entry->path().filename().string();
        std::error_code unknown;
        // Senders shorten endings; a crew folder's segments are no job files.
        if ((ends_with(name, job_file_ending) || ends_with(name, ".hemline")) &&
            !parse_segment_name(name) && entry->is_regular_file(unknown)) {
            found.push_back(entry->path());
        }
    }
    std::sort(found.rbegin(), found.rend());
    return found;
}

Result<Journals> read_job_file(const fs::path& file) {
    const Result<Bytes> bytes = read_file(file, job_file_limits.file);
    if (!bytes) {
        return bytes.problem();
    }
    Result<Journals> journals = unpack_job(*bytes);
    if (!journals) {
        return Problem{
            say("{1} is not taken in. {2}", shown(file.filename()), journals.problem().what),
            journals.problem().mend};
    }
    return journals;
}

std::string name_of_job(const Journals& journals) { return replay(events_of(journals)).name; }

Result<TakenIn> take_in_journals(Disk& disk, const Journals& journals,
                                 const std::vector<fs::path>& jobs, const fs::path& jobs_folder,
                                 std::uint64_t tablet) {
    const std::vector<Event> events = events_of(journals);
    const std::set<EventId> begun = beginnings(events);
    if (begun.empty()) {
        return Problem{
            say("The beginning of this job is not in it: it cannot be told which it is."),
            say("Ask for a job file from the tablet on which the job was started.")};
    }
    TakenIn taken{{}, true, events.size()};
    std::size_t before = 0;
    for (const fs::path& job : jobs) {
        const Result<JobRecord> there = read_job_folder(job);
        const std::set<EventId> here = there ? beginnings(there->events) : std::set<EventId>();
        if (taken.is_new && std::any_of(begun.begin(), begun.end(),
                                        [&](EventId id) { return here.count(id) > 0; })) {
            taken = {job, false, 0};
            before = there->events.size();
        }
    }
    if (taken.is_new) {
        taken.job = new_job_folder(jobs_folder, replay(events).name);
    }
    if (const auto problem = merge_into(disk, taken.job, journals, tablet)) {
        return *problem;
    }
    const Result<JobRecord> now = read_job_folder(taken.job);
    if (!now) {
        return now.problem();
    }
    taken.new_events = now->events.size() - before;
    return taken;
}

Result<TakenIn> take_in_from_crew(Disk& disk, const fs::path& crew, const std::string& job,
                                  const fs::path& jobs_folder, std::uint64_t tablet) {
    const Result<Journals> journals = journals_in_crew(crew, job);
    return journals ? take_in_journals(disk, *journals, {}, jobs_folder, tablet)
                    : Result<TakenIn>(journals.problem());
}

Result<fs::path> go_on_in(Disk& disk, const fs::path& job, const fs::path& folder,
                          std::uint64_t tablet) {
    const fs::path jobs[] = {job};
    const Result<Journals> journals = gather_journals(jobs);
    if (!journals) {
        return journals.problem();
    }
    const fs::path there = new_job_folder(folder, job.filename().string());
    if (const auto problem = merge_into(disk, there, *journals, tablet)) {
        return *problem;
    }
    return there;
}

}  // namespace hemline
