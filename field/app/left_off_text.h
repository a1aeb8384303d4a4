// Where the program was left, as text: it survives when the program is killed or the battery is
// dead, and is not part of a job.
#pragma once

#include <optional>
#include <string>

#include "field/state/left_off.h"

namespace hemline {

/// Lines of a word and its value, place by place, and a sum over all of them; drafts as far as
/// kept_drafts.h says.
std::string print_left_off(const LeftOff& left);
/// Nothing for any other text, one that is torn, or one written by a program whose screens had
/// other numbers.
std::optional<LeftOff> left_off_in(const std::string& text);

}  // namespace hemline
