// A walk of builder's corners closed again with one of its lengths changed by little: what
// close_sides() does, without looking again at what cannot change.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "engine/body/body_sides.h"
#include "engine/body/in_line.h"

namespace hemline {

class SteadyClosing {
  public:
    SteadyClosing(std::span<const BodySide> sides, Tape tape);

    /// As close_sides() has them, to a thousandth of a nanometer. None: ask it; a corner may be
    /// off, or nothing would be left of a side.
    [[nodiscard]] std::optional<std::vector<MovingSide>> with(std::size_t side,
                                                              Length length) const;

  private:
    struct Side {
        PlanVector way;
        std::optional<double> nm;
        double off = 0, inward = 0;
        bool is_read = false;
    };
    [[nodiscard]] bool imply_lengths(std::vector<Side>& sides) const;
    [[nodiscard]] std::vector<MovingSide> walked(const std::vector<Side>& sides) const;

    Tape tape_;
    std::vector<Side> sides_;
    bool is_settled_ = true;
};

}  // namespace hemline
