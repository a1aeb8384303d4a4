// The plan for other programs: lengths in whole nanometers beside their printed form.
#include <algorithm>

#include "tools/cli/plan_print.h"

namespace hemline {
namespace {

Json piece_json(const PlannedPiece& piece, Marks marks) {
    Json json;
    json["piece"] = piece.number;
    put_length(json, "cut", piece.cut, marks);
    json["covers_nm"] = piece.covers.nm();
    json["stick"] = piece.source ? Json(piece.source->stick) : Json();
    json["from_nm"] = piece.source ? Json(piece.source->from.nm()) : Json();
    return json;
}

Json run_json(const Run& run, Marks marks) {
    Json json;
    json["edge"] = run.edge;
    json["trim"] = run.trim;
    json["pieces"] = Json::array();
    for (const PlannedPiece& piece : run.pieces) {
        json["pieces"].push_back(piece_json(piece, marks));
    }
    json["role"] = word_of(run.role);
    json["lap_nm"] = run.lap.nm();
    return json;
}

Json stick_json(const PlannedStick& stick) {
    Json json;
    json["trim"] = stick.trim;
    json["stick"] = stick.number;
    json["stock_nm"] = stick.length.nm();
    json["used_nm"] = stick.used.nm();
    json["left_nm"] = stick.left.nm();
    json["pool"] = stick.pool;
    return json;
}

Json proof_json(const Proof& proof) {
    Json json;
    json["trim"] = proof.trim;
    json["sticks"] = proof.sticks;
    json["lower_bound"] = proof.lower_bound;
    json["proved"] = proof.proved;
    json["bound_from"] = proof.bound_from;
    json["pool"] = proof.pool;
    say_too_large(json, proof.is_too_large);
    return json;
}

Json choice_json(const PlanChoice& choice) {
    Json json;
    json["extra_laps"] = choice.extra_laps;
    json["unbalanced"] = choice.unbalanced;
    json["sticks"] = choice.sticks;
    json["lower_bound"] = choice.lower_bound;
    json["proved"] = choice.proved;
    json["trim"] = choice.trim;
    json["pool"] = choice.pool;
    say_too_large(json, choice.is_too_large);
    return json;
}

/// `each` is the longest; `sides` says how many there are of which length.
void put_closures(Json& json, const Closures& closures, Marks marks) {
    Length longest;
    json["sides"] = Json::array();
    for (const ClosureSide& side : closures.sides) {
        longest = std::max(longest, side.blank);
        Json own{{"count", side.count}, {"ear_deg", micro_rounded(side.ear_degrees)}};
        put_length(own, "apart", side.apart, marks);
        put_length(own, "blank", side.blank, marks);
        json["sides"].push_back(own);
    }
    put_length(json, "each", longest, marks);
    put_length(json, "web", closures.web, marks);
    put_length(json, "leg", closures.leg, marks);
    put_length(json, "ear", closures.ear, marks);
    put_length(json, "girth", closures.girth, marks);
    json["sticks"] = closures.sticks;
}

void put_strips(Json& json, const std::string& edge, const Strips& strips, Marks marks) {
    if (strips.strip == nullptr) {
        return;
    }
    Json own{{"edge", edge},
             {"strip", strips.strip->id},
             {"full", strips.full},
             {"rests", strips.rests},
             {"fasteners", strips.fasteners},
             {"problem", strips.problem.english(marks)}};
    put_length(own, "rest", strips.rest, marks);
    put_length(own, "girth", strips.girth, marks);
    json["strips"].push_back(own);
}

Json points_of(const FlatOutline& outline) {
    Json points = Json::array();
    for (const FlatPoint& p : outline) {
        points.push_back({p.x, p.y});
    }
    return points;
}

/// One for each open end that takes a cap, of that hand; none where it cannot be made.
void put_end_caps(Json& json, const EdgeWork& work, const Desk& desk) {
    const auto made = end_cap_on(work, desk);
    if (!made || !*made) {
        return;
    }
    for (const Side side : capped_ends(work.edge)) {
        const EndCap cap = cap_for(**made, side);
        Json own{{"edge", work.edge.id},
                 {"end", word_of(side)},
                 {"corner_deg", micro_rounded(cap.corner_degrees)},
                 {"outline_nm", points_of(cap.outline)},
                 {"folds_nm",
                  {points_of({cap.flange.fold.a, cap.flange.fold.b}),
                   points_of({cap.face.fold.a, cap.face.fold.b})}}};
        put_length(own, "flange", cap.flange.width, desk.marks);
        put_length(own, "face", cap.face.width, desk.marks);
        put_length(own, "down", cap.flange.down, desk.marks);
        put_length(own, "lip", cap_lip, desk.marks);
        put_length(own, "lower", cap.lower, desk.marks);
        put_length(own, "wide", cap.wide, desk.marks);
        put_length(own, "high", cap.high, desk.marks);
        json["end_caps"].push_back(own);
    }
}

}  // namespace

std::string_view word_of(Severity severity) {
    switch (severity) {
        case Severity::problem:
            return "problem";
        case Severity::measure_again:
            return "measure_again";
        case Severity::note:
            return "note";
    }
    return "problem";
}

Json problem_json(const PlanProblem& problem, const Desk& desk) {
    const TablePlace place = place_of(desk.table, problem.edge, problem.field);
    Json json;
    json["line"] = place.line;
    json["column"] = place.column;
    json["edge"] = problem.edge;
    json["field"] = problem.field;
    json["severity"] = word_of(problem.severity);
    json["what"] = problem.what.english(desk.marks);
    json["mend"] = problem.mend.english(desk.marks);
    return json;
}

Json plan_json(const Desk& desk) {
    Json json;
    for (const char* key : {"edges", "sticks", "proof", "problems", "choices", "closures", "strips",
                            "end_caps", "fixing"}) {
        json[key] = Json::array();
    }
    for (const Run& run : desk.plan.runs) {
        json["edges"].push_back(run_json(run, desk.marks));
    }
    for (const PlannedStick& stick : desk.plan.sticks) {
        json["sticks"].push_back(stick_json(stick));
    }
    for (const Proof& proof : desk.plan.proofs) {
        json["proof"].push_back(proof_json(proof));
    }
    if (!desk.expected.empty()) {
        json["expected"] = desk.expected;
    }
    for (const PlanProblem& problem : desk.plan.problems) {
        json["problems"].push_back(problem_json(problem, desk));
    }
    for (const PlanChoice& choice : desk.plan.choices) {
        json["choices"].push_back(choice_json(choice));
    }
    for (const EdgeWork& work : desk.job.edges) {
        const Closures closures = closures_on(work, desk);
        if (closures.count > 0) {
            json["closures"].push_back({{"edge", work.edge.id}, {"count", closures.count}});
            put_closures(json["closures"].back(), closures, desk.marks);
            json["closures"].back()["fasteners"] = closures.count * closure_fasteners;
            json["closures"].back()["pinned"] = is_pinned_at(work.edge.kind, desk.job.practice);
        }
        put_strips(json, work.edge.id, strips_on(work, desk), desk.marks);
        put_end_caps(json, work, desk);
    }
    json["fixed_line"] = {
        {"line", fixed_line_of(desk.job.practice) == FixedLine::ridge ? "ridge" : "eave"},
        {"assumed", desk.job.practice.fixed_line == FixedLine::unsaid}};
    for (const Run& run : desk.plan.runs) {
        const FixingTally fixing = fixing_on(run, desk);
        json["fixing"].push_back({{"edge", run.edge},
                                  {"trim", run.trim},
                                  {"screws", fixing.screws},
                                  {"laps", fixing.laps},
                                  {"cartridges", fixing.cartridges}});
        put_length(json["fixing"].back(), "bead", fixing.bead, desk.marks);
    }
    return json;
}

}  // namespace hemline
