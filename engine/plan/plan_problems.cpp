// What is wrong with an edge before it is divided: its readings, its trim, its pitch and seam.
#include <algorithm>

#include "engine/plan/plan_parts.h"
#include "engine/quote.h"

namespace hemline {

namespace {

/// "eave_rolled or eave_two_part": the main trims of this kind.
std::string trims_for(EdgeKind kind, const Catalogue& catalogue) {
    std::string list;
    for (const Trim& trim : catalogue.trims()) {
        if (trim.kind == kind && trim.role == TrimRole::main) {
            list += (list.empty() ? "" : " or ") + trim.id;
        }
    }
    return list;
}

PlanProblem trim_problem(const Edge& edge, const Catalogue& catalogue) {
    const std::string known = trims_for(edge.kind, catalogue);
    const std::string kind(spoken(edge.kind));
    if (known.empty()) {
        return {edge.id, "kind", Severity::problem,
                "The catalogue has no trim for this edge: " + kind + ".",
                "Add one to the catalogue, or change the kind of the edge."};
    }
    return {edge.id, "trim", Severity::problem,
            "The catalogue has no trim " + quoted(edge.trim) + " for this edge: " + kind + ".",
            "Choose " + known + ", or leave it empty."};
}

void judge_readings_of(const EdgeWork& work, const Practice& practice, Plan& plan) {
    const Verdict verdict = work.verdict(practice);
    const bool third = verdict.agreement == Agreement::third;
    if (third || verdict.agreement == Agreement::disagree) {
        plan.problems.push_back(
            {work.edge.id, "length", third ? Severity::measure_again : Severity::problem,
             explain(verdict),
             third ? "Read the edge a third time."
                   : "Read the edge again, and strike the readings that are wrong."});
    }
}

void judge_pitch(const Edge& edge, const Trim& trim, const Catalogue& catalogue, Plan& plan) {
    if (!edge.pitch) {
        plan.problems.push_back({edge.id, "pitch", Severity::problem,
                                 "The pitch behind this edge is not known.",
                                 "Take the pitch, such as 5/12, 22.6deg or 41%."});
        return;
    }
    const PitchCheck check = check_pitch(*edge.pitch, edge.kind, edge.seam, catalogue);
    const auto refused = std::find_if(check.refused.begin(), check.refused.end(),
                                      [&](const Refusal& r) { return r.id == trim.id; });
    if (refused != check.refused.end()) {
        const bool seam_suits =
            edge.seam == Seam::unknown ||
            std::find(trim.seams.begin(), trim.seams.end(), edge.seam) != trim.seams.end();
        std::string serves;
        for (const std::string& id : check.serves) {
            serves += (serves.empty() ? "" : " or ") + id;
        }
        plan.problems.push_back({edge.id, seam_suits ? "pitch" : "seam", Severity::problem,
                                 refused->reason,
                                 serves.empty() ? "Choose panels whose seam serves this pitch."
                                                : "Choose the trim " + serves + "."});
    }
    if (!check.measure_again.empty()) {
        plan.problems.push_back({edge.id, "pitch", Severity::measure_again, check.measure_again,
                                 "Measure the pitch again, over a longer level."});
    }
}

}  // namespace

void judge_edge(const EdgeWork& work, const Job& job, const Catalogue& catalogue, Plan& plan) {
    judge_readings_of(work, job.practice, plan);
    const Trim* trim = main_trim(work.edge, catalogue);
    if (trim == nullptr) {
        plan.problems.push_back(trim_problem(work.edge, catalogue));
        return;
    }
    judge_pitch(work.edge, *trim, catalogue, plan);
}

const Trim* main_trim(const Edge& edge, const Catalogue& catalogue) {
    const Trim* trim = catalogue.of(edge);
    const bool fits = trim != nullptr && trim->kind == edge.kind && trim->role == TrimRole::main;
    return fits ? trim : nullptr;
}

}  // namespace hemline
