#include "engine/words/text.h"

#include <algorithm>
#include <charconv>
#include <optional>
#include <ostream>

#include "engine/words/path_text.h"
#include "engine/words/shown_text.h"

namespace hemline {

namespace {

/// The index that {name} gives, from 0; far past any value where it is not a number.
std::size_t place_numbered(std::string_view name) {
    std::size_t place = 0;
    const auto [end, error] = std::from_chars(name.data(), name.data() + name.size(), place);
    const bool is_number = error == std::errc() && end == name.data() + name.size();
    return is_number && name.front() != '0' ? place - 1 : std::string_view::npos;
}

/// The value for {name}, or none.
const Text* value_named(const Text& text, std::string_view name) {
    const auto named = std::find(text.names.begin(), text.names.end(), name);
    const std::size_t place = text.names.empty()
                                  ? place_numbered(name)
                                  : static_cast<std::size_t>(named - text.names.begin());
    return place < text.values.size() ? &text.values[place] : nullptr;
}

std::string english_key(const Text& text) {
    return text.count == 1 || text.key_many.empty() ? text.key : text.key_many;
}

/// The values with which a pattern of {1}, {2}, … gives those words; each value ends where the text
/// after it in the pattern first appears. Nullopt: the pattern does not match.
std::optional<std::vector<Text>> values_in(std::string_view words, std::string_view pattern) {
    std::vector<Text> values;
    while (true) {
        const std::size_t open = std::min(pattern.find('{'), pattern.size());
        if (words.substr(0, open) != pattern.substr(0, open)) {
            return std::nullopt;
        }
        words.remove_prefix(open);
        if (open == pattern.size()) {
            return words.empty() ? std::optional(std::move(values)) : std::nullopt;
        }
        pattern.remove_prefix(pattern.find('}', open) + 1);
        const std::string_view next = pattern.substr(0, pattern.find('{'));
        const std::size_t end = next.empty() ? words.size() : words.find(next);
        if (end == std::string_view::npos) {
            return std::nullopt;
        }
        values.push_back(say(words.substr(0, end)));
        words.remove_prefix(end);
    }
}

}  // namespace

Text::Text() = default;
Text::Text(const Text&) = default;
Text::Text(Text&&) noexcept = default;
Text& Text::operator=(const Text&) = default;
Text& Text::operator=(Text&&) noexcept = default;
Text::~Text() = default;
Text::Text(const char* words) : key(words), as_is(true) {}
Text::Text(Length length) : measured(length) {}
Text::Text(CloseLength length) : measured(length) {}
Text::Text(Slope slope) : measured(slope) {}
Text::Text(std::string_view english, std::initializer_list<Text> given)
    : key(english), values(given) {}

Text::Text(std::string_view words) : key(shown_text(words)), as_is(true) {}

std::string fill(const Text& text, const Lookup& lookup, std::optional<Marks> marks) {
    if (const auto* const length = std::get_if<Length>(&text.measured)) {
        return tell_length(*length, marks);
    }
    if (const auto* const length = std::get_if<CloseLength>(&text.measured)) {
        return tell_closely(length->length, marks);
    }
    if (const auto* const slope = std::get_if<Slope>(&text.measured)) {
        return print_slope(*slope);
    }
    if (text.as_is) {
        return shown_lines(is_path(text) ? lookup(text) : text.key);
    }
    // A key may also be what somebody typed: the name of a person, a reason given.
    const std::string pattern = shown_text(lookup(text));
    std::string words;
    std::size_t from = 0;
    while (from < pattern.size()) {
        const std::size_t open = std::min(pattern.find('{', from), pattern.size());
        const std::size_t close = pattern.find('}', open);
        words.append(pattern, from, open - from);
        if (close == std::string::npos) {
            return words.append(pattern, open);
        }
        const std::string_view name = std::string_view(pattern).substr(open + 1, close - open - 1);
        if (const Text* const value = value_named(text, name)) {
            words += fill(*value, lookup, marks);
        } else {
            words.append(pattern, open, close + 1 - open);
        }
        from = close + 1;
    }
    return words;
}

std::ostream& operator<<(std::ostream& out, const Text& text) { return out << text.english(); }

std::string Text::english(std::optional<Marks> marks) const {
    return fill(*this, english_key, marks);
}

Text recalled(std::string_view english, std::initializer_list<std::string_view> patterns) {
    for (const std::string_view pattern : patterns) {
        if (auto values = values_in(english, pattern)) {
            Text text;
            text.key = pattern;
            text.values = std::move(*values);
            return text;
        }
    }
    return Text(english);
}

Text beside(std::initializer_list<Text> values) {
    Text text("", values);
    for (std::size_t i = 1; i <= values.size(); ++i) {
        text.key += '{' + std::to_string(i) + '}';
    }
    return text;
}

Text joined(const std::vector<Text>& texts, std::string_view between) {
    // All values in a single text: nesting each in the text before would be as deep as there are
    // texts.
    Text all;
    const auto add = [&](const Text& value) {
        all.values.push_back(value);
        all.key += '{' + std::to_string(all.values.size()) + '}';
    };
    for (const Text& text : texts) {
        if (!text.empty()) {
            if (!all.values.empty()) {
                add(Text(between));
            }
            add(text);
        }
    }
    return all.values.size() == 1 ? Text(all.values.front()) : all;
}

Text listed(std::vector<Text> texts, Text last_two) {
    if (texts.size() < 2) {
        return joined(texts, "");
    }
    const Text last = texts.back();
    texts.pop_back();
    last_two.values = {joined(texts, ", "), last};
    return last_two;
}

}  // namespace hemline
