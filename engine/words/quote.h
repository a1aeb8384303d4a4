// Text found in a file or typed by a hand, made safe to show inside a message.
#pragma once

#include <string>
#include <string_view>

namespace hemline {

/// At most 40 characters of the text in double quotes, each as shown_text shows it.
std::string quoted(std::string_view text);

}  // namespace hemline
