#include "tools/cli/conflicts.h"

#include <map>

namespace hemline {
namespace {

using ById = std::multimap<EventId, const Event*>;

std::string word_for(const Conflict& conflict) {
    switch (conflict.thing.subject) {
        case Subject::none:
            return "number";
        case Subject::job:
            return "job";
        case Subject::rule:
            return "rule";
        case Subject::edge:
            return "edge";
        case Subject::reading:
            return "reading";
        case Subject::remainder:
            return "remainder";
        case Subject::pitch:
            return "pitch";
        case Subject::lap:
            return "lap";
        case Subject::style:
            return "style";
        case Subject::piece:
            return "cut";
        case Subject::step:
            return "step";
        case Subject::finish:
            return "finish";
    }
    return "";
}

/// The events of all sides, each once; a number used twice gives both.
std::vector<const Event*> events_of(const Conflict& conflict, const ById& by_id) {
    std::vector<const Event*> found;
    for (std::size_t i = 0; i < conflict.sides.size(); ++i) {
        if (i > 0 && conflict.sides[i] == conflict.sides[i - 1]) {
            continue;
        }
        const auto [from, to] = by_id.equal_range(conflict.sides[i]);
        for (auto at = from; at != to; ++at) {
            found.push_back(at->second);
        }
    }
    return found;
}

ById by_id(std::span<const Event> events) {
    ById found;
    for (const Event& event : events) {
        found.emplace(event.id, &event);
    }
    return found;
}

Json side_json(const Event& event, Marks marks) {
    Json json;
    json["id"] = print_event_id(event.id);
    json["device"] = print_device(event.id.device);
    json["by"] = event.by;
    json["time"] = iso_time(event.when);
    json["value"] = describe(event.fact);
    if (const auto* reading = std::get_if<ReadingTaken>(&event.fact)) {
        put_length(json, "length", reading->length, marks);
    } else if (const auto* cut = std::get_if<PieceCut>(&event.fact)) {
        put_length(json, "cut", cut->cut, marks);
    } else if (const auto* lap = std::get_if<LapChosen>(&event.fact); lap != nullptr && lap->lap) {
        put_length(json, "lap", *lap->lap, marks);
    } else if (const auto* pitch = std::get_if<PitchTaken>(&event.fact)) {
        json["pitch"] = print_slope(pitch->pitch);
    }
    return json;
}

}  // namespace

Json conflicts_json(const Job& job, std::span<const Event> events, Marks marks) {
    Json all = Json::array();
    if (job.conflicts.empty()) {
        return all;
    }
    const ById found = by_id(events);
    for (const Conflict& conflict : job.conflicts) {
        const Thing& thing = conflict.thing;
        Json json;
        json["about"] = word_for(conflict);
        if (is_on(thing, thing.name)) {
            json["edge"] = thing.name;
        } else if (thing.subject == Subject::rule) {
            json["rule"] = thing.name;
        }
        if (thing.piece > 0) {
            json["piece"] = thing.piece;
        }
        if (thing.subject == Subject::step) {
            json["step"] = thing.step;
        }
        json["what"] = conflict.what();
        json["events"] = Json::array();
        for (const Event* event : events_of(conflict, found)) {
            json["events"].push_back(side_json(*event, marks));
        }
        all.push_back(std::move(json));
    }
    return all;
}

std::string conflicts_text(const Job& job, std::span<const Event> events) {
    std::string text;
    const ById found = job.conflicts.empty() ? ById{} : by_id(events);
    for (const Conflict& conflict : job.conflicts) {
        text += shown_text(conflict.what().english()) + '\n';
        for (const Event* event : events_of(conflict, found)) {
            text += "  " + print_event_id(event->id) + ' ' + iso_time(event->when) + ' ' +
                    (event->by.empty() ? "-" : shown_text(event->by)) + ' ' +
                    describe(event->fact).english() + '\n';
        }
    }
    return text;
}

}  // namespace hemline
