// A sentence for people that is put into words only where it is shown. Its English is the key for
// looking up a translation; the values at {1}, {2}, … are filled in last, and a length becomes
// letters only then, in the reader's unit.
//
//   say("{1} longer than {2}", inches(1), "the first")
//
//     ──▶  English      "1 in longer than the first"
//     ──▶  Spanish, mm  "25 mm más que la primera"
#pragma once

#include <cstdint>
#include <functional>
#include <initializer_list>
#include <iosfwd>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

#include "engine/quantity/length_print.h"
#include "engine/quantity/slope_print.h"

namespace hemline {

/// A small difference or a limit, printed to half a mark: see tell_closely().
struct CloseLength {
    Length length;

    bool operator==(const CloseLength&) const = default;
};

struct Text {
    std::string key;       ///< English, with {name} in place of a value
    std::string key_many;  ///< English for a count other than 1; empty: `key`
    std::string context;   ///< which meaning, where an English word has two; or empty
    std::int64_t count = 1;
    std::vector<std::string> names;  ///< of the values; none: they are {1}, {2}, …
    std::vector<Text> values;
    bool as_is = false;  ///< the same in every language: a name, a figure, what somebody typed
    /// A measured value; then `key` is not used.
    std::variant<std::monostate, Length, CloseLength, Slope> measured = {};

    // Copied in every source that says anything: compiled once, in text.cpp.
    Text();
    Text(const Text&);
    Text(Text&&) noexcept;
    Text& operator=(const Text&);
    Text& operator=(Text&&) noexcept;
    ~Text();
    /// The same in every language; invisible characters, also line ends, as shown_text shows them.
    explicit Text(const std::string& words) : Text(std::string_view(words)) {}
    explicit Text(std::string_view words);
    /// Our words, which may have several lines.
    explicit Text(const char* words);
    Text(Length length);
    Text(CloseLength length);
    Text(Slope slope);
    /// A sentence with its values; see say().
    Text(std::string_view english, std::initializer_list<Text> values);

    [[nodiscard]] bool empty() const { return key.empty() && measured.index() == 0; }
    /// Its English, lengths on those tape marks; see tell_length().
    [[nodiscard]] std::string english(std::optional<Marks> marks = {}) const;

    bool operator==(const Text&) const = default;
    /// Whether its English, with no tape marks known, is those words.
    template <class Words>
    requires std::is_convertible_v<const Words&, std::string_view>
    bool operator==(const Words& words) const { return english() == std::string_view(words); }
};

/// Its English, with no tape marks known.
std::ostream& operator<<(std::ostream& out, const Text& text);

/// The translation of a text's key (never asked for an `as_is` text or a length).
using Lookup = std::function<std::string(const Text&)>;
/// The words of a text: what `lookup` gives for it and for each of its values, filled in, lengths
/// on those tape marks. A {name} without a value stays.
std::string fill(const Text& text, const Lookup& lookup, std::optional<Marks> marks = {});

template <class Value>
Text as_text(const Value& value) {
    if constexpr (std::is_integral_v<Value>) {
        return Text(std::to_string(value));
    } else {
        return Text(value);
    }
}

/// The sentence with its values; a value is a Text, a Length, a Slope, a whole number, or words
/// shown as they are.
template <class... Values>
Text say(std::string_view english, const Values&... values) {
    return Text(english, {as_text(values)...});
}

/// A word in one of its meanings: "open" of a hem, "open" of an end.
template <class... Values>
Text say_of(std::string_view context, std::string_view english, const Values&... values) {
    Text text = say(english, values...);
    text.context = context;
    return text;
}

/// The sentence for one and for many; {1} is the count, further values follow.
template <class... Values>
Text say_count(std::string_view one, std::string_view many, std::int64_t count,
               const Values&... values) {
    Text text = say(one, count, values...);
    text.key_many = many;
    text.count = count;
    return text;
}

/// A sentence kept in a table and used later: marks it for translation.
constexpr const char* phrase(const char* english) { return english; }

/// Makes a Text from English words that a file keeps, so that they can be translated: by the first
/// of those patterns that matches, else the words as they are.
Text recalled(std::string_view english, std::initializer_list<std::string_view> patterns);

Text beside(std::initializer_list<Text> values);
/// Values side by side, in the same order in every language.
template <class... Values>
Text glued(const Values&... values) {
    return beside({as_text(values)...});
}

/// The texts joined by `between`; empty texts are left out.
Text joined(const std::vector<Text>& texts, std::string_view between);

/// "a, b and c": commas, and `last_two` ("{1} and {2}") before the last.
Text listed(std::vector<Text> texts, Text last_two);

}  // namespace hemline
