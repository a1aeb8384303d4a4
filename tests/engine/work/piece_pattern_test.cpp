// Every trim on every edge that can have it: the card's marks are places of the flat pattern.
#include "engine/work/piece_pattern.h"
#include "engine/plan/make_plan.h"
#include "engine/record/job.h"

#include <algorithm>
#include <map>
#include <set>

#include "eave_job.h"
#include "engine/roof/edge_shape.h"
#include "engine/trim/meeting.h"
#include "engine/words/result.h"
#include "tests/engine/trim/is_simple.h"
#include "tests/engine/trim/sections.h"

using namespace hemline_test;

namespace {

/// A foot's or top's stick is cut square first, and then its tabs along their folds: where both are
/// cut square to their folds too, nothing of the first cut is left.
bool is_stick_end(const Card& card, const Mark& mark) {
    const EndWork work = mark.toward == Side::left ? card.left : card.right;
    return (work == EndWork::eave_foot || work == EndWork::top_mitre) &&
           (mark.kind == MarkKind::tab_end || mark.kind == MarkKind::end_cut) &&
           (mark.at == Length() || mark.at == card.cut);
}

/// Marks at which no metal is cut or folded.
bool only_seen(MarkKind kind) {
    return kind == MarkKind::lap_line || kind == MarkKind::bead || kind == MarkKind::corner_point;
}

std::set<std::int64_t> places_of(const FlatPattern& pattern) {
    std::set<std::int64_t> places;
    for (const FlatPoint& p : pattern.outline) {
        places.insert(p.x);
    }
    for (const FlatFold& fold : pattern.folds) {
        places.insert(fold.line.a.x);
        places.insert(fold.line.b.x);
    }
    for (const FlatLine& slit : pattern.slits) {
        places.insert(slit.a.x);
        places.insert(slit.b.x);
    }
    return places;
}

double area_of(const FlatOutline& outline) {
    double twice = 0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const FlatPoint a = outline[i], b = outline[(i + 1) % outline.size()];
        twice += static_cast<double>(a.x) * static_cast<double>(b.y) -
                 static_cast<double>(b.x) * static_cast<double>(a.y);
    }
    return std::abs(twice) / 2;
}

/// How much of the blank between the mark and the end it belongs to is cut away, in nm².
double missing_past(const FlatPattern& pattern, const Mark& mark) {
    const std::int64_t x0 = mark.toward == Side::left ? 0 : mark.at.nm();
    const std::int64_t x1 = mark.toward == Side::left ? mark.at.nm() : pattern.length.nm();
    const std::int64_t girth = pattern.legs.edges.back().nm();
    double there = 0;
    for (const FlatOutline& part :
         parts_in(pattern.outline, {{x0, 0}, {x0, girth}, {x1, girth}, {x1, 0}})) {
        there += area_of(part);
    }
    return static_cast<double>(x1 - x0) * static_cast<double>(girth) - there;
}

struct Tally {
    int cards = 0, marks = 0, wastes = 0;
    std::map<std::string, int> refused;
};

/// All cards of the edge, for main trim, wrap and cleat, as patterns.
void compare(const Edge& edge, const Catalogue& catalogue, const Sections& sections, Tally& tally) {
    Job job;
    job.edges.push_back(read_twice(edge, feet(23)));
    const Plan plan = make_plan(job, catalogue);
    for (const Run& run : plan.runs) {
        for (const PlannedPiece& piece : run.pieces) {
            const auto card = make_card(job, plan, catalogue, edge.id, run.role, piece.number);
            REQUIRE(card.ok());
            const auto pattern = piece_pattern(*card, edge, sections);
            if (!pattern) {
                ++tally
                      .refused[std::string(word_of(edge.kind)) + ", " +
                               spoken(card->left).english() + ", " + spoken(card->right).english() +
                               ": " + pattern.problem().what.english()];
                continue;
            }
            ++tally.cards;
            CHECK(hemline_test::is_simple(pattern->outline));
            CHECK(pattern->length == card->cut);
            CHECK(tab_faults(*pattern).empty());
            const auto places = places_of(*pattern);
            for (const Mark& mark : card->marks) {
                if (!only_seen(mark.kind) && !is_stick_end(*card, mark)) {
                    CHECK_MESSAGE(places.count(mark.at.nm()) == 1,
                                  word_of(edge.kind)
                                      << ' ' << run.trim << ' ' << spoken(card->left) << ", "
                                      << spoken(card->right) << ": " << spoken(mark.kind));
                    ++tally.marks;
                }
                // At the end itself nothing lies past the mark that could be seen missing.
                if (leaves_waste(*card, mark) && mark.at > Length() && mark.at < card->cut) {
                    CHECK_MESSAGE(missing_past(*pattern, mark) > 0, word_of(edge.kind)
                                                                        << ' ' << run.trim << ": "
                                                                        << spoken(mark.kind));
                    ++tally.wastes;
                }
            }
        }
    }
}

}  // namespace

TEST_CASE("every mark of every card is a place of its pattern, for all kinds and ends of edges" *
          doctest::test_suite("long")) {
    const Catalogue catalogue = own_catalogue();
    const Sections sections = sections_of_assets();
    Tally tally;
    for (const Trim& trim : catalogue.trims()) {
        for (const End left : ends_of(trim.kind, Side::left)) {
            for (const End right : ends_of(trim.kind, Side::right)) {
                for (const std::int64_t rise : {3, 6, 12}) {
                    Edge edge;
                    edge.id = "A";
                    edge.kind = trim.kind;
                    edge.trim = trim.role == TrimRole::main ? trim.id : "";
                    edge.left = left;
                    edge.right = right;
                    edge.pitch = rise_in_12(rise);
                    edge.pitch2 = rise_in_12(rise == 6 ? 8 : rise);
                    edge.wrap = trim.role == TrimRole::wrap;
                    compare(edge, catalogue, sections, tally);
                }
            }
        }
    }
    for (const auto& [why, times] : tally.refused) {
        MESSAGE(why << " " << times);
    }
    CHECK(tally.refused.empty());
    CHECK(tally.cards > 1000);
    CHECK(tally.marks > 3000);
    CHECK(tally.wastes > 1000);
}

TEST_CASE("the other hand of an eave's end has the mirrored pattern, exactly") {
    const Catalogue catalogue = own_catalogue();
    const Sections sections = sections_of_assets();
    int compared = 0;
    for (const char* trim : {"eave_rolled", "eave_two_part", "high_eave"}) {
        for (const End end : ends_of(EdgeKind::eave, Side::left)) {
            for (std::int64_t rise = 1; rise <= 18; ++rise) {
                const auto made = [&](Side side) {
                    Edge edge;
                    edge.id = "A";
                    edge.kind = catalogue.find(trim)->kind;
                    edge.trim = trim;
                    edge.pitch = rise_in_12(rise);
                    edge.first = side;
                    (side == Side::left ? edge.left : edge.right) = end;
                    Job job;
                    job.edges.push_back(read_twice(edge, feet(23)));
                    const Plan plan = make_plan(job, catalogue);
                    const auto card = make_card(job, plan, catalogue, "A", TrimRole::main, 1);
                    REQUIRE(card.ok());
                    return piece_pattern(*card, edge, sections);
                };
                const auto left = made(Side::left), right = made(Side::right);
                REQUIRE((left.ok() && right.ok()));
                CHECK(mirrored(*left).outline == right->outline);
                ++compared;
            }
        }
    }
    CHECK(compared > 200);
}

TEST_CASE("each leg's tab is folded by its own roof: plumb at a foot, over the ridge at a top") {
    Card card;
    Edge edge;
    edge.kind = EdgeKind::hip;
    edge.pitch = {SlopeNotation::degrees, 40'000'000};
    edge.pitch2 = {SlopeNotation::degrees, 25'000'000};
    card.left = EndWork::eave_foot;
    CHECK(tab_folds(card, edge, Side::left).near == doctest::Approx(50));
    CHECK(tab_folds(card, edge, Side::left).far == doctest::Approx(65));
    card.right = EndWork::top_mitre;
    CHECK(tab_folds(card, edge, Side::right).near == doctest::Approx(80));
    CHECK(tab_folds(card, edge, Side::right).far == doctest::Approx(50));
    edge.corner_left = degrees(135);
    card.left = EndWork::corner_tab;
    CHECK(tab_folds(card, edge, Side::left).tab == doctest::Approx(45));
}

TEST_CASE("a trim without a section is a problem that says so") {
    Card card;
    card.trim = "gutter";
    const auto pattern = piece_pattern(card, {}, sections_of_assets());
    REQUIRE_FALSE(pattern.ok());
    CHECK(pattern.problem().what.english().find("gutter") != std::string::npos);
}
