// Text found in a file or typed by a hand, made safe to show inside a message.
#pragma once

#include <string>
#include <string_view>

namespace hemline {

/// The text in double quotes, at most 40 characters of it; control characters and bytes that are no
/// UTF-8 are shown as "?".
std::string quoted(std::string_view text);

}  // namespace hemline
