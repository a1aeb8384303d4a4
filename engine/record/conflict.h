// What two tablets wrote of one thing while neither had seen the other: a conflict, kept whole
// until someone picks or measures again. Told by what an event supersedes, never by clocks.
//
//   Ada's tablet    r1 ◀── r3 ─┐             r3 and r2 are the tips: a conflict.
//                    ▲         ├◀── r4       r4 supersedes both, and it is settled.
//   Ben's tablet     └──── r2 ─┘
#pragma once

#include <cstdint>
#include <map>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/record/event.h"
#include "engine/result.h"

namespace hemline {

/// What events can contradict each other about.
enum class Subject : std::uint8_t {
    none,       ///< strikes, losses, unknown kinds: nothing to contradict
    job,        ///< its name
    rule,       ///< one rule of practice
    edge,       ///< what the edge is
    reading,    ///< its length
    remainder,  ///< what is left for its last piece
    pitch,
    lap,  ///< of its pieces
    style,
    piece,  ///< the cut of one piece
    step,   ///< the tick of one step
    finish  ///< the foreman's tick
};

/// One thing on a job that is either so or otherwise.
struct Thing {
    Subject subject = Subject::none;
    std::string name;  ///< the edge's id, or the rule's key
    TrimRole role = TrimRole::main;
    int piece = 0;
    std::string step;

    bool operator==(const Thing&) const = default;
};
bool operator<(const Thing& a, const Thing& b);

/// What the fact is about.
Thing thing_of(const Fact& fact);
/// "the length of edge A", "the cut of piece 2 on edge A".
Text name_of(const Thing& thing);
/// Whether the thing is of that edge: not the job's name, a rule, or one number used twice.
bool is_on(const Thing& thing, std::string_view edge);

struct Conflict {
    Thing thing;                 ///< none: one number used twice for different things
    std::vector<EventId> sides;  ///< what stands against each other, in order
    bool number_twice = false;   ///< a copied tablet: one device and sequence, different bytes
    /// One sentence for people, with what to do.
    [[nodiscard]] Text what() const;
};

/// All conflicts of events that are in_order(), in the order of their first sides. Things of an
/// edge that are the same on both sides still are two readings or two ticks; settings that are the
/// same are none. O(n log n).
std::vector<Conflict> find_conflicts(std::span<const Event> events);

/// What to strike so that of a conflict only `chosen` stands: the other sides and what led to them
/// alone. Problem: it is in no conflict, or a strike would hit both (measure again, then).
Result<std::vector<EventId>> strikes_to_pick(std::span<const Event> events, EventId chosen);

/// An event to write, and what it supersedes besides what was seen of its thing.
struct ToWrite {
    Fact fact;
    std::vector<EventId> supersedes;
};
/// What to write so that of a conflict only `chosen` stands: strikes, but of a cut a loss, for its
/// metal is gone. Problem: as strikes_to_pick().
Result<std::vector<ToWrite>> facts_to_pick(std::span<const Event> events, EventId chosen);

/// What has been seen of each thing: what the next event about it supersedes.
class Seen {
  public:
    Seen() = default;
    /// Of events that are in_order().
    explicit Seen(std::span<const Event> events);
    /// The latest of the thing: those that no other one has seen, struck or not. An id that stands
    /// for two events comes twice.
    [[nodiscard]] std::vector<EventId> of(const Fact& fact) const;
    /// Takes in one that was written after all of those.
    void add(const Event& event);

  private:
    std::map<Thing, std::vector<EventId>> tips_;
};

}  // namespace hemline
