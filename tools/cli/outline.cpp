// `outline`: whether the walk around the roof's edges closes, by how much it fails, and what would
// close it.
#include <iostream>

#include "engine/handover/readings_file.h"
#include "engine/roof/outline.h"
#include "engine/words/result.h"
#include "tools/cli/assets_here.h"
#include "tools/cli/commands.h"
#include "tools/cli/given_job.h"
#include "tools/cli/input_file.h"
#include "tools/cli/print.h"

namespace hemline {
namespace {

/// The job's eaves and gables in the order they were added.
std::optional<std::vector<WalkedEdge>> walk_of_job(const OutlineArguments& arguments) {
    const auto assets = assets_here();
    const auto job = assets ? read_given_job(arguments.readings, assets->practice) : std::nullopt;
    if (!job) {
        return {};
    }
    std::vector<WalkedEdge> walked;
    for (const EdgeWork& work : job->edges) {
        if (work.edge.kind == EdgeKind::eave || work.edge.kind == EdgeKind::gable) {
            walked.push_back({work.edge, work.length(job->practice)});
        }
    }
    return walked;
}

std::optional<std::vector<WalkedEdge>> read_walk(const OutlineArguments& arguments) {
    if (is_job(arguments.readings)) {
        return walk_of_job(arguments);
    }
    const Result<std::string> text = read_input_file(arguments.readings);
    if (!text) {
        complain(arguments.readings, 0, 0, text.problem());
        return {};
    }
    const auto rows = read_readings(*text, Catalogue(), arguments.unit, RowsFor::outline);
    if (const auto* problem = std::get_if<TableProblem>(&rows)) {
        complain(arguments.readings, *problem);
        return {};
    }
    std::vector<WalkedEdge> walked;
    for (const EdgeReading& row : std::get<0>(rows)) {
        const bool read = row.length > Length();
        walked.push_back({row.edge, read ? std::optional(row.length) : std::nullopt});
    }
    return walked;
}

/// What is, or should be, in the suspect's cell.
std::string cell_of(const Suspect& suspect, Length length, std::optional<Angle> corner,
                    Marks marks) {
    if (!corner) {
        return print_length(length, marks);
    }
    const bool by_angle = suspect.field.rfind("corner_", 0) == 0;
    const End word = *corner < half_turn ? End::corner_out : End::corner_in;
    return by_angle ? print_degrees(*corner) : std::string(word_of(word));
}

Json suspect_json(const Suspect& suspect, Marks marks) {
    Json json;
    json["edge"] = suspect.edge;
    json["field"] = suspect.field;
    json["kind"] = word_of(suspect.kind);
    json["from"] = cell_of(suspect, suspect.from, suspect.corner_from, marks);
    json["to"] = cell_of(suspect, suspect.to, suspect.corner_to, marks);
    if (suspect.corner_from) {
        json["from_deg"] = degrees_of(*suspect.corner_from);
        json["to_deg"] = degrees_of(*suspect.corner_to);
    } else {
        json["from_nm"] = suspect.from.nm();
        json["to_nm"] = suspect.to.nm();
    }
    if (!suspect.also_edge.empty()) {
        json["also"] = {{"edge", suspect.also_edge}, {"field", suspect.also_field}};
    }
    json["miss_nm"] = suspect.miss.nm();
    return json;
}

std::string_view word_of(LengthIs length) {
    switch (length) {
        case LengthIs::read:
            return "read";
        case LengthIs::implied:
            return "implied";
        case LengthIs::guessed:
            return "guessed";
    }
    return "guessed";
}

Json outline_json(const Outline& outline, Marks marks) {
    Json json;
    json["closes"] = outline.state == OutlineState::closes;
    json["state"] = word_of(outline.state);
    const bool known = outline.turn_left.has_value();
    json["miss_nm"] = known ? Json(outline.miss.nm()) : Json();
    json["miss_ahead_nm"] = known ? Json(outline.miss_ahead.nm()) : Json();
    json["miss_left_nm"] = known ? Json(outline.miss_left.nm()) : Json();
    json["allowed_nm"] = known ? Json(outline.allowed.nm()) : Json();
    json["turn_left_deg"] = known ? Json(degrees_of(*outline.turn_left)) : Json();
    json["suspects"] = Json::array();
    for (const Suspect& suspect : outline.suspects) {
        json["suspects"].push_back(suspect_json(suspect, marks));
    }
    json["notes"] = Json::array();
    for (const OutlineNote& note : outline.notes) {
        json["notes"].push_back({{"edge", note.edge},
                                 {"field", note.field},
                                 {"what", note.what.english(marks)},
                                 {"mend", note.mend.english(marks)}});
    }
    json["lines"] = Json::array();
    for (const OutlineLine& line : outline.lines) {
        json["lines"].push_back({{"edge", line.edge},
                                 {"kind", word_of(line.kind)},
                                 {"from_nm", {line.from.x.nm(), line.from.y.nm()}},
                                 {"to_nm", {line.to.x.nm(), line.to.y.nm()}},
                                 {"plan_nm", line.plan.nm()},
                                 {"length", word_of(line.length)}});
    }
    return json;
}

/// "1 ft ahead and 2 in to the right".
std::string direction_text(const Outline& outline, Marks marks) {
    const auto part = [&](Length miss, const char* more, const char* less) {
        return print_length(absolute(miss), marks) + (miss < Length() ? less : more);
    };
    return part(outline.miss_ahead, " ahead", " back") + " and " +
           part(outline.miss_left, " to the left", " to the right");
}

std::string state_text(const Outline& outline, const std::string& first, Marks marks) {
    if (!outline.turn_left) {
        return outline.state == OutlineState::misses
                   ? "It cannot be judged while its rows contradict one another.\n"
                   : "It is open: a corner is not known.\n";
    }
    if (*outline.turn_left != Angle() && outline.state == OutlineState::misses) {
        return "It does not close: its turns make " +
               print_degrees(full_turn - *outline.turn_left) + ", not 360°.\n";
    }
    if (outline.crossing) {
        return "It does not close: the walk comes back, and its sides cross on the way.\n";
    }
    const std::string allowed = print_length(outline.allowed, marks);
    switch (outline.state) {
        case OutlineState::closes:
            return "It closes: " + print_length(outline.miss, marks) +
                   " off, and the readings allow " + allowed + ".\n";
        case OutlineState::open:
            return "It is open: something is still to be read, and what is read agrees.\n";
        case OutlineState::misses:
            break;
    }
    return "It does not close: the walk ends " + print_length(outline.miss, marks) +
           " from where it began, " + direction_text(outline, marks) + " as " + first +
           " is walked; the readings allow " + allowed + ".\n";
}

std::string outline_text(const Outline& outline, Marks marks) {
    const std::string& first = outline.lines.front().edge;
    std::string text = "Outline of " + std::to_string(outline.lines.size()) +
                       " sides, walked from " + first + " with the building on the left\n" +
                       state_text(outline, first, marks);
    for (const OutlineLine& line : outline.lines) {
        if (line.length == LengthIs::implied) {
            text += (line.edge.empty() ? "A gable end without rows" : line.edge) +
                    " is not read: " + print_length(line.plan, marks) +
                    " in plan would close the outline\n";
        }
    }
    if (outline.state == OutlineState::misses) {
        text += outline.suspects.empty()
                    ? "No single correction closes it: read the lengths again.\n"
                    : "Single corrections that close it, the most likely first:\n";
    }
    for (const Suspect& suspect : outline.suspects) {
        text += "  " + padded(suspect.edge, 8) + padded(suspect.field, 12) +
                cell_of(suspect, suspect.from, suspect.corner_from, marks) + " -> " +
                cell_of(suspect, suspect.to, suspect.corner_to, marks) + " (" +
                spoken(suspect.kind).english() +
                (suspect.also_edge.empty()
                     ? ""
                     : "; " + suspect.also_edge + "'s " + suspect.also_field + " too") +
                "), leaves " + print_length(suspect.miss, marks) + '\n';
    }
    for (const OutlineNote& note : outline.notes) {
        text += note.edge + ", " + note.field + ": " + note.what.english(marks) + ' ' +
                note.mend.english(marks) + '\n';
    }
    return text;
}

}  // namespace

Exit print_outline(const OutlineArguments& arguments) {
    const auto walked = read_walk(arguments);
    if (!walked) {
        return Exit::problem_in_input;
    }
    const Result<Outline> outline = trace_outline(*walked, Tape());
    if (!outline) {
        return complain(arguments.readings, 0, 0, outline.problem());
    }
    const Marks marks = marks_for(arguments.unit);
    if (arguments.output == Output::json) {
        print_json(outline_json(*outline, marks));
    } else {
        std::cout << outline_text(*outline, marks);
    }
    return Exit::fine;
}

}  // namespace hemline
