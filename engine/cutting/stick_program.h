// The linear program over fillings: how many sticks, in fractions, of each filling found so far.
//
//   least  Σ cost·x     each kind of piece:  Σ count·x ≥ uncut      each limited stock:  Σ x ≤
//   supply
//
// Floating point, so it only suggests: prices to find fillings by, and fillings to try. What it
// suggests is certified elsewhere, in integers.
#pragma once

#include <vector>

#include "engine/cutting/cutting_task.h"
#include "engine/cutting/linear_program.h"

namespace hemline {

class StickProgram {
  public:
    /// Rows for what is uncut and for the limited stock that is left.
    StickProgram(const CuttingTask& task, const std::vector<std::int64_t>& uncut,
                 const std::vector<std::int64_t>& supply);

    /// Offers a filling (its `times` does not count).
    void add(const Filling& filling);

    /// Takes a filling, so many times, off what is uncut and off the stock that is left. The next
    /// solve() goes on from where the last ended.
    void cut(const Filling& filling, std::int64_t times);

    /// Solves over what has been offered. False when the effort ran out first.
    bool solve(Effort& effort) { return program_.solve(effort); }

    [[nodiscard]] double value() const { return program_.value(); }
    /// What one more piece of a kind would cost; 0 where none is uncut.
    [[nodiscard]] double piece_price(std::size_t piece) const;
    /// What one more stick of a limited stock would save; 0 for unlimited stock.
    [[nodiscard]] double stock_price(std::size_t stock) const;

    struct Use {
        const Filling* filling = nullptr;
        double times = 0;
    };
    /// The fillings in use, in the order offered.
    [[nodiscard]] std::vector<Use> uses() const;

  private:
    [[nodiscard]] LinearProgram program_of(const std::vector<std::int64_t>& uncut,
                                           const std::vector<std::int64_t>& supply);

    const CuttingTask& task_;
    std::vector<std::ptrdiff_t> row_of_piece_, row_of_stock_;
    std::vector<Filling> fillings_;
    LinearProgram program_;
};

}  // namespace hemline
