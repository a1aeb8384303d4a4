// The sections and the catalogue of assets/, and a roof for tests.
#pragma once

#include "engine/trim/catalogue.h"
#include "engine/trim/girth.h"
#include "engine/words/result.h"
#include "tests/engine/assets.h"

namespace hemline {

inline Sections sections_of_assets() {
    const auto sections = Sections::read(asset("catalogue/sections.csv"));
    REQUIRE_MESSAGE(sections.ok(), (sections ? Text() : sections.problem().what));
    return *sections;
}

inline Catalogue catalogue_of_assets() {
    return Catalogue::read(asset("catalogue/trims.csv")).value();
}

/// Both roofs of that rise in 12, save at a transition, whose upper roof is 3 in 12 steeper.
inline std::vector<double> bends_at(const Section& section, std::int64_t rise) {
    FoldAsked roof;
    roof.pitch = rise_in_12(rise);
    roof.pitch2 = rise_in_12(section.trim == "transition" ? rise + 3 : rise);
    const auto bends = bends_of(section, roof);
    REQUIRE_MESSAGE(bends.ok(), section.trim);
    return *bends;
}

}  // namespace hemline
