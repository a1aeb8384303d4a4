// What the crew says about sticks and plans enters the plan: picked divisions, sticks on hand,
// stock lengths, supply. The hand cases' figures are proved in docs/cutting.md and worked by hand
// here.
#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <algorithm>

#include "engine/plan/make_plan.h"
#include "engine/plan/plan.h"
#include "engine/record/event.h"
#include "engine/record/job.h"
#include "tests/engine/plan/trim_only.h"
#include "tests/engine/work/eave_job.h"

using namespace hemline;

namespace {

/// A record of eaves between gables, each read twice; sticks of 10 ft, laps of 6 in, tabs of 1 in.
struct Roof {
    Catalogue catalogue = hemline_test::invented_catalogue();
    std::vector<Event> events;

    EventId add(Fact fact, std::vector<EventId> supersedes = {}) {
        const auto number = static_cast<std::uint32_t>(events.size() + 1);
        events.push_back({{1, number}, {number, 0}, "Ada", std::move(supersedes), std::move(fact)});
        return events.back().id;
    }
    void eave(const std::string& id, Length length) {
        Edge edge;
        edge.id = id;
        edge.left = edge.right = End::gable;
        edge.pitch = rise_in_12(5);
        add(EdgeAdded{edge});
        add(ReadingTaken{id, ReadingOf::edge, length});
        add(ReadingTaken{id, ReadingOf::edge, length});
    }
    [[nodiscard]] Job job() const { return replay(events); }
    [[nodiscard]] Plan plan() const { return make_plan(job(), catalogue, trim_only); }
    [[nodiscard]] std::vector<PlanChoice> choices() const {
        return find_choices(job(), catalogue, {});
    }
    void pick(const PlanChoice& choice) {
        PlanChosen chosen{Prefer::looks,     choice.trim,   choice.extra_laps,
                          choice.unbalanced, choice.sticks, {}};
        for (const ChosenDivision& run : choice.runs) {
            RunChosen own{run.edge, run.role, {}};
            for (const Division& piece : run.pieces) {
                own.cuts.push_back(piece.cut);
            }
            chosen.runs.push_back(std::move(own));
        }
        add(chosen);
    }
    /// Cuts the piece as planned, from the metal it is planned from.
    void cut_as_planned(const Plan& plan, const Run& run, const PlannedPiece& piece) {
        const PlannedStick* stick = find_stick(plan, piece.source->stick);
        REQUIRE(stick != nullptr);
        add(PieceCut{run.edge, run.role, piece.number, piece.cut, {stick->length, stick->offcut}});
    }
};

std::vector<Length> cuts(const Plan& plan, std::string_view edge) {
    std::vector<Length> lengths;
    const Run* run = find_run(plan, edge, TrimRole::main);
    REQUIRE(run != nullptr);
    for (const PlannedPiece& piece : run->pieces) {
        lengths.push_back(piece.cut);
    }
    return lengths;
}

std::vector<std::vector<Length>> all_cuts(const Plan& plan) {
    std::vector<std::vector<Length>> all;
    for (const Run& run : plan.runs) {
        all.push_back(cuts(plan, run.edge));
    }
    return all;
}

std::int64_t new_sticks(const Plan& plan) {
    return std::count_if(plan.sticks.begin(), plan.sticks.end(),
                         [](const PlannedStick& stick) { return !stick.offcut; });
}

const PlanChoice* choice_with(const std::vector<PlanChoice>& choices, std::int64_t laps,
                              std::int64_t unbalanced) {
    const auto found = std::find_if(choices.begin(), choices.end(), [&](const PlanChoice& c) {
        return c.extra_laps == laps && c.unbalanced == unbalanced;
    });
    return found == choices.end() ? nullptr : &*found;
}

Roof two_of_160() {
    Roof roof;
    roof.eave("A", inches(160));
    roof.eave("B", inches(160));
    return roof;
}

}  // namespace

TEST_CASE("Two edges of 160 in are balanced from 4 sticks unless the crew picks one of 3") {
    // T 162, r 48: (extra laps, unbalanced, sticks) (0,0,4), (0,2,3), (1,0,3).
    Roof roof = two_of_160();
    CHECK(new_sticks(roof.plan()) == 4);
    const auto choices = roof.choices();
    CHECK(choices.size() == 3);
    const PlanChoice* run_out = choice_with(choices, 0, 2);
    REQUIRE(run_out != nullptr);
    CHECK(run_out->sticks == 3);
    CHECK(run_out->proved);
    const PlanChoice* one_lap_more = choice_with(choices, 1, 0);
    REQUIRE(one_lap_more != nullptr);
    CHECK(one_lap_more->sticks == 3);

    roof.pick(*run_out);
    const Plan plan = roof.plan();
    CHECK(new_sticks(plan) == 3);
    REQUIRE(plan.choices.size() == 1);
    CHECK(plan.choices[0].unbalanced == 2);
    CHECK(plan.runs[0].by == DividedBy::plan_chosen);
    for (const char* edge : {"A", "B"}) {
        auto own = cuts(plan, edge);
        std::sort(own.begin(), own.end());
        CHECK(own == std::vector<Length>{inches(48), inches(120)});
    }
    CHECK(roof.choices().size() == 3);  // the others can still be picked
}

TEST_CASE("After a cut as planned, the rest of a picked plan is as it was") {
    for (const auto& [laps, unbalanced] : {std::pair{0, 2}, {1, 0}}) {
        Roof roof = two_of_160();
        const auto choices = roof.choices();
        const PlanChoice* picked = choice_with(choices, laps, unbalanced);
        REQUIRE(picked != nullptr);
        roof.pick(*picked);
        const auto planned = all_cuts(roof.plan());
        for (int n = 0; n < 10; ++n) {
            const Plan plan = roof.plan();
            CHECK(all_cuts(plan) == planned);
            CHECK(roof.job().sticks_opened + new_sticks(plan) == 3);
            const Run* next = nullptr;
            const PlannedPiece* piece = nullptr;
            for (const Run& run : plan.runs) {
                for (const PlannedPiece& own : run.pieces) {
                    if (!own.is_cut && piece == nullptr) {
                        next = &run;
                        piece = &own;
                    }
                }
            }
            if (piece == nullptr) {
                break;
            }
            roof.cut_as_planned(plan, *next, *piece);
        }
        CHECK(roof.plan().sticks.empty());
    }
}

TEST_CASE("A picked run gives a new reading to its last piece, and feet of it to a new division") {
    Roof roof = two_of_160();
    roof.pick(*choice_with(roof.choices(), 0, 2));
    const auto before = cuts(roof.plan(), "A");
    Roof nearer = roof;
    nearer.events[1].fact = ReadingTaken{"A", ReadingOf::edge, inches(159)};
    nearer.events[2].fact = ReadingTaken{"A", ReadingOf::edge, inches(159)};
    auto after = cuts(nearer.plan(), "A");
    REQUIRE(after.size() == 2);
    CHECK(after[0] == before[0]);
    CHECK(after[1] == before[1] - inches(1));
    CHECK(cuts(nearer.plan(), "B") == cuts(roof.plan(), "B"));
    nearer.events[1].fact = ReadingTaken{"A", ReadingOf::edge, inches(200)};
    nearer.events[2].fact = ReadingTaken{"A", ReadingOf::edge, inches(200)};
    after = cuts(nearer.plan(), "A");
    // Balanced: visible ends of 100 in each.
    CHECK(after == std::vector<Length>{inches(107), inches(101)});
}

TEST_CASE("An edge with its own style keeps it, and the others are divided together") {
    Roof roof = two_of_160();
    roof.add(StyleChosen{"A", Style::full});
    const Plan plan = roof.plan();
    CHECK(cuts(plan, "A") == std::vector<Length>{inches(120), inches(48)});
    CHECK(plan.runs[0].by == DividedBy::style);
    CHECK(plan.runs[1].by == DividedBy::together);
    CHECK(cuts(plan, "B") == std::vector<Length>{inches(87), inches(81)});
    for (const PlanChoice& choice : roof.choices()) {
        CHECK(choice.runs[0].pieces.front().cut == inches(120));
    }
}

TEST_CASE("An edge that must be balanced is so in every choice") {
    Roof roof = two_of_160();
    roof.add(LooksChosen{"A", Looks::balanced});
    for (const PlanChoice& choice : roof.choices()) {
        CHECK(choice.unbalanced <= 1);
        const auto& pieces = choice.runs[0].pieces;
        CHECK(absolute(pieces.front().covers - pieces.back().covers) <= sixteenths(1));
    }
}

TEST_CASE("Sticks on hand are used before new ones, as many as there are") {
    Roof roof;
    roof.eave("A", inches(160));  // 87 and 81 in
    const EventId counted = roof.add(MetalCounted{"A", TrimRole::main, inches(90), 1});
    Plan plan = roof.plan();
    REQUIRE(plan.sticks.size() == 2);
    CHECK(new_sticks(plan) == 1);
    roof.add(MetalCounted{"A", TrimRole::main, inches(90), 2}, {counted});
    plan = roof.plan();
    CHECK(new_sticks(plan) == 0);
    CHECK(plan.sticks.size() == 2);
    CHECK(plan.proofs[0].proved);
}

TEST_CASE("A job with sticks of 10 and 12 ft opens the shorter where it serves") {
    Roof roof;
    roof.eave("A", inches(140));  // with its tabs 142: a single piece of a 12 ft stick
    roof.eave("B", inches(100));
    roof.add(StockChosen{{feet(12), feet(10)}});
    const Plan plan = roof.plan();
    REQUIRE(plan.sticks.size() == 2);
    CHECK(cuts(plan, "A") == std::vector<Length>{inches(142)});
    CHECK(std::count_if(plan.sticks.begin(), plan.sticks.end(),
                        [](const PlannedStick& s) { return s.length == feet(10); }) == 1);
}

TEST_CASE("With only the sticks on hand the plan says which pieces must wait") {
    Roof roof;
    roof.eave("A", inches(160));  // 87 and 81 in
    roof.add(MetalCounted{"A", TrimRole::main, inches(85), 1});
    roof.add(SupplyChosen{"A", TrimRole::main, Supply::on_hand_only});
    Plan plan = roof.plan();
    REQUIRE(plan.sticks.size() == 1);
    CHECK(new_sticks(plan) == 0);
    CHECK_FALSE(plan.proofs[0].proved);
    REQUIRE(plan.problems.size() == 1);
    CHECK(plan.problems[0].field == "stock");
    CHECK(plan.problems[0].what.english().find("A/1") != std::string::npos);
    CHECK(plan.problems[0].what.english().find("A/2") == std::string::npos);
    roof.add(SupplyChosen{"A", TrimRole::main, Supply::as_wanted});
    plan = roof.plan();
    CHECK(new_sticks(plan) == 1);
    CHECK(plan.problems.empty());
}

TEST_CASE("A stick measured short, or spoiled, is planned around") {
    Roof roof;
    roof.eave("A", inches(116));  // with its tabs 118 in
    roof.add(StickMeasured{"A", TrimRole::main, {feet(10), {}}, feet(9) + inches(11)});
    Plan plan = roof.plan();
    REQUIRE(plan.sticks.size() == 1);
    CHECK(plan.sticks[0].length == inches(119));
    roof.add(StickSpoiled{"A", TrimRole::main, {inches(119), plan.sticks[0].offcut}});
    plan = roof.plan();
    REQUIRE(plan.sticks.size() == 1);
    CHECK(plan.sticks[0].length == feet(10));
    CHECK(roof.job().sticks_opened == 1);
}

TEST_CASE("Whatever is said of sticks and plans, the same record gives the same sound plan") {
    const Catalogue catalogue = hemline_test::invented_catalogue();
    CHECK(rc::check("same record, same plan", [&] {
        Roof roof{catalogue, {}};
        const int edges = *rc::gen::inRange(1, 5);
        const auto any_length = [] { return sixteenths(*rc::gen::inRange<std::int64_t>(0, 4000)); };
        for (int e = 0; e < edges; ++e) {
            roof.eave(std::string(1, static_cast<char>('A' + e)),
                      sixteenths(*rc::gen::inRange<std::int64_t>(400, 9000)));
        }
        for (int n = *rc::gen::inRange(0, 8); n > 0; --n) {
            const std::string edge(1, static_cast<char>('A' + *rc::gen::inRange(0, edges)));
            const auto any_event =
                EventId{1, *rc::gen::inRange<std::uint32_t>(
                               1, static_cast<std::uint32_t>(roof.events.size() + 1))};
            const MetalTaken metal{any_length(), *rc::gen::arbitrary<bool>()
                                                     ? std::optional(any_event)
                                                     : std::nullopt};
            const auto role = *rc::gen::element(TrimRole::main, TrimRole::cleat);
            switch (*rc::gen::inRange(0, 9)) {
                case 0:
                    roof.add(MetalCounted{edge, role, any_length(),
                                          *rc::gen::inRange<std::int64_t>(0, 4)});
                    break;
                case 1:
                    roof.add(StickMeasured{edge, role, metal, any_length()});
                    break;
                case 2:
                    roof.add(StickSpoiled{edge, role, metal});
                    break;
                case 3:
                    roof.add(StockChosen{{any_length(), any_length()}});
                    break;
                case 4:
                    roof.add(SupplyChosen{
                        edge, role, *rc::gen::element(Supply::as_wanted, Supply::on_hand_only)});
                    break;
                case 5:
                    roof.add(LooksChosen{edge, *rc::gen::element(Looks::balanced, Looks::free)});
                    break;
                case 6:
                    roof.add(PieceCut{edge, role, *rc::gen::inRange(1, 4), any_length(), metal});
                    break;
                case 7:
                    roof.add(PlanChosen{*rc::gen::element(Prefer::looks, Prefer::sticks),
                                        "",
                                        0,
                                        0,
                                        0,
                                        {{edge, role, {any_length(), any_length()}}}});
                    break;
                default:
                    roof.pick(roof.choices().back());
            }
        }
        const Job job = roof.job();
        const Plan plan = roof.plan();
        for (const Run& run : plan.runs) {
            const EdgeWork* work = job.find(run.edge);
            Length sum;
            for (const PlannedPiece& piece : run.pieces) {
                sum += piece.covers;
            }
            RC_ASSERT(work->readings.front().length == sum);
        }
        const Plan again = make_plan(replay(roof.events), catalogue, trim_only);
        RC_ASSERT(all_cuts(again) == all_cuts(plan));
        RC_ASSERT(again.sticks.size() == plan.sticks.size());
        for (std::size_t i = 0; i < plan.sticks.size(); ++i) {
            RC_ASSERT(again.sticks[i].used == plan.sticks[i].used);
            RC_ASSERT(plan.sticks[i].used <= plan.sticks[i].length);
        }
    }));
}

TEST_CASE(
    "With looks or laps first, the tablet's quick plan is the one the desk finds first of all") {
    const Catalogue catalogue = hemline_test::invented_catalogue();
    CHECK(rc::check("one plan", [&] {
        Roof roof{catalogue, {}};
        const int edges = *rc::gen::inRange(1, 9);
        for (int e = 0; e < edges; ++e) {
            roof.eave(std::string(1, static_cast<char>('A' + e)),
                      sixteenths(*rc::gen::inRange<std::int64_t>(400, 9000)));
        }
        PlanOptions options = trim_only;
        options.prefer = *rc::gen::element(Prefer::looks, Prefer::laps);
        const Plan tablet = make_plan(roof.job(), catalogue, options);
        options.choices = ListedChoices::all;
        const Plan desk = make_plan(roof.job(), catalogue, options);
        RC_ASSERT(all_cuts(tablet) == all_cuts(desk));
        RC_ASSERT(new_sticks(tablet) == new_sticks(desk));
    }));
}
