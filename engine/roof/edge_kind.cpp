#include "engine/roof/edge_kind.h"

#include <string>

#include "engine/require.h"

namespace hemline {

namespace {

constexpr End of_no_line[] = {End::open};
constexpr End around_the_house[] = {End::gable, End::corner_out, End::corner_in, End::wall,
                                    End::open};
constexpr End of_ridge[] = {End::gable, End::wall, End::open, End::ridge, End::hip, End::valley};
constexpr End foot_of_gable[] = {End::wall, End::open, End::eave, End::valley};
constexpr End top_of_gable[] = {End::wall, End::open, End::eave, End::ridge, End::hip, End::valley};
constexpr End foot_of_hip[] = {End::wall, End::open, End::eave, End::valley};
constexpr End top_of_hip[] = {End::gable, End::wall, End::open, End::ridge, End::hip, End::valley};
constexpr End foot_of_valley[] = {End::gable, End::wall, End::open, End::eave};
constexpr End foot_of_sidewall[] = {End::corner_out, End::corner_in, End::wall,
                                    End::open,       End::eave,      End::valley};
constexpr End top_of_sidewall[] = {End::corner_out, End::corner_in, End::wall, End::open,
                                   End::eave,       End::ridge,     End::hip,  End::valley};
constexpr End across_the_roof[] = {End::gable, End::corner_out, End::corner_in, End::wall,
                                   End::open,  End::hip,        End::valley};

constexpr End of_curb[] = {End::corner_out, End::wall, End::open};

constexpr KindOfEdge kinds[] = {
    {.kind = EdgeKind::eave,
     .word = "eave",
     .spoken = phrase("eave"),
     .title = phrase("Eave {1}"),
     .tilt = -1,
     .ends = EndsLike::eave,
     .left = around_the_house,
     .right = around_the_house,
     .met_as = End::eave,
     .turn = 0},
    {.kind = EdgeKind::gable,
     .word = "gable",
     .spoken = phrase("gable"),
     .title = phrase("Gable {1}"),
     .lies = Lies::sloped,
     .ends = EndsLike::gable,
     .left = foot_of_gable,
     .right = top_of_gable,
     .left_usual = End::eave,
     .right_usual = End::ridge,
     .met_as = End::gable,
     .turn = 3},
    {.kind = EdgeKind::ridge,
     .word = "ridge",
     .spoken = phrase("ridge"),
     .title = phrase("Ridge {1}"),
     .roofs = 2,
     .fold = FoldFrom::both_roofs,
     .left = of_ridge,
     .right = of_ridge,
     .left_usual = End::gable,
     .right_usual = End::gable,
     .met_as = End::ridge,
     .turn = 6,
     .closed = Closed::both_sides,
     .screw_lines = 2},
    {.kind = EdgeKind::hip,
     .word = "hip",
     .spoken = phrase("hip"),
     .title = phrase("Hip {1}"),
     .lies = Lies::sloped,
     .roofs = 2,
     .fold = FoldFrom::eaves_at_foot,
     .ends = EndsLike::valley,
     .left = foot_of_hip,
     .right = top_of_hip,
     .left_usual = End::eave,
     .right_usual = End::ridge,
     .met_as = End::hip,
     .turn = 5,
     .closed = Closed::both_sides,
     .screw_lines = 2},
    {.kind = EdgeKind::valley,
     .word = "valley",
     .spoken = phrase("valley"),
     .title = phrase("Valley {1}"),
     .lies = Lies::sloped,
     .roofs = 2,
     .fold = FoldFrom::eaves_at_foot,
     .toward = Toward::up,
     .ends = EndsLike::valley,
     .left = foot_of_valley,
     .right = top_of_hip,
     .left_usual = End::eave,
     .right_usual = End::ridge,
     .met_as = End::valley,
     .turn = 1,
     .screw_lines = 2,
     .in_water = true},
    {.kind = EdgeKind::sidewall,
     .word = "sidewall",
     .spoken = phrase("sidewall"),
     .title = phrase("Sidewall {1}"),
     .lies = Lies::sloped,
     .toward = Toward::up,
     .left = foot_of_sidewall,
     .right = top_of_sidewall,
     .left_usual = End::eave,
     .right_usual = End::wall,
     .met_as = End::wall,
     .turn = 2},
    {.kind = EdgeKind::headwall,
     .word = "headwall",
     .spoken = phrase("headwall"),
     .title = phrase("Headwall {1}"),
     .toward = Toward::up,
     .tilt = -1,
     .left = across_the_roof,
     .right = across_the_roof,
     .left_usual = End::gable,
     .right_usual = End::gable,
     .met_as = End::wall,
     .turn = 2,
     .closed = Closed::one_side},
    {.kind = EdgeKind::transition,
     .word = "transition",
     .spoken = phrase("transition"),
     .title = phrase("Transition {1}"),
     .roofs = 2,
     .fold = FoldFrom::change_of_pitch,
     .left = across_the_roof,
     .right = across_the_roof,
     .left_usual = End::gable,
     .right_usual = End::gable,
     .turn = 2,
     .closed = Closed::one_side},
    {.kind = EdgeKind::high_eave,
     .word = "high_eave",
     .spoken = phrase("high eave"),
     .title = phrase("High eave {1}"),
     .tilt = 1,
     .ends = EndsLike::eave,
     .left = around_the_house,
     .right = around_the_house,
     .met_as = End::eave,
     .turn = 4,
     .closed = Closed::one_side},
    {.kind = EdgeKind::curb_head,
     .word = "curb_head",
     .spoken = phrase("curb head"),
     .title = phrase("Curb head {1}"),
     .toward = Toward::up,
     .tilt = 1,
     .ends = EndsLike::curb,
     .left = of_curb,
     .right = of_curb,
     .left_usual = End::corner_out,
     .right_usual = End::corner_out,
     .turn = 3,
     .after = EdgeKind::sidewall,
     .in_water = true},
    {.kind = EdgeKind::penetration,
     .word = "penetration",
     .spoken = phrase("penetration"),
     .title = phrase("Penetration {1}"),
     .lies = Lies::on_no_line,
     .roofs = 0,
     .fold = FoldFrom::nothing,
     .ends = EndsLike::nothing,
     .left = of_no_line,
     .right = of_no_line,
     .turn = 2},
    {.kind = EdgeKind::panels,
     .word = "panels",
     .spoken = phrase("panels"),
     .title = phrase("Panels {1}"),
     .lies = Lies::on_no_line,
     .roofs = 0,
     .fold = FoldFrom::nothing,
     .ends = EndsLike::nothing,
     .left = of_no_line,
     .right = of_no_line},
};

}  // namespace

std::span<const KindOfEdge> kinds_of_edge() { return kinds; }

const KindOfEdge& facts_of(EdgeKind kind) {
    for (const KindOfEdge& row : kinds) {
        if (row.kind == kind) {
            return row;
        }
    }
    stop("an edge kind without its row");
}

std::string_view word_of(EdgeKind kind) { return facts_of(kind).word; }

std::optional<EdgeKind> edge_kind_of(std::string_view word) {
    for (const KindOfEdge& row : kinds) {
        if (row.word == word) {
            return row.kind;
        }
    }
    return {};
}

Text spoken(EdgeKind kind) { return say(facts_of(kind).spoken); }

Text title_of(EdgeKind kind, std::string_view edge) {
    return say(facts_of(kind).title, std::string(edge));
}

std::string_view word_of(Toward toward) { return toward == Toward::up ? "up" : "down"; }
Text spoken(Toward toward) {
    return toward == Toward::up ? say_of("fold", "up") : say_of("fold", "down");
}

}  // namespace hemline
