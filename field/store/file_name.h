// The name of a file for something that a crew named: a job, a piece.
#pragma once

#include <string>
#include <string_view>

namespace hemline {

/// Up to 80 bytes of the name, cut between characters; what a file name cannot hold on some device,
/// what is not seen and what is no UTF-8 becomes "-"; no dots and spaces at its ends. Of nothing,
/// "job".
std::string file_name_of(std::string_view name);

}  // namespace hemline
