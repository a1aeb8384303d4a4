// The frame every screen shares: a title line, the body, and the actions under the thumb.
//
//   ┌──────────────────────────────────────────┐
//   │ Eave C · piece 2 of 2          ✓ saved   │
//   ├──────────────────────────────────────────┤
//   │ body                                     │
//   │ [ Roof ]  [ Spoiled ]     [ Cut as shown ]│   the primary action last, bottom right
//   └──────────────────────────────────────────┘
#pragma once

#include <string>
#include <vector>

#include "field/screens/page/actions.h"
#include "field/state/state.h"
#include "field/store/clock.h"
#include "field/touch/ui.h"

namespace hemline {

/// Keys that stand beside the body, or below it in portrait.
struct KeysWanted {
    int count = 0;  ///< 0: none
    float above_mm =
        0;  ///< in portrait keys that leave less than this above them lie in three rows
};

/// On a low screen keys take its whole height, with title, body and actions at their left.
bool keys_stand_aside(const Ui& ui, const KeysWanted& keys);

struct Frame {
    Box body;
    Box keys;            ///< empty when none were wanted
    Box beside_keys;     ///< the room that keys below the body leave at their side
    std::string tapped;  ///< name of the action that was tapped, or empty
};

/// The target that every screen has while its job's disk takes nothing: with it the job goes on in
/// another folder, and what was keyed in stays.
constexpr const char* go_on_elsewhere = "go on elsewhere";
/// The target in its place where there are no other folders: what was saved goes into a file, while
/// that still works.
constexpr const char* back_up_now = "back up now";

/// Draws title, saved line, notice and actions; the last action is the widest and stands at the
/// right.
Frame open_frame(Ui& ui, const State& state, const Text& title, const std::vector<Action>& actions,
                 KeysWanted keys = {});

/// The other language, in its own words; `take_language` reads its touch.
Action other_language(const State& state);
void take_language(const Frame& frame, Wish& wish);

/// A warning in words on its ground, as high as it needs; returns the height used with the gap
/// below, 0 for no words.
float draw_band(Ui& ui, const Text& words, Box box);
float band_height(const Ui& ui, const Text& words, float w);

/// "4 May 2026, 9:41".
Text day_and_time(WallTime time);

}  // namespace hemline
