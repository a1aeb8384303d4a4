#include "engine/handover/dxf.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <string>

#include "tests/engine/handover/count.h"

using namespace hemline;

namespace {

#ifndef __EMSCRIPTEN__
/// What ezdxf, a reader of others', finds in the drawing (tests/cli/read_drawings.py).
nlohmann::json read_back(const Drawing& drawing) {
    const std::string path = (std::filesystem::temp_directory_path() /
                              ("hemline_" + std::to_string(std::rand()) + ".dxf"))
                                 .string();
    std::ofstream(path, std::ios::binary) << dxf_of(drawing);
    const std::string command = "/usr/bin/python3 '" + std::string(std::getenv("HEMLINE_SOURCE")) +
                                "/tests/cli/read_drawings.py' dxf " + path;
    FILE* pipe = popen(command.c_str(), "r");
    REQUIRE(pipe != nullptr);
    std::string text(1 << 16, '\0');
    text.resize(std::fread(text.data(), 1, text.size(), pipe));
    CHECK(pclose(pipe) == 0);
    std::filesystem::remove(path);
    return nlohmann::json::parse(text);
}
#endif

}  // namespace

// The format's published reference, from memory: carets stand for control characters, \U+ and four
// hexadecimal digits for a letter past ASCII, %% begins a control code.
TEST_CASE("words in a DXF are printable ASCII, whatever they were") {
    CHECK(dxf_words("2 ft 3 1/4 in") == "2 ft 3 1/4 in");
    CHECK(dxf_words("bend 26.6° down") == "bend 26.6%%d down");
    CHECK(dxf_words("señal") == "se\\U+00F1al");
    CHECK(dxf_words("two\nlines\r\tand\x1b[2J") == "two^Jlines^M^Iand^[[2J");
    CHECK(dxf_words(std::string("a\0b", 3)) == "a^@b");
    CHECK(dxf_words("\x7f") == "\\U+007F");
    CHECK(dxf_words("^") == "^ ");
    CHECK(dxf_words("\\U+0041") == "\\U+005CU+0041");
    CHECK(dxf_words("100 %") == "100 %");
    CHECK(dxf_words("%%%d") == "% % %d");
    CHECK(dxf_words("%°") == "% %%d");
    CHECK(dxf_words("\xff\xc3") == "??");
    CHECK(dxf_words("\xf0\x9f\x94\xa8") == "?");
}

TEST_CASE("no control character but the ends of lines stands in a DXF") {
    Drawing drawing;
    drawing.most = {100'000'000, 50'000'000};
    for (char c = 1; c > 0 && c < 0x20; ++c) {
        drawing.words.push_back({{0, 0}, std::string("a") + c + "b", Turned::level});
    }
    const std::string dxf = dxf_of(drawing);
    const auto is_control = [](char c) {
        const auto byte = static_cast<unsigned char>(c);
        return (byte < 0x20 && c != '\r' && c != '\n') || byte >= 0x7F;
    };
    CHECK(std::none_of(dxf.begin(), dxf.end(), is_control));
    // Pairs of lines: an even number of ends.
    CHECK(count(dxf, "\r\n") % 2 == 0);
    CHECK(count(dxf, "\n") == count(dxf, "\r\n"));
    CHECK(count(dxf, "\r") == count(dxf, "\r\n"));
}

TEST_CASE("every coordinate in a DXF has its point, and keeps every nanometre") {
    Drawing drawing;
    drawing.most = {100'000'000, 50'000'000};
    drawing.lines.push_back({Layer::cut, {{1, 0}, {2'000'000, 50'000'000}}, false});
    const std::string dxf = dxf_of(drawing);
    CHECK(count(dxf, "\r\n0.000001\r\n") == 1);
    CHECK(count(dxf, "\r\n 2\r\n") == 0);
    CHECK(count(dxf, "11\r\n2.0\r\n") == 1);
    CHECK(count(dxf, "20\r\n50.0\r\n") == 2);  // y is up; the other is the drawing's upper edge
}

#ifndef __EMSCRIPTEN__  // Node runs no other program here
TEST_CASE(
    "another reader finds every outline, circle and word of a DXF, and nothing to put right") {
    Drawing drawing;
    drawing.least = {-5'000'000, 0};
    drawing.most = {100'000'000, 50'000'000};
    drawing.lines.push_back(
        {Layer::cut, {{0, 0}, {0, 50'000'000}, {100'000'001, 50'000'000}}, true});
    drawing.lines.push_back({Layer::bend, {{0, 1}, {5, 1}}, false});
    drawing.lines.push_back({Layer::mark, {{0, 0}, {1, 1}, {2, 0}}, false});
    drawing.circles.push_back({Layer::cut, {25'400'000, 10'000'000}, millimetres(3)});
    const std::vector<std::string> words = {"peña 26.6°", "\\U+0041",  "a^b",
                                            "50 %",       "tab\there", "~{}\"'"};
    for (const std::string& one : words) {
        drawing.words.push_back({{0, 0}, one, Turned::upright});
    }
    const nlohmann::json found = read_back(drawing);
    CHECK(found["version"] == "AC1009");
    CHECK(found["units"] == 4);
    CHECK(found["errors"].empty());
    CHECK(found["layers"] == nlohmann::json({"0", "BEND", "CUT", "MARK"}));
    CHECK(found["outlines"]["cut"] ==
          nlohmann::json({{{0.0, 50.0}, {0.0, 0.0}, {100.000001, 0.0}}}));
    CHECK(found["lines"]["bend"] == nlohmann::json({{{0.0, 49.999999}, {0.000005, 49.999999}}}));
    CHECK(found["lines"]["mark"][0].size() == 3);
    CHECK(found["circles"]["cut"] == nlohmann::json({{25.4, 40.0, 3.0}}));
    CHECK(found["extents"] == nlohmann::json({{-5.0, 0.0}, {100.0, 50.0}}));
    CHECK(found["texts"] == nlohmann::json(words));
}
#endif
