// The words that a procedures file may use: how often, what is asked, numbers to put in, limits.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "engine/measure/length_text.h"
#include "engine/trim/practice.h"
#include "engine/work/procedure.h"

namespace hemline {

std::optional<Each> each_of(std::string_view word);
std::optional<Asks> asks_of(std::string_view word);

/// True when the step comes once for each piece or lap, not once for the edge.
constexpr bool is_of_pieces(Each each) { return each != Each::edge && each != Each::sent_back; }
/// The run whose pieces the step goes through.
TrimRole role_of(Each each);

/// The limits of a count that mean "as many as planned".
constexpr std::string_view screws_planned = "screws";
constexpr std::string_view closures_planned = "closures";
struct PlannedCounts {
    std::int64_t screws = 0, closures = 0;
};

/// A length of practice by its key ("lap", "hook_gap_most"); none when there is no such key.
std::optional<Length> practice_length(const Practice& practice, std::string_view key);
/// A limit of a length: a practice key, or a length as people write it.
std::optional<Length> length_limit(std::string_view word, const Practice& practice);
/// A limit of a count: a whole number from 0, "screws" or "closures".
std::optional<std::int64_t> count_limit(std::string_view word, const PlannedCounts& planned);

/// The marks lengths are printed on: those of the grid that cuts lie on.
Marks marks_of(const Practice& practice);

/// The text with each {word} replaced by value_of(word). Braces that do not pair are left as they
/// are; so is a word without a value.
template <class ValueOf>
std::string fill_in(std::string_view text, ValueOf value_of) {
    std::string filled;
    while (!text.empty()) {
        const std::size_t open = text.find('{');
        const std::size_t close = open == text.npos ? open : text.find('}', open);
        if (close == text.npos) {
            break;
        }
        const std::string_view word = text.substr(open + 1, close - open - 1);
        const std::optional<std::string> value = value_of(word);
        filled += text.substr(0, open);
        filled += value ? *value : "{" + std::string(word) + "}";
        text.remove_prefix(close + 1);
    }
    return filled + std::string(text);
}

}  // namespace hemline
