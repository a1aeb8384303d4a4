// The strip that an edge's metal or its panels hold on: hook strip, zee or channel.
//
//   cut from sticks, butted:  |---stock---|---stock---|-rest-|     once, or along both sides of a
//                                                                  valley
#pragma once

#include "engine/trim/catalogue.h"

namespace hemline {

struct Practice;

struct Strips {
    const Strip* strip = nullptr;  ///< null: the edge needs none
    std::int64_t lines = 1;        ///< 2 in a valley
    Length line;                   ///< length of each
    Length stock;
    std::int64_t full = 0;       ///< whole sticks of all lines
    std::int64_t rests = 0;      ///< shorter pieces of all lines
    Length rest;                 ///< length of each
    Length girth;                ///< of sharp bends
    std::int64_t fasteners = 0;  ///< every `apart`
    Length apart;
    Length from_centre;  ///< of a valley: from its center line to the lip
    Text problem;        ///< empty, or why the strip does not fit
};

/// None for an edge whose trim needs none. A strip under the panels is screwed every 8 in; a zee or
/// a channel is riveted to the end pan every 12 in (common practice, no published source). A
/// valley's lip stands half the open valley from the center line: 4 in at the head and 1 in more
/// each 8 ft in all (historic federal specification), and at least 4 1/2 in, so that its screws
/// stand 6 in from the center line; 6 in of the leg stay under the panels (common practice, no
/// published source).
Strips strips_of(const Edge& edge, Length length, const Catalogue& catalogue,
                 const Practice& practice);

/// What its legs are called, from the first: "base", "riser", "lip".
std::vector<Text> leg_names(const Strip& strip);
/// "4 of 10 ft, 1 of 2 ft 3 in".
Text stick_words(const Strips& strips);
/// "4 of 10 ft and 1 of 2 ft 3 in, base 1 1/2 in, riser 3/16 in, lip 3/4 in, stretch-out 2 7/16
/// in".
Text strip_words(const Strips& strips);

}  // namespace hemline
