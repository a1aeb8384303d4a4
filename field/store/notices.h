// What the program is made of: the parts of others in it, each with its license and its notice.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "engine/words/result.h"

namespace hemline {

struct Notice {
    std::string part, version, license;
    std::string inside, beside;  ///< of tablet, desk, cli, browser: holds it; loads it
    std::string text;            ///< paragraphs, a blank line between them
    std::string note;            ///< ours, or empty
};

/// FOLDER/notices.csv and the texts that it names. Problem: names the file, and what is wrong in
/// it.
Result<std::vector<Notice>> read_notices(const std::filesystem::path& folder);

/// The paragraphs of a text, each on one line.
std::vector<std::string> paragraphs_of(const std::string& text);

}  // namespace hemline
