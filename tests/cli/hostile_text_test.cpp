// What others wrote reaches a terminal, a page and a file as text alone, from every command, its
// errors too.
#include <doctest/doctest.h>

#include <cstdlib>
#include <fstream>
#include <set>
#include <sstream>
#include <utility>

#include "tests/cli/program.h"
#include "tests/hostile_job.h"

using namespace hemline::test;

namespace {

namespace fs = std::filesystem;
using Words = std::vector<std::string>;

/// The commands that --help lists under "Subcommands:".
std::set<std::string> commands_of(const Desk& desk) {
    std::istringstream help(desk.run({"--help"}).out);
    std::set<std::string> commands;
    bool listing = false;
    for (std::string line; std::getline(help, line);) {
        if (listing && line.size() > 2 && line[0] == ' ' && line[2] != ' ') {
            commands.insert(line.substr(2, line.find(' ', 2) - 2));
        }
        listing = listing || line == "Subcommands:";
    }
    return commands;
}

/// A desk that has nothing but hostile things: a job, tables, the names of all files.
struct Hostile : Desk {
    const std::string job = (folder() / hemline::test::hostile("job")).string();
    const std::string crew = (folder() / hemline::test::hostile("crew")).string();
    const std::string edge = HostileJob::edge();
    const std::string head = "edge,kind,trim,length,left,right,pitch,metal,colour\n";
    const std::string good =
        write(hostile("good") + ".csv", head + "A,eave,,46 ft,gable,gable,5/12,steel,\"" +
                                            hostile("red") + "\"\n" +
                                            "B,eave,,31 ft,gable,gable,9/12,steel,=1+1\n");
    const std::string none = hostile("none");

    Hostile() {
        HostileJob().write(job);
        fs::create_directory(crew);
    }
    [[nodiscard]] std::string table(const std::string& cell, const std::string& text) const {
        return write(hostile(cell) + ".csv", text);
    }
    [[nodiscard]] std::string file(const std::string& name) const {
        return (folder() / hostile(name)).string();
    }

    /// Every command, in the order of a job's life, with words that it takes and words that it does
    /// not.
    [[nodiscard]] std::vector<std::pair<std::string, std::vector<Words>>> asked() const {
        const std::string h = hostile("x");
        const std::string q = "\"" + h + "\"";
        const std::string bad_edge = table("edge", head + q + ",eave,,46 ft,gable,gable,5/12,,\n");
        const std::string bad_kind =
            table("kind", head + "A," + q + ",,46 ft,gable,gable,5/12,,\n");
        const std::string bad_trim =
            table("trim", head + "A,eave," + q + ",46 ft,gable,gable,5/12,,\n");
        const std::string bad_length =
            table("length", head + "A,eave,,\"" + h + " ft\",gable,gable,5/12,,\n");
        const std::string bad_end = table("end", head + "A,eave,,46 ft," + q + ",gable,5/12,,\n");
        const std::string bad_pitch =
            table("pitch", head + "A,eave,,46 ft,gable,gable," + q + ",,\n");
        const std::string bad_column = table("column", q + ",kind\n1,2\n");
        const std::string no_utf8 = table("utf8", head + "A\xFF\xFE,eave\n");
        const std::string sides = "side,kind,length,corner,pitch\n";
        const std::string with_body = "side,kind,length,corner,pitch,body,host\n";
        const std::string good_sides = table("sides good", sides + "=1+1,eave,40 ft,,6/12\n" +
                                                               "<b>,gable,24 ft,,\nC,eave,40 ft,,"
                                                               "\nD,gable,24 ft,,\n");
        const std::string pieces = table("pieces", "length,count\n5 ft,3\n");
        const std::string bad_pieces = table("pieces2", "length,count\n" + q + ",3\n");
        const std::string bad_count = table("pieces3", "length,count\n5 ft," + q + "\n");
        std::vector<Words> plan = {{"plan", none},
                                   {"plan", good},
                                   {"plan", good, "--json"},
                                   {"plan", bad_edge},
                                   {"plan", bad_kind},
                                   {"plan", bad_trim},
                                   {"plan", bad_length},
                                   {"plan", bad_end},
                                   {"plan", bad_pitch},
                                   {"plan", bad_column},
                                   {"plan", no_utf8},
                                   {"plan", good, "--stock", h},
                                   {"plan", good, h},
                                   {"plan", folder()},
                                   {"plan", good, "--unit", h},
                                   {"plan", good, "--certificate", file("proof")},
                                   {"plan", good, "--certificate", none + "/" + h}};
        return {
            {"notices", {{"notices"}, {"notices", h}}},
            {"plan", plan},
            {"cut",
             {{"cut", pieces, "--stock", "10 ft"},
              {"cut", pieces, "--stock", h},
              {"cut", pieces, "--stock", "10 ft", "--have", h},
              {"cut", pieces, "--stock", "10 ft", "--kerf", h},
              {"cut", pieces, "--stock", "10 ft", "--time", h},
              {"cut", bad_pieces, "--stock", "10 ft"},
              {"cut", bad_count, "--stock", "10 ft"},
              {"cut", pieces, "--stock", "10 ft", "--certificate", file("cut proof")},
              {"cut", none, "--stock", "10 ft"}}},
            {"pitch",
             {{"pitch", "5/12"},
              {"pitch", h},
              {"pitch", "5/12", "--trim", h},
              {"pitch", "5/12", "--seam", h}}},
            {"fold",
             {{"fold", "--edge", "eave", "--pitch", "5/12"},
              {"fold", "--edge", h, "--pitch", "5/12"},
              {"fold", "--edge", "eave", "--pitch", h},
              {"fold", "--edge", "hip", "--pitch", "5/12", "--corner", h},
              {"fold", "--edge", "ridge", "--pitch", "5/12", "--pitch2", h}}},
            {"square",
             {{"square", "3 ft", "4 ft"},
              {"square", h, "4 ft"},
              {"square", "3 ft", "4 ft", "--across", h}}},
            {"outline",
             {{"outline", good},
              {"outline", bad_edge},
              {"outline", bad_end},
              {"outline", none},
              {"outline", good, "--json"}}},
            {"roof",
             {{"roof", table("sides", sides + "A,eave,40 ft,,6/12\nB,eave,24 ft,,\nC,eave,40 ft,,\n"
                                              "D,eave,24 ft,,\n")},
              {"roof", table("sides name", sides + q + ",eave,40 ft,,6/12\n")},
              {"roof", table("sides kind", sides + "A," + q + ",40 ft,,6/12\n")},
              {"roof", table("sides length", sides + "A,eave,\"" + h + " ft\",,6/12\n")},
              {"roof", table("sides corner", sides + "A,eave,40 ft," + q + ",6/12\n")},
              {"roof", table("sides pitch", sides + "A,eave,40 ft,," + q + "\n")},
              {"roof", table("sides body", with_body + "A,eave,40 ft,,6/12," + q + ",\n")},
              {"roof", table("sides host", with_body + "A,eave,40 ft,,6/12,," + q + "\n")},
              {"roof", good_sides, "--svg", file("roof svg"), "--readings", file("roof csv")},
              {"roof", table("sides column", q + ",kind\n1,2\n"), "--json"}}},
            {"panels",
             {{"panels", table("panels name", sides + q + ",eave,40 ft,,6/12\n")},
              {"panels", good_sides, "--metal", h, "--csv", file("panels")},
              {"panels", good_sides, "--plane", h},
              {"panels", good_sides, "--module", h},
              {"panels", good_sides, "--pipe", h + ",1 ft,1 ft,6 in"},
              {"panels", good_sides, "--curb", h, "--csv", file("panels csv")},
              {"panels", good_sides, "--at", h, "--low", "0F", "--high", "180F", "--json"}}},
            {"movement",
             {{"movement", "--metal", "steel " + h, "--length", "9 ft", "--at", "60F", "--low",
               "0F", "--high", "180F"},
              {"movement", "--metal", h, "--length", "9 ft", "--at", "60F", "--low", "0F", "--high",
               "180F"},
              {"movement", "--metal", "steel", "--length", h, "--at", h, "--low", h, "--high", h,
               "--json"}}},
            {"blank",
             {{"blank", "--trim", "eave_rolled"},
              {"blank", "--trim", h},
              {"blank", "--trim", "eave_rolled", "--pitch", h}}},
            {"card",
             {{"card", good, "A", "1"},
              {"card", good, h, "1"},
              {"card", good, "A", h},
              {"card", good, "A", "1", "--trim", h},
              {"card", good, "B", "1", "--json"},
              {"card", none, "A", "1"}}},
            {"pattern",
             {{"pattern", good, "A", "1", "--svg", file("a.svg"), "--dxf", file("a.dxf"), "--html",
               file("a.html")},
              {"pattern", good, "A", "1", "--json"},
              {"pattern", good, h, "1", "--json"},
              {"pattern", good, "A", "1", "--svg", none + "/" + h}}},
            {"steps", {{"steps", h}, {"steps", "eave"}}},
            {"journal", {{"journal", job}, {"journal", none}, {"journal", good}}},
            {"new",
             {{"new", file("started"), "--from", good, "--name", h, "--by", h},
              {"new", file("named after its folder")},
              {"new", file("not text"), "--name", h + "\xFF"},
              {"new", job},
              {"new", file("n"), "--from", bad_edge},
              {"new", file("walked"), "--roof",
               table("named sides", sides + q + ",eave,40 ft,,6/12\nB,gable,24 ft,,\n" +
                                        "C,eave,,,\nD,gable,,,\n")},
              {"new", good + "/" + h}}},
            {"take",
             {{"take", job, edge, "46 ft", "--by", h},
              {"take", job, edge, "40 ft"},
              {"take", job, h, "46 ft"},
              {"take", job, edge, h},
              {"take", job, edge, "46 ft", "--by", h + "\xFF"},
              {"take", none, edge, "46 ft"}}},
            {"show",
             {{"show", job}, {"show", job, "--json"}, {"show", none}, {"show", none, "--json"}}},
            {"day",
             {{"day", job, "2026-05-04"},
              {"day", job, "2026-05-04", "--json"},
              {"day", job, "2026-05-04", "--html", file("day.html")},
              {"day", job, h},
              {"day", job, "2026-05-04", "--paper", h},
              {"day", none, "2026-05-04"}}},
            {"pack",
             {{"pack", job, file("packed.zip")},
              {"pack", none, file("p")},
              {"pack", job, none + "/" + h}}},
            {"unpack",
             {{"unpack", file("packed.zip"), file("unpacked")},
              {"unpack", file("packed.zip"), job},
              {"unpack", good, file("u")},
              {"unpack", none, file("u")}}},
            {"carry",
             {{"carry", job, crew},
              {"carry", job, none},
              {"carry", file("joined"), crew},
              {"carry", none, crew, "--job", h}}},
            {"merge",
             {{"merge", file("merged"), job, file("unpacked")},
              {"merge", file("merged"), none},
              {"merge", good, job}}},
            {"pick",
             {{"pick", job, h},
              {"pick", job, "0f00000000000002-1", "--by", h},
              {"pick", none, "0f00000000000002-1"}}},
        };
    }

    /// The pages and tables in a job file, as Python's zip reader has them.
    void unzip(const std::string& file, const fs::path& into) const {
        const std::string command =
            "python3 -c 'import sys, zipfile; "
            "zipfile.ZipFile(sys.argv[1]).extractall(sys.argv[2])' \"$F\" \"$T\"";
        ::setenv("F", file.c_str(), 1);
        ::setenv("T", into.c_str(), 1);
        REQUIRE(std::system(command.c_str()) == 0);
    }
};

}  // namespace

TEST_CASE(
    "Nothing that somebody wrote steers a terminal, hides, turns a line round or forges one") {
    const Hostile desk;
    std::set<std::string> without = commands_of(desk);
    CHECK(without.size() > 15);
    for (const auto& one : desk.asked()) {
        const std::string& command = one.first;  // clang 14 captures no binding
        const auto& tries = one.second;
        without.erase(command);
        bool answered = false;
        for (const Words& words : tries) {
            const Ran ran = desk.run(words);
            const std::string about = command + ", " + std::to_string(words.size()) +
                                      " words, exit " + std::to_string(ran.exit) + ": ";
            CHECK_MESSAGE(ran.exit <= 2, about);
            CHECK_MESSAGE(!(ran.out + ran.err).empty(), about);
            CHECK_MESSAGE(not_plain(ran.out).empty(), about, not_plain(ran.out));
            CHECK_MESSAGE(not_plain(ran.err).empty(), about, not_plain(ran.err));
            answered = answered || ran.exit == 0;
        }
        CHECK_MESSAGE(answered, command, " never answered");
    }
    for (const std::string& command : without) {
        FAIL_CHECK("no hostile words for " << command);
    }
    for (const Words& words :
         {Words{hostile("plot")}, Words{"--" + hostile("x")}, Words{"plan", "-" + hostile("x")}}) {
        const Ran ran = desk.run(words);
        CHECK(ran.exit == 2);
        CHECK_MESSAGE(not_plain(ran.err).empty(), not_plain(ran.err));
    }
}

TEST_CASE("JSON keeps what somebody wrote, byte for byte, and shows none of it") {
    const Hostile desk;
    const Ran shown = desk.run({"show", desk.job, "--json"});
    CHECK(not_plain(shown.out).empty());
    const auto json = shown.json();
    CHECK(json["job"] == hostile_formula());
    CHECK(json["edges"][0]["edge"] == desk.edge);
    CHECK(json["readings"][0]["by"] == hostile("R. Vale"));
    CHECK(json["path"] == desk.job);
}

TEST_CASE("No page, drawing or table that is made holds what somebody wrote as it was") {
    const Hostile desk;
    REQUIRE(desk.run({"pattern", desk.good, "A", "1", "--svg", (desk.folder() / "a.svg").string(),
                      "--dxf", (desk.folder() / "a.dxf").string(), "--html",
                      (desk.folder() / "a.html").string()})
                .exit == 0);
    REQUIRE(desk.run({"plan", desk.good, "--certificate", (desk.folder() / "proof.json").string()})
                .exit == 0);
    REQUIRE(
        desk.run({"day", desk.job, "2026-05-04", "--html", (desk.folder() / "day.html").string()})
            .exit == 0);
    REQUIRE(desk.run({"pack", desk.job, (desk.folder() / "packed.zip").string()}).exit == 0);
    desk.unzip((desk.folder() / "packed.zip").string(), desk.folder() / "packed");
    std::set<std::string> looked_at;
    for (const char* made :
         {"a.svg", "a.dxf", "a.html", "proof.json", "day.html", "packed/job.html",
          "packed/readings.csv", "packed/events.csv", "packed/manifest.csv"}) {
        std::string text = bytes_of(desk.folder() / made);
        CHECK_MESSAGE(!text.empty(), made);
        for (std::size_t at = text.find("\r\n"); at != std::string::npos;
             at = text.find("\r\n", at)) {
            text.erase(at, 1);  // the line ends of RFC 4180 and of DXF
        }
        CHECK_MESSAGE(not_plain(text).empty(), made, ": ", not_plain(text));
    }
}
