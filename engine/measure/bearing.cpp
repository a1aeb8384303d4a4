#include "engine/measure/bearing.h"

#include "engine/measure/angle_text.h"
#include "engine/words/quote.h"
#include "engine/words/result.h"

namespace hemline {

Result<Angle> parse_bearing(std::string_view text) {
    for (std::size_t i = 0; i < compass_points.size(); ++i) {
        if (compass_points[i] == text) {
            return microdegrees(between_points.microdegrees() * static_cast<std::int64_t>(i));
        }
    }
    const Result<Angle> degrees = parse_degrees(text);
    if (!degrees) {
        return Problem{say("{1} is no bearing.", quoted(std::string(text))),
                       say("Write a point of the compass such as WNW, or degrees from north by "
                           "way of east, such as 270."),
                       0};
    }
    return degrees;
}

std::string print_bearing(Angle bearing) {
    if (!is_whole_number_of(bearing, between_points)) {
        return print_degrees(bearing);
    }
    const auto point = within_a_turn(bearing).microdegrees() / between_points.microdegrees();
    return std::string(compass_points[static_cast<std::size_t>(point)]);
}

}  // namespace hemline
