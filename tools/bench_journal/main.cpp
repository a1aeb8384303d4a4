// What a journal costs: opening 100 000 events, appending one, merging three of 100 000, each
// beside SQLite doing the same on this disk in the same run.  bench_journal FOLDER: where to write.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <fstream>

#include <fcntl.h>
#include <unistd.h>

#include "engine/record/job.h"
#include "engine/require.h"
#include "engine/words/result.h"
#include "field/store/job_merge.h"
#include "field/store/journal_file.h"
#include "tools/bench_journal/sqlite_journal.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;
using Clock = std::chrono::steady_clock;

constexpr std::uint32_t events_many = 100'000;
constexpr int appends = 300;

double ms_since(Clock::time_point begun) {
    return std::chrono::duration<double, std::milli>(Clock::now() - begun).count();
}

double median(std::vector<double> ms) {
    std::sort(ms.begin(), ms.end());
    return ms[ms.size() / 2];
}

/// An invented device's events: readings, cuts and ticks of 200 edges; each supersedes the event
/// before it about the same thing.
std::vector<Event> invented_events(std::uint64_t device) {
    std::vector<Event> events;
    const auto add = [&](Fact fact, std::vector<EventId> supersedes = {}) {
        const auto number = static_cast<std::uint32_t>(events.size() + 1);
        events.push_back({{device, number},
                          {1'780'000'000'000 + number * 7, 0},
                          "Ada",
                          std::move(supersedes),
                          std::move(fact)});
    };
    add(JobStarted{"Invented roof", "common practice"});
    constexpr std::uint32_t edges = 200;
    for (std::uint32_t edge = 0; edge < edges; ++edge) {
        Edge added;
        added.id = print_device(device).substr(12) + "-" + std::to_string(edge);
        add(EdgeAdded{added});
    }
    for (std::uint32_t n = 0; events.size() < events_many; ++n) {
        const std::string edge = print_device(device).substr(12) + "-" + std::to_string(n % edges);
        const int piece = static_cast<int>(n / edges % 40) + 1;
        switch (n / edges % 5) {
            case 0:
                add(ReadingTaken{edge, ReadingOf::edge, feet(30) + sixteenths(n % 3)},
                    {{device, 1 + n % edges}});
                break;
            case 1:
                add(PieceCut{edge, TrimRole::main, piece, feet(9), {feet(10), {}}});
                break;
            default:
                add(StepDone{edge, "step " + std::to_string(n / edges % 17), piece, {}, "", ""});
        }
    }
    return events;
}

std::vector<Bytes> frames_of(const std::vector<Event>& events) {
    std::vector<Bytes> frames;
    for (const Event& event : events) {
        frames.push_back(frame_of(event));
    }
    return frames;
}

void write_journal(const fs::path& job, std::uint64_t device, const std::vector<Bytes>& frames) {
    fs::create_directories(job);
    std::ofstream out(job / (print_device(device) + ".journal"), std::ios::binary);
    for (const Bytes& frame : frames) {
        out.write(reinterpret_cast<const char*>(frame.data()),
                  static_cast<std::streamsize>(frame.size()));
    }
}

bool line(const char* what, double ours, double limit, const char* unit, double theirs) {
    std::printf("%-44s %9.2f %-4s (at most %7.2f) %s   SQLite %9.2f %s\n", what, ours, unit, limit,
                ours <= limit ? "ok  " : "MISS", theirs, unit);
    return ours <= limit;
}

bool open_many(const fs::path& folder, const std::vector<Bytes>& frames) {
    write_journal(folder / "open", 1, frames);
    std::vector<double> ms;
    for (int run = 0; run < 5; ++run) {
        const auto begun = Clock::now();
        const Result<JobRecord> record = read_job_folder(folder / "open");
        require(record.ok() && record->events.size() == events_many, "the journal opens whole");
        const Job job = replay(record->events);
        require(job.edges.size() == 200 && job.conflicts.empty(), "and folds");
        ms.push_back(ms_since(begun));
    }
    return line("open 100 000 events (read, check, order, fold)", median(ms), 500, "ms",
                read_from_sqlite(folder / "open.db", frames));
}

/// Ours, a bare write + fdatasync of the same bytes, and SQLite, one after the other each time, so
/// that all meet the same state of the disk.
bool append_one(const fs::path& folder) {
    const auto journal = *JournalFile::open(folder / "append", 7, Opening::new_job);
    const int bare = ::open((folder / "bare").c_str(), O_WRONLY | O_CREAT | O_APPEND, 0666);
    require(bare >= 0, "a bare file opens");
    std::vector<double> ours, theirs;
    std::vector<Bytes> same;
    for (int n = 0; n < appends; ++n) {
        auto begun = Clock::now();
        const auto event = journal->append(
            ReadingTaken{"edge " + std::to_string(n), ReadingOf::edge, feet(9)}, "Ada", {}, n);
        ours.push_back(ms_since(begun));
        require(event.ok(), "it is saved");
        same.push_back(frame_of(*event));
        begun = Clock::now();
        const Bytes& frame = same.back();
        require(::write(bare, frame.data(), frame.size()) == static_cast<ssize_t>(frame.size()) &&
                    ::fdatasync(bare) == 0,
                "it is written");
        theirs.push_back(ms_since(begun));
    }
    ::close(bare);
    const double bare_ms = median(theirs);
    const double sqlite = median(commit_in_sqlite(folder / "append.db", same));
    std::printf(
        "append: ours %.3f ms, bare write + fdatasync %.3f ms, SQLite commit %.3f ms (medians)\n",
        median(ours), bare_ms, sqlite);
    return line("append, times a bare write + fdatasync", median(ours) / bare_ms, 1.2, "x",
                sqlite / bare_ms);
}

bool merge_three(const fs::path& folder, const std::vector<std::vector<Bytes>>& journals) {
    std::vector<fs::path> jobs;
    for (std::size_t i = 0; i < journals.size(); ++i) {
        jobs.push_back(folder / ("merge" + std::to_string(i)));
        write_journal(jobs.back(), i + 1, journals[i]);
    }
    jobs.push_back(jobs.front());  // a repeat
    Disk disk;
    std::vector<double> ms;
    for (int run = 0; run < 3; ++run) {
        const fs::path out = folder / ("merged" + std::to_string(run));
        const auto begun = Clock::now();
        const Result<Journals> gathered = gather_journals(jobs);
        require(gathered.ok() && merge_into(disk, out, *gathered, 9).ok(), "they merge");
        ms.push_back(ms_since(begun));
        require(read_job_folder(out)->events.size() == 3 * events_many, "none is lost");
    }
    return line("merge three of 100 000 and one again, saved", median(ms), 1000, "ms",
                merge_in_sqlite(folder, journals));
}

}  // namespace
}  // namespace hemline

int main(int count, char** words) {
    using namespace hemline;
    if (count != 2) {
        std::fprintf(stderr, "usage: bench_journal FOLDER\n");
        return 2;
    }
    const fs::path folder = fs::path(words[1]) / ("bench_journal." + std::to_string(::getpid()));
    fs::create_directories(folder);
    std::vector<std::vector<Bytes>> journals;
    for (std::uint64_t device = 1; device <= 3; ++device) {
        journals.push_back(frames_of(invented_events(device)));
    }
    bool kept = open_many(folder, journals[0]);
    kept = append_one(folder) && kept;
    kept = merge_three(folder, journals) && kept;
    fs::remove_all(folder);
    return kept ? 0 : 1;
}
