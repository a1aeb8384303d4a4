// Every step of every kind of edge has its own three pictures: no two steps differ in words alone.
#include "engine/plan/make_plan.h"
#include "engine/roof/edge_shape.h"
#include "engine/work/step_pictures.h"

#include <cmath>
#include <map>
#include <set>

#include "eave_job.h"
#include "tests/engine/trim/sections.h"

using namespace hemline_test;

namespace {

/// Where all drawn metal and all else lies, to a tenth of a millimeter.
using Drawn = std::vector<std::vector<long long>>;

void add(const std::vector<Facet>& facets, int what, Drawn& drawn) {
    for (const Facet& facet : facets) {
        std::vector<long long> places{what};
        for (const Space& corner : facet.corners) {
            for (const double place : {corner.x, corner.y, corner.z}) {
                places.push_back(std::llround(place * 10));
            }
        }
        drawn.push_back(places);
    }
}

Drawn drawn_of(const StepPicture& picture) {
    Drawn drawn;
    add(picture.own, 0, drawn);
    add(picture.other, 1, drawn);
    for (const Prop& prop : picture.props) {
        add(prop.facets, 2 + static_cast<int>(prop.stuff), drawn);
    }
    std::sort(drawn.begin(), drawn.end());
    return drawn;
}

struct Shown {
    std::set<std::string> steps;
    int trios = 0;
};

/// All steps of an edge that is sent back and held, each once.
void look_at(const Edge& edge, const Catalogue& catalogue, const Sections& sections, Shown& shown) {
    const std::string kind(word_of(edge.kind));
    const auto procedure = read_procedure(assets_file("procedures/" + kind + ".csv")).value();
    Job job;
    job.edges.push_back(read_twice(edge, feet(15)));
    EdgeWork& work = job.edges.front();
    work.sent_back.emplace();
    work.said_no.emplace();
    const Plan plan = make_plan(job, catalogue);
    std::map<std::array<Drawn, 3>, std::string> seen;
    std::set<std::string> ids;
    for (const Step& step : steps_of(work, plan, job.practice, procedure, catalogue)) {
        const std::string& id = step.rule->id;
        if (!ids.insert(id).second) {
            continue;
        }
        CAPTURE(kind);
        CAPTURE(word_of(edge.left));
        CAPTURE(word_of(edge.right));
        CAPTURE(id);
        const auto pictures = step_pictures({job, plan, catalogue, sections, nullptr}, step, work);
        REQUIRE(pictures.ok());
        std::array<Drawn, 3> trio;
        for (std::size_t i = 0; i < trio.size(); ++i) {
            trio[i] = drawn_of(pictures->before_during_done[i]);
            CHECK_FALSE(pictures->before_during_done[i].says.empty());
            for (const auto& places : trio[i]) {
                CHECK(places.size() >= 10);  // three corners or more
            }
        }
        CHECK_FALSE(trio[2].empty());
        CHECK(trio[0] != trio[2]);
        const auto put = seen.emplace(trio, id);
        CHECK_MESSAGE(put.second, id << " is drawn as " << put.first->second);
        shown.steps.insert(kind + " " + id);
        ++shown.trios;
    }
}

}  // namespace

TEST_CASE("every step of every edge has three pictures of its own, told apart by what is drawn" *
          doctest::test_suite("large")) {
    const Catalogue catalogue = own_catalogue();
    const Sections sections = sections_of_assets();
    Shown shown;
    for (const KindOfEdge& kind : kinds_of_edge()) {
        for (const Panels panels : {Panels::under, Panels::over}) {
            for (const End left : ends_of(kind.kind, Side::left)) {
                for (const End right : ends_of(kind.kind, Side::right)) {
                    Edge edge = eave("A", left, right);
                    edge.kind = kind.kind;
                    edge.wrap = kind.kind == EdgeKind::eave || kind.kind == EdgeKind::high_eave;
                    edge.pitch2 = rise_in_12(8);
                    for (const Trim& trim : catalogue.trims()) {
                        if (trim.kind == kind.kind && trim.panels == panels &&
                            trim.role == TrimRole::main) {
                            edge.trim = trim.id;
                        }
                    }
                    look_at(edge, catalogue, sections, shown);
                }
            }
        }
    }
    MESSAGE(shown.steps.size() << " steps, " << shown.trios << " trios");
    CHECK(shown.steps.size() > 150);
}
