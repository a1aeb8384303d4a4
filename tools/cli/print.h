// Printing for desks: JSON that stays valid with any bytes, plain columns, times and lines.
#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <string_view>

#include "engine/measure/length_text.h"
#include "engine/record/moment.h"
#include "engine/trim/practice.h"
#include "engine/words/shown_text.h"
#include "engine/words/text.h"

namespace hemline {

using Json = nlohmann::ordered_json;

/// The JSON and a newline; bytes that are not UTF-8 become U+FFFD, invisible characters are
/// escaped.
std::string json_text(const Json& json, int indent);

/// Writes it on stdout.
void print_json(const Json& json);

/// Puts a length beside its printed form, tell_length(): `"cut_nm": 1524000000, "cut": "5 ft"`.
void put_length(Json& into, const std::string& name, Length length, Marks marks);

/// A figure with that many decimals.
std::string rounded(double value, int decimals);

/// Degrees for other programs, to the millionth: the same digits on every platform.
double micro_rounded(double degrees);

/// The marks for printing: millimeters where bare numbers are millimeters, else those of the job's
/// grid; inches where the grid lies on millimeters and bare numbers are inches.
Marks marks_for(std::optional<BareUnit> unit, const Practice& practice = {});

/// Text padded with spaces to `width` characters, and one more space.
std::string padded(std::string_view text, std::size_t width);

/// UTC as "2026-05-04T13:20:41.007Z".
std::string iso_time(WallTime time);

/// Says that something is not proved because the job is larger than the proof has room for: in JSON
/// as "not_proved", in text at the end of a line. Nothing otherwise.
void say_too_large(Json& json, bool is_too_large);
std::string too_large_words(bool is_too_large);

/// The line under every cut list and card.
std::string_view caution();

}  // namespace hemline
