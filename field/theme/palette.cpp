#include <algorithm>
#include <cmath>

#include "field/theme/theme.h"

namespace hemline {

namespace {

/// 0xRRGGBB, opaque, in Dear ImGui's order.
constexpr Colour rgb(std::uint32_t hex) {
    return 0xFF000000U | (hex & 0xFFU) << 16U | (hex & 0xFF00U) | hex >> 16U;
}

constexpr Colour black = rgb(0x000000);
constexpr Colour white = rgb(0xFFFFFF);

constexpr Palette day{.paper = rgb(0xFCFBF7),
                      .ink = rgb(0x14181B),
                      .soft = rgb(0x4A5157),
                      .hairline = rgb(0x8A9197),
                      .chalk = rgb(0x0A5096),
                      .chalk_ink = white,
                      .metal = rgb(0xE4E9ED),
                      .metal_low = rgb(0xD7DEE4),
                      .tape = rgb(0xFFE07A),
                      .waste = rgb(0xE69F00),
                      .waste_ground = rgb(0xFFF3D1),
                      .warn = rgb(0xF0E442),
                      .good = rgb(0xC4E6FA),
                      .key = white};

constexpr Palette night{.paper = rgb(0x06090B),
                        .ink = rgb(0xF5F2EA),
                        .soft = rgb(0xE6E4DE),
                        .hairline = rgb(0x7C858C),
                        .chalk = rgb(0xC4E6FA),
                        .chalk_ink = black,
                        .metal = rgb(0x2A3238),
                        .metal_low = rgb(0x20272C),
                        .tape = rgb(0xFFE07A),
                        .waste = rgb(0xE69F00),
                        .waste_ground = rgb(0x2C2410),
                        .warn = rgb(0xF0E442),
                        .good = rgb(0xC4E6FA),
                        .key = rgb(0x12171B)};

double linear(std::uint32_t channel) {
    const double c = channel / 255.0;
    return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

double luminance(Colour c) {
    return 0.2126 * linear(c & 0xFFU) + 0.7152 * linear(c >> 8U & 0xFFU) +
           0.0722 * linear(c >> 16U & 0xFFU);
}

/// Contrast ratio of the lighter to the darker, both with `haze` added.
double ratio(Colour a, Colour b, double haze) {
    const auto [low, high] = std::minmax({luminance(a), luminance(b)});
    return (high + haze) / (low + haze);
}

}  // namespace

const Palette& palette_of(Light light) { return light == Light::day ? day : night; }

double contrast_of(Colour a, Colour b) { return ratio(a, b, 0.05); }

double share_left_in_sun(Colour a, Colour b) {
    constexpr double veil = 255.0 / 500.0;
    return ratio(a, b, veil) / ratio(black, white, veil);
}

std::vector<TextPair> text_pairs(const Palette& p) {
    return {{"ink on paper", p.ink, p.paper},
            {"paper on ink", p.paper, p.ink},
            {"soft on paper", p.soft, p.paper},
            {"chalk on paper", p.chalk, p.paper},
            {"chalk_ink on chalk", p.chalk_ink, p.chalk},
            {"ink on key", p.ink, p.key},
            {"soft on key", p.soft, p.key},
            {"ink on metal", p.ink, p.metal},
            {"ink on metal_low", p.ink, p.metal_low},
            {"ink on waste_ground", p.ink, p.waste_ground},
            {"black on tape", black, p.tape},
            {"black on warn", black, p.warn},
            {"black on good", black, p.good}};
}

}  // namespace hemline
