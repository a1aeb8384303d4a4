// Text as it may stand in an event: UTF-8, and no NUL, which would end it early on a screen.
#pragma once

#include <string_view>

namespace hemline {

/// True for well-formed UTF-8 (RFC 3629: no overlong forms, no surrogates, up to U+10FFFF) without
/// NUL.
bool is_clean_utf8(std::string_view text);

}  // namespace hemline
