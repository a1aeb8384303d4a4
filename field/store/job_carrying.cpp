#include "field/store/job_carrying.h"

#include <algorithm>
#include <ctime>
#include <optional>
#include <set>
#include <utility>

#include "engine/handover/job_file.h"
#include "engine/handover/job_pages.h"
#include "engine/record/job.h"
#include "engine/words/result.h"
#include "field/store/disk_problem.h"
#include "field/store/drafts.h"
#include "field/store/file_name.h"
#include "field/store/folders.h"
#include "field/store/job_folder.h"
#include "field/store/job_merge.h"
#include "field/store/listing.h"
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

/// The job's journals without an event that was not saved but whose bytes may be in them.
Result<Journals> gather_saved(const fs::path& job, std::optional<EventId> refused) {
    const fs::path jobs[] = {job};
    const Result<Journals> gathered = gather_journals(jobs);
    if (!gathered || !refused) {
        return gathered;
    }
    Journals journals = *gathered;
    const Bytes all = std::exchange(journals.of_device[refused->device], {});
    for (const FrameAt& frame : read_frames(all).frames) {
        if (frame.id != *refused) {
            Bytes& kept = journals.of_device[refused->device];
            kept.insert(kept.end(), frame.bytes.begin(), frame.bytes.end());
        }
    }
    return journals;
}

std::string minute_of(std::int64_t wall_ms) {
    const std::time_t seconds = static_cast<std::time_t>(wall_ms / 1000);
    std::tm local{};
    localtime_r(&seconds, &local);
    char text[32];
    return std::string(text, std::strftime(text, sizeof text, "%Y-%m-%d %H%M", &local));
}

/// The job among these that began with one of those events. Problem: none did, but one of them
/// cannot be read: it may be that job, and a second copy would stay a separate job for ever.
Result<std::optional<fs::path>> job_begun_by(const std::set<EventId>& begun,
                                             const std::vector<fs::path>& jobs) {
    std::optional<Problem> unread;
    for (const fs::path& job : jobs) {
        const Result<JobRecord> record = read_job_folder(job);
        if (!record) {
            unread = record.problem();
            continue;
        }
        const std::set<EventId> here = beginnings(record->events);
        if (std::any_of(begun.begin(), begun.end(),
                        [&](EventId id) { return here.count(id) > 0; })) {
            return std::optional(job);
        }
    }
    if (unread) {
        unread->what = say("It cannot be told whether this job is here already. {1}", unread->what);
        return *unread;
    }
    return std::optional<fs::path>();
}

bool ends_with(std::string_view name, std::string_view ending) {
    return name.size() > ending.size() &&
           name.compare(name.size() - ending.size(), ending.size(), ending) == 0;
}

}  // namespace

Result<FilePut> put_into_file(Disk& disk, const fs::path& job, const fs::path& folder,
                              const Practice& practice, std::int64_t wall_ms,
                              std::optional<EventId> refused,
                              const std::optional<PageWords>& words) {
    const Result<Journals> journals = gather_saved(job, refused);
    if (!journals) {
        return journals.problem();
    }
    const std::vector<Event> events = events_of(*journals);
    const Result<Bytes> bytes = pack_job(*journals, pages_of(events, practice, words));
    if (!bytes) {
        return bytes.problem();
    }
    const std::string name = file_name_of(job.filename().string()) + " " + minute_of(wall_ms);
    const Result<fs::path> file = free_name(folder, name, job_file_ending);
    if (!file) {
        return file.problem();
    }
    sweep_drafts(disk, folder, Sweeping::shared,
                 [](std::string_view left) { return ends_with(left, job_file_ending); });
    if (const auto problem = write_whole_file(disk, *file, *bytes)) {
        return *problem;
    }
    return FilePut{*file, events.size(), bytes->size()};
}

Result<std::vector<fs::path>> job_files_in(const fs::path& folder) {
    const Result<std::vector<std::string>> names = names_in(folder);
    if (!names) {
        return names.problem();
    }
    std::vector<fs::path> found;
    for (auto name = names->rbegin(); name != names->rend(); ++name) {
        // Senders shorten endings; the segments of a crew folder are not job files.
        if ((!ends_with(*name, job_file_ending) && !ends_with(*name, ".hemline")) ||
            parse_segment_name(*name)) {
            continue;
        }
        // A file that cannot be read is listed too: taking it in says why.
        const Result<There> there = what_is(folder / *name);
        if (!there || *there == There::file) {
            found.push_back(folder / *name);
        }
    }
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
    const Result<std::optional<fs::path>> here = job_begun_by(begun, jobs);
    if (!here) {
        return here.problem();
    }
    std::size_t before = 0;
    if (*here) {
        const Result<JobRecord> record = read_job_folder(**here);
        if (!record) {
            return record.problem();
        }
        before = record->events.size();
    }
    const Result<fs::path> job =
        *here ? Result<fs::path>(**here) : new_job_folder(jobs_folder, replay(events).name);
    if (!job) {
        return job.problem();
    }
    const Result<Merged> merged = merge_into(disk, *job, journals, tablet);
    if (!merged) {
        return merged.problem();
    }
    const Result<JobRecord> now = read_job_folder(*job);
    if (!now) {
        return now.problem();
    }
    return TakenIn{*job, !*here, now->events.size() - before, merged->said};
}

Result<WentOn> go_on_in(Disk& disk, const fs::path& job, const fs::path& folder,
                        std::uint64_t tablet, std::optional<EventId> refused) {
    const Result<Journals> journals = gather_saved(job, refused);
    if (!journals) {
        return journals.problem();
    }
    const Result<fs::path> there = new_job_folder(folder, job.filename().string());
    if (!there) {
        return there.problem();
    }
    const Result<Merged> merged = merge_into(disk, *there, *journals, tablet);
    return merged ? Result<WentOn>(WentOn{*there, merged->said}) : merged.problem();
}

}  // namespace hemline
