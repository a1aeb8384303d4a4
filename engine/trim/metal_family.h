// The metals that trim is made of, by what they do to each other in rain.
#pragma once

#include <cstdint>
#include <string_view>

namespace hemline {

/// `other`: not said, or in words that name no metal we know.
enum class MetalFamily : std::uint8_t {
    other,
    copper,
    lead,
    zinc,
    galvanized,
    aluminum_zinc,  ///< steel coated with aluminum and zinc, painted or not
    aluminum,
    steel,
    stainless,
};

/// Reads how a crew writes it, in English or Spanish: "painted aluminum-zinc steel", "cobre".
MetalFamily metal_family(std::string_view words);

/// Whether `above` eats `below` where they touch in the wet, or where its water runs over it.
/// Copper eats zinc, aluminum, steel and what is coated with them (sea-water order of MIL-STD-889,
/// and for the run-off common practice, no published source); lead eats aluminum and aluminum-zinc
/// (common practice, no published source).
bool eats(MetalFamily above, MetalFamily below);

/// Whether a screw of that metal is eaten by the sheet it holds, or eats it: stainless screws in
/// aluminum, never the reverse (MIL-STD-1250A §5.7); copper or stainless in copper (IBC 2018
/// §1507.4.4); in stainless sheet, stainless (common practice, no published source).
bool screws_suit(MetalFamily screw, MetalFamily sheet);
/// Bare treated wood eats aluminum, zinc, galvanized steel and aluminum-zinc (common practice, no
/// published source).
bool wood_eats(MetalFamily metal);

/// Growth of a length of one by 1 °F. Galvanized steel 6.7, copper 9.4, stainless 304 9.6, aluminum
/// 12.9 millionths; zinc, rolled, 17.4 and lead 16.3 from memory. Words that name no metal: as
/// steel.
double expansion_of(MetalFamily metal);

}  // namespace hemline
