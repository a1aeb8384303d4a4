#include <doctest/doctest.h>

#include "engine/plan/make_plan.h"
#include "engine/record/job.h"
#include "tests/engine/assets.h"

using namespace hemline;

namespace {

EdgeWork of_metal(const std::string& id, EdgeKind kind, End left, End right,
                  const std::string& metal) {
    EdgeWork work;
    work.edge.id = id;
    work.edge.kind = kind;
    work.edge.left = left;
    work.edge.right = right;
    work.edge.metal = metal;
    return work;
}

/// Panels and screws that no metal here eats or is eaten by.
Site stainless() {
    Site site;
    site.panel_metal = site.screw_metal = "stainless steel";
    return site;
}

/// "A: …" for each problem of metals.
std::vector<std::string> metal_problems(std::vector<EdgeWork> edges,
                                        const Site& site = stainless()) {
    const auto catalogue = Catalogue::read(asset("catalogue/trims.csv"));
    REQUIRE(catalogue);
    Job job;
    job.edges = std::move(edges);
    job.practice.site = site;
    std::vector<std::string> found;
    for (const PlanProblem& problem : make_plan(job, *catalogue).problems) {
        if (problem.field == "metal") {
            CHECK(problem.severity == Severity::problem);
            CHECK_FALSE(problem.mend.english().empty());
            found.push_back(problem.edge + ": " + problem.what.english());
        }
    }
    return found;
}

EdgeWork eave(const std::string& id, const std::string& metal) {
    return of_metal(id, EdgeKind::eave, End::gable, End::corner_in, metal);
}
EdgeWork valley(const std::string& metal) {
    return of_metal("X", EdgeKind::valley, End::eave, End::ridge, metal);
}
EdgeWork ridge(const std::string& metal) {
    return of_metal("R", EdgeKind::ridge, End::gable, End::gable, metal);
}

}  // namespace

// No copper touching or above zinc, galvanized, aluminum-zinc or aluminum: its run-off eats them
// (common practice, no published source; sea-water order of metals: MIL-STD-889).

TEST_CASE("A copper valley between galvanized eaves is a problem of each eave, naming both") {
    CHECK(metal_problems(
              {eave("A", "galvanized steel"), eave("B", "painted aluminum"), valley("copper")}) ==
          std::vector<std::string>{"A: Water from Valley X runs over Eave A, and \"copper\" eats "
                                   "\"galvanized steel\".",
                                   "B: Water from Valley X runs over Eave B, and \"copper\" eats "
                                   "\"painted aluminum\"."});
}

TEST_CASE("A copper ridge drains onto the valley and the eave") {
    CHECK(metal_problems({eave("A", "zinc"), valley("aluminum-zinc steel"), ridge("copper")}) ==
          std::vector<std::string>{
              "A: Water from Ridge R runs over Eave A, and \"copper\" eats \"zinc\".",
              "X: Water from Ridge R runs over Valley X, and \"copper\" eats "
              "\"aluminum-zinc steel\"."});
}

TEST_CASE("Copper below is a problem only where it touches") {
    // The valley ends at the eave and lies on it; a ridge is far from the eave.
    CHECK(metal_problems({eave("A", "copper"), valley("galvanized steel")}) ==
          std::vector<std::string>{
              "X: Eave A and Valley X touch, and \"copper\" eats \"galvanized steel\"."});
    CHECK(metal_problems({eave("A", "copper"), ridge("galvanized steel")}).empty());
    // Around a corner two eaves touch.
    CHECK(metal_problems({eave("A", "copper"), eave("B", "zinc")}).size() == 1);
}

TEST_CASE("An edge that says no metal beside copper is asked for it") {
    CHECK(metal_problems({eave("A", ""), valley("copper")}) ==
          std::vector<std::string>{"A: Water from Valley X runs over Eave A, \"copper\" eats "
                                   "galvanized steel, and the metal of A is not stated."});
}

TEST_CASE("One metal, stainless beside aluminum, and roofs that say nothing are no problem") {
    CHECK(metal_problems({eave("A", "copper"), valley("copper"), ridge("copper")}).empty());
    CHECK(metal_problems({eave("A", "aluminum"), valley("stainless steel")}).empty());
    CHECK(metal_problems({eave("A", "stainless steel"), valley("copper")}).empty());
    CHECK(metal_problems({eave("A", ""), valley(""), ridge("galvanized steel")}).empty());
}

// Pairs of edge and panels, gutter, screws, wood: the same sources; screws in aluminum of stainless
// steel, never the reverse: MIL-STD-1250A §5.7; treated wood: common practice, no published source.

TEST_CASE("Copper edges on panels that nobody named are a problem that says what is assumed") {
    CHECK(metal_problems({eave("A", "copper")}, {}) ==
          std::vector<std::string>{
              "A: Eave A touches the panels, and \"copper\" eats them: not stated, taken as "
              "galvanized steel.",
              "A: Eave A holds \"copper\", and the screws are not stated, taken as galvanized "
              "steel."});
}

TEST_CASE("Water runs from the panels over valley and eave, and into the gutter") {
    Site site = stainless();
    site.panel_metal = "copper";
    CHECK(metal_problems({eave("A", "painted aluminum")}, site) ==
          std::vector<std::string>{"A: Water from the panels runs over Eave A, and \"copper\" "
                                   "eats \"painted aluminum\"."});
    CHECK(metal_problems({eave("A", "copper")}, site).empty());
    site.gutter_metal = "galvanized steel";
    CHECK(metal_problems({eave("A", "copper")}, site) ==
          std::vector<std::string>{
              "A: Water from the panels (\"copper\") runs into the gutter (\"galvanized steel\"), "
              "and one eats the other.",
              "A: Water from Eave A runs into the gutter, and \"copper\" eats \"galvanized "
              "steel\"."});
    site.gutter_metal = "copper";
    CHECK(metal_problems({eave("A", "copper")}, site).empty());
}

TEST_CASE("Stainless screws hold aluminum, and aluminum screws hold nothing else") {
    Site site = stainless();
    CHECK(metal_problems({eave("A", "aluminum")}, site).empty());
    site.screw_metal = "galvanized steel";
    CHECK(metal_problems({eave("A", "aluminum")}, site).size() == 2);  // and the panels' screws
    CHECK(metal_problems({eave("A", "galvanized steel")}, site).size() == 1);
    site.panel_metal = "painted aluminum-zinc steel";
    CHECK(metal_problems({eave("A", "galvanized steel")}, site).empty());
    site.screw_metal = "aluminum";
    CHECK(metal_problems({eave("A", "stainless steel")}, site).size() == 2);
}

TEST_CASE("Bare treated wood is a problem of aluminum and of what is coated with it") {
    Site site = stainless();
    site.treated_wood = true;
    CHECK(metal_problems({eave("A", "painted aluminum-zinc steel")}, site).size() == 1);
    CHECK(metal_problems({eave("A", "painted aluminum")}, site).size() == 1);
    CHECK(metal_problems({eave("A", "copper")}, site).empty());
}

TEST_CASE("The trim's metal is said once, an edge may state another, lead eats aluminum-zinc") {
    Site site = stainless();
    site.trim_metal = "painted aluminum-zinc steel";
    CHECK(metal_problems({eave("A", ""), valley("")}, site).empty());
    CHECK(metal_problems({eave("A", ""), valley("lead")}, site) ==
          std::vector<std::string>{"A: Water from Valley X runs over Eave A, and \"lead\" eats "
                                   "\"painted aluminum-zinc steel\"."});
    CHECK(metal_problems({eave("A", ""), ridge("")}, {}).empty());  // nothing is said
}
