// A job on disk: new, take, journal and show, as a desk and a tablet share it.
#include <doctest/doctest.h>

#include <algorithm>
#include <fstream>
#include <set>
#include <sstream>

#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream in(text);
    for (std::string line; std::getline(in, line);) {
        lines.push_back(line);
    }
    return lines;
}

std::filesystem::path journal_file(const Desk& desk) {
    for (const auto& entry : std::filesystem::directory_iterator(desk.folder() / "job")) {
        if (entry.path().extension() == ".journal") {
            return entry.path();
        }
    }
    FAIL("the job has no journal");
    return {};
}

/// A job "job" started from two eaves.
void start(const Desk& desk) {
    fine(desk.run({"new", "job", "--from", desk.write("roof.csv", two_eaves)}));
}

bool is_event_id(const std::string& word) {
    return word.size() > 17 && word[16] == '-' &&
           word.find_first_not_of("0123456789abcdef") == 16 &&
           word.find_first_not_of("0123456789", 17) == std::string::npos;
}

}  // namespace

TEST_CASE(
    "new takes each length of the file as one first reading, so that each edge asks for a second") {
    const Desk desk;
    start(desk);
    const auto shown = desk.run({"show", "job", "--json"}).json();
    REQUIRE(shown["edges"].size() == 2);
    REQUIRE(shown["readings"].size() == 2);
    CHECK(shown["readings"][0]["edge"] == "A");
    CHECK(shown["readings"][0]["length_nm"] == 552 * inch_nm + 4 * sixteenth_nm);
    CHECK(shown["edges"][0]["length_nm"].is_null());
    CHECK(shown["next_cut"].is_null());
}

TEST_CASE("an edge's own lap goes from the file into the job, and is shown") {
    const Desk desk;
    const std::string file = desk.write("roof.csv",
                                        "edge,kind,trim,length,left,right,pitch,lap\n"
                                        "A,eave,,46 ft,gable,gable,5/12,8 in\n"
                                        "B,valley,,12 ft,eave,ridge,5/12,\n");
    REQUIRE(desk.run({"new", "job", "--from", file}).exit == 0);
    const auto shown = desk.run({"show", "job", "--json"}).json();
    CHECK(shown["edges"][0]["lap_nm"] == 8 * inch_nm);
    CHECK(shown["edges"][1]["lap_nm"] == 8 * inch_nm);  // the valley's rule
    const std::string words = desk.run({"show", "job"}).out;
    CHECK(words.find("Edge A, eave: no agreed length, laps 8 in;") != std::string::npos);
    CHECK(words.find("Edge B, valley: no agreed length;") != std::string::npos);
    CHECK(desk.run({"journal", "job"}).out.find("Edge A laps 8 in") != std::string::npos);
}

TEST_CASE("a second reading that agrees makes the edge ready, and its first piece the next cut") {
    const Desk desk;
    start(desk);
    const Ran took = desk.run({"take", "job", "A", "46 ft 0 1/4 in", "--by", "Ana"});
    CHECK(took.exit == 0);
    CHECK_MESSAGE(took.err.empty(), took.err);
    CHECK_MESSAGE(is_event_id(last_word(took.out)), took.out);
    const auto shown = desk.run({"show", "job", "--json"}).json();
    CHECK(shown["edges"][0]["length_nm"] == 552 * inch_nm + 4 * sixteenth_nm);
    REQUIRE(!shown["next_cut"].is_null());
    CHECK(shown["next_cut"]["edge"] == "A");
    CHECK(shown["next_cut"]["piece"] == 1);
    CHECK(shown["next_cut"]["cut_nm"].get<std::int64_t>() > 24 * inch_nm);
    CHECK(shown["next_cut"]["cut_nm"].get<std::int64_t>() <= 120 * inch_nm);
    const auto& list = shown["readings"];
    const auto taken = std::find_if(list.begin(), list.end(), [&](const auto& reading) {
        return reading["id"] == last_word(took.out);
    });
    REQUIRE(taken != list.end());
    CHECK((*taken)["by"] == "Ana");
    CHECK((*taken)["struck"] == false);
    CHECK((*taken)["of"] == "edge");
}

TEST_CASE("a reading that is off by an inch is recorded all the same, and doubted on stderr") {
    const Desk desk;
    start(desk);
    const Ran took = desk.run({"take", "job", "A", "46 ft 1 1/4 in"});
    CHECK(took.exit == 0);
    CHECK(is_event_id(last_word(took.out)));
    CHECK(!took.err.empty());
    const auto shown = desk.run({"show", "job", "--json"}).json();
    CHECK(shown["readings"].size() == 3);
    CHECK(shown["edges"][0]["length_nm"].is_null());
    // A third reading that agrees with the first settles it; the odd reading stays in the record.
    CHECK(desk.run({"take", "job", "A", "46 ft 0 1/4 in"}).exit == 0);
    const auto settled = desk.run({"show", "job", "--json"}).json();
    CHECK(settled["readings"].size() == 4);
    CHECK(settled["edges"][0]["length_nm"] == 552 * inch_nm + 4 * sixteenth_nm);
}

TEST_CASE("less than half and more than twice what was read before are doubted, and kept") {
    const Desk desk;
    start(desk);
    for (const char* length : {"4 ft 6 in", "100 ft", "0 in"}) {
        const Ran took = desk.run({"take", "job", "A", length});
        CHECK_MESSAGE(took.exit == 0, length);
        CHECK_MESSAGE(!took.err.empty(), length);
        CHECK(is_event_id(last_word(took.out)));
    }
    CHECK(desk.run({"show", "job", "--json"}).json()["readings"].size() == 5);
}

TEST_CASE("take refuses what is no length, an edge that is not there and a job that is not there") {
    const Desk desk;
    start(desk);
    const Ran length = desk.run({"take", "job", "A", "9 650"});
    CHECK(length.exit == 1);
    CHECK_MESSAGE(length.err.rfind("LENGTH:1:", 0) == 0, length.err);
    CHECK(length.out.empty());
    const Ran edge = desk.run({"take", "job", "Z", "46 ft"});
    CHECK(edge.exit == 1);
    CHECK(edge.err.find("A, B") != std::string::npos);
    CHECK(desk.run({"take", "nojob", "A", "46 ft"}).exit == 1);
    CHECK(!std::filesystem::exists(desk.folder() / "nojob"));
    CHECK(desk.run({"show", "job", "--json"}).json()["readings"].size() == 2);
    CHECK(desk.run({"take", "job", "A", "14027", "--unit", "mm"}).exit == 0);
}

TEST_CASE("the journal prints one event a line, its id first, in the order written") {
    const Desk desk;
    start(desk);
    const Ran took = desk.run({"take", "job", "B", "31 ft 7 5/8 in", "--by", "Ana\nBen"});
    const Ran ran = desk.run({"journal", "job"});
    CHECK(ran.exit == 0);
    CHECK(ran.err.empty());
    const auto lines = lines_of(ran.out);
    REQUIRE(lines.size() == 6);  // started, two edges, two first readings, one taken
    std::set<std::string> ids;
    for (const std::string& line : lines) {
        const std::string id = line.substr(0, line.find(' '));
        CHECK_MESSAGE(is_event_id(id), line);
        ids.insert(id);
        const std::string time = line.substr(id.size() + 1, 24);
        CHECK_MESSAGE((time[10] == 'T' && time[23] == 'Z'), time);
    }
    CHECK(ids.size() == 6);
    CHECK(lines.back().rfind(last_word(took.out), 0) == 0);
    CHECK(lines.back().find("Ana\\u000ABen") != std::string::npos);
    CHECK(lines.back().find("31 ft 7 5/8 in") != std::string::npos);
    CHECK(lines.front().find("job") != std::string::npos);
    CHECK(desk.run({"journal", journal_file(desk).string()}).out == ran.out);
}

TEST_CASE("new refuses a job that is there, and leaves it as it is") {
    const Desk desk;
    start(desk);
    const std::string before = desk.run({"journal", "job"}).out;
    const Ran again = desk.run({"new", "job"});
    CHECK(again.exit == 1);
    CHECK(!again.err.empty());
    CHECK(again.out.empty());
    CHECK(desk.run({"journal", "job"}).out == before);
}

TEST_CASE("a bad readings file leaves no job behind") {
    const Desk desk;
    const std::string bad =
        desk.write("bad.csv",
                   "edge,kind,trim,length,left,right,pitch\n"
                   "A,eave,,46 ft,gable,gable,5/12\nB,eave,,379,gable,gable,5/12\n");
    const Ran ran = desk.run({"new", "job", "--from", bad});
    CHECK(ran.exit == 1);
    CHECK_MESSAGE(ran.err.rfind(bad + ":3:9: ", 0) == 0, ran.err);
    CHECK(!std::filesystem::exists(desk.folder() / "job"));
    CHECK(desk.run({"new", "job", "--from", "nowhere.csv"}).exit == 1);
    CHECK(!std::filesystem::exists(desk.folder() / "job"));
    CHECK(desk.run({"new", "job", "--from", bad, "--unit", "in"}).exit == 0);
}

TEST_CASE(
    "a name that the journal cannot hold leaves no job behind, and no reading half recorded") {
    const Desk desk;
    const std::string page(5000, 'n');
    for (const std::string& name : {std::string("\xFF\xFE"), page}) {
        CHECK(desk.run({"new", "job", "--by", name}).exit == 1);
        CHECK(desk.run({"new", "job", "--name", name}).exit == 1);
        CHECK(!std::filesystem::exists(desk.folder() / "job"));
    }
    start(desk);
    const Ran took = desk.run({"take", "job", "A", "46 ft 0 1/4 in", "--by", "\xFF\xFE"});
    CHECK(took.exit == 1);
    CHECK(took.out.empty());
    CHECK(desk.run({"show", "job", "--json"}).json()["readings"].size() == 2);
    CHECK(desk.run({"take", "job", "A", "46 ft 0 1/4 in", "--by", "Ana"}).exit == 0);
}

TEST_CASE("a job without readings opens empty, under the name it was given") {
    const Desk desk;
    CHECK(desk.run({"new", "job", "--name", "Invented house, north side"}).exit == 0);
    const auto shown = desk.run({"show", "job", "--json"}).json();
    CHECK(shown["job"] == "Invented house, north side");
    CHECK(shown["edges"].empty());
    CHECK(shown["next_cut"].is_null());
    CHECK(desk.run({"take", "job", "A", "46 ft"}).exit == 1);
    CHECK(desk.run({"new", "other/"}).exit == 0);
    CHECK(desk.run({"show", "other", "--json"}).json()["job"] == "other");
}

TEST_CASE(
    "the JSON of show has the agreed keys, and depends on the events alone but for three of them") {
    const Desk desk;
    start(desk);
    CHECK(desk.run({"take", "job", "A", "46 ft 0 1/4 in"}).exit == 0);
    auto shown = desk.run({"show", "job", "--json"}).json();
    for (const char* key : {"job", "path", "device", "edges", "readings", "status", "next_cut",
                            "conflicts", "set_aside"}) {
        CHECK_MESSAGE(shown.contains(key), key);
    }
    for (const char* key : {"edge", "trim", "piece", "cut_nm", "cut", "waits_for"}) {
        CHECK_MESSAGE(shown["next_cut"].contains(key), key);
    }
    for (const char* key : {"id", "edge", "of", "length_nm", "length", "by", "struck"}) {
        CHECK_MESSAGE(shown["readings"][0].contains(key), key);
    }
    CHECK(shown["status"].size() == shown["edges"].size());
    CHECK(shown["conflicts"].empty());
    std::filesystem::copy(desk.folder() / "job", desk.folder() / "copy");
    auto copied = desk.run({"show", "copy", "--json"}).json();
    for (const char* own : {"job", "path", "device"}) {
        shown.erase(own);
        copied.erase(own);
    }
    CHECK(shown == copied);
}

TEST_CASE("a remainder is a reading of its own, of what is left for the last piece") {
    const Desk desk;
    start(desk);
    CHECK(desk.run({"take", "job", "A", "46 ft 0 1/4 in"}).exit == 0);
    // 105 1/8 in seen of the last piece, 6 in of its neighbor under it: about 99 1/8 in is left.
    const Ran took = desk.run({"take", "job", "A", "8 ft 3 1/8 in", "--remainder"});
    CHECK(took.exit == 0);
    CHECK_MESSAGE(took.err.empty(), took.err);
    const Ran doubted = desk.run({"take", "job", "A", "2 ft", "--remainder"});
    CHECK(doubted.exit == 0);
    CHECK(!doubted.err.empty());
    const auto shown = desk.run({"show", "job", "--json"}).json();
    CHECK(std::count_if(shown["readings"].begin(), shown["readings"].end(),
                        [](const auto& reading) { return reading["of"] == "remainder"; }) == 2);
    CHECK(shown["edges"][0]["length_nm"] == 552 * inch_nm + 4 * sixteenth_nm);
}

TEST_CASE(
    "a journal cut at any byte opens: every whole event, and the torn tail set aside and said" *
    doctest::test_suite("long")) {
    const Desk desk;
    start(desk);
    const std::filesystem::path file = journal_file(desk);
    const auto size = std::filesystem::file_size(file);
    const std::size_t whole = lines_of(desk.run({"journal", "job"}).out).size();
    std::size_t last = whole;
    for (auto cut = size - 1; cut > 0; cut -= std::min<std::uintmax_t>(cut, 7)) {
        std::filesystem::resize_file(file, cut);
        const Ran ran = desk.run({"journal", "job"});
        CHECK_MESSAGE(ran.exit == 0, ran.err);
        const std::size_t now = lines_of(ran.out).size();
        CHECK(now <= last);
        CHECK(now < whole);
        last = now;
        const auto shown = desk.run({"show", "job", "--json"});
        CHECK(shown.exit == 0);
        CHECK(shown.json()["set_aside"].empty() == ran.err.empty());
    }
}

TEST_CASE("a flipped bit or random bytes in a journal are never a crash") {
    const Desk desk;
    start(desk);
    const std::filesystem::path file = journal_file(desk);
    std::ostringstream read;
    read << std::ifstream(file, std::ios::binary).rdbuf();
    const std::string good = read.str();
    for (std::size_t at = 0; at < good.size(); at += 11) {
        std::string bad = good;
        bad[at] = static_cast<char>(bad[at] ^ (1 << (at % 8)));
        std::ofstream(file, std::ios::binary) << bad;
        const Ran ran = desk.run({"journal", "job"});
        CHECK(ran.exit == 0);
        CHECK_MESSAGE(!ran.err.empty(), "the damage is said");
        CHECK(lines_of(ran.out).size() == 4);  // one of five is lost, and only that one
        CHECK(desk.run({"show", "job"}).exit == 0);
    }
}

TEST_CASE("what is no job is exit 1, whatever stands there") {
    const Desk desk;
    std::filesystem::create_directory(desk.folder() / "empty");
    const std::string file = desk.write("file", "no journal");
    for (const std::string& name :
         {std::string("empty"), file, std::string("/dev/null"), std::string("nowhere")}) {
        for (const char* command : {"journal", "show"}) {
            const Ran ran = desk.run({command, name});
            CHECK_MESSAGE(ran.exit == 1, command, name);
            CHECK(!ran.err.empty());
            CHECK(ran.out.empty());
        }
        CHECK(desk.run({"take", name, "A", "1 ft"}).exit == 1);
    }
    CHECK(desk.run({"new", "/proc/nowhere/job"}).exit == 1);
    CHECK(desk.run({"new", file}).exit == 1);
}
