// The panels of a roof as JSON, as text and as a table.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/panels/panel_layout.h"

namespace hemline {

struct PanelsPrinted {
    const PanelJob& job;
    const std::vector<PanelLayout>& layouts;
    std::optional<Length> miss;  ///< of a walk that does not close; then nothing is laid
    Marks marks;
};

void print_panels_json(const PanelsPrinted& printed);
void print_panels_text(const PanelsPrinted& printed);
/// A row a pan.
std::string panels_csv(const std::vector<PanelLayout>& layouts, Marks marks);

}  // namespace hemline
