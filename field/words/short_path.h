// A path as a crew reads it: the last names of folders, without what only machines are named by.
//
//   /home/ada/roofs/House/e8518a86c0ffee01.journal   ──▶   roofs ▸ House
#pragma once

#include <string>
#include <string_view>

namespace hemline {

/// At most the last two names; a path without any is given back.
std::string short_path(std::string_view path);

}  // namespace hemline
