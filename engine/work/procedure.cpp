// Steps of one edge: the procedure gone through piece by piece, with numbers and what is done.
#include "engine/work/procedure.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <string_view>
#include <utility>

#include "engine/plan/plan.h"
#include "engine/record/job.h"
#include "engine/roof/edge_shape.h"
#include "engine/work/fixing.h"
#include "engine/work/procedure_words.h"
#include "engine/work/readiness.h"

namespace hemline {
namespace {

using StepOf = std::pair<std::string_view, int>;  ///< id of a step, and piece

/// What is recorded of an edge, each found at once.
struct Recorded {
    explicit Recorded(const EdgeWork& work);

    [[nodiscard]] const CutPiece* cut_of(TrimRole role, int piece) const {
        const auto found = cuts.find({role, piece});
        return found == cuts.end() ? nullptr : found->second;
    }

    std::map<std::pair<TrimRole, int>, const CutPiece*> cuts;  ///< the latest of each piece
    std::multimap<StepOf, const DoneStep*> steps;
    std::map<StepOf, const Undecided*> steps_apart;  ///< ticked by two tablets, no one has picked
    const Undecided* finish_apart = nullptr;
};

Recorded::Recorded(const EdgeWork& work) {
    for (const CutPiece& cut : work.cut) {
        cuts[{cut.role, cut.piece}] = &cut;
    }
    for (const DoneStep& done : work.steps) {
        steps.emplace(StepOf{done.step.step, done.step.piece}, &done);
    }
    for (const Undecided& one : work.undecided) {
        if (one.thing.subject == Subject::step) {
            steps_apart.emplace(StepOf{one.thing.step, one.thing.piece}, &one);
        } else if (one.thing.subject == Subject::finish && finish_apart == nullptr) {
            finish_apart = &one;
        }
    }
}

/// Everything that the steps of one edge are made from.
struct EdgeInHand {
    const EdgeWork& work;
    const Plan& plan;
    const Practice& practice;
    const std::vector<StepRule>& procedure;
    const Catalogue& catalogue;
    Recorded recorded;
    Text reading_missing;
    Closures closures;

    [[nodiscard]] const Run* run(TrimRole role) const { return find_run(plan, work.edge.id, role); }
};

std::int64_t screws_planned_on(const Run& run, int number, const EdgeInHand& ground) {
    const PlannedPiece* piece = find_piece(run, number);
    const Trim* trim = ground.catalogue.find(run.trim);
    if (piece == nullptr || trim == nullptr) {
        return 0;
    }
    const Edge& edge = ground.work.edge;
    const FreeEnds ends = free_ends_of(run, *piece, edge, *trim, ground.practice);
    const auto on_one_leg = screws_of(piece->cut, ends.left, ends.right, ground.practice).size();
    return static_cast<std::int64_t>(on_one_leg) * screw_lines(edge.kind, run.role);
}

/// "126.9": to a tenth, as a bevel gauge or a digital level shows it.
std::string tenths(double value) {
    const auto count = std::llround(value * 10);
    return std::to_string(count / 10) + "." + std::to_string(count % 10);
}

std::optional<Text> number_for(std::string_view word, const EdgeInHand& ground, const Run& run,
                               int piece) {
    const PlannedPiece* planned = find_piece(run, piece);
    const Trim* trim = ground.catalogue.find(run.trim);
    if (word == "edge") {
        return Text(ground.work.edge.id);
    }
    if (word == "pieces") {
        return Text(std::to_string(run.pieces.size()));
    }
    if (word == "lap") {
        return run.lap;
    }
    if (word == "spacing") {
        return ground.practice.screw_spacing;
    }
    if (word == "beads") {
        return Text(std::to_string(bead_offsets(run.lap, ground.practice).size()));
    }
    if (word == "fold" || word == "toward") {
        const auto fold = fold_at(ground.work.edge);
        return !fold            ? say("its angle, once the pitch is taken")
               : word == "fold" ? Text(tenths(fold->included_degrees) + "°")
                                : spoken(fold->toward);
    }
    if (word == "closures") {
        return Text(std::to_string(ground.closures.count));
    }
    if (word == "closure") {
        return ground.closures.each;
    }
    if (word == "trim") {
        return trim != nullptr ? say(trim->name) : Text(run.trim);
    }
    if (word == "reason" && ground.work.sent_back) {
        return Text(ground.work.sent_back->reason);
    }
    if (word == "piece") {
        return Text(std::to_string(piece));
    }
    if (word == "neighbour") {
        return Text(std::to_string(piece - 1));
    }
    if (word == "cut" && planned != nullptr) {
        return planned->cut;
    }
    if (word == "screws") {
        return Text(std::to_string(screws_planned_on(run, piece, ground)));
    }
    return {};
}

/// With the edge's own lap where it has one.
Practice practice_on(const Edge& edge, const Practice& practice) {
    const auto own = with_lap(practice, edge.kind, lap_on(edge, practice));
    return edge.lap && own ? *own : practice;  // where it cannot be there is no run, and no step
}

/// The rule's action with the values that it names.
Text action_of(const StepRule& rule, int piece, const EdgeInHand& ground, const Run& run) {
    Text action = say(rule.action);
    for (const std::string& word : words_in_braces(rule.action)) {
        if (const std::optional<Text> value = number_for(word, ground, run, piece)) {
            action.names.push_back(word);
            action.values.push_back(*value);
        }
    }
    return action;
}

bool is_recorded(const StepRule& rule, int piece, const EdgeInHand& ground, bool after_cut) {
    const CutPiece* cut = after_cut ? ground.recorded.cut_of(role_of(rule.each), piece) : nullptr;
    const auto [from, to] = ground.recorded.steps.equal_range(StepOf{rule.id, piece});
    return std::any_of(from, to,
                       [&](const auto& done) { return !after_cut || stands(*done.second, cut); });
}

/// The tick of this step, when two tablets made it apart and no one has picked.
const Undecided* made_apart(const StepRule& rule, int piece, const Recorded& recorded) {
    if (rule.asks == Asks::tick) {
        return recorded.finish_apart;
    }
    const auto found = recorded.steps_apart.find(StepOf{rule.id, piece});
    return found == recorded.steps_apart.end() ? nullptr : found->second;
}

/// `after_cut`: the piece's own cut comes before this step in the procedure.
Step step_of(const StepRule& rule, int piece, const EdgeInHand& ground, const Run& run,
             bool after_cut) {
    Step step;
    step.rule = &rule;
    step.piece = piece;
    step.action = action_of(rule, piece, ground, run);
    if (rule.asks == Asks::length) {
        const Practice practice = practice_on(ground.work.edge, ground.practice);
        step.length_least = length_limit(rule.least, practice);
        step.length_most = length_limit(rule.most, practice);
    }
    if (rule.asks == Asks::count) {
        const PlannedCounts planned{screws_planned_on(run, piece, ground), ground.closures.count};
        step.count_least = count_limit(rule.least, planned);
        step.count_most = count_limit(rule.most, planned);
    }
    const TrimRole role = role_of(rule.each);
    switch (rule.asks) {
        case Asks::cut:
            step.done = ground.recorded.cut_of(role, piece) != nullptr;
            step.waits_for =
                step.done ? Text() : cut_waits_for(ground.work, run, piece, ground.reading_missing);
            break;
        case Asks::remainder:
            step.done = remainder_missing(ground.work, run).empty();
            // Once the neighbour is fastened the reading itself is what comes next: nothing to wait
            // for.
            step.waits_for = step.done || is_fastened(ground.work, piece - 1)
                                 ? Text()
                                 : say("Fasten piece {1} first.", piece - 1);
            break;
        case Asks::tick:
            step.done = ground.work.finished.has_value();
            break;
        default:
            step.done = is_recorded(rule, piece, ground, after_cut);
            if (after_cut && !step.done && ground.recorded.cut_of(role, piece) == nullptr) {
                step.waits_for = say("Cut piece {1} first.", piece);
            }
    }
    if (const auto* apart = made_apart(rule, piece, ground.recorded)) {
        step.done = false;
        step.waits_for = apart->why;
    }
    return step;
}

bool comes_for(const StepRule& rule, const Run& run, int piece) {
    const bool has_neighbour = piece != run.pieces.front().number;
    const bool last = piece == run.pieces.back().number;
    switch (rule.each) {
        case Each::trim_lap:
            return has_neighbour && run.lap > Length();
        case Each::last_trim_piece:
            return last && (rule.asks != Asks::remainder || needs_remainder(run, piece));
        default:
            return true;
    }
}

/// The edge has such an end, or was sent back, where the rule asks for it.
bool has_cause(const EdgeInHand& ground, const StepRule& rule) {
    const Edge& edge = ground.work.edge;
    if (rule.each == Each::sent_back && !ground.work.sent_back) {
        return false;
    }
    return !rule.when || edge.left == *rule.when || edge.right == *rule.when;
}

using Rules = std::vector<StepRule>::const_iterator;

/// A block of rules for one run's pieces: all rules for piece 1, then all for piece 2.
void go_through_pieces(std::vector<Step>& steps, Rules from, Rules to, const EdgeInHand& ground,
                       const Run& run) {
    for (const PlannedPiece& piece : run.pieces) {
        bool after_cut = false;
        for (auto rule = from; rule != to; ++rule) {
            if (!has_cause(ground, *rule) || !comes_for(*rule, run, piece.number)) {
                continue;
            }
            steps.push_back(step_of(*rule, piece.number, ground, run, after_cut));
            after_cut = after_cut || rule->asks == Asks::cut;
        }
    }
}

/// An edge step stands in a part of the wrap or the cleat only for their sake.
const Run* run_of_part(const EdgeInHand& ground, const std::string& part) {
    const auto of_pieces = std::find_if(
        ground.procedure.begin(), ground.procedure.end(),
        [&](const StepRule& rule) { return rule.part == part && is_of_pieces(rule.each); });
    return ground.run(of_pieces == ground.procedure.end() ? TrimRole::main
                                                          : role_of(of_pieces->each));
}

}  // namespace

std::vector<Step> steps_of(const EdgeWork& work, const Plan& plan, const Practice& practice,
                           const std::vector<StepRule>& procedure, const Catalogue& catalogue) {
    const Length length = work.length(practice).value_or(Length());
    const EdgeInHand ground{work,
                            plan,
                            practice,
                            procedure,
                            catalogue,
                            Recorded(work),
                            reading_missing(work, practice),
                            closures_of(work.edge, length, practice)};
    const Run none;
    const bool runs = has_run(work.edge.kind);
    const Run* main = runs ? ground.run(TrimRole::main) : &none;
    std::vector<Step> steps;
    if (main == nullptr || (runs && main->pieces.empty())) {
        return steps;
    }
    for (auto rule = procedure.begin(); rule != procedure.end();) {
        if (!is_of_pieces(rule->each)) {
            if ((!runs || run_of_part(ground, rule->part) != nullptr) && has_cause(ground, *rule)) {
                steps.push_back(step_of(*rule, 0, ground, *main, false));
            }
            ++rule;
            continue;
        }
        const TrimRole role = role_of(rule->each);
        const auto end = std::find_if(rule, procedure.end(), [&](const StepRule& next) {
            return !is_of_pieces(next.each) || role_of(next.each) != role;
        });
        if (const Run* run = ground.run(role); run != nullptr && !run->pieces.empty()) {
            go_through_pieces(steps, rule, end, ground, *run);
        }
        rule = end;
    }
    const bool all_done = std::all_of(steps.begin(), steps.end(), [](const Step& step) {
        return step.done || step.rule->asks == Asks::tick;
    });
    for (Step& step : steps) {
        if (step.rule->asks == Asks::tick && !step.done && !all_done) {
            step.waits_for = say("Finish the steps before it first.");
        }
    }
    return steps;
}

std::optional<std::size_t> next_step(const std::vector<Step>& steps) {
    const bool ticked = std::any_of(steps.begin(), steps.end(), [](const Step& step) {
        return step.done && step.rule->asks == Asks::tick;
    });
    const auto next =
        std::find_if(steps.begin(), steps.end(), [](const Step& step) { return !step.done; });
    if (ticked || next == steps.end()) {
        return {};
    }
    return static_cast<std::size_t>(next - steps.begin());
}

}  // namespace hemline
