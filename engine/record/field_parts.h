// What the lists of fields share: limits, and the fields of values that several kinds hold.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "engine/measure/slope.h"
#include "engine/quantity/angle.h"
#include "engine/record/said_values.h"

namespace hemline {

/// More pieces, sticks or laps than any job has.
constexpr std::int64_t count_most = 1'000'000;
/// Bytes of a text: a page of remarks.
constexpr std::size_t text_most = 4096;
/// No brake bends as many legs, and no supplier has as many lengths.
constexpr std::size_t event_legs_most = 64, event_stock_most = 64;
/// No roof has as many runs of one trim; and as many pieces make 300 m from sticks of a foot.
constexpr std::size_t event_runs_most = 1000, event_cuts_most = 1000;

/// How many a list may hold. It is part of the call's type: a list without a limit, or with a limit
/// higher than any event needs, does not compile.
template <std::size_t most>
struct AtMost {
    static_assert(most > 0 && most <= text_most, "a list that makes work without bound");
};

/// A flag, and the value only where the flag is 1.
template <class Bytes, class T, class Each>
void maybe(Bytes& bytes, const char* name, std::optional<T>& value, Each each) {
    bool there = value.has_value();
    bytes.flag(name, there);
    if (there) {
        each(value ? *value : value.emplace());
    }
}

template <class Bytes>
void fields(Bytes& bytes, const char* name, EventId& id) {
    bytes.number(name, id.device);
    bytes.number(name, id.sequence, std::uint32_t{1}, std::uint32_t{0xFFFF'FFFF});
}

template <class Bytes>
void fields(Bytes& bytes, const char* name, Angle& angle, Angle least, Angle most) {
    std::int64_t number = angle.microdegrees();
    bytes.number(name, number, least.microdegrees(), most.microdegrees());
    angle = microdegrees(number);
}

template <class Bytes>
void fields(Bytes& bytes, const char* name, Slope& slope) {
    bytes.choice(name, slope.notation, SlopeNotation::percent);
    const bool in_degrees = slope.notation == SlopeNotation::degrees;
    bytes.number(name, slope.millionths, std::int64_t{0},
                 in_degrees ? std::int64_t{89'999'999} : std::int64_t{1'000'000'000'000});
}

template <class Bytes>
void fields(Bytes& bytes, const char* name, MetalTaken& metal) {
    bytes.length(name, metal.stick);
    maybe(bytes, "offcut", metal.offcut, [&](EventId& id) { fields(bytes, "offcut", id); });
}

template <class Bytes, std::size_t most>
void lengths(Bytes& bytes, const char* name, std::vector<Length>& many, AtMost<most> bound) {
    bytes.count(name, many, sizeof(std::int64_t), bound);
    for (Length& length : many) {
        bytes.length(name, length);
    }
}

}  // namespace hemline
