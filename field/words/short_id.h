// A sentence's short name, for catalogues that need not carry the English again: the browser's.
#pragma once

#include <string>
#include <string_view>

namespace hemline {

/// The first seven hexadecimal digits of FNV-1a of its bytes in 32 bits (Fowler, Noll and Vo).
/// `tools/words short` writes them, and fails where two sentences have the same.
std::string short_id(std::string_view sentence);

}  // namespace hemline
