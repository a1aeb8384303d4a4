// The linear program over divisions and fillings together. The price of each row (its dual price:
// what one more unit of it would cost; Dantzig, Linear Programming and Extensions, 1963) gives a
// bound; how much of each column it uses suggests plans.
//
//   each edge      Σ division             ≥ 1
//   each length    made − needed, cut down to the next shorter ≥ 0
//   Σ laps·division ≤ laps     Σ unbalanced·division ≤ unbalanced     limited stock ≤ supply
#pragma once

#include "engine/cutting/linear_program.h"
#include "engine/joint/worth.h"

namespace hemline {

/// About how many bytes pricing that many lengths and one solution take.
std::int64_t bytes_of_program(const JointJob& job, const JointNeeds& needs, std::size_t lengths);

class JointProgram {
  public:
    struct Division {
        std::size_t edge = 0, of_class = 0;
        std::vector<Length> cuts;
    };
    struct Answer {
        JointWorths worths;            ///< the best bound that its prices gave
        double value = 0;              ///< sticks, in fractions
        std::vector<double> division;  ///< how much of each known division
        bool is_solved = false;        ///< false: the effort ran out first
    };

    /// `lengths`: the lengths that are told apart, rising; the last is the stick. Whatever it is
    /// given must outlive it.
    JointProgram(const JointJob& job, const JointNeeds& needs, std::vector<Length> lengths);

    /// The fewest sticks within what is allowed; `fixed`: the known division that an edge takes, if
    /// any. It stops once the bound reaches `enough`.
    Answer solve(const DivisionSets& allowed, const std::vector<std::optional<std::size_t>>& fixed,
                 std::int64_t laps, std::int64_t unbalanced, std::int64_t enough, Effort& effort);

    /// All divisions found so far; they keep their index.
    [[nodiscard]] const std::vector<Division>& divisions() const { return divisions_; }

  private:
    struct Made {
        std::size_t stock = 0;
        std::vector<std::pair<std::size_t, std::int64_t>> parts;  ///< place of the length, count
    };
    /// A single solve(): which rows and columns the program has.
    struct Round;

    void know(Division division);
    void add_division(Round& round, std::size_t index) const;
    void add_filling(Round& round, const Made& made) const;
    [[nodiscard]] JointWorths priced(const Round& round) const;
    bool price_sticks(Round& round, JointWorths& worths, Effort& effort);
    bool price_edges(Round& round, JointWorths& worths, Effort& effort);
    [[nodiscard]] std::size_t at_least(Length length) const;

    const JointJob& job_;
    const JointNeeds& needs_;
    std::vector<Length> lengths_;
    CuttingTask task_;  ///< a piece of each length, the longest first
    std::vector<std::int64_t> count_most_;
    std::vector<Division> divisions_;
    std::vector<std::vector<std::size_t>> of_edges_;  ///< the divisions of each edge
    std::vector<Made> fillings_;
    std::int64_t scale_ = 1;
};

}  // namespace hemline
