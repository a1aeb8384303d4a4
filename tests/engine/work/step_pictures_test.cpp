// Before, during and done of the steps that cut, fold and lap. The tab of 1 in at a gable, folded
// 90°, and the lap of 6 in: common practice, no published source.
#include "engine/work/step_pictures.h"
#include "engine/plan/make_plan.h"
#include "engine/words/result.h"

#include <algorithm>
#include <cmath>

#include "eave_job.h"
#include "tests/engine/trim/sections.h"

using namespace hemline_test;

namespace {

constexpr double degree = 3.14159265358979 / 180;

struct Roof {
    Catalogue catalogue = Catalogue::read(assets_file("catalogue/trims.csv")).value();
    Sections sections = sections_of_assets();
    std::vector<StepRule> procedure;
    Job job;
    Plan plan;

    Roof(EdgeKind kind, End left, End right) {
        Edge edge = eave("A", left, right);
        edge.kind = kind;
        edge.pitch = rise_in_12(5);
        job.edges.push_back(read_twice(edge, feet(15)));
        plan = make_plan(job, catalogue);
        procedure = read_procedure(assets_file("procedures/" + std::string(word_of(kind)) + ".csv"))
                        .value();
    }
    [[nodiscard]] const EdgeWork& work() const { return job.edges.front(); }
    [[nodiscard]] std::vector<Step> steps() const {
        return steps_of(work(), plan, job.practice, procedure, catalogue);
    }
    [[nodiscard]] Step step(std::string_view id, int piece) const {
        for (const Step& step : steps()) {
            if (step.rule->id == id && step.piece == piece) {
                return step;
            }
        }
        FAIL("no such step");
        return {};
    }
    [[nodiscard]] Result<StepPictures> pictures(std::string_view id, int piece) const {
        return step_pictures({job, plan, catalogue, sections, nullptr}, step(id, piece), work());
    }
};

std::vector<std::string> says(const StepPictures& pictures) {
    std::vector<std::string> words;
    for (const StepPicture& picture : pictures.before_during_done) {
        words.push_back(picture.says.english());
    }
    return words;
}

bool has_tab(const StepPicture& picture) {
    return std::any_of(picture.own.begin(), picture.own.end(),
                       [](const Facet& facet) { return facet.is_tab; });
}

/// Degrees between the tab and the face it was cut from.
double tab_turned(const StepPicture& picture) {
    const auto tab = std::find_if(picture.own.begin(), picture.own.end(),
                                  [](const Facet& facet) { return facet.is_tab; });
    REQUIRE(tab != picture.own.end());
    const auto face = std::find_if(picture.own.begin(), picture.own.end(), [&](const Facet& facet) {
        return !facet.is_tab && facet.leg == tab->leg;
    });
    REQUIRE(face != picture.own.end());
    const Space a = tab->normal, b = face->normal;
    return std::acos(std::clamp(a.x * b.x + a.y * b.y + a.z * b.z, -1.0, 1.0)) / degree;
}

/// The middle of the metal in a picture along the edge, mm.
double middle_of(const std::vector<Facet>& facets) {
    double low = 1e9, high = -1e9;
    for (const Facet& facet : facets) {
        for (const Space& corner : facet.corners) {
            low = std::min(low, corner.x);
            high = std::max(high, corner.x);
        }
    }
    return (low + high) / 2;
}

}  // namespace

TEST_CASE("A cut is shown as the stick, cut at its marks with the tab flat, and folded") {
    const Roof roof(EdgeKind::eave, End::gable, End::gable);
    const auto pictures = roof.pictures("cut", 1);
    REQUIRE(pictures.ok());
    const auto& all = pictures->before_during_done;
    CHECK_FALSE(has_tab(all[0]));
    CHECK(tab_turned(all[1]) == doctest::Approx(0).epsilon(0.001));
    CHECK(tab_turned(all[2]) == doctest::Approx(90));
    CHECK(pictures->side == Side::left);
    const auto words = says(*pictures);
    CHECK(words[0] == "The metal, 10 ft long.");
    CHECK(words[1].find("flange cut at 1 in") != std::string::npos);
    CHECK(words[1].find("The tab of 1 in is still flat.") != std::string::npos);
    CHECK(words[2] == "The tab is folded 90°.");
}

TEST_CASE(
    "A step at an end of the edge shows the tab of the piece that lies there, flat, half, done") {
    const Roof roof(EdgeKind::eave, End::gable, End::gable);
    const auto pictures = roof.pictures("ends", 0);
    REQUIRE(pictures.ok());
    CHECK(says(*pictures) == std::vector<std::string>{"The tab of 1 in is still flat.",
                                                      "Half way: 45°.", "The tab is folded 90°."});
    CHECK(tab_turned(pictures->before_during_done[1]) == doctest::Approx(45));
    // An outside corner at the right end, which the run comes to last.
    const Roof corner(EdgeKind::eave, End::gable, End::corner_out);
    const StepMetal metal = metal_of(corner.step("corner_out_fold", 0), corner.work(), corner.plan);
    CHECK(metal.side == Side::right);
    CHECK(metal.piece == static_cast<int>(corner.plan.runs.front().pieces.size()));
}

TEST_CASE("A lap is shown as the neighbour, the piece coming to it, and both together") {
    const Roof roof(EdgeKind::eave, End::gable, End::gable);
    const auto pictures = roof.pictures("slide", 2);
    REQUIRE(pictures.ok());
    const auto& all = pictures->before_during_done;
    CHECK(all[0].own.empty());
    CHECK_FALSE(all[0].other.empty());
    CHECK(middle_of(all[1].own) > middle_of(all[2].own));  // it comes from the right
    CHECK(says(*pictures)[2] == "They lap by 6 in.");
}

// Headwall: included 90° + θ, θ = atan(5/12) = 22.62° (architecture textbooks; worked by hand).
TEST_CASE("The roof's own bend is shown flat, half bent and bent, with the angle on the gauge") {
    const Roof roof(EdgeKind::headwall, End::open, End::open);
    const auto pictures = roof.pictures("fold", 0);
    REQUIRE(pictures.ok());
    CHECK(says(*pictures)[2] == "Bent 67.4°: the gauge shows 112.6°.");
    const auto turned = [&](std::size_t i) {
        const auto& own = pictures->before_during_done[i].own;
        const auto leg = [&](std::size_t n) {
            return std::find_if(own.begin(), own.end(),
                                [&](const Facet& facet) { return facet.leg == n; })
                ->normal;
        };
        const Space a = leg(0), b = leg(1);
        return std::acos(std::clamp(a.x * b.x + a.y * b.y + a.z * b.z, -1.0, 1.0)) / degree;
    };
    CHECK(turned(0) == doctest::Approx(0).epsilon(0.001));
    CHECK(turned(1) == doctest::Approx(67.38 / 2).epsilon(0.001));
    CHECK(turned(2) == doctest::Approx(67.38).epsilon(0.001));
}
