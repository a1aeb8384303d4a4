// The panels of a roof as JSON, as text and as a table.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/panels/panel_choices.h"
#include "engine/panels/panel_layout.h"
#include "engine/panels/panel_metal.h"

namespace hemline {

struct PlanePrinted {
    PanelJob job;
    PanelLayout layout;
    std::vector<Penetration> through;
    std::optional<PanelChoices> choices;
};

struct PanelsPrinted {
    std::vector<PlanePrinted> planes;
    std::optional<Length> miss;  ///< of a walk that does not close; then nothing is laid
    PanelMetal metal;
    Marks marks = Marks::sixteenth;
};

void print_panels_json(const PanelsPrinted& printed);
void print_panels_text(const PanelsPrinted& printed);
/// A row a pan.
std::string panels_csv(const PanelsPrinted& printed);

}  // namespace hemline
