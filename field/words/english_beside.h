// The English word of a crew beside a word of its own language, at the first of each thing:
//   "[valley|limahoya|valle] V" ──▶ "[valley|limahoya (valley)|valle (valley)] V"
#pragma once

#include <string>

namespace hemline {

/// A phrase as the catalogue has it, before in_crew_words(). A word that is the English one has
/// nothing beside it.
std::string english_beside(const std::string& phrase);

}  // namespace hemline
