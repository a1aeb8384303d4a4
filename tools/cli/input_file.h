// Reads a whole input file, whatever it is: never more than 1 MiB, never a crash.
#pragma once

#include <string>

#include "engine/words/result.h"

namespace hemline {

/// All bytes of the file. Problem: it is missing, a folder, cannot be read, or is past 1 MiB.
Result<std::string> read_input_file(const std::string& path);

}  // namespace hemline
