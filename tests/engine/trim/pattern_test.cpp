#include "engine/trim/pattern.h"
#include "engine/words/result.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>

#include "tests/engine/trim/is_simple.h"
#include "tests/engine/trim/sections.h"

using namespace hemline;

namespace {

constexpr Length piece = feet(4);

std::vector<EndStep> gable_tab() {
    return {{EndDeed::flange_cut, inches(1), {}},
            {EndDeed::drip_clip, inches(1), {}},
            {EndDeed::tab, inches(1), {}},
            {EndDeed::tab_clip, {}, sixteenths(4)},
            {EndDeed::relief, inches(1), sixteenths(2)}};
}
std::vector<EndStep> underlap() {
    return {{EndDeed::hem_notch, sixteenths(98), {}}, {EndDeed::hem_clip, sixteenths(98), {}}};
}

/// Every list of steps the trade's ends are made of.
std::vector<std::vector<EndStep>> all_ends() {
    return {{},
            gable_tab(),
            underlap(),
            {{EndDeed::flange_mitre, {}, sixteenths(57)}},
            {{EndDeed::flange_cut, inches(1), {}},
             {EndDeed::flange_mitre, inches(1), sixteenths(57)},
             {EndDeed::drip_clip, inches(1), {}},
             {EndDeed::tab, inches(1), {}}},
            {{EndDeed::flange_mitre, inches(4), -inches(3)}, {EndDeed::face_cut, inches(4), {}}},
            {{EndDeed::face_slant, {}, inches(2)}},
            {{EndDeed::face_cut, inches(1), {}}},
            {{EndDeed::flange_cut, inches(3), {}},
             {EndDeed::drip_clip, inches(1), {}},
             {EndDeed::tab, inches(1), inches(2)},
             {EndDeed::low_clip, {}, sixteenths(4)}},
            {{EndDeed::face_slant, inches(4), -inches(2)},
             {EndDeed::drip_cut, inches(4), {}},
             {EndDeed::flange_fold, inches(2), {}}},
            {{EndDeed::flange_mitre, inches(2), inches(3)},
             {EndDeed::face_mitre, inches(2), -sixteenths(30)}},
            {{EndDeed::flange_mitre, inches(1), inches(4)},
             {EndDeed::flange_tab, inches(2), inches(4), 60},
             {EndDeed::face_mitre, inches(1), inches(3)},
             {EndDeed::face_tab, inches(2), inches(3), 60}},
            {{EndDeed::flange_mitre, inches(5), -inches(4)},
             {EndDeed::flange_tab, inches(6), -inches(4), 60},
             {EndDeed::face_mitre, inches(5), -inches(4)},
             {EndDeed::face_tab, inches(6), -inches(4), 60}},
            {{EndDeed::fold_down, inches(2), {}}},
            {{EndDeed::kick_out, inches(4), {}, 45}},
            {{EndDeed::turn_up, inches(1), {}}}};
}

Result<FlatPattern> pattern_of(const Section& section, std::int64_t rise,
                               const std::vector<EndStep>& left,
                               const std::vector<EndStep>& right) {
    return flat_pattern(section, bends_at(section, rise), piece, left, right);
}

double square_mm(Length a, Length b) {
    return static_cast<double>(a.nm()) / 1e6 * static_cast<double>(b.nm()) / 1e6;
}

bool has_point(const FlatOutline& outline, FlatPoint p) {
    return std::find(outline.begin(), outline.end(), p) != outline.end();
}

}  // namespace

TEST_CASE("left and right hands are mirrored exactly for all trims, ends and pitches" *
          doctest::test_suite("long")) {
    const Sections sections = sections_of_assets();
    int made = 0;
    for (const Section& section : sections.all()) {
        for (std::int64_t rise = 1; rise <= 18; ++rise) {
            for (const auto& end : all_ends()) {
                const auto left = pattern_of(section, rise, end, underlap());
                const auto right = pattern_of(section, rise, underlap(), end);
                REQUIRE(left.ok() == right.ok());
                if (!left) {
                    continue;  // a miter deeper than the flange is long, a tab not cut free
                }
                ++made;
                const FlatPattern over = mirrored(*left);
                CHECK(over.outline == right->outline);
                CHECK(over.panels == right->panels);
                CHECK(mirrored(over).outline == left->outline);
                CHECK(std::is_permutation(over.folds.begin(), over.folds.end(),
                                          right->folds.begin(), right->folds.end()));
                CHECK(std::is_permutation(over.tabs.begin(), over.tabs.end(), right->tabs.begin(),
                                          right->tabs.end()));
                CHECK(std::is_permutation(over.slits.begin(), over.slits.end(),
                                          right->slits.begin(), right->slits.end()));
            }
        }
    }
    CHECK(made > 2000);
}

TEST_CASE("every outline is a simple polygon as long and wide as the piece" *
          doctest::test_suite("long")) {
    const Sections sections = sections_of_assets();
    for (const Section& section : sections.all()) {
        for (const auto& left : all_ends()) {
            for (const auto& right : all_ends()) {
                const auto pattern = pattern_of(section, 5, left, right);
                if (!pattern) {
                    CHECK_FALSE(pattern.problem().mend.empty());
                    continue;
                }
                CHECK(hemline_test::is_simple(pattern->outline));
                double panels = 0;
                for (const FlatOutline& panel : pattern->panels) {
                    CHECK(hemline_test::is_simple(panel));
                    panels += area_mm2(panel);
                }
                for (const FlatTab& tab : pattern->tabs) {
                    panels += area_mm2(tab.outline);
                }
                CHECK(panels == doctest::Approx(area_mm2(*pattern)).epsilon(1e-9));
                for (const FlatPoint& p : pattern->outline) {
                    CHECK((p.x >= 0 && p.x <= piece.nm()));
                    CHECK((p.y >= 0 && p.y <= pattern->legs.edges.back().nm()));
                }
            }
        }
    }
}

TEST_CASE("the flat area is the sum of legs times length, less the notches") {
    const Section section = *sections_of_assets().find("eave_rolled");
    const auto bends = bends_at(section, 6);
    const auto pattern = pattern_of(section, 6, gable_tab(), underlap());
    REQUIRE(pattern.ok());
    const auto& edges = pattern->legs.edges;
    const auto width = [&](std::size_t leg) { return edges[leg + 1] - edges[leg]; };
    double strips = 0;
    for (std::size_t leg = 0; leg < 4; ++leg) {
        strips += square_mm(width(leg), piece);
    }
    const double kick = static_cast<double>(width(2).nm()) / 1e6;
    const double hem = static_cast<double>(width(3).nm()) / 1e6;
    double notches = square_mm(width(0), inches(1));  // flange cut
    notches += 25.4 * kick + kick * kick / 2;         // drip edge to the tab, and 45° on
    notches += (25.4 + kick) * hem - hem * hem / 2;   // the hem's line comes back
    notches += 2 * 6.35 * 6.35 / 2;                   // two corners of the tab, 1/4 in
    notches += 3.175 * 3.175 / 2;                     // relief, 1/8 in
    notches += 98 * 1.5875 * hem + hem * hem / 2;     // hem notch 6 1/8 in and its clip
    CHECK(area_mm2(*pattern) == doctest::Approx(strips - notches).epsilon(1e-9));
}

TEST_CASE("the gable tab's corners stand where the trade cuts them") {
    const Section section = *sections_of_assets().find("eave_rolled");
    const auto pattern = pattern_of(section, 5, gable_tab(), {});
    REQUIRE(pattern.ok());
    const auto& edges = pattern->legs.edges;
    const std::int64_t in = inches(1).nm();
    CHECK(has_point(pattern->outline, {in, 0}));
    CHECK(has_point(pattern->outline, {in, edges[1].nm()}));
    CHECK(has_point(pattern->outline, {sixteenths(4).nm(), edges[1].nm()}));
    CHECK(has_point(pattern->outline, {0, (edges[1] + sixteenths(4)).nm()}));
    CHECK(has_point(pattern->outline, {in, edges[2].nm()}));
    CHECK(has_point(pattern->outline, {in + (edges[3] - edges[2]).nm(), edges[3].nm()}));
    REQUIRE(pattern->tabs.size() == 1);
    CHECK(pattern->tabs[0].leg == 1);
    CHECK(pattern->tabs[0].fold.a.x == in);
    // Tab fold from the flange's fold down to the relief; three bends, none over the tab.
    REQUIRE(pattern->folds.size() == 4);
    CHECK(pattern->folds[3].line.a == FlatPoint{in, edges[1].nm()});
    CHECK(pattern->folds[3].line.b == FlatPoint{in, (edges[2] - sixteenths(2)).nm()});
    for (std::size_t i = 0; i < 3; ++i) {
        CHECK(pattern->folds[i].line.a.x >= in);
        CHECK(pattern->folds[i].line.b.x == piece.nm());
    }
}

TEST_CASE("a tab that still hangs on its drip edge or flange would tear, and says so") {
    const Section section = *sections_of_assets().find("eave_rolled");
    const auto whole = pattern_of(section, 5, {{EndDeed::tab, inches(1), {}}}, {});
    REQUIRE_FALSE(whole.ok());
    CHECK(whole.problem().what.english().find("tear") != std::string::npos);
    CHECK(whole.problem().what.english().find("flange") != std::string::npos);
    const auto low = pattern_of(
        section, 5, {{EndDeed::flange_cut, inches(1), {}}, {EndDeed::tab, inches(1), {}}}, {});
    REQUIRE_FALSE(low.ok());
    CHECK(low.problem().what.english().find("kick") != std::string::npos);
    const auto short_cut = pattern_of(section, 5,
                                      {{EndDeed::flange_cut, sixteenths(15), {}},
                                       {EndDeed::drip_clip, inches(1), {}},
                                       {EndDeed::tab, inches(1), {}}},
                                      {});
    CHECK_FALSE(short_cut.ok());
}

TEST_CASE("a tab beside a tab that was not parted from it would tear, whichever is above") {
    const Section section = *sections_of_assets().find("eave_rolled");
    const std::vector<EndStep> parted = {{EndDeed::drip_clip, inches(1), {}},
                                         {EndDeed::flange_fold, inches(1), {}},
                                         {EndDeed::tab, inches(1), {}}};
    const auto beside = pattern_of(section, 5, parted, {});
    REQUIRE_FALSE(beside.ok());
    CHECK(beside.problem().what.english().find("tear") != std::string::npos);
    const auto at_right = pattern_of(section, 5, {}, parted);
    CHECK_FALSE(at_right.ok());
}

TEST_CASE("a slit is a cut line that takes no metal, and no fold crosses it") {
    const Section section = *sections_of_assets().find("sidewall");
    const auto pattern = pattern_of(section, 5, {{EndDeed::kick_out, inches(4), {}, 45}}, {});
    REQUIRE(pattern.ok());
    REQUIRE(pattern->slits.size() == 1);
    CHECK(pattern->slits[0].b.x == inches(4).nm());
    CHECK(area_mm2(*pattern) ==
          doctest::Approx(square_mm(piece, pattern->legs.edges.back())).epsilon(1e-9));
    for (const FlatFold& fold : pattern->folds) {
        if (fold.line.a.y == pattern->slits[0].a.y && fold.bend) {
            CHECK(fold.line.a.x == inches(4).nm());
        }
    }
    CHECK(pattern->tabs[0].degrees == -45);
}

TEST_CASE("a slit between two corner tabs begins where the metal does") {
    const Section section = *sections_of_assets().find("valley");
    const auto pattern = pattern_of(section, 5, {},
                                    {{EndDeed::flange_mitre, inches(5), -inches(4)},
                                     {EndDeed::flange_tab, inches(6), -inches(4), 60},
                                     {EndDeed::face_mitre, inches(5), -inches(4)},
                                     {EndDeed::face_tab, inches(6), -inches(4), 60}});
    REQUIRE(pattern.ok());
    REQUIRE_FALSE(pattern->slits.empty());
    for (const FlatLine& slit : pattern->slits) {
        CHECK(slit.a.x == (piece - inches(6)).nm());
        CHECK(slit.b.x == (piece - inches(5)).nm());
    }
}

TEST_CASE("a piece too short for its two ends is a problem, not a crossed outline") {
    const Section section = *sections_of_assets().find("eave_rolled");
    const auto bends = bends_at(section, 5);
    CHECK_FALSE(flat_pattern(section, bends, inches(6), gable_tab(), underlap()).ok());
    CHECK_FALSE(flat_pattern(section, bends, Length(), {}, {}).ok());
    CHECK(flat_pattern(section, bends, inches(9), gable_tab(), underlap()).ok());
}

TEST_CASE("whatever lengths the steps have, a pattern is sound or a problem") {
    const Sections sections = sections_of_assets();
    CHECK(rc::check([&](std::uint8_t which, std::int32_t in, std::int32_t run) {
        const Section& section = sections.all()[which % sections.all().size()];
        std::vector<EndStep> steps;
        for (int deed = 0; deed <= static_cast<int>(EndDeed::turn_up); deed += 1 + which % 5) {
            steps.push_back(
                {static_cast<EndDeed>(deed), Length::of_nm(in / 16), Length::of_nm(run / 16)});
            const auto pattern = pattern_of(section, 7, steps, {});
            const bool sound = !pattern.ok() || hemline_test::is_simple(pattern->outline);
            RC_ASSERT(sound);
        }
    }));
}
