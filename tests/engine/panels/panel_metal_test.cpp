// Running feet and weight by hand; densities from memory.
#include "engine/panels/panel_metal.h"

#include <doctest/doctest.h>

#include "tests/engine/panels/said_planes.h"

using namespace hemline;
using namespace hemline::test;

TEST_CASE("A gable roof of 60 pans: 1,018.75 ft, 31.9 lb each, 1,914 lb") {
    const std::vector<PanelLayout> layouts = {laid(said_plane(gable_roof(480, 30), "A")),
                                              laid(said_plane(gable_roof(480, 30), "C"))};
    const Length thickness = nanometres(701'040);  // 0.0276 in
    const PanelMetal metal = panel_metal(layouts, Practice(), PanelsFrom::ordered_cut, thickness);
    CHECK(metal.lengths == 60);
    CHECK(in(metal.running) / 12 == doctest::Approx(1018.75));
    CHECK(metal.coil_feet == 0);
    REQUIRE(metal.pounds.has_value());
    CHECK(*metal.heaviest == doctest::Approx(31.8965).epsilon(1e-5));
    CHECK(*metal.pounds == doctest::Approx(1913.79).epsilon(1e-5));
    CHECK(panel_metal(layouts, Practice(), PanelsFrom::coil, {}).coil_feet == 1019);
    CHECK_FALSE(panel_metal(layouts, Practice(), PanelsFrom::coil, {}).pounds.has_value());
    Practice aluminum;
    aluminum.site.panel_metal = "painted aluminum";
    CHECK(*panel_metal(layouts, aluminum, PanelsFrom::coil, thickness).pounds ==
          doctest::Approx(1913.79 * 0.098 / 0.2836).epsilon(1e-5));
}

TEST_CASE("A pair from one length is ordered once") {
    PanelJob job;
    job.legs = SeamLegs::alike;
    const PanelLayout layout = laid(said_plane(hip_roof(480, 24)), job);
    REQUIRE_FALSE(layout.pairs.empty());
    const PanelMetal metal = panel_metal({&layout, 1}, job.practice, PanelsFrom::ordered_cut, {});
    CHECK(metal.lengths == static_cast<std::int64_t>(30 - layout.pairs.size()));
    Length saved;
    for (const PanPair& pair : layout.pairs) {
        saved += pair.saved;
    }
    CHECK(in(metal.running + saved) / 12 == doctest::Approx(301.958).epsilon(1e-5));
}

TEST_CASE("The strip of an unusual pan must be said") {
    Practice practice;
    CHECK(strip_of(practice) == inches(20));
    practice.seam_spacing = inches(18);
    CHECK_FALSE(strip_of(practice).has_value());
    practice.strip = inches(22);
    CHECK(strip_of(practice) == inches(22));
}
