// What a tablet has seen of each thing: what the next event about it supersedes.
#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <span>
#include <vector>

#include "engine/record/about_thing.h"
#include "engine/record/old_picks.h"

namespace hemline {

/// What the event picked, if it is a Picked or a strike that was a pick.
std::optional<EventId> picked_by(const Event& event);

/// Indices of the events about each thing, in order, with what was picked of it.
std::map<Thing, std::vector<std::size_t>> events_by_thing(std::span<const Event> events,
                                                          const Strikes& strikes);

class Seen {
  public:
    Seen() = default;
    /// Of events that are in_order().
    explicit Seen(std::span<const Event> events);
    /// What an event that is about to be written supersedes besides what it names: the events about
    /// its thing that no other event has seen, struck or not; for a loss also the pick of the lost
    /// cut. An id that stands for two events comes twice. Where there are more than an event may
    /// name, these are the latest; the next event names the rest.
    [[nodiscard]] std::vector<EventId> of(const Event& next) const;
    /// Takes in an event that was written after all of those.
    void add(const Event& event);

  private:
    void take_in(const Event& event);

    Things things_;
    std::map<Thing, std::vector<EventId>> tips_;
    std::map<EventId, EventId> picked_;  ///< cuts that were picked, and the latest pick of each
};

}  // namespace hemline
