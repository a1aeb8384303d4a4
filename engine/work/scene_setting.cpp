// What is put on: wrap, cleat and trim, strips, membrane, panels, what lies there before.
#include "engine/work/scene_shots.h"

#include <algorithm>

namespace hemline {

namespace {

/// The eave's metal under the foot.
Props eave_at_foot(const Scenery& s, double up) {
    const LegPatch& on = s.flange;
    return {
        sheet(Stuff::strip, on, s.in(-30), s.in(70), -10, on.wide + 110, -1.5 + up),
        upright(Stuff::strip, on, s.in(-30), -10, s.in(-30), on.wide + 110, -60 + up, -1.5 + up)};
}

/// A hanging sheet over the wall leg's upper edge.
Prop hanging(const Scenery& s) {
    return sheet(Stuff::wood, s.face, s.face.x0 - 10, s.face.x1 + 10, s.face.wide * 0.6,
                 s.face.wide + 90, 8);
}

Shots strip_cut(const Scenery& s, double shown) {
    const auto at = [&](double bent) { return moved(Props{strip(s, bent)}, {0, -shown, 0}); };
    return {Shot{say("A flat strip."), nowhere, at(0)}, Shot{say("Half bent."), nowhere, at(0.5)},
            Shot{say("Bent and cut to length."), nowhere, at(1)}};
}

Shots strip_set(const Scenery& s, const Props& base) {
    const LegPatch& on = s.flange;
    const double a0 = on.wide * 0.2, a1 = a0 + 38;
    const Props tape = {sheet(Stuff::sealant, on, on.x0, on.x1, a0, a1, 2)};
    const Props set = {strip(s, 1)};
    return {Shot{say("The tape lies first."), in_place, both(base, tape)},
            Shot{say("It comes to its place."), in_place,
                 both(both(base, tape), moved(set, above(on)))},
            Shot{say("All are in."), in_place,
                 both(both(base, set), {heads(on, s.along(3), (a0 + a1) / 2, 6)})}};
}

}  // namespace

std::optional<Shots> setting_scene(std::string_view id, const Scenery& s) {
    const LegPatch &flange = s.flange, &face = s.face;
    const Props boards = wood(s);
    if (id == "wrap_set" || id == "cleat_set") {
        return piece_comes(boards, above(face));
    }
    if (id == "wrap_fasten" || id == "cleat_fasten") {
        return fastened(boards, face, s.along(4), face.wide / 2);
    }
    if (id == "hook") {
        return piece_comes(both(boards, {cleat(s)}), above(face) + face.across * -15);
    }
    if (id == "tug") {
        return piece_put_right(both(boards, {cleat(s)}), above(face, 14) + face.across * 12);
    }
    if (id == "mend") {
        return piece_put_right(boards, above(flange, 18) + Space{s.inward * 25, 0, 0});
    }
    if (id == "fasten") {
        const LegPatch& on = s.over_panels && !s.two_roofs ? face : flange;
        return fastened(s.over_panels ? panels(s) : boards, on, s.along(4), on.wide * 0.6);
    }
    if (id == "membrane") {
        const auto lies = [&](double from) {
            return Props{sheet(Stuff::membrane, flange, flange.x0 - 20, flange.x1 + 20,
                               flange.wide * from, flange.wide + 130, 2)};
        };
        return Shots{Shot{say("Not there yet."), in_place, boards},
                     Shot{say("It is rolled down."), in_place, both(boards, lies(0.9))},
                     Shot{say("It lies over the flange."), in_place, both(boards, lies(0.1))}};
    }
    if (id == "counter") {
        return comes(boards, {hanging(s)}, above(face));
    }
    if (id == "eave_on" || id == "foot_on") {
        return comes(boards, eave_at_foot(s, 0), above(flange), nowhere);
    }
    if (id == "sides") {
        const auto side = [&](double x) {
            return upright(Stuff::strip, flange, x, -60, x, flange.wide, 0, 80);
        };
        return comes(boards, {side(flange.x0 + 4), side(flange.x1 - 4)}, above(flange), nowhere);
    }
    if (id == "panels") {
        return comes(boards, panels(s), above(flange), s.over_panels ? nowhere : in_place);
    }
    if (id == "pans") {
        return judged({}, panels(s, 0.01), panels(s, 0.5), panels(s, 1));
    }
    if (id == "strip_set" || id == "zee_set" || id == "channel_set") {
        return strip_set(s, id == "strip_set" ? boards : panels(s, 1));
    }
    if (id == "strip_cut" || id == "zee_cut" || id == "channel_cut") {
        return strip_cut(s, id == "strip_cut" ? 0 : 1);
    }
    if (id == "curb_edges") {
        const Props curb = {block(Stuff::wood, flange, 120, 290, 80, 220, 0, 90)};
        const auto apron = [&](double up) {
            return Props{sheet(Stuff::strip, flange, 90, 320, 30, 80, 3 + up),
                         upright(Stuff::strip, flange, 120, 79, 290, 79, up, 70 + up)};
        };
        return comes(both(panels(s), curb), apron(0), above(flange), nowhere);
    }
    return {};
}

}  // namespace hemline
