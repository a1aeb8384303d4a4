// A name or a few words being keyed in by letters.
#pragma once

#include <string>

namespace hemline {

struct NameDraft {
    std::string letters;
    bool digits_shown = false;  ///< where letters and digits share the room in turn
};

}  // namespace hemline
