// Step procedures as data: what the crew does on an edge, one action a step.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/measure/length_text.h"
#include "engine/quantity/length.h"
#include "engine/record/event.h"
#include "engine/record/said_values.h"
#include "engine/words/result.h"

namespace hemline {

struct EdgeWork;
struct Job;
struct Plan;
struct Practice;

/// How often a step comes: once an edge, for each piece of a run, for each lap, or only when the
/// foreman sent the edge back.
enum class Each { edge, wrap_piece, cleat_piece, trim_piece, trim_lap, last_trim_piece, sent_back };
/// What the step is answered with. cut: the cut card; remainder: the reading for the last piece;
/// tick: the foreman's; side: left or right.
enum class Asks { done, length, count, seen, cut, remainder, tick, side };

struct StepRule {
    std::string id, part;
    std::optional<End> when;  ///< comes only on an edge with such an end; none: on every edge
    Each each = Each::edge;
    Asks asks = Asks::done;
    std::string action;      ///< at most twelve words
    std::string why, wrong;  ///< why it matters; what goes wrong
    std::string caution;     ///< one line before the action; empty: none
    std::string least,
        most;  ///< of the answer: a length, a number, or a practice key ("lap"); empty: none
    std::string source;
};

/// Reads assets/procedures/KIND.csv. Problem: names line and column.
Result<std::vector<StepRule>> read_procedure(std::string_view csv);

/// A step of this edge, with its numbers put in.
struct Step {
    const StepRule* rule = nullptr;
    int piece = 0;  ///< 0: of the edge
    Text action;
    std::optional<Length> length_least, length_most;
    std::optional<std::int64_t> count_least, count_most;
    bool done = false;
    Text waits_for;  ///< empty, or what must be there first
};

/// All steps of the edge in order, for the run as planned now. Empty while nothing is planned.
std::vector<Step> steps_of(const EdgeWork& work, const Plan& plan, const Practice& practice,
                           const std::vector<StepRule>& procedure, const Catalogue& catalogue);

/// The first step not done; nullopt when the edge is finished.
std::optional<std::size_t> next_step(const std::vector<Step>& steps);

/// What practice asks of the step's answer, to be kept with it.
PracticeLimits limits_asked(const Step& step);
/// Empty when the answer is within practice, else one sentence: which value, which limit, and why.
Text outside_practice(const Step& step, const Answer& answer);

/// Where an edge stands, for the list and the roof.
enum class EdgeStatus {
    no_reading,
    one_reading,
    readings_disagree,
    pitch_missing,
    ready,
    cutting,
    fitting,
    to_tick,
    finished,
    undecided  ///< two tablets wrote one thing apart
};
EdgeStatus status_of(const EdgeWork& work, const std::vector<Step>& steps,
                     const Practice& practice);
Text spoken(EdgeStatus status);

/// The next cut of the whole job: edge, role, piece; none when nothing can be cut now.
struct NextCut {
    std::string edge;
    TrimRole role = TrimRole::main;
    int piece = 0;
};
std::optional<NextCut> next_cut(const Job& job, const Plan& plan);

}  // namespace hemline
