// Why a reading is doubted that the roof, worked out, does not bear out.
#include <array>
#include <utility>

#include "engine/measure/tape.h"
#include "engine/work/roof_body.h"

namespace hemline {

namespace {

/// 71 for 17: the digits of the feet the other way round; 0 where there are not two.
std::int64_t feet_swapped(std::int64_t whole) {
    return whole < 10 || whole > 99 ? 0 : whole % 10 * 10 + whole / 10;
}

}  // namespace

Length told_margin(Length off) { return round_up_to(off, sixteenths(1)); }

Text roof_doubt(Length reading, const ExpectedLength& expected, Tape tape) {
    const Length within = expected.off + Length::of_nm(allowed_difference(reading, tape).nm() / 2);
    const Length by = absolute(reading - expected.length);
    if (by <= within) {
        return {};
    }
    const bool more = reading > expected.length;
    const Length told_by = nearest_on(by, sixteenths(1)), margin = told_margin(within);
    const Text said = more ? say("The roof says {1}, within {2}: this is {3} more.",
                                 expected.length, margin, told_by)
                           : say("The roof says {1}, within {2}: this is {3} less.",
                                 expected.length, margin, told_by);
    const auto near = [&](Length slip) { return absolute(by - slip) <= within; };
    // What is off by less than the roof can tell is not named.
    const auto told = [&](Length slip) { return slip > within && near(slip); };
    const std::int64_t whole = reading.nm() / feet(1).nm();
    const Length swapped = feet(feet_swapped(whole) - whole);
    Text why;
    if (told(feet(10))) {
        why = say("Likely ten feet were misread.");
    } else if (told(feet(1))) {
        why = say("Likely a foot was misread.");
    } else if (told(inches(1))) {
        why = say("Likely read from the 1 in mark (burnt inch).");
    } else if (feet_swapped(whole) > 0 && absolute(swapped) > within &&
               absolute(reading + swapped - expected.length) <= within) {
        why = say("Likely the digits of the feet are swapped.");
    }
    return why.empty() ? said : glued(said, " ", why);
}

}  // namespace hemline
