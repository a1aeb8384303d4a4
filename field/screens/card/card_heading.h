// The top of a cut card: the cut length, the metal it comes from, and where the tape is hooked.
//
//   8 ft 5 1/4 in    Take a new stick, 10 ft      8 ft 5 1/4 in  Take a new stick, 10 ft; …
//                    leaves 1 ft 6 3/4 in                        Hook the tape on the left end
//                    Hook the tape on the left end     in brief, where a page is low
//   Face toward you. 9 screws …
#pragma once

#include "engine/work/card.h"
#include "field/state/state.h"
#include "field/touch/ui.h"

namespace hemline {

/// In brief: the length at 30′, and screws and legs are left for below the marks.
enum class Heading { whole, brief };

/// The height it takes of a body that wide.
float heading_height(const Ui& ui, const State& state, const Card& card, Heading heading, float w);
/// Draws it at the top of the body and cuts its height off.
void draw_card_heading(Ui& ui, const State& state, const Card& card, Heading heading, Box& body);

/// "Face toward you. 9 screws, first at 2 in, last at 7 ft 9 1/4 in"
Text legs_and_screws(const Card& card);
/// "Take a new stick, 10 ft; leaves 1 ft 6 3/4 in; Hook the tape on the left end"
Text metal_and_hook(const State& state, const Card& card);

}  // namespace hemline
