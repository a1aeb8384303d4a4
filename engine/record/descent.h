// Which events of one thing had seen which: from what each supersedes, and from a device's own
// sequence.
#pragma once

#include <cstddef>
#include <map>
#include <set>
#include <span>
#include <vector>

#include "engine/record/conflict.h"

namespace hemline {

/// Indices of the events about each thing, in order.
std::map<Thing, std::vector<std::size_t>> events_by_thing(std::span<const Event> events);

/// Where each device first used one number for two different events; not in it: never.
std::map<std::uint64_t, std::uint32_t> first_numbers_twice(std::span<const Event> events);

/// The events of one thing and what each had seen.
class Descent {
  public:
    Descent(std::span<const Event> events, const std::vector<std::size_t>& of_thing,
            const std::map<std::uint64_t, std::uint32_t>& twice);

    /// Marks, by place in `of_thing`, all that those of the places had seen, near and far.
    [[nodiscard]] std::vector<bool> seen_by(const std::vector<std::size_t>& places) const;
    /// Places that none of `by` had seen, out of `by`.
    [[nodiscard]] std::vector<std::size_t> tips_among(const std::vector<std::size_t>& by) const;

  private:
    std::vector<std::vector<std::size_t>> parents_;  ///< places in of_thing
};

}  // namespace hemline
