// Picks in journals from before the kind Picked: a strike of each other side that also names the
// chosen one, or, of two cuts, a loss. Two such picks that disagree would leave nothing standing.
//
//   Ada picks r1:  strike of r2, names r1 ┐ round in a circle: neither
//   Ben picks r2:  strike of r1, names r2 ┘ strikes, r1 and r2 stand against each other
#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <set>
#include <span>
#include <vector>

#include "engine/record/descent.h"
#include "engine/record/event.h"

namespace hemline {

/// What the event let stand, if it is a strike that was a pick.
std::optional<EventId> let_stand(const Event& event);

/// What the strikes of a record do.
struct Strikes {
    std::set<EventId> struck;
    /// Strikes, by place in the record, that were picks and struck what a Picked chose that had not
    /// seen them. They say what is to stand, and strike nothing.
    std::map<std::size_t, Thing> picks;
};
Strikes strikes_in(std::span<const Event> events);

/// The losses of each cut, by places in the record.
using Losses = std::map<EventId, std::vector<std::size_t>>;

/// For a piece that two tablets cut: the losses that were picks, when together they took every cut
/// and so would ask for another stick. `cuts`: those that no other cut of the piece had seen.
std::vector<std::size_t> losses_that_picked(std::span<const Event> events,
                                            const std::vector<EventId>& cuts, const Losses& losses);

}  // namespace hemline
