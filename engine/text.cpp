#include "engine/text.h"

#include <algorithm>
#include <ostream>

namespace hemline {

namespace {

/// The value that {name} stands for, or none.
const Text* value_named(const Text& text, std::string_view name) {
    for (std::size_t i = 0; i < text.values.size(); ++i) {
        if (name == (text.names.empty() ? std::to_string(i + 1) : text.names[i])) {
            return &text.values[i];
        }
    }
    return nullptr;
}

std::string english_key(const Text& text) {
    return text.count == 1 || text.key_many.empty() ? text.key : text.key_many;
}

}  // namespace

std::string fill(const Text& text, const Lookup& lookup) {
    if (text.as_is) {
        return text.key;
    }
    const std::string pattern = lookup(text);
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
            words += fill(*value, lookup);
        } else {
            words.append(pattern, open, close + 1 - open);
        }
        from = close + 1;
    }
    return words;
}

std::ostream& operator<<(std::ostream& out, const Text& text) { return out << text.english(); }

std::string Text::english() const { return fill(*this, english_key); }

Text joined(const std::vector<Text>& texts, std::string_view between) {
    Text all;
    for (const Text& text : texts) {
        if (!text.empty()) {
            all = all.empty() ? text : glued(all, between, text);
        }
    }
    return all;
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
