// `cut`, and `plan` by preference, asked from outside.
#include <doctest/doctest.h>

#include <algorithm>
#include <fstream>

#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

using Row = std::vector<std::int64_t>;

/// The choices of a plan as extra laps, unbalanced edges, sticks.
std::vector<Row> choices_of(const nlohmann::json& plan) {
    std::vector<Row> rows;
    for (const auto& choice : plan["choices"]) {
        CHECK(choice["proved"] == true);
        CHECK(choice["lower_bound"] == choice["sticks"]);
        rows.push_back({choice["extra_laps"], choice["unbalanced"], choice["sticks"]});
    }
    std::sort(rows.begin(), rows.end());
    return rows;
}

void check_layouts(const nlohmann::json& plan, std::int64_t kerf) {
    std::int64_t times = 0;
    for (const auto& layout : plan["layouts"]) {
        std::int64_t used = -kerf;
        for (const auto& cut : layout["cuts"]) {
            used += cut.get<std::int64_t>() + kerf;
        }
        CHECK(used <= layout["stock"].get<std::int64_t>());
        times += layout["times"].get<std::int64_t>();
    }
    CHECK(times == plan["sticks"].get<std::int64_t>());
}

}  // namespace

// Pieces 60×3, 40×5, 24×9 from 120: five sticks hold the metal, and no five hold the pieces; proved
// by hand in docs/cutting.md.
TEST_CASE("cut finds six sticks where the metal would fit five, and proves it") {
    const Desk desk;
    const std::string file = desk.write("p.csv", "length,count\n60 in,3\n40 in,5\n24 in,9\n");
    const std::string proof = (desk.folder() / "proof.json").string();
    const Ran ran = desk.run({"cut", file, "--stock", "10 ft", "--certificate", proof, "--json"});
    CHECK(ran.exit == 0);
    const auto plan = ran.json();
    CHECK(plan["sticks"] == 6);
    CHECK(plan["lower_bound"] == 6);
    CHECK(plan["proved"] == true);
    check_layouts(plan, 0);
    std::ifstream written(proof);
    const auto certificate = nlohmann::json::parse(written);
    CHECK(certificate["bound_by_worths"].get<int>() + certificate["refuted"].get<int>() == 6);
    CHECK(certificate["pieces"].size() == 3);
    CHECK(ran.out == desk.run({"cut", file, "--stock", "10 ft", "--json"}).out);
}

TEST_CASE("--unit holds for pieces, stock, what is on hand and kerf alike") {
    const Desk desk;
    const std::string file = desk.write("p.csv", "count,length\n2,1000\n1,900\n");
    const auto plan = desk.run({"cut", file, "--unit", "mm", "--stock", "2000", "--stock", "2003",
                                "--have", "950×1", "--kerf", "3", "--json"})
                          .json();
    CHECK(plan["new_sticks"] == 1);
    CHECK(plan["sticks"] == 2);
    check_layouts(plan, 3'000'000);
    CHECK(plan["layouts"][0]["on_hand"] == true);
}

TEST_CASE("A piece longer than every stick is missing, and nothing is called proved") {
    const Desk desk;
    const std::string file = desk.write("p.csv", "length,count\n11 ft,2\n5 ft,1\n");
    const auto plan = desk.run({"cut", file, "--stock", "10 ft", "--json"}).json();
    CHECK(plan["proved"] == false);
    CHECK(plan["missing"][0]["count"] == 2);
    CHECK(plan["sticks"] == 1);
}

TEST_CASE("cut says where its input is wrong and how to mend it") {
    const Desk desk;
    const auto refused = [&](const std::string& text, std::vector<std::string> more) {
        std::vector<std::string> words = {"cut", desk.write("p.csv", text)};
        words.insert(words.end(), more.begin(), more.end());
        const Ran ran = desk.run(words);
        CHECK(ran.out.empty());
        return std::to_string(ran.exit) + ' ' + ran.err.substr(0, ran.err.find('\n'));
    };
    const std::string good = "length,count\n5 ft,1\n";
    const std::vector<std::string> stock = {"--stock", "10 ft"};
    CHECK(refused("length,count\n5 ft,none\n", stock).find("p.csv:2:6: count") !=
          std::string::npos);
    CHECK(refused("length,count\n5,1\n", stock).find("p.csv:2:1: length") != std::string::npos);
    CHECK(refused("length\n5 ft\n", stock).find("p.csv:1:1: There is no") != std::string::npos);
    CHECK(refused("length,count,x\n5 ft,1,\n", stock).find("p.csv:1:14:") != std::string::npos);
    CHECK(refused(good, {"--stock", "10"}).substr(0, 2) == "1 ");
    CHECK(refused(good, {"--stock", "10 ft", "--have", "3 ft×0"}).substr(0, 2) == "1 ");
    CHECK(refused(good, {"--stock", "10 ft", "--kerf", "-1 in"}).substr(0, 2) == "1 ");
    CHECK(refused(good, {}).substr(0, 2) == "2 ");
    CHECK(refused(good, {"--stock", "10 ft", "--time", "-1"}).substr(0, 2) == "2 ");
}

// Two edges of 160 in, T = 162: four sticks balanced, three when both run out or with one lap more.
TEST_CASE("plan --prefer takes what counts first, and prints the choices") {
    const Desk desk;
    const std::string header = "edge,kind,trim,length,left,right,pitch,looks\n";
    const auto file_of = [&](const std::string& looks) {
        std::string rows = header;
        for (const char* edge : {"A", "B"}) {
            rows += std::string(edge) + ",eave,,160 in,gable,gable,5/12," + looks + "\n";
        }
        return desk.write("r.csv", rows);
    };
    const auto plan_of = [&](const std::string& looks, const std::string& prefer) {
        return desk.run({"plan", file_of(looks), "--prefer", prefer, "--json"}).json();
    };
    const std::vector<Row> even = {{0, 0, 4}, {1, 0, 3}};
    const std::vector<Row> all = {{0, 0, 4}, {0, 2, 3}, {1, 0, 3}};
    CHECK(choices_of(plan_of("", "looks")) == even);
    CHECK(choices_of(plan_of("", "laps")) == even);
    CHECK(choices_of(plan_of("", "sticks")) == all);
    CHECK(choices_of(plan_of("balanced", "sticks")) == even);
    CHECK(choices_of(plan_of("free", "looks")) == all);
    CHECK(plan_of("free", "looks")["proof"][0]["sticks"] == 4);
    CHECK(plan_of("", "sticks")["proof"][0]["sticks"] == 3);
    CHECK(plan_of("", "sticks")["edges"][0]["pieces"].size() == 2);
    CHECK(plan_of("balanced", "sticks")["edges"].size() == 2);
    CHECK(desk.run({"plan", file_of(""), "--prefer", "sticks", "--style", "full"}).exit == 2);
    CHECK(desk.run({"plan", file_of(""), "--prefer", "metal"}).exit == 2);
}
