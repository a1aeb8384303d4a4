#include "field/words/english_beside.h"

#include <algorithm>
#include <cctype>
#include <set>
#include <string_view>

namespace hemline {

namespace {

bool is_same(std::string_view a, std::string_view b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](char x, char y) {
        return std::tolower(static_cast<unsigned char>(x)) ==
               std::tolower(static_cast<unsigned char>(y));
    });
}

/// Whether it ends with what English crews say for the thing, where it is among the words said in
/// Spanish too: a rake.
bool is_english(std::string_view word, std::string_view thing) {
    word.remove_prefix(word.find_last_of(' ') + 1);  // npos + 1 is 0: a single word
    return is_same(word, thing) || (thing == "gable" && is_same(word, "rake"));
}

}  // namespace

std::string english_beside(const std::string& phrase) {
    std::string words;
    std::set<std::string, std::less<>> met;
    std::size_t at = 0;
    while (at < phrase.size()) {
        const std::size_t open = std::min(phrase.find('[', at), phrase.size());
        const std::size_t bar = phrase.find('|', open), end = phrase.find(']', open);
        words.append(phrase, at, open - at);
        if (bar == phrase.npos || end == phrase.npos || bar > end) {
            return words.append(phrase, open);
        }
        const std::string thing = phrase.substr(open + 1, bar - open - 1);
        const bool is_first = met.insert(thing).second;
        words += "[" + thing;
        for (std::size_t from = bar; from < end;) {
            const std::size_t to = std::min(phrase.find('|', from + 1), end);
            const std::string form = phrase.substr(from + 1, to - from - 1);
            const bool beside = is_first && !is_english(form, thing);
            words += "|" + form + (beside ? " (" + thing + ")" : "");
            from = to;
        }
        words += "]";
        at = end + 1;
    }
    return words;
}

}  // namespace hemline
