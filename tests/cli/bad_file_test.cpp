// Readings files that cannot be read: each named by line, column, what is wrong and what to do.
#include <doctest/doctest.h>

#include <algorithm>
#include <random>

#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

/// Exit 1, nothing on stdout, and `FILE:LINE:COLUMN: what` above what to do on stderr.
void check_refused(const Ran& ran, const std::string& at, const std::string& names) {
    CHECK_MESSAGE(ran.exit == 1, ran.err);
    CHECK(ran.out.empty());
    CHECK_MESSAGE(ran.err.rfind(at, 0) == 0, ran.err);
    CHECK_MESSAGE(ran.err.find(names) != std::string::npos, ran.err);
    CHECK(std::count(ran.err.begin(), ran.err.end(), '\n') == 2);
}

}  // namespace

TEST_CASE("an illegal field is named by its line and column") {
    const Desk desk;
    const auto refused = [&](const std::string& text, const std::string& at,
                             const std::string& names) {
        const std::string file = desk.write("roof.csv", text);
        check_refused(desk.run({"plan", file}), file + ':' + at + ": ", names);
        check_refused(desk.run({"plan", file, "--json"}), file + ':' + at + ": ", names);
    };
    refused(readings_header + "A,eave,,46 ft,gable,gable,5/12\nB,eave,,46 ft,gabel,gable,5/12\n",
            "3:15", "gabel");
    refused(readings_header + "A,eaves,,46 ft,gable,gable,5/12\n", "2:3", "eaves");
    refused(readings_header + "A,eave,eave_gilded,46 ft,gable,gable,5/12\n", "2:8", "eave_gilded");
    refused(readings_header + "A,eave,,46 ft,gable,gable,5\n", "2:27", "5");
    refused(readings_header + "A,eave,,46 ft,open,open,5/12\nA,eave,,40 ft,open,open,5/12\n", "3:1",
            "A");
    refused("edge,kind,trim,length,left,right,pitch,tilt\nA,eave,,46 ft,open,open,5/12,1\n", "1:40",
            "tilt");
}

TEST_CASE("a length that can be read two ways is refused where it stands") {
    const Desk desk;
    for (const char* length : {"9 650", "379", "31-7", "7 9/8 in", "-7 in", "31' 12\"\"", "0 in",
                               "2 km", "1001 m", "", "abc", "9 m 65 cm"}) {
        const std::string file =
            desk.write("roof.csv", readings_header + "A,eave,,\"" + length + "\",open,open,5/12\n");
        const Ran ran = desk.run({"plan", file});
        CHECK_MESSAGE(ran.exit == 1, length);
        CHECK_MESSAGE(ran.err.rfind(file + ":2:", 0) == 0, ran.err);
    }
    const std::string legal =
        desk.write("roof.csv", readings_header + "A,eave,,9 650 mm,open,open,5/12\n");
    CHECK(desk.run({"plan", legal}).exit == 0);
}

TEST_CASE("a file that is no table, no file or too large is refused, never a crash") {
    const Desk desk;
    for (const std::string& name :
         {std::string("/dev/null"), desk.folder().string(), std::string("/nowhere/roof.csv"),
          std::string("/dev/zero"), std::string("")}) {
        const Ran ran = desk.run({"plan", name});
        CHECK_MESSAGE(ran.exit == 1, name, ran.err);
        CHECK_MESSAGE(ran.err.rfind(name + ':', 0) == 0, ran.err);
        CHECK(ran.out.empty());
    }
    std::string large = readings_header;
    while (large.size() <= std::size_t{1} << 20U) {
        large += "A" + std::to_string(large.size()) + ",eave,,46 ft,open,open,5/12\n";
    }
    const Ran ran = desk.run({"plan", desk.write("large.csv", large)});
    CHECK(ran.exit == 1);
    CHECK(ran.err.find("1 MiB") != std::string::npos);
    for (const std::string& text :
         {std::string("\n\n\n"), std::string("\"edge"), readings_header + "A\n",
          readings_header + "A,eave\x01\xFF,,1 ft,open,open,5/12\n",
          std::string("edge,edge\nA,B\n"), std::string(readings_header.size(), '\0'),
          std::string("edge,kind\nA,eave\n")}) {
        const Ran odd = desk.run({"plan", desk.write("odd.csv", text)});
        CHECK_MESSAGE(odd.exit == 1, text);
        CHECK(!odd.err.empty());
    }
}

TEST_CASE(
    "edges longer together than any roof are refused before memory is spent on their pieces") {
    const Desk desk;
    std::string rows = readings_header;
    for (int i = 0; i < 101; ++i) {
        rows += "A" + std::to_string(i) + ",eave,,1000 m,open,open,5/12\n";
    }
    const std::string file = desk.write("long.csv", rows);
    check_refused(desk.run({"plan", file, "--json"}), file + ":102:1: ", "100 km");
}

TEST_CASE("random bytes and mutilated files end in 0 or 1, never in a crash") {
    const Desk desk;
    std::mt19937 chance(20260504);
    const std::string good =
        "edge,kind,trim,length,left,right,pitch,metal,colour\n"
        "A1,eave,,46 ft 0 1/4 in,gable,corner_out,5/12,galvanized steel,a grey of our own\n"
        "B1,eave,eave_two_part,9 650 mm,wall,open,22.6deg,galvanized steel,a grey of our own\n"
        "C1,eave,,\"31' 7 5/8\"\"\",corner_in,gable,41%,galvanized steel,a grey of our own\n";
    int read = 0;
    for (int round = 0; round < 150; ++round) {
        std::string text = good;
        if (round % 3 == 0) {
            text = std::string(chance() % 400, ' ');
            std::generate(text.begin(), text.end(),
                          [&] { return static_cast<char>(chance() & 0xFFU); });
        }
        for (int i = 0; i < 1 + round % 5 && !text.empty(); ++i) {
            text[chance() % text.size()] = static_cast<char>(chance() & 0xFFU);
        }
        const Ran ran =
            desk.run({"plan", desk.write("odd.csv", text), "--json", "--cleat", "--wrap"});
        CHECK_MESSAGE((ran.exit == 0 || ran.exit == 1), text, ran.err);
        CHECK((ran.exit == 0) == ran.err.empty());
        read += ran.exit == 0 ? 1 : 0;
    }
    CHECK(read > 0);  // a changed letter of a colour is still a legal file
}
