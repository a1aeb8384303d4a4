// What is wrong with an edge before it is divided: its readings, its trim, its pitch and seam.
#include <algorithm>

#include "engine/plan/plan_parts.h"
#include "engine/roof/edge_shape.h"
#include "engine/trim/pitch_check.h"
#include "engine/words/path_text.h"
#include "engine/words/quote.h"

namespace hemline {

namespace {

/// "eave_rolled or eave_two_part": the main trims of this kind.
Text trims_for(EdgeKind kind, const Catalogue& catalogue) {
    std::vector<Text> names;
    for (const Trim& trim : catalogue.trims()) {
        if (serves(trim, kind) && trim.role == TrimRole::main) {
            names.push_back(say(trim.name));
        }
    }
    return listed(names, say("{1} or {2}"));
}

PlanProblem trim_problem(const Edge& edge, const Catalogue& catalogue) {
    const Text known = trims_for(edge.kind, catalogue);
    if (known.empty()) {
        return {edge.id, "kind", Severity::problem,
                say("The catalogue has no trim for this edge: {1}.", spoken(edge.kind)),
                say("Add one to the catalogue, or change the kind of the edge.")};
    }
    return {edge.id, "trim", Severity::problem,
            say("The catalogue has no trim {1} for this edge: {2}.",
                quoted(spaced(edge.trim).english()), spoken(edge.kind)),
            say("Choose {1}, or leave it empty.", known)};
}

void judge_readings_of(const EdgeWork& work, const Practice& practice, Plan& plan) {
    const Verdict verdict = work.verdict(practice);
    if (const Text doubt = doubt_about_so_long(verdict.length.value_or(Length())); !doubt.empty()) {
        plan.problems.push_back({work.edge.id, "length", Severity::measure_again, doubt,
                                 say("Cross out the readings that are wrong.")});
    }
    const bool third = verdict.agreement == Agreement::third;
    if (third || verdict.agreement == Agreement::disagree) {
        plan.problems.push_back(
            {work.edge.id, "length", third ? Severity::measure_again : Severity::problem,
             explain(verdict),
             third ? say("Read the edge a third time.")
                   : say("Read the edge again, and cross out the readings that are wrong.")});
    }
}

/// Judges the trim on one of the edge's roofs; `field` is the column of that roof's pitch.
void judge_pitch(const Edge& edge, Slope pitch, const std::string& field, const Trim& trim,
                 const Catalogue& catalogue, Plan& plan) {
    const PitchCheck check = check_pitch(pitch, edge.kind, edge.seam, catalogue);
    const auto refused = std::find_if(check.refused.begin(), check.refused.end(),
                                      [&](const Refusal& r) { return r.id == trim.id; });
    if (refused != check.refused.end()) {
        const bool seam_suits =
            edge.seam == Seam::unknown ||
            std::find(trim.seams.begin(), trim.seams.end(), edge.seam) != trim.seams.end();
        const Text serves = listed({check.serves.begin(), check.serves.end()}, say("{1} or {2}"));
        plan.problems.push_back({edge.id, seam_suits ? field : "seam", Severity::problem,
                                 refused->reason,
                                 serves.empty() ? say("Choose panels whose seam serves this pitch.")
                                                : say("Choose the trim {1}.", serves)});
    }
    if (!check.measure_again.empty()) {
        plan.problems.push_back({edge.id, field, Severity::measure_again, check.measure_again,
                                 say("Measure the pitch again, over a longer level.")});
    }
}

void judge_pitches(const Edge& edge, const Trim& trim, const Catalogue& catalogue, Plan& plan) {
    if (!edge.pitch) {
        plan.problems.push_back({edge.id, "pitch", Severity::problem,
                                 say("The pitch behind this edge is not known."),
                                 say("Take the pitch, such as 5/12, 22.6deg or 41%.")});
        return;
    }
    judge_pitch(edge, *edge.pitch, "pitch", trim, catalogue, plan);
    if (!joins_two_roofs(edge.kind)) {
        return;
    }
    if (edge.pitch2) {
        if (*edge.pitch2 != *edge.pitch) {
            judge_pitch(edge, *edge.pitch2, "pitch2", trim, catalogue, plan);
        }
        return;
    }
    const bool transition = facts_of(edge.kind).fold == FoldFrom::change_of_pitch;
    plan.problems.push_back(
        {edge.id, "pitch2", transition ? Severity::problem : Severity::note,
         transition ? say("The pitch of the upper roof is not known, and the fold depends on it.")
                    : say("The pitch of the other roof is not stated: taken as {1}, the same as "
                          "this one's.",
                          *edge.pitch),
         say("Write the other roof's pitch in pitch2.")});
}

/// Fitted from the top, each piece would lie under the piece above it and the laps would let water
/// in.
void judge_first(const Edge& edge, Plan& plan) {
    if (is_sloped(edge.kind) && edge.first == Side::right) {
        plan.problems.push_back({edge.id, "first", Severity::problem,
                                 say("A {1} fitted from its top sheds into its laps; it is planned "
                                     "from its foot.",
                                     spoken(edge.kind)),
                                 say("Leave first empty, or write left: the foot.")});
    }
}

/// No screw stands in a lap, so a long lap spreads the screws on both sides of it.
void judge_lap(const Edge& edge, const Practice& practice, Plan& plan) {
    const Length gap = screw_gap_least(lap_on(edge, practice));
    const bool fits = with_lap(practice, edge.kind, lap_on(edge, practice)).ok();
    if (fits && gap > practice.screw_spacing) {
        plan.problems.push_back(
            {edge.id, "lap", Severity::note,
             say("A lap of {1} leaves {2} from screw to screw across it; the rule is {3}.",
                 lap_on(edge, practice), gap, practice.screw_spacing),
             say("Make the lap {1} or shorter, if that gap is too wide for the code.",
                 practice.screw_spacing - (gap - lap_on(edge, practice)))});
    }
}

/// The faces would lean apart; it is not worked out.
void judge_fascia(const Edge& edge, Plan& plan) {
    const auto turns = [](End end) { return end == End::corner_out || end == End::corner_in; };
    if (edge.kind == EdgeKind::high_eave && edge.fascia == Fascia::square_cut &&
        (turns(edge.left) || turns(edge.right))) {
        plan.problems.push_back(
            {edge.id, "fascia", Severity::problem,
             say("The corner of a high eave with a square-cut fascia is not worked out: its tab "
                 "and lower edge would be cut wrong."),
             say("Cut the fascia plumb there, or fit that corner by hand.")});
    }
}

void judge_ends(const Edge& edge, Plan& plan) {
    for (const Side side : {Side::left, Side::right}) {
        if (!can_end_at(edge.kind, side, end_at(edge, side))) {
            plan.problems.push_back({edge.id, std::string(word_of(side)), Severity::problem,
                                     say("An end at {1} does not go with this edge: {2}.",
                                         spoken(end_at(edge, side)), spoken(edge.kind)),
                                     say("Add the edge again with the end that it has.")});
        }
    }
}

void judge_lying(const Edge& edge, const Trim& trim, const Catalogue& catalogue, Plan& plan) {
    if (!must_lie_over(edge) || trim.panels == Panels::over) {
        return;
    }
    std::vector<Text> over;
    for (const Trim& one : catalogue.trims()) {
        if (serves(one, edge.kind) && one.role == TrimRole::main && one.panels == Panels::over) {
            over.push_back(say(one.name));
        }
    }
    plan.problems.push_back(
        {edge.id, "trim", Severity::problem,
         say("Its foot is at an outside corner, on the panels: {1} lies under them and sheds there "
             "behind the trim below.",
             say(trim.name)),
         over.empty() ? say("Add a trim over the panels to the catalogue.")
                      : say("Choose {1}, or leave it empty.", listed(over, say("{1} or {2}")))});
}

}  // namespace

void judge_edge(const EdgeWork& work, const Job& job, const Catalogue& catalogue, Plan& plan) {
    if (!has_run(work.edge.kind)) {
        return;
    }
    judge_readings_of(work, job.practice, plan);
    const Trim* trim = main_trim(work.edge, catalogue);
    if (trim == nullptr) {
        plan.problems.push_back(trim_problem(work.edge, catalogue));
        return;
    }
    judge_ends(work.edge, plan);
    judge_lying(work.edge, *trim, catalogue, plan);
    judge_first(work.edge, plan);
    judge_lap(work.edge, job.practice, plan);
    judge_fascia(work.edge, plan);
    judge_pitches(work.edge, *trim, catalogue, plan);
}

const Trim* main_trim(const Edge& edge, const Catalogue& catalogue) {
    const Trim* trim = catalogue.of(edge);
    const bool fits = trim != nullptr && serves(*trim, edge.kind) && trim->role == TrimRole::main;
    return fits ? trim : nullptr;
}

}  // namespace hemline
