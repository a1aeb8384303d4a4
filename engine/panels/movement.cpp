#include "engine/panels/movement.h"

#include <algorithm>

#include "engine/panels/panel_rules.h"
#include "engine/roof/nearest.h"

namespace hemline {

namespace {

Length bent(Length least) { return round_up_to(least, panel_rule::bend_grid); }

Length moved(const MovementAsked& asked, Temperature from, Temperature to) {
    return nearest_nm(static_cast<double>(asked.length.nm()) * expansion_of(asked.metal) *
                      (fahrenheit_of(to) - fahrenheit_of(from)));
}

std::optional<Problem> unusable(const MovementAsked& asked) {
    if (asked.metal == MetalFamily::other) {
        return Problem{say("How far this metal moves is not known."),
                       say("Write steel, copper, stainless steel, aluminum or zinc.")};
    }
    if (asked.length <= Length()) {
        return Problem{say("No metal is left to move."),
                       say("Give the length from the fixed line to the free end.")};
    }
    const MetalTemperatures& at = asked.at;
    if (at.now < at.coldest || at.now > at.hottest) {
        return Problem{say("The metal is at {1} now, which is not between {2} and {3}.",
                           print_temperature(at.now), print_temperature(at.coldest),
                           print_temperature(at.hottest)),
                       say("Read the metal again, or correct its coldest and hottest.")};
    }
    return {};
}

/// Of the length, `from_line` of it.
Length share_of(Length moves, Length length, Length from_line) {
    return nearest_nm(static_cast<double>(moves.nm()) * static_cast<double>(from_line.nm()) /
                      static_cast<double>(length.nm()));
}

}  // namespace

Result<Movement> movement_of(const MovementAsked& asked) {
    if (auto problem = unusable(asked)) {
        return *problem;
    }
    Movement movement;
    movement.shrink = moved(asked, asked.at.coldest, asked.at.now);
    movement.grow = moved(asked, asked.at.now, asked.at.hottest);
    if (asked.fixed == FixedLine::eave) {
        movement.gap = panel_rule::pinned_gap;
        movement.hem = panel_rule::pinned_hem;
        movement.lip_least = movement.hem - movement.gap;
        movement.lip = std::max(asked.lip, movement.lip_least);
        movement.top_room = bent(movement.grow + panel_rule::end_clear);
        movement.cover = bent(movement.shrink + panel_rule::cap_cover);
        return movement;
    }
    movement.gap = bent(movement.shrink + panel_rule::gap_clear);
    movement.hem = bent(movement.gap + movement.grow + panel_rule::hold);
    movement.lip_least = bent(movement.hem - movement.gap + movement.shrink);
    movement.lip = std::max(asked.lip, movement.lip_least);
    if (movement.hem > panel_rule::hem_most) {
        movement.refused.push_back(
            {say("The hem would be {1} wide; more than {2} is not bent.", movement.hem,
                 panel_rule::hem_most),
             say("Pin the panels nearer to their middle, or break their length.")});
    }
    return movement;
}

std::optional<Problem> lip_jams(const Movement& movement, Length lip) {
    if (lip >= movement.lip_least) {
        return {};
    }
    return Problem{say("In the cold the hem jams on a lip of {1}.", lip),
                   say("Bend the lip {1} wide or wider.", movement.lip_least)};
}

Result<ClipMark> clip_mark(const Movement& movement, Length length, Length from_line,
                           Length travel) {
    const Length grows = share_of(movement.grow, length, from_line);
    const Length shrinks = share_of(movement.shrink, length, from_line);
    const Length spare = travel - grows - shrinks;
    if (spare < Length()) {
        return Problem{say("There the panel moves {1}, and the clip only {2}.",
                           CloseLength{grows + shrinks}, travel),
                       say("Take clips that travel farther, or a fixed line that is nearer.")};
    }
    const Length half = Length::of_nm(spare.nm() / 2);
    return ClipMark{grows + half, travel - grows - half};
}

}  // namespace hemline
