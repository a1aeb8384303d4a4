// The paper in the printer, and what every sheet says at its head.
#pragma once

#include <string>

#include "engine/words/text.h"

namespace hemline {

enum class Paper { letter, a4 };

/// The job and the day of a sheet, printed on each.
struct PaperHead {
    std::string job;
    Text day;
};

}  // namespace hemline
