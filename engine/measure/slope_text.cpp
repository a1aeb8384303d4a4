// Reading a slope: a rise over its run, degrees or percent, in exact millionths of the unit.
//
//   text := rise ("/" | ":" | "in") run | number ("deg" | "degrees" | "°") | number ("%" |
//   "percent") rise := number | whole (" " | "-") fraction | fraction
#include <array>
#include <optional>
#include <string>

#include "engine/measure/plain_notation.h"
#include "engine/measure/slope.h"
#include "engine/words/quote.h"

namespace hemline {

namespace {

constexpr std::int64_t one = 1'000'000;
/// Rise in 12 above which a text is taken for a mistake: 89.9° and more, given as a rise.
constexpr std::int64_t rise_most = 10'000 * one;

/// A stretch of the plain text, so that a Problem can say where it lies in the original.
struct Stretch {
    std::string_view text;
    std::size_t from = 0;
};

struct Source {
    std::string_view original;
    PlainNotation plain;

    /// `what` gets the text as its {1}.
    [[nodiscard]] Problem refuse(const Stretch& stretch, Text what, Text mend) const {
        what.values.insert(what.values.begin(), Text(quoted(original)));
        return {std::move(what), std::move(mend), plain.from[stretch.from]};
    }
};

bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_space(char c) { return c == ' ' || c == '\t' || c == '\r' || c == '\n'; }

Stretch part_of(const Stretch& stretch, std::size_t from, std::size_t length) {
    return {stretch.text.substr(from, length), stretch.from + from};
}

Stretch trimmed(Stretch stretch) {
    while (!stretch.text.empty() && is_space(stretch.text.front())) {
        stretch = part_of(stretch, 1, stretch.text.size() - 1);
    }
    while (!stretch.text.empty() && is_space(stretch.text.back())) {
        stretch.text.remove_suffix(1);
    }
    return stretch;
}

/// "22.6" in millionths; at most 6 digits before the point.
Result<std::int64_t> read_number(const Source& source, const Stretch& stretch) {
    std::int64_t value = 0;
    std::int64_t decimal_worth = 0;  // 0 before the point
    bool digit_before = false;
    for (std::size_t i = 0; i < stretch.text.size(); ++i) {
        const char c = stretch.text[i];
        const Stretch here = part_of(stretch, i, 1);
        if (c == '.' && digit_before && decimal_worth == 0) {
            decimal_worth = one;
            digit_before = false;
        } else if (!is_digit(c)) {
            return source.refuse(
                here, c == '-' ? say("{1} is negative.") : say("{1} has a character no slope has."),
                say("Write a slope as 5/12, 22.6deg or 41%."));
        } else if (decimal_worth == 0) {
            value = value * 10 + (c - '0') * one;
            digit_before = true;
        } else {
            decimal_worth /= 10;
            digit_before = true;
            value += (c - '0') * decimal_worth;
            if (decimal_worth == 0) {
                return source.refuse(here, say("{1} has more than six decimals."),
                                     say("Write fewer decimals."));
            }
        }
        if (value >= one * one) {
            return source.refuse(stretch, say("{1} is steeper than any roof."),
                                 say("Check the figures."));
        }
    }
    if (!digit_before) {
        return source.refuse(stretch, say("{1} lacks a figure."),
                             say("Write a slope as 5/12, 22.6deg or 41%."));
    }
    return value;
}

/// "1/2" in millionths: halves to 64ths, less than one.
Result<std::int64_t> read_fraction(const Source& source, const Stretch& stretch) {
    const std::size_t slash = stretch.text.find('/');
    const auto above = read_number(source, part_of(stretch, 0, slash));
    if (!above) {
        return above.problem();
    }
    const auto below = read_number(source, part_of(stretch, slash + 1, stretch.text.size()));
    if (!below) {
        return below.problem();
    }
    for (std::int64_t parts = 2; parts <= 64; parts *= 2) {
        if (*below == parts * one && *above % one == 0 && *above < *below) {
            return *above / parts;
        }
    }
    return source.refuse(stretch, say("{1} has a fraction that no tape is marked in."),
                         say("Write a fraction below one, in halves to 64ths, or decimals."));
}

/// "5", "4.5", "4 1/2", "4-1/2" or "1/2" in millionths.
Result<std::int64_t> read_rise(const Source& source, const Stretch& stretch) {
    const std::size_t slash = stretch.text.find('/');
    if (slash == std::string_view::npos) {
        return read_number(source, stretch);
    }
    const std::size_t joint = stretch.text.substr(0, slash).find_last_of(" -");
    if (joint == std::string_view::npos) {
        return read_fraction(source, stretch);
    }
    const auto fraction = read_fraction(source, part_of(stretch, joint + 1, stretch.text.size()));
    if (!fraction) {
        return fraction.problem();
    }
    const auto whole = read_number(source, trimmed(part_of(stretch, 0, joint)));
    if (!whole) {
        return whole.problem();
    }
    if (*whole % one != 0) {
        return source.refuse(stretch, say("{1} has a fraction after decimals."),
                             say("Write either decimals or a fraction, not both."));
    }
    return *whole + *fraction;
}

/// The rise that a run of `run` gives in 12, to the nearest millionth, a half up.
Result<Slope> read_rise_over_run(const Source& source, const Stretch& rise_text,
                                 const Stretch& run_text) {
    const auto run = read_number(source, run_text);
    if (!run) {
        return run.problem();
    }
    if (*run == 0) {
        return source.refuse(run_text, say("{1} has a run of nothing."),
                             say("Write the run, as in 5/12."));
    }
    const auto rise = read_rise(source, rise_text);
    if (!rise) {
        return rise.problem();
    }
    if (*rise > rise_most) {
        return source.refuse(rise_text, say("{1} is steeper than any roof."),
                             say("Check the figures."));
    }
    // rise ≤ 10¹⁰ millionths, so the product stays below 1.3·10¹⁷.
    const std::int64_t doubled = 2 * *rise * 12 * one / *run;
    if (doubled / 2 > rise_most) {
        return source.refuse(rise_text, say("{1} is steeper than any roof."),
                             say("Check the figures."));
    }
    return Slope{SlopeNotation::rise_in_12, (doubled + 1) / 2};
}

struct Ending {
    std::string_view text;
    SlopeNotation notation;
};

constexpr std::array<Ending, 5> endings = {{
    {"degrees", SlopeNotation::degrees},
    {"degree", SlopeNotation::degrees},
    {"deg", SlopeNotation::degrees},
    {"percent", SlopeNotation::percent},
    {"%", SlopeNotation::percent},
}};

std::optional<Ending> ending_of(std::string_view text) {
    for (const Ending& ending : endings) {
        const bool ends = text.size() >= ending.text.size() &&
                          text.substr(text.size() - ending.text.size()) == ending.text;
        if (ends) {
            return ending;
        }
    }
    return {};
}

Result<Slope> read_with_ending(const Source& source, const Stretch& whole, const Ending& ending) {
    const Stretch figure = trimmed(part_of(whole, 0, whole.text.size() - ending.text.size()));
    const auto value = read_number(source, figure);
    if (!value) {
        return value.problem();
    }
    const bool degrees = ending.notation == SlopeNotation::degrees;
    if (degrees && *value >= 90 * one) {
        return source.refuse(figure, say("{1} is not below 90 degrees."),
                             say("Check the level's display."));
    }
    if (!degrees && *value / 100 * 12 > rise_most) {
        return source.refuse(figure, say("{1} is steeper than any roof."),
                             say("Check the figures."));
    }
    return Slope{ending.notation, *value};
}

/// Where the sign between rise and run stands, and how long it is: ":" before "in" before the last
/// "/", since the other slashes belong to the rise's fraction.
struct Divider {
    std::size_t at, length;
};

std::optional<Divider> divider_of(std::string_view text) {
    if (const std::size_t colon = text.find(':'); colon != std::string_view::npos) {
        return Divider{colon, 1};
    }
    if (const std::size_t in = text.find("in"); in != std::string_view::npos) {
        return Divider{in, 2};
    }
    if (const std::size_t slash = text.rfind('/'); slash != std::string_view::npos) {
        return Divider{slash, 1};
    }
    return {};
}

}  // namespace

Result<Slope> parse_slope(std::string_view text) {
    Source source{text, plain_notation(text)};
    for (char& c : source.plain.text) {
        c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    const Stretch whole = trimmed({source.plain.text, 0});
    if (whole.text.empty()) {
        return source.refuse(whole, say("{1} holds no slope."),
                             say("Write a slope as 5/12, 22.6deg or 41%."));
    }
    if (const auto ending = ending_of(whole.text)) {
        return read_with_ending(source, whole, *ending);
    }
    if (const auto divider = divider_of(whole.text)) {
        const std::size_t behind = divider->at + divider->length;
        return read_rise_over_run(source, trimmed(part_of(whole, 0, divider->at)),
                                  trimmed(part_of(whole, behind, whole.text.size() - behind)));
    }
    const auto number = read_number(source, whole);
    if (!number) {
        return number.problem();
    }
    return source.refuse({{}, whole.from + whole.text.size()},
                         say("{1} does not say whether it is a rise, degrees or percent."),
                         say("Write a slope as 5/12, 22.6deg or 41%."));
}

}  // namespace hemline
