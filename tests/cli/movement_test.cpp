#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

Ran moved(const Desk& desk, const std::vector<std::string>& words) {
    std::vector<std::string> all = {"movement"};
    all.insert(all.end(), words.begin(), words.end());
    return desk.run(all);
}

}  // namespace

TEST_CASE("movement gives shrink, grow, gap, hem, lip and joints in nanometers") {
    // Worked by hand: 6.7e-6 · 480 in · 80 °F, and · 120 °F.
    const Desk desk;
    const auto json = fine(moved(desk, {"--metal", "steel", "--length", "40 ft", "--at", "60F",
                                        "--low", "-20F", "--high", "180F", "--json"}))
                          .json();
    CHECK(json["shrink_nm"] == 6'534'912);
    CHECK(json["grow_nm"] == 9'802'368);
    CHECK(json["gap_nm"] == 6 * sixteenth_nm);
    CHECK(json["hem_nm"] == 19 * sixteenth_nm);
    CHECK(json["lip_nm"] == 18 * sixteenth_nm);
    CHECK(json["joints"].is_null());
    CHECK(has(json["problems"][0]["what"].get<std::string>(), "No public figure"));
}

TEST_CASE("movement knows both spellings of aluminum, F and C") {
    const Desk desk;
    const auto f = moved(desk, {"--metal", "aluminum", "--length", "30 ft", "--at", "50F", "--low",
                                "-4F", "--high", "176F", "--json"});
    const auto c = moved(desk, {"--metal", "aluminium", "--length", "30 ft", "--at", "10C", "--low",
                                "-20C", "--high", "80C", "--json"});
    CHECK(fine(f).json() == fine(c).json());
    CHECK(f.json()["joints"] == 0);
}

TEST_CASE("movement counts the joints of a run whose hem would be too wide to bend") {
    const Desk desk;
    const auto json = fine(moved(desk, {"--metal", "copper", "--length", "105 ft", "--at", "60F",
                                        "--low", "0F", "--high", "180F", "--json"}))
                          .json();
    CHECK(json["joints"] == 3);
    CHECK(json["segment_nm"] == 315 * inch_nm);
    CHECK(json["joint_gap_nm"] == 6 * sixteenth_nm);
    CHECK(json["hem_nm"].is_null());
    CHECK(has(json["problems"][0]["what"].get<std::string>(), "The hem would be"));
}

TEST_CASE("movement of a panel pinned at the eave: room above its end; a lip and a clip judged") {
    const Desk desk;
    const Ran eave = fine(moved(desk, {"--metal", "steel", "--length", "40 ft", "--at", "60 F",
                                       "--low", "-20 F", "--high", "180 F", "--fixed", "eave"}));
    CHECK(has(eave.out, "leave 15/16 in above its end"));
    const Ran tight =
        fine(moved(desk, {"--metal", "steel", "--length", "40 ft", "--at", "60", "--low", "-20",
                          "--high", "180", "--lip", "3/4 in", "--travel", "5/8 in"}));
    CHECK(has(tight.out, "In the cold the hem jams on a lip of 3/4 in. Bend the lip 1 1/8 in"));
    CHECK(has(tight.out, "There the panel moves 21/32 in, and the clip only 5/8 in."));
}

TEST_CASE("movement says which option is wrong, and how to mend it") {
    const Desk desk;
    const auto refused = [&](const std::string& metal, const std::string& length,
                             const std::string& at) {
        const Ran ran = moved(desk, {"--metal", metal, "--length", length, "--at", at, "--low",
                                     "-20F", "--high", "180F"});
        CHECK(ran.exit == 1);
        CHECK(ran.out.empty());
        return ran.err;
    };
    CHECK(has(refused("tin", "40 ft", "60F"), "--metal"));
    CHECK(has(refused("steel", "40", "60F"), "--length"));
    CHECK(has(refused("steel", "0 ft", "60F"), "--length"));
    CHECK(has(refused("steel", "40 ft", "warm"), "--at"));
    CHECK(has(refused("steel", "40 ft", "200F"), "not between -20 F and 180 F"));
    CHECK(moved(desk, {"--metal", "steel"}).exit == 2);
}
