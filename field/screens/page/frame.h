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
#include "field/state/wish.h"
#include "field/store/clock.h"
#include "field/touch/ui.h"

namespace hemline {

/// Keys beside the body, or below it on an upright screen.
struct KeysWanted {
    int count = 0;       ///< 0: none
    float above_mm = 0;  ///< upright: keys that leave less than this above them take three rows
};

/// On a low screen keys take its whole height, with title, body and actions at their left.
bool keys_stand_aside(const Ui& ui, const KeysWanted& keys);

struct Frame {
    Box body;
    Box keys;            ///< empty when no keys were wanted
    Box beside_keys;     ///< the room beside keys that are below the body
    std::string tapped;  ///< name of the action that was tapped, or empty
    Wished wish;         ///< of the frame: the other language, a way out of a full disk
};

/// Draws title, saved line, notice and actions; the last action is the widest and stands at the
/// right.
Frame open_frame(Ui& ui, const State& state, const Text& title, const std::vector<Action>& actions,
                 KeysWanted keys = {});

/// The next language, by its name in that language; its touch is in Frame::wish.
Action other_language(const State& state);

/// Yellow is danger and nothing else. What is doubted, refused or missing has a thick rim, and the
/// main action waits until it can have been read; news have a line at their side.
enum class Band { danger, doubt, news };
/// Words set apart, as high as needed; returns the height used including the gap below, 0 for no
/// words.
float draw_band(Ui& ui, const Text& words, Box box, Band band = Band::doubt);
float band_height(const Ui& ui, const Text& words, float w);

/// "4 May 2026, 9:41".
Text day_and_time(WallTime time);

}  // namespace hemline
