#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <string>
#include <vector>

#include "engine/trim/pitch_check.h"
#include "tests/engine/trim/sections.h"

using namespace hemline;

namespace {

using Ids = std::vector<std::string>;

PitchCheck check(const char* pitch, Seam seam = Seam::unknown) {
    return check_pitch(parse_slope(pitch).value(), EdgeKind::eave, seam, catalogue_of_assets());
}

std::string reason_for(const PitchCheck& check, const std::string& id) {
    for (const Refusal& refusal : check.refused) {
        if (refusal.id == id) {
            return refusal.reason.english();
        }
    }
    return {};
}

bool says(const std::string& text, const char* part) {
    return text.find(part) != std::string::npos;
}

bool seam_serves(const PitchCheck& check, Seam seam) {
    for (const SeamVerdict& verdict : check.seams) {
        if (verdict.seam == seam) {
            return verdict.serves;
        }
    }
    FAIL("the seam was not judged");
    return false;
}

}  // namespace

TEST_CASE("The rolled drip edge serves pitches up to 6 in 12, and the two-part trim the steeper") {
    // Common practice, no published source.
    CHECK(check("5/12").serves == Ids{"eave_rolled", "eave_two_part"});
    CHECK(check("6/12").serves == Ids{"eave_rolled", "eave_two_part"});
    CHECK(check("50%").serves == Ids{"eave_rolled", "eave_two_part"});
    for (const char* steep : {"7/12", "6.000001/12", "50.1%", "27deg", "18/12"}) {
        const PitchCheck steeper = check(steep);
        CHECK(steeper.serves == Ids{"eave_two_part"});
        const std::string reason = reason_for(steeper, "eave_rolled");
        CHECK(says(reason, "up to 6/12"));
        CHECK(says(reason, "common practice"));
        CHECK(says(reason, "use two-part eave trim"));
    }
}

TEST_CASE("The rolled drip edge serves snap-lock panels only") {
    // Common practice, no published source.
    CHECK(check("5/12", Seam::snap_lock).serves == Ids{"eave_rolled", "eave_two_part"});
    for (const Seam seam : {Seam::mechanical, Seam::nail_strip}) {
        const PitchCheck other = check("5/12", seam);
        CHECK(other.serves == Ids{"eave_two_part"});
        CHECK(says(reason_for(other, "eave_rolled"), "snap-lock panels only"));
    }
}

TEST_CASE("Mechanically seamed panels lie down to 1/4 in 12") {
    // IBC 2012 §1507.4.2: standing-seam roofs, one-quarter unit vertical in 12 units horizontal.
    CHECK(seam_serves(check("1/4:12"), Seam::mechanical));
    CHECK_FALSE(seam_serves(check("0.249999/12"), Seam::mechanical));
    const PitchCheck flat = check("0/12");
    CHECK(flat.serves.empty());
    CHECK(says(reason_for(flat, "eave_two_part"), "IBC 2012 §1507.4.2"));
    CHECK(says(reason_for(flat, "eave_two_part"), "no trim in the catalogue"));
}

TEST_CASE("Snap-lock and nail-strip panels need 3 in 12") {
    // Common practice, from memory, unless their maker prints lower.
    for (const Seam seam : {Seam::snap_lock, Seam::nail_strip}) {
        CHECK(seam_serves(check("3/12"), seam));
        CHECK(seam_serves(check("25%"), seam));
        CHECK_FALSE(seam_serves(check("2.9/12"), seam));
    }
    const PitchCheck low = check("2/12");
    CHECK(low.serves == Ids{"eave_two_part"});
    CHECK(says(reason_for(low, "eave_rolled"), "takes only mechanically seamed"));
}

TEST_CASE("A seam that the pitch does not bear is refused with the panels that it does") {
    const PitchCheck low = check("2/12", Seam::snap_lock);
    CHECK(low.serves.empty());
    CHECK(says(reason_for(low, "eave_two_part"), "at least 3/12"));
    CHECK(says(reason_for(low, "eave_two_part"), "use mechanically seamed panels"));
}

TEST_CASE("A reading within its own error of a limit asks to measure again") {
    struct Row {
        const char* pitch;
        bool again;
    };
    // The error: 1/16 in of rise, 0.1 degrees, half a percent. 6 in 12 is 26.565 degrees and 50 %.
    const std::vector<Row> table = {
        {"6/12", true},     {"5.95/12", true}, {"6.05/12", true}, {"5.9/12", false},
        {"6.1/12", false},  {"26.5deg", true}, {"26.6deg", true}, {"26.4deg", false},
        {"26.7deg", false}, {"49.5%", true},   {"50.4%", true},   {"49%", false},
        {"3/12", true},     {"3.05/12", true}, {"2.95/12", true}, {"3.2/12", false},
        {"1/4:12", true},   {"0.3/12", true},  {"0/12", false},   {"5/12", false},
        {"12/12", false},
    };
    for (const Row& row : table) {
        CAPTURE(row.pitch);
        CHECK(check(row.pitch).measure_again.empty() != row.again);
    }
    CHECK(says(check("6/12").measure_again.english(), "eave trim with rolled drip edge"));
    CHECK(says(check("6/12").measure_again.english(), "6/12"));
}

TEST_CASE("A limit that the asked seam does not meet does not matter") {
    CHECK(check("6/12", Seam::mechanical).measure_again.empty());
    CHECK(check("3/12", Seam::mechanical).measure_again.empty());
    CHECK_FALSE(check("3/12", Seam::snap_lock).measure_again.empty());
}

TEST_CASE("A kind that the catalogue has no trim for has none that serve") {
    const PitchCheck ridge =
        check_pitch(rise_in_12(5), EdgeKind::ridge, Seam::unknown, Catalogue());
    CHECK(ridge.serves.empty());
    CHECK(ridge.refused.empty());
    CHECK(ridge.measure_again.empty());
}

TEST_CASE("Wrap and cleat are never judged as an edge's own trim") {
    const PitchCheck all = check("0/12");
    for (const Refusal& refusal : all.refused) {
        CHECK(refusal.id != "fascia_wrap");
        CHECK(refusal.id != "cleat");
    }
}

TEST_CASE("At any pitch every main trim either serves or is refused with one sentence") {
    const Catalogue trims = catalogue_of_assets();
    CHECK(rc::check([&trims]() {
        const Slope pitch{*rc::gen::element(SlopeNotation::rise_in_12, SlopeNotation::percent,
                                            SlopeNotation::degrees),
                          *rc::gen::inRange<std::int64_t>(0, 80'000'000)};
        const Seam seam =
            *rc::gen::element(Seam::unknown, Seam::snap_lock, Seam::mechanical, Seam::nail_strip);
        const PitchCheck result = check_pitch(pitch, EdgeKind::eave, seam, trims);
        RC_ASSERT(result.serves.size() + result.refused.size() == 2U);
        RC_ASSERT(result.seams.size() == 3U);
        for (const Refusal& refusal : result.refused) {
            RC_ASSERT(refusal.reason.english().back() == '.');
        }
        for (const SeamVerdict& verdict : result.seams) {
            RC_ASSERT(verdict.reason.empty() == verdict.serves);
        }
    }));
}
