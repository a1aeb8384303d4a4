// What is measured, marked, sealed, peeled or looked at.
#include "engine/work/scene_shots.h"

#include <algorithm>

namespace hemline {

namespace {

Shots peeled(const Props& base, const Props& film, const Props& half) {
    return {Shot{say("The film is on."), in_place, both(base, film)},
            Shot{say("Peel it off flat."), in_place, both(base, half)},
            Shot{say("No film is left."), in_place, base}};
}

Prop film_on(const LegPatch& on, double x0, double x1, double up = 1.5) {
    return sheet(Stuff::film, on, x0, x1, 0, on.wide, up);
}

/// A gauge on the bend, `off` mm away from it.
Prop gauge(const Scenery& s, double off) {
    const double x = s.flange.middle();
    Prop prop = sheet(Stuff::gauge, s.flange, x - 9, x + 9, 0, s.flange.wide * 0.8, 3 + off);
    prop.facets.push_back(
        sheet(Stuff::gauge, s.face, x - 9, x + 9, 0, s.face.wide * 0.8, 3 + off).facets.front());
    return prop;
}

Prop line_on(const LegPatch& on, double a, double part) {
    return sheet(Stuff::gauge, on, on.x0, on.x0 + (on.x1 - on.x0) * part, a - 2, a + 2, 1);
}

Shots walks_up(const Scenery& s, const Props& base) {
    const LegPatch& on = s.flange;
    const double a = on.wide + 60;
    return {Shot{say("Stand here."), in_place, both(base, {person(on, s.in(-10), a)})},
            Shot{say("Look along it."), in_place, both(base, {person(on, on.middle(), a)})},
            Shot{say("To its other end."), in_place,
                 both(base, {person(on, s.other_end() - s.inward * 10, a)})}};
}

}  // namespace

std::optional<Shots> looking_scene(std::string_view id, const Scenery& s) {
    const LegPatch &flange = s.flange, &face = s.face;
    const Props boards = wood(s);
    const double mid = flange.middle();
    if (id == "deck") {
        const Props nails = {block(Stuff::fastener, flange, mid - 4, mid + 4, 60, 68, 0, 25)};
        const Props sunk = {block(Stuff::fastener, flange, mid - 4, mid + 4, 60, 68, 0, 9)};
        return judged(boards, nails, sunk, {heads(flange, {mid}, 64, -2)}, nowhere);
    }
    if (id == "cleat_line") {
        const double a = face.wide * 0.35;
        return Shots{Shot{say("Mark both ends."), nowhere,
                          both(boards, {heads(face, {face.x0 + 8, face.x1 - 8}, a, -2)})},
                     Shot{say("Stretch the chalk line."), nowhere,
                          both(boards, moved(Props{line_on(face, a, 1)}, above(face, 12)))},
                     Shot{say("Snap it."), nowhere, both(boards, {line_on(face, a, 1)})}};
    }
    if (id == "remainder") {
        return measured(boards, flange, s.other_end(), s.in(0), flange.wide * 0.4,
                        flange.wide * 0.4, Space{s.inward * (flange.x1 - flange.x0), 0, 0}, 4);
    }
    if (id == "upstand") {
        return measured(boards, face, mid, mid, 0, face.wide);
    }
    if (id == "centre") {
        return measured({}, flange, mid, mid, 0, flange.wide);
    }
    if (id == "strip_line") {
        return measured(boards, flange, mid, mid, 0, flange.wide * 0.45);
    }
    if (id == "foot_plumb") {
        const auto level = [&](double lean) {
            return Props{{Stuff::gauge,
                          {figure({Space{s.end, -4, -120}, Space{s.end + lean, -4, 20},
                                   Space{s.end + lean - s.inward * 14, -4, 20},
                                   Space{s.end - s.inward * 14, -4, -120}})}}};
        };
        return judged({}, level(30), level(12), level(0));
    }
    if (id == "fold" || id == "corner_out_read" || id == "corner_in_read") {
        const bool in = id == "corner_in_read";
        const Props around = id == "fold" ? Props() : both(boards, neighbor(s, in ? -6 : 0));
        return judged(around, {gauge(s, 30)}, {gauge(s, 10)}, {gauge(s, 0)},
                      id == "fold" ? std::optional(in_place) : nowhere);
    }
    if (id == "corner_out_look" || id == "corner_in_look" || id == "corner_out_fold" ||
        id == "corner_in_lap") {
        const bool look = id.find("look") != id.npos;
        const double far = look ? 26 : 60, lift = id.find("_in_") != id.npos ? 12 : 0;
        const auto beside = [&](double gap) {
            return moved(neighbor(s, gap), above(flange, lift * gap / far));
        };
        return judged(look ? Props() : boards, beside(far), beside(far * 0.4), beside(0));
    }
    if (id == "string") {
        const auto line = [&](double off) {
            return Props{sheet(Stuff::gauge, face, face.x0 - 20, face.x1 + 20, face.wide - 4,
                               face.wide, off)};
        };
        const Prop rule =
            upright(Stuff::gauge, face, mid - 6, face.wide, mid + 6, face.wide, 0, 16);
        return Shots{
            Shot{say("Stretch it past both ends."), in_place, line(16)},
            Shot{say("Measure where it is farthest off."), in_place, both(line(16), {rule})},
            Shot{say("So it is right."), in_place, line(3)}};
    }
    if (id == "film") {
        const auto film = [&](double part) {
            const double to = flange.x0 + (flange.x1 - flange.x0) * part;
            return Props{film_on(flange, flange.x0, to), film_on(face, face.x0, to)};
        };
        const Prop lifted{
            Stuff::film,
            {figure({flange.at(mid, 0, 2), flange.at(mid, flange.wide, 2),
                     flange.at(mid - 30, flange.wide, 70), flange.at(mid - 30, 0, 70)})}};
        return peeled({}, film(1), both(film(0.5), {lifted}));
    }
    if (id == "hand") {
        const LegPatch& on = s.flange;
        const auto stands = [&](double x) { return Props{person(on, x, -70)}; };
        return Shots{Shot{say("Stand here and face it."), in_place, stands(mid)},
                     Shot{say("Its foot at the left?"), in_place, stands(on.x0)},
                     Shot{say("Or at the right?"), in_place, stands(on.x1)}};
    }
    if (id == "cut_square") {
        const Prop line = upright(Stuff::gauge, face, s.end, 0, s.end, face.wide, -2, 12);
        const auto rest = [&](double off) {
            return sheet(Stuff::strip, face, s.in(-60 - off), s.in(-off), 0, face.wide, 0);
        };
        return Shots{Shot{say("The stick is longer."), in_place, {rest(0)}},
                     Shot{say("Mark it square and cut."), in_place, {rest(0), line}},
                     Shot{say("The rest falls off."), in_place, {rest(30)}}};
    }
    if (id == "ends") {
        return walks_up(s, boards);
    }
    if (id == "end_square") {
        return walks_up(s, {gauge(s, 0)});
    }
    if (id == "tick") {
        return walks_up(s, {});
    }
    if (id == "ground") {
        const Prop wire = upright(Stuff::gauge, flange, flange.x0 - 20, flange.wide + 90,
                                  flange.x1 + 20, flange.wide + 90, 150, 154);
        return walks_up(s, {wire});
    }
    if (id == "kick_close" || id == "corner_seal") {
        const double off = id == "kick_close" ? 12 : 26;
        const Props seal = {sheet(Stuff::sealant, flange, s.in(0), s.in(45), 2, off, 2)};
        return Shots{Shot{say("The slit is open."), in_place, {}},
                     Shot{say("Sealant in the slit."), in_place, seal},
                     Shot{say("Riveted and sealed."), in_place,
                          both(seal, {heads(flange, {s.in(12), s.in(34)}, off, 3)})}};
    }
    if (id == "seal") {
        const Props film = {
            film_on(flange, std::min(s.in(0), s.in(150)), std::max(s.in(0), s.in(150)))};
        const Props first = {bead(s, flange, 50), bead(s, face, 50)};
        return Shots{Shot{say("The film is on."), in_place, film},
                     Shot{say("Film off, one bead."), in_place, first},
                     Shot{say("All beads, from edge to edge."), in_place,
                          both(first, {bead(s, flange, 100), bead(s, face, 100)})}};
    }
    return {};
}

}  // namespace hemline
