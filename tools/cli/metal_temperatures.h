// The three temperatures of the metal, as typed.
#pragma once

#include <optional>
#include <string>

#include "engine/panels/movement.h"

namespace hemline {

/// Of --at, --low and --high. None once stderr has the complaint, which names the option.
std::optional<MetalTemperatures> read_temperatures(const std::string& now, const std::string& low,
                                                   const std::string& high);

}  // namespace hemline
