#include "field/store/crew_folder.h"

#include <algorithm>
#include <cerrno>
#include <system_error>

#include <fcntl.h>

#include "engine/record/descent.h"
#include "engine/record/frame.h"
#include "engine/record/job.h"
#include "field/store/disk_problem.h"
#include "field/store/job_folder.h"
#include "field/store/listing.h"
#include "field/store/open_file.h"
#include "field/store/segment_name.h"
#include "field/store/torn_tail.h"
#include "field/store/whole_file.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t segment_most = std::size_t{64} << 20;

/// The names in one job's part of the crew folder; none where it is not there yet.
Result<std::vector<std::string>> names_of_job(const fs::path& folder) {
    const Result<There> there = what_is(folder, Links::refused);
    if (!there) {
        return there.problem();
    }
    if (*there == There::link) {
        return disk_problem(phrase("listed"), folder, ELOOP);
    }
    return *there == There::nothing ? std::vector<std::string>() : names_in(folder, Links::refused);
}

/// The segment's bytes when they are all there; nothing while a synchroniser still writes it.
std::optional<Bytes> read_segment(const fs::path& file, SegmentName name) {
    const Result<Bytes> bytes = read_file(file, segment_most, Links::refused);
    if (!bytes || crc32_of(*bytes) != name.crc) {
        return {};
    }
    return *bytes;
}

/// The ids of all the job's beginnings: one, unless jobs begun apart were merged.
std::set<EventId> starts_of(const std::vector<Event>& events) {
    std::set<EventId> starts;
    for (const Event& event : events) {
        if (std::holds_alternative<JobStarted>(event.fact)) {
            starts.insert(event.id);
        }
    }
    return starts;
}

/// Without it a job could be joined and never be carried: it is not known which it is.
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

/// Appends frames that a device's journal here lacks; gives them back.
Result<Bytes> append_missing(Disk& disk, const fs::path& file, const Bytes& frames) {
    std::set<Bytes> there;
    const Result<There> at_file = what_is(file, Links::refused);
    if (!at_file) {
        return at_file.problem();
    }
    const bool is_new = *at_file == There::nothing;
    if (!is_new) {
        const Result<Bytes> bytes = read_file(file, file_size_most, Links::refused);
        if (!bytes) {
            return bytes.problem();
        }
        const FramesRead read = read_frames(*bytes);
        for (const FrameAt& frame : read.frames) {
            there.emplace(frame.bytes.begin(), frame.bytes.end());
        }
        if (read.whole_size < bytes->size()) {
            const auto kept = move_torn_tail(
                disk, {file, {read.whole_size, bytes->size() - read.whole_size, ""}, file});
            if (!kept) {
                return kept.problem();
            }
        }
    }
    Bytes missing;
    for (const FrameAt& frame : read_frames(frames).frames) {
        if (there.emplace(frame.bytes.begin(), frame.bytes.end()).second) {
            missing.insert(missing.end(), frame.bytes.begin(), frame.bytes.end());
        }
    }
    if (missing.empty()) {
        return missing;
    }
    const OpenFile opened(disk.open(file, O_WRONLY | O_APPEND | O_CREAT));
    int failed = opened.is_open() ? write_all(disk, opened.get(), missing) : errno;
    if (failed == 0 && disk.sync(opened.get()) != 0) {
        failed = errno;
    }
    if (failed != 0) {
        return disk_problem(phrase("written"), file, failed);
    }
    if (const auto problem = is_new ? sync_folder(disk, file.parent_path()) : std::nullopt) {
        return *problem;
    }
    return missing;
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
    const Result<std::vector<std::string>> names = names_of_job(crew / job);
    if (!names) {
        return names.problem();
    }
    std::vector<Bytes> segments;
    for (const std::string& name : *names) {
        const auto parsed = parse_segment_name(name);
        if (auto bytes = parsed ? read_segment(crew / job / name, *parsed) : std::nullopt) {
            segments.push_back(std::move(*bytes));
        }
    }
    Merge merge;
    for (const Bytes& segment : segments) {
        merge.add(0, segment);
    }
    Journals journals = merge.journals();
    if (!holds_beginning(journals, job)) {
        return Problem{
            say("The crew folder does not hold the beginning of job {1} whole yet.", shown(job)),
            say("Wait until the synchroniser is done, or look at the folder's path.")};
    }
    return journals;
}

CrewFolder::CrewFolder(fs::path crew, fs::path job, std::shared_ptr<Disk> disk)
    : crew_(std::move(crew)), job_(std::move(job)), disk_(std::move(disk)) {}

Result<Carried> CrewFolder::carry(const std::vector<Event>& events, std::uint64_t writer) {
    const std::set<EventId> starts = starts_of(events);
    if (starts.empty()) {
        return Problem{say("The beginning of this job is not here: it cannot be told which it is."),
                       say("Merge it with another tablet's copy first.")};
    }
    folder_ = crew_ / print_event_id(*starts.begin());
    Carried carried;
    for (const EventId start : starts) {
        if (const auto problem = take_in(crew_ / print_event_id(start), writer, carried)) {
            return *problem;
        }
    }
    if (const auto problem = give_out(events, writer, carried)) {
        return *problem;
    }
    return carried;
}

std::optional<Problem> CrewFolder::take_in(const fs::path& from, std::uint64_t writer,
                                           Carried& carried) {
    const Result<std::vector<std::string>> all = names_of_job(from);
    if (!all) {
        return all.problem();
    }
    std::vector<Bytes> segments;
    std::vector<std::string> names;
    for (const std::string& name : *all) {
        const auto parsed = parse_segment_name(name);
        if (!parsed || read_.count((from / name).string()) > 0) {
            continue;
        }
        if (auto bytes = read_segment(from / name, *parsed)) {
            segments.push_back(std::move(*bytes));
            names.push_back((from / name).string());
        }
    }
    Merge merge;
    for (const Bytes& segment : segments) {
        merge.add(0, segment);
        for (const FrameAt& frame : read_frames(segment).frames) {
            has_[frame.id].insert(header_at(frame.bytes).crc);
        }
    }
    for (const auto& [device, frames] : merge.journals().of_device) {
        const fs::path file = job_ / (print_device(device) + ".journal");
        if (device == writer) {
            const Result<std::vector<fs::path>> journals = journals_in(job_);
            if (!journals) {
                return journals.problem();
            }
            std::set<Bytes> own;
            for (const fs::path& journal : *journals) {
                const Result<Bytes> bytes = read_file(journal, file_size_most, Links::refused);
                if (!bytes) {
                    return bytes.problem();
                }
                for (const FrameAt& frame : read_frames(*bytes).frames) {
                    own.emplace(frame.bytes.begin(), frame.bytes.end());
                }
            }
            for (const FrameAt& frame : read_frames(frames).frames) {
                carried.number_used_elsewhere =
                    carried.number_used_elsewhere ||
                    own.count(Bytes(frame.bytes.begin(), frame.bytes.end())) == 0;
            }
            continue;
        }
        const Result<Bytes> missing = append_missing(*disk_, file, frames);
        if (!missing) {
            return missing.problem();
        }
        for (Event& event : read_journal(*missing).events) {
            carried.taken_in.push_back(std::move(event));
        }
    }
    if (!carried.number_used_elsewhere) {
        read_.insert(names.begin(), names.end());
    }
    return {};
}

std::optional<Problem> CrewFolder::give_out(const std::vector<Event>& events, std::uint64_t writer,
                                            Carried& carried) {
    const auto twice = first_numbers_twice(events);
    Bytes segment;
    for (const Event& event : events) {
        const auto held = has_.find(event.id);
        const auto doubled = twice.find(event.id.device);
        const bool may_differ = doubled != twice.end() && event.id.sequence >= doubled->second;
        if (held != has_.end() && !may_differ) {
            continue;
        }
        const Bytes frame = frame_of(event);
        if (held != has_.end() && held->second.count(header_at(frame).crc) > 0) {
            continue;
        }
        segment.insert(segment.end(), frame.begin(), frame.end());
        ++carried.given_out;
        if (segment.size() > segment_most / 8) {
            if (auto problem = write_segment(segment, writer)) {
                return problem;
            }
            segment.clear();
        }
    }
    return segment.empty() ? std::nullopt : write_segment(segment, writer);
}

std::optional<Problem> CrewFolder::write_segment(const Bytes& segment, std::uint64_t writer) {
    std::error_code error;
    fs::create_directories(folder_, error);
    if (error) {
        return disk_problem(phrase("created"), folder_, error.value());
    }
    const Result<std::vector<std::string>> names = names_of_job(folder_);
    if (!names) {
        return names.problem();
    }
    SegmentName name{writer, 1, crc32_of(segment)};
    for (const std::string& other : *names) {
        const auto parsed = parse_segment_name(other);
        if (parsed && parsed->writer == writer) {
            name.number = std::max(name.number, parsed->number + 1);
        }
    }
    const fs::path file = folder_ / print_segment_name(name);
    if (auto problem = write_whole_file(*disk_, file, segment)) {
        return problem;
    }
    read_.insert(file.string());
    for (const FrameAt& frame : read_frames(segment).frames) {
        has_[frame.id].insert(header_at(frame.bytes).crc);
    }
    return {};
}

}  // namespace hemline
