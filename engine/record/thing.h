// One thing on a job that is either so or otherwise: what two tablets can contradict each other
// about.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "engine/trim/catalogue.h"
#include "engine/words/text.h"

namespace hemline {

/// The numbers are saved (Picked) and never reused.
enum class Subject : std::uint8_t {
    none = 0,       ///< strikes, unknown kinds: nothing to contradict
    job = 1,        ///< its name
    rule = 2,       ///< one rule of practice
    edge = 3,       ///< what the edge is
    reading = 4,    ///< its length
    remainder = 5,  ///< what is left for its last piece
    pitch = 6,
    lap = 7,  ///< of its pieces
    style = 8,
    piece = 9,    ///< which cut of one piece is the one that is fitted
    step = 10,    ///< the tick of one step
    finish = 11,  ///< the foreman's tick
    plan = 12,    ///< how the runs of a trim are divided
    supply = 13,  ///< whether new sticks can be had
    metal = 14,   ///< one stick, offcut or pile that lies there
    loss = 15     ///< of one piece: two losses are two, and contradict nothing
};

struct Thing {
    Subject subject = Subject::none;
    std::string name;  ///< the edge's id, the rule's key, or the trim's id
    TrimRole role = TrimRole::main;
    int piece = 0;
    std::string step;  ///< its id; of metal the event that first left or counted it
    std::string by;    ///< who answers it for himself; empty: one answer serves the whole crew

    bool operator==(const Thing&) const = default;
};
bool operator<(const Thing& a, const Thing& b);

/// Whether its name is an edge's: not the job's, a rule's or a trim's.
bool is_on_edge(const Thing& thing);

/// "the length of edge A", "the cut of piece 2 on edge A".
Text name_of(const Thing& thing);
/// "piece 2 on edge A", "fascia wrap piece 1 on edge A".
Text piece_name(const Thing& thing);
/// What two tablets did, and the mend.
Text apart_words(const Thing& thing);

}  // namespace hemline
