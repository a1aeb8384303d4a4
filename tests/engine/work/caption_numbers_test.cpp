// Every length in a step and in the captions of its pictures stands on the card of its piece too.
#include <set>

#include "engine/trim/end_metal.h"
#include "engine/work/fixing.h"
#include "engine/work/step_pictures.h"
#include "every_card.h"

using namespace hemline_test;

namespace {

void add_lengths(const Text& text, std::vector<Length>& lengths) {
    if (const auto* const length = std::get_if<Length>(&text.measured)) {
        lengths.push_back(*length);
    }
    for (const Text& value : text.values) {
        add_lengths(value, lengths);
    }
}

/// Marks are told from the end that is hooked, tabs and laps from the end they belong to.
std::set<std::int64_t> numbers_on(const Card& card) {
    std::set<std::int64_t> numbers = {card.cut.nm(), card.covers.nm(), card.lap.nm(),
                                      card.stick_length.nm()};
    for (const Mark& mark : card.marks) {
        numbers.insert(mark.at.nm());
        numbers.insert((mark.toward == Side::left ? mark.at : card.cut - mark.at).nm());
    }
    return numbers;
}

/// All steps of the edge; returns how many lengths were compared.
int compare(const Job& job, const Catalogue& catalogue, const Sections& sections,
            const std::vector<StepRule>& procedure) {
    const EdgeWork& work = job.edges.front();
    const Plan plan = make_plan(job, catalogue);
    int compared = 0;
    for (const Step& step : steps_of(work, plan, job.practice, procedure, catalogue)) {
        const StepMetal metal = metal_of(step, work, plan);
        const auto pictures = step_pictures({job, plan, catalogue, sections, nullptr}, step, work);
        if (!pictures || metal.shows == Shows::nothing) {
            continue;
        }
        const auto card = make_card(job, plan, catalogue, work.edge.id, metal.role, metal.piece);
        REQUIRE(card.ok());
        std::vector<Length> lengths;
        add_lengths(step.action, lengths);
        for (const StepPicture& picture : pictures->before_during_done) {
            add_lengths(picture.says, lengths);
        }
        const std::set<std::int64_t> on_card = numbers_on(*card);
        for (const Length length : lengths) {
            CAPTURE(word_of(work.edge.kind));
            CAPTURE(step.rule->id);
            CAPTURE(print_length(length, Marks::sixteenth));
            CHECK(length > Length());
            CHECK(on_card.count(length.nm()) == 1);
            ++compared;
        }
    }
    return compared;
}

}  // namespace

TEST_CASE("every length in a step and its captions is on the card, of metal to cut and metal cut" *
          doctest::test_suite("large")) {
    const Catalogue catalogue = own_catalogue();
    const Sections sections = sections_of_assets();
    int compared = 0;
    for (const Trim& trim : catalogue.trims()) {
        if (trim.role != TrimRole::main) {
            continue;
        }
        const auto procedure =
            read_procedure(assets_file("procedures/" + std::string(word_of(trim.kind)) + ".csv"));
        REQUIRE(procedure.ok());
        for (const End left : ends_of(trim.kind, Side::left)) {
            for (const End right : ends_of(trim.kind, Side::right)) {
                Edge edge = eave("A", left, right);
                edge.kind = trim.kind;
                edge.trim = trim.id;
                edge.pitch = rise_in_12(5);
                edge.pitch2 = rise_in_12(6);
                Job job;
                job.edges.push_back(read_twice(edge, feet(15)));
                compared += compare(job, catalogue, sections, *procedure);
                const Plan plan = make_plan(job, catalogue);
                for (const PlannedPiece& piece : find_run(plan, "A", TrimRole::main)->pieces) {
                    job.edges.front().cut.push_back(
                        {EventId{}, TrimRole::main, piece.number, piece.cut});
                }
                compared += compare(job, catalogue, sections, *procedure);
            }
        }
    }
    CHECK(compared > 2000);
}

TEST_CASE("a valley's tab is told as its card tells it: 1 in, not along the slant of its fold") {
    Edge edge = eave("A", End::eave, End::ridge);
    edge.kind = EdgeKind::valley;
    edge.pitch = rise_in_12(5);
    Job job;
    job.edges.push_back(read_twice(edge, feet(6)));
    const Catalogue catalogue = own_catalogue();
    const Plan plan = make_plan(job, catalogue);
    const auto procedure = read_procedure(assets_file("procedures/valley.csv")).value();
    for (const Step& step : steps_of(job.edges.front(), plan, job.practice, procedure, catalogue)) {
        if (step.rule->id != "foot") {
            continue;
        }
        const auto pictures = step_pictures({job, plan, catalogue, sections_of_assets(), nullptr},
                                            step, job.edges.front());
        REQUIRE(pictures.ok());
        CHECK(pictures->before_during_done[0].says.english() == "The tab of 1 in is still flat.");
        return;
    }
    FAIL("no step at the foot");
}
