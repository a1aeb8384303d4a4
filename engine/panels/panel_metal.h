// The metal that panels take: running feet of the strip they are formed from, and its weight.
#pragma once

#include <cstdint>
#include <optional>
#include <span>

#include "engine/panels/panel_layout.h"
#include "engine/trim/metal_family.h"

namespace hemline {

/// How panels come: each cut to its length, or formed on the site from a coil.
enum class PanelsFrom : std::uint8_t { ordered_cut, coil };

/// The strip that a pan is formed from: practice's (20 in) for pans of 16 in with seams of 1 1/2
/// in; for others only where the job's rule is another. None: the maker must say it.
std::optional<Length> strip_of(const Practice& practice);

/// Pounds a cubic inch: steel 0.2836, aluminum 0.098, copper 0.323, zinc 0.259, stainless steel
/// 0.29 (from memory). None: words that name no metal, and lead.
std::optional<double> density_of(MetalFamily metal);

struct PanelMetal {
    std::int64_t lengths = 0;    ///< to order: a pair comes from one
    Length running;              ///< of all of them
    std::int64_t coil_feet = 0;  ///< formed on the site: the same in whole feet; else 0
    std::optional<double> pounds,
        heaviest;  ///< of all, of the longest; none: something is not said
};

/// `thickness` as the metal comes; the metal is the practice's, galvanized steel where nobody says
/// it.
PanelMetal panel_metal(std::span<const PanelLayout> layouts, const Practice& practice,
                       PanelsFrom from, std::optional<Length> thickness);

}  // namespace hemline
