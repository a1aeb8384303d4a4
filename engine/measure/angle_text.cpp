#include "engine/measure/angle_text.h"

#include "engine/measure/characters.h"
#include "engine/measure/plain_notation.h"
#include "engine/words/quote.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

constexpr std::int64_t degree = 1'000'000;
Text example() { return say("Write degrees, as 90 or 112.5."); }

void pass_spaces(std::string_view text, std::size_t& at) {
    while (at < text.size() && is_space(text[at])) {
        ++at;
    }
}

bool is_unit(std::string_view text) {
    return text.empty() || text == "deg" || text == "degree" || text == "degrees";
}

}  // namespace

Result<Angle> parse_degrees(std::string_view text) {
    const PlainNotation plain = plain_notation(text);
    const std::string_view from = plain.text;
    const auto refuse = [&](std::size_t at, Text what, Text mend) {
        what.values.insert(what.values.begin(), Text(quoted(text)));
        return Problem{std::move(what), std::move(mend), plain.from[at]};
    };
    std::size_t at = 0;
    pass_spaces(from, at);
    const std::size_t figure = at;
    std::int64_t angle = 0;
    for (; at < from.size() && is_digit(from[at]); ++at) {
        angle = angle * 10 + (from[at] - '0') * degree;
        if (angle >= 360 * degree) {
            return refuse(figure, say("{1} is no angle below 360 degrees."), example());
        }
    }
    if (at == figure) {
        return refuse(at, at == from.size() ? say("{1} holds no angle.") : say("{1} is no angle."),
                      example());
    }
    if (at < from.size() && from[at] == '.') {
        const std::size_t point = at++;
        for (std::int64_t worth = degree / 10; at < from.size() && is_digit(from[at]);
             worth /= 10) {
            if (worth == 0) {
                return refuse(at, say("{1} has more than six decimals."),
                              say("Write fewer decimals."));
            }
            angle += (from[at++] - '0') * worth;
        }
        if (at == point + 1) {
            return refuse(at, say("{1} lacks a figure behind the point."), example());
        }
    }
    pass_spaces(from, at);
    std::string_view unit = from.substr(at);
    while (!unit.empty() && is_space(unit.back())) {
        unit.remove_suffix(1);
    }
    if (!is_unit(unit)) {
        return refuse(at, say("{1} has a character that no angle has."), example());
    }
    return microdegrees(angle);
}

}  // namespace hemline
