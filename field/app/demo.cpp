#include "field/app/demo.h"

#include <set>

#include "engine/handover/readings_file.h"
#include "engine/handover/sides_file.h"
#include "engine/words/csv.h"
#include "engine/words/result.h"
#include "engine/work/roof_body.h"
#include "field/store/folders.h"
#include "field/store/job_folder.h"

namespace hemline {

namespace {

constexpr int walks = 5;

Problem refused(const TableProblem& problem) {
    return {say("The demo roof, line {1}: {2}", problem.line, problem.what), Text(problem.mend)};
}

Result<std::string> demo_text(const std::string& name) {
    const auto folder = assets_folder();
    if (!folder) {
        return folder.problem();
    }
    const auto bytes = read_file(*folder / "demo" / name);
    if (!bytes) {
        return bytes.problem();
    }
    return std::string(bytes->begin(), bytes->end());
}

/// The walk, whose sides have the names of edges.
Result<WalkedBody> read_walk(int number, const std::set<std::string>& edges) {
    const std::string body = std::to_string(number);
    const Result<std::string> text = demo_text("walk_" + body + ".csv");
    if (!text) {
        return text.problem();
    }
    const auto sides = read_sides(*text);
    if (const auto* const problem = std::get_if<TableProblem>(&sides)) {
        return refused(*problem);
    }
    WalkedBody walk = walk_of(body, std::get<0>(sides).bodies.front());
    for (SideWalked& side : walk.sides) {
        if (!is_upright(side.kind) && edges.count(side.id) > 0) {
            side.edges = {side.id};
        }
    }
    return walk;
}

Result<std::vector<EdgePlaced>> read_places() {
    const Result<std::string> text = demo_text("places.csv");
    if (!text) {
        return text.problem();
    }
    const auto read = read_table(*text);
    if (const auto* const problem = std::get_if<TableProblem>(&read)) {
        return refused(*problem);
    }
    std::vector<EdgePlaced> places;
    for (const auto& row : std::get<Table>(read).rows) {
        places.push_back({row[0].text, {row[1].text, row[2].text, row[3].text, 0}});
    }
    return places;
}

}  // namespace

Result<DemoRoof> read_demo(const Catalogue& catalogue) {
    const Result<std::string> text = demo_text("readings.csv");
    if (!text) {
        return text.problem();
    }
    const auto read = read_readings(*text, catalogue);
    if (const auto* const problem = std::get_if<TableProblem>(&read)) {
        return refused(*problem);
    }
    DemoRoof demo{"Heron Lane boathouse (demo, invented)", {}, {}, {}};
    std::set<std::string> names;
    for (const EdgeReading& row : *std::get_if<std::vector<EdgeReading>>(&read)) {
        demo.edges.push_back(row.edge);
        // The newcomer reads the pitch too.
        demo.edges.back().pitch.reset();
        names.insert(row.edge.id);
    }
    if (!demo.edges.empty()) {
        demo.edges.front().wrap = true;
    }
    for (int number = 1; number <= walks; ++number) {
        const Result<WalkedBody> walk = read_walk(number, names);
        if (!walk) {
            return walk.problem();
        }
        demo.bodies.push_back(*walk);
    }
    const Result<std::vector<EdgePlaced>> places = read_places();
    if (!places) {
        return places.problem();
    }
    demo.places = *places;
    return demo;
}

std::vector<Fact> facts_of(const DemoRoof& demo) {
    std::vector<Fact> facts = {JobStarted{demo.name, "common practice"}};
    for (const Edge& edge : demo.edges) {
        facts.push_back(EdgeAdded{edge});
        if (edge.lap) {
            facts.push_back(LapChosen{edge.id, edge.lap});
        }
    }
    for (const WalkedBody& body : demo.bodies) {
        facts.emplace_back(BodyWalked{body.id, body.sides, body.closed, body.host});
    }
    facts.insert(facts.end(), demo.places.begin(), demo.places.end());
    return facts;
}

}  // namespace hemline
