#include "engine/trim/meeting.h"

#include <algorithm>
#include <cmath>

#include "tests/engine/trim/sections.h"

using namespace hemline;

namespace {

constexpr Length tab = inches(1);

struct Corner {
    FlatPattern left, right;
};

/// An eave's outside corner, its flanges set back by `set_back` × their width on the flat, the tab
/// folded by `tab_degrees`.
Corner corner(std::int64_t rise, double set_back, double tab_degrees) {
    const Section section = *sections_of_assets().find("eave_two_part");
    const auto bends = bends_at(section, rise);
    const auto width = static_cast<double>(blank_of(section, bends).value().marks[0].nm());
    const Length back = Length::of_nm(std::llround(width * set_back));
    const auto left = flat_pattern(section, bends, feet(3), {},
                                   {{EndDeed::flange_cut, tab, {}},
                                    {EndDeed::flange_mitre, tab, back},
                                    {EndDeed::drip_clip, tab, {}},
                                    {EndDeed::tab, tab, {}, tab_degrees}});
    const auto right =
        flat_pattern(section, bends, feet(3), {{EndDeed::flange_mitre, {}, back}}, {});
    REQUIRE((left.ok() && right.ok()));
    return {*left, *right};
}

Joint joint(std::int64_t rise, Angle corner) {
    return {rise_in_12(rise), corner, tab, {}, sixteenths(1)};
}

double cosine(std::int64_t rise) { return 1 / std::hypot(1, static_cast<double>(rise) / 12); }

bool says(const std::vector<FoldFault>& faults, const std::string& words) {
    return std::any_of(faults.begin(), faults.end(), [&](const FoldFault& fault) {
        return fault.what.english().find(words) != std::string::npos && !fault.mend.empty();
    });
}

}  // namespace

TEST_CASE("an outside corner mitred by w·cosθ closes, and its tab lies on the neighbour's face") {
    // w·cosθ is the framing square's jack side cut: 9.98 in on 12 at 8:12.
    CHECK(12 * cosine(8) == doctest::Approx(9.98).epsilon(0.001));
    for (std::int64_t rise = 1; rise <= 18; ++rise) {
        const Corner ends = corner(rise, cosine(rise), 90);
        const Meeting meeting = corner_meeting(ends.left, ends.right, joint(rise, degrees(90)));
        CHECK(meeting.gap_mm < 1e-4);
        CHECK(meeting.faults.empty());
    }
}

TEST_CASE("a mitre cut at 45° leaves a gap that grows with the pitch, and is found") {
    double before = 0;
    for (const std::int64_t rise : {4, 8, 12, 18}) {
        const Corner ends = corner(rise, 1, 90);
        const Meeting meeting = corner_meeting(ends.left, ends.right, joint(rise, degrees(90)));
        CHECK(meeting.gap_mm > before);
        CHECK(says(meeting.faults, "stand apart"));
        before = meeting.gap_mm;
    }
}

TEST_CASE("flanges that were not mitred at all run through one another") {
    const Corner ends = corner(8, 0, 90);
    const Meeting meeting = corner_meeting(ends.left, ends.right, joint(8, degrees(90)));
    CHECK(says(meeting.faults, "run through"));
}

TEST_CASE(
    "at a corner of 135° the tab is folded by 45°; folded by 90° it stands off, and is found") {
    const double back = cosine(6) * std::tan(3.14159265358979 / 8);  // cot(135°/2)
    const Corner good = corner(6, back, 45);
    CHECK(corner_meeting(good.left, good.right, joint(6, degrees(135))).faults.empty());
    const Corner bad = corner(6, back, 90);
    const Meeting meeting = corner_meeting(bad.left, bad.right, joint(6, degrees(135)));
    CHECK(says(meeting.faults, "does not lie against"));
    // 1 in of tab, 45° off: it stands 1 in × sin 45° from the face.
    CHECK(meeting.gap_mm == doctest::Approx(25.4 * std::sqrt(0.5)).epsilon(1e-3));
}

TEST_CASE("hems bind in a lap unless the lower one is notched past it") {
    const Section section = *sections_of_assets().find("eave_rolled");
    const auto bends = bends_at(section, 5);
    const auto plain = flat_pattern(section, bends, feet(3), {}, {});
    const auto notched =
        flat_pattern(section, bends, feet(3), {}, {{EndDeed::hem_notch, sixteenths(98), {}}});
    REQUIRE((plain.ok() && notched.ok()));
    CHECK(lap_meeting(*notched, *plain, rise_in_12(5), inches(6)).faults.empty());
    const Meeting bound = lap_meeting(*plain, *plain, rise_in_12(5), inches(6));
    REQUIRE(says(bound.faults, "bind"));
    CHECK(bound.faults[0].mm == doctest::Approx(6 * 25.4).epsilon(1e-6));
}

TEST_CASE("a folded end's two tabs meet and do not overlap, whatever the ridge's pitch") {
    const Section section = *sections_of_assets().find("ridge_cap");
    for (std::int64_t rise = 1; rise <= 18; ++rise) {
        const auto pattern = flat_pattern(section, bends_at(section, rise), feet(3),
                                          {{EndDeed::fold_down, inches(2), {}}}, {});
        REQUIRE(pattern.ok());
        CHECK(pattern->tabs.size() == 2);
        CHECK(tab_faults(*pattern).empty());
    }
}

TEST_CASE("tabs clipped for a flatter ridge collide on a steeper one, and are found") {
    const Section section = *sections_of_assets().find("ridge_cap");
    auto pattern = flat_pattern(section, bends_at(section, 3), feet(3),
                                {{EndDeed::fold_down, inches(2), {}}}, {});
    REQUIRE(pattern.ok());
    FlatPattern steeper = *pattern;
    steeper.legs.bends = bends_at(section, 9);
    CHECK(says(tab_faults(steeper), "lie in the same place"));
}

TEST_CASE("a hip's foot folded plumb to two eaves has tabs that do not cross") {
    const Section section = *sections_of_assets().find("hip_cap");
    for (std::int64_t rise = 2; rise <= 18; ++rise) {
        const auto bends = bends_at(section, rise);
        const auto blank = blank_of(section, bends).value();
        // On the roof, hip and eave stand at atan(1/cosθ): the cut back is width / tan of it.
        const auto width = static_cast<double>((blank.marks[1] - blank.marks[0]).nm());
        const Length back = Length::of_nm(std::llround(width * cosine(rise)));
        const double fold = 90 - degrees_of(rise_in_12(rise));
        const auto pattern = flat_pattern(section, bends, feet(3),
                                          {{EndDeed::flange_mitre, {}, back},
                                           {EndDeed::flange_tab, inches(1), back, fold},
                                           {EndDeed::face_mitre, {}, back},
                                           {EndDeed::face_tab, inches(1), back, fold}},
                                          {});
        REQUIRE(pattern.ok());
        CHECK(pattern->tabs.size() == 2);
        CHECK(tab_faults(*pattern).empty());
    }
}

TEST_CASE(
    "a tab folded too far runs through a flange that falls behind it, and not one that rises") {
    // Plain geometry: at 135° the tab leans in over its piece. The flange of a high eave falls
    // from the bend, through the tab's upper part; the flange of an eave rises from it, clear.
    for (const auto& [trim, degrees, collides] :
         {std::tuple("high_eave", 90.0, false), std::tuple("high_eave", 135.0, true),
          std::tuple("eave_two_part", 135.0, false)}) {
        const Section section = *sections_of_assets().find(trim);
        const auto pattern = flat_pattern(section, bends_at(section, 6), feet(3),
                                          {{EndDeed::flange_cut, tab, {}},
                                           {EndDeed::drip_clip, tab, {}},
                                           {EndDeed::tab, tab, {}, degrees}},
                                          {});
        REQUIRE(pattern.ok());
        const std::string name(trim);  // clang 14 captures no structured binding
        CAPTURE(name);
        CHECK(says(tab_faults(*pattern), "face's tab and the flange run through") == collides);
    }
}

TEST_CASE("sheets whose planes cross go through one another only where both are") {
    // By hand, in mm: one lies flat over x = 0 to 10, the other stands on edge along the x axis.
    const Face flat{
        0, false, Side::left, {{0, -5, 0}, {10, -5, 0}, {10, 5, 0}, {0, 5, 0}}, {0, 0, 1}};
    const auto standing = [](double from) {
        return Face{0,
                    false,
                    Side::left,
                    {{from, 0, -5}, {from + 10, 0, -5}, {from + 10, 0, 5}, {from, 0, 5}},
                    {0, -1, 0}};
    };
    CHECK(goes_through(flat, standing(5), 0.1));
    CHECK(goes_through(flat, standing(9.8), 0.1));
    CHECK_FALSE(goes_through(flat, standing(9.95), 0.1));
    CHECK_FALSE(goes_through(flat, standing(20), 0.1));
    CHECK_FALSE(goes_through(standing(-15), flat, 0.1));
}
