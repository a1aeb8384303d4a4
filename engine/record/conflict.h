// What two tablets wrote of one thing while neither had seen the other: a conflict, kept whole
// until someone picks or measures again. Told by what an event supersedes, never by clocks.
//
//   Ada's tablet    r1 ◀── r3 ─┐             r3 and r2 are the tips: a conflict.
//                    ▲         ├◀── pick     The pick supersedes both: what it chose stands.
//   Ben's tablet     └──── r2 ─┘             Another pick, made apart, is a conflict again.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "engine/record/event_id.h"
#include "engine/record/thing.h"

namespace hemline {

/// One of those that stand against each other: an event that says a value, or a pick of one.
struct Tip {
    EventId id;
    EventId says;  ///< the event that says the value: itself, or what it picked

    bool operator==(const Tip&) const = default;
};

enum class Apart : std::uint8_t {
    values,       ///< the sides say different things, or cut one piece twice
    edge_back,    ///< an edge taken off the job, and what was done with metal for it
    number_twice  ///< a copied tablet: one device and sequence, different bytes
};

struct Conflict {
    Apart apart = Apart::values;
    Thing thing;                     ///< none: number_twice. Of edge_back with the piece, if any
    std::vector<Tip> sides;          ///< in order; of edge_back the taking off first
    std::vector<std::string> edges;  ///< of a plan: those whose runs it divides
    std::vector<Text> about;         ///< of number_twice: what its events are about
    /// One sentence for people, with what to do.
    [[nodiscard]] Text what() const;
    /// Whether the edge waits for it.
    [[nodiscard]] bool holds(std::string_view edge) const;
};

}  // namespace hemline
