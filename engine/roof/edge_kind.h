// The kinds of edge, and a row of facts for each: everything that differs from kind to kind is read
// here. A new kind needs a number, a row, and data (docs/extending.md).
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

#include "engine/words/text.h"

namespace hemline {

enum class EdgeKind : std::uint8_t {
    eave = 0,
    gable = 1,
    ridge = 2,
    hip = 3,
    valley = 4,
    sidewall = 5,
    headwall = 6,
    transition = 7,
    high_eave = 8,
    penetration = 9,  ///< a pipe or curb through the roof: no line, and no run
    curb_head = 10,   ///< the uphill side of a curb or chimney
    panels = 11,      ///< of a plane: no line, and no run
};
constexpr EdgeKind edge_kind_last = EdgeKind::panels;

/// What is at an end of an edge.
enum class End : std::uint8_t {
    gable = 0,
    corner_out = 1,
    corner_in = 2,
    wall = 3,
    open = 4,
    eave = 5,
    ridge = 6,
    hip = 7,
    valley = 8,
};

/// Where the outer leg turns, from the flange that lies on the roof.
enum class Toward : std::uint8_t { up = 0, down = 1 };

enum class Lies : std::uint8_t { level, sloped, on_no_line };

/// What the main fold is computed from.
enum class FoldFrom : std::uint8_t {
    one_roof,  ///< 90° + tilt·θ
    both_roofs,
    eaves_at_foot,    ///< both roofs, and the corner that their eaves make
    change_of_pitch,  ///< the upper roof's pitch must be said
    nothing,
};

/// How the metal at an end is computed.
enum class EndsLike : std::uint8_t { eave, gable, valley, wall, curb, nothing };

/// Which panels end at the edge with a closure.
enum class Closed : std::uint8_t { no_side, one_side, both_sides };

struct KindOfEdge {
    EdgeKind kind = EdgeKind::eave;
    std::string_view word;    ///< in files; its steps are in procedures/WORD.csv
    const char* spoken = "";  ///< "high eave"
    const char* title = "";   ///< "High eave {1}"
    Lies lies = Lies::level;
    int roofs = 1;  ///< roofs on which its metal has a leg
    FoldFrom fold = FoldFrom::one_roof;
    Toward toward = Toward::down;
    int tilt = 0;  ///< of FoldFrom::one_roof: what the pitch adds to the bend
    EndsLike ends = EndsLike::wall;
    std::span<const End> left, right;  ///< the ends it can have
    End left_usual = End::open, right_usual = End::open;
    std::optional<End> met_as = {};      ///< the end of another edge that meets it
    int turn = 0;                        ///< fitted in this order
    std::optional<EdgeKind> after = {};  ///< goes on over that kind, whatever its ends
    Closed closed = Closed::no_side;
    int screw_lines = 1;
    bool in_water = false;  ///< water runs along it, over its laps
};

/// Every kind, in the order in which they are offered.
std::span<const KindOfEdge> kinds_of_edge();
const KindOfEdge& facts_of(EdgeKind kind);

/// From the words of the readings file: "high_eave"; none where unknown.
std::string_view word_of(EdgeKind);
std::optional<EdgeKind> edge_kind_of(std::string_view word);
/// For people: "high eave".
Text spoken(EdgeKind);
/// "High eave C".
Text title_of(EdgeKind, std::string_view edge);

/// "up" or "down".
std::string_view word_of(Toward);
Text spoken(Toward);

}  // namespace hemline
