#include "engine/cutting/linear_program.h"

#include <algorithm>
#include <cmath>

namespace hemline {

namespace {

constexpr double gain_least = 1e-9;
constexpr double pivot_least = 1e-9;
constexpr double cost_of_lacking = 64;  // what a row lacks costs more than any stick

}  // namespace

LinearProgram::LinearProgram(const std::vector<double>& at_least,
                             const std::vector<double>& at_most)
    : least_rows_(at_least.size()), right_side_(at_least) {
    right_side_.insert(right_side_.end(), at_most.begin(), at_most.end());
    const std::size_t rows = right_side_.size();
    inverse_.assign(rows * rows, 0);
    price_.assign(rows, 0);
    level_ = right_side_;
    for (std::size_t r = 0; r < rows; ++r) {
        const bool least = r < least_rows_;
        basis_.push_back(-1 - static_cast<std::ptrdiff_t>(least ? rows + r : r));
        inverse_[r * rows + r] = 1;
        price_[r] = least ? cost_of_lacking : 0;
    }
}

void LinearProgram::add(Entries entries, double cost) {
    columns_.push_back({std::move(entries), cost});
}

double LinearProgram::cost_of(std::ptrdiff_t variable) const {
    if (variable >= 0) {
        return columns_[static_cast<std::size_t>(variable)].cost;
    }
    return -1 - variable < static_cast<std::ptrdiff_t>(basis_.size()) ? 0 : cost_of_lacking;
}

LinearProgram::Entering LinearProgram::best_entering() const {
    Entering best{0, gain_least};
    for (std::size_t j = 0; j < columns_.size(); ++j) {
        double gain = -columns_[j].cost;
        for (const auto& [row, entry] : columns_[j].entries) {
            gain += price_[row] * entry;
        }
        if (gain > best.gain) {
            best = {static_cast<std::ptrdiff_t>(j), gain};
        }
    }
    for (std::size_t r = 0; r < price_.size(); ++r) {
        const double gain = r < least_rows_ ? -price_[r] : price_[r];
        if (gain > best.gain) {
            best = {-1 - static_cast<std::ptrdiff_t>(r), gain};
        }
    }
    return best;
}

LinearProgram::Entries LinearProgram::entries_of(std::ptrdiff_t variable) const {
    if (variable >= 0) {
        return columns_[static_cast<std::size_t>(variable)].entries;
    }
    const auto rows = basis_.size();
    const auto row = static_cast<std::size_t>(-1 - variable);
    return {{row % rows, row < least_rows_ ? -1.0 : 1.0}};
}

std::vector<double> LinearProgram::way_of(std::ptrdiff_t variable) const {
    const std::size_t rows = basis_.size();
    const Entries entries = entries_of(variable);
    std::vector<double> way(rows, 0);
    for (std::size_t r = 0; r < rows; ++r) {
        for (const auto& [row, entry] : entries) {
            way[r] += inverse_[r * rows + row] * entry;
        }
    }
    return way;
}

bool LinearProgram::pivot(std::ptrdiff_t variable, double gain) {
    const std::size_t rows = basis_.size();
    const std::vector<double> way = way_of(variable);
    std::size_t leaves = rows;
    double least = 0;
    for (std::size_t r = 0; r < rows; ++r) {
        if (way[r] <= pivot_least) {
            continue;
        }
        const double ratio = std::max(level_[r], 0.0) / way[r];
        const bool first = leaves == rows;
        const bool tie = !first && std::abs(ratio - least) <= 1e-12 * (1 + least);
        if (first || (tie ? way[r] > way[leaves] : ratio < least)) {
            leaves = r;
            least = ratio;
        }
    }
    if (leaves == rows) {
        return false;  // only rounding is left: real gains cannot go on without end
    }
    level_[leaves] = std::max(level_[leaves], 0.0);
    exchange(variable, gain, leaves, way);
    return true;
}

/// The variable replaces what is in the basis for row `leaves`.
void LinearProgram::exchange(std::ptrdiff_t variable, double gain, std::size_t leaves,
                             const std::vector<double>& way) {
    const std::size_t rows = basis_.size();
    // Only entries other than 0 matter: after few pivots the inverse is mostly 0.
    double* own = &inverse_[leaves * rows];
    std::vector<std::size_t> filled;
    const double by = 1 / way[leaves];
    const double least = level_[leaves] * by;
    for (std::size_t c = 0; c < rows; ++c) {
        if (own[c] != 0) {
            own[c] *= by;
            price_[c] -= gain * own[c];
            filled.push_back(c);
        }
    }
    for (std::size_t r = 0; r < rows; ++r) {
        if (r == leaves || way[r] == 0) {
            continue;
        }
        double* line = &inverse_[r * rows];
        for (const std::size_t c : filled) {
            line[c] -= way[r] * own[c];
        }
        level_[r] -= way[r] * least;
    }
    level_[leaves] = least;
    basis_[leaves] = variable;
    if (++pivots_ % 300 == 0) {
        invert();
    }
}

/// A step of the dual simplex method: lifts the lowest level below 0. False when there is none, or
/// it cannot be lifted.
bool LinearProgram::lift() {
    const std::size_t rows = basis_.size();
    const auto lowest = std::min_element(level_.begin(), level_.end());
    if (lowest == level_.end() || *lowest >= -1e-7) {
        return false;
    }
    const auto leaves = static_cast<std::size_t>(lowest - level_.begin());
    const double* own = &inverse_[leaves * rows];
    std::ptrdiff_t best = 0;
    double least = -1, loss = 0, steepest = 0;
    const auto offer = [&](std::ptrdiff_t variable, double slope, double gain) {
        if (slope >= -1e-7) {
            return;
        }
        const double ratio = std::max(-gain, 0.0) / -slope;
        if (least < 0 || ratio < least - 1e-12 || (ratio <= least + 1e-12 && slope < steepest)) {
            best = variable;
            least = ratio;
            loss = gain;
            steepest = slope;
        }
    };
    for (std::size_t j = 0; j < columns_.size(); ++j) {
        double slope = 0, gain = -columns_[j].cost;
        for (const auto& [row, entry] : columns_[j].entries) {
            slope += own[row] * entry;
            gain += price_[row] * entry;
        }
        offer(static_cast<std::ptrdiff_t>(j), slope, gain);
    }
    for (std::size_t r = 0; r < rows; ++r) {
        const double entry = r < least_rows_ ? -1.0 : 1.0;
        offer(-1 - static_cast<std::ptrdiff_t>(r), own[r] * entry, price_[r] * entry);
    }
    for (std::size_t r = 0; r < least_rows_; ++r) {
        offer(-1 - static_cast<std::ptrdiff_t>(rows + r), own[r], price_[r] - cost_of_lacking);
    }
    if (least < 0) {
        return false;
    }
    exchange(best, loss, leaves, way_of(best));
    return true;
}

bool LinearProgram::solve(Effort& effort) {
    const auto rows = static_cast<std::int64_t>(basis_.size());
    // Degenerate pivots may go in a circle; the solution after so many is good enough as a
    // suggestion.
    std::int64_t pivots_left = 200 + 20 * rows;
    while (effort.spend(1 + rows * rows / 16 + static_cast<std::int64_t>(columns_.size()) / 4)) {
        if (lift()) {
            if (pivots_left-- == 0) {
                return true;
            }
            continue;
        }
        const Entering entering = best_entering();
        if (entering.gain <= gain_least || pivots_left-- == 0 ||
            !pivot(entering.variable, entering.gain)) {
            return true;
        }
    }
    return false;
}

/// Works the inverse, levels and prices out afresh from the basis, so that rounding does not pile
/// up.
void LinearProgram::invert() {
    const std::size_t rows = basis_.size();
    std::vector<double> matrix(rows * rows, 0);
    for (std::size_t c = 0; c < rows; ++c) {
        if (basis_[c] >= 0) {
            for (const auto& [row, entry] : columns_[static_cast<std::size_t>(basis_[c])].entries) {
                matrix[row * rows + c] = entry;
            }
        } else {
            const auto row = static_cast<std::size_t>(-1 - basis_[c]) % rows;
            const bool surplus =
                row < least_rows_ && -1 - basis_[c] < static_cast<std::ptrdiff_t>(rows);
            matrix[row * rows + c] = surplus ? -1 : 1;
        }
    }
    std::vector<double> inverse(rows * rows, 0);
    for (std::size_t r = 0; r < rows; ++r) {
        inverse[r * rows + r] = 1;
    }
    for (std::size_t c = 0; c < rows; ++c) {
        std::size_t top = c;
        for (std::size_t r = c + 1; r < rows; ++r) {
            if (std::abs(matrix[r * rows + c]) > std::abs(matrix[top * rows + c])) {
                top = r;
            }
        }
        if (std::abs(matrix[top * rows + c]) < pivot_least) {
            return;  // too near singular to improve on: keep what there is
        }
        if (top != c) {
            for (std::size_t k = 0; k < rows; ++k) {
                std::swap(matrix[top * rows + k], matrix[c * rows + k]);
                std::swap(inverse[top * rows + k], inverse[c * rows + k]);
            }
        }
        const double by = 1 / matrix[c * rows + c];
        for (std::size_t k = 0; k < rows; ++k) {
            matrix[c * rows + k] *= by;
            inverse[c * rows + k] *= by;
        }
        for (std::size_t r = 0; r < rows; ++r) {
            const double factor = matrix[r * rows + c];
            if (r == c || factor == 0) {
                continue;
            }
            for (std::size_t k = 0; k < rows; ++k) {
                matrix[r * rows + k] -= factor * matrix[c * rows + k];
                inverse[r * rows + k] -= factor * inverse[c * rows + k];
            }
        }
    }
    inverse_ = std::move(inverse);
    std::fill(price_.begin(), price_.end(), 0);
    for (std::size_t r = 0; r < rows; ++r) {
        level_[r] = 0;
        const double cost = cost_of(basis_[r]);
        for (std::size_t c = 0; c < rows; ++c) {
            level_[r] += inverse_[r * rows + c] * right_side_[c];
            price_[c] += cost * inverse_[r * rows + c];
        }
    }
}

double LinearProgram::value() const {
    double sum = 0;
    for (std::size_t r = 0; r < basis_.size(); ++r) {
        sum += cost_of(basis_[r]) * level_[r];
    }
    return sum;
}

void LinearProgram::take_off(std::size_t row, double amount) { right_side_[row] -= amount; }

void LinearProgram::settle_levels() {
    const std::size_t rows = basis_.size();
    for (std::size_t r = 0; r < rows; ++r) {
        level_[r] = 0;
        for (std::size_t c = 0; c < rows; ++c) {
            level_[r] += inverse_[r * rows + c] * right_side_[c];
        }
    }
}

std::vector<double> LinearProgram::uses() const {
    std::vector<double> times(columns_.size(), 0);
    for (std::size_t r = 0; r < basis_.size(); ++r) {
        if (basis_[r] >= 0) {
            times[static_cast<std::size_t>(basis_[r])] = level_[r];
        }
    }
    return times;
}

}  // namespace hemline
