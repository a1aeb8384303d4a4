#include "field/store/crew_folder.h"

#include <algorithm>
#include <system_error>

#include "engine/record/descent.h"
#include "engine/record/frame.h"
#include "engine/record/job.h"
#include "engine/words/result.h"
#include "field/store/disk_problem.h"
#include "field/store/drafts.h"
#include "field/store/listing.h"
#include "field/store/segment_name.h"
#include "field/store/whole_file.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

/// Without it a job could be joined but never carried, because nothing says which job it is.
bool holds_beginning(const Journals& journals, const std::string& job) {
    const std::optional<EventId> id = parse_event_id(job);
    const auto device = id ? journals.of_device.find(id->device) : journals.of_device.end();
    if (device == journals.of_device.end()) {
        return false;
    }
    const std::vector<FrameAt> frames = read_frames(device->second).frames;
    return std::any_of(frames.begin(), frames.end(),
                       [&](const FrameAt& frame) { return frame.id == *id; });
}

/// More than any job on any roof: a million events.
constexpr std::size_t job_in_crew_most = std::size_t{128} << 20;

/// A limit on beginnings: each beginning's folder gets the whole job, so a file that names
/// thousands would fill the disk.
constexpr std::size_t starts_most = 32;

/// The ids of the job's beginnings: one, unless jobs that were begun separately were merged.
void add_starts(const std::vector<Event>& events, std::set<EventId>& starts) {
    for (const Event& event : events) {
        if (std::holds_alternative<JobStarted>(event.fact) && starts.size() < starts_most) {
            starts.insert(event.id);
        }
    }
}

}  // namespace

Result<std::vector<std::string>> jobs_in_crew(const fs::path& crew) {
    const Result<std::vector<std::string>> names = names_in(crew);
    if (!names) {
        return names;
    }
    std::vector<std::string> jobs;
    for (const std::string& name : *names) {
        if (!parse_event_id(name)) {
            continue;
        }
        const Result<There> there = what_is(crew / name, Links::refused);
        if (!there) {
            return there.problem();
        }
        if (*there == There::folder) {
            jobs.push_back(name);
        }
    }
    return jobs;
}

Result<Journals> journals_in_crew(const fs::path& crew, const std::string& job) {
    const auto listed = segments_in(crew / job);
    if (!listed) {
        return listed.problem();
    }
    std::set<Bytes> frames;
    std::size_t size = 0;
    for (const auto& [name, stamp] : *listed) {
        const auto bytes = read_segment(crew / job / name, *parse_segment_name(name));
        const FramesRead read = bytes ? read_frames(*bytes) : FramesRead{};
        for (const FrameAt& frame : read.frames) {
            const bool is_new = frames.emplace(frame.bytes.begin(), frame.bytes.end()).second;
            size += is_new ? frame.bytes.size() : 0;
        }
        if (size > job_in_crew_most) {
            return Problem{say("The crew folder holds more than {1} MiB of job {2}: no job is as "
                               "large.",
                               job_in_crew_most >> 20U, shown(job)),
                           say("Look at what lies there, and who put it there.")};
        }
    }
    Merge merge;
    for (const Bytes& frame : frames) {
        merge.add(0, frame);
    }
    Journals journals = merge.journals();
    if (!holds_beginning(journals, job)) {
        return Problem{
            say("The crew folder does not hold the beginning of job {1} whole yet.", shown(job)),
            say("Wait until the synchronizer is done, or look at the folder's path.")};
    }
    return journals;
}

CrewFolder::CrewFolder(fs::path crew, fs::path job, std::shared_ptr<Disk> disk)
    : crew_(std::move(crew)), job_(std::move(job)), disk_(std::move(disk)) {}

std::vector<fs::path> CrewFolder::folders() const {
    std::vector<fs::path> folders;
    for (const auto& [start, shelf] : shelves_) {
        folders.push_back(shelf.folder);
    }
    return folders;
}

Carried CrewFolder::carry(const std::vector<Event>& events, std::uint64_t writer) {
    Carried carried;
    std::set<EventId> starts;
    add_starts(events, starts);
    if (starts.empty()) {
        carried.problem =
            Problem{say("The beginning of this job is not here: it cannot be told which it is."),
                    say("Merge it with another tablet's copy first.")};
        return carried;
    }
    CrewIntake intake(*disk_, job_, writer);
    carried.problem = take_in_all(starts, intake);
    carried.taken_in = intake.taken_in();
    carried.number_used_elsewhere = intake.number_used_elsewhere();
    if (carried.problem || carried.number_used_elsewhere) {
        return carried;
    }
    std::vector<Event> with_new;
    if (!carried.taken_in.empty()) {
        with_new = events;
        with_new.insert(with_new.end(), carried.taken_in.begin(), carried.taken_in.end());
    }
    const std::vector<Event>& all = with_new.empty() ? events : with_new;
    Giving giving{all, first_numbers_twice(all), writer, {}};
    const auto is_own_segment = [&](std::string_view name) {
        const auto segment = parse_segment_name(name);
        return segment && segment->writer == writer;
    };
    for (auto& [start, shelf] : shelves_) {
        sweep_drafts(*disk_, shelf.folder, Sweeping::locked, is_own_segment);
        carried.problem = carried.problem ? carried.problem : give_out(shelf, giving);
    }
    carried.given_out = giving.given.size();
    return carried;
}

/// From the folder of each beginning, and of the beginnings named by what came in.
std::optional<Problem> CrewFolder::take_in_all(std::set<EventId> starts, CrewIntake& intake) {
    for (std::set<EventId> done; done != starts;) {
        for (const EventId start : std::set<EventId>(starts)) {
            if (!done.insert(start).second) {
                continue;
            }
            Shelf& shelf = shelves_[start];
            shelf.folder = crew_ / print_event_id(start);
            const std::optional<Problem> problem = take_in(shelf, intake);
            if (problem || intake.number_used_elsewhere()) {
                shelf = {shelf.folder, {}, {}};  // not all was taken in: it is read again
                return problem;
            }
        }
        add_starts(intake.taken_in(), starts);
    }
    return {};
}

std::optional<Problem> CrewFolder::take_in(Shelf& shelf, CrewIntake& intake) {
    const auto listed = segments_in(shelf.folder);
    if (!listed) {
        return listed.problem();
    }
    const bool holds_less =
        std::any_of(shelf.seen.begin(), shelf.seen.end(), [&](const auto& before) {
            const auto now = listed->find(before.first);
            return before.second.whole &&
                   (now == listed->end() || now->second != before.second.stamp);
        });
    if (holds_less) {  // a segment was deleted or overwritten since
        shelf = {shelf.folder, {}, {}};
    }
    for (const auto& [name, stamp] : *listed) {
        const auto before = shelf.seen.find(name);
        if (before != shelf.seen.end() && before->second.stamp == stamp) {
            continue;
        }
        const auto bytes = read_segment(shelf.folder / name, *parse_segment_name(name));
        const FramesRead read = bytes ? read_frames(*bytes) : FramesRead{};
        if (auto problem = intake.add(read.frames)) {
            return problem;
        }
        if (intake.number_used_elsewhere()) {
            return {};
        }
        for (const FrameAt& frame : read.frames) {
            shelf.holds[frame.id].insert(header_at(frame.bytes).crc);
        }
        shelf.seen[name] = {stamp, bytes.has_value()};
        if (auto problem = intake.is_full() ? intake.append() : std::nullopt) {
            return problem;
        }
    }
    return intake.append();
}

std::optional<Problem> CrewFolder::give_out(Shelf& shelf, Giving& giving) {
    Bytes segment;
    for (std::size_t place = 0; place < giving.events.size(); ++place) {
        const Event& event = giving.events[place];
        const auto held = shelf.holds.find(event.id);
        const auto doubled = giving.twice.find(event.id.device);
        const bool may_differ =
            doubled != giving.twice.end() && event.id.sequence >= doubled->second;
        if (held != shelf.holds.end() && !may_differ) {
            continue;
        }
        const Bytes frame = frame_of(event);
        if (held != shelf.holds.end() && held->second.count(header_at(frame).crc) > 0) {
            continue;
        }
        segment.insert(segment.end(), frame.begin(), frame.end());
        giving.given.insert(place);
        if (segment.size() > segment_full) {
            if (auto problem = write_segment(shelf, segment, giving.writer)) {
                return problem;
            }
            segment.clear();
        }
    }
    return segment.empty() ? std::nullopt : write_segment(shelf, segment, giving.writer);
}

std::optional<Problem> CrewFolder::write_segment(Shelf& shelf, const Bytes& segment,
                                                 std::uint64_t writer) {
    std::error_code error;
    fs::create_directories(shelf.folder, error);
    if (error) {
        return disk_problem(phrase("created"), shelf.folder, error.value());
    }
    const auto listed = segments_in(shelf.folder);
    if (!listed) {
        return listed.problem();
    }
    SegmentName name{writer, 1, crc32_of(segment)};
    for (const auto& [other, stamp] : *listed) {
        const SegmentName parsed = *parse_segment_name(other);
        if (parsed.writer == writer) {
            name.number = std::max(name.number, parsed.number + 1);
        }
    }
    const std::string file = print_segment_name(name);
    if (auto problem = write_whole_file(*disk_, shelf.folder / file, segment)) {
        return problem;
    }
    for (const FrameAt& frame : read_frames(segment).frames) {
        shelf.holds[frame.id].insert(header_at(frame.bytes).crc);
    }
    if (const auto now = segments_in(shelf.folder); now && now->count(file) > 0) {
        shelf.seen[file] = {now->at(file), true};
    }
    return {};
}

}  // namespace hemline
