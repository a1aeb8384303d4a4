// What screens ask about the panels of a plane.
#pragma once

#include <optional>

#include "engine/plan/plan.h"
#include "engine/work/plane_panels.h"
#include "field/state/state.h"

namespace hemline {

/// The panels of the item that the screen is about; null: none such.
const PlannedPanels* panels_at(const State& state);
/// The roof is worked out, and no plane of it has an item for its panels.
bool may_lay_panels(const State& state);
/// So many pans alike that lie beside each other.
struct PansAlike {
    int first = 0, last = 0;  ///< numbers
    Length width, length;
    PanKind kind = PanKind::full;
};
std::vector<PansAlike> pans_alike(const PanelLayout& layout);
/// The pan of that number, in its first piece; null: none such.
const LaidPan* find_pan(const PanelLayout& layout, int number);
/// What speaks against laying them so, or why they cannot be laid.
std::vector<Text> doubts_on(const State& state, std::string_view panels);

}  // namespace hemline
