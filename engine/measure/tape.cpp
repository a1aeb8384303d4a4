#include "engine/measure/tape.h"

#include <algorithm>

#include "engine/require.h"

namespace hemline {

namespace {

/// NIST HB 44 §5.52, metal tapes, at most 100 ft. The handbook's bands leave gaps (6 to 7 ft, 30 to
/// 31 ft …), where the larger error is used.
Length nist_error(Length length) {
    if (length <= feet(6)) {
        return thirty_seconds(1);
    }
    if (length <= feet(30)) {
        return sixteenths(1);
    }
    if (length <= feet(55)) {
        return sixteenths(2);
    }
    return length <= feet(80) ? sixteenths(3) : sixteenths(4);
}

/// a, b and the hook's share of a MID class, in tenths of a millimeter.
struct MidClass {
    std::int64_t constant, each_metre, hook;
};

MidClass mid_class_of(TapeClass tape_class) {
    switch (tape_class) {
        case TapeClass::mid_1:
            return {1, 1, 1};
        case TapeClass::mid_2:
            return {3, 2, 2};
        case TapeClass::mid_3:
            return {6, 4, 3};
        case TapeClass::nist_hb44:
            break;
    }
    stop("a MID class without its figures");
}

}  // namespace

Length tape_error(Length length, Tape tape) {
    if (tape.tape_class == TapeClass::nist_hb44) {
        const std::int64_t full_parts = length.nm() / feet(100).nm();
        const Length rest = length - full_parts * feet(100);
        const bool has_rest = rest > Length() || full_parts == 0;
        return full_parts * nist_error(feet(100)) + (has_rest ? nist_error(rest) : Length());
    }
    const MidClass mid = mid_class_of(tape.tape_class);
    const std::int64_t metres = parts_to_cover(std::max(length, Length()), millimetres(1000));
    return tenths_of_millimetre(mid.constant + mid.each_metre * metres +
                                (tape.end_hook ? mid.hook : 0));
}

Length allowed_difference(Length length, Tape tape) {
    const bool inch_tape = tape.tape_class == TapeClass::nist_hb44;
    return 2 * tape_error(length, tape) + (inch_tape ? sixteenths(1) : millimetres(1));
}

}  // namespace hemline
