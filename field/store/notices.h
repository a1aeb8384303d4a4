// What the program is made of: the parts written by others, each with its license and its notice.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "engine/words/result_declared.h"

namespace hemline {

struct Notice {
    std::string part, version, license;
    std::string inside, beside;  ///< which of tablet, desk, cli, browser has it; loads it
    std::string text;            ///< paragraphs, a blank line between them
    std::string note;            ///< ours, or empty
};

/// FOLDER/notices.csv and the texts that it names. Problem: names the file, and what is wrong in
/// it.
Result<std::vector<Notice>> read_notices(const std::filesystem::path& folder);

/// The paragraphs of a text, each on one line.
std::vector<std::string> paragraphs_of(const std::string& text);

}  // namespace hemline
