// What the disk refused, in words, with what to do.
#pragma once

#include <filesystem>
#include <string>

#include "engine/words/result_declared.h"
#include "engine/words/text.h"

namespace hemline {

/// "FILE cannot be opened: permission denied", and what to do about the errno value `error`.
Problem disk_problem(const std::string& deed, const std::filesystem::path& file, int error);

/// A path as shown in messages: in double quotes, on a screen its last names.
Text shown(const std::filesystem::path& path);

}  // namespace hemline
