#include <doctest/doctest.h>

#include <algorithm>

#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

std::vector<double> marks_at(const nlohmann::json& card, const std::string& mark) {
    std::vector<double> inches;
    for (const auto& one : card["marks"]) {
        if (one["mark"] == mark) {
            inches.push_back(static_cast<double>(one["at_nm"].get<std::int64_t>()) /
                             static_cast<double>(inch_nm));
        }
    }
    return inches;
}

}  // namespace

// Common practice, no published source: 1 in tab, 6 in lap, hem notch = lap + 1/8 in.
// Piece 1 of 46 ft between gables is 112 in: 1 in tab, 105 in seen, 6 in lap (by hand).
TEST_CASE(
    "the first piece's card: tab fold at 1 in, lap line at 106 in, hem notch at 105 7/8, cut at "
    "112") {
    const Desk desk;
    const std::string file = desk.write("a.csv", one_eave);
    const Ran ran = desk.run({"card", file, "A", "1", "--json"});
    CHECK(ran.exit == 0);
    const auto card = ran.json();
    CHECK(card["cut_nm"] == 112 * inch_nm);
    CHECK(card["hooks"] == "left");
    CHECK(card["hand"] == "left");
    CHECK(card["pieces"] == 5);
    CHECK(marks_at(card, "tab fold") == std::vector<double>{1});
    CHECK(marks_at(card, "lap line") == std::vector<double>{106});
    CHECK(marks_at(card, "hem notch") == std::vector<double>{105.875});
    REQUIRE(!card["marks"].empty());
    CHECK(card["marks"].back()["at_nm"] == 112 * inch_nm);
    std::int64_t last = 0;
    for (const auto& mark : card["marks"]) {
        CHECK(mark["at_nm"] >= last);
        last = mark["at_nm"];
        CHECK(!mark["deed"].get<std::string>().empty());
    }
}

TEST_CASE("no screw stands in a lap or a tab, and none further than 12 in from the next") {
    const Desk desk;
    const std::string file = desk.write("a.csv", one_eave);
    const auto card = desk.run({"card", file, "A", "2", "--json"}).json();
    const auto screws = card["screws_nm"].get<std::vector<std::int64_t>>();
    REQUIRE(screws.size() >= 2);
    CHECK(screws.front() >= 6 * inch_nm);
    CHECK(screws.back() <= (120 - 6) * inch_nm);
    for (std::size_t i = 0; i + 1 < screws.size(); ++i) {
        CHECK(screws[i + 1] > screws[i]);
        CHECK(screws[i + 1] - screws[i] <= 12 * inch_nm);
    }
}

TEST_CASE("the last piece of a run waits for the reading taken beside its fixed neighbour") {
    const Desk desk;
    const std::string file = desk.write("a.csv", one_eave);
    const auto waits = [&](const char* piece) {
        return desk.run({"card", file, "A", piece, "--json"})
            .json()["waits_for"]
            .get<std::string>();
    };
    CHECK(waits("1").empty());
    CHECK(!waits("5").empty());
    CHECK(desk.run({"card", file, "A", "5"}).out.find("Wait: ") != std::string::npos);
}

TEST_CASE("a card and the plan of the same file agree on cut, stick and place") {
    const Desk desk;
    const std::string file =
        desk.write("a.csv", one_eave + "B,eave,,31 ft 7 5/8 in,wall,corner_out,5/12\n");
    const auto plan = desk.run({"plan", file, "--json"}).json();
    for (const auto& run : plan["edges"]) {
        for (const auto& piece : run["pieces"]) {
            const auto card = desk.run({"card", file, run["edge"].get<std::string>(),
                                        std::to_string(piece["piece"].get<int>()), "--json"})
                                  .json();
            for (const char* key : {"cut_nm", "cut", "covers_nm", "stick", "from_nm"}) {
                CHECK_MESSAGE(card[key] == piece[key], key);
            }
        }
    }
}

TEST_CASE("--trim chooses the run: cleat and wrap by their ids") {
    const Desk desk;
    const std::string file = desk.write("a.csv", one_eave);
    const auto cleat = desk.run({"card", file, "A", "1", "--trim", "cleat", "--json"}).json();
    CHECK(cleat["trim"] == "cleat");
    CHECK(cleat["lap_nm"] == 0);
    const auto wrap = desk.run({"card", file, "A", "1", "--trim", "fascia_wrap", "--json"}).json();
    CHECK(wrap["trim"] == "fascia_wrap");
    CHECK(desk.run({"card", file, "A", "1", "--trim", "eave_rolled", "--json"}).json()["cut_nm"] ==
          112 * inch_nm);
}

TEST_CASE("the printed card says which end is hooked, the waste side and the caution") {
    const Desk desk;
    const Ran ran = desk.run({"card", desk.write("a.csv", one_eave), "A", "1"});
    CHECK(ran.exit == 0);
    for (const char* words :
         {"Edge A, piece 1 of 5", "Cut 9 ft 4 in", "Hook the tape on the left end", "tab fold",
          "waste to the", "screws at", "gloves"}) {
        CHECK_MESSAGE(ran.out.find(words) != std::string::npos, words, ran.out);
    }
}

TEST_CASE("a line to fold, seal or see by is never called a cut") {
    const Desk desk;
    const auto card = desk.run({"card", desk.write("a.csv", one_eave), "A", "1", "--json"}).json();
    for (const auto& mark : card["marks"]) {
        const std::string name = mark["mark"];
        CHECK(mark["cuts"] == (name != "lap line" && name != "bead line" && name != "tab fold"));
    }
}

TEST_CASE("the card of a trim that does not suit the pitch says so before the cut") {
    const Desk desk;
    const std::string steep = desk.write("a.csv",
                                         "edge,kind,trim,length,left,right,pitch\n"
                                         "A,eave,eave_rolled,46 ft,gable,gable,9/12\n");
    CHECK(desk.run({"card", steep, "A", "1"}).out.rfind("problem: ", 0) == 0);
    CHECK(desk.run({"card", steep, "A", "1", "--json"}).json()["problems"].size() == 1);
}

TEST_CASE("an edge, piece or trim that is not there is exit 1 and names the ones that are") {
    const Desk desk;
    const std::string file = desk.write("a.csv", one_eave);
    const auto refused = [&](std::vector<std::string> words, const std::string& names) {
        const Ran ran = desk.run(words);
        CHECK(ran.exit == 1);
        CHECK(ran.out.empty());
        CHECK_MESSAGE(ran.err.find(names) != std::string::npos, ran.err);
    };
    refused({"card", file, "Z", "1"}, "A");
    refused({"card", file, "A", "6"}, "5");
    refused({"card", file, "A", "0"}, "5");
    refused({"card", file, "A", "1", "--trim", "eave_gilded"}, "eave_rolled");
    CHECK(desk.run({"card", file, "A", "one"}).exit == 2);
    CHECK(desk.run({"card", file, "A", "99999999999999999999"}).exit == 2);
    CHECK(desk.run({"card", file, "A"}).exit == 2);
}
