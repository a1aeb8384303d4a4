// Which of two walls' flashings goes on first, from the corners at their ends.
//
//        sidewall │          │ sidewall        outside corner: the headwall, then the sidewall
//        ─────────┘          └─────────        that laps onto it
//        headwall                headwall      inside corner: the sidewall, then the headwall that
//                                              laps over it
#pragma once

#include "engine/roof/edge.h"

namespace hemline {

/// Whether `other` goes on before `edge`: one is a headwall, the other a sidewall, and their ends
/// can meet at such a corner. Which edge touches which is not recorded; no circle of waiting comes
/// of it. Common practice, no published source.
bool goes_first_at_corner(const Edge& other, const Edge& edge);

}  // namespace hemline
