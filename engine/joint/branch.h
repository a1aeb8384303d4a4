// Finds the plans within so many laps and unbalanced edges, or shows that there are none. It splits
// the possible plans in two again and again: by the class of division that an edge takes, and
// inside a class by how long its pieces are. Each part is bounded by a linear program that gets new
// columns on the way (branch and price: Barnhart et al., Operations Research 46 (1998) 316-329).
#pragma once

#include <functional>

#include "engine/joint/program.h"

namespace hemline {

/// A share from which a division counts as taken whole.
constexpr double whole_enough = 1 - 1e-6;

class JointBranch {
  public:
    /// Cuts the plan of these divisions, one for each edge, and returns the fewest sticks of any
    /// known plan within what is allowed.
    using Try = std::function<std::int64_t(const std::vector<const JointProgram::Division*>&)>;

    /// Divisions and fillings found by the program are used in the next branch too.
    JointBranch(const JointNeeds& needs, JointProgram& program, std::int64_t laps,
                std::int64_t unbalanced, Try try_plan, Effort& effort);

    /// Raises the bound while it is below `sticks`, which gets smaller as better plans are found.
    void close_gap(std::int64_t sticks);

    [[nodiscard]] std::int64_t bound() const { return bound_; }
    /// The parts that prove the bound; together they leave out no way to choose.
    [[nodiscard]] const std::vector<JointPart>& parts() const { return parts_; }

  private:
    enum class Found : std::uint8_t { plan, no_plan, unknown };

    /// Two sets of an edge's divisions that together leave none out.
    struct Fork {
        std::size_t edge = 0;
        DivisionSet one, other;
    };

    Found look(const DivisionSets& allowed, std::int64_t target);
    Found look_at_both(const DivisionSets& allowed, const Fork& fork, const JointWorths& worths,
                       std::int64_t target);
    bool dive(const DivisionSets& allowed, const JointProgram::Answer& from, std::size_t turn,
              std::int64_t target);
    bool try_most_used(const JointProgram::Answer& answer, std::int64_t target);
    [[nodiscard]] std::vector<std::ptrdiff_t> most_used(const JointProgram::Answer& answer) const;
    [[nodiscard]] std::vector<std::size_t> in_parts(const JointProgram::Answer& answer) const;
    [[nodiscard]] std::optional<Fork> fork_by_class(const DivisionSets& allowed,
                                                    const JointProgram::Answer& answer) const;
    [[nodiscard]] std::optional<Fork> fork_by_length(const DivisionSets& allowed,
                                                     const JointProgram::Answer& answer) const;

    const JointNeeds& needs_;
    JointProgram& program_;
    std::int64_t laps_, unbalanced_;
    Try try_plan_;
    Effort& effort_;
    std::int64_t bound_ = 0;
    int nodes_left_ = 0;
    std::vector<JointPart> parts_, leaves_;
};

/// The lengths that are told apart: every length on the grid where those are few, else the lengths
/// of the ways listed; the stick last.
std::vector<Length> lengths_told_apart(const JointNeeds& needs);

}  // namespace hemline
