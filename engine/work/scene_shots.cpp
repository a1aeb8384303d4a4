#include "engine/work/scene_shots.h"

#include <cmath>

namespace hemline {

Shots comes(const Props& base, const Props& thing, const Space& from, std::optional<Space> piece) {
    return {Shot{say("Not there yet."), piece, base},
            Shot{say("It comes to its place."), piece, both(base, moved(thing, from))},
            Shot{say("It lies in its place."), piece, both(base, thing)}};
}

Shots piece_comes(const Props& base, const Space& from) {
    return {Shot{say("Not there yet."), nowhere, base},
            Shot{say("It comes to its place."), from, base},
            Shot{say("It lies in its place."), in_place, base}};
}

Shots piece_put_right(const Props& base, const Space& off) {
    return {Shot{say("So it is wrong."), off, base}, Shot{say("Put it right."), off * 0.4, base},
            Shot{say("So it is right."), in_place, base}};
}

Shots judged(const Props& base, const Props& wrong, const Props& look, const Props& right,
             std::optional<Space> piece) {
    return {Shot{say("So it is wrong."), piece, both(base, wrong)},
            Shot{say("Look here."), piece, both(base, look)},
            Shot{say("So it is right."), piece, both(base, right)}};
}

Shots fastened(const Props& base, const LegPatch& on, const std::vector<double>& xs, double a,
               double up, std::optional<Space> piece) {
    const auto half = static_cast<std::ptrdiff_t>((xs.size() + 1) / 2);
    const std::vector<double> first(xs.begin(), xs.begin() + half);
    return {Shot{say("None is in yet."), piece, base},
            Shot{say("From one end to the other."), piece, both(base, {heads(on, first, a, up)})},
            Shot{say("All are in."), piece, both(base, {heads(on, xs, a, up)})}};
}

Shots measured(const Props& base, const LegPatch& on, double x0, double x1, double a0, double a1,
               std::optional<Space> piece, double up) {
    const bool is_along = std::abs(x1 - x0) > std::abs(a1 - a0);
    const auto tape = [&](double part) {
        const double x = x0 + (x1 - x0) * part, a = a0 + (a1 - a0) * part;
        return is_along ? sheet(Stuff::gauge, on, x0, x, a0 - 6, a0 + 6, up)
                        : sheet(Stuff::gauge, on, x0 - 6, x0 + 6, a0, a, up);
    };
    const Prop hook = heads(on, {x0}, a0, up + 1), read = heads(on, {x1}, a1, up + 1);
    return {Shot{say("The tape hooks here."), piece, both(base, {hook})},
            Shot{say("Lay it straight."), piece, both(base, {hook, tape(0.6)})},
            Shot{say("Read it here."), piece, both(base, {hook, tape(1), read})}};
}

Prop bead(const Scenery& s, const LegPatch& on, double from_end) {
    const double x = s.in(from_end);
    return sheet(Stuff::sealant, on, x - 5, x + 5, 2, on.wide - 2, 2);
}

}  // namespace hemline
