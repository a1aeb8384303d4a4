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

#include "field/app/state.h"
#include "field/touch/ui.h"

namespace hemline {

struct Action {
    std::string name;
    std::string label;
    Look look = Look::plain;
};

struct Frame {
    Box body;
    std::string tapped;  ///< name of the action that was tapped, or empty
};

/// Draws title, saved line, notice and actions; the last action is the widest and stands at the
/// right.
Frame open_frame(Ui& ui, const State& state, const std::string& title,
                 const std::vector<Action>& actions);

/// The margin round a page.
float margin(const Ui& ui);

/// "Eave C".
std::string title_of(const Edge& edge);
/// "9:41", local time of an event.
std::string clock_time(HybridTime when);

}  // namespace hemline
