#include "engine/work/day_sheet.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <set>

#include "engine/record/fact_words.h"

namespace hemline {
namespace {

/// Whether the event took a new stick from the pile.
bool opens_stick(const Event& event) {
    if (const auto* cut = std::get_if<PieceCut>(&event.fact)) {
        return !cut->metal.offcut;
    }
    if (const auto* spoiled = std::get_if<PieceSpoiled>(&event.fact)) {
        return event.supersedes.empty() && !spoiled->metal.offcut;  // else its cut opened the stick
    }
    if (const auto* measured = std::get_if<StickMeasured>(&event.fact)) {
        return !measured->metal.offcut;
    }
    const auto* whole = std::get_if<StickSpoiled>(&event.fact);
    return whole != nullptr && !whole->metal.offcut;
}

bool is_spoiling(const Fact& fact) {
    return std::holds_alternative<PieceSpoiled>(fact) || std::holds_alternative<StickSpoiled>(fact);
}

/// Sorts the day's events into the sheet.
struct Sorter {
    const Job& job;
    DaySheet& sheet;
    std::map<std::string, PersonDay> people = {};
    std::set<EventId> steps = {};  ///< cuts that stand

    void take(const Event& event);
    void take_step(const Event& event, const StepSaid& done, PersonDay& person);
};

void Sorter::take_step(const Event& event, const StepSaid& done, PersonDay& person) {
    ++person.steps;
    if (steps.count(event.id) > 0 && !done.exception.empty()) {
        ++person.exceptions;
        sheet.exceptions.push_back(event);
    }
}

void Sorter::take(const Event& event) {
    PersonDay& person = people[event.by];
    person.name = event.by;
    const std::int64_t sticks = opens_stick(event) ? 1 : 0;
    person.sticks_opened += sticks;
    sheet.sticks_opened += sticks;
    if (std::holds_alternative<PieceCut>(event.fact) && job.spoiled_cuts.count(event.id) == 0) {
        ++person.cut;
        sheet.cut.push_back(event);
    } else if (is_spoiling(event.fact) || job.spare_cuts.count(event.id) > 0) {
        ++person.spoiled;
        sheet.spoiled.push_back(event);
    } else if (std::holds_alternative<ReadingTaken>(event.fact)) {
        ++person.readings;
    } else if (const auto done = step_in(event.fact)) {
        take_step(event, *done, person);
    } else if (std::holds_alternative<EdgeSentBack>(event.fact)) {
        ++person.sent_back;
        sheet.sent_back.push_back(event);
    } else if (const auto* finished = std::get_if<EdgeFinished>(&event.fact)) {
        const EdgeWork* const work = job.find(finished->edge);
        if (work != nullptr && work->finished == event.id) {
            ++person.finished;
            sheet.finished.push_back(event);
        }
    }
}

/// Empty for events that are not counted: an edge added, a plan chosen.
Text words_of(const PersonDay& person) {
    std::vector<Text> parts;
    const auto add = [&](std::int64_t count, const Text& words) {
        if (count > 0) {
            parts.push_back(words);
        }
    };
    add(person.finished, say_count("{1} edge finished", "{1} edges finished", person.finished));
    add(person.cut, say_count("{1} piece cut", "{1} pieces cut", person.cut));
    add(person.sticks_opened,
        say_count("{1} stick opened", "{1} sticks opened", person.sticks_opened));
    add(person.spoiled, say("{1} spoiled", person.spoiled));
    add(person.readings, say_count("{1} reading", "{1} readings", person.readings));
    add(person.steps, say_count("{1} step answered", "{1} steps answered", person.steps));
    add(person.exceptions, say_count("{1} exception", "{1} exceptions", person.exceptions));
    add(person.sent_back, say_count("{1} edge sent back", "{1} edges sent back", person.sent_back));
    const Text name = person.name.empty() ? say("Nobody named") : Text(person.name);
    return parts.empty() ? Text() : glued(name, ": ", joined(parts, ", "), ".");
}

DayLine line_of(const Event& event, const Names& names) {
    DayLine line{describe(event.fact, names), event.by, wall_time(event)};
    if (const auto done = step_in(event.fact)) {
        line.words = say("Edge {1}, {2}: {3} Noted by {4}.", done->edge, step_words(*done, names),
                         done->exception, done->exception_by);
    }
    return line;
}

/// No day's work has more, and neither a screen nor a printer has room for more.
constexpr std::size_t lines_most = 1000;

/// Says how many lines of a part are left out.
void add_rest(DayPart& part, std::size_t lines) {
    if (lines > lines_most) {
        part.lines.push_back(
            {say("and {1} more, which the record holds", lines - lines_most), "", {}});
    }
}

void add_part(std::vector<DayPart>& parts, const Text& heading, const std::vector<Event>& events,
              const Names& names) {
    DayPart part{heading, {}};
    std::transform(
        events.begin(),
        events.begin() + static_cast<std::ptrdiff_t>(std::min(events.size(), lines_most)),
        std::back_inserter(part.lines), [&](const Event& event) { return line_of(event, names); });
    add_rest(part, events.size());
    if (!part.lines.empty()) {
        parts.push_back(part);
    }
}

}  // namespace

DaySheet day_sheet(const Job& job, std::span<const Event> events, DaySpan day) {
    DaySheet sheet;
    sheet.job = job.name;
    sheet.conflicts = job.conflicts;
    Sorter sorter{job, sheet};
    for (const EdgeWork& work : job.edges) {
        for (const DoneStep& step : work.steps) {
            sorter.steps.insert(step.id);
        }
    }
    for (const Event& event : events) {
        if (day.holds(wall_time(event)) && job.struck.count(event.id) == 0) {
            sorter.take(event);
        }
    }
    for (const auto& [name, person] : sorter.people) {
        sheet.people.push_back(person);
    }
    return sheet;
}

std::vector<DayPart> parts_of(const DaySheet& sheet, const Names& names) {
    std::vector<DayPart> parts;
    DayPart people{say("Who did what"), {}};
    std::size_t did_something = 0;
    for (const PersonDay& person : sheet.people) {
        const Text words = words_of(person);
        did_something += words.empty() ? 0 : 1;
        if (!words.empty() && did_something <= lines_most) {
            people.lines.push_back({words, "", {}});
        }
    }
    add_rest(people, did_something);
    if (people.lines.empty()) {
        people.lines.push_back({say("Nothing was measured, cut or fitted on this day."), "", {}});
    }
    parts.push_back(people);
    DayPart apart{say("Two tablets disagree, not decided"), {}};
    for (const Conflict& conflict : sheet.conflicts) {
        if (apart.lines.size() < lines_most) {
            apart.lines.push_back({what_of(conflict, thing_names(names)), "", {}});
        }
    }
    add_rest(apart, sheet.conflicts.size());
    if (!apart.lines.empty()) {
        parts.push_back(apart);
    }
    add_part(parts, say("Edges finished"), sheet.finished, names);
    add_part(parts, say("Sent back"), sheet.sent_back, names);
    add_part(parts, say("Outside practice, noted by name"), sheet.exceptions, names);
    add_part(parts, say("Spoiled"), sheet.spoiled, names);
    add_part(parts,
             say("Pieces cut, {1}",
                 say_count("{1} stick opened", "{1} sticks opened", sheet.sticks_opened)),
             sheet.cut, names);
    return parts;
}

}  // namespace hemline
