#include <doctest/doctest.h>

#include "engine/trim/metal_family.h"

using namespace hemline;

TEST_CASE("A metal is known by how crews write it, painted or not, in both languages") {
    CHECK(metal_family("16 oz copper") == MetalFamily::copper);
    CHECK(metal_family("Cobre") == MetalFamily::copper);
    CHECK(metal_family("galvanized steel") == MetalFamily::galvanized);
    CHECK(metal_family("acero galvanizado") == MetalFamily::galvanized);
    CHECK(metal_family("painted aluminum-zinc steel") == MetalFamily::aluminum_zinc);
    CHECK(metal_family("aluminium-zinc") == MetalFamily::aluminum_zinc);
    CHECK(metal_family("painted aluminum") == MetalFamily::aluminum);
    CHECK(metal_family("zinc") == MetalFamily::zinc);
    CHECK(metal_family("stainless steel") == MetalFamily::stainless);
    CHECK(metal_family("steel") == MetalFamily::steel);
    CHECK(metal_family("lead") == MetalFamily::lead);
    CHECK(metal_family("") == MetalFamily::other);
}

// Sea-water order zinc, aluminum, lead, mild steel, copper: MIL-STD-889. Copper above zinc,
// galvanized, aluminum-zinc or aluminum, and lead on aluminum: common practice, no published
// source.
TEST_CASE(
    "Copper eats zinc, aluminum and coated steel, never the reverse, and stainless eats none") {
    for (const MetalFamily eaten : {MetalFamily::zinc, MetalFamily::galvanized,
                                    MetalFamily::aluminum_zinc, MetalFamily::aluminum}) {
        CHECK(eats(MetalFamily::copper, eaten));
        CHECK_FALSE(eats(eaten, MetalFamily::copper));
        CHECK_FALSE(eats(MetalFamily::stainless, eaten));
        CHECK_FALSE(eats(eaten, eaten));
    }
    CHECK_FALSE(eats(MetalFamily::copper, MetalFamily::stainless));
    CHECK_FALSE(eats(MetalFamily::copper, MetalFamily::other));
    CHECK(eats(MetalFamily::lead, MetalFamily::aluminum));
    CHECK(eats(MetalFamily::lead, MetalFamily::aluminum_zinc));
    CHECK_FALSE(eats(MetalFamily::lead, MetalFamily::copper));
}
