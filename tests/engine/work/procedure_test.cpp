#include "engine/work/procedure.h"
#include "engine/record/job.h"

#include <rapidcheck.h>

#include <algorithm>
#include <map>

#include "eave_job.h"
#include "engine/words/result.h"
#include "engine/work/closures.h"
#include "engine/work/fixing.h"

using namespace hemline_test;

namespace {

std::vector<StepRule> eave_procedure() {
    const auto read = read_procedure(assets_file("procedures/eave.csv"));
    REQUIRE_MESSAGE(read.ok(), (read.ok() ? Text() : read.problem().what));
    return *read;
}

std::vector<Step> steps(const Planned& planned, const std::vector<StepRule>& procedure) {
    return steps_of(planned.job.edges[0], planned.plan, planned.job.practice, procedure,
                    planned.catalogue);
}

std::vector<std::string> ids_of(const std::vector<Step>& steps) {
    std::vector<std::string> ids;
    for (const Step& step : steps) {
        ids.push_back(step.rule->id + (step.piece > 0 ? " " + std::to_string(step.piece) : ""));
    }
    return ids;
}

const Step& find(const std::vector<Step>& steps, const std::string& id, int piece) {
    const auto found = std::find_if(steps.begin(), steps.end(), [&](const Step& step) {
        return step.rule->id == id && step.piece == piece;
    });
    REQUIRE(found != steps.end());
    return *found;
}

/// Two pieces: 20 ft between walls.
Planned two_pieces(bool wrap = false) {
    Planned planned;
    Edge edge = eave("A", End::wall, End::wall);
    edge.wrap = wrap;
    planned.add(edge, inches(200));
    planned.add_cleat(edge, inches(100));
    return planned;
}

/// Does what the step asks, as the screens would record it.
void carry_out(Planned& planned, const Step& step, std::int64_t now_ms) {
    EdgeWork& work = planned.job.edges[0];
    switch (step.rule->asks) {
        case Asks::cut: {
            const Each each = step.rule->each;
            planned.cut(each == Each::wrap_piece    ? TrimRole::wrap
                        : each == Each::cleat_piece ? TrimRole::cleat
                                                    : TrimRole::main,
                        step.piece);
            break;
        }
        case Asks::remainder:
            planned.record_remainder(inches(40), now_ms);
            break;
        case Asks::tick:
            work.finished = EventId{1, 1};
            break;
        default:
            planned.record_step(step.rule->id, step.piece);
            work.steps.back().place = now_ms;
    }
}

constexpr std::string_view header =
    "id,part,each,asks,action,why,wrong,caution,least,most,source\n";

Problem problem_of(const std::string& rows) {
    const auto read = read_procedure(std::string(header) + rows);
    REQUIRE(!read.ok());
    return read.problem();
}

}  // namespace

TEST_CASE("the eave's procedure begins with fall protection and ends with the foreman's tick") {
    const auto procedure = eave_procedure();
    // 29 CFR 1926.501(b)(13): fall protection at 6 ft and more.
    CHECK(procedure.front().caution.find("6 ft") != std::string::npos);
    CHECK(procedure.front().source.find("1926.501(b)(13)") != std::string::npos);
    CHECK(procedure.back().asks == Asks::tick);
}

TEST_CASE("two pieces go through cut, seal, hook, slide and fasten, one piece after the other") {
    const auto procedure = eave_procedure();
    const Planned planned = two_pieces();
    CHECK(ids_of(steps(planned, procedure)) ==
          std::vector<std::string>{"deck",           "cleat_line", "cleat_cut 1", "cleat_set 1",
                                   "cleat_fasten 1", "cut 1",      "hook 1",      "fasten 1",
                                   "remainder 2",    "cut 2",      "seal 2",      "hook 2",
                                   "slide 2",        "fasten 2",   "membrane",    "film",
                                   "ends",           "string",     "tug",         "tick"});
}

TEST_CASE("the wrap's steps come first, and only where the edge asks for a wrap") {
    const auto procedure = eave_procedure();
    const auto ids = ids_of(steps(two_pieces(true), procedure));
    const auto wrap = std::find(ids.begin(), ids.end(), "wrap_cut 1");
    const auto cleat = std::find(ids.begin(), ids.end(), "cleat_line");
    CHECK(wrap < cleat);
    CHECK(std::count(ids.begin(), ids.end(), "wrap_cut 2") == 1);
    const auto without = ids_of(steps(two_pieces(false), procedure));
    CHECK(std::count(without.begin(), without.end(), "wrap_cut 1") == 0);
}

TEST_CASE("without a cleat in the plan nobody is asked to snap its line") {
    const auto procedure = eave_procedure();
    const auto ids = ids_of(steps(forty_six_feet(), procedure));
    CHECK(std::count(ids.begin(), ids.end(), "cleat_line") == 0);
}

TEST_CASE("one piece alone has no lap and waits for no remainder") {
    const auto procedure = eave_procedure();
    Planned planned;
    planned.add(eave("A", End::gable, End::gable), feet(9));
    const auto ids = ids_of(steps(planned, procedure));
    CHECK(std::count(ids.begin(), ids.end(), "remainder 1") == 0);
    CHECK(std::count(ids.begin(), ids.end(), "seal 1") == 0);
    CHECK(std::count(ids.begin(), ids.end(), "slide 1") == 0);
    CHECK(std::count(ids.begin(), ids.end(), "cut 1") == 1);
}

TEST_CASE("nothing is to be done while nothing is planned") {
    const auto procedure = eave_procedure();
    Planned planned = forty_six_feet();
    planned.plan.runs.clear();
    CHECK(steps(planned, procedure).empty());
    CHECK(!next_step(steps(planned, procedure)));
}

TEST_CASE("actions carry the numbers of the plan") {
    const auto procedure = eave_procedure();
    const auto all = steps(forty_six_feet(), procedure);
    CHECK(find(all, "cut", 1).action == "Cut piece 1: 9 ft 4 in.");
    CHECK(find(all, "seal", 3).action == "Film off the lap, then lay 2 beads on piece 2.");
    CHECK(find(all, "fasten", 1).action == "Screw piece 1's flange with 10 screws; none in a lap.");
    CHECK(find(all, "remainder", 5).action == "Measure from piece 4's end to the end of the edge.");
    for (const Step& step : all) {
        CHECK(step.action.english().find('{') == std::string::npos);
    }
}

TEST_CASE("limits come from practice, from the plan and from the file") {
    const auto procedure = eave_procedure();
    Planned planned = forty_six_feet();
    planned.job.practice.lap = inches(5);
    const auto all = steps(planned, procedure);
    CHECK(find(all, "slide", 2).length_least == inches(5));
    CHECK(!find(all, "slide", 2).length_most);
    CHECK(find(all, "fasten", 2).count_least == 10);
    CHECK(find(all, "string", 0).length_most == sixteenths(4));
}

TEST_CASE("an answer outside practice is told with its value, its limit and why") {
    const auto procedure = eave_procedure();
    const auto all = steps(forty_six_feet(), procedure);
    Answer lap{AnswerKind::length, sixteenths(88), 0, ""};
    CHECK(outside_practice(find(all, "slide", 2), lap) ==
          "5 1/2 in is under the least, 6 in. A short lap lets water through.");
    lap.length = inches(6);
    CHECK(outside_practice(find(all, "slide", 2), lap) == "");
    lap.length = inches(6) - nanometres(1);
    CHECK(outside_practice(find(all, "slide", 2), lap).english().substr(0, 17) ==
          "A little off 6 in");
    Answer off{AnswerKind::length, sixteenths(6), 0, ""};
    CHECK(outside_practice(find(all, "string", 0), off) ==
          "3/8 in is over the most, 1/4 in. The eye sees a bent eave from the street.");
    off.length = Length();
    CHECK(outside_practice(find(all, "string", 0), off) == "");
    Answer screws{AnswerKind::count, Length(), 9, ""};
    CHECK(outside_practice(find(all, "fasten", 2), screws) ==
          "9 is under the least, 10. Too few screws let the wind lift the flange.");
    screws.count = 10;
    CHECK(outside_practice(find(all, "fasten", 2), screws) == "");
    CHECK(outside_practice(find(all, "fasten", 2), lap) == "No number was given: count them.");
    CHECK(outside_practice(find(all, "slide", 2), screws) == "No length was given: measure it.");
    CHECK(outside_practice(find(all, "tug", 0), {}) == "");
}

TEST_CASE("on a job in millimetres the steps speak millimetres") {
    const auto procedure = eave_procedure();
    Planned planned;
    planned.job.practice.cut_grid = millimetres(1);
    planned.job.practice.lap = millimetres(150);
    planned.add(eave("A", End::wall, End::wall), millimetres(5000));
    const auto all = steps(planned, procedure);
    CHECK(find(all, "cut", 1).action.english().find(" mm.") != std::string::npos);
    const Answer lap{AnswerKind::length, millimetres(149), 0, ""};
    CHECK(outside_practice(find(all, "slide", 2), lap).english(Marks::millimetre) ==
          "149 mm is under the least, 150 mm. A short lap lets water through.");
}

TEST_CASE("the tick and the fitting of a piece wait for what must be there first") {
    const auto procedure = eave_procedure();
    Planned planned = forty_six_feet();
    const auto all = steps(planned, procedure);
    CHECK(find(all, "tick", 0).waits_for == "Finish the steps before it first.");
    CHECK(find(all, "hook", 2).waits_for == "Cut piece 2 first.");
    CHECK(find(all, "cut", 2).waits_for == "Cut piece 1 first.");
    CHECK(find(all, "cut", 1).waits_for == "");
    CHECK(find(all, "remainder", 5).waits_for == "Fasten piece 4 first.");
    planned.record_step("fasten", 4);
    CHECK(find(steps(planned, procedure), "remainder", 5).waits_for == "Fasten piece 4 first.");
    planned.cut(TrimRole::main, 4);
    CHECK(find(steps(planned, procedure), "remainder", 5).waits_for == "");
}

TEST_CASE("work on a piece that was spoiled or cut anew must be done again") {
    const auto procedure = eave_procedure();
    Planned planned = forty_six_feet();
    planned.cut(TrimRole::main, 1);
    planned.job.edges[0].cut[0].id = EventId{5, 10};
    planned.record_step("hook", 1);
    planned.job.edges[0].steps[0].id = EventId{5, 11};
    CHECK(find(steps(planned, procedure), "hook", 1).done);
    planned.job.edges[0].cut[0].id = EventId{5, 12};
    CHECK(!find(steps(planned, procedure), "hook", 1).done);
    planned.job.edges[0].cut.clear();
    CHECK(!find(steps(planned, procedure), "hook", 1).done);
}

TEST_CASE("done in order, every step can be done when it comes, and the edge ends finished") {
    const auto procedure = eave_procedure();
    CHECK(rc::check([&] {
        const End ends[] = {End::gable, End::corner_out, End::corner_in, End::wall, End::open};
        Planned planned;
        Edge edge = eave("A", ends[*rc::gen::inRange(0, 5)], ends[*rc::gen::inRange(0, 5)],
                         *rc::gen::element(Side::left, Side::right));
        edge.wrap = *rc::gen::arbitrary<bool>();
        const Length length = sixteenths(*rc::gen::inRange(30 * 16, 700 * 16));
        planned.add(edge, length);
        planned.add_cleat(edge, length);
        const std::size_t count = steps(planned, procedure).size();
        for (std::size_t i = 0; i < count; ++i) {
            const auto now = steps(planned, procedure);
            RC_ASSERT(now.size() == count);
            RC_ASSERT(next_step(now) == i);
            RC_ASSERT(now[i].waits_for.empty());
            const EdgeStatus status = status_of(planned.job.edges[0], now, planned.job.practice);
            RC_ASSERT((status == EdgeStatus::to_tick) == (i + 1 == count));
            if (now[i].rule->asks == Asks::cut) {
                const auto cut = next_cut(planned.job, planned.plan);
                RC_ASSERT(cut.has_value());
                RC_ASSERT(cut->piece == now[i].piece);
            }
            carry_out(planned, now[i], static_cast<std::int64_t>(i));
        }
        RC_ASSERT(!next_step(steps(planned, procedure)));
        RC_ASSERT(status_of(planned.job.edges[0], steps(planned, procedure),
                            planned.job.practice) == EdgeStatus::finished);
        RC_ASSERT(!next_cut(planned.job, planned.plan));
    }));
}

TEST_CASE(
    "the steps of all work are short: twelve words an action, fifteen a sentence, seven a part") {
    const auto words = [](const std::string& text) {
        return std::count(text.begin(), text.end(), ' ') + 1;
    };
    const auto sentences = [](const std::string& text) {
        return std::count_if(text.begin(), text.end(), [](char c) { return c == '.'; });
    };
    for (const KindOfEdge& kind : kinds_of_edge()) {
        const std::string work(kind.word);
        CAPTURE(work);
        const auto read = read_procedure(assets_file("procedures/" + work + ".csv"));
        REQUIRE_MESSAGE(read.ok(), (read.ok() ? Text() : read.problem().what));
        std::map<std::string, int> parts;
        for (const StepRule& rule : *read) {
            CHECK_MESSAGE(words(rule.action) <= 12, rule.action);
            for (const std::string& text : {rule.why, rule.wrong}) {
                CHECK_MESSAGE(words(text) <= 15, text);
                CHECK_MESSAGE(sentences(text) == 1, text);
                CHECK_MESSAGE(text.back() == '.', text);
            }
            CHECK_MESSAGE(words(rule.caution) <= 15, rule.caution);
            CHECK(!rule.source.empty());
            CHECK(++parts[rule.part] <= 7);
        }
    }
}

TEST_CASE("every edge begins with fall protection, fastens its pieces and ends with the tick") {
    for (const KindOfEdge& one : kinds_of_edge()) {
        if (one.lies == Lies::on_no_line) {
            continue;
        }
        const std::string word(one.word);
        CAPTURE(word);
        const auto read = read_procedure(assets_file("procedures/" + word + ".csv"));
        REQUIRE(read.ok());
        // 29 CFR 1926.501(b)(13).
        CHECK(read->front().id == "tie_off");
        CHECK(read->front().source.find("1926.501") != std::string::npos);
        CHECK(read->back().asks == Asks::tick);
        CHECK(read->back().part == "Foreman");
        // Once on every edge, whatever its trim; fasteners are counted but where hems alone hold.
        const auto fastens = [&](Only lies) {
            return std::count_if(read->begin(), read->end(), [&](const StepRule& rule) {
                const bool comes = rule.only.empty() || rule.only.front() == lies;
                return rule.id == fasten_step && comes &&
                       (rule.asks == Asks::count || lies == Only::over);
            });
        };
        CHECK(fastens(Only::under) == 1);
        CHECK(fastens(Only::over) == 1);
        // A cut is cautioned before it is made.
        for (const StepRule& rule : *read) {
            CHECK((rule.asks != Asks::cut || !rule.caution.empty()));
        }
    }
}

TEST_CASE("a step for an end comes only on an edge that has it") {
    const auto procedure = eave_procedure();
    Planned corner;
    corner.add(eave("A", End::corner_out, End::wall), feet(9));
    Planned plain;
    plain.add(eave("A", End::gable, End::wall), feet(9));
    const auto has = [&](const Planned& planned, const std::string& part) {
        const auto all = steps(planned, procedure);
        return std::any_of(all.begin(), all.end(),
                           [&](const Step& step) { return step.rule->part == part; });
    };
    CHECK(has(corner, "Corner up"));
    CHECK(!has(corner, "Inside corner"));
    CHECK(!has(plain, "Corner up"));
}

TEST_CASE("a step that two tablets made apart is not done, and waits until one is picked") {
    const auto procedure = eave_procedure();
    Planned planned = two_pieces();
    const auto all = steps(planned, procedure);
    const auto of_edge = std::find_if(all.begin(), all.end(), [](const Step& step) {
        return step.piece == 0 && step.rule->asks == Asks::done;
    });
    REQUIRE(of_edge != all.end());
    const std::string id = of_edge->rule->id;
    EdgeWork& work = planned.job.edges[0];
    DoneStep done;
    done.step.step = id;
    work.steps.push_back(done);
    CHECK(find(steps(planned, procedure), id, 0).done);
    Thing thing;
    thing.subject = Subject::step;
    thing.step = id;
    work.undecided.push_back({thing, Text("Pick one.")});
    const auto apart = steps(planned, procedure);
    CHECK_FALSE(find(apart, id, 0).done);
    CHECK(find(apart, id, 0).waits_for == "Pick one.");
}

TEST_CASE("an edge's own lap is what its pieces are slid under, not the job's") {
    const auto procedure = eave_procedure();
    Planned planned;
    Edge edge = eave("A", End::wall, End::wall);
    edge.lap = inches(4);
    planned.add(edge, inches(200));
    CHECK(find(steps(planned, procedure), "slide", 2).length_least == inches(4));
    planned.job.edges[0].edge.lap.reset();
    CHECK(find(steps(planned, procedure), "slide", 2).length_least == planned.job.practice.lap);
}

TEST_CASE("a procedures file that cannot be followed is refused with line, column and mend") {
    const std::string good = "a,P,edge,done,Do it.,Why.,Wrong.,,,,s\n";
    CHECK(read_procedure(std::string(header) + good).ok());
    CHECK(problem_of(good + good).what == "Line 3, column 1: the id \"a\" is there twice.");
    CHECK(problem_of("a,P,often,done,Do it.,Why.,Wrong.,,,,s\n").what ==
          "Line 2, column 5: \"often\" is not how often a step comes.");
    CHECK(problem_of("a,P,edge,dance,Do it.,Why.,Wrong.,,,,s\n").what ==
          "Line 2, column 10: \"dance\" is not what a step can ask.");
    CHECK(problem_of("a,P,edge,cut,Do it.,Why.,Wrong.,,,,s\n").what ==
          "Line 2, column 10: \"cut\" does not go with \"edge\".");
    CHECK(problem_of("a,P,edge,done,,Why.,Wrong.,,,,s\n").what ==
          "Line 2, column 15: the action is empty.");
    CHECK(problem_of("a,P,edge,done,a b c d e f g h i j k l m,Why.,Wrong.,,,,s\n").what ==
          "Line 2, column 15: the action has more than twelve words.");
    CHECK(problem_of("a,P,edge,done,Cut {piece}.,Why.,Wrong.,,,,s\n").what ==
          "Line 2, column 15: this step knows no number {piece}.");
    CHECK(problem_of("a,P,edge,done,Cut {nothing}.,Why.,Wrong.,,,,s\n").what ==
          "Line 2, column 15: this step knows no number {nothing}.");
    CHECK(problem_of("a,P,edge,length,Do it.,Why.,Wrong.,,six,,s\n").what ==
          "Line 2, column 37: \"six\" is no length and no rule of practice.");
    CHECK(problem_of("a,P,edge,count,Do it.,Why.,Wrong.,,-1,,s\n").what ==
          "Line 2, column 36: \"-1\" is no whole number.");
    CHECK(problem_of("a,P,edge,count,Do it.,Why.,Wrong.,,screws,,s\n").what ==
          "Line 2, column 36: only a step of pieces has screws planned.");
    CHECK(problem_of("a,P,edge,done,Do it.,Why.,Wrong.,,1,,s\n").what ==
          "Line 2, column 35: only a length or a count has limits.");
    CHECK(problem_of("a,P,edge,done,Do it.,,Wrong.,,,,s\n").what ==
          "Line 2, column 22: the why is empty.");
    std::string eight;
    for (int i = 0; i < 8; ++i) {
        eight +=
            std::string(1, static_cast<char>('a' + i)) + ",P,edge,done,Do it.,Why.,Wrong.,,,,s\n";
    }
    CHECK(problem_of(eight).what == "Line 9, column 3: the part \"P\" has more than seven steps.");
    const auto other = read_procedure("id,part\na,b\n");
    REQUIRE(!other.ok());
    CHECK(other.problem().what == "Line 1, column 1: the column \"each\" is missing.");
    const auto extra = read_procedure("id,colour\na,b\n");
    REQUIRE(!extra.ok());
    CHECK(extra.problem().what == "Line 1, column 4: there is no column \"colour\".");
}

TEST_CASE("a procedures file of any bytes is read or refused, never a crash") {
    const std::string good = assets_file("procedures/eave.csv");
    CHECK(rc::check([&] {
        std::string bytes = good;
        const int changes = *rc::gen::inRange(1, 6);
        for (int i = 0; i < changes; ++i) {
            bytes[*rc::gen::inRange<std::size_t>(0, bytes.size())] = *rc::gen::arbitrary<char>();
        }
        const auto read = read_procedure(bytes);
        RC_ASSERT((read.ok() || !read.problem().what.empty()));
    }));
}
