// A sentence for people, which is put into words where it is shown: its English is the key that a
// language looks it up by, what stands at {1}, {2}, … is filled in last, and a length in it becomes
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

/// A small difference or a limit, told to half a mark: see tell_closely().
struct CloseLength {
    Length length;

    bool operator==(const CloseLength&) const = default;
};

struct Text {
    std::string key;       ///< English, with {name} where a value stands
    std::string key_many;  ///< English for a count other than one; empty: `key` serves
    std::string context;   ///< which meaning, where one English word has two; or empty
    std::int64_t count = 1;
    std::vector<std::string> names;  ///< of the values; none: they are {1}, {2}, …
    std::vector<Text> values;
    bool as_is = false;  ///< the same in every language: a name, a figure, what somebody typed
    /// What is measured: then it has no words of its own.
    std::variant<std::monostate, Length, CloseLength, Slope> measured = {};

    Text() = default;
    /// The same in every language; what is no letter in it, a line end too, as shown_text shows it.
    explicit Text(const std::string& words) : Text(std::string_view(words)) {}
    explicit Text(std::string_view words);
    /// Our own words, which may stand on several lines.
    explicit Text(const char* words) : key(words), as_is(true) {}
    Text(Length length) : measured(length) {}
    Text(CloseLength length) : measured(length) {}
    Text(Slope slope) : measured(slope) {}

    [[nodiscard]] bool empty() const { return key.empty() && measured.index() == 0; }
    /// Its English, lengths for a reader who works on those marks; see tell_length().
    [[nodiscard]] std::string english(std::optional<Marks> marks = {}) const;

    bool operator==(const Text&) const = default;
    /// Whether its English on no marks is those words.
    template <class Words>
    requires std::is_convertible_v<const Words&, std::string_view>
    bool operator==(const Words& words) const { return english() == std::string_view(words); }
};

/// Its English, on no marks.
std::ostream& operator<<(std::ostream& out, const Text& text);

/// What a language gives for one text's key (never asked for an `as_is` one, nor for a length).
using Lookup = std::function<std::string(const Text&)>;
/// The words of a text: what `lookup` gives for it and for each of its values, filled in, lengths
/// for a reader who works on those marks. A {name} with no value stays as it stands.
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
    Text text;
    text.key = english;
    text.values = {as_text(values)...};
    return text;
}

/// The same word in one of its meanings: "open" of a hem, of an end.
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

/// A sentence kept in a table, to be said later: its place among the sentences to translate.
constexpr const char* phrase(const char* english) { return english; }

/// What a file keeps in English, to be said in another language: as the first of those patterns
/// that makes these words; of none, the words as they are.
Text recalled(std::string_view english, std::initializer_list<std::string_view> patterns);

/// Values side by side, in this order in every language.
template <class... Values>
Text glued(const Values&... values) {
    Text text;
    for (int i = 1; i <= static_cast<int>(sizeof...(values)); ++i) {
        text.key += '{' + std::to_string(i) + '}';
    }
    text.values = {as_text(values)...};
    return text;
}

/// Texts one after another, each but the first after `between`; empty ones left out.
Text joined(const std::vector<Text>& texts, std::string_view between);

/// "a, b and c": commas, and `last_two` ("{1} and {2}") where the last comes.
Text listed(std::vector<Text> texts, Text last_two);

}  // namespace hemline
