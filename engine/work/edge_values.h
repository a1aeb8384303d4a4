// The values of an edge against practice, as the foreman looks at them before he signs it off.
//
//   what                          value        wanted            outside            by, when
//   Length, of readings           31 ft 7 in   1/8 in apart      …                  Ada, 9:41
//   Hook piece 1 on the cleat …   1/8 in       at most 1/16 in   over the most: …   Ada, 10:12
#pragma once

#include <span>
#include <string>
#include <vector>

#include "engine/work/procedure.h"

namespace hemline {

struct DoneStep;
struct EdgeWork;
struct Job;
struct Plan;

struct EdgeValue {
    Text what, value;
    Text wanted;           ///< practice or the plan; empty: nothing to compare it with
    Text outside;          ///< a sentence why it is outside practice; empty: it is within
    std::string noted_by;  ///< who accepted that; empty: nobody
    std::string by;        ///< who measured, cut or looked; empty: computed
    WallTime clock;        ///< where `by` is not empty
    std::string key;       ///< of what it is and which value it has: another value is not accepted
    std::string accepted_by;  ///< the foreman, who lets stand what is outside; empty: not yet
};

/// What is outside practice and not accepted: each is for the foreman to accept or to send back.
std::vector<EdgeValue> not_accepted(const std::vector<EdgeValue>& values);

/// What the values are read from; `events` are the job's, in_order().
struct ValuesOf {
    const Job& job;
    const Plan& plan;
    const Catalogue& catalogue;
    std::span<const Event> events;
};

/// In the order of work: readings, pitch, pieces planned and cut, what was left, then every step
/// that was answered with a value. A value that practice no longer accepts counts as outside even
/// if nobody noted it.
std::vector<EdgeValue> edge_values(const ValuesOf& of, const EdgeWork& work,
                                   const std::vector<Step>& steps);

/// The answers that someone accepted outside practice.
std::vector<const DoneStep*> exceptions_on(const EdgeWork& work);

/// "at least 6 in, at most 7 in"; empty when the step has no limits.
Text limits_of(const Step& step);
/// "6 1/4 in", "9", what was seen, or "done".
Text answer_words(const Answer& answer);

}  // namespace hemline
