// The cap of an open end against closed forms: the triangle between two legs, what goes down to the
// pans, the lips. Included angles are those of the fold table, 180° − θ1 − θ2 and 90° − θ.
#include "engine/work/end_cap.h"

#include <algorithm>
#include <cmath>

#include "eave_job.h"
#include "tests/engine/trim/sections.h"

using namespace hemline_test;

namespace {

Edge open_edge(EdgeKind kind, Slope pitch) {
    Edge edge = eave("A", End::open, End::open);
    edge.kind = kind;
    edge.pitch = pitch;
    return edge;
}

Result<EndCap> made(const Edge& edge) {
    static const Catalogue catalogue = own_catalogue();
    static const Sections sections = sections_of_assets();
    return end_cap_of(edge, catalogue.of(edge), sections, {});
}

double inches_of(double mm) { return mm / 25.4; }
double inches_between(const FlatPoint& a, const FlatPoint& b) {
    return inches_of(std::hypot(static_cast<double>(a.x - b.x), static_cast<double>(a.y - b.y)) /
                     1e6);
}

}  // namespace

TEST_CASE("a ridge's cap is the triangle between its legs, down to the pans, with two lips") {
    const EndCap cap = made(open_edge(EdgeKind::ridge, rise_in_12(6))).value();
    const double rise = std::atan2(6, 12), leg = 7, down = 2, lip = 0.75;
    CHECK(cap.corner_degrees == doctest::Approx(126.87).epsilon(1e-4));
    CHECK(cap.flange.width == inches(7));
    CHECK(cap.flange.down == inches(2));  // seam 1 1/2 and 1/2: common practice
    CHECK(cap.face.down == inches(2));
    CHECK(cap.fits_both_ends);
    const double chord = 2 * leg * std::cos(rise), lower = chord - 2 * down * std::sin(rise);
    CHECK(inches_between(cap.outline.front(), cap.outline.back()) ==
          doctest::Approx(lower).epsilon(1e-6));
    CHECK(cap.lower == sixteenths(172));  // 10.733 in
    // The triangle, the part below it, and two lips cut at 45° at the foot, clear of a 1/2 in hem.
    const double along = leg - 0.625 - 0.125;
    const double area = leg * std::cos(rise) * leg * std::sin(rise) +
                        down * std::cos(rise) * (chord + lower) / 2 +
                        2 * lip * (along + along - lip) / 2;
    CHECK(area_mm2(cap.outline) / (25.4 * 25.4) == doctest::Approx(area).epsilon(1e-6));
}

TEST_CASE("a lip's fold lies on its leg, clear of bend and hem, and the metal holds it all") {
    for (const EdgeKind kind : {EdgeKind::ridge, EdgeKind::hip, EdgeKind::high_eave}) {
        CAPTURE(word_of(kind));
        const EndCap cap = made(open_edge(kind, rise_in_12(5))).value();
        for (const CapLeg* leg : {&cap.flange, &cap.face}) {
            CHECK(inches_between(cap.bend, leg->fold.a) == doctest::Approx(0.125).epsilon(1e-6));
            CHECK(inches_between(cap.bend, leg->fold.b) ==
                  doctest::Approx(
                      inches_of(static_cast<double>((leg->width - leg->clear).nm()) / 1e6)));
            CHECK(leg->clear == (kind == EdgeKind::high_eave ? Length() : sixteenths(10)));
        }
        std::int64_t right = 0, low = 0;
        for (const FlatPoint& p : cap.outline) {
            CHECK(std::min(p.x, p.y) >= 0);
            right = std::max(right, p.x);
            low = std::max(low, p.y);
        }
        CHECK(cap.wide == round_up_to(Length::of_nm(right), sixteenths(1)));
        CHECK(cap.high == round_up_to(Length::of_nm(low), sixteenths(1)));
        CHECK(std::max(std::abs(cap.outline.front().y - low),
                       std::abs(cap.outline.back().y - low)) <= 2);  // the lower edge is level
    }
}

TEST_CASE("a high eave's cap has a hand: under its flange it goes down, its face lies on wood") {
    const EndCap cap = made(open_edge(EdgeKind::high_eave, rise_in_12(6))).value();
    CHECK(cap.corner_degrees == doctest::Approx(63.435).epsilon(1e-4));
    CHECK(cap.flange.down == inches(2));
    CHECK(cap.face.down == Length());
    CHECK_FALSE(cap.fits_both_ends);
    const EndCap right = cap_for(cap, Side::right);
    CHECK(right.flange.fold.a.x + cap.flange.fold.a.x == cap.wide.nm());
    CHECK(cap.flange.fold.b.x < cap.face.fold.b.x);  // facing the edge, its flange lies away
    CHECK(right.flange.fold.b.x > right.face.fold.b.x);
    CHECK(cap_for(cap, Side::left).outline == cap.outline);
    // At 24/12 the plate reaches below the pans without it.
    CHECK(made(open_edge(EdgeKind::high_eave, rise_in_12(24)))->flange.down == Length());
}

TEST_CASE("the open ends of ridge, hip and high eave take a cap, no other end") {
    Edge ridge = open_edge(EdgeKind::ridge, rise_in_12(6));
    CHECK(capped_ends(ridge) == std::vector{Side::left, Side::right});
    ridge.right = End::gable;
    CHECK(capped_ends(ridge) == std::vector{Side::left});
    for (const EdgeKind kind : {EdgeKind::eave, EdgeKind::valley, EdgeKind::headwall}) {
        CHECK(capped_ends(open_edge(kind, rise_in_12(6))).empty());
    }
}

TEST_CASE("a leg too narrow for a lip, and a trim without a section, are told") {
    Edge ridge = open_edge(EdgeKind::ridge, rise_in_12(6));
    ridge.flange = inches(2);
    CHECK(made(ridge).problem().what == "A leg of 2 in leaves no room for an end cap's lip.");
    CHECK(end_cap_of(ridge, nullptr, {}, {})
              .problem()
              .what.english()
              .find("No cross-section is drawn") == 0);
}

TEST_CASE("what is cut and folded is said with the legs' own names") {
    Edge ridge = open_edge(EdgeKind::ridge, rise_in_12(6));
    const std::vector<Text> lines = cap_lines(made(ridge).value(), ridge);
    REQUIRE(lines.size() == 6);
    CHECK(lines[1] ==
          "Plate: 7 in along the leg on this roof, 7 in along the leg on the other roof, 126.9° "
          "between them, 10 3/4 in below.");
    CHECK(lines[2] == "Below both legs' edges it goes down 2 in, square to the leg, to the pans.");
    ridge.pitch2 = rise_in_12(8);
    CHECK(cap_lines(made(ridge).value(), ridge)[1].english().find("leg on the 8/12 roof") !=
          std::string::npos);
}
