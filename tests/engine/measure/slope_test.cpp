#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <cmath>
#include <string>
#include <vector>

#include "engine/measure/slope.h"
#include "engine/words/result.h"

using namespace hemline;

TEST_CASE("Rises in 12 turn into the degrees and slope factors of the rafter table") {
    // Degrees and common length per foot of run as rafter tables print them to two places. The
    // framing square's readings 13.89, 14.42, 15.00 and 15.62 (7, 8, 9 and 10 in 12) are among
    // them.
    struct Row {
        std::int64_t rise;
        double degrees, common_per_foot;
    };
    const std::vector<Row> table = {
        {2, 9.46, 12.17},   {3, 14.04, 12.37},  {4, 18.43, 12.65},  {5, 22.62, 13.00},
        {6, 26.57, 13.42},  {7, 30.26, 13.89},  {8, 33.69, 14.42},  {9, 36.87, 15.00},
        {10, 39.81, 15.62}, {11, 42.51, 16.28}, {12, 45.00, 16.97}, {18, 56.31, 21.63},
    };
    for (const Row& row : table) {
        CAPTURE(row.rise);
        CHECK(std::abs(degrees_of(rise_in_12(row.rise)) - row.degrees) <= 0.005 + 1e-9);
        CHECK(std::abs(12 * slope_factor_of(rise_in_12(row.rise)) - row.common_per_foot) <=
              0.005 + 1e-9);
    }
}

TEST_CASE("Worked examples of the rafter texts come out") {
    // NAVEDTRA 14044: 7 rise, 16 ft span: 8 x 13.89 = 111.12 in, that is 9 ft 3 1/8 in.
    CHECK(std::abs(8 * 12 * slope_factor_of(rise_in_12(7)) - 111.125) <= 1.0 / 16);
    // US Army EN5156: 8 rise, 20 ft wide: 144.17 in (from a square read to 0.01 in a foot of run).
    CHECK(std::abs(10 * 12 * slope_factor_of(rise_in_12(8)) - 144.17) <= 10 * 0.005 + 0.005);
    // Audel vol. 3: 10 rise, jacks 16 in on center: the length difference is 20.83 in.
    CHECK(std::abs(16 * slope_factor_of(rise_in_12(10)) - 20.83) <= 0.005);
}

TEST_CASE("One slope in three notations is one slope") {
    // 2 % is the 1/4:12 of IBC 2012 §1507.4.2 within its rounding; 25 % is its 3:12 exactly.
    CHECK(rise_in_12_of({SlopeNotation::percent, 25'000'000}) == 3.0);
    CHECK(percent_of(rise_in_12(3)) == doctest::Approx(25));
    CHECK(percent_of({SlopeNotation::degrees, 45'000'000}) == doctest::Approx(100));
    CHECK(degrees_of({SlopeNotation::percent, 100'000'000}) == doctest::Approx(45));
    CHECK(rise_in_12_of({SlopeNotation::degrees, 45'000'000}) == doctest::Approx(12));
    CHECK(percent_of(rise_in_12(5)) == doctest::Approx(41.6667).epsilon(1e-5));
    CHECK(slope_factor_of(rise_in_12(0)) == 1.0);
}

TEST_CASE("Every legal notation of a slope is read exactly") {
    struct Row {
        const char* text;
        SlopeNotation notation;
        std::int64_t millionths;
    };
    const auto rise = SlopeNotation::rise_in_12;
    const auto degrees = SlopeNotation::degrees;
    const auto percent = SlopeNotation::percent;
    const std::vector<Row> table = {
        {"5/12", rise, 5'000'000},
        {"5:12", rise, 5'000'000},
        {"5 in 12", rise, 5'000'000},
        {"5in12", rise, 5'000'000},
        {" 5 / 12 ", rise, 5'000'000},
        {"4 1/2 /12", rise, 4'500'000},
        {"4 1/2/12", rise, 4'500'000},
        {"4-1/2:12", rise, 4'500'000},
        {"4½/12", rise, 4'500'000},
        {"4½ in 12", rise, 4'500'000},
        {"4.5/12", rise, 4'500'000},
        {"1/4:12", rise, 250'000},
        {"1/4 /12", rise, 250'000},
        {"¼:12", rise, 250'000},
        {"1:4", rise, 3'000'000},
        {"1 in 4", rise, 3'000'000},
        {"7:10", rise, 8'400'000},
        {"7:24", rise, 3'500'000},
        {"5:7", rise, 8'571'429},
        {"5-12", rise, 5'000'000},
        {"5 – 12", rise, 5'000'000},
        {"4-1/2-12", rise, 4'500'000},
        {".5/12", rise, 500'000},
        {"5 en 12", rise, 5'000'000},
        {"22.6 grados", degrees, 22'600'000},
        {"41 por ciento", percent, 41'000'000},
        {"0/12", rise, 0},
        {"12/12", rise, 12'000'000},
        {"5⁄12", rise, 5'000'000},
        {"22.6deg", degrees, 22'600'000},
        {"22.6 deg", degrees, 22'600'000},
        {"22.6°", degrees, 22'600'000},
        {"22.6 DEGREES", degrees, 22'600'000},
        {"0deg", degrees, 0},
        {"89.999999deg", degrees, 89'999'999},
        {"41%", percent, 41'000'000},
        {"41.67 %", percent, 41'670'000},
        {"41 percent", percent, 41'000'000},
        {"0.000001%", percent, 1},
    };
    for (const Row& row : table) {
        CAPTURE(row.text);
        const Result<Slope> slope = parse_slope(row.text);
        REQUIRE(slope.ok());
        CHECK(slope->notation == row.notation);
        CHECK(slope->millionths == row.millionths);
    }
}

TEST_CASE("A slope that says no unit, or none that a roof has, is refused at its place") {
    struct Row {
        const char* text;
        int at;
    };
    const std::vector<Row> table = {
        {"", 0},         {"5", 1},           {"22.6", 4},         {"90deg", 0},
        {"90.1°", 0},    {"-5/12", 0},       {"5/0", 2},          {"5/", 2},
        {"/12", 0},      {"5,5/12", 1},      {"deg", 0},          {"%", 0},
        {"41%%", 2},     {"5/12/", 5},       {"4 1/2", 5},        {"5.5.5/12", 3},
        {"5./12", 0},    {"./12", 0},        {"10001/12", 0},     {"9/0.001", 0},
        {"100001%", 0},  {"12345678deg", 0}, {"5.1234567/12", 8}, {"4.5 1/2/12", 0},
        {"4 9/8/12", 2}, {"4 1/3/12", 2},    {"1/3:12", 0},       {"5 inches", 4},
        {"five/12", 0},  {"5/12 roof", 4},   {"5/12\xFF", 4},
    };
    for (const Row& row : table) {
        CAPTURE(row.text);
        const Result<Slope> slope = parse_slope(row.text);
        REQUIRE_FALSE(slope.ok());
        CAPTURE(slope.problem().what);
        CHECK(slope.problem().at == row.at);
        CHECK_FALSE(slope.problem().mend.empty());
    }
}

TEST_CASE("A fraction alone may be a rise in 12 or a rise over a run, and both ways are offered") {
    // A low-slope roofer's 1/4 is 1/4:12, the code's floor (IBC 2012 §1507.4.2), not 3/12.
    struct Row {
        const char* text;
        int at;
        const char* mend;
    };
    const std::vector<Row> table = {
        {"1/4", 2, "Write 1/4:12 for 1/4 in 12, or 1:4 for 1 in 4."},
        {"1/2", 2, "Write 1/2:12 for 1/2 in 12, or 1:2 for 1 in 2."},
        {"½", 0, "Write 1/2:12 for 1/2 in 12, or 1:2 for 1 in 2."},
        {" 1⁄4 ", 5, "Write 1/4:12 for 1/4 in 12, or 1:4 for 1 in 4."},
        {"7/10", 2, "Write 7/10:12 for 7/10 in 12, or 7:10 for 7 in 10."},
    };
    for (const Row& row : table) {
        CAPTURE(row.text);
        const Result<Slope> slope = parse_slope(row.text);
        REQUIRE_FALSE(slope.ok());
        CHECK(slope.problem().at == row.at);
        CHECK(slope.problem().mend == row.mend);
    }
    for (const char* text : {"4 1/2", "4-1/2", "4½"}) {
        CAPTURE(text);
        CHECK(parse_slope(text).problem().what.english().find("does not say whether") !=
              std::string::npos);
    }
}

TEST_CASE("A dash between figures is no minus, and a minus is no dash") {
    CHECK(parse_slope("5-10").problem().what == "\"5-10\" has a dash where none belongs.");
    CHECK(parse_slope("-5/12").problem().what == "\"-5/12\" is negative.");
    CHECK(parse_slope("-12").problem().what == "\"-12\" is negative.");
    CHECK(parse_slope("−5deg").problem().what == "\"−5deg\" is negative.");
}

TEST_CASE("A printed slope is read back as the same slope") {
    CHECK(print_slope(rise_in_12(5)) == "5/12");
    CHECK(print_slope({SlopeNotation::rise_in_12, 4'500'000}) == "4.5/12");
    CHECK(print_slope({SlopeNotation::degrees, 22'600'000}) == "22.6 deg");
    CHECK(print_slope({SlopeNotation::percent, 41'000'000}) == "41 %");
    CHECK(rc::check([]() {
        const auto notation = *rc::gen::element(SlopeNotation::rise_in_12, SlopeNotation::degrees,
                                                SlopeNotation::percent);
        const Slope slope{notation, *rc::gen::inRange<std::int64_t>(0, 90'000'000)};
        const Result<Slope> again = parse_slope(print_slope(slope));
        RC_ASSERT(again.ok());
        RC_ASSERT(*again == slope);
    }));
}

TEST_CASE("Whatever the bytes, reading a slope gives one below 90 degrees or a problem") {
    const auto holds = [](const std::string& text) {
        const Result<Slope> slope = parse_slope(text);
        if (slope.ok()) {
            RC_ASSERT(slope->millionths >= 0);
            RC_ASSERT(degrees_of(*slope) < 90);
        } else {
            RC_ASSERT(slope.problem().at >= 0);
            RC_ASSERT(slope.problem().at <= static_cast<int>(text.size()));
        }
    };
    CHECK(rc::check([&holds](const std::string& text) { holds(text); }));
    CHECK(rc::check([&holds]() {
        const auto bits = *rc::gen::container<std::vector<std::string>>(
            rc::gen::elementOf(std::vector<std::string>{"5", "12", "/", ":", "in", " ", "½", "deg",
                                                        "°", "%", ".", "-", "0", "999999", "⁄"}));
        std::string text;
        for (const std::string& bit : bits) {
            text += bit;
        }
        holds(text);
    }));
}

TEST_CASE("A reading's own error is 1/16 in of rise, a tenth of a degree, or half a percent") {
    // From memory: what a 12 in level, a digital level and a percent scale can show.
    CHECK(reading_error_degrees({SlopeNotation::degrees, 22'600'000}) == 0.1);
    // atan(1/16 / 12) = 0.2984 degrees, on a flat roof.
    CHECK(reading_error_degrees(rise_in_12(0)) == doctest::Approx(0.2984).epsilon(0.001));
    // atan(0.5 / 100) = 0.2865 degrees.
    CHECK(reading_error_degrees({SlopeNotation::percent, 0}) ==
          doctest::Approx(0.2865).epsilon(0.001));
    CHECK(reading_error_degrees(rise_in_12(12)) < reading_error_degrees(rise_in_12(3)));
}
