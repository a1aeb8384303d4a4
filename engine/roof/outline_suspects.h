// The single corrections that would close an outline: a length that was misread, or a turn taken
// the wrong way.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "engine/roof/outline_close.h"

namespace hemline {

enum class SuspectKind : std::uint8_t {
    contradiction,       ///< two rows claim different corners; the walk took the other
    burnt_inch,          ///< reads 1 in too much: taken from the tape's 1 in mark and not corrected
    misread_foot,        ///< off by whole feet
    misread_inch,        ///< off by whole inches, 1 to 11
    misread_metre,       ///< off by whole meters
    misread_decimetre,   ///< off by whole decimeters
    misread_centimetre,  ///< off by whole centimeters
    swapped_digits,      ///< two digits of the reading swapped
    wrong_turn,          ///< an outside corner taken for an inside corner, or the reverse
};

struct Suspect {
    std::string edge;   ///< id
    std::string field;  ///< column of the readings file: length, left, right, corner_left …
    SuspectKind kind = SuspectKind::misread_foot;
    Length from, to;                              ///< of a length
    std::optional<Angle> corner_from, corner_to;  ///< of a turn: inside
    /// A turn that the row on the other side of the corner also states: it changes there too.
    std::string also_edge, also_field;
    Length miss;  ///< what is left of the miss after the correction
};

/// Every single correction after which the walk closes within what its readings allow, most likely
/// first; empty where it closes already, or where a corner is not known.
/// Order (common practice, no published source): what the rows themselves contradict; a burnt inch,
/// one foot, a wrong turn; swapped digits; an inch too little; several feet; several inches. A
/// length is likelier if it makes two edges of a kind equal, and less likely if it makes equal
/// edges different. Then the correction that leaves the smallest miss relative to what the readings
/// allow, then the longer reading.
std::vector<Suspect> find_suspects(const Walk& walk);

/// "burnt_inch" for files, "burnt inch" for people.
std::string_view word_of(SuspectKind);
Text spoken(SuspectKind);

}  // namespace hemline
