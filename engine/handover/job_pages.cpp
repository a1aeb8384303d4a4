#include "engine/handover/job_pages.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <set>

#include "engine/handover/plain_names.h"
#include "engine/handover/sheets.h"
#include "engine/words/csv_row.h"
#include "engine/words/program_version.h"
#include "engine/work/procedure_words.h"

namespace hemline {
namespace {

/// Tablets by the order in which they appear in the journal: nobody knows a tablet by its number.
class Tablets {
  public:
    explicit Tablets(std::span<const Event> events) {
        for (const Event& event : events) {
            numbers_.emplace(event.id.device, numbers_.size() + 1);
        }
    }
    [[nodiscard]] std::string name(EventId id) const {
        const auto found = numbers_.find(id.device);
        return found == numbers_.end() ? "" : std::to_string(found->second);
    }

  private:
    std::map<std::uint64_t, std::size_t> numbers_;
};

void add_edges(Sheets& sheets, const Job& job) {
    sheets.heading(say("Edges"));
    sheets.table({{say("edge"), 18},
                  {say("kind"), 26},
                  {say("agreed length"), 38},
                  {say("pieces cut"), 60},
                  {say("finished"), 44}});
    for (const EdgeWork& work : job.edges) {
        const auto length = work.length(job.practice);
        std::vector<Text> cuts;
        for (const CutPiece& cut : work.cut) {
            cuts.push_back(glued(cut.piece, ": ", cut.cut));
        }
        sheets.row({Text(work.edge.id), spoken(work.edge.kind),
                    length && work.undecided.empty() ? Text(*length) : say("none"),
                    joined(cuts, ", "),
                    work.finished
                        ? say("{1} UTC by {2}", print_minute(work.finished_clock), work.finished_by)
                        : Text()});
    }
}

void add_readings(Sheets& sheets, const Job& job, const Tablets& tablets) {
    sheets.heading(say("Readings"));
    sheets.table({{say("edge"), 18},
                  {say("of"), 25},
                  {say("length"), 38},
                  {say("by"), 31},
                  {say("tablet"), 18},
                  {say("time (UTC)"), 39},
                  {{}, 17}});
    for (const EdgeWork& work : job.edges) {
        for (const RecordedReading& reading : work.readings) {
            sheets.row(
                {Text(work.edge.id), reading.of == ReadingOf::edge ? say("edge") : say("remainder"),
                 reading.length, Text(reading.by), Text(tablets.name(reading.id)),
                 Text(print_minute(reading.clock)), reading.struck ? say("crossed out") : Text()});
        }
    }
}

void add_conflicts(Sheets& sheets, const Job& job, std::span<const Event> events,
                   const Names& names) {
    if (job.conflicts.empty()) {
        return;
    }
    std::multimap<EventId, const Event*> by_id;
    for (const Event& event : events) {
        by_id.emplace(event.id, &event);
    }
    sheets.heading(say("Two tablets disagree, not decided"));
    for (const Conflict& conflict : job.conflicts) {
        sheets.paragraph(what_of(conflict, thing_names(names)));
        sheets.table({{say("time (UTC)"), 39}, {say("by"), 35}, {say("what"), 112}});
        std::set<EventId> told;
        for (const Tip& side : conflict.sides) {
            const auto [first, last] = by_id.equal_range(side.id);
            for (auto it = first; it != last && told.count(side.id) == 0; ++it) {
                const Event& event = *it->second;
                sheets.row({Text(print_minute(wall_time(event))), Text(event.by),
                            describe(event.fact, names)});
            }
            told.insert(side.id);
        }
    }
}

void add_events(Sheets& sheets, std::span<const Event> events, const Tablets& tablets,
                const Names& names) {
    // A limit, so that a large page never keeps a job from being packed.
    constexpr std::size_t listed_most = 10'000;
    const std::size_t left_out = events.size() - std::min(events.size(), listed_most);
    sheets.heading(say("Everything that happened"));
    if (left_out > 0) {
        sheets.paragraph(
            say("{1} earlier events are left out here. The file events.csv has all.", left_out));
    }
    sheets.table(
        {{say("time (UTC)"), 39}, {say("by"), 31}, {say("tablet"), 18}, {say("what"), 98}});
    for (const Event& event : events.subspan(left_out)) {
        sheets.row({Text(print_minute(wall_time(event))), Text(event.by),
                    Text(tablets.name(event.id)), describe(event.fact, names)});
    }
}

/// As of the newest event: the same job gives the same page, whenever it is made.
Text day_of(std::span<const Event> events) {
    WallTime newest;
    for (const Event& event : events) {
        newest = std::max(newest, wall_time(event));
    }
    return say("as of {1}", print_minute(newest).substr(0, 10));
}

std::string job_html(const Job& job, std::span<const Event> events, const PageWords& words) {
    const Tablets tablets(events);
    const Names names = plain_names(events);
    Sheets sheets(Paper::letter, {job.name, day_of(events)}, {}, 10, without_ids(words, names));
    sheets.title(Text(job.name), 20);
    add_conflicts(sheets, job, events, names);
    add_edges(sheets, job);
    add_readings(sheets, job, tablets);
    add_events(sheets, events, tablets, names);
    sheets.note(say(
        "Read from the job's journals, which are in this file. The local code, the engineer and "
        "the maker's printed instructions decide, not this page."));
    sheets.note(glued(words_of(program_version()), "."));
    return sheets.html();
}

std::string readings_csv(const Job& job) {
    std::string csv =
        csv_row({"edge", "of", "length", "length_nm", "by", "device", "time", "struck"});
    for (const EdgeWork& work : job.edges) {
        for (const RecordedReading& reading : work.readings) {
            csv += csv_row({Text(work.edge.id),
                            reading.of == ReadingOf::edge ? say("edge") : say("remainder"),
                            Text(reading.length).english(marks_of(job.practice)),
                            reading.length.nm(), reading.by, print_device(reading.id.device),
                            print_minute(reading.clock), reading.struck ? "yes" : "no"});
        }
    }
    return csv;
}

std::string events_csv(const Job& job, std::span<const Event> events) {
    std::string csv = csv_row({"event", "time", "by", "what", "supersedes"});
    for (const Event& event : events) {
        std::string seen;
        for (const EventId id : event.supersedes) {
            seen += (seen.empty() ? "" : " ") + print_event_id(id);
        }
        csv += csv_row({print_event_id(event.id), print_minute(wall_time(event)), event.by,
                        CsvCell(describe(event.fact), marks_of(job.practice)), seen});
    }
    return csv;
}

}  // namespace

std::string print_minute(WallTime time) {
    // Days since 1 March 0000 in eras of 400 years (146 097 days) of Gregorian years that begin in
    // March, so that the leap day is a year's last: from memory, common practice.
    constexpr std::int64_t day_ms = 86'400'000;
    const std::int64_t day = time.ms / day_ms + 719'468;
    const std::int64_t era = day / 146'097, of_era = day % 146'097;
    const std::int64_t year_of_era =
        (of_era - of_era / 1'460 + of_era / 36'524 - of_era / 146'096) / 365;
    const std::int64_t of_year = of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
    const std::int64_t march_month = (5 * of_year + 2) / 153;
    const std::int64_t day_of_month = of_year - (153 * march_month + 2) / 5 + 1;
    const std::int64_t month = march_month < 10 ? march_month + 3 : march_month - 9;
    const std::int64_t year = era * 400 + year_of_era + (month <= 2 ? 1 : 0);
    const std::int64_t minute = time.ms % day_ms / 60'000;
    std::array<char, 80> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02d-%02d %02d:%02d", static_cast<int>(year),
                  static_cast<int>(month), static_cast<int>(day_of_month),
                  static_cast<int>(minute / 60), static_cast<int>(minute % 60));
    return text.data();
}

std::map<std::string, std::string> pages_of(std::span<const Event> events, const Practice& practice,
                                            const std::optional<PageWords>& words) {
    const Job job = replay(events, practice);
    const PageWords said = words.value_or(english_on(marks_of(job.practice)));
    return {{"job.html", job_html(job, events, said)},
            {"readings.csv", readings_csv(job)},
            {"events.csv", events_csv(job, events)}};
}

}  // namespace hemline
