// A sides file, and the roof worked out from it.
#pragma once

#include <optional>
#include <string>

#include "engine/handover/sides_file.h"

namespace hemline {

struct RoofFile {
    SidesFile file;
    Roof roof;
};

/// None once stderr has the complaint, with its line, column and what to do.
std::optional<RoofFile> read_roof_file(const std::string& path, std::optional<BareUnit> unit);

/// Of a walk that does not close.
Text miss_text(Length miss);

}  // namespace hemline
