// Reads a slope: a rise over its run, degrees or percent, in exact millionths of the unit.
//
//   text := rise ("/" | ":" | "in" | "en") run | rise "-" "12"
//         | number ("deg" | "degrees" | "°" | "grados") | number ("%" | "percent" | "por ciento")
//   rise := number | whole (" " | "-") fraction | fraction
//
//   With "/" the run must be 12: 1/4 may be 1/4:12, a low roof, or 1 in 4, a steep one.
#include <algorithm>
#include <array>
#include <optional>
#include <string>

#include "engine/measure/characters.h"
#include "engine/measure/plain_notation.h"
#include "engine/measure/slope.h"
#include "engine/words/quote.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

constexpr std::int64_t one = 1'000'000;
/// Rise in 12 above which a text is taken for a mistake: 89.9° and more, given as a rise.
constexpr std::int64_t rise_most = 10'000 * one;

/// A part of the plain text, so that a Problem can say where it is in the original.
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
    const std::size_t first = source.plain.text.find_first_not_of(" \t\r\n");
    for (std::size_t i = 0; i < stretch.text.size(); ++i) {
        const char c = stretch.text[i];
        const Stretch here = part_of(stretch, i, 1);
        const bool leads = i == 0 && stretch.text.size() > 1 && is_digit(stretch.text[1]);
        if (c == '.' && (digit_before || leads) && decimal_worth == 0) {
            decimal_worth = one;
            digit_before = false;
        } else if (!is_digit(c)) {
            return source.refuse(here,
                                 c != '-'             ? say("{1} has a character no slope has.")
                                 : here.from == first ? say("{1} is negative.")
                                                      : say("{1} has a dash where none belongs."),
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

/// "1/2" in millionths: halves to 64ths, less than 1.
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

/// The rise in 12 for a rise over `run`, to the nearest millionth, a half up.
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

constexpr std::array<Ending, 8> endings = {{
    {"degrees", SlopeNotation::degrees},
    {"grados", SlopeNotation::degrees},
    {"grado", SlopeNotation::degrees},
    {"por ciento", SlopeNotation::percent},
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

/// Where the sign between rise and run is, and how long it is: ":" if there is one, else "in" or
/// "en", else the dash of "5-12", else the last "/", since other slashes and dashes belong to the
/// fraction of the rise.
struct Divider {
    std::size_t at, length;
};

std::optional<Divider> divider_of(std::string_view text) {
    if (const std::size_t colon = text.find(':'); colon != std::string_view::npos) {
        return Divider{colon, 1};
    }
    for (const std::string_view word : {"in", "en"}) {
        if (const std::size_t at = text.find(word); at != std::string_view::npos) {
            return Divider{at, 2};
        }
    }
    const std::size_t dash = text.rfind('-');
    if (dash != std::string_view::npos && dash > 0 &&
        text.substr(std::min(text.find_first_not_of(' ', dash + 1), text.size())) == "12") {
        return Divider{dash, 1};
    }
    if (const std::size_t slash = text.rfind('/'); slash != std::string_view::npos) {
        return Divider{slash, 1};
    }
    return {};
}

/// "4", "4 1/2": a figure alone.
Problem without_unit(const Source& source, const Stretch& whole) {
    return source.refuse({{}, whole.from + whole.text.size()},
                         say("{1} does not say whether it is a rise, degrees or percent."),
                         say("Write a slope as 5/12, 22.6deg or 41%."));
}

/// "4 1" or "4-1", the whole and the numerator of 4 1/2.
bool is_mixed(const Stretch& rise) {
    const std::size_t joint = rise.text.find_last_of(" -");
    return joint != std::string_view::npos && joint > 0 && joint + 1 < rise.text.size() &&
           rise.text.find_first_not_of("0123456789 -") == std::string_view::npos;
}

/// "1/4": a rise of a quarter in 12, or 1 in 4? `run` is not 12.
Problem two_meanings(const Source& source, const Stretch& rise, const Stretch& run) {
    const std::string above(rise.text);
    const std::string below(run.text);
    return source.refuse(
        run, say("{1} may be a fraction of an inch in 12, or a rise over a run."),
        say("Write {1}/{2}:12 for {1}/{2} in 12, or {1}:{2} for {1} in {2}.", above, below));
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
        const Stretch rise = trimmed(part_of(whole, 0, divider->at));
        const Stretch run = trimmed(part_of(whole, behind, whole.text.size() - behind));
        const bool slashed = whole.text[divider->at] == '/' && run.text != "12";
        if (slashed && is_mixed(rise)) {
            return without_unit(source, whole);
        }
        const Result<Slope> slope = read_rise_over_run(source, rise, run);
        return slashed && slope ? two_meanings(source, rise, run) : slope;
    }
    const auto number = read_number(source, whole);
    if (!number) {
        return number.problem();
    }
    return without_unit(source, whole);
}

}  // namespace hemline
