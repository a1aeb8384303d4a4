// Where the program was left, and what was half keyed in there: it outlives a page that the browser
// ended, and is part of no job.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "field/state/state.h"

namespace hemline {

struct LeftOff {
    std::string job;  ///< name of its folder; empty: none was open
    std::int64_t wall_ms = 0;
    Where where;
    Drafts drafts;  ///< what is keyed in; no more of it is kept
};

/// Lines of a word and what it says.
std::string print_left_off(const LeftOff& left);
/// Nothing for a text that says something else, or was written by a program whose screens had
/// other numbers.
std::optional<LeftOff> left_off_in(const std::string& text);

}  // namespace hemline
