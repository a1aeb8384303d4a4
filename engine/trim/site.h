// What was said once of the whole job and is no length: its metals, how trim is held, what the
// weather does.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>

#include "engine/measure/temperature.h"
#include "engine/quantity/angle.h"
#include "engine/roof/edge.h"

namespace hemline {

/// Where a stick of trim is fixed, so that from there on it grows and shrinks.
enum class Held : std::uint8_t {
    by_screws,     ///< along its length: the end moves from the last screw on
    at_one_point,  ///< the whole stick moves
};

/// Where the crew wants the seams of a plane.
struct SeamsChosen {
    Length shift;           ///< of all, to the right
    bool one_more = false;  ///< a pan more than there need be

    bool operator==(const SeamsChosen&) const = default;
};

struct Site {
    /// In the crew's words; empty: not said.
    std::string panel_metal, trim_metal, gutter_metal, screw_metal;
    bool treated_wood = false;  ///< bare treated wood lies against the metal
    Held held = Held::by_screws;
    std::optional<Temperature> metal_now;  ///< of the metal while it is fitted
    Temperature metal_coldest = fahrenheit(-20);
    Temperature metal_hottest = fahrenheit(180);
    std::optional<Angle> wind_from;  ///< bearing that the rain's wind comes from
    /// By edge: the bearing from its left end to its right end; which side is fitted first, where
    /// somebody said it and the wind must not.
    std::map<std::string, Angle, std::less<>> bearings;
    std::map<std::string, Side, std::less<>> firsts;
    std::map<std::string, SeamsChosen, std::less<>> seams;  ///< by the panels of a plane

    bool operator==(const Site&) const = default;
};

/// "W", "60 F", "painted aluminum": as set_site() (site_set.h) reads it; empty: not said, or no
/// such key.
std::string site_value(const Site& site, std::string_view key);

/// "right 2 in", "left 2 in, one more".
std::string print_seams(const SeamsChosen& seams);

/// The metals a crew chooses from, in these words (metal_family() reads them).
inline constexpr const char* metals_offered[] = {phrase("galvanized steel"),
                                                 phrase("painted aluminum-zinc steel"),
                                                 phrase("painted aluminum"),
                                                 phrase("copper"),
                                                 phrase("zinc"),
                                                 phrase("stainless steel")};

/// The edge's metal: its own, else the job's trim metal; empty: neither is said.
const std::string& metal_of(const Edge& edge, const Site& site);

}  // namespace hemline
