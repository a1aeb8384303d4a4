// What was cut, lost, counted and measured of the metal.
#pragma once

#include <cstdint>
#include <string>

#include "engine/record/kinds.h"
#include "engine/record/said_values.h"

namespace hemline {

struct PieceCut {
    static constexpr std::uint16_t kind_number = 7;
    std::string edge;
    TrimRole role = TrimRole::main;
    int piece = 0;
    Length cut;
    MetalTaken metal;

    bool operator==(const PieceCut&) const = default;
};
/// Metal lost without yielding the piece. Supersedes the PieceCut it undoes, if there is one.
struct PieceSpoiled {
    static constexpr std::uint16_t kind_number = 8;
    std::string edge;
    TrimRole role = TrimRole::main;
    int piece = 0;
    Length lost;
    MetalTaken metal;

    bool operator==(const PieceSpoiled&) const = default;
};
/// So many sticks or offcuts of that length lie there, fit for that trim of the edge. Supersedes
/// what was counted before, when it corrects it.
struct MetalCounted {
    static constexpr std::uint16_t kind_number = 21;
    std::string edge;
    TrimRole role = TrimRole::main;
    Length length;
    std::int64_t count = 0;

    bool operator==(const MetalCounted&) const = default;
};
/// A stick or an offcut is not as long as it was taken for.
struct StickMeasured {
    static constexpr std::uint16_t kind_number = 22;
    std::string edge;
    TrimRole role = TrimRole::main;
    MetalTaken metal;
    Length length;

    bool operator==(const StickMeasured&) const = default;
};
/// A whole stick or offcut is bent, scratched or gone.
struct StickSpoiled {
    static constexpr std::uint16_t kind_number = 23;
    std::string edge;
    TrimRole role = TrimRole::main;
    MetalTaken metal;

    bool operator==(const StickSpoiled&) const = default;
};
struct SupplyChosen {
    static constexpr std::uint16_t kind_number = 25;
    std::string edge;
    TrimRole role = TrimRole::main;
    Supply supply = Supply::as_wanted;

    bool operator==(const SupplyChosen&) const = default;
};

using MetalFacts =
    Kinds<PieceCut, PieceSpoiled, MetalCounted, StickMeasured, StickSpoiled, SupplyChosen>;

}  // namespace hemline
