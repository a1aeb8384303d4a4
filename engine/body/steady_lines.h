// The inner lines of a roof whose readings change by little: the same lines, and each place found
// anew where its three planes meet.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "engine/body/inner_lines.h"
#include "engine/quantity/space.h"

namespace hemline {

class SteadyLines {
  public:
    SteadyLines(std::span<const MovingSide> sides, InnerLines lines);

    [[nodiscard]] const InnerLines& lines() const { return lines_; }

    /// The places of lines() with sides that have moved or tilted a little, to 1e-9 of the size of
    /// the house. None: the lines may not be those any more: a place has come to a line of its
    /// plane, as it does where one shrinks to nothing too, or places where more than three planes
    /// met have come apart.
    [[nodiscard]] std::optional<std::vector<Space>> places_with(
        std::span<const MovingSide> sides) const;

  private:
    /// A place above the walk: three planes that fix it, and what else meets there.
    struct Place {
        std::size_t index = 0;
        std::vector<std::size_t> planes;  ///< the first three fix it
    };
    /// A place and a line of one plane that does not end there.
    struct Near {
        std::size_t place = 0, line = 0;
        double apart = 0;
    };
    void find_near();
    [[nodiscard]] bool keep_apart(const std::vector<Space>& places) const;

    InnerLines lines_;
    std::vector<Place> places_;
    std::vector<Near> near_lines_;  ///< nearer than near_most_nm
    std::vector<Space> before_;
    double near_ = 0;
    bool is_fixed_ = true;  ///< every place has three planes
};

}  // namespace hemline
