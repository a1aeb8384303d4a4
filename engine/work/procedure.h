// Step procedures as data: what the crew does on an edge, a single action in each step.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/measure/length_text.h"
#include "engine/quantity/length.h"
#include "engine/record/event.h"
#include "engine/record/said_values.h"
#include "engine/words/result_declared.h"

namespace hemline {

struct EdgeWork;
struct Job;
struct Plan;
struct Practice;

/// How often a step comes: once an edge, for each piece of a run, for each lap, only when the
/// foreman sent the edge back, or for a plane's panels as they are laid.
enum class Each {
    edge,
    wrap_piece,
    cleat_piece,
    trim_piece,
    trim_lap,
    last_trim_piece,
    sent_back,
    fifth_seam,  ///< of a plane, from where laying begins
    cut_pan
};
/// How the step is answered. cut: with the cut card; remainder: with the reading for the last
/// piece; tick: by the foreman's sign-off; side: left or right; safe: comes where somebody said no,
/// which holds the edge until the foreman lifts it; prompt: not at all, it stands above the roof
/// steps of whoever begins on the edge.
enum class Asks { done, length, count, seen, cut, remainder, tick, side, safe, prompt };

/// Where a step comes: with a trim under or over the panels; where panels are pinned at the edge or
/// free; where a pipe's boot fits its pan or a curb is built; on a curb so wide that it takes a
/// cricket, or on a narrower one; where the edge has a strip or none; where its two roofs differ in
/// pitch or not; where both sides of a plane run up the slope or a hip or valley bounds it;
/// where it is known on which plane a pipe stands. Each and the next after it exclude each other.
enum class Only {
    under,
    over,
    pinned,
    free,
    boot,
    curb,
    cricket,
    narrow,
    strip,
    bare,
    two_pitches,
    one_pitch,
    up_the_slope,
    slanted,
    on_plane
};

struct StepRule {
    std::string id, part;
    std::optional<End> when;    ///< comes only on an edge, or for its piece, with such an end
    bool at_foot = false;       ///< and only where its left end, the foot, is such an end
    bool when_last_up = false;  ///< and only where its neighbor there is up and did not ask it
    std::vector<Only> only;     ///< and where all of these hold
    Each each = Each::edge;
    Asks asks = Asks::done;
    std::string action;      ///< at most twelve words
    std::string why, wrong;  ///< why it matters; what goes wrong
    std::string caution;     ///< a line before the action; empty: none
    std::string least,
        most;  ///< of the answer: a length, a number, or a practice key ("lap"); empty: none
    std::string source;
};

/// Reads assets/procedures/KIND.csv. Problem: names line and column.
Result<std::vector<StepRule>> read_procedure(std::string_view csv);

/// The end of the edge that the rule is about; none: it has no such end, or the rule names none.
std::optional<Side> end_meant(const StepRule& rule, const Edge& edge);

/// A step of this edge, with its numbers filled in.
struct Step {
    const StepRule* rule = nullptr;
    int piece = 0;  ///< 0: of the edge; of panels the seam or pan
    Text action;
    std::optional<Length> length_least, length_most;
    std::optional<std::int64_t> count_least, count_most;
    bool done = false;
    Text waits_for;  ///< empty, or what must be there first
    Text doubt;      ///< empty, or what speaks against doing it as it says
    std::string
        refused_by;  ///< who said that it is not safe, and no foreman lifted it since; or empty
};

/// The edges around the corners at an edge's ends; null: none there, or not known.
struct CornerMates {
    const EdgeWork* left = nullptr;
    const EdgeWork* right = nullptr;
};
CornerMates corner_mates(const EdgeWork& work, const Plan& plan, const Job& job);

/// All steps of the edge in order, for the run as planned now. Empty while nothing is planned. What
/// is looked at when both sides of a corner are up is asked of the side that lies over; of the
/// other, where that one was finished before.
std::vector<Step> steps_of(const EdgeWork& work, const Plan& plan, const Practice& practice,
                           const std::vector<StepRule>& procedure, const Catalogue& catalogue,
                           const CornerMates& mates = {});

/// What stands above the first roof steps of an edge: tie off; null where the procedure has none.
const StepRule* prompt_of(const std::vector<StepRule>& procedure);
/// Done on the ground or by the foreman: nobody has to be tied off for it.
bool is_on_the_ground(Asks asks);

/// The safety check to which somebody said no; nullopt where there is none.
std::optional<std::size_t> held_step(const std::vector<Step>& steps);

/// The first step not done; nullopt when the edge is finished. Of an edge that is held, what is cut
/// on the ground goes on; then the check that holds it.
std::optional<std::size_t> next_step(const std::vector<Step>& steps);

/// What practice asks of the step's answer, to be kept with it.
PracticeLimits limits_asked(const Step& step);
/// Empty when the answer is within practice, else a sentence: which value, which limit, and why.
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
    undecided,  ///< two tablets disagree about it
    held,       ///< somebody said that it is not safe
    sent_back   ///< by the foreman, and not fixed yet
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
