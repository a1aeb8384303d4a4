#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

bool serves(const nlohmann::json& pitch, const std::string& trim) {
    const auto& list = pitch["serves"];
    return std::find(list.begin(), list.end(), trim) != list.end();
}

std::string reason(const nlohmann::json& pitch, const std::string& trim) {
    for (const auto& refusal : pitch["refused"]) {
        if (refusal["id"] == trim) {
            return refusal["reason"];
        }
    }
    return "";
}

}  // namespace

// Degrees and common length per foot of run: rafter table of a framing square (13.89 at 7, 14.42 at
// 8, 15.00 at 9 rise).
TEST_CASE("slope factor times twelve is the common length on a framing square") {
    const Desk desk;
    const auto per_foot = [&](const std::string& pitch) {
        const auto json = desk.run({"pitch", pitch, "--json"}).json();
        return std::round(json["slope_factor"].get<double>() * 1200) / 100;
    };
    CHECK(per_foot("7/12") == 13.89);
    CHECK(per_foot("8/12") == 14.42);
    CHECK(per_foot("9/12") == 15.00);
}

TEST_CASE("fold angles are said both ways: included on the metal, bend on the brake") {
    const Desk desk;  // computed: θ = atan(7/12) = 30.26°
    const auto json = desk.run({"pitch", "7/12", "--json"}).json();
    CHECK(json["degrees"].get<double>() == doctest::Approx(30.256).epsilon(0.0001));
    CHECK(json["percent"].get<double>() == doctest::Approx(58.333).epsilon(0.0001));
    CHECK(json["fold_plumb_deg"].get<double>() == doctest::Approx(120.256).epsilon(0.0001));
    CHECK(json["bend_plumb_deg"].get<double>() == doctest::Approx(59.744).epsilon(0.0001));
    CHECK(json["fold_square_deg"].get<double>() == 90);
    CHECK(json["bend_square_deg"].get<double>() == 90);
}

// Common practice, no published source: a rolled drip edge serves up to 6/12.
TEST_CASE(
    "the rolled eave trim serves 6/12, and at 9/12 is refused with a reason while another serves") {
    const Desk desk;
    CHECK(serves(desk.run({"pitch", "6/12", "--json"}).json(), "eave_rolled"));
    const Ran steep = desk.run({"pitch", "9/12", "--trim", "eave_rolled", "--json"});
    CHECK(steep.exit == 0);
    CHECK(!serves(steep.json(), "eave_rolled"));
    CHECK(!reason(steep.json(), "eave_rolled").empty());
    CHECK(serves(steep.json(), "eave_two_part"));
    const Ran text = desk.run({"pitch", "9/12", "--trim", "eave_rolled"});
    CHECK(text.out.find("eave_rolled does not serve") != std::string::npos);
    CHECK(text.out.find("eave_two_part") != std::string::npos);
}

// Geometry: a gable's face hangs square to its flange at any pitch; a ridge bends by both slopes.
TEST_CASE("a trim that is named is told its own fold, not an eave's") {
    const Desk desk;
    CHECK(desk.run({"pitch", "4/12", "--trim", "gable", "--json"}).json()["bend_deg"] == 90);
    const double ridge =
        desk.run({"pitch", "4/12", "--trim", "ridge_cap", "--json"}).json()["bend_deg"];
    CHECK(ridge == doctest::Approx(2 * 18.434949).epsilon(1e-7));
    const std::string text = desk.run({"pitch", "4/12", "--trim", "gable"}).out;
    CHECK(text.find("Fold of gable: 90.00 deg") != std::string::npos);
    CHECK(text.find("71.57") == std::string::npos);
}

// Common practice: the rolled drip edge takes snap-lock panels, not mechanically seamed ones.
TEST_CASE("the seam decides too") {
    const Desk desk;
    CHECK(
        serves(desk.run({"pitch", "5/12", "--seam", "snap_lock", "--json"}).json(), "eave_rolled"));
    CHECK(!serves(desk.run({"pitch", "5/12", "--seam", "mechanical", "--json"}).json(),
                  "eave_rolled"));
}

// IBC 2012 §1507.4.2: standing seam at least 1/4 in 12.
TEST_CASE("under the least slope of the code nothing serves") {
    const Desk desk;
    CHECK(desk.run({"pitch", "0.1/12", "--json"}).json()["serves"].empty());
}

TEST_CASE("a reading within its own error of a limit asks to be taken again") {
    const Desk desk;
    const auto near = desk.run({"pitch", "26.6deg", "--json"}).json();  // 6/12 is 26.57°
    CHECK(!near["measure_again"].get<std::string>().empty());
    CHECK(desk.run({"pitch", "22deg", "--json"}).json()["measure_again"] == "");
}

TEST_CASE(
    "what is no pitch is refused at its column with a mend; an unknown trim names those there "
    "are") {
    const Desk desk;
    for (const char* text : {"7", "", "x/12", "7/0", "-3/12", "90deg", "1e9/12", "7/12/3"}) {
        const Ran ran = desk.run({"pitch", "--", text});
        CHECK_MESSAGE(ran.exit == 1, text);
        CHECK(ran.out.empty());
        CHECK_MESSAGE(ran.err.rfind("PITCH:1:", 0) == 0, ran.err);
        CHECK(std::count(ran.err.begin(), ran.err.end(), '\n') == 2);
    }
    const Ran ran = desk.run({"pitch", "5/12", "--trim", "eave_gilded"});
    CHECK(ran.exit == 1);
    CHECK(ran.err.find("eave_gilded") != std::string::npos);
    CHECK(ran.err.find("eave_two_part") != std::string::npos);
}

// By hand: 12 ft of run at 6/12 is 12 × 1.11803 = 13 ft 5 in; 13 ft 11 in implies acos(144/167).
TEST_CASE("pitch holds a gable's slope length against its run") {
    const Desk desk;
    const auto asked = [&](const std::string& slope) {
        return desk.run({"pitch", "6/12", "--slope", slope, "--run", "12 ft", "--json"}).json();
    };
    CHECK(asked("13 ft 5 in")["gable_holds"] == true);
    const auto wrong = asked("13 ft 11 in");
    CHECK(wrong["gable_holds"] == false);
    CHECK(std::abs(wrong["implied_pitch_deg"].get<double>() - 30.42) <= 0.01);
    const auto text = desk.run({"pitch", "6/12", "--slope", "13 ft 11 in", "--run", "12 ft"}).out;
    CHECK(text.find("longer than run and pitch give") != std::string::npos);
    CHECK(text.find("read again") != std::string::npos);
    CHECK(asked("11 ft")["implied_pitch_deg"].is_null());
    CHECK(desk.run({"pitch", "6/12", "--slope", "13 ft"}).exit == 2);
}
