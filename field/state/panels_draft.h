// The layouts of a plane's seams that are looked at.
#pragma once

#include <memory>
#include <string>

#include "engine/panels/panel_choices.h"

namespace hemline {

struct SeamsDraft {
    std::string of;  ///< the panels, and how much was said when they were worked out
    std::shared_ptr<const PanelChoices> found;
};

struct PanelsDrafts {
    SeamsDraft seams;
};

}  // namespace hemline
