#include "tools/cli/print.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <ctime>
#include <iostream>

#include "engine/quantity/angle.h"
#include "engine/work/procedure_words.h"

namespace hemline {
namespace {

constexpr const char* too_large = "the job is larger than the proof has room for";

}  // namespace

std::string json_text(const Json& json, int indent) {
    return shown_lines(json.dump(indent, ' ', false, Json::error_handler_t::replace)) + '\n';
}

void print_json(const Json& json) { std::cout << json_text(json, 2); }

void put_length(Json& into, const std::string& name, Length length, Marks marks) {
    into[name + "_nm"] = length.nm();
    into[name] = tell_length(length, marks);
}

std::string rounded(double value, int decimals) {
    std::array<char, 64> text{};
    std::snprintf(text.data(), text.size(), "%.*f", decimals, value);
    return text.data();
}

double micro_rounded(double degrees) { return degrees_of(nearest_microdegree(degrees)); }

Marks marks_for(std::optional<BareUnit> unit, const Practice& practice) {
    const Marks of_job = marks_of(practice);
    if (unit == BareUnit::millimetre) {
        return Marks::millimetre;
    }
    return unit && of_job == Marks::millimetre ? Marks::sixteenth : of_job;
}

std::string padded(std::string_view text, std::size_t width) {
    const auto is_first_byte = [](char c) {
        return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
    };
    const auto characters =
        static_cast<std::size_t>(std::count_if(text.begin(), text.end(), is_first_byte));
    return std::string(text) + std::string(characters < width ? width - characters : 0, ' ') + ' ';
}

std::string iso_time(WallTime time) {
    const std::int64_t ms = ((time.ms % 1000) + 1000) % 1000;
    const std::time_t seconds = (time.ms - ms) / 1000;
    std::tm utc{};
    if (gmtime_r(&seconds, &utc) == nullptr) {
        return "time " + std::to_string(time.ms) + " ms";
    }
    std::array<char, 64> text{};
    const std::size_t size = std::strftime(text.data(), text.size(), "%Y-%m-%dT%H:%M:%S", &utc);
    const std::string thousandths = std::to_string(1000 + ms).substr(1);
    return std::string(text.data(), size) + '.' + thousandths + 'Z';
}

void say_too_large(Json& json, bool is_too_large) {
    if (is_too_large) {
        json["not_proved"] = too_large;
    }
}

std::string too_large_words(bool is_too_large) {
    return is_too_large ? ": not proved: " + std::string(too_large) : "";
}

std::string_view caution() {
    return "Caution: the local code, the engineer and the maker's printed instructions decide, not "
           "this list. Cut metal is sharp: gloves and eye protection.";
}

}  // namespace hemline
