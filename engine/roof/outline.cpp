#include "engine/roof/outline.h"

#include <algorithm>
#include <cmath>

#include "engine/roof/edge_shape.h"
#include "engine/roof/nearest.h"
#include "engine/roof/outline_adjust.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

/// The length with which a side is drawn that nobody has read.
double guessed_nm(const Walk& walk) {
    double sum = 0;
    int read = 0;
    for (const WalkSide& side : walk.sides) {
        if (side.length) {
            sum += static_cast<double>(side.length->nm()) * side.plan_of_one;
            ++read;
        }
    }
    return read == 0 ? static_cast<double>(feet(10).nm()) : sum / read;
}

/// The places as walked; unread sides at `unread_nm` each.
std::vector<PlanVector> walked_places(const Walk& walk, const Closing& closing,
                                      const std::vector<double>& unread_nm) {
    std::vector<PlanVector> places = {{}};
    std::size_t unread = 0;
    for (std::size_t i = 0; i < walk.sides.size(); ++i) {
        const WalkSide& side = walk.sides[i];
        const double nm = side.length ? static_cast<double>(side.length->nm()) * side.plan_of_one
                                      : unread_nm[unread++];
        const PlanVector way = closing.ways[i];
        places.push_back({places.back().x + way.x * nm, places.back().y + way.y * nm});
    }
    return places;
}

std::vector<OutlineLine> lines_of(const Walk& walk, const Closing& closing) {
    const std::vector<double> implied = implied_nm(closing);
    const bool settled = implied.size() == closing.unread.size() &&
                         std::all_of(implied.begin(), implied.end(), [](double nm) {
                             return nm > 0 && nm < static_cast<double>(longest_readable().nm());
                         });
    const bool whole = settled && closing.turns_close && walk.sides.size() > 2;
    const std::vector<double> unread_nm =
        whole ? implied : std::vector<double>(closing.unread.size(), guessed_nm(walk));
    const std::vector<PlanVector> places =
        whole ? adjusted_places(walk, closing) : walked_places(walk, closing, unread_nm);
    const auto point = [&](std::size_t i) {
        return PlanPoint{nearest_nm(places[i].x), nearest_nm(places[i].y)};
    };
    std::vector<OutlineLine> lines;
    std::size_t unread = 0;
    for (std::size_t i = 0; i < walk.sides.size(); ++i) {
        OutlineLine line;
        const WalkSide& side = walk.sides[i];
        line.edge = side.edge ? walk.edges[*side.edge].edge.id : "";
        line.kind = side.edge ? walk.edges[*side.edge].edge.kind : EdgeKind::gable;
        line.inside = side.after.inside;
        line.from = point(i);
        line.to = point(i + 1);
        line.plan =
            nearest_nm(side.length ? static_cast<double>(side.length->nm()) * side.plan_of_one
                                   : unread_nm[unread++]);
        line.length = side.length ? LengthIs::read : whole ? LengthIs::implied : LengthIs::guessed;
        lines.push_back(line);
    }
    return lines;
}

const Edge& row_after(const Walk& walk, std::size_t i) {
    return walk.edges[walk.sides[(i + 1) % walk.sides.size()].edge.value()].edge;
}

void add_corner_note(std::vector<OutlineNote>& notes, const Walk& walk, std::size_t i) {
    const WalkSide& side = walk.sides[i];
    if (!side.edge || (side.after.inside && !side.after.against)) {
        return;
    }
    const Edge& edge = walk.edges[*side.edge].edge;
    const std::string end(word_of(finish_of(side)));
    const Text finish = end_spoken(finish_of(side));
    const std::string& next = row_after(walk, i).id;
    if (!side.after.inside) {
        notes.push_back({edge.id, "corner_" + end,
                         say("The corner between {1}'s {2} and the start of {3} is not known.",
                             edge.id, finish, next),
                         say("Write the plan angle inside the building in {1}.", "corner_" + end)});
        return;
    }
    notes.push_back({edge.id, end,
                     say("The rows contradict one another at the corner between {1}'s {2} and the "
                         "start of {3}: {4} against {5}.",
                         edge.id, finish, next, print_degrees(*side.after.inside),
                         print_degrees(*side.after.against)),
                     say("Look at that corner and write the same on both rows.")});
}

bool is_contradictory(const Walk& walk) {
    return std::any_of(walk.sides.begin(), walk.sides.end(),
                       [](const WalkSide& side) { return side.after.against.has_value(); });
}

/// Whether the rows fit one another in reverse order but not in their order.
bool goes_clockwise(const Walk& walk, const Closing& closing, Tape tape) {
    if (closing.turn_left == full_turn + full_turn) {
        return true;
    }
    const Walk other = lay_walk(std::vector(walk.edges.rbegin(), walk.edges.rend()), tape);
    return is_contradictory(walk) && !is_contradictory(other) && close_walk(other).turns_close;
}

std::vector<OutlineNote> notes_of(const Walk& walk, const Closing& closing, Tape tape) {
    std::vector<OutlineNote> notes;
    for (std::size_t i = 0; i < walk.sides.size(); ++i) {
        const WalkSide& side = walk.sides[i];
        if (side.edge && is_sloped(walk.edges[*side.edge].edge.kind) &&
            !walk.edges[*side.edge].edge.pitch) {
            notes.push_back({walk.edges[*side.edge].edge.id, "pitch",
                             say("This gable's pitch is not known, so its slope length says "
                                 "nothing of the plan."),
                             say("Read the pitch.")});
        }
        add_corner_note(notes, walk, i);
    }
    const std::string& first = walk.edges.front().edge.id;
    if (goes_clockwise(walk, closing, tape)) {
        notes.push_back({first, "edge",
                         say("The rows go round clockwise, the building on the right."),
                         say("List the rows the other way, the building on the left.")});
    } else if (closing.turn_left && !closing.turns_close) {
        notes.push_back({first, "left",
                         say("The turns of the walk make {1}, not 360°.",
                             print_degrees(full_turn - *closing.turn_left)),
                         say("Look at each corner: outside or inside?")});
    }
    return notes;
}

OutlineState state_of(const Walk& walk, const Closing& closing) {
    const bool corners_known = closing.turn_left.has_value();
    if (is_contradictory(walk) ||
        (corners_known && !(closing.turns_close && closing.lies_within))) {
        return OutlineState::misses;
    }
    return corners_known && closing.unread.empty() ? OutlineState::closes : OutlineState::open;
}

/// Which side of the line a – b the point lies on: above 0 to its left, 0 on it.
double side_of(const OutlineLine& line, PlanPoint p) {
    const auto nm = [](Length length) { return static_cast<double>(length.nm()); };
    return nm(line.to.x - line.from.x) * nm(p.y - line.from.y) -
           nm(line.to.y - line.from.y) * nm(p.x - line.from.x);
}

bool cross(const OutlineLine& a, const OutlineLine& b) {
    return side_of(a, b.from) * side_of(a, b.to) < 0 && side_of(b, a.from) * side_of(b, a.to) < 0;
}

std::optional<std::pair<std::size_t, std::size_t>> crossing_of(
    const std::vector<OutlineLine>& lines) {
    for (std::size_t i = 0; i < lines.size(); ++i) {
        for (std::size_t j = i + 2; j < lines.size(); ++j) {
            const bool neighbours = i == 0 && j + 1 == lines.size();
            if (!neighbours && cross(lines[i], lines[j])) {
                return std::pair(i, j);
            }
        }
    }
    return {};
}

/// A walk that comes back and crosses itself on the way.
void judge_crossing(Outline& outline) {
    outline.crossing =
        outline.state == OutlineState::closes ? crossing_of(outline.lines) : std::nullopt;
    if (!outline.crossing) {
        return;
    }
    outline.state = OutlineState::misses;
    const std::string& edge = outline.lines[outline.crossing->first].edge;
    const std::string& across = outline.lines[outline.crossing->second].edge;
    outline.notes.push_back({edge.empty() ? across : edge, "left",
                             say("The walk comes back, and its sides cross on the way."),
                             say("Look at each corner: outside or inside?")});
}

}  // namespace

Result<Outline> trace_outline(std::span<const WalkedEdge> edges, Tape tape) {
    const Walk walk = lay_walk(edges, tape);
    if (walk.edges.empty()) {
        return Problem{
            say("No eave and no gable is there to walk along."),
            say("List the eaves and gables in walking order, the building on the left.")};
    }
    if (walk.edges.size() > outline_edges_most) {
        return Problem{say("An outline of more than {1} edges is no roof's.", outline_edges_most),
                       say("Give each roof's outline a file of its own.")};
    }
    const Closing closing = close_walk(walk);
    Outline outline;
    outline.state = state_of(walk, closing);
    outline.turn_left = closing.turn_left;
    if (closing.turn_left) {
        const double miss = std::hypot(closing.unexplained.x, closing.unexplained.y);
        outline.miss = nearest_nm(miss);
        outline.miss_ahead = nearest_nm(closing.unexplained.x);
        outline.miss_left = nearest_nm(closing.unexplained.y);
        const PlanVector way =
            miss > 0 ? PlanVector{closing.unexplained.x / miss, closing.unexplained.y / miss}
                     : PlanVector{1, 0};
        outline.allowed = nearest_nm(reach_along(walk, closing, way));
    }
    outline.suspects = find_suspects(walk);
    outline.notes = notes_of(walk, closing, tape);
    outline.lines = lines_of(walk, closing);
    judge_crossing(outline);
    return outline;
}

std::string_view word_of(OutlineState state) {
    switch (state) {
        case OutlineState::closes:
            return "closes";
        case OutlineState::misses:
            return "misses";
        case OutlineState::open:
            return "open";
    }
    stop("an outline state without its word");
}

}  // namespace hemline
