// The crew's words, where the trade has several for one thing.
//
//   English: a word of the source is replaced, "a headwall" ──▶ "an endwall"
//   else the phrases give each word its grammar, in the order of the words below:
//            "[valley|la limahoya|el valle] lleva agua" ──▶ "el valle lleva agua"
#pragma once

#include <array>
#include <map>
#include <string>
#include <string_view>

namespace hemline {

/// A thing that crews call by several words; the first is said where none was chosen.
struct CrewThing {
    std::string_view language, thing;
    std::array<std::string_view, 3> words;  ///< the last may be empty
};
inline constexpr CrewThing crew_things[] = {
    {"en", "gable", {"gable", "rake"}},         {"en", "headwall", {"headwall", "endwall"}},
    {"en", "high eave", {"high eave", "peak"}}, {"es", "gable", {"hastial", "rake"}},
    {"es", "hip", {"limatesa", "hip", "lima"}}, {"es", "valley", {"limahoya", "valle"}},
    {"es", "ridge", {"cumbrera", "caballete"}},
};

/// The words chosen, by language and thing: "es valley" is "valle". A word that is not one of the
/// thing's is as if none was chosen.
using CrewWords = std::map<std::string, std::string, std::less<>>;

/// The word that is said, as a place in CrewThing::words.
std::size_t word_said(const CrewThing& thing, const CrewWords& chosen);
void choose_word(CrewWords& chosen, const CrewThing& thing, const std::string& word);

/// A phrase of that language in the crew's words.
std::string in_crew_words(std::string phrase, std::string_view language, const CrewWords& chosen);

}  // namespace hemline
