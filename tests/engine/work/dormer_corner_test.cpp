// The corner of a dormer, chimney or curb: its headwall and a sidewall folded up and put together.
#include <algorithm>
#include <cmath>

#include "engine/trim/meeting.h"
#include "engine/words/result.h"
#include "engine/work/mark_deeds.h"
#include "engine/work/order.h"
#include "every_card.h"

using namespace hemline_test;

namespace {

constexpr double inch = 25.4, touch_mm = 0.1;
constexpr double grid_mm = 0.85;  // as near as a cut on 1/16 in brings it

Edge wall_edge(const std::string& id, EdgeKind kind, End left, End right, int rise) {
    Edge edge = eave(id, left, right);
    edge.kind = kind;
    edge.pitch = rise_in_12(rise);
    return edge;
}

struct WallPiece {
    Card card;
    FlatPattern pattern;
};

WallPiece wall_piece(const EdgeWork& work) {
    Job job;
    job.edges.push_back(work);
    const Catalogue catalogue = own_catalogue();
    const auto card =
        make_card(job, make_plan(job, catalogue), catalogue, work.edge.id, TrimRole::main, 1);
    REQUIRE(card.ok());
    const auto pattern = piece_pattern(*card, work.edge, sections_of_assets());
    REQUIRE_MESSAGE(pattern.ok(), (pattern ? Text() : pattern.problem().what));
    return {*card, *pattern};
}

/// The dormer's corner at 0, 0, 0: its front along x, the roof climbing with y, its side along y.
struct DormerCorner {
    std::vector<Face> front, side;
    double slope = 0;  ///< radians
};

const Face& leg_face(const std::vector<Face>& faces, std::size_t leg) {
    return *std::find_if(faces.begin(), faces.end(),
                         [&](const Face& face) { return !face.is_tab && face.leg == leg; });
}
const Face& tab_face(const std::vector<Face>& faces, Side side) {
    const auto tab = std::find_if(faces.begin(), faces.end(), [&](const Face& face) {
        return face.is_tab && face.side == side;
    });
    REQUIRE(tab != faces.end());
    return *tab;
}

DormerCorner dormer_corner(int rise, Side at, const std::string& trim) {
    const WallPiece front = wall_piece(read_twice(
        wall_edge("W", EdgeKind::headwall, End::corner_out, End::corner_out, rise), inches(72)));
    EdgeWork side_work =
        read_twice(wall_edge("S", EdgeKind::sidewall, End::corner_out, End::wall, rise), feet(6));
    side_work.edge.trim = trim;
    if (at == Side::left) {
        put_foot_right(side_work);  // facing that wall its foot lies at the right
    }
    const WallPiece side = wall_piece(side_work);
    DormerCorner corner;
    corner.slope = rise_in_12_of(rise_in_12(rise)) / 12;
    corner.slope = std::atan(corner.slope);
    const double c = std::cos(corner.slope), s = std::sin(corner.slope);
    const FoldProgress done = step_of(FoldStep::finished);
    const double from_left = at == Side::left ? 5 * inch : (5 + 72) * inch;
    corner.front = fold_up(front.pattern, done,
                           shifted(resting(front.pattern, rise_in_12(rise)), {-from_left, 0, 0}));
    Placing placing;
    const double hand = at == Side::right ? 1 : -1;
    placing.along = {0, hand * c, hand * s};
    placing.across = {hand, 0, 0};
    placing.normal = {0, -s, c};
    const double bend = static_cast<double>(side.pattern.legs.edges[1].nm()) / 1e6;
    const double foot = at == Side::right
                            ? 4 * inch
                            : static_cast<double>(side.pattern.length.nm()) / 1e6 - 4 * inch;
    placing.origin = placing.along * -foot + placing.across * -bend;
    corner.side = fold_up(side.pattern, done, placing);
    return corner;
}

bool lies_on(const Face& face, const Space& p) { return farthest_mm(face, {p}) < touch_mm; }

}  // namespace

// checks 5F: 72 in and 48 in of wall, the sidewall's deck leg 5 in; computed, the rule is published
// practice (3 to 4 in a side) and the leg.
TEST_CASE(
    "the low apron runs past both corners: 82 in for a 72 in dormer, 58 for a 48 in chimney") {
    const Practice practice;
    CHECK(practice.apron_past ==
          std::max(inches(4), leg_width(*own_catalogue().find("sidewall"), LegName::flange)));
    for (const auto& [wide, cut] : {std::pair(72, 82), {48, 58}}) {
        for (const Side first : {Side::left, Side::right}) {
            Edge edge = wall_edge("W", EdgeKind::headwall, End::corner_out, End::corner_out, 6);
            edge.first = first;
            const WallPiece piece = wall_piece(read_twice(edge, inches(wide)));
            CHECK(piece.card.cut == inches(cut));
            CHECK(piece.card.covers == inches(wide));
        }
    }
    const WallPiece side = wall_piece(
        read_twice(wall_edge("S", EdgeKind::sidewall, End::corner_out, End::wall, 6), feet(6)));
    CHECK(side.card.cut == feet(6) + inches(4) + practice.turn_up);
}

TEST_CASE("a dormer's corner has metal wherever water runs, on every pitch and at both corners") {
    // The deck leg on the deck, 5 in; over the channel, on the seams, 2 in: beside it stands the
    // pan.
    for (const auto& [trim, leg] : {std::pair("sidewall", 5.0), {"sidewall_channel", 2.0}})
        for (const Side at : {Side::left, Side::right}) {
            for (int rise = 1; rise <= 18; ++rise) {
                CAPTURE(rise);
                CAPTURE(word_of(at));
                const DormerCorner corner = dormer_corner(rise, at, trim);
                const double out = at == Side::right ? 1 : -1;
                const Face& apron = leg_face(corner.front, 1);
                const Face& deck = leg_face(corner.side, 1);
                const double c = std::cos(corner.slope), s = std::sin(corner.slope);
                // Around the corner, from 4 in below the front to 4 in up the side, out to the
                // leg's edge.
                for (double x = 0.05; x <= leg - 0.25; x += 0.235) {
                    for (double y = -4; y <= 4; y += 0.25) {
                        const Space p{out * x * inch, y * inch * c, y * inch * s};
                        CHECK((lies_on(apron, p) || lies_on(deck, p)));
                        // The sidewall's foot lies over the apron, so that it sheds onto it.
                        CHECK((y > 0 || (lies_on(apron, p) && lies_on(deck, p))));
                    }
                }
                // 4 in of lap by the leg, less what the bend takes of the blank.
                const double lap = overlap_mm2(apron, deck) / inch / inch;
                CHECK(lap < 4 * leg + 0.001);
                CHECK(lap > 4 * leg - 0.5);
            }
        }
}

TEST_CASE("both wall legs are wrapped round the corner, flat on the walls and clear of the roof") {
    for (const Side at : {Side::left, Side::right}) {
        for (int rise = 1; rise <= 18; ++rise) {
            CAPTURE(rise);
            CAPTURE(word_of(at));
            const DormerCorner corner = dormer_corner(rise, at, "sidewall_channel");
            const Face& apron_tab = tab_face(corner.front, at);
            for (const Space& p : apron_tab.corners) {
                CHECK(std::abs(p.x) < touch_mm);  // on the side wall
                CHECK(p.y < 2 * inch + touch_mm);
                CHECK(p.z > p.y * std::tan(corner.slope) - touch_mm);
            }
            // The sidewall's leg goes over it.
            CHECK(farthest_mm(leg_face(corner.side, 0), apron_tab.corners) < grid_mm);
            const Face& foot_tab =
                tab_face(corner.side, at == Side::right ? Side::left : Side::right);
            double lowest = 1e9;
            for (const Space& p : foot_tab.corners) {
                CHECK(std::abs(p.y) < grid_mm);  // on the front
                lowest = std::min(lowest, p.z);
            }
            CHECK(lowest > -touch_mm);
            CHECK(lowest < touch_mm);
            CHECK(
                tab_faults(wall_piece(read_twice(wall_edge("W", EdgeKind::headwall, End::corner_out,
                                                           End::corner_out, rise),
                                                 inches(72)))
                               .pattern)
                    .empty());
        }
    }
}

TEST_CASE("the card says slit, fold and clip of a wrapped wall leg as its pattern has them") {
    const WallPiece apron = wall_piece(read_twice(
        wall_edge("W", EdgeKind::headwall, End::corner_out, End::corner_out, 6), inches(72)));
    std::vector<std::string> deeds;
    for (const Mark& mark : apron.card.marks) {
        if (mark.toward == Side::left) {
            deeds.push_back(print_length(mark.at, Marks::sixteenth) + ": " +
                            deed_of(apron.card, mark, apron.pattern).english());
        }
    }
    // 2 in · 6/12 = 1 in.
    CHECK(deeds == std::vector<std::string>{
                       "3 in: wall leg cut away from here to the end; the deck leg runs on",
                       "5 in: cut along the bend from the end to here; wall leg folded 90° round "
                       "the corner here; its lower edge cut from here to 1 in up at its end"});
    const WallPiece side = wall_piece(
        read_twice(wall_edge("S", EdgeKind::sidewall, End::corner_out, End::wall, 6), feet(6)));
    const auto mark = [&](MarkKind kind) {
        return std::find_if(side.card.marks.begin(), side.card.marks.end(),
                            [&](const Mark& one) { return one.kind == kind; })
            ->at;
    };
    CHECK(mark(MarkKind::wrap_fold) == inches(4));
    CHECK(mark(MarkKind::wrap_top) == inches(4 + 4));  // 8 in · 6/12 up the slope
}

// The order: common practice, no published source.
TEST_CASE("at an outside corner the headwall goes first, at an inside one the sidewall") {
    const auto waits = [](const Edge& one, const Edge& other, const char* id) {
        Job job;
        job.edges.push_back(read_twice(one, feet(6)));
        job.edges.push_back(read_twice(other, feet(6)));
        return fitting_waits_for(*job.find(id), job, own_catalogue()).english();
    };
    const Edge front = wall_edge("W", EdgeKind::headwall, End::corner_out, End::corner_out, 6);
    const Edge side = wall_edge("S", EdgeKind::sidewall, End::corner_out, End::wall, 6);
    CHECK(waits(front, side, "S") == "Finish headwall W first: sidewall S goes over it.");
    CHECK(waits(front, side, "W").empty());
    const Edge nook = wall_edge("W", EdgeKind::headwall, End::gable, End::wall, 6);
    const Edge beside = wall_edge("S", EdgeKind::sidewall, End::eave, End::wall, 6);
    CHECK(waits(beside, nook, "W") ==
          "Finish sidewall S first: the panels lie on it, and headwall W goes over the panels.");
    CHECK(waits(beside, nook, "S").empty());
    // Nothing joins a wall between gables and a dormer's side.
    const Edge apart = wall_edge("W", EdgeKind::headwall, End::gable, End::gable, 6);
    CHECK(waits(apart, side, "S").empty());
    CHECK(waits(apart, side, "W").empty());
}

TEST_CASE("headwalls and sidewalls never wait in a circle, whatever their ends") {
    std::vector<Edge> walls;
    for (const EdgeKind kind : {EdgeKind::headwall, EdgeKind::sidewall}) {
        for (const End left : {End::corner_out, End::corner_in, End::wall, End::open}) {
            for (const End right : {End::corner_out, End::corner_in, End::wall, End::open}) {
                walls.push_back(wall_edge(std::to_string(walls.size()), kind, left, right, 6));
            }
        }
    }
    Job job;
    for (const Edge& edge : walls) {
        job.edges.push_back(read_twice(edge, feet(6)));
    }
    const Catalogue catalogue = own_catalogue();
    for (std::size_t finished = 0; finished < walls.size(); ++finished) {
        const auto free = std::find_if(job.edges.begin(), job.edges.end(), [&](const auto& work) {
            return !work.finished && fitting_waits_for(work, job, catalogue).empty();
        });
        REQUIRE(free != job.edges.end());
        free->finished = EventId{1, 1};
    }
}

// Through the steps: the foot's steps come at the foot alone, so not at the head of a curb.
TEST_CASE("a sidewall's steps at a corner come where its foot is at one") {
    const Catalogue catalogue = own_catalogue();
    const auto procedure = read_procedure(assets_file("procedures/sidewall.csv")).value();
    const auto has_wrap = [&](End left, End right) {
        Job job;
        job.edges.push_back(
            read_twice(wall_edge("S", EdgeKind::sidewall, left, right, 6), feet(6)));
        const auto steps =
            steps_of(job.edges[0], make_plan(job, catalogue), job.practice, procedure, catalogue);
        return std::any_of(steps.begin(), steps.end(), [](const Step& step) {
            return step.rule->id == "wrap" && step.length_least == inches(4);
        });
    };
    CHECK(has_wrap(End::corner_out, End::corner_out));
    CHECK_FALSE(has_wrap(End::eave, End::corner_out));
}
