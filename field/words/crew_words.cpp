#include "field/words/crew_words.h"

#include <algorithm>
#include <cctype>
#include <iterator>
#include <optional>

namespace hemline {

namespace {

/// Of a word, or of the name of a value in braces.
bool is_letter(char c) {
    return std::isalpha(static_cast<unsigned char>(c)) != 0 || c == '_' || c == '{' ||
           (static_cast<unsigned char>(c) & 0x80U) != 0;
}

char upper(char c) { return static_cast<char>(std::toupper(static_cast<unsigned char>(c))); }

std::string key_of(const CrewThing& thing) {
    return std::string(thing.language) + " " + std::string(thing.thing);
}

/// "a headwall" is "an endwall": the article before `at`, where a word with a vowel now begins.
void mend_article(std::string& phrase, std::size_t at) {
    constexpr std::string_view vowels = "aeiouAEIOU";
    const bool article = at >= 2 && phrase[at - 1] == ' ' &&
                         (phrase[at - 2] == 'a' || phrase[at - 2] == 'A') &&
                         (at == 2 || !is_letter(phrase[at - 3]));
    if (article && vowels.find(phrase[at]) != vowels.npos) {
        phrase.insert(at - 1, "n");
    }
}

/// Every whole word, and its plural in s, at the start of a sentence too.
void replace_word(std::string& phrase, std::string_view word, std::string_view by) {
    for (std::size_t at = 0; at + word.size() <= phrase.size(); ++at) {
        const bool same = upper(phrase[at]) == upper(word.front()) &&
                          phrase.compare(at + 1, word.size() - 1, word.substr(1)) == 0;
        std::size_t end = at + word.size();
        end += same && end < phrase.size() && phrase[end] == 's' ? 1 : 0;
        const bool whole = (at == 0 || !is_letter(phrase[at - 1])) &&
                           (end == phrase.size() || !is_letter(phrase[end]));
        if (!same || !whole) {
            continue;
        }
        const bool capital = phrase[at] == upper(phrase[at]);
        phrase.replace(at, word.size(), by);
        phrase[at] = capital ? upper(phrase[at]) : phrase[at];
        mend_article(phrase, at);
        at += by.size() - 1;
    }
}

/// Things that have a single word here, whose English stands beside it.
constexpr std::string_view said_alike[] = {"eave", "high eave", "sidewall", "headwall",
                                           "transition"};

/// Which of the forms of that thing is said; nullopt: no thing of ours.
std::optional<std::size_t> form_said(std::string_view thing, std::string_view language,
                                     const CrewWords& chosen) {
    const auto* const known = std::find_if(
        std::begin(crew_things), std::end(crew_things),
        [&](const CrewThing& one) { return one.language == language && one.thing == thing; });
    if (known != std::end(crew_things)) {
        return word_said(*known, chosen);
    }
    const bool alike =
        std::find(std::begin(said_alike), std::end(said_alike), thing) != std::end(said_alike);
    return alike ? std::optional<std::size_t>(0) : std::nullopt;
}

/// "[valley|la limahoya|el valle]": the form of the word that is said; any other bracket stays.
std::string take_forms(std::string_view phrase, std::string_view language,
                       const CrewWords& chosen) {
    std::string said;
    while (!phrase.empty()) {
        const std::size_t open = std::min(phrase.find('['), phrase.size());
        said += phrase.substr(0, open);
        phrase.remove_prefix(open);
        const std::size_t end = phrase.find(']'), bar = phrase.find('|');
        const auto form = bar < end && end != phrase.npos
                              ? form_said(phrase.substr(1, bar - 1), language, chosen)
                              : std::nullopt;
        if (!form) {
            said += phrase.substr(0, 1);
            phrase.remove_prefix(std::min<std::size_t>(1, phrase.size()));
            continue;
        }
        std::string_view forms = phrase.substr(bar + 1, end - bar - 1);
        for (std::size_t left = *form; left > 0 && forms.find('|') != forms.npos; --left) {
            forms.remove_prefix(forms.find('|') + 1);
        }
        said += forms.substr(0, forms.find('|'));
        phrase.remove_prefix(end + 1);
    }
    return said;
}

}  // namespace

std::size_t word_said(const CrewThing& thing, const CrewWords& chosen) {
    const auto found = chosen.find(key_of(thing));
    if (found == chosen.end()) {
        return 0;
    }
    const auto* const word = std::find(thing.words.begin(), thing.words.end(), found->second);
    return word == thing.words.end() ? 0 : static_cast<std::size_t>(word - thing.words.begin());
}

void choose_word(CrewWords& chosen, const CrewThing& thing, const std::string& word) {
    chosen[key_of(thing)] = word;
}

std::string in_crew_words(std::string phrase, std::string_view language, const CrewWords& chosen) {
    constexpr std::string_view of_walls[] = {"Gable", "Across the gable"};
    if (std::find(std::begin(of_walls), std::end(of_walls), phrase) != std::end(of_walls)) {
        return phrase;  // the roof's shape, and how wide it is: no edge
    }
    if (phrase.find('[') != phrase.npos) {
        phrase = take_forms(phrase, language, chosen);
    }
    for (const CrewThing& thing : crew_things) {
        const std::size_t said = language == "en" && thing.language == language && !chosen.empty()
                                     ? word_said(thing, chosen)
                                     : 0;
        if (said > 0) {
            replace_word(phrase, thing.words.front(), thing.words[said]);
        }
    }
    return phrase;
}

}  // namespace hemline
