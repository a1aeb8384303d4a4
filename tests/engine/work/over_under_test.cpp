// Over or under the panels: what a trim says of it decides order, steps and what is fastened.
#include <algorithm>

#include "eave_job.h"
#include "engine/work/order.h"

using namespace hemline_test;

namespace {

struct OneEdge {
    Job job;
    Catalogue catalogue = own_catalogue();
    std::vector<StepRule> procedure;

    OneEdge(EdgeKind kind, const std::string& trim, End left, End right) {
        Edge edge = eave("A", left, right);
        edge.kind = kind;
        edge.trim = trim;
        edge.pitch2 = rise_in_12(6);
        job.edges.push_back(read_twice(edge, feet(20)));
        procedure = read_procedure(assets_file("procedures/" + std::string(word_of(kind)) + ".csv"))
                        .value();
    }
    [[nodiscard]] Plan plan() const { return make_plan(job, catalogue); }
    [[nodiscard]] std::vector<Step> steps() const {
        return steps_of(job.edges[0], plan(), job.practice, procedure, catalogue);
    }
    /// What the step says; empty where it does not come.
    [[nodiscard]] std::string says(const std::string& id) const {
        for (const Step& step : steps()) {
            if (step.rule->id == id) {
                return step.action.english();
            }
        }
        return "";
    }
    [[nodiscard]] std::vector<std::string> ids() const {
        std::vector<std::string> ids;
        for (const Step& step : steps()) {
            ids.push_back(step.rule->id);
        }
        return ids;
    }
};

bool has(const std::vector<std::string>& ids, const std::string& id) {
    return std::find(ids.begin(), ids.end(), id) != ids.end();
}

}  // namespace

// Order, ways to hold and legs: common practice, no published source.

TEST_CASE("a gable with a lip goes on before the panels, one over a zee after them") {
    const OneEdge lip(EdgeKind::gable, "", End::eave, End::ridge);
    CHECK(has(lip.ids(), "eave_on"));
    CHECK(!has(lip.ids(), "zee_set"));
    CHECK(lip.says("fasten").find("Screw piece 1's flange") == 0);
    CHECK(lip.says("cleat_line").find("2 15/16 in below the bend") != std::string::npos);
    const OneEdge zee(EdgeKind::gable, "gable_channel", End::eave, End::ridge);
    CHECK(!has(zee.ids(), "eave_on"));
    CHECK(zee.says("panels").find("end pan turned up") != std::string::npos);
    CHECK(zee.says("zee_set") == "Rivet the zee in tape to the end pan alone: 21 rivets.");
    CHECK(zee.says("fasten") == "Look: piece 1's hems hold zee and cleat; no screw.");
    CHECK(zee.says("cleat_line").find("1 7/16 in below the deck") != std::string::npos);
    CHECK(turn_of(lip.job.edges[0].edge, lip.catalogue) <
          turn_of(zee.job.edges[0].edge, zee.catalogue));
}

TEST_CASE("what lies under the panels waits for no panel, what lies over them for all under them") {
    OneEdge roof(EdgeKind::gable, "gable_channel", End::eave, End::ridge);
    Edge lip = roof.job.edges[0].edge;
    lip.id = "B";
    lip.trim = "gable";
    roof.job.edges.push_back(read_twice(lip, feet(20)));
    CHECK(fitting_waits_for(roof.job.edges[0], roof.job, roof.catalogue) ==
          "Finish gable B first: the panels lie on it, and gable A goes over the panels.");
    CHECK(fitting_waits_for(roof.job.edges[1], roof.job, roof.catalogue).empty());
}

TEST_CASE("a sidewall over a channel is riveted to it, its wall leg free") {
    const OneEdge channel(EdgeKind::sidewall, "sidewall_channel", End::eave, End::wall);
    CHECK(has(channel.ids(), "channel_set"));
    CHECK(!has(channel.ids(), "strip_set"));
    CHECK(channel.says("fasten").find("Rivet piece 1 to the channel with") == 0);
    const OneEdge pan(EdgeKind::sidewall, "", End::eave, End::wall);
    CHECK(pan.says("fasten").find("Screw piece 1's deck leg") == 0);
    CHECK(has(pan.ids(), "strip_set"));
    CHECK(!has(pan.ids(), "panels"));
}

TEST_CASE("a sidewall whose foot is at an outside corner lies over the panels") {
    const OneEdge usual(EdgeKind::sidewall, "", End::corner_out, End::wall);
    CHECK(usual.catalogue.of(usual.job.edges[0].edge)->id == "sidewall_channel");
    CHECK(usual.plan().problems.empty());
    const OneEdge pan(EdgeKind::sidewall, "sidewall", End::corner_out, End::wall);
    const Plan plan = pan.plan();
    REQUIRE(plan.problems.size() == 1);
    CHECK(plan.problems[0].field == "trim");
    CHECK(plan.problems[0].severity == Severity::problem);
    CHECK(plan.problems[0].mend ==
          say("Choose {1}, or leave it empty.", say(pan.catalogue.find("sidewall_channel")->name)));
    CHECK(plan.problems[0].what.english().find('_') == std::string::npos);
    for (const End foot : {End::eave, End::valley}) {
        const OneEdge down(EdgeKind::sidewall, "sidewall", foot, End::wall);
        CHECK(down.plan().problems.empty());
    }
}

TEST_CASE("closures are riveted to their pans but where the job pins its panels") {
    OneEdge ridge(EdgeKind::ridge, "", End::gable, End::gable);
    // 20 ft: 15 pans a side, 3 rivets each.
    CHECK(ridge.says("closures_free") ==
          "Rivet each to its pan: 90 rivets; panels are pinned at the eave (assumed).");
    ridge.job.practice = with_rule(ridge.job.practice, "fixed_line", "eave").value();
    CHECK(ridge.says("closures_free") ==
          "Rivet each to its pan: 90 rivets; panels are pinned at the eave.");
    ridge.job.practice = with_rule(ridge.job.practice, "fixed_line", "ridge").value();
    CHECK(ridge.says("closures_free") ==
          "Screw each through to the deck, 90 screws: panels are pinned here.");
    CHECK(!with_rule(ridge.job.practice, "fixed_line", "both").ok());
    CHECK(ridge.says("fasten").find("4 in and 1 ft from a seam") != std::string::npos);
}

TEST_CASE("a pipe's steps tell its distance, its hole, and a curb where no boot fits") {
    OneEdge pipe(EdgeKind::penetration, "", End::open, End::open);
    pipe.job.edges[0].readings.clear();
    const auto answer = [&](const std::string& step, Length length) {
        DoneStep done;
        done.step.edge = "A";
        done.step.step = step;
        done.step.answer = {AnswerKind::length, length, 0, ""};
        pipe.job.edges[0].steps.push_back(done);
    };
    CHECK(pipe.says("cut").find("Cut the hole what its measures give") == 0);
    answer("size", sixteenths(72));
    answer("base", inches(9));
    answer("from_line", feet(15));
    CHECK(pipe.says("place") == "Measure from the center to the nearest seam: at least 5 3/4 in.");
    for (const Step& step : pipe.steps()) {
        if (step.rule->id == "place") {
            CHECK(step.length_least == sixteenths(92));
        }
    }
    CHECK(pipe.says("cut") == "Cut the hole 5 1/16 in across, round the pipe's center.");
    CHECK(!has(pipe.ids(), "curb"));
    answer("base", inches(14));
    CHECK(has(pipe.ids(), "curb"));
    CHECK(has(pipe.ids(), "curb_edges"));
    CHECK(!has(pipe.ids(), "boot_rivet"));
}

TEST_CASE("a curb wider than 30 in takes a cricket on its up side") {
    OneEdge curb(EdgeKind::curb_head, "", End::corner_out, End::corner_out);
    curb.job.edges[0] = read_twice(curb.job.edges[0].edge, inches(48));
    // 48 in at 6/12: 12 in high, its valleys 36 (IRC Table R1003.20, from memory).
    CHECK(curb.says("cricket") == "Build a cricket 1 ft high, its valleys 3 ft long.");
    curb.job.edges[0] = read_twice(curb.job.edges[0].edge, inches(30));
    CHECK(curb.says("cricket").empty());
}

TEST_CASE("a valley whose strips leave too little leg under the panels says so before the cut") {
    OneEdge valley(EdgeKind::valley, "", End::eave, End::ridge);
    const auto cut = [&] {
        const auto steps = valley.steps();
        return *std::find_if(steps.begin(), steps.end(),
                             [](const Step& step) { return step.rule->id == "strip_cut"; });
    };
    CHECK(cut().doubt.empty());
    valley.job.edges[0].edge.flange = inches(9);
    CHECK(cut().doubt.english().find("of the leg under the panels; 6 in are asked") !=
          std::string::npos);
    CHECK(cut().waits_for.empty());  // the crew decides
}
