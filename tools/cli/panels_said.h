// What the options of `panels` say of the job and of each plane.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/panels/panel_metal.h"
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
    PanelsFrom from = PanelsFrom::ordered_cut;
    std::optional<Length> thickness;
    std::vector<OfPlane<Penetration>> through;
    std::vector<OfPlane<PlaneReadings>> reads;
    std::vector<OfPlane<ChosenSeams>> shifts;
};

/// On top of what the job's rules say. None once stderr has the complaint.
std::optional<PanelsSaid> read_panels_said(const PanelsArguments& arguments,
                                           const Practice& practice);

}  // namespace hemline
