// `day`: what was done on one day of a job and by whom, on the screen, as JSON or as a page to
// print.
#include <fstream>
#include <iostream>

#include "engine/handover/day_page.h"
#include "engine/work/day_sheet.h"
#include "field/store/clock.h"
#include "field/store/job_folder.h"
#include "tools/cli/assets_here.h"
#include "tools/cli/commands.h"
#include "tools/cli/print.h"

namespace hemline {
namespace {

std::string sheet_text(const DaySheet& sheet, const std::string& day) {
    std::string text = "Day sheet, " + day + ": " + shown_text(sheet.job) + '\n';
    for (const DayPart& part : parts_of(sheet)) {
        text += part.heading.english() + '\n';
        for (const DayLine& line : part.lines) {
            text += "  " + shown_text(line.words.english()) +
                    (line.by.empty()
                         ? ""
                         : "  (" + shown_text(line.by) + ", " + clock_time(line.when) + ")") +
                    '\n';
        }
    }
    return text;
}

Json events_json(const std::vector<Event>& events) {
    Json json = Json::array();
    for (const Event& event : events) {
        json.push_back({{"id", print_event_id(event.id)},
                        {"time", iso_time(event.when)},
                        {"by", event.by},
                        {"what", describe(event.fact)}});
    }
    return json;
}

Json sheet_json(const DaySheet& sheet, const std::string& day) {
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
    json["finished"] = events_json(sheet.finished);
    json["cut"] = events_json(sheet.cut);
    json["spoiled"] = events_json(sheet.spoiled);
    json["exceptions"] = events_json(sheet.exceptions);
    json["sent_back"] = events_json(sheet.sent_back);
    json["conflicts"] = Json::array();
    for (const Conflict& conflict : sheet.conflicts) {
        json["conflicts"].push_back(conflict.what());
    }
    return json;
}

bool write_page(const std::string& path, const std::string& page) {
    std::ofstream file(path, std::ios::binary | std::ios::trunc);
    file << page;
    file.close();
    return static_cast<bool>(file);
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
    const DaySheet sheet =
        day_sheet(replay(record->events, assets->practice), record->events, *day);
    if (!arguments.html.empty() &&
        !write_page(arguments.html,
                    day_page(sheet, day_name({day->from_ms, 0}), arguments.paper, clock_time))) {
        return complain("--html", 0, 0, "The page could not be written there.",
                        "Name a file in a folder that is there and has room.");
    }
    if (arguments.output == Output::json) {
        print_json(sheet_json(sheet, arguments.day));
    } else {
        std::cout << sheet_text(sheet, day_name({day->from_ms, 0}).english());
    }
    for (const FileSetAside& set_aside : record->set_aside) {
        std::cerr << explain(set_aside) << '\n';
    }
    return Exit::fine;
}

}  // namespace hemline
