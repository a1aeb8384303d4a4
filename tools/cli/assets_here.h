// The trade's rules as this program finds them, for every command.
#pragma once

#include <optional>

#include "field/store/assets.h"

namespace hemline {

/// Reads the assets from HEMLINE_ASSETS or beside the program; says on stderr why it cannot.
std::optional<Assets> assets_here();

}  // namespace hemline
