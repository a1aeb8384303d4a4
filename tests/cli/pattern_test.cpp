#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <sstream>

#include "tests/cli/program.h"

using namespace hemline::test;
using nlohmann::json;

namespace {

const std::string eave =
    "edge,kind,trim,length,left,right,pitch\n"
    "A,eave,,46 ft,gable,gable,5/12\n"
    "B,eave,eave_two_part,17 ft 5 1/2 in,corner_out,wall,9/12\n";

json read_back(const std::string& kind, const std::string& path) {
    const char* source = std::getenv("HEMLINE_SOURCE");
    REQUIRE(source != nullptr);
    return json::parse(printed_by("/usr/bin/python3 '" + std::string(source) +
                                  "/tests/cli/read_drawings.py' " + kind + " '" + path + "'"));
}

/// Points in mm as the program's nanometers; `low`: y is up from there.
json nanometres(const json& points, std::int64_t low) {
    json all = json::array();
    for (const auto& p : points) {
        const auto y = std::llround(p[1].get<double>() * 1e6);
        all.push_back({std::llround(p[0].get<double>() * 1e6), low < 0 ? y : low - y});
    }
    return all;
}

std::vector<json> sorted(const json& list, std::int64_t low) {
    std::vector<json> all;
    for (const auto& points : list) {
        all.push_back(nanometres(points, low));
    }
    std::sort(all.begin(), all.end());
    return all;
}

std::vector<json> fold_lines(const json& pattern) {
    std::vector<json> lines;
    for (const auto& fold : pattern["folds"]) {
        lines.push_back(fold["line_nm"]);
    }
    std::sort(lines.begin(), lines.end());
    return lines;
}

struct Picture {
    std::size_t wide = 0, tall = 0;
    std::string grey;
    [[nodiscard]] bool dark(std::size_t x, std::size_t y) const {
        return static_cast<unsigned char>(grey[y * wide + x]) < 96;
    }
};

Picture picture_of(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    std::string magic;
    std::size_t most = 0;
    Picture picture;
    file >> magic >> picture.wide >> picture.tall >> most;
    REQUIRE(magic == "P5");
    file.get();
    picture.grey.assign(std::istreambuf_iterator<char>(file), {});
    REQUIRE(picture.grey.size() == picture.wide * picture.tall);
    return picture;
}

/// Lengths in pixels of the solid bars: dark runs that keep their ends for 20 rows and more.
std::vector<std::size_t> bars_in(const Picture& picture) {
    struct Bar {
        std::size_t from, to, rows;
    };
    std::vector<Bar> open;
    std::vector<std::size_t> bars;
    for (std::size_t y = 0; y < picture.tall; ++y) {
        std::vector<Bar> next;
        for (std::size_t x = 0; x < picture.wide; ++x) {
            if (!picture.dark(x, y)) {
                continue;
            }
            const std::size_t from = x;
            while (x < picture.wide && picture.dark(x, y)) {
                ++x;
            }
            if (x - from < 600) {
                continue;
            }
            Bar bar{from, x, 1};
            for (const Bar& above : open) {
                if (above.from == from && above.to == x) {
                    bar.rows = above.rows + 1;
                }
            }
            if (bar.rows == 20) {
                bars.push_back(x - from);
            }
            next.push_back(bar);
        }
        open = next;
    }
    return bars;
}

}  // namespace

TEST_CASE("SVG and DXF, read back by others' libraries, are the pattern point for point" *
          doctest::test_suite("long")) {
    const Desk desk;
    const std::string file = desk.write("a.csv", eave);
    for (const std::vector<std::string>& piece : {std::vector<std::string>{"A", "1"},
                                                  {"A", "3"},
                                                  {"A", "5"},
                                                  {"B", "1"},
                                                  {"A", "1", "--trim", "fascia_wrap"},
                                                  {"A", "1", "--trim", "cleat"}}) {
        const std::string svg_path = (desk.folder() / "a.svg").string();
        const std::string dxf_path = (desk.folder() / "a.dxf").string();
        std::vector<std::string> words = {"pattern", file};
        words.insert(words.end(), piece.begin(), piece.end());
        words.insert(words.end(), {"--svg", svg_path, "--dxf", dxf_path, "--json"});
        const Ran ran = desk.run(words);
        REQUIRE_MESSAGE(ran.exit == 0, ran.err);
        const json pattern = ran.json();
        const auto girth = pattern["girth_nm"].get<std::int64_t>();

        const json svg = read_back("svg", svg_path);
        REQUIRE(svg["outlines"]["cut"].size() == 1);
        CHECK(nanometres(svg["outlines"]["cut"][0], -1) == pattern["outline_nm"]);
        CHECK(sorted(svg["lines"]["bend"], -1) == fold_lines(pattern));
        // True size: the page is as many mm wide as its view box has units.
        std::ostringstream width;
        width << svg["viewbox"][2].get<double>();
        CHECK(std::abs(std::stod(svg["width"].get<std::string>()) -
                       svg["viewbox"][2].get<double>()) < 1e-9);
        CHECK(svg["width"].get<std::string>().find("mm") != std::string::npos);

        const json dxf = read_back("dxf", dxf_path);
        CHECK(dxf["errors"].empty());
        for (const char* layer : {"CUT", "BEND"}) {
            const auto& layers = dxf["layers"];
            CHECK(std::find(layers.begin(), layers.end(), layer) != layers.end());
        }
        CHECK(dxf["units"] == 4);
        REQUIRE(dxf["outlines"]["cut"].size() == 1);
        CHECK(nanometres(dxf["outlines"]["cut"][0], girth) == pattern["outline_nm"]);
        CHECK(sorted(dxf["lines"]["bend"], girth) == fold_lines(pattern));
        CHECK(dxf["texts"].size() == svg["texts"].size());
    }
}

TEST_CASE("every place of the card is a place of the pattern") {
    const Desk desk;
    const std::string file = desk.write("a.csv", eave);
    int compared = 0;
    for (const char* edge : {"A", "B"}) {
        for (int number = 1; number <= (edge[0] == 'A' ? 5 : 2); ++number) {
            const std::string piece = std::to_string(number);
            const json card = desk.run({"card", file, edge, piece, "--json"}).json();
            const json pattern = desk.run({"pattern", file, edge, piece, "--json"}).json();
            CHECK(pattern["cut_nm"] == card["cut_nm"]);
            for (const auto& mark : card["marks"]) {
                const std::string name = mark["mark"];
                if (name == "lap line" || name == "bead line") {
                    continue;  // no metal is cut or folded there
                }
                bool there = false;
                const auto at = mark["at_nm"].get<std::int64_t>();
                for (const auto& p : pattern["outline_nm"]) {
                    there = there || (name != "tab fold" && p[0] == at);
                }
                for (const auto& fold : pattern["folds"]) {
                    there = there || (name == "tab fold" && fold["of"] == "tab" &&
                                      fold["line_nm"][0][0] == at && fold["line_nm"][1][0] == at);
                }
                CHECK_MESSAGE(there, edge << piece << ' ' << name << ' ' << mark["at"]);
                ++compared;
            }
        }
    }
    CHECK(compared > 20);
}

TEST_CASE("the printed page's bars are 4 in and 100 mm long on Letter and A4" *
          doctest::test_suite("full")) {
    // Rasterized at 300 dots an inch: 4 in are 1200 dots, 100 mm 1181.1.
    const Desk desk;
    const std::string file = desk.write("a.csv", eave);
    for (const std::string paper : {"letter", "a4"}) {
        const std::string html = (desk.folder() / (paper + ".html")).string();
        const std::string pdf = (desk.folder() / (paper + ".pdf")).string();
        const std::string page = (desk.folder() / paper).string();
        REQUIRE(desk.run({"pattern", file, "A", "1", "--html", html, "--paper", paper}).exit == 0);
        printed_by("HOME='" + desk.folder().string() +
                   "' chromium --headless --no-sandbox --disable-gpu --no-pdf-header-footer "
                   "--print-to-pdf='" +
                   pdf + "' 'file://" + html + "' 2>/dev/null");
        printed_by("pdftoppm -gray -r 300 -f 1 -l 1 -singlefile '" + pdf + "' '" + page + "'");
        const Picture picture = picture_of(page + ".pgm");
        const double inches_wide = static_cast<double>(picture.wide) / 300;
        CHECK(std::abs(inches_wide - (paper == "letter" ? 8.5 : 210 / 25.4)) < 0.02);
        const auto bars = bars_in(picture);
        REQUIRE(bars.size() == 2);
        CHECK(std::abs(static_cast<double>(bars[0]) - 1200) <= 3);
        CHECK(std::abs(static_cast<double>(bars[1]) - 1181.1) <= 3);
    }
}

TEST_CASE("a pattern asks for a file or JSON, and says where it cannot write") {
    const Desk desk;
    const std::string file = desk.write("a.csv", eave);
    CHECK(desk.run({"pattern", file, "A", "1"}).exit == 2);
    CHECK(desk.run({"pattern", file, "Z", "1", "--json"}).exit == 1);
    CHECK(desk.run({"pattern", file, "A", "9", "--json"}).exit == 1);
    CHECK(desk.run({"pattern", file, "A", "1", "--html", "a.html", "--paper", "a5"}).exit == 2);
    const Ran nowhere = desk.run({"pattern", file, "A", "1", "--svg", "/no/such/folder/a.svg"});
    CHECK(nowhere.exit == 1);
    CHECK(nowhere.err.find("--svg") != std::string::npos);
}

TEST_CASE("a piece that waits says so on its pattern") {
    const Desk desk;
    const std::string file = desk.write("a.csv", eave);
    const Ran ran = desk.run({"pattern", file, "A", "5", "--svg", "a.svg"});
    CHECK(ran.exit == 0);
    CHECK(ran.out.find("NOT YET TO CUT") != std::string::npos);
}
