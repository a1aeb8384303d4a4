// The section editor by touches: a leg keyed in is kept, and the card, the pattern and the blank
// then have it; what cannot be made is not kept.
#include <doctest/doctest.h>

#include "engine/work/piece_pattern.h"
#include "tests/field/app/layout_walks.h"

using namespace hemline;

namespace {

Length card_leg(Journey& crew, LegName name) {
    const auto card = card_in_hand(crew.state(), crew.where());
    REQUIRE(card.ok());
    for (const Leg& leg : card->legs) {
        if (leg.name == name) {
            return leg.width;
        }
    }
    return {};
}

}  // namespace

TEST_CASE("A face keyed in on the section is kept, and the card and the flat pattern have it") {
    Journey crew;
    reach_section(crew);
    const Length before = card_leg(crew, LegName::face);
    const auto girth = [&] {
        const auto card = card_in_hand(crew.state(), crew.where());
        return piece_pattern(*card, crew.work("C").edge, crew.state().sections)
            .value()
            .legs.edges.back();
    };
    const Length girth_before = girth();
    CHECK(shows(crew, "Stretch-out"));
    crew.tap("leg 1");
    crew.tap_all({"inches 5", "sixteenths 4"});
    CHECK(card_leg(crew, LegName::face) == before);  // not kept yet
    crew.tap("keep");
    CHECK(crew.where().screen == Screen::section);
    CHECK(card_leg(crew, LegName::face) == inches(5) + sixteenths(4));
    CHECK(girth() - girth_before == inches(5) + sixteenths(4) - before);
    crew.tap("as catalogue");
    CHECK(card_leg(crew, LegName::face) == before);
    CHECK(girth() == girth_before);
}

TEST_CASE("Brake marks in mm are rounded once, from the exact value") {
    Journey crew;
    crew.tap_all({"demo", "rules", "rule cut_grid", "grid 1 mm", "leave"});
    crew.tap("edge C");
    for (int i = 0; i < 2; ++i) {
        crew.key_in(std::int64_t{4775});
        crew.tap("keep");
    }
    crew.tap_all({"digit 5", "keep"});
    crew.reach_card("C", TrimRole::main, 1);
    crew.tap_all({"folded", "section"});
    REQUIRE(crew.where().screen == Screen::section);
    // On a roof of 5/12 they lie at 101.261, 189.712 and 202.302 mm, of 215.002 mm of metal; by way
    // of the nearest 1/16 in the first came out as 102 mm.
    CHECK(shows(crew, "Brake marks: 101 mm, 190 mm, 202 mm"));
    CHECK(shows(crew, "Stretch-out 215 mm"));
}

TEST_CASE("A kick's bend is keyed in degrees, and one by the roof cannot be") {
    Journey crew;
    reach_section(crew);
    CHECK(!crew.screen->has_target("bend 0"));
    crew.tap_all({"bend 1", "digit 2", "digit 5", "keep"});
    const auto& legs = crew.last<SectionChosen>().legs;
    CHECK(legs[2].bend == -degrees(25));
    CHECK(!legs[1].bend);
    crew.tap("done");
    CHECK(crew.where().screen == Screen::folded);
}

TEST_CASE("A hem is made open, closed or tear-drop, and the widths stay") {
    Journey crew;
    reach_section(crew);
    crew.tap_all({"hem 3", "closed hem"});
    CHECK(shows(crew, "Stretch-out"));
    crew.tap("keep");
    const auto& legs = crew.last<SectionChosen>().legs;
    REQUIRE(legs.size() == 4);
    CHECK(legs[3].hem == Hem::closed);
    CHECK(legs[3].width == sixteenths(8));
    CHECK(crew.state().sections.find("eave_rolled")->legs[3].hem == Hem::closed);
    crew.tap_all({"hem 3", "open hem", "drop"});
    CHECK(crew.last<SectionChosen>().legs[3].hem == Hem::closed);
    crew.tap("as catalogue");
    CHECK(crew.state().sections.find("eave_rolled")->legs[3].hem == Hem::tear_drop);
}

TEST_CASE("Of a hem drawn large no line leads off the page to what does not show") {
    Journey crew;
    reach_section(crew);
    CHECK(crew.screen->has_target("leg 0"));
    crew.tap("hem 3");
    for (const char* const shown : {"leg 2", "leg 3", "hem 3", "bend 1"}) {
        CHECK_MESSAGE(crew.screen->has_target(shown), shown << " is not there");
    }
    CHECK(!crew.screen->has_target("leg 0"));  // the flange
}

TEST_CASE("A leg of no width is said to be wrong, and cannot be kept") {
    Journey crew;
    reach_section(crew);
    crew.tap_all({"leg 1", "inches 0"});
    CHECK(!crew.screen->has_target("keep"));
    CHECK(!shows(crew, "Stretch-out"));
    crew.tap("drop");
    CHECK(shows(crew, "Stretch-out"));
}

TEST_CASE(
    "Every dimension of a section is a button on its drawing, clear of its lines, 7 to 13 in") {
    Journey crew;
    reach_section(crew);
    for (const bool spanish : {false, true}) {
        if (spanish) {
            crew.tap_all({"leave", "language", "edge C"});
            crew.reach_card("C", TrimRole::main, 1);
            crew.tap_all({"folded", "section"});
        }
        for (const Size2 size :
             {Size2{1652, 1032}, Size2{1280, 800}, Size2{800, 1280}, Size2{1015, 637},
              Size2{637, 1015}, Size2{885, 531}, Size2{531, 885}}) {
            crew.screen->resize(size.w, size.h);
            crew.screen->frames(3);
            CAPTURE(size.w);
            CAPTURE(spanish);
            for (const char* name : {"leg 0", "leg 1", "leg 2", "leg 3", "bend 1", "hem 3"}) {
                CHECK_MESSAGE(crew.screen->has_target(name), name << " is not there");
            }
            CHECK(faults_of(crew.screen->ui()) == "");
        }
        crew.screen->resize(1280, 800);
        crew.screen->frames(3);
    }
}
