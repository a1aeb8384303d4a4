// The plan for other programs: lengths in whole nanometres beside their printed form.
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
    for (const char* key :
         {"edges", "sticks", "proof", "problems", "choices", "closures", "fixing"}) {
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
            put_length(json["closures"].back(), "each", closures.each, desk.marks);
            json["closures"].back()["sticks"] = closures.sticks;
        }
    }
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
