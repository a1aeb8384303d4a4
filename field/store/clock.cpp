#include "field/store/clock.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <ctime>

namespace hemline {

namespace {

std::tm local_time(std::int64_t ms) {
    const std::time_t seconds = static_cast<std::time_t>(ms / 1000);
    std::tm local{};
    localtime_r(&seconds, &local);
    return local;
}

/// Midnight at the beginning of that day of the month, which may be past the month's end.
std::int64_t midnight_ms(const std::tm& day, int days_after) {
    std::tm midnight{};
    midnight.tm_year = day.tm_year;
    midnight.tm_mon = day.tm_mon;
    midnight.tm_mday = day.tm_mday + days_after;
    midnight.tm_isdst = -1;
    return static_cast<std::int64_t>(std::mktime(&midnight)) * 1000;
}

DaySpan span_of(const std::tm& day) { return {midnight_ms(day, 0), midnight_ms(day, 1)}; }

}  // namespace

std::int64_t wall_ms() {
    using namespace std::chrono;
    const auto now = duration_cast<milliseconds>(system_clock::now().time_since_epoch()).count();
    return std::max<std::int64_t>(0, now);
}

std::string clock_time(WallTime time) {
    const std::tm local = local_time(time.ms);
    char text[16];
    std::snprintf(text, sizeof text, "%d:%02d", local.tm_hour, local.tm_min);
    return text;
}

Text day_name(WallTime time) {
    static constexpr const char* months[] = {
        phrase("Jan"), phrase("Feb"), phrase("Mar"), phrase("Apr"), phrase("May"), phrase("Jun"),
        phrase("Jul"), phrase("Aug"), phrase("Sep"), phrase("Oct"), phrase("Nov"), phrase("Dec")};
    const std::tm local = local_time(time.ms);
    return say("{1} {2} {3}", local.tm_mday, say(months[local.tm_mon % 12]), local.tm_year + 1900);
}

DaySpan day_around(std::int64_t ms) { return span_of(local_time(ms)); }

std::optional<DaySpan> day_named(std::string_view date) {
    const std::string text(date);
    std::tm day{};
    char end = 0;
    constexpr std::size_t letters = 10;
    if (text.size() != letters || std::sscanf(text.c_str(), "%4d-%2d-%2d%c", &day.tm_year,
                                              &day.tm_mon, &day.tm_mday, &end) != 3) {
        return std::nullopt;
    }
    day.tm_year -= 1900;
    day.tm_mon -= 1;
    const DaySpan span = span_of(day);
    const std::tm back = local_time(span.from_ms);
    const bool is_there =
        back.tm_year == day.tm_year && back.tm_mon == day.tm_mon && back.tm_mday == day.tm_mday;
    return is_there ? std::optional(span) : std::nullopt;
}

}  // namespace hemline
