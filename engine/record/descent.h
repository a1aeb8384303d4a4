// Which events about a thing had seen which: from what each supersedes, and from the sequence of
// its device. Time is linear in the events and in what they supersede.
#pragma once

#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
#include <span>
#include <vector>

#include "engine/record/event.h"

namespace hemline {

/// Where each device first used the same number for two different events; not in it: never.
std::map<std::uint64_t, std::uint32_t> first_numbers_twice(std::span<const Event> events);

/// The events about a thing, and what each had seen. A place is an index in `of_thing`.
class Descent {
  public:
    Descent(std::span<const Event> events, const std::vector<std::size_t>& of_thing,
            const std::map<std::uint64_t, std::uint32_t>& twice);

    /// What the event there names as seen.
    [[nodiscard]] const std::vector<std::size_t>& named_at(std::size_t place) const {
        return named_[place];
    }
    /// What its device wrote about the thing before.
    [[nodiscard]] std::optional<std::size_t> own_before(std::size_t place) const {
        return own_[place];
    }
    /// The event of that id; none: there is none, or there are two since a tablet was copied.
    [[nodiscard]] std::optional<std::size_t> only(EventId id) const;

    /// Marks, by place, everything that the events at those places had seen, directly or through
    /// others.
    [[nodiscard]] std::vector<bool> seen_by(const std::vector<std::size_t>& places) const;
    /// Those places in `by` that no other place in `by` had seen.
    [[nodiscard]] std::vector<std::size_t> tips_among(const std::vector<std::size_t>& by) const;

  private:
    void name_seen(const Event& event, std::size_t place);
    void see_silently(const Event& event, std::size_t place);

    std::map<EventId, std::vector<std::size_t>> places_;  ///< an id may stand for two events
    std::vector<std::vector<std::size_t>> named_;
    std::vector<std::optional<std::size_t>> own_;
    std::optional<std::size_t> last_silent_;  ///< of a program that did not name them
};

}  // namespace hemline
