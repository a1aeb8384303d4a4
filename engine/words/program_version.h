// Which program this is: its version, and the commit of its source that it was built from.
#pragma once

#include <string_view>

#include "engine/words/text.h"

namespace hemline {

struct ProgramVersion {
    std::string_view version;  ///< "0.1.0"
    std::string_view commit;   ///< 12 hex digits; empty: not built from a git checkout
    bool changed = false;      ///< the source differed from that commit
};

/// Of this build: written by tools/program_version.cmake.
ProgramVersion program_version();

/// "Hemline 0.1.0, commit 1a2b3c4d5e6f", and whether the source was changed since then; or that the
/// commit is not known.
Text words_of(const ProgramVersion& program);

}  // namespace hemline
