// What the drawing of a section and its page call hems and bends.
#pragma once

#include "engine/trim/section.h"

namespace hemline {

Text words_of(Hem hem);
/// "bend 30.0° up"; one that the roof gives says so.
Text bend_words(const SectionLeg& leg, double bend);

}  // namespace hemline
