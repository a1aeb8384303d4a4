// The lines along which a crew may say that panels are pinned.
#pragma once

#include "engine/trim/practice.h"

namespace hemline {

struct PinnedLine {
    const char* value;  ///< as RuleSet keeps it
    FixedLine line;
    const char* words;
};
inline constexpr PinnedLine pinned_lines[] = {{"eave", FixedLine::eave, phrase("the eave")},
                                              {"ridge", FixedLine::ridge, phrase("the ridge")}};

}  // namespace hemline
