// The pitch of a whole roof, said once: the last question of a walk and of a shape.
#pragma once

#include <optional>

#include "field/screens/page/frame.h"
#include "field/state/reading_draft.h"

namespace hemline {

/// What the draft says. "keep pitch" is tapped to keep it, "leave" to go back to the walk.
struct PitchAsked {
    Frame frame;
    std::optional<Slope> pitch;
};
/// Draws the question, its keys and its ways of saying a pitch, and the roof that the walk gives.
PitchAsked draw_pitch_page(Ui& ui, const State& state, PitchDraft& draft, const Text& title,
                           const WalkedBody& walk);

}  // namespace hemline
