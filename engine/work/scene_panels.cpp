// Panels laid on a plane, the plane in small: five pans on the boards.
#include "engine/work/scene_shots.h"

#include <cmath>

namespace hemline {

namespace {

constexpr int pans_shown = 5;
constexpr double seam_high = 16, lip = 12;

/// The plane in small, as many of its pans as lie.
struct SmallPlane {
    const LegPatch& on;
    double pan = (on.x1 - on.x0) / pans_shown;

    [[nodiscard]] double seam(int i) const { return on.x0 + pan * i; }
    [[nodiscard]] Props deck() const {
        return {sheet(Stuff::wood, on, on.x0, on.x1, 0, on.wide, -3)};
    }
    /// Pan i, 0 …, as far up as `to`, with its seam at the right.
    [[nodiscard]] Props laid(int i, double to) const {
        return {sheet(Stuff::panel, on, seam(i), seam(i + 1), -lip, to, 1),
                upright(Stuff::panel, on, seam(i + 1), -lip, seam(i + 1), to, 1, seam_high)};
    }
    [[nodiscard]] Props first(int pans) const {
        Props all = deck();
        for (int i = 0; i < pans; ++i) {
            all = both(std::move(all), laid(i, on.wide));
        }
        return all;
    }
    /// A tape or chalk line.
    [[nodiscard]] Prop line(double x0, double a0, double x1, double a1, double part = 1) const {
        const double dx = x1 - x0, da = a1 - a0, long_ = std::hypot(dx, da);
        const double nx = -da / long_ * 4, na = dx / long_ * 4;
        const double x = x0 + dx * part, a = a0 + da * part;
        return {Stuff::gauge,
                {figure({on.at(x0 - nx, a0 - na, 9), on.at(x - nx, a - na, 9),
                         on.at(x + nx, a + na, 9), on.at(x0 + nx, a0 + na, 9)})}};
    }
};

Shots read_along(const SmallPlane& plane, const Props& base, double x0, double a0, double x1,
                 double a1) {
    const Prop hook = heads(plane.on, {x0}, a0, 11), read = heads(plane.on, {x1}, a1, 11);
    return {
        Shot{say("The tape hooks here."), nowhere, both(base, {hook})},
        Shot{say("Lay it straight."), nowhere, both(base, {hook, plane.line(x0, a0, x1, a1, 0.6)})},
        Shot{say("Read it here."), nowhere, both(base, {hook, plane.line(x0, a0, x1, a1), read})}};
}

Shots squared(const SmallPlane& plane) {
    const LegPatch& on = plane.on;
    const double up = on.wide * 0.8, across = up * 0.75, x = on.x0 + 4;
    const Prop along = plane.line(x, 4, x + across, 4), line = plane.line(x, 4, x, up);
    return {Shot{say("Three along the eave."), nowhere, both(plane.deck(), {along})},
            Shot{say("Four up the slope."), nowhere, both(plane.deck(), {along, line})},
            Shot{say("Five across: it is square."), nowhere,
                 both(plane.deck(), {along, line, plane.line(x + across, 4, x, up)})}};
}

Shots cut_on_slant(const SmallPlane& plane) {
    const LegPatch& on = plane.on;
    const double x0 = on.middle() - 60, x1 = on.middle() + 60, low = on.wide * 0.4;
    const Prop cut{
        Stuff::panel,
        {figure({on.at(x0, 0, 2), on.at(x1, 0, 2), on.at(x1, on.wide, 2), on.at(x0, low, 2)})}};
    const Props whole = {sheet(Stuff::panel, on, x0, x1, 0, on.wide, 2)};
    return {
        Shot{say("The pan is longer."), nowhere, whole},
        Shot{say("Mark both its sides."), nowhere, both(whole, {plane.line(x0, low, x1, on.wide)})},
        Shot{say("Cut from mark to mark."), nowhere, {cut}}};
}

/// Clips under a seam.
Shots clipped(const SmallPlane& plane) {
    const auto clips = [&](int count) {
        Props all = plane.first(1);
        for (int i = 0; i < count; ++i) {
            const double a = plane.on.wide * (i + 0.5) / 4;
            all.push_back(block(Stuff::fastener, plane.on, plane.seam(1) + 2, plane.seam(1) + 18,
                                a - 8, a + 8, 0, seam_high));
        }
        return all;
    };
    return {Shot{say("None is in yet."), nowhere, clips(0)},
            Shot{say("From one end to the other."), nowhere, clips(2)},
            Shot{say("All are in."), nowhere, clips(4)}};
}

/// A seam that leans open, is closed halfway, is closed.
Shots seam_closed(const SmallPlane& plane) {
    const LegPatch& on = plane.on;
    const auto seam = [&](double from) {
        const double x = plane.seam(3);
        const Facet leans = figure({on.at(x, on.wide * from, 1), on.at(x, on.wide, 1),
                                    on.at(x + 14, on.wide, 18), on.at(x + 14, on.wide * from, 18)});
        return Props{{Stuff::strip, {leans}}};
    };
    const Props base = plane.first(pans_shown);
    return judged(base, seam(0), seam(0.5), {plane.line(plane.seam(3), 0, plane.seam(3), on.wide)},
                  nowhere);
}

Shots tops_up(const SmallPlane& plane) {
    const auto turned = [&](double high) {
        return Props{upright(Stuff::panel, plane.on, plane.on.x0, plane.on.wide, plane.on.x1,
                             plane.on.wide, 1, high)};
    };
    const Props base = plane.first(pans_shown);
    return judged(base, turned(3), turned(18), turned(34), nowhere);
}

}  // namespace

std::optional<Shots> panel_scene(std::string_view id, const Scenery& s) {
    const LegPatch& on = s.flange;
    const SmallPlane plane{on};
    const double left = on.x0 + 6, right = on.x1 - 6, top = on.wide - 4;
    if (id == "left_slope" || id == "right_slope") {
        const double x = id == "left_slope" ? left : right;
        return read_along(plane, plane.deck(), x, 0, x, top);
    }
    if (id == "rising" || id == "falling") {
        const bool rising = id == "rising";
        return read_along(plane, plane.deck(), rising ? left : right, 2, rising ? right : left,
                          top);
    }
    if (id == "warmth") {
        return comes(plane.first(pans_shown),
                     {block(Stuff::gauge, on, on.middle() - 12, on.middle() + 12, 110, 150, 2, 30)},
                     above(on), nowhere);
    }
    if (id == "under") {
        const Props metal = {sheet(Stuff::strip, on, on.x0, on.x1, -lip, 40, -1),
                             upright(Stuff::strip, on, on.x0, -lip, on.x1, -lip, -50, -1)};
        return comes(plane.deck(), metal, above(on), nowhere);
    }
    if (id == "cut_pan") {
        return cut_on_slant(plane);
    }
    if (id == "square") {
        return squared(plane);
    }
    if (id == "first") {
        return comes(plane.deck(), plane.laid(0, on.wide), above(on), nowhere);
    }
    if (id == "hook") {
        return read_along(plane, plane.first(1), plane.seam(1) / 2, -lip, plane.seam(1) / 2, 18);
    }
    if (id == "fifth_seam") {
        return read_along(plane, plane.first(pans_shown), on.x0, 30, on.x1, 30);
    }
    if (id == "rest") {
        return comes(plane.first(pans_shown - 1), plane.laid(pans_shown - 1, on.wide), above(on),
                     nowhere);
    }
    if (id == "clips") {
        return clipped(plane);
    }
    if (id == "seams") {
        return seam_closed(plane);
    }
    if (id == "tops") {
        return tops_up(plane);
    }
    if (id == "film") {
        const auto film = [&](double to) {
            return Props{sheet(Stuff::film, on, on.x0, on.x0 + (on.x1 - on.x0) * to, 0, on.wide,
                               seam_high + 2)};
        };
        const Props base = plane.first(pans_shown);
        return Shots{Shot{say("The film is on."), nowhere, both(base, film(1))},
                     Shot{say("Peel it off flat."), nowhere, both(base, film(0.5))},
                     Shot{say("No film is left."), nowhere, base}};
    }
    if (id == "mend") {
        const auto askew = [&](double off) {
            return moved(plane.laid(1, on.wide), Space{off, 0, off / 2});
        };
        return judged(plane.first(1), askew(30), askew(10), askew(0), nowhere);
    }
    return {};
}

}  // namespace hemline
