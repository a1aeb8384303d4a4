// Water and what turns it; a pipe or a curb through a pan.
#include "engine/work/scene_shots.h"

#include <algorithm>

namespace hemline {

namespace {

Prop water(const Scenery& s, double from, double to) {
    const LegPatch& on = s.flange;
    return sheet(Stuff::film, on, on.middle() - 45, on.middle() + 45, on.wide * to, on.wide * from,
                 2);
}

}  // namespace

std::optional<Shots> water_scene(std::string_view id, const Scenery& s) {
    const LegPatch& flange = s.flange;
    const double mid = flange.middle();
    const auto cricket = [&](double high) {
        const Space top = flange.at(mid, flange.wide, high);
        const Space left = flange.at(flange.x0, flange.wide * 0.2, 0);
        const Space right = flange.at(flange.x1, flange.wide * 0.2, 0);
        const Space back = flange.at(mid, flange.wide + 120, 0);
        return Props{{Stuff::wood, {figure({left, top, back}), figure({top, right, back})}}};
    };
    if (id == "cricket") {
        return comes(wood(s), cricket(70), above(flange), nowhere);
    }
    if (id == "cricket_look") {
        return judged(wood(s), cricket(4), cricket(35), both(cricket(70), {water(s, 1.4, 1.1)}),
                      nowhere);
    }
    if (id == "waterway") {
        return judged({}, {water(s, 1, 0), heads(flange, {mid}, flange.wide * 0.3, 4)},
                      {water(s, 1, 0.5)}, {water(s, 1, 0)});
    }
    if (id == "strip_pinned") {
        return judged({}, both(panels(s), {heads(flange, {mid}, 30, 8)}), panels(s),
                      both(panels(s), {heads(flange, {mid}, flange.wide + 110, 8)}));
    }
    if (id == "water") {
        const double past = 1.4;
        return Shots{Shot{say("Pour it here."), in_place, {water(s, past, 1.2)}},
                     Shot{say("Look where it goes."), in_place, {water(s, past, 0.8)}},
                     Shot{say("None stays."), in_place, {water(s, 0.3, 0)}}};
    }
    return {};
}

std::optional<Shots> pipe_scene(std::string_view id, const Scenery& s) {
    const LegPatch& on = s.flange;
    const double mid = on.middle(), a = on.wide / 2;
    const Props pan = panels(s), with_pipe = both(pan, {pipe(s)});
    if (id == "size") {
        return measured(with_pipe, on, mid - 38, mid + 38, a - 45, a - 45, nowhere);
    }
    if (id == "base") {
        return measured(both(with_pipe, {boot(s)}), on, mid - 76, mid + 76, a - 80, a - 80,
                        nowhere);
    }
    if (id == "place") {
        return measured(with_pipe, on, mid, on.x0 + 8, a - 50, a - 50, nowhere);
    }
    if (id == "along") {
        return measured(with_pipe, on, on.x0, mid, 20, 20, nowhere);
    }
    if (id == "from_line") {
        return measured(with_pipe, on, mid, mid, -20, a, nowhere);
    }
    if (id == "cut") {
        const Prop hole = heads(on, {mid}, a, 5);
        return Shots{
            Shot{say("Mark the middle."), nowhere, both(pan, {hole})},
            Shot{say("Mark it round."), nowhere,
                 both(pan, {sheet(Stuff::gauge, on, mid - 55, mid + 55, a - 55, a + 55, 4)})},
            Shot{say("Cut, with room all round."), nowhere, with_pipe}};
    }
    if (id == "boot_tape") {
        const Props tape = {sheet(Stuff::sealant, on, mid - 80, mid + 80, a - 80, a + 80, 4)};
        return Shots{Shot{say("Not there yet."), nowhere, with_pipe},
                     Shot{say("The tape lies first."), nowhere, both(with_pipe, tape)},
                     Shot{say("It lies in its place."), nowhere,
                          both(both(with_pipe, tape), moved(Props{boot(s)}, above(on, 5)))}};
    }
    if (id == "mend") {
        const auto lies = [&](double off) { return moved(Props{boot(s)}, {off, 0, off / 2}); };
        return judged(with_pipe, lies(40), lies(15), lies(0), nowhere);
    }
    if (id == "boot_rivet") {
        const Shots shots = fastened(both(with_pipe, {boot(s)}), on,
                                     {mid - 66, mid - 33, mid, mid + 33, mid + 66}, a - 68, 6);
        return Shots{Shot{shots[0].says, nowhere, shots[0].props},
                     Shot{shots[1].says, nowhere, shots[1].props},
                     Shot{shots[2].says, nowhere, shots[2].props}};
    }
    const auto curb = [&](double x0, double x1) {
        return Props{block(Stuff::wood, on, x0, x1, a - 70, a + 70, 0, 90)};
    };
    if (id == "curb") {
        return judged(pan, both({boot(s)}, curb(mid - 150, mid + 150)), curb(mid - 150, mid + 150),
                      curb(mid - 110, mid + 110), nowhere);
    }
    if (id == "upslope") {
        const Props there = both(pan, curb(mid - 110, mid + 110));
        return Shots{
            Shot{say("Stand here and face it."), nowhere, both(there, {person(on, mid, -30)})},
            Shot{say("Look here."), nowhere, both(there, {person(on, on.x0, a)})},
            Shot{say("Water comes from there."), nowhere, both(there, {water(s, 1.4, 0.8)})}};
    }
    return {};
}

}  // namespace hemline
