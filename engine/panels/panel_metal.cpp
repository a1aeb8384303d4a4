#include "engine/panels/panel_metal.h"

#include <algorithm>

namespace hemline {

namespace {

constexpr double inch_nm = 25.4e6;

double in_inches(Length length) { return nm_of(length) / inch_nm; }

std::vector<Length> lengths_of(const PanelLayout& layout) {
    std::vector<bool> paired(layout.pans.size(), false);
    std::vector<Length> lengths;
    for (const PanPair& pair : layout.pairs) {
        paired[pair.first] = paired[pair.second] = true;
        lengths.push_back(pair.length);
    }
    for (std::size_t i = 0; i < layout.pans.size(); ++i) {
        if (!paired[i]) {
            lengths.push_back(layout.pans[i].length);
        }
    }
    return lengths;
}

}  // namespace

std::optional<Length> strip_of(const Practice& practice) {
    const Practice usual;
    const bool is_usual =
        practice.seam_spacing == usual.seam_spacing && practice.seam_height == usual.seam_height;
    return is_usual || practice.strip != usual.strip ? std::optional(practice.strip) : std::nullopt;
}

std::optional<double> density_of(MetalFamily metal) {
    switch (metal) {
        case MetalFamily::galvanized:
        case MetalFamily::aluminum_zinc:
        case MetalFamily::steel:
            return 0.2836;
        case MetalFamily::aluminum:
            return 0.098;
        case MetalFamily::copper:
            return 0.323;
        case MetalFamily::zinc:
            return 0.259;
        case MetalFamily::stainless:
            return 0.29;
        default:
            return {};
    }
}

PanelMetal panel_metal(std::span<const PanelLayout> layouts, const Practice& practice,
                       PanelsFrom from, std::optional<Length> thickness) {
    PanelMetal metal;
    Length longest;
    for (const PanelLayout& layout : layouts) {
        for (const Length length : lengths_of(layout)) {
            ++metal.lengths;
            metal.running += length;
            longest = std::max(longest, length);
        }
    }
    if (from == PanelsFrom::coil) {
        metal.coil_feet = parts_to_cover(metal.running, feet(1));
    }
    const std::string& said = practice.site.panel_metal;
    const auto density = density_of(said.empty() ? MetalFamily::galvanized : metal_family(said));
    const auto strip = strip_of(practice);
    if (density && strip && thickness) {
        const double each_inch = in_inches(*strip) * in_inches(*thickness) * *density;
        metal.pounds = in_inches(metal.running) * each_inch;
        metal.heaviest = in_inches(longest) * each_inch;
    }
    return metal;
}

}  // namespace hemline
