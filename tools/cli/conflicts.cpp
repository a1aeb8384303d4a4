#include "tools/cli/conflicts.h"

#include <map>
#include <set>
#include <utility>

#include "engine/record/about_thing.h"
#include "engine/record/fact_words.h"

namespace hemline {
namespace {

using ById = std::multimap<EventId, const Event*>;

std::string word_for(const Conflict& conflict) {
    if (conflict.apart == Apart::edge_back) {
        return "edge_back";
    }
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
        case Subject::plan:
            return "plan";
        case Subject::supply:
            return "supply";
        case Subject::metal:
            return "metal";
        case Subject::loss:
            return "loss";
        case Subject::body:
            return "body";
        case Subject::place:
            return "place";
    }
    return "";
}

/// A side: its event, and the event that says its value.
struct SideEvents {
    const Event* at = nullptr;
    const Event* value = nullptr;
};

/// All sides, each once; a number used twice gives both of its events.
std::vector<SideEvents> events_of(const Conflict& conflict, const ById& by_id) {
    std::vector<SideEvents> found;
    std::set<std::pair<EventId, EventId>> told;
    for (const Tip& side : conflict.sides) {
        if (!told.emplace(side.id, side.says).second) {
            continue;
        }
        const auto pick = by_id.find(side.id);
        const auto [from, to] = by_id.equal_range(side.says);
        for (auto at = from; at != to; ++at) {
            const bool is_picked = side.id != side.says && pick != by_id.end();
            found.push_back({is_picked ? pick->second : at->second, at->second});
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

Json side_json(const SideEvents& side, Marks marks) {
    const Event& event = *side.value;
    Json json;
    json["id"] = print_event_id(side.at->id);
    json["device"] = print_device(side.at->id.device);
    json["by"] = side.at->by;
    json["time"] = iso_time(wall_time(*side.at));
    if (side.at != side.value) {
        json["picked"] = print_event_id(event.id);
        json["said_by"] = event.by;
    }
    json["value"] = describe(event.fact).english(marks);
    if (const std::optional<ValueSaid> said = value_in(event.fact)) {
        if (const auto* const length = std::get_if<Length>(&said->value)) {
            put_length(json, said->name, *length, marks);
        } else {
            json[said->name] = print_slope(std::get<Slope>(said->value));
        }
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
        if (is_on_edge(thing)) {
            json["edge"] = thing.name;
        } else if (thing.subject == Subject::rule) {
            json["rule"] = thing.name;
        } else if (thing.subject == Subject::plan) {
            json["trim"] = thing.name;
        }
        if (thing.piece > 0) {
            json["piece"] = thing.piece;
        }
        if (thing.subject == Subject::step) {
            json["step"] = thing.step;
        }
        json["what"] = conflict.what().english(marks);
        json["events"] = Json::array();
        for (const SideEvents& side : events_of(conflict, found)) {
            json["events"].push_back(side_json(side, marks));
        }
        all.push_back(std::move(json));
    }
    return all;
}

std::string conflicts_text(const Job& job, std::span<const Event> events, Marks marks) {
    std::string text;
    const ById found = job.conflicts.empty() ? ById{} : by_id(events);
    for (const Conflict& conflict : job.conflicts) {
        text += shown_text(conflict.what().english(marks)) + '\n';
        for (const SideEvents& side : events_of(conflict, found)) {
            text += "  " + print_event_id(side.at->id) + ' ' + iso_time(wall_time(*side.at)) + ' ' +
                    (side.at->by.empty() ? "-" : shown_text(side.at->by)) +
                    (side.at == side.value ? " " : " picked: ") +
                    describe(side.value->fact).english(marks) + '\n';
        }
    }
    return text;
}

}  // namespace hemline
