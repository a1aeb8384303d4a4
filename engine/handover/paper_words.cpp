#include "engine/handover/paper_words.h"

#include <algorithm>

#include "engine/handover/svg.h"
#include "engine/words/utf8.h"

namespace hemline {

namespace {

/// Index of the byte after the letter that starts at `at`.
std::size_t past_letter(std::string_view text, std::size_t at) {
    return at + std::max<std::size_t>(1, code_point_at(text, at).bytes);
}

/// Index of the byte where the first so many letters end.
std::size_t end_of_letters(std::string_view text, std::size_t letters) {
    std::size_t at = 0;
    for (; letters > 0 && at < text.size(); --letters) {
        at = past_letter(text, at);
    }
    return at;
}

std::vector<std::string_view> words_of(std::string_view text) {
    std::vector<std::string_view> words;
    while (!text.empty()) {
        const std::size_t space = std::min(text.find(' '), text.size());
        if (space > 0) {
            words.push_back(text.substr(0, space));
        }
        text.remove_prefix(std::min(space + 1, text.size()));
    }
    return words;
}

/// "7", "5/8", "12.5", "(3": nothing but digits and the signs between them.
bool is_figure(std::string_view word) {
    word.remove_prefix(std::min(word.find_first_not_of("(\"+-"), word.size()));
    return !word.empty() && word.front() >= '0' && word.front() <= '9' &&
           word.find_first_not_of("0123456789/.") == std::string_view::npos && word.back() != '.';
}

/// After "ft" the inches may follow; after "in", "mm" and any word with a comma or period nothing
/// follows.
bool is_unit(std::string_view word, bool goes_on) {
    const std::string_view bare = word.substr(0, word.find_last_not_of(".,;:)\"") + 1);
    return goes_on ? word == "ft" : bare == "ft" || bare == "in" || bare == "mm";
}

/// How many of the words from `at` on make up a length; 1: none begins there.
std::size_t length_at(const std::vector<std::string_view>& words, std::size_t at) {
    std::size_t whole = 1;
    for (std::size_t next = at + 1; next < words.size() && next < at + 6; ++next) {
        const std::string_view before = words[next - 1];
        const bool after_figure = is_figure(before);
        const bool joins =
            (after_figure && (is_unit(words[next], false) || is_figure(words[next]))) ||
            (is_unit(before, true) && is_figure(words[next]));
        if (!joins) {
            break;
        }
        if (is_unit(words[next], false)) {
            whole = next - at + 1;
        }
    }
    return is_figure(words[at]) ? whole : 1;
}

}  // namespace

std::size_t letters_in(std::string_view text) {
    std::size_t letters = 0;
    for (std::size_t at = 0; at < text.size(); at = past_letter(text, at)) {
        ++letters;
    }
    return letters;
}

std::string shortened(std::string_view text, std::size_t letters) {
    return letters_in(text) <= letters
               ? std::string(text)
               : std::string(text.substr(0, end_of_letters(text, letters - 1))) + "…";
}

std::vector<std::string> wrapped(std::string_view text, std::size_t letters) {
    std::vector<std::string> lines(1);
    std::size_t used = 0;
    for (std::string_view word : words_of(text)) {
        const std::size_t size = letters_in(word);
        if (used > 0 && used + 1 + size > letters) {
            lines.emplace_back();
            used = 0;
        }
        lines.back() += used > 0 ? " " : "";
        used += used > 0 ? 1 : 0;
        for (; letters_in(word) > letters; lines.emplace_back()) {
            const std::size_t end = end_of_letters(word, letters);
            lines.back() += word.substr(0, end);
            word.remove_prefix(end);
        }
        lines.back() += word;
        used += letters_in(word);
    }
    return lines;
}

std::string paper_text(std::string_view text) {
    const std::vector<std::string_view> words = words_of(text);
    std::string html;
    for (std::size_t at = 0; at < words.size();) {
        const std::size_t whole = length_at(words, at);
        html += at > 0 ? " " : "";
        html += whole > 1 ? "<span class=\"whole\">" : "";
        for (std::size_t i = 0; i < whole; ++i) {
            html += (i > 0 ? " " : "") + xml_text(words[at + i]);
        }
        html += whole > 1 ? "</span>" : "";
        at += whole;
    }
    return html;
}

std::string_view whole_style() { return ".whole{white-space:nowrap}"; }

}  // namespace hemline
