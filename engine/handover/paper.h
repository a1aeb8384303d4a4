// The paper in the printer, and what every sheet of it says at its head.
#pragma once

#include <string>

#include "engine/words/text.h"

namespace hemline {

enum class Paper { letter, a4 };

/// Of which job a sheet is, and of which day: printed on each.
struct PaperHead {
    std::string job;
    Text day;
};

}  // namespace hemline
