// Names that machines give, as texts: a path, and an id where nothing better is known.
#pragma once

#include <string>
#include <string_view>

#include "engine/words/text.h"

namespace hemline {

/// A path: whole where files are handled, on a screen its last names (short_path.h).
Text path_text(std::string_view path);
/// Whether the text is one: then its translation is asked for, though it is `as_is`.
bool is_path(const Text& text);

/// "screw_spacing" is "screw spacing".
Text spaced(std::string id);

}  // namespace hemline
