// A thing on a job that has a single true value, so that two tablets can disagree about it.
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
    rule = 2,       ///< a rule of practice
    edge = 3,       ///< what the edge is
    reading = 4,    ///< its length
    remainder = 5,  ///< what is left for its last piece
    pitch = 6,
    lap = 7,  ///< of its pieces
    style = 8,
    piece = 9,    ///< which cut of a piece is the one that is fitted
    step = 10,    ///< the answer to a step
    finish = 11,  ///< the foreman's sign-off
    plan = 12,    ///< how the runs of a trim are divided
    supply = 13,  ///< whether new sticks can be had
    metal = 14,   ///< a stick, offcut or pile on hand
    loss = 15,    ///< of a piece: two losses both happened, and do not disagree
    body = 16,    ///< the walk round a body
    place = 17    ///< which of a body's lines an edge is
};

struct Thing {
    Subject subject = Subject::none;
    std::string name;  ///< the edge's id, the rule's key, the trim's id or the body's
    TrimRole role = TrimRole::main;
    int piece = 0;
    std::string step;  ///< its id; for metal the event that first left or counted it
    std::string by;    ///< who answers it for himself; empty: one answer serves the whole crew

    bool operator==(const Thing&) const = default;
};
bool operator<(const Thing& a, const Thing& b);

/// Whether its name is an edge's: not the job's, a rule's, a trim's or a body's.
bool is_on_edge(const Thing& thing);

/// "the length of edge A", "the cut of piece 2 on edge A".
Text name_of(const Thing& thing);
/// "piece 2 on edge A", "fascia wrap piece 1 on edge A".
Text piece_name(const Thing& thing);

}  // namespace hemline
