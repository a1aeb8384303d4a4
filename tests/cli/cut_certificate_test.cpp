// `cut --certificate`, read by a program that links nothing of the engine.
#include <doctest/doctest.h>

#include <fstream>
#include <random>

#include "tests/certificate/reader.h"
#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

/// One run of `cut` in sixteenths: the pieces asked for, the plan printed, the certificate written.
struct CutShown {
    certificate::Pieces pieces;
    nlohmann::json plan, proof;

    [[nodiscard]] std::string wrong() const {
        std::string all;
        for (const std::string& what : certificate::wrong_with(pieces, proof, plan)) {
            all += what + "; ";
        }
        return all;
    }
};

CutShown cut(const Desk& desk, const std::string& csv, const std::vector<std::string>& stock) {
    const std::string file = desk.write("pieces.csv", csv);
    const std::string proof = (desk.folder() / "proof.json").string();
    std::vector<std::string> words = {"cut",           file,  "--unit", "16ths",
                                      "--certificate", proof, "--json"};
    words.insert(words.end(), stock.begin(), stock.end());
    const Ran ran = desk.run(words);
    CHECK(ran.exit == 0);
    std::ifstream written(proof);
    return {certificate::read_pieces(csv, sixteenth_nm), ran.json(),
            nlohmann::json::parse(written, nullptr, false)};
}

/// Random pieces, lengths of stock, offcuts on hand and kerf.
CutShown cut_by_chance(const Desk& desk, std::mt19937& random) {
    const auto between = [&](int low, int high) {
        return low + static_cast<int>(random() % static_cast<unsigned>(high - low + 1));
    };
    std::string csv = "count,length\n";
    for (int kinds = between(1, 14); kinds > 0; --kinds) {
        csv += std::to_string(between(1, 4)) + ',' + std::to_string(between(5, 120) * 16) + '\n';
    }
    std::vector<std::string> words = {"--stock", "1920"};
    if (between(0, 1) == 1) {
        words.insert(words.end(), {"--stock", std::to_string(between(1000, 2304))});
    }
    for (int offcuts = between(0, 3); offcuts > 0; --offcuts) {
        words.insert(words.end(), {"--have", std::to_string(between(100, 1920)) + "x" +
                                                 std::to_string(between(1, 3))});
    }
    words.insert(words.end(), {"--kerf", std::to_string(between(0, 2))});
    return cut(desk, csv, words);
}

}  // namespace

TEST_CASE("Sixty certificates of jobs by chance hold, read without any of the planner's code" *
          doctest::test_suite("long")) {
    const Desk desk;
    std::mt19937 random(5);
    int proved = 0;
    for (int n = 0; n < 60; ++n) {
        const CutShown shown = cut_by_chance(desk, random);
        CAPTURE(n);
        CHECK(shown.wrong() == "");
        const bool is_proved = shown.plan["proved"];
        proved += is_proved ? 1 : 0;
        CHECK((!is_proved || shown.plan["sticks"] == shown.plan["lower_bound"]));
    }
    CHECK(proved == 60);
}

// 60×3, 40×5, 24×9 from 120, and the same stretched: six, where the metal would fit five.
TEST_CASE("A count that only a search refutes is searched again by the reader") {
    const Desk desk;
    for (const int stretch : {1, 2, 3}) {
        const auto kind = [&](int inches, int count) {
            return std::to_string(inches * stretch) + ',' + std::to_string(count) + '\n';
        };
        const CutShown shown = cut(desk, "length,count\n" + kind(60, 3) + kind(40, 5) + kind(24, 9),
                                   {"--stock", std::to_string(120 * stretch)});
        CHECK(shown.plan["sticks"] == 6);
        CHECK(shown.proof["refuted"] == 1);
        CHECK(shown.wrong() == "");
    }
}

TEST_CASE("With sticks on hand, proved means that sticks and bound count the same") {
    const Desk desk;
    const CutShown shown =
        cut(desk, "length,count\n1600,2\n400,3\n", {"--stock", "1920", "--have", "900x2"});
    CHECK(shown.wrong() == "");
    CHECK(shown.plan["proved"] == true);
    CHECK(shown.plan["new_sticks"] == 2);
    CHECK(shown.plan["new_lower_bound"] == 2);
    CHECK(shown.plan["sticks"] == shown.plan["lower_bound"]);
    CHECK(shown.plan["sticks"] > 2);
}

TEST_CASE("The reader refuses a certificate or a plan that was tampered with") {
    const Desk desk;
    const CutShown good =
        cut(desk, "length,count\n960,3\n640,5\n384,9\n", {"--stock", "1920", "--have", "500x1"});
    REQUIRE(good.wrong() == "");
    const auto refused = [&](auto tamper) {
        CutShown bad = good;
        tamper(bad);
        return bad.wrong() != "";
    };
    CHECK(refused([](CutShown& s) { s.pieces[0].second += 1; }));
    CHECK(refused([](CutShown& s) { s.plan["layouts"].erase(0); }));
    CHECK(refused([](CutShown& s) { s.plan["layouts"][0]["cuts"].push_back(960 * sixteenth_nm); }));
    CHECK(refused([](CutShown& s) { s.plan["layouts"].back()["on_hand"] = true; }));
    CHECK(refused([](CutShown& s) { s.plan["sticks"] = s.plan["sticks"].get<int>() - 1; }));
    CHECK(
        refused([](CutShown& s) { s.proof["share"] = s.proof["share"].get<std::int64_t>() / 2; }));
    CHECK(refused([](CutShown& s) { s.proof["stock"][0]["holds_at_most"] = 1; }));
    CHECK(refused([](CutShown& s) { s.proof["pieces"][0]["worth"] = std::int64_t{1} << 40; }));
    CHECK(refused([](CutShown& s) {
        for (nlohmann::json* said : {&s.plan, &s.proof}) {
            (*said)["lower_bound"] = (*said)["lower_bound"].get<int>() + 1;
            (*said)["new_lower_bound"] = (*said)["new_lower_bound"].get<int>() + 1;
            (*said)["proved"] = false;
        }
        s.proof["refuted"] = s.proof["refuted"].get<int>() + 1;
    }));
    CHECK(refused([](CutShown& s) { s.proof.erase("kerf"); }));
}
