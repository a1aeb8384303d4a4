#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "engine/handover/readings_file.h"
#include "engine/roof/edge_shape.h"
#include "tests/engine/assets.h"

using namespace hemline;

namespace {

const std::string header = "edge,kind,trim,length,left,right,pitch\n";

Catalogue catalogue() { return Catalogue::read(asset("catalogue/trims.csv")).value(); }

std::vector<EdgeReading> readings_of(const std::string& text, std::optional<BareUnit> bare = {}) {
    const auto read = read_readings(text, catalogue(), bare);
    if (const auto* problem = std::get_if<TableProblem>(&read)) {
        FAIL(problem->what);
    }
    return std::get<std::vector<EdgeReading>>(read);
}

TableProblem problem_of(const std::string& text) {
    const auto read = read_readings(text, catalogue());
    REQUIRE(std::holds_alternative<TableProblem>(read));
    return std::get<TableProblem>(read);
}

bool turns_back(End end) { return end == End::corner_in; }

}  // namespace

TEST_CASE("A row becomes an edge and its first reading") {
    const auto readings = readings_of(header + "A,eave,,46 ft 0 1/4 in,gable,corner_out,5/12\n");
    REQUIRE(readings.size() == 1);
    Edge expected;
    expected.id = "A";
    expected.left = End::gable;
    expected.right = End::corner_out;
    expected.pitch = rise_in_12(5);
    CHECK(readings[0].edge == expected);
    CHECK(readings[0].length == feet(46) + sixteenths(4));
    CHECK(readings[0].line == 2);
}

TEST_CASE("Every optional column is read, in any order, and spaces around a word do not count") {
    const auto readings = readings_of(
        "lap,corner_right,corner_left,pitch2,flange,face,fascia,colour,thickness,metal,seam,looks,"
        "first,"
        "pitch,right,left,length,trim,kind,edge\r\n"
        "8 in,270,90°,7/12,5 in,6 1/2 in,square,slate grey,0.024 "
        "in,steel,mechanical,free,right,22.6deg,"
        "corner_in, corner_out ,\"31' 7 5/8\"\"\",eave_two_part,eave, B 2 \r\n");
    REQUIRE(readings.size() == 1);
    const Edge& edge = readings[0].edge;
    CHECK(edge.lap == inches(8));
    CHECK(edge.id == "B 2");
    CHECK(edge.trim == "eave_two_part");
    CHECK(edge.left == End::corner_out);
    CHECK(edge.right == End::corner_in);
    CHECK(edge.pitch == Slope{SlopeNotation::degrees, 22'600'000});
    CHECK(edge.pitch2 == rise_in_12(7));
    CHECK(edge.first == Side::right);
    CHECK(edge.looks == Looks::free);
    CHECK(edge.seam == Seam::mechanical);
    CHECK(edge.metal == "steel");
    CHECK(edge.colour == "slate grey");
    CHECK(edge.thickness == nanometres(609'600));
    CHECK(edge.fascia == Fascia::square_cut);
    CHECK(edge.face == inches(6) + sixteenths(8));
    CHECK(edge.flange == inches(5));
    CHECK(edge.corner_left == degrees(90));
    CHECK(edge.corner_right == degrees(270));
    CHECK(readings[0].length == feet(31) + inches(7) + sixteenths(10));
}

TEST_CASE("Empty optional cells leave the defaults") {
    const auto readings = readings_of(
        "edge,kind,trim,length,left,right,pitch,first,looks,seam,fascia,face,corner_left\n"
        "A,eave,,10 ft,open,wall,,,,,,,\n");
    Edge expected;
    expected.id = "A";
    expected.right = End::wall;
    CHECK(readings[0].edge == expected);
}

TEST_CASE("A gable or sidewall without a trim has its usual one, over the panels") {
    const auto readings = readings_of(header +
                                      "G,gable,,10 ft,eave,ridge,5/12\n"
                                      "H,gable,gable,10 ft,eave,ridge,5/12\n"
                                      "S,sidewall,,10 ft,eave,wall,5/12\n");
    CHECK(readings[0].edge.trim == "gable_channel");
    CHECK(readings[1].edge.trim == "gable");
    CHECK(readings[2].edge.trim == "sidewall_channel");
}

TEST_CASE("A unit that was said holds for every bare number of the file") {
    const std::string text =
        "edge,kind,trim,length,left,right,pitch,face\n"
        "A,eave,,9 650,open,wall,5/12,90\n";
    CHECK(problem_of(text).what.find("length \"9 650\"") == 0);
    const auto readings = readings_of(text, BareUnit::millimetre);
    CHECK(readings[0].length == millimetres(9650));
    CHECK(readings[0].edge.face == millimetres(90));
}

TEST_CASE("What is wrong in a row is said with line, column, field and mend") {
    struct Row {
        std::string row;
        int column;
        const char* why;
    };
    const std::vector<Row> table = {
        {",eave,,10 ft,open,wall,5/12", 1, "edge is empty"},
        {"A\x01,eave,,10 ft,open,wall,5/12", 1, "edge \"A\\u0001\" holds"},
        {"A\u202E,eave,,10 ft,open,wall,5/12", 1, "edge \"A\\u202E\" holds"},
        {"A,,,10 ft,open,wall,5/12", 3, "kind is empty"},
        {"A,Eave,,10 ft,open,wall,5/12", 3, "kind \"Eave\""},
        {"A,barge,,10 ft,open,wall,5/12", 3, "kind \"barge\""},
        {"A,eave,zigzag,10 ft,open,wall,5/12", 8, "trim \"zigzag\" is not in the catalogue"},
        {"A,eave,cleat,10 ft,open,wall,5/12", 8, "trim \"cleat\" is a cleat"},
        {"A,eave,,,open,wall,5/12", 9, "length is empty"},
        {"A,eave,,379,open,wall,5/12", 9, "length \"379\" does not say which unit"},
        {"A,eave,,0 in,open,wall,5/12", 9, "length \"0 in\" is zero"},
        {"A,eave,,1001 m,open,wall,5/12", 9, "length \"1001 m\" is longer"},
        {"A,eave,,-7 in,open,wall,5/12", 9, "length \"-7 in\" is negative"},
        {"A,eave,,10 furlongs,open,wall,5/12", 9, "length \"10 furlongs\""},
        {"A,eave,,10 ft,,wall,5/12", 15, "left is empty"},
        {"A,eave,,10 ft,corner,wall,5/12", 15, "left \"corner\""},
        {"A,eave,,10 ft,open,ridge,5/12", 20,
         "right \"ridge\" does not stand at an end of an eave"},
        {"A,eave,,10 ft,hip,wall,5/12", 15, "left \"hip\" does not stand at an end of an eave"},
        {"A,eave,,10 ft,open,wall,5", 25, "pitch \"5\""},
        {"A,eave,,10 ft,open,wall,90deg", 25, "pitch \"90deg\""},
    };
    for (const Row& row : table) {
        const TableProblem problem = problem_of(header + "Z,eave,,9 ft,open,open,\n" + row.row);
        CAPTURE(problem.what);
        CHECK(problem.line == 3);
        CHECK(problem.column == row.column);
        CHECK(problem.what.find(row.why) == 0);
        CHECK_FALSE(problem.mend.empty());
    }
}

TEST_CASE("A kind that the catalogue has no trim for is refused, naming those it has") {
    const auto eaves_only = Catalogue::read(
        "id,name,kind,role,panels,flange,face,kick,hem,least,most,seams,source\n"
        "e,eave trim,eave,main,under,4 in,4 in,,,,,snap_lock,invented\n");
    REQUIRE(eaves_only.ok());
    for (const char* kind :
         {"gable", "ridge", "hip", "valley", "sidewall", "headwall", "transition", "high_eave"}) {
        const auto read =
            read_readings(header + "A," + kind + ",,10 ft,open,open,5/12\n", *eaves_only);
        REQUIRE(std::holds_alternative<TableProblem>(read));
        CHECK(std::get<TableProblem>(read).what ==
              "kind \"" + std::string(kind) + "\": the catalogue has trims for eaves only.");
    }
}

TEST_CASE("Every kind is read with each end that it can have, and refused with every other") {
    for (const KindOfEdge& one : kinds_of_edge()) {
        const EdgeKind kind = one.kind;
        if (!has_run(kind)) {
            continue;
        }
        for (const Side side : {Side::left, Side::right}) {
            for (int e = 0; e <= static_cast<int>(End::valley); ++e) {
                const std::string end(word_of(static_cast<End>(e)));
                const std::string row = "A," + std::string(word_of(kind)) + ",,10 ft," +
                                        (side == Side::left ? end + ",open" : "open," + end) +
                                        ",5/12\n";
                CAPTURE(row);
                const auto read = read_readings(header + row, catalogue());
                CHECK(std::holds_alternative<TableProblem>(read) !=
                      can_end_at(kind, side, static_cast<End>(e)));
                if (const auto* problem = std::get_if<TableProblem>(&read)) {
                    CHECK(problem->what.find(std::string(word_of(side)) + " \"" + end +
                                             "\" does not stand at ") == 0);
                    CHECK(problem->mend.find("open") != std::string::npos);
                }
            }
        }
    }
}

TEST_CASE("The foot and the top of a sloped edge have ends of their own") {
    // Common practice, no published source.
    CHECK(problem_of(header + "A,gable,,10 ft,ridge,ridge,5/12\n").what ==
          "left \"ridge\" does not stand at the foot of a gable.");
    CHECK(problem_of(header + "A,hip,,10 ft,eave,eave,5/12\n").what ==
          "right \"eave\" does not stand at the top of a hip.");
    CHECK(problem_of(header + "A,hip,,10 ft,eave,eave,5/12\n").mend ==
          "Write gable, wall, open, ridge, hip or valley.");
}

TEST_CASE("What is wrong in an optional column is said the same way") {
    struct Row {
        const char *column, *value, *why;
    };
    const std::vector<Row> table = {
        {"first", "middle", "first \"middle\""},
        {"looks", "nice", "looks \"nice\""},
        {"seam", "glued", "seam \"glued\""},
        {"fascia", "round", "fascia \"round\""},
        {"face", "3", "face \"3\""},
        {"flange", "0 in", "flange \"0 in\""},
        {"thickness", "26 ga", "thickness \"26 ga\""},
        {"pitch2", "steep", "pitch2 \"steep\""},
        {"corner_left", "one", "corner_left \"one\""},
        {"corner_left", "0", "corner_left \"0\" is no corner"},
        {"corner_left", "180", "corner_left \"180\" is no corner"},
        {"corner_left", "270", "corner_left \"270\" is no outside corner"},
        {"corner_right", "90", "corner_right \"90\" stands where the edge has no corner"},
        {"slope", "5/12", "The column \"slope\" is not known"},
        {"Kind", "eave", "The column \"Kind\" is not known"},
        {"edge", "B", "The column \"edge\" stands there twice"},
    };
    for (const Row& row : table) {
        const TableProblem problem =
            problem_of("edge,kind,trim,length,left,right,pitch," + std::string(row.column) +
                       "\nA,eave,,10 ft,corner_out,wall,5/12," + row.value + "\n");
        CAPTURE(problem.what);
        CHECK(problem.what.find(row.why) == 0);
        CHECK_FALSE(problem.mend.empty());
    }
}

TEST_CASE(
    "A corner has any plan angle that turns its way, a hip and a valley that of their eaves") {
    const auto corner = [](const std::string& kind, const std::string& left,
                           const std::string& angle) {
        const auto read = read_readings("edge,kind,trim,length,left,right,pitch,corner_left\nA," +
                                            kind + ",,10 ft," + left + ",open,5/12," + angle + "\n",
                                        catalogue());
        const auto* readings = std::get_if<std::vector<EdgeReading>>(&read);
        return readings == nullptr ? -degrees(1) : *(*readings)[0].edge.corner_left;
    };
    CHECK(corner("eave", "corner_out", "135") == degrees(135));
    CHECK(corner("eave", "corner_out", "135.25 deg") == microdegrees(135'250'000));
    CHECK(corner("eave", "corner_in", "225") == degrees(225));
    CHECK(corner("eave", "corner_in", "135") == -degrees(1));
    CHECK(corner("hip", "eave", "120") == degrees(120));
    CHECK(corner("hip", "eave", "240") == -degrees(1));
    CHECK(corner("valley", "eave", "240") == degrees(240));
    // Given from outside the building, a valley folds the same.
    CHECK(corner("valley", "eave", "90") == degrees(90));
    CHECK(corner("ridge", "gable", "90") == -degrees(1));
}

TEST_CASE("A column that is missing is named") {
    const TableProblem problem = problem_of("edge,kind,trim,length,left,right\n");
    CHECK(problem.line == 1);
    CHECK(problem.what.find("\"pitch\" is missing") != std::string::npos);
}

TEST_CASE("A repeated edge is refused, naming the line it stands in already") {
    const TableProblem problem = problem_of(header +
                                            "A,eave,,10 ft,open,wall,5/12\n"
                                            "B,eave,,10 ft,open,wall,5/12\n"
                                            "A,eave,,10 ft,open,wall,5/12\n");
    CHECK(problem.line == 4);
    CHECK(problem.column == 1);
    CHECK(problem.what == "edge \"A\" stands already in line 2.");
}

TEST_CASE("A row that lacks a cell is refused at its last one") {
    const TableProblem problem = problem_of(header + "A,eave,,10 ft,open,wall\n");
    CHECK(problem.line == 2);
    CHECK(problem.column == 20);
    CHECK(problem.what == "The row has 6 cells, and the header 7.");
}

TEST_CASE("A file with its header alone holds no edges") { CHECK(readings_of(header).empty()); }

TEST_CASE("Whatever the bytes, a readings file is read or refused with a mend") {
    const Catalogue trims = catalogue();
    CHECK(rc::check([&trims](const std::string& text) {
        for (const std::string& csv :
             {text, header + text, header + "A,eave,," + text + ",open,wall,5/12",
              header + "A,eave,,10 ft,open,wall," + text}) {
            const auto read = read_readings(csv, trims);
            if (const auto* problem = std::get_if<TableProblem>(&read)) {
                RC_ASSERT(!problem->what.empty());
                RC_ASSERT(!problem->mend.empty());
            }
        }
    }));
}

TEST_CASE("The demo's file cut off at any byte is read or refused, and never gains an edge") {
    const Catalogue trims = catalogue();
    const std::string demo = asset("demo/readings.csv");
    for (std::size_t bytes = 0; bytes < demo.size(); ++bytes) {
        const auto read = read_readings(demo.substr(0, bytes), trims);
        if (const auto* readings = std::get_if<std::vector<EdgeReading>>(&read)) {
            CHECK(readings->size() <= 27);
        }
    }
}

TEST_CASE("The demo house has every kind of edge but a curb, and every end, on the tape's marks") {
    const auto readings = readings_of(asset("demo/readings.csv"));
    CHECK(readings.size() == 27);
    for (const EdgeReading& reading : readings) {
        CHECK(reading.edge.pitch.has_value());
        CHECK(nearest_on(reading.length, sixteenths(1)) == reading.length);
    }
    for (int kind = 0; kind <= static_cast<int>(EdgeKind::high_eave); ++kind) {
        CHECK(std::any_of(readings.begin(), readings.end(), [&](const EdgeReading& reading) {
            return reading.edge.kind == static_cast<EdgeKind>(kind);
        }));
    }
    for (int e = 0; e <= static_cast<int>(End::valley); ++e) {
        const auto end = static_cast<End>(e);
        bool found = false;
        for (const EdgeReading& reading : readings) {
            found = found || reading.edge.left == end || reading.edge.right == end;
        }
        CHECK(found);
    }
}

TEST_CASE("The demo's L closes on itself, with the gable that its notes state") {
    // Geometry: walked with the building on the left, a square outside corner turns left, an inside
    // one right, and the way ends where it began. The short wing's gable is between B and C.
    struct Step {
        Length length;
        End end;
    };
    std::vector<Step> steps;
    for (const EdgeReading& reading : readings_of(asset("demo/readings.csv"))) {
        const char name = reading.edge.id[0];
        if (name > 'E') {
            continue;  // the lower roofs stand by themselves
        }
        // At the gable the outline turns as at an outside corner.
        steps.push_back({reading.length, reading.edge.right});
        if (name == 'B') {
            steps.push_back({feet(20) + inches(4), End::corner_out});
        }
    }
    REQUIRE(steps.size() == 6);
    Length x;
    Length y;
    int turns = 0;
    for (const Step& step : steps) {
        const int heading = ((turns % 4) + 4) % 4;
        x += step.length * (heading == 0 ? 1 : heading == 2 ? -1 : 0);
        y += step.length * (heading == 1 ? 1 : heading == 3 ? -1 : 0);
        turns += turns_back(step.end) ? -1 : 1;
    }
    CHECK(turns == 4);
    CHECK(x == Length());
    CHECK(y == Length());
}

TEST_CASE("The demo's sloped edges, ridges and hips follow from its eaves, to the sixteenth") {
    // Geometry of equal pitches, from memory; slope and hip factors: TRADE's framing square, 13.00
    // and 17.69 in a foot at 5 in 12.
    const auto length = [readings = readings_of(asset("demo/readings.csv"))](const char* id) {
        for (const EdgeReading& reading : readings) {
            if (reading.edge.id == id) {
                return static_cast<double>(reading.length.nm()) / 25.4e6;
            }
        }
        FAIL(id);
        return 0.0;
    };
    const auto is = [&](const char* id, double inches) {
        CAPTURE(id);
        CHECK(std::abs(length(id) - inches) <= 1.0 / 32 + 1e-9);
    };
    const double wing = 20 * 12 + 4;
    const double slope = 13.0 / 12;
    const double hip = std::sqrt(1 + slope * slope);
    for (const char* id : {"J", "K"}) {
        is(id, wing / 2 * slope);
    }
    for (const char* id : {"T", "U", "V"}) {
        is(id, length("E") / 2 * hip);
    }
    is("X", wing / 2 * hip);
    is("W", (length("E") - wing) / 2 * hip);
    is("R", length("A") - length("E"));
    is("S", length("B") - length("E") + wing / 2);
}
