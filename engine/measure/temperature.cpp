#include "engine/measure/temperature.h"

#include <cstdlib>

#include "engine/words/quote.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

constexpr Temperature coldest = fahrenheit(-60), hottest = fahrenheit(250);

Problem no_temperature(std::string_view text) {
    return {say("{1} is no temperature of a roof.", quoted(std::string(text))),
            say("Write whole degrees with F or C, such as 60 F or -5 C."), 0};
}

}  // namespace

Result<Temperature> parse_temperature(std::string_view text) {
    std::size_t at = text.substr(0, 1) == "-" ? 1 : 0;
    const std::size_t digits = at;
    int degrees = 0;
    for (; at < text.size() && at < digits + 3 && text[at] >= '0' && text[at] <= '9'; ++at) {
        degrees = degrees * 10 + (text[at] - '0');
    }
    if (at == digits) {
        return no_temperature(text);
    }
    degrees = digits == 1 ? -degrees : degrees;
    std::string_view unit = text.substr(at);
    while (unit.substr(0, 1) == " ") {
        unit.remove_prefix(1);
    }
    if (unit.substr(0, 2) == "\u00b0") {
        unit.remove_prefix(2);
    }
    const bool celsius = unit == "C" || unit == "c";
    if (!celsius && !unit.empty() && unit != "F" && unit != "f") {
        return no_temperature(text);
    }
    const Temperature t{celsius ? degrees * 18 + 320 : degrees * 10};
    return t < coldest || t > hottest ? Result<Temperature>(no_temperature(text)) : t;
}

std::string print_temperature(Temperature t) {
    const int whole = std::abs(t.tenths) / 10, rest = std::abs(t.tenths) % 10;
    return (t.tenths < 0 ? "-" : "") + std::to_string(whole) +
           (rest == 0 ? "" : "." + std::to_string(rest)) + " F";
}

}  // namespace hemline
