// A file that a command is asked to write: a page to print, a drawing.
#pragma once

#include <string>

namespace hemline {

/// Writes it, where `path` is not empty. False once stderr has the complaint, which names `option`.
bool write_output_file(const char* option, const std::string& path, const std::string& text);

}  // namespace hemline
