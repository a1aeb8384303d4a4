// What the options of `panels` say of the job and of each plane.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/panels/plane_readings.h"
#include "engine/panels/roof_panels.h"
#include "tools/cli/arguments.h"

namespace hemline {

/// Of the plane of that name.
template <class What>
struct OfPlane {
    std::string plane;
    What what;
};

struct PanelsSaid {
    PanelJob job;
    std::vector<OfPlane<Penetration>> through;
    std::vector<OfPlane<PlaneReadings>> reads;
    std::vector<OfPlane<ChosenSeams>> shifts;
};

/// None once stderr has the complaint.
std::optional<PanelsSaid> read_panels_said(const PanelsArguments& arguments);

}  // namespace hemline
