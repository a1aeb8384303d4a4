#include "engine/handover/drawing.h"

#include <map>

#include "engine/handover/svg.h"
#include "engine/handover/template_page.h"
#include "tests/engine/trim/sections.h"

using namespace hemline;

namespace {

FlatPattern eave_piece() {
    const Section section = *sections_of_assets().find("eave_rolled");
    const auto pattern = flat_pattern(section, bends_at(section, 5), feet(9),
                                      {{EndDeed::flange_cut, inches(1), {}},
                                       {EndDeed::drip_clip, inches(1), {}},
                                       {EndDeed::tab, inches(1), {}}},
                                      {{EndDeed::hem_notch, sixteenths(98), {}}});
    REQUIRE(pattern.ok());
    return *pattern;
}

/// How often each register cross is on the page, by its place in the drawing.
std::map<std::string, int> crosses_of(const std::string& html) {
    const std::string mark = "class=\"register\" d=\"";
    std::map<std::string, int> crosses;
    for (std::size_t at = html.find(mark); at != std::string::npos; at = html.find(mark, at + 1)) {
        const std::size_t from = at + mark.size();
        ++crosses[html.substr(from, html.find('"', from) - from)];
    }
    return crosses;
}

}  // namespace

TEST_CASE("millimetres print every nanometre and no more") {
    CHECK(mm_text(0) == "0");
    CHECK(mm_text(25'400'000) == "25.4");
    CHECK(mm_text(1) == "0.000001");
    CHECK(mm_text(-1'587'500) == "-1.5875");
    CHECK(mm_text(1'000'000) == "1");
}

TEST_CASE("words from outside cannot break the drawing's XML") {
    CHECK(xml_text("a<b>&\"c\x01") == "a&lt;b&gt;&amp;&quot;c\\u0001");
}

TEST_CASE("an end's work reaches as far in as its deepest cut") {
    const FlatPattern pattern = eave_piece();
    CHECK(work_reach(pattern, Side::right) == sixteenths(98));
    // The drip edge's 45° goes in by the kick's width past the tab.
    CHECK(work_reach(pattern, Side::left) ==
          inches(1) + pattern.legs.edges[3] - pattern.legs.edges[2]);
}

TEST_CASE("a template shows its end only, and the metal that runs on is no cut") {
    const FlatPattern pattern = eave_piece();
    const Drawing end = part_of(pattern, "end", Marks::sixteenth, Side::left, inches(3));
    for (const DrawnLine& line : end.lines) {
        for (const FlatPoint& p : line.points) {
            CHECK(p.x <= inches(3).nm());
        }
        for (std::size_t i = 1; line.layer == Layer::cut && i < line.points.size(); ++i) {
            const bool along_inside =
                line.points[i].x == inches(3).nm() && line.points[i - 1].x == inches(3).nm();
            CHECK_FALSE(along_inside);
        }
    }
}

TEST_CASE("each register cross lies at one place of the drawing and on two sheets") {
    const FlatPattern pattern = eave_piece();
    for (const Paper paper : {Paper::letter, Paper::a4}) {
        const auto crosses = crosses_of(
            template_page({part_of(pattern, "end", Marks::sixteenth, Side::right, inches(30))},
                          "end", {}, paper));
        CHECK(crosses.size() >= 4);
        for (const auto& cross : crosses) {
            CHECK_MESSAGE(cross.second == 2, cross.first);
        }
    }
}
