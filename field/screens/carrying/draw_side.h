// A side of a disagreement: its value, large, and who wrote it where and when.
//
//   ┌──────────────────────────────┐
//   │  24 ft 3 1/16 in             │
//   │  Ada                         │
//   │  tablet e8518a86, 4 May …    │
//   │  picked by Ben, tablet …     │   when somebody did
//   │  ✓ this one                  │   when it is chosen, with a heavy rim
//   └──────────────────────────────┘
#pragma once

#include <optional>
#include <string>

#include "field/state/state.h"
#include "field/touch/ui.h"

namespace hemline {

/// What a side shows: the event that says the value, and who has picked it since, if anybody.
struct SideView {
    const Event* value = nullptr;
    const Event* picked = nullptr;
};

/// The length that a reading or a cut says.
std::optional<Length> length_of(const Fact& fact);

float side_height(const Ui& ui, const State& state, const SideView& side, float w);

/// True when tapped. `name`: of the target; empty: it cannot be chosen.
bool draw_side(Ui& ui, const State& state, const SideView& side, const std::string& name,
               bool chosen, Box box);

}  // namespace hemline
