// A color between two.
#pragma once

#include "field/touch/ui.h"

namespace hemline {

/// `part` 0 is the first, 1 the second; opaque.
inline Colour mixed(Colour a, Colour b, float part) {
    const auto channel = [&](unsigned shift) {
        const auto from = static_cast<float>(a >> shift & 0xFFU);
        const auto to = static_cast<float>(b >> shift & 0xFFU);
        return static_cast<Colour>(from + (to - from) * part) << shift;
    };
    return channel(0) | channel(8) | channel(16) | 0xFF000000U;
}

}  // namespace hemline
