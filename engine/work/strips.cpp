#include "engine/work/strips.h"

#include <algorithm>

#include "engine/trim/practice.h"

namespace hemline {

namespace {

constexpr Length hook_screws_apart = inches(8);
constexpr Length rivets_apart = inches(12);
/// Nearer to the center line the strip's screws would stand in running water.
constexpr Length half_valley_least = sixteenths(72);
constexpr Length under_panels_least = inches(6);

/// Half of an open valley `down` its head: (4 in + 1 in each 8 ft)/2, on 1/16 in.
Length half_valley(Length down) {
    const Length open = inches(4) + Length::of_nm(down.nm() / 96);
    return round_up_to(Length::of_nm(open.nm() / 2), sixteenths(1));
}

std::int64_t fasteners_along(Length length, Length apart) {
    return length > Length() ? parts_to_cover(length, apart) + 1 : 0;
}

Text legs_words(const Strip& strip) {
    const auto width = [&](LegName name) {
        Length found;
        for (const Leg& leg : strip.legs) {
            found = leg.name == name ? leg.width : found;
        }
        return found;
    };
    const Length flange = width(LegName::flange), face = width(LegName::face),
                 kick = width(LegName::kick);
    if (strip.id == "hook_strip") {
        return say("base {1}, riser {2}, lip {3}", flange, face, kick);
    }
    return strip.id == "zee" ? say("legs {1} and {2}, web {3}", flange, kick, face)
                             : say("base {1}, wall leg {2}, seam side {3}", flange, face, kick);
}

}  // namespace

Strips strips_of(const Edge& edge, Length length, const Catalogue& catalogue,
                 const Practice& practice) {
    Strips strips;
    strips.strip = catalogue.strip_for(edge);
    if (strips.strip == nullptr || length <= Length()) {
        strips.strip = nullptr;
        return strips;
    }
    const bool valley = facts_of(edge.kind).in_water && facts_of(edge.kind).roofs == 2;
    strips.lines = valley ? 2 : 1;
    strips.line = length;
    strips.stock = practice.stock;
    strips.full = strips.lines * (length.nm() / practice.stock.nm());
    strips.rest = Length::of_nm(length.nm() % practice.stock.nm());
    strips.rests = strips.rest > Length() ? strips.lines : 0;
    strips.girth = girth(*strips.strip);
    strips.apart = strips.strip->panels == Panels::under ? hook_screws_apart : rivets_apart;
    strips.fasteners = strips.lines * fasteners_along(length, strips.apart);
    if (valley) {
        strips.from_centre = std::max(half_valley_least, half_valley(length));
        const Trim* const trim = catalogue.of(edge);
        const Length leg =
            trim == nullptr ? Length() : leg_width(fitted_to(*trim, edge), LegName::flange);
        if (leg - strips.from_centre < under_panels_least) {
            strips.problem =
                say("Hook strips {1} from the center leave {2} of the leg under the panels; 6 in "
                    "are asked.",
                    strips.from_centre, std::max(Length(), leg - strips.from_centre));
        }
    }
    return strips;
}

std::vector<Text> leg_names(const Strip& strip) {
    if (strip.id == "hook_strip") {
        return {say("base"), say("riser"), say("lip")};
    }
    return strip.id == "zee" ? std::vector{say("leg"), say("web"), say("leg")}
                             : std::vector{say("wall leg"), say("base"), say("seam side")};
}

Text stick_words(const Strips& strips) {
    std::vector<Text> pieces;
    if (strips.full > 0) {
        pieces.push_back(say("{1} of {2}", strips.full, strips.stock));
    }
    if (strips.rests > 0) {
        pieces.push_back(say("{1} of {2}", strips.rests, strips.rest));
    }
    return joined(pieces, ", ");
}

Text strip_words(const Strips& strips) {
    if (strips.strip == nullptr) {
        return {};
    }
    return say("{1}: {2}, stretch-out {3}", stick_words(strips), legs_words(*strips.strip),
               strips.girth);
}

}  // namespace hemline
