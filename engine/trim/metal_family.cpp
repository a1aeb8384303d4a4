#include "engine/trim/metal_family.h"

#include <string>

namespace hemline {

MetalFamily metal_family(std::string_view words) {
    std::string small;
    for (const char c : words) {
        small += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    const auto says = [&](std::string_view part) { return small.find(part) != std::string::npos; };
    if (says("copper") || says("cobre")) {
        return MetalFamily::copper;
    }
    if (says("stainless") || says("inoxidable")) {
        return MetalFamily::stainless;
    }
    if (says("alumin") && (says("zinc") || says("cinc"))) {
        return MetalFamily::aluminum_zinc;
    }
    if (says("galv")) {
        return MetalFamily::galvanized;
    }
    if (says("alumin")) {
        return MetalFamily::aluminum;
    }
    if (says("zinc") || says("cinc")) {
        return MetalFamily::zinc;
    }
    if (says("steel") || says("acero")) {
        return MetalFamily::steel;
    }
    return says("lead") || says("plomo") ? MetalFamily::lead : MetalFamily::other;
}

bool eats(MetalFamily above, MetalFamily below) {
    switch (below) {
        case MetalFamily::aluminum:
        case MetalFamily::aluminum_zinc:
            return above == MetalFamily::copper || above == MetalFamily::lead;
        case MetalFamily::zinc:
        case MetalFamily::galvanized:
        case MetalFamily::steel:
            return above == MetalFamily::copper;
        case MetalFamily::other:
        case MetalFamily::copper:
        case MetalFamily::lead:
        case MetalFamily::stainless:
            break;
    }
    return false;
}

bool screws_suit(MetalFamily screw, MetalFamily sheet) {
    const bool unknown = screw == MetalFamily::other || sheet == MetalFamily::other;
    if (unknown || screw == sheet) {
        return true;
    }
    switch (sheet) {
        case MetalFamily::aluminum:
        case MetalFamily::copper:
        case MetalFamily::stainless:
            return screw == MetalFamily::stainless;
        default:
            return !eats(screw, sheet) && screw != MetalFamily::aluminum;
    }
}

bool wood_eats(MetalFamily metal) {
    return metal == MetalFamily::aluminum || metal == MetalFamily::aluminum_zinc ||
           metal == MetalFamily::zinc || metal == MetalFamily::galvanized;
}

double expansion_of(MetalFamily metal) {
    switch (metal) {
        case MetalFamily::copper:
            return 9.4e-6;
        case MetalFamily::stainless:
            return 9.6e-6;
        case MetalFamily::aluminum:
            return 12.9e-6;
        case MetalFamily::zinc:
            return 17.4e-6;
        case MetalFamily::lead:
            return 16.3e-6;
        default:
            return 6.7e-6;
    }
}

}  // namespace hemline
