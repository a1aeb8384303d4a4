#include "engine/body/body_sides.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/body/in_line.h"
#include "engine/roof/nearest.h"
#include "engine/roof/outline_adjust.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

constexpr std::array<std::pair<SideKind, std::string_view>, 6> side_words = {
    {{SideKind::eave, "eave"},
     {SideKind::transition, "transition"},
     {SideKind::gable, "gable"},
     {SideKind::wall, "wall"},
     {SideKind::high_eave, "high_eave"},
     {SideKind::open, "open"}}};

constexpr std::size_t sides_most = 60;

Walk walk_of(std::span<const BodySide> sides, Tape tape) {
    Walk walk;
    for (const BodySide& side : sides) {
        WalkSide walked;
        walked.length = side.length;
        if (side.length) {
            walked.tape_nm = static_cast<double>(allowed_difference(*side.length, tape).nm()) / 2;
        }
        walked.after.inside = side.corner;
        walked.after.within = off_of_stated(side.corner);
        walk.sides.push_back(walked);
    }
    return walk;
}

std::optional<Problem> check(std::span<const BodySide> sides) {
    if (sides.size() < 3 || sides.size() > sides_most) {
        return Problem{
            say("A walk has 3 to {1} sides; this one has {2}.", sides_most, sides.size()),
            say("Give each body of the roof a walk of its own.")};
    }
    for (const BodySide& side : sides) {
        if (!is_upright(side) && (!side.pitch || rise_in_12_of(*side.pitch) <= 0)) {
            return Problem{say("Side {1} has no pitch.", side.id),
                           say("Give the pitch of the roof that rises from it.")};
        }
        if (side.corner < degrees(20) || side.corner > degrees(340)) {
            return Problem{say("The corner after {1} is {2}.", side.id, print_degrees(side.corner)),
                           say("Corners are worked out from 20° to 340°.")};
        }
    }
    return {};
}

}  // namespace

std::string_view word_of(SideKind kind) {
    return std::find_if(side_words.begin(), side_words.end(),
                        [&](const auto& word) { return word.first == kind; })
        ->second;
}

std::optional<SideKind> side_kind_of(std::string_view word) {
    for (const auto& [kind, its_word] : side_words) {
        if (its_word == word) {
            return kind;
        }
    }
    return {};
}

bool is_upright(SideKind kind) { return kind != SideKind::eave && kind != SideKind::transition; }

bool is_upright(const BodySide& side) { return is_upright(side.kind) || !side.meets.empty(); }

Result<ClosedSides> close_sides(std::span<const BodySide> sides, Tape tape) {
    if (const std::optional<Problem> problem = check(sides)) {
        return *problem;
    }
    const Walk walk = walk_of(sides, tape);
    const Closing closing = close_walk(walk);
    if (!closing.turns_close) {
        return Problem{say("The turns of the walk make {1}, not 360°.",
                           print_degrees(full_turn - closing.turn_left.value())),
                       say("Look at each corner: outside or inside?")};
    }
    if (implied_nm(closing).size() != closing.unread.size()) {
        return Problem{say("The length of side {1} is not known, and the others do not settle it.",
                           sides[closing.unread.front()].id),
                       say("Read it.")};
    }
    ClosedSides closed;
    closed.miss = nearest_nm(std::hypot(closing.unexplained.x, closing.unexplained.y));
    closed.closes = closing.lies_within;
    const std::vector<PlanVector> places = adjusted_places(walk, closing);
    double all_tapes = 0;
    for (const WalkSide& side : walk.sides) {
        all_tapes += side.tape_nm;
    }
    std::vector<SideWithin> within;
    for (std::size_t i = 0; i < sides.size(); ++i) {
        const double inward = is_upright(sides[i]) ? 0 : 12 / rise_in_12_of(*sides[i].pitch);
        closed.sides.push_back({places[i], places[(i + 1) % sides.size()], inward});
        if (dot(closed.sides[i].to - closed.sides[i].from, closing.ways[i]) < 1e6) {
            return Problem{say("The other lengths leave nothing of side {1}.", sides[i].id),
                           say("Read them again, or take the side out.")};
        }
        within.push_back({sides[i].length ? walk.sides[i].tape_nm : all_tapes,
                          radians_of(walk.sides[i].after.within)});
    }
    closed.sides = put_in_line(std::move(closed.sides), within);
    return closed;
}

}  // namespace hemline
