// The site drawing: every label clear of every line and of the other labels, read from the SVG.
#include "engine/handover/roof_drawing.h"

#include <doctest/doctest.h>

#include <cmath>
#include <regex>

#include "engine/handover/roof_readings.h"
#include "engine/words/result.h"
#include "tests/engine/body/chance_walks.h"
#include "tests/engine/body/said_sides.h"

using namespace hemline;
using namespace hemline::test;

namespace {

struct DrawnLabel {
    double x = 0, y = 0, turned = 0, high = 0;
    std::string words;

    /// Where a place of the page lies from the label's middle, along it and across it.
    [[nodiscard]] PlanVector seen(PlanVector place) const {
        const double angle = -turned * std::numbers::pi / 180;
        const PlanVector off = {place.x - x, place.y - y};
        return {off.x * std::cos(angle) - off.y * std::sin(angle),
                off.x * std::sin(angle) + off.y * std::cos(angle)};
    }
    /// Half of what its letters fill: no letter is narrower on average than 0.45 of its height.
    [[nodiscard]] double half_wide() const {
        return 0.225 * high * static_cast<double>(words.size());
    }
    [[nodiscard]] bool covers(PlanVector place) const {
        const PlanVector at = seen(place);
        return std::abs(at.x) < half_wide() && std::abs(at.y) < 0.36 * high;
    }
};

std::vector<std::smatch> all_of(const std::string& svg, const std::string& pattern) {
    const std::regex expression(pattern);
    return {std::sregex_iterator(svg.begin(), svg.end(), expression), std::sregex_iterator()};
}

std::vector<DrawnLabel> labels_of(const std::string& svg) {
    std::vector<DrawnLabel> labels;
    for (const std::smatch& one :
         all_of(svg,
                "translate\\(([-0-9.]+) ([-0-9.]+)\\) rotate\\(([-0-9.]+)\\)\" "
                "font-size=\"([0-9.]+)\"[^>]*><tspan[^>]*>([^<]*)</tspan>"
                "(<tspan[^>]*>([^<]*)</tspan>)?")) {
        labels.push_back({std::stod(one[1]), std::stod(one[2]), std::stod(one[3]),
                          std::stod(one[4]), one[5].str() + " " + one[7].str()});
    }
    return labels;
}

/// Labels that a place of any edge's line, or of another label, lies in; tells how many labels.
int labels_in_the_way(const std::string& svg, int& labels_seen) {
    const std::string plan = svg.substr(0, svg.find("v2 h"));  // the list's lines come after
    const std::vector<DrawnLabel> labels = labels_of(plan);
    labels_seen += static_cast<int>(labels.size());
    int in_the_way = 0;
    const auto lines = all_of(plan,
                              "class=\"[a-z_]+\" d=\"M([-0-9.]+) ([-0-9.]+) L([-0-9.]+) "
                              "([-0-9.]+)\"");
    for (const DrawnLabel& label : labels) {
        bool hit = false;
        for (const std::smatch& line : lines) {
            const PlanVector from = {std::stod(line[1]), std::stod(line[2])};
            const PlanVector to = {std::stod(line[3]), std::stod(line[4])};
            for (int i = 0; i <= 500; ++i) {
                hit = hit || label.covers(from + (to - from) * (i / 500.0));
            }
        }
        for (const DrawnLabel& other : labels) {
            hit = hit || (&other != &label && label.covers({other.x, other.y}));
        }
        in_the_way += hit ? 1 : 0;
    }
    return in_the_way;
}

std::string drawn(const std::vector<RoofBody>& bodies) {
    const auto roof = work_out_roof(bodies, Tape());
    return roof && roof->closes ? roof_svg(*roof, bodies, PageWords()) : "";
}

RoofBody body_round(const PlanWalk& walk) {
    RoofBody body;
    for (std::size_t i = 0; i < walk.size(); ++i) {
        const PlanVector way = walk[(i + 1) % walk.size()] - walk[i];
        const PlanVector next = walk[(i + 2) % walk.size()] - walk[(i + 1) % walk.size()];
        body.sides.push_back(said_side("s" + std::to_string(i), SideKind::eave, length_of(way),
                                       "7/12", turn(way, next) > 0 ? square_out : square_in));
    }
    return body;
}

}  // namespace

TEST_CASE("No label of the site drawing lies across a line or on another label") {
    std::mt19937 random(43);
    int labels = 0, in_the_way = 0, drawings = 0;
    while (drawings < 20) {
        const PlanWalk walk = rooms(random);
        const std::string svg = walk.empty() ? "" : drawn({body_round(walk)});
        if (!svg.empty()) {
            ++drawings;
            in_the_way += labels_in_the_way(svg, labels);
        }
    }
    CHECK(in_the_way == 0);
    CHECK(labels > 200);
}

TEST_CASE("The site drawing names every edge, with its length, and every pitch") {
    const std::vector<RoofBody> bodies = {
        {"",
         {said_side("A", SideKind::eave, 40, "6/12"), said_side("B", SideKind::gable, 24),
          said_side("C", SideKind::eave, 40, "6/12"), said_side("D&<", SideKind::gable, 24)},
         {}}};
    const std::string svg = drawn(bodies);
    int labels = 0;
    CHECK(labels_in_the_way(svg, labels) == 0);
    CHECK(labels == 7);
    CHECK(all_of(svg, ">6/12<").size() == 2);
    CHECK(svg.find("D&amp;&lt;") != std::string::npos);
    CHECK(svg.find("D&<") == std::string::npos);
    CHECK(svg.find("13 ft 5 in") != std::string::npos);
    CHECK(svg.find("Never cut from it: measure each edge.") != std::string::npos);
}

TEST_CASE("Expected lengths as a readings file: a row for each edge, marked so") {
    const std::vector<RoofBody> bodies = {
        {"",
         {said_side("A", SideKind::eave, 20, "12/12", degrees(135)),
          said_side("B", SideKind::eave, 20, "6/12", degrees(135)),
          said_side("C", SideKind::eave, 20, "6/12"), said_side("D", SideKind::open, 0),
          said_side("E", SideKind::gable, 0)},
         {}}};
    const auto roof = work_out_roof(bodies, Tape());
    REQUIRE_MESSAGE(roof.ok(), said(roof.problem()).english());
    const std::string csv = expected_readings(*roof, bodies, Marks::sixteenth);
    CHECK(csv.find("\"A\",\"eave\",\"\",\"20 ft\",\"gable\",\"corner_out\",\"12/12\",\"\",\"\","
                   "\"135°\",\"yes\"") != std::string::npos);
    CHECK(csv.find("\"hip\"") != std::string::npos);
    CHECK(csv.find("\"12/12\",\"6/12\",\"135°\",\"\",\"yes\"") != std::string::npos);
    CHECK(csv.find("open\",\"\",\"open") == std::string::npos);
}
