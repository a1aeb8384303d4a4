// How the certificate reader reads lengths; it shares no code with the engine.
#include <doctest/doctest.h>

#include <stdexcept>

#include "tests/certificate/joint_file.h"
#include "tests/certificate/length.h"
#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

std::int64_t read(const std::string& text, std::int64_t bare = sixteenth_nm) {
    return certificate::length_nm({text, 1, 1}, bare);
}

std::string refusal(const std::string& csv) {
    try {
        (void)certificate::read_readings(csv, sixteenth_nm);
    } catch (const std::runtime_error& problem) {
        return problem.what();
    }
    return "";
}

/// 31 ft 7 5/8 in.
constexpr std::int64_t reading = 379 * inch_nm + 10 * sixteenth_nm;

}  // namespace

TEST_CASE("The reader knows the trade's notations of a length") {
    for (const char* text : {"31' 7 5/8\"", "31' 7-5/8", "31-7-5/8", "31-7 5/8", "31 ft 7.625 in",
                             "31ft 7 5/8in", "31'-7 5/8\"", "31′ 7 5⁄8″", "31' 7⅝''", "379 5/8 in",
                             "31 FT. 7 5/8 IN.", "6074", "379.625 inches", "31 feet 7 10/16 inches",
                             "9642.475 mm", "9 642.475 mm", "9.642475 m", "964.2475cm"}) {
        CAPTURE(text);
        CHECK(read(text) == reading);
    }
    CHECK(read("46 ft 0 1/4 in") == 552 * inch_nm + inch_nm / 4);
    CHECK(read("9 650 mm") == 9'650'000'000);
    CHECK(read("31' 7") == 379 * inch_nm);
    CHECK(read("31.5 ft") == 378 * inch_nm);
    CHECK(read("31 1/2 ft") == 378 * inch_nm);
    CHECK(read("31½ pies") == 378 * inch_nm);
    CHECK(read("31 pies 6 pulgadas") == 378 * inch_nm);
    CHECK(read(".5 ft") == 6 * inch_nm);
    CHECK(read("965 centímetros") == 9'650'000'000);
    CHECK(read("9.65 metros") == 9'650'000'000);
    CHECK(read("7-5/8\"") == 122 * sixteenth_nm);
    CHECK(read("½ in") == inch_nm / 2);
    CHECK(read("7 ½", inch_nm) == 15 * inch_nm / 2);
    CHECK(read("9 650", 1'000'000) == 9'650'000'000);
}

TEST_CASE("A length that can be read two ways, or not at all, is refused") {
    for (const char* text : {"",
                             "9 650",
                             "9,65 m",
                             "31' 12\"",
                             "31-7",
                             "7 5/10 in",
                             "7 9/8 in",
                             "7 0/0 in",
                             "-7 in",
                             "31.5' 3\"",
                             "9 m 65 cm",
                             "7.1234567 in",
                             "2 km",
                             "1001 m",
                             "31 7",
                             "379 5/8",
                             "7 in 3",
                             "31 ft .5 in",
                             "31 ft.5 in",
                             "5/10 ft",
                             "1 200 ft",
                             "31 1/2 ft 3 in",
                             "7 5/8 mm",
                             "1 2345 mm",
                             "7..5 in",
                             "' 7",
                             "7 in in",
                             "99999999999999999999 mm",
                             "31 ft 7 5/8 in é"}) {
        CAPTURE(text);
        CHECK_THROWS_AS((void)read(text), std::runtime_error);
    }
}

TEST_CASE("A refusal names line and column, and cells in quotes hold inch marks and commas") {
    CHECK(refusal("edge,length\nA,1\nB,\"9,65 m\"\n") == "3:3: 9,65 m: no notation of a length");
    CHECK(refusal("edge,length\nA,31' 7\"\n") ==
          "2:3: 31' 7: a quote inside a cell that is not in quotes");
    CHECK(refusal("edge,length\n\"A\nB\",x\n").substr(0, 5) == "3:4: ");
    CHECK(refusal("edge,length\nA\n") == "2:1: A: a line not as long as the header");
    CHECK(refusal("edge,length\nA,\"1\n") == "2:3: 1\n: the quote does not end");
    const auto readings = certificate::read_readings(
        "\xEF\xBB\xBF"
        "edge,length\r\n\"A, \"\"low\"\"\",\"31' 7 5/8\"\"\"\r\n\r\nB,1\r\n",
        sixteenth_nm);
    REQUIRE(readings.size() == 2);
    CHECK(readings[0].edge == "A, \"low\"");
    CHECK(readings[0].length == reading);
    CHECK(readings[1].length == sixteenth_nm);
}
