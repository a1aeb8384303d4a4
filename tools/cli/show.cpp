// `show`: the state of a job: edges, readings, status, the next cut, and what was set aside.
#include <iostream>

#include "engine/plan/make_plan.h"
#include "engine/plan/plan.h"
#include "engine/record/clock_doubt.h"
#include "engine/roof/edge_shape.h"
#include "engine/words/result.h"
#include "engine/work/card.h"
#include "engine/work/job_sections.h"
#include "engine/work/order.h"
#include "engine/work/procedure.h"
#include "field/store/folders.h"
#include "field/store/job_folder.h"
#include "field/store/writer.h"
#include "tools/cli/assets_here.h"
#include "tools/cli/commands.h"
#include "tools/cli/conflicts.h"
#include "tools/cli/print.h"

namespace hemline {
namespace {

/// A job as recorded, folded and planned.
struct Standing {
    JobRecord record;
    Assets assets;
    Job job;
    Plan plan;
    Marks marks = Marks::sixteenth;
};

Json edge_json(const EdgeWork& work, const Standing& standing) {
    const std::optional<Length> length = work.length(standing.job.practice);
    Json json;
    json["edge"] = work.edge.id;
    json["kind"] = word_of(work.edge.kind);
    const Trim* trim = standing.assets.catalogue.of(work.edge);
    json["trim"] = trim == nullptr ? work.edge.trim : trim->id;
    json["left"] = word_of(work.edge.left);
    json["right"] = word_of(work.edge.right);
    json["first"] = word_of(first_fitted(work.edge));
    json["pitch"] = work.edge.pitch ? Json(print_slope(*work.edge.pitch)) : Json();
    const Length lap = lap_on(work.edge, standing.job.practice);
    json["lap_nm"] = has_run(work.edge.kind) ? Json(lap.nm()) : Json();
    json["lap"] = has_run(work.edge.kind) ? Json(tell_length(lap, standing.marks)) : Json();
    json["length_nm"] = length ? Json(length->nm()) : Json();
    json["length"] = length ? Json(tell_length(*length, standing.marks)) : Json();
    return json;
}

Json reading_json(const EdgeWork& work, const RecordedReading& reading, Marks marks) {
    Json json;
    json["id"] = print_event_id(reading.id);
    json["edge"] = work.edge.id;
    json["of"] = reading.of == ReadingOf::edge ? "edge" : "remainder";
    put_length(json, "length", reading.length, marks);
    json["by"] = reading.by;
    json["struck"] = reading.struck;
    return json;
}

EdgeStatus status_of(const EdgeWork& work, const Standing& standing) {
    const auto& procedures = standing.assets.procedures;
    const auto procedure = procedures.find(work.edge.kind);
    const std::vector<StepRule> none;
    const auto& rules = procedure == procedures.end() ? none : procedure->second;
    const std::vector<Step> steps =
        steps_of(work, standing.plan, standing.job.practice, rules, standing.assets.catalogue,
                 corner_mates(work, standing.plan, standing.job));
    return status_of(work, steps, standing.job.practice);
}

/// The card of the next cut; none when nothing can be cut now.
std::optional<Card> next_card(const Standing& standing) {
    const std::optional<NextCut> next = next_cut(standing.job, standing.plan);
    if (!next) {
        return {};
    }
    const Result<Card> card = make_card(standing.job, standing.plan, standing.assets.catalogue,
                                        next->edge, next->role, next->piece);
    return card ? std::optional<Card>(*card) : std::nullopt;
}

Json next_cut_json(const Standing& standing) {
    const std::optional<Card> card = next_card(standing);
    if (!card) {
        return {};
    }
    Json json;
    json["edge"] = card->edge;
    json["trim"] = card->trim;
    json["piece"] = card->piece;
    put_length(json, "cut", card->cut, standing.marks);
    json["waits_for"] = card->waits_for.english(standing.marks);
    return json;
}

std::vector<EdgeNext> next_on_roof(const Standing& standing) {
    return whats_next(standing.job, standing.plan, standing.assets.procedures,
                      standing.assets.catalogue);
}

/// The number this tablet writes under in the folder; null where it has no number and cannot get
/// one.
Json device_json(const std::filesystem::path& folder) {
    const Result<std::uint64_t> device = device_id();
    return device ? Json(print_device(writer_in(folder, *device))) : Json();
}

std::string absolute_path(const std::filesystem::path& path) {
    std::error_code unknown;
    const std::filesystem::path whole = std::filesystem::absolute(path, unknown);
    return unknown ? path.string() : whole.string();
}

Json show_json(const Standing& standing) {
    Json json;
    json["job"] = standing.job.name;
    json["path"] = absolute_path(standing.record.folder);
    json["device"] = device_json(standing.record.folder);
    for (const char* key : {"edges", "readings", "status"}) {
        json[key] = Json::array();
    }
    for (const EdgeWork& work : standing.job.edges) {
        json["edges"].push_back(edge_json(work, standing));
        for (const RecordedReading& reading : work.readings) {
            json["readings"].push_back(reading_json(work, reading, standing.marks));
        }
        json["status"].push_back(
            {{"edge", work.edge.id}, {"status", spoken(status_of(work, standing)).english()}});
    }
    json["next_cut"] = next_cut_json(standing);
    json["whats_next"] = Json::array();
    for (const EdgeNext& next : next_on_roof(standing)) {
        json["whats_next"].push_back({{"edge", next.edge},
                                      {"status", spoken(next.status).english()},
                                      {"what", next.what.english(standing.marks)},
                                      {"waits_for", next.waits_for.english(standing.marks)}});
    }
    json["conflicts"] = conflicts_json(standing.job, standing.record.events, standing.marks);
    json["clocks"] = Json::array();
    for (const ClockDoubt& doubt : clock_doubts(standing.record.events)) {
        json["clocks"].push_back(words_on(doubt).english());
    }
    json["set_aside"] = Json::array();
    for (const FileSetAside& aside : standing.record.set_aside) {
        json["set_aside"].push_back({{"file", aside.file.filename().string()},
                                     {"offset", aside.stretch.offset},
                                     {"size", aside.stretch.size},
                                     {"why", aside.stretch.why.english(standing.marks)}});
    }
    json["left_out"] = Json::array();
    for (const Problem& problem : standing.job.left_out.all()) {
        json["left_out"].push_back({{"what", problem.what.english(standing.marks)},
                                    {"mend", problem.mend.english(standing.marks)}});
    }
    return json;
}

std::string edge_text(const EdgeWork& work, const Standing& standing) {
    const std::optional<Length> length = work.length(standing.job.practice);
    std::string text =
        "Edge " + shown_text(work.edge.id) + ", " + spoken(work.edge.kind).english() + ": " +
        (length ? tell_length(*length, standing.marks) : "no agreed length") +
        (work.edge.lap ? ", laps " + tell_length(*work.edge.lap, standing.marks) : std::string()) +
        "; " + spoken(status_of(work, standing)).english() + '\n';
    for (const RecordedReading& reading : work.readings) {
        text += "  " + padded(tell_length(reading.length, standing.marks), 20) +
                print_event_id(reading.id) +
                (reading.of == ReadingOf::remainder ? " what is left for the last piece" : "") +
                (reading.by.empty() ? "" : " by " + shown_text(reading.by)) +
                (reading.struck ? " (crossed out)" : "") + '\n';
    }
    return text;
}

std::string show_text(const Standing& standing) {
    std::string text = "Job " + shown_text(standing.job.name) + '\n';
    for (const EdgeWork& work : standing.job.edges) {
        text += edge_text(work, standing);
    }
    for (const EdgeNext& next : next_on_roof(standing)) {
        text += (next.waits_for.empty() ? "Next on " : "Later on ") + shown_text(next.edge) + ": " +
                shown_text(next.what.english(standing.marks)) +
                (next.waits_for.empty()
                     ? ""
                     : " Waits: " + shown_text(next.waits_for.english(standing.marks))) +
                '\n';
    }
    text += conflicts_text(standing.job, standing.record.events, standing.marks);
    for (const ClockDoubt& doubt : clock_doubts(standing.record.events)) {
        text += shown_text(words_on(doubt).english()) + '\n';
    }
    const std::optional<Card> card = next_card(standing);
    return text + (card ? "Next cut: edge " + shown_text(card->edge) + ", " + card->trim +
                              ", piece " + std::to_string(card->piece) + ", " +
                              tell_length(card->cut, standing.marks) + '\n'
                        : std::string("No cut can be made now\n"));
}

}  // namespace

Exit show_job(const ShowArguments& arguments) {
    const Result<JobRecord> record = read_job_folder(arguments.job);
    if (!record) {
        return complain(arguments.job, 0, 0, record.problem());
    }
    std::optional<Assets> assets = assets_here();
    if (!assets) {
        return Exit::problem_in_input;
    }
    const Job job = replay(record->events, assets->practice);
    assets->catalogue = catalogue_on(assets->catalogue, assets->sections, job);
    const Standing standing{*record, *assets, job, make_plan(job, assets->catalogue),
                            marks_for(arguments.unit, job.practice)};
    if (arguments.output == Output::json) {
        print_json(show_json(standing));
        return Exit::fine;
    }
    std::cout << show_text(standing);
    for (const Problem& problem : job.left_out.all()) {
        complain(arguments.job, 0, 0, problem.what.english(standing.marks),
                 problem.mend.english(standing.marks));
    }
    for (const FileSetAside& set_aside : standing.record.set_aside) {
        std::cerr << explain(set_aside) << '\n';
    }
    return Exit::fine;
}

}  // namespace hemline
