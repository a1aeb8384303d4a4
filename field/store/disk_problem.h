// What the disk said no to, in words, with the way out.
#pragma once

#include <filesystem>
#include <string>

#include "engine/words/result.h"

namespace hemline {

/// "FILE cannot be opened: permission denied", and a mend that fits the errno value `error`.
Problem disk_problem(const std::string& deed, const std::filesystem::path& file, int error);

/// A path as it stands in messages: in double quotes.
std::string shown(const std::filesystem::path& path);

}  // namespace hemline
