// Disagreements at a desk: two picks that disagree, an edge taken off and cut for, a number written
// twice.
#include <doctest/doctest.h>

#include <fstream>

#include "engine/record/event_bytes.h"
#include "tests/cli/program.h"

using namespace hemline;
using namespace hemline::test;

namespace {

namespace fs = std::filesystem;

nlohmann::json conflicts(const Desk& desk, const std::string& job) {
    return fine(desk.run({"show", job, "--json"})).json()["conflicts"];
}

/// A job folder with a journal for each device.
void write_job(const Desk& desk, const std::string& job, const std::vector<Event>& events) {
    fs::create_directories(desk.folder() / job);
    for (const Event& event : events) {
        const Bytes frame = frame_of(event);
        std::ofstream(desk.folder() / job / (print_device(event.id.device) + ".journal"),
                      std::ios::binary | std::ios::app)
            .write(reinterpret_cast<const char*>(frame.data()),
                   static_cast<std::streamsize>(frame.size()));
    }
}

std::vector<Event> job_with_edge() {
    Edge edge;
    edge.id = "A";
    return {{{1, 1}, {1'000, 0}, "Ada", {}, JobStarted{"Shed", ""}},
            {{1, 2}, {1'001, 0}, "Ada", {}, EdgeAdded{edge}}};
}

}  // namespace

TEST_CASE(
    "two picks made apart are shown with both values and who picked, and a third one ends it") {
    const Desk desk;
    const std::string readings =
        "edge,kind,trim,length,left,right,pitch\nA,eave,,46 ft 0 1/4 in,gable,gable,5/12\n";
    fine(desk.run({"new", "one", "--from", desk.write("roof.csv", readings)}));
    fine(desk.run({"pack", "one", "job.hemline"}));
    fine(desk.run({"unpack", "job.hemline", "two"}));
    const std::string ana =
        last_word(fine(desk.run({"take", "one", "A", "46 ft 0 1/4 in", "--by", "Ana"})).out);
    const std::string ben =
        last_word(fine(desk.run({"take", "two", "A", "46 ft 1 1/4 in", "--by", "Ben"})).out);
    fine(desk.run({"merge", "here", "one", "two"}));
    fine(desk.run({"merge", "there", "one", "two"}));
    fine(desk.run({"pick", "here", ana, "--by", "Cleo"}));
    fine(desk.run({"pick", "there", ben, "--by", "Dan"}));
    CHECK(conflicts(desk, "here").empty());
    CHECK(conflicts(desk, "there").empty());
    fine(desk.run({"merge", "all", "here", "there"}));
    const auto apart = conflicts(desk, "all");
    REQUIRE(apart.size() == 1);
    const auto& sides = apart[0]["events"];
    REQUIRE(sides.size() == 2);
    for (const auto& side : sides) {
        const bool is_ana = side["picked"] == ana;
        CHECK(side["picked"] == (is_ana ? ana : ben));
        CHECK(side["by"] == (is_ana ? "Cleo" : "Dan"));
        CHECK(side["said_by"] == (is_ana ? "Ana" : "Ben"));
        CHECK(side["length_nm"] == (is_ana ? 552 : 553) * inch_nm + 4 * sixteenth_nm);
    }
    CHECK(fine(desk.run({"show", "all"})).out.find("Cleo picked: Edge A read: 46 ft 0 1/4 in") !=
          std::string::npos);
    CHECK(fine(desk.run({"show", "all", "--json"})).json()["next_cut"].is_null());
    fine(desk.run({"pick", "all", ana}));  // by the reading, or by the pick of it
    CHECK(conflicts(desk, "all").empty());
    const auto shown = fine(desk.run({"show", "all", "--json"})).json();
    CHECK(shown["next_cut"]["edge"] == "A");
    for (const auto& reading : shown["readings"]) {
        CHECK(reading["struck"] == (reading["id"] == ben));
    }
    CHECK(shown["readings"].size() == 3);
}

TEST_CASE("an edge taken off here and cut for there is back, says so, and is kept by a pick") {
    const Desk desk;
    std::vector<Event> events = job_with_edge();
    events.push_back({{1, 3}, {1'002, 0}, "Ada", {{1, 2}}, EdgeTakenOff{"A"}});
    events.push_back(
        {{2, 1}, {1'003, 0}, "Ben", {}, PieceCut{"A", TrimRole::main, 1, feet(6), {feet(10), {}}}});
    write_job(desk, "job", events);
    const auto back = conflicts(desk, "job");
    REQUIRE(back.size() == 1);
    CHECK(back[0]["about"] == "edge_back");
    CHECK(back[0]["edge"] == "A");
    CHECK(back[0]["piece"] == 1);
    const std::string what =
        "Edge A was taken off the job on one tablet, and piece 1 on edge A is cut for it on "
        "another. It is back: keep it, or undo the cut.";
    CHECK(back[0]["what"] == what);
    CHECK(fine(desk.run({"show", "job"})).out.find(what) != std::string::npos);
    CHECK(desk.run({"pick", "job", print_event_id({1, 3})}).exit == 1);
    fine(desk.run({"pick", "job", print_event_id({2, 1})}));
    CHECK(conflicts(desk, "job").empty());
    CHECK(fine(desk.run({"show", "job", "--json"})).json()["edges"].size() == 1);
}

TEST_CASE("the notice of a number written twice says what of, and is put away") {
    const Desk desk;
    std::vector<Event> events = job_with_edge();
    events.push_back({{1, 3}, {1'002, 0}, "Ada", {}, PitchTaken{"A", rise_in_12(5)}});
    events.push_back({{1, 3}, {1'003, 0}, "Ada", {}, RuleSet{"lap", "8 in"}});
    write_job(desk, "job", events);
    const std::string number = print_event_id({1, 3});
    REQUIRE(conflicts(desk, "job").size() == 1);
    CHECK(conflicts(desk, "job")[0]["what"].get<std::string>().find(
              "about the pitch of edge A, the rule \"lap\"") != std::string::npos);
    CHECK(desk.run({"pick", "job", number}).exit == 1);
    CHECK(desk.run({"pick", "job", print_event_id({1, 2}), "--put-away"}).exit == 1);
    CHECK(fine(desk.run({"pick", "job", number, "--put-away", "--by", "Ben"})).out ==
          "Put away " + number + "\n");
    CHECK(conflicts(desk, "job").empty());
    CHECK(desk.run({"pick", "job", number, "--put-away"}).exit == 1);
}
