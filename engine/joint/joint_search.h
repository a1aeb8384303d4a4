// The plans found so far for a joint job, and the bounds they are measured by.
#pragma once

#include <map>
#include <memory>
#include <set>

#include "engine/joint/branch.h"
#include "engine/joint/relaxations.h"

namespace hemline {

/// No plan within what is allowed takes fewer sticks.
struct AllowedBound {
    std::int64_t sticks = 0;
    std::string from;
    std::shared_ptr<const std::vector<JointBound>> relaxed;  ///< nullptr: none, or no room for it
    std::vector<JointPart> parts;
    bool is_too_large = false;  ///< no room for the tables of a better bound
};

class JointSearch {
  public:
    JointSearch(const JointJob& job, const CuttingEffort& effort);

    /// The plan that comes first by this preference.
    void find_first(Prefer prefer);
    /// All plans worth a choice.
    void find_choices();
    /// The plans found, each measured by its bound; by laps, then unbalanced edges.
    std::vector<JointPlan> plans();

  private:
    struct Kept {
        JointPlan plan;
        Chosen chosen;
    };

    /// Every edge even, at the fewest laps.
    void find_even();
    void find_fewest_sticks();
    [[nodiscard]] Chosen all_by(Ask ask) const;
    bool try_chosen(const Chosen& chosen);
    void try_relaxed(const Relaxed& relaxed);
    void try_other_options(std::size_t from, std::int64_t wanted);
    void try_balancing();
    void try_gaps();
    void look_at_laps(std::int64_t extra_laps);

    [[nodiscard]] std::optional<std::int64_t> fewest(Allowed allowed) const;
    /// As if every edge were free to run out.
    const AllowedBound& bound_of_free(std::int64_t extra_laps);
    /// Looks at every relaxation within what is allowed, and tries those that may save a stick.
    const AllowedBound& bound(Allowed allowed);
    AllowedBound look_through(Allowed allowed);
    /// Bounds by prices of divisions and fillings together; works with any stock.
    AllowedBound branch(Allowed allowed);
    /// Keeps what a bound rests on while there is room.
    std::shared_ptr<const std::vector<JointBound>> kept(std::vector<JointBound> relaxed);
    /// The linear program for so many laps; none where edges differ too much.
    struct Priced {
        Priced(const JointJob& job, JointNeeds own);

        JointNeeds needs;
        JointProgram program;
        std::size_t lengths = 0;
        bool is_warm = false;  ///< it has solved one branch, so its columns are known
    };
    Priced* priced(std::int64_t extra_laps);
    static std::int64_t steps_of(const Priced& priced);
    std::size_t option_for(const JointProgram::Division& division);

    const JointJob& job_;
    Effort effort_;
    std::vector<EdgeWays> ways_;
    std::vector<std::vector<std::size_t>> alike_;
    bool can_relax_ = false;
    std::int64_t laps_least_ = 0, counted_ = 0;
    std::int64_t pieces_ = 0;  ///< of all edges, each by its first way
    std::vector<Kept> kept_;
    std::set<Chosen> tried_;
    std::set<Chosen> turned_;  ///< plans whose single edges were changed to other options
    std::map<std::int64_t, std::unique_ptr<Priced>> priced_;
    std::set<std::int64_t> no_room_for_;  ///< numbers of laps for which the program is too large
    std::int64_t kept_bytes_ = 0;
    std::map<std::int64_t, AllowedBound> of_free_;
    std::map<std::pair<std::int64_t, std::int64_t>, AllowedBound> bounds_;
};

}  // namespace hemline
