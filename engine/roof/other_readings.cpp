#include "engine/roof/other_readings.h"

#include <string>

namespace hemline {

namespace {

/// Adds the reading that is the nearest whole number of `unit`, 1 to `most`, away.
void add_off_by(std::vector<OtherReading>& found, Length read, Length wanted, SuspectKind kind,
                Length unit, std::int64_t most) {
    const std::int64_t units = nearest_on(wanted, unit).nm() / unit.nm();
    if (units != 0 && std::abs(units) <= most) {
        found.push_back({kind, read + units * unit, std::abs(units)});
    }
}

/// Every figure made by swapping two neighboring digits of `figure`; none that would begin with a
/// zero.
std::vector<std::int64_t> with_digits_swapped(std::int64_t figure) {
    std::vector<std::int64_t> swapped;
    const std::string digits = std::to_string(figure);
    for (std::size_t i = 0; i + 1 < digits.size(); ++i) {
        std::string other = digits;
        std::swap(other[i], other[i + 1]);
        if (other != digits && other.front() != '0') {
            swapped.push_back(std::stoll(other));
        }
    }
    return swapped;
}

void add_swapped_imperial(std::vector<OtherReading>& found, Length read) {
    const std::int64_t all_inches = read.nm() / inches(1).nm();
    const std::int64_t whole_feet = all_inches / 12;
    const std::int64_t whole_inches = all_inches % 12;
    const Length fraction = read - inches(all_inches);
    const auto add = [&](Length whole) {
        found.push_back({SuspectKind::swapped_digits, whole + fraction, 1});
    };
    for (const std::int64_t other : with_digits_swapped(whole_feet)) {
        add(feet(other) + inches(whole_inches));
    }
    for (const std::int64_t other : with_digits_swapped(all_inches)) {
        add(inches(other));
    }
    // 31 ft 7 in for 37 ft 1 in: the last digit of the feet swapped with the inches.
    const std::int64_t last = whole_feet % 10;
    if (whole_inches < 10 && last != whole_inches && whole_feet >= 1) {
        add(feet(whole_feet - last + whole_inches) + inches(last));
    }
}

}  // namespace

ReadIn read_in(const Walk& walk) {
    bool on_inches = true;
    bool on_millimetres = true;
    for (const WalkSide& side : walk.sides) {
        const std::int64_t nm = side.length.value_or(Length()).nm();
        on_inches = on_inches && nm % sixty_fourths(1).nm() == 0;
        on_millimetres = on_millimetres && nm % millimetres(1).nm() == 0;
    }
    return on_inches ? ReadIn::feet_and_inches : on_millimetres ? ReadIn::metric : ReadIn::either;
}

std::vector<OtherReading> other_readings(Length read, Length wanted, ReadIn units) {
    std::vector<OtherReading> all;
    if (units != ReadIn::metric) {
        add_off_by(all, read, wanted, SuspectKind::misread_foot, feet(1), 100);
        add_off_by(all, read, wanted, SuspectKind::misread_inch, inches(1), 11);
        add_swapped_imperial(all, read);
    }
    if (units != ReadIn::feet_and_inches) {
        add_off_by(all, read, wanted, SuspectKind::misread_metre, millimetres(1000), 30);
        add_off_by(all, read, wanted, SuspectKind::misread_decimetre, millimetres(100), 9);
        add_off_by(all, read, wanted, SuspectKind::misread_centimetre, millimetres(10), 9);
        for (const std::int64_t other : with_digits_swapped(read.nm() / millimetres(1).nm())) {
            const Length rest = nanometres(read.nm() % millimetres(1).nm());
            all.push_back({SuspectKind::swapped_digits, millimetres(other) + rest, 1});
        }
    }
    std::vector<OtherReading> possible;
    for (OtherReading& other : all) {
        if (other.length > Length() && other.length <= longest_readable()) {
            const bool burnt = other.length == read - inches(1);
            other.kind = burnt ? SuspectKind::burnt_inch : other.kind;
            possible.push_back(other);
        }
    }
    return possible;
}

}  // namespace hemline
