// Readings in rising order, and those of them that agree among themselves.
#pragma once

#include <optional>
#include <span>
#include <utility>
#include <vector>

#include "engine/measure/tape.h"
#include "engine/quantity/length.h"

namespace hemline {

/// Indices of two readings.
struct ReadingPair {
    std::size_t first = 0, second = 1;
};

class RisingReadings {
  public:
    RisingReadings(std::span<const Length> readings, Tape tape);

    /// The two readings nearest to each other, of a group that most are in; of equally near pairs
    /// the pair that was complete first.
    [[nodiscard]] ReadingPair nearest_pair() const;

    /// Lengths, on the mark, of two groups of which no other has more readings, and that have
    /// nothing in common.
    [[nodiscard]] std::optional<std::pair<Length, Length>> divided(Length mark) const;

  private:
    /// Places in the rising order, the last one with it.
    struct Group {
        std::size_t first = 0, last = 0;
        [[nodiscard]] std::size_t count() const { return last - first + 1; }
    };

    [[nodiscard]] Length at(std::size_t place) const { return readings_[order_[place]]; }
    [[nodiscard]] bool agree(std::size_t low, std::size_t high) const;
    [[nodiscard]] Length middle(const Group& group, Length mark) const;

    std::span<const Length> readings_;
    std::vector<std::size_t> order_;
    Tape tape_;
    std::vector<Group> groups_;  ///< the longest from each place on
    std::size_t most_ = 1;       ///< readings in a group
};

/// Between two readings.
Length apart(Length a, Length b);

/// What two readings may lie apart. Source: allowed_difference().
Length allowed_apart(Length a, Length b, Tape tape);

/// The mean on the mark, a half up; of two equal readings just that length, whatever mark it lies
/// on.
Length agreed_length(Length a, Length b, Length mark);

}  // namespace hemline
