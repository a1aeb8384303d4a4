// Two tablets disagree: each wrote something about the same thing before it saw what the other
// wrote. Both are kept until someone picks one or measures again. A disagreement is found from what
// events supersede, never from clocks.
//
//   Ada's tablet    r1 ◀── r3 ─┐             nothing supersedes r3 or r2: they disagree.
//                    ▲         ├◀── pick     The pick supersedes both: what it chose stands.
//   Ben's tablet     └──── r2 ─┘             Another pick, by who has not seen it, disagrees.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "engine/record/event_id.h"
#include "engine/record/thing.h"

namespace hemline {

/// A side of a disagreement: an event that says a value, or a pick that chose such an event.
struct Tip {
    EventId id;
    EventId says;  ///< the event that says the value: this one, or the one it picked

    bool operator==(const Tip&) const = default;
};

enum class Apart : std::uint8_t {
    values,       ///< the sides say different things, or cut the same piece twice
    edge_back,    ///< an edge taken off the job, and what was done with metal for it
    number_twice  ///< a copied tablet: same device and sequence, different bytes
};

struct Conflict {
    Apart apart = Apart::values;
    Thing thing;                     ///< none: number_twice. Of edge_back with the piece, if any
    std::vector<Tip> sides;          ///< in order; of edge_back the taking off first
    std::vector<std::string> edges;  ///< for a plan: the edges whose runs it divides
    std::vector<Text> about;         ///< for number_twice: what its events are about
    /// A sentence for people, with what to do.
    [[nodiscard]] Text what() const;
    /// Whether the edge waits for it.
    [[nodiscard]] bool holds(std::string_view edge) const;
};

}  // namespace hemline
