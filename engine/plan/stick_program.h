// The linear program over fillings: how many sticks, in fractions, of each filling found so far.
//
//   least  Σ cost·x     each kind of piece:  Σ count·x ≥ uncut      each limited stock:  Σ x ≤
//   supply
//
// Floating point, so it only ever suggests: prices to look for fillings with, fillings to try. What
// it suggests is certified elsewhere, in integers.
#pragma once

#include <vector>

#include "engine/plan/cutting_task.h"
#include "engine/plan/effort.h"

namespace hemline {

class StickProgram {
  public:
    /// Rows for what is uncut and for the limited stock that is left.
    StickProgram(const CuttingTask& task, const std::vector<std::int64_t>& uncut,
                 const std::vector<std::int64_t>& supply);

    /// Offers a filling (its `times` does not count).
    void add(const Filling& filling);

    /// Takes so many of a filling off what is uncut and off the stock that is left. The next
    /// solve() goes on from where the last one ended.
    void cut(const Filling& filling, std::int64_t times);

    /// Solves over what has been offered. False when the effort ran out first.
    bool solve(Effort& effort);

    [[nodiscard]] double value() const;
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
    using Entries = std::vector<std::pair<std::size_t, double>>;
    struct Column {
        Filling filling;
        Entries entries;
        double cost = 0;
    };
    struct Entering {
        std::ptrdiff_t variable = 0;
        double gain = 0;
    };

    [[nodiscard]] double cost_of(std::ptrdiff_t variable) const;
    [[nodiscard]] Entering best_entering() const;
    [[nodiscard]] Entries entries_of(std::ptrdiff_t variable) const;
    [[nodiscard]] std::vector<double> way_of(std::ptrdiff_t variable) const;
    bool pivot(std::ptrdiff_t variable, double gain);
    void exchange(std::ptrdiff_t variable, double gain, std::size_t leaves,
                  const std::vector<double>& way);
    bool lift();
    void invert();

    const CuttingTask& task_;
    std::vector<std::ptrdiff_t> row_of_piece_, row_of_stock_;
    std::size_t piece_rows_ = 0;
    std::vector<double> right_side_;
    std::vector<Column> columns_;
    // A variable is a column (0…), a row's slack (-1 - row), or what a row still lacks
    // (-1 - rows - row).
    std::vector<std::ptrdiff_t> basis_;
    std::vector<double> inverse_, level_, price_;
    int pivots_ = 0;
};

}  // namespace hemline
