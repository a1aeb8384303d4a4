// `day`: what was done on a day of a job and by whom, on the screen, as JSON or as a page to print.
#include <iostream>

#include "engine/handover/day_page.h"
#include "engine/handover/plain_names.h"
#include "engine/words/result.h"
#include "engine/work/day_sheet.h"
#include "engine/work/procedure_words.h"
#include "field/store/clock.h"
#include "field/store/job_folder.h"
#include "tools/cli/assets_here.h"
#include "tools/cli/commands.h"
#include "tools/cli/output_file.h"
#include "tools/cli/print.h"

namespace hemline {
namespace {

/// Steps and offcuts by their words, trims as the catalogue calls them.
Names names_of(const std::vector<Event>& events, const Catalogue& catalogue) {
    Names names = plain_names(events);
    names.trim = [&catalogue](const std::string& id) {
        const Trim* const trim = catalogue.find(id);
        return trim == nullptr ? Text(id) : say(trim->name);
    };
    return names;
}

std::string sheet_text(const DaySheet& sheet, const std::string& day, const Names& names,
                       Marks marks) {
    std::string text = "Day sheet, " + day + ": " + shown_text(sheet.job) + '\n';
    for (const DayPart& part : parts_of(sheet, names)) {
        text += part.heading.english() + '\n';
        for (const DayLine& line : part.lines) {
            text += "  " + shown_text(line.words.english(marks)) +
                    (line.by.empty()
                         ? ""
                         : "  (" + shown_text(line.by) + ", " + clock_time(line.clock) + ")") +
                    '\n';
        }
    }
    return text;
}

Json events_json(const std::vector<Event>& events, Marks marks) {
    Json json = Json::array();
    for (const Event& event : events) {
        json.push_back({{"id", print_event_id(event.id)},
                        {"time", iso_time(wall_time(event))},
                        {"by", event.by},
                        {"what", describe(event.fact).english(marks)}});
    }
    return json;
}

Json sheet_json(const DaySheet& sheet, const std::string& day, Marks marks) {
    Json json;
    json["job"] = sheet.job;
    json["day"] = day;
    json["sticks_opened"] = sheet.sticks_opened;
    json["people"] = Json::array();
    for (const PersonDay& person : sheet.people) {
        json["people"].push_back({{"name", person.name},
                                  {"finished", person.finished},
                                  {"cut", person.cut},
                                  {"sticks_opened", person.sticks_opened},
                                  {"spoiled", person.spoiled},
                                  {"readings", person.readings},
                                  {"steps", person.steps},
                                  {"exceptions", person.exceptions},
                                  {"sent_back", person.sent_back}});
    }
    json["finished"] = events_json(sheet.finished, marks);
    json["cut"] = events_json(sheet.cut, marks);
    json["spoiled"] = events_json(sheet.spoiled, marks);
    json["exceptions"] = events_json(sheet.exceptions, marks);
    json["sent_back"] = events_json(sheet.sent_back, marks);
    json["conflicts"] = Json::array();
    for (const Conflict& conflict : sheet.conflicts) {
        json["conflicts"].push_back(conflict.what().english(marks));
    }
    return json;
}

}  // namespace

Exit show_day(const DayArguments& arguments) {
    const std::optional<DaySpan> day = day_named(arguments.day);
    if (!day) {
        return complain("DAY", 1, 1, "There is no day " + shown_text(arguments.day) + ".",
                        "Write it as 2026-05-04.");
    }
    const Result<JobRecord> record = read_job_folder(arguments.job);
    if (!record) {
        return complain(arguments.job, 0, 0, record.problem());
    }
    const std::optional<Assets> assets = assets_here();
    if (!assets) {
        return Exit::problem_in_input;
    }
    const Job job = replay(record->events, assets->practice);
    const Marks marks = marks_of(job.practice);
    const DaySheet sheet = day_sheet(job, record->events, *day);
    const Names names = names_of(record->events, assets->catalogue);
    const Text name = day_name({day->from_ms});
    if (!write_output_file(
            "--html", arguments.html,
            arguments.html.empty()
                ? ""
                : day_page(sheet, name, arguments.paper, clock_time, names, english_on(marks)))) {
        return Exit::problem_in_input;
    }
    if (arguments.output == Output::json) {
        print_json(sheet_json(sheet, arguments.day, marks));
    } else {
        std::cout << sheet_text(sheet, name.english(), names, marks);
    }
    for (const FileSetAside& set_aside : record->set_aside) {
        std::cerr << explain(set_aside) << '\n';
    }
    return Exit::fine;
}

}  // namespace hemline
