// A sentence at whose trade words a crew's English word stands too: where a screen says what it is
// about.
#pragma once

#include "engine/words/text.h"

namespace hemline {

Text at_first_use(const Text& sentence);
/// Whether the text is one: asked for its translation before the sentence in it.
bool is_first_use(const Text& text);

}  // namespace hemline
