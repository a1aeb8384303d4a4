#include "tests/certificate/length.h"

#include <algorithm>
#include <regex>
#include <utility>

namespace certificate {

namespace {

using Int = std::int64_t;

constexpr Int mm = 1'000'000, inch = 25'400'000, foot = 12 * inch, longest = 1'000'000 * mm;

/// Primes, ready-made fractions and the like in the letters of a typewriter.
std::string typed(std::string text) {
    const std::pair<const char*, const char*> signs[] = {
        {"′", "'"},      {"’", "'"},      {"″", "\""},    {"”", "\""},    {"''", "\""},
        {"⁄", "/"},      {"‐", "-"},      {"‑", "-"},     {"–", "-"},     {"\u00A0", " "},
        {"\u2009", " "}, {"\u202F", " "}, {"½", " 1/2 "}, {"¼", " 1/4 "}, {"¾", " 3/4 "},
        {"í", "i"},      {"⅛", " 1/8 "},  {"⅜", " 3/8 "}, {"⅝", " 5/8 "}, {"⅞", " 7/8 "},
        {"\t", " "}};
    for (const auto& [sign, plain] : signs) {
        const std::string own = sign;
        for (std::size_t at = 0; (at = text.find(own, at)) != std::string::npos;) {
            text.replace(at, own.size(), plain);
        }
    }
    text.erase(0, text.find_first_not_of(' '));
    text.erase(text.find_last_not_of(' ') + 1);
    return text;
}

/// Digits, with spaces between thousands, and those behind the point, in a unit.
Int amount(const Cell& cell, std::string digits, std::string decimals, Int unit) {
    digits.erase(std::remove(digits.begin(), digits.end(), ' '), digits.end());
    decimals.erase(decimals.find_last_not_of('0') + 1);
    if (digits.size() > 13 || decimals.size() > 9) {
        refuse(cell, "more digits than a length of a roof has");
    }
    Int parts = 1;
    for (std::size_t i = 0; i < decimals.size(); ++i) {
        parts *= 10;
    }
    const Int whole = std::stoll('0' + digits), part = std::stoll('0' + decimals) * unit;
    if (whole > longest / unit || part % parts != 0) {
        refuse(cell, "longer than a kilometre, or finer than a nanometre");
    }
    return whole * unit + part / parts;
}

/// So many parts of an inch, as a tape has them.
Int fraction(const Cell& cell, Int over, Int under) {
    if (under < 2 || under > 64 || (under & (under - 1)) != 0 || over >= under) {
        refuse(cell, "no fraction of an inch that a tape has");
    }
    return over * inch / under;
}

/// Nanometers in a unit, 0 where it is not a unit; without a unit the bare unit counts.
Int unit_of(const std::string& word, Int bare) {
    const auto is = [&](const char* words) {
        return std::regex_match(word, std::regex(words, std::regex::icase));
    };
    return word.empty()                                     ? bare
           : is("'|ft\\.?|foot|feet|pies?")                 ? foot
           : is("\"|in\\.?|inch|inches|pulg\\.?|pulgadas?") ? inch
           : is("mm|mill?imet(re|er|ro)s?")                 ? mm
           : is("cm|centimet(re|er|ro)s?")                  ? 10 * mm
           : is("m|met(re|er|ro)s?")                        ? 1000 * mm
                                                            : 0;
}

}  // namespace

Int length_nm(const Cell& cell, Int bare) {
    const std::string text = typed(cell.text);
    std::smatch found;
    const std::regex one_figure(
        "(\\d+|[1-9]\\d{0,2}(?: \\d{3})+|(?=\\.))(?:\\.(\\d+))? *(['\"]|[a-z]*\\.?)",
        std::regex::icase);
    if (std::regex_match(text, found, one_figure)) {
        const Int unit = unit_of(found[3], bare);
        const bool grouped = found.str(1).find(' ') != std::string::npos;
        if (unit == 0 || (grouped && unit % mm != 0)) {
            refuse(cell, "not a number and one unit");
        }
        return amount(cell, found[1], found[2], unit);
    }
    const std::regex parts_of_a_foot(
        "(?:(\\d+)(?: +|-))?(\\d{1,2})/(\\d{1,2}) *(?:'|ft\\.?|foot|feet|pies?)",
        std::regex::icase);
    if (std::regex_match(text, found, parts_of_a_foot)) {
        return amount(cell, found[1], "", foot) +
               12 * fraction(cell, std::stoll(found[2]), std::stoll(found[3]));
    }
    // Feet with their unit, or with a dash before inches and their fraction; inches; their unit.
    const std::regex feet_and_inches(
        "(?:(\\d+) *(?:'|ft(?:\\.(?!\\d))?|foot|feet|pies?)(?: *|-)|(\\d+)-(?=\\d+[ -]+\\d+/))?"
        "(?:(\\d+)(?:\\.(\\d+))?|(?:(\\d+)(?: +|-))?(\\d{1,2})/(\\d{1,2}))"
        " *(\"|in\\.?|inch|inches|pulg\\.?|pulgadas?)?",
        std::regex::icase);
    if (!std::regex_match(text, found, feet_and_inches)) {
        refuse(cell, "no notation of a length");
    }
    const std::string feet = found.str(1) + found.str(2), whole = found.str(3) + found.str(5);
    Int inches = amount(cell, whole.empty() ? "0" : whole, found[4], inch);
    if (found[7].matched) {
        inches += fraction(cell, std::stoll(found[6]), std::stoll(found[7]));
    }
    if (feet.empty() && !found[8].matched && bare != inch) {
        refuse(cell, "a fraction of an inch where bare numbers have another unit");
    }
    if (feet.empty()) {
        return inches;
    }
    if (inches >= foot) {
        refuse(cell, "twelve inches or more beside feet");
    }
    return amount(cell, feet, "", foot) + inches;
}

}  // namespace certificate
