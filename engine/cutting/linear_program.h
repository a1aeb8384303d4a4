// A linear program whose columns are found as it goes: primal simplex with the inverse of its
// basis.
//
//   least  Σ cost·x     Σ entry·x ≥ right (≥ 0) for the first rows,  Σ entry·x ≤ right for the
//   others
//
// Floating point, so it only ever suggests. What it suggests is certified elsewhere, in integers.
#pragma once

#include <cstddef>
#include <utility>
#include <vector>

#include "engine/cutting/effort.h"

namespace hemline {

class LinearProgram {
  public:
    using Entries = std::vector<std::pair<std::size_t, double>>;  ///< row, entry

    LinearProgram(const std::vector<double>& at_least, const std::vector<double>& at_most);

    void add(Entries entries, double cost);

    /// Takes so much off a row's right side; settle_levels() follows, and the next solve() goes on
    /// from where the last ended.
    void take_off(std::size_t row, double amount);
    void settle_levels();

    /// Solves over what has been offered. False when the effort ran out first.
    bool solve(Effort& effort);

    [[nodiscard]] double value() const;
    /// What one more unit on a row's right side would cost.
    [[nodiscard]] double price(std::size_t row) const { return price_[row]; }
    /// How much of each column, in the order offered.
    [[nodiscard]] std::vector<double> uses() const;

  private:
    struct Column {
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

    std::size_t least_rows_ = 0;
    std::vector<double> right_side_;
    std::vector<Column> columns_;
    // A variable is a column (0…), a row's slack (-1 - row), or what a row still lacks
    // (-1 - rows - row).
    std::vector<std::ptrdiff_t> basis_;
    std::vector<double> inverse_, level_, price_;
    int pivots_ = 0;
};

}  // namespace hemline
