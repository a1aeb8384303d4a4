// What a rule of practice is set to, in words.
#pragma once

#include <string_view>

#include "engine/words/text.h"

namespace hemline {

/// "8 in", "at one point", "the ridge"; for an empty value "not said".
Text spoken_value(std::string_view key, std::string_view value);

}  // namespace hemline
