// A file name for something that a crew named: a job, a piece.
#pragma once

#include <string>
#include <string_view>

namespace hemline {

/// Up to 80 bytes of the name, cut between characters; what some device does not allow in a file
/// name, invisible characters and invalid UTF-8 become "-"; no dots or spaces at its ends. If
/// nothing is left, "job".
std::string file_name_of(std::string_view name);

}  // namespace hemline
