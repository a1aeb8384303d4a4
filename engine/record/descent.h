// Which events of one thing had seen which: from what each supersedes, and from a device's own
// sequence. Grows with events and what they supersede, and never with a square.
#pragma once

#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
#include <span>
#include <vector>

#include "engine/record/event.h"

namespace hemline {

/// Where each device first used one number for two different events; not in it: never.
std::map<std::uint64_t, std::uint32_t> first_numbers_twice(std::span<const Event> events);

/// The events of one thing and what each had seen. A place is an index in `of_thing`.
class Descent {
  public:
    Descent(std::span<const Event> events, const std::vector<std::size_t>& of_thing,
            const std::map<std::uint64_t, std::uint32_t>& twice);

    /// What the event there names as seen.
    [[nodiscard]] const std::vector<std::size_t>& named_at(std::size_t place) const {
        return named_[place];
    }
    /// What its device wrote of the thing before.
    [[nodiscard]] std::optional<std::size_t> own_before(std::size_t place) const {
        return own_[place];
    }
    /// The one event of that id; none: there is none, or two since a tablet was copied.
    [[nodiscard]] std::optional<std::size_t> only(EventId id) const;

    /// Marks, by place, all that those of the places had seen, near and far.
    [[nodiscard]] std::vector<bool> seen_by(const std::vector<std::size_t>& places) const;
    /// Places that none of `by` had seen, out of `by`.
    [[nodiscard]] std::vector<std::size_t> tips_among(const std::vector<std::size_t>& by) const;

  private:
    void name_seen(const Event& event, std::size_t place);
    void see_silently(const Event& event, std::size_t place);

    std::map<EventId, std::vector<std::size_t>> places_;  ///< an id may stand for two events
    std::vector<std::vector<std::size_t>> named_;
    std::vector<std::optional<std::size_t>> own_;
    std::optional<std::size_t> last_silent_;  ///< of the program that named nothing
};

}  // namespace hemline
