// The steps of an edge: its procedure, piece by piece, with numbers and what is done already.
#include "engine/work/procedure.h"

#include <algorithm>
#include <string_view>
#include <utility>

#include "engine/plan/plan.h"
#include "engine/record/gate_words.h"
#include "engine/roof/edge_shape.h"
#include "engine/work/corner_words.h"
#include "engine/work/edge_in_hand.h"
#include "engine/work/readiness.h"

namespace hemline {
namespace {

/// With the edge's lap where one was chosen for it.
Practice practice_on(const Edge& edge, const Practice& practice) {
    const auto own = with_lap(practice, edge.kind, lap_on(edge, practice));
    return edge.lap && own ? *own : practice;  // no lap: then there is no run and no step
}

bool is_recorded(const StepRule& rule, int piece, const EdgeInHand& ground, bool after_cut) {
    const CutPiece* cut = after_cut ? ground.recorded.cut_of(role_of(rule.each), piece) : nullptr;
    const auto [from, to] = ground.recorded.steps.equal_range(StepOf{rule.id, piece});
    return std::any_of(from, to,
                       [&](const auto& done) { return !after_cut || stands(*done.second, cut); });
}

/// The last no to this check that nobody lifted after it was said; null: there is none. Another
/// person's yes lifts nothing.
const DoneStep* no_to(const StepRule& rule, const Recorded& recorded) {
    const auto [from, to] = recorded.steps.equal_range(StepOf{rule.id, 0});
    const DoneStep* no = nullptr;
    std::int64_t lifted = 0;
    std::for_each(from, to, [&](const auto& answered) {
        const DoneStep& done = *answered.second;
        if (says_no(done.step)) {
            no = no == nullptr || no->place < done.place ? &done : no;
        } else if (!done.step.exception_by.empty()) {
            lifted = std::max(lifted, done.place);
        }
    });
    return no != nullptr && no->place > lifted ? no : nullptr;
}

/// The answer of this step when two tablets disagree about it and nobody has picked.
const Undecided* made_apart(const StepRule& rule, int piece, const Recorded& recorded) {
    if (rule.asks == Asks::tick) {
        return recorded.finish_apart;
    }
    const auto found = recorded.steps_apart.find(StepOf{rule.id, piece});
    return found == recorded.steps_apart.end() ? nullptr : found->second;
}

/// `after_cut`: the cut of the piece comes before this step in the procedure.
Step step_of(const StepRule& rule, int piece, const EdgeInHand& ground, const Run& run,
             bool after_cut) {
    Step step;
    step.rule = &rule;
    step.piece = piece;
    step.action = action_of(rule, piece, ground, run);
    if (rule.asks == Asks::length) {
        const Practice practice = practice_on(ground.work.edge, ground.practice);
        const LengthLimits own = own_limits(rule, piece, ground);
        step.length_least = own.least ? own.least : length_limit(rule.least, practice);
        step.length_most = own.most ? own.most : length_limit(rule.most, practice);
    }
    if (rule.asks == Asks::count) {
        const PlannedCounts planned = counts_planned(ground, run, piece);
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
            // Once the neighbor is fastened, the reading comes next: nothing to wait for.
            step.waits_for = step.done || is_fastened(ground.work, piece - 1)
                                 ? Text()
                                 : say("Fasten piece {1} first.", piece - 1);
            break;
        case Asks::tick:
            step.done = ground.work.finished.has_value();
            break;
        case Asks::safe: {
            const DoneStep* const no = no_to(rule, ground.recorded);
            const std::optional<SaidNo>& said = ground.work.said_no;
            step.done = no == nullptr && !said;
            if (!step.done) {
                step.refused_by = said ? said->by : no->by;
                step.waits_for =
                    said ? say("{1} said no to {2}: not today, or not here. The foreman alone "
                               "lifts it.",
                               said->by, spoken(said->checks))
                         : say("{1} said no: not today, or not here. The foreman alone lifts it.",
                               no->by);
            }
            break;
        }
        default:
            step.done = is_recorded(rule, piece, ground, after_cut);
            if (after_cut && !step.done && ground.recorded.cut_of(role, piece) == nullptr) {
                step.waits_for = say("Cut piece {1} first.", piece);
            }
    }
    if (rule.id == strip_cut_step) {
        step.doubt = ground.strips.problem;
    }
    if (const auto* apart = made_apart(rule, piece, ground.recorded)) {
        step.done = false;
        step.waits_for = apart->why;
    }
    return step;
}

/// Whether the neighbor's metal at the corner is fastened: its right end where this is a left end.
bool is_up(const EdgeWork& neighbor, Side at, const Plan& plan) {
    const Run* const run = find_run(plan, neighbor.edge.id, TrimRole::main);
    if (run == nullptr || run->pieces.empty()) {
        return neighbor.finished.has_value();
    }
    const PlannedPiece& piece =
        at == first_fitted(neighbor.edge) ? run->pieces.front() : run->pieces.back();
    return neighbor.finished || is_fastened(neighbor, piece.number);
}

/// Whether this edge is asked for the closed corner at that end: of the two it lies over, or the
/// other was finished before this one was up. What was finished without it stays so.
bool is_asked_of_corner(const EdgeInHand& ground, const StepRule& rule, const EdgeEnds& ends,
                        Side side) {
    const EdgeWork* const mate = side == Side::left ? ground.mates.left : ground.mates.right;
    if (mate == nullptr) {
        return ends.lies_over(side);
    }
    const bool open = !ground.work.finished || ground.recorded.steps.count(StepOf{rule.id, 0}) > 0;
    return open && is_up(*mate, other(side), ground.plan) &&
           (mate->finished || ends.lies_over(side));
}

/// Whether the edge, or that piece of the run (0: any of them), has the end that the rule is for.
bool has_end(const EdgeInHand& ground, const StepRule& rule, const Run& run, int piece) {
    const EdgeEnds ends{ground.work.edge, run, ground.catalogue.find(run.trim), ground.practice};
    const auto is_there = [&](Side side) {
        return end_at(ends.edge, side) == *rule.when && ends.holds(side, piece) &&
               !(rule.at_foot && side == Side::right) &&
               (!rule.when_last_up || is_asked_of_corner(ground, rule, ends, side));
    };
    return !rule.when || is_there(Side::left) || is_there(Side::right);
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

/// Whether the edge was sent back, somebody said no, and all else holds that the rule asks for but
/// ends.
bool has_cause(const EdgeInHand& ground, const StepRule& rule) {
    if ((rule.each == Each::sent_back && !ground.work.sent_back) || rule.asks == Asks::prompt) {
        return false;
    }
    if (rule.asks == Asks::safe && !ground.work.said_no &&
        ground.recorded.steps.count(StepOf{rule.id, 0}) == 0) {
        return false;
    }
    return std::all_of(rule.only.begin(), rule.only.end(),
                       [&](Only only) { return holds(only, ground); });
}

using Rules = std::vector<StepRule>::const_iterator;

/// A block of rules for the pieces of a run: all rules for piece 1, then all for piece 2.
void go_through_pieces(std::vector<Step>& steps, Rules from, Rules to, const EdgeInHand& ground,
                       const Run& run) {
    for (const PlannedPiece& piece : run.pieces) {
        bool after_cut = false;
        for (auto rule = from; rule != to; ++rule) {
            if (!has_cause(ground, *rule) || !comes_for(*rule, run, piece.number) ||
                !has_end(ground, *rule, run, piece.number)) {
                continue;
            }
            steps.push_back(step_of(*rule, piece.number, ground, run, after_cut));
            after_cut = after_cut || rule->asks == Asks::cut;
        }
    }
}

/// An edge step in a part about the wrap or the cleat is there only because of them.
const Run* run_of_part(const EdgeInHand& ground, const std::string& part) {
    const auto of_pieces = std::find_if(
        ground.procedure.begin(), ground.procedure.end(),
        [&](const StepRule& rule) { return rule.part == part && is_of_pieces(rule.each); });
    return ground.run(of_pieces == ground.procedure.end() ? TrimRole::main
                                                          : role_of(of_pieces->each));
}

}  // namespace

std::optional<Side> end_meant(const StepRule& rule, const Edge& edge) {
    if (rule.when && edge.left == *rule.when) {
        return Side::left;
    }
    return rule.when && !rule.at_foot && edge.right == *rule.when ? std::optional(Side::right)
                                                                  : std::nullopt;
}

CornerMates corner_mates(const EdgeWork& work, const Plan& plan, const Job& job) {
    const auto known = plan.corner_neighbors.find(work.edge.id);
    return known == plan.corner_neighbors.end()
               ? CornerMates()
               : CornerMates{job.find(known->second.left), job.find(known->second.right)};
}

std::vector<Step> steps_of(const EdgeWork& work, const Plan& plan, const Practice& practice,
                           const std::vector<StepRule>& procedure, const Catalogue& catalogue,
                           const CornerMates& mates) {
    const Length length = work.length(practice).value_or(Length());
    const EdgeInHand ground{work,
                            plan,
                            practice,
                            procedure,
                            catalogue,
                            Recorded(work),
                            reading_missing(work, practice),
                            closures_on(work.edge, length, practice, plan),
                            strips_of(work.edge, length, catalogue, practice),
                            catalogue.of(work.edge),
                            mates,
                            find_panels(plan, work.edge.id)};
    const Run none;
    const bool runs = has_run(work.edge.kind);
    const Run* main = runs ? ground.run(TrimRole::main) : &none;
    std::vector<Step> steps;
    if (main == nullptr || (runs && main->pieces.empty())) {
        return steps;
    }
    for (auto rule = procedure.begin(); rule != procedure.end();) {
        if (rule->each == Each::fifth_seam || rule->each == Each::cut_pan) {
            for (const int piece : panel_pieces(rule->each, ground.panels)) {
                steps.push_back(step_of(*rule, piece, ground, *main, false));
            }
            ++rule;
            continue;
        }
        if (!is_of_pieces(rule->each)) {
            if ((!runs || run_of_part(ground, rule->part) != nullptr) && has_cause(ground, *rule) &&
                has_end(ground, *rule, *main, 0)) {
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
    if (work.edge.kind == EdgeKind::panels &&
        (ground.panels == nullptr || ground.panels->layout == nullptr)) {
        for (Step& step : steps) {
            if (!step.done && step.rule->part != "Safety" && step.rule->part != "Plane") {
                step.waits_for = say("These panels are not laid out: look at their plane.");
            }
        }
    }
    if (const std::optional<std::size_t> held = held_step(steps)) {
        for (Step& step : steps) {
            if (!step.done && step.rule->asks != Asks::cut) {
                step.waits_for = steps[*held].waits_for;
            }
        }
    }
    return steps;
}

const StepRule* prompt_of(const std::vector<StepRule>& procedure) {
    const auto prompt = std::find_if(procedure.begin(), procedure.end(), [](const StepRule& rule) {
        return rule.asks == Asks::prompt;
    });
    return prompt == procedure.end() ? nullptr : &*prompt;
}

bool is_on_the_ground(Asks asks) { return asks == Asks::cut || asks == Asks::tick; }

std::optional<std::size_t> held_step(const std::vector<Step>& steps) {
    const auto held = std::find_if(steps.begin(), steps.end(),
                                   [](const Step& step) { return !step.refused_by.empty(); });
    return held == steps.end() ? std::nullopt
                               : std::optional(static_cast<std::size_t>(held - steps.begin()));
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
    if (const std::optional<std::size_t> held = held_step(steps)) {
        const auto cut = std::find_if(steps.begin(), steps.end(), [](const Step& step) {
            return !step.done && step.rule->asks == Asks::cut && step.waits_for.empty();
        });
        return cut == steps.end() ? held
                                  : std::optional(static_cast<std::size_t>(cut - steps.begin()));
    }
    return static_cast<std::size_t>(next - steps.begin());
}

}  // namespace hemline
