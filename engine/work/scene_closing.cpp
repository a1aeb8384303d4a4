// Closures and end caps: cut, bent, set and looked at.
#include "engine/work/scene_shots.h"

#include <algorithm>

namespace hemline {

std::optional<Shots> closing_scene(std::string_view id, const Scenery& s) {
    const LegPatch& flange = s.flange;
    const Props pans = panels(s), zee = closure(s);
    if (id == "closures_cut") {
        const LegPatch& on = flange;
        const auto blank = [&](double cut) {
            return Props{sheet(Stuff::strip, on, on.x0 + cut, on.x1 - cut, 0, 25, 0),
                         sheet(Stuff::strip, on, on.x0, on.x1, 25, 63, 0),
                         sheet(Stuff::strip, on, on.x0 + cut, on.x1 - cut, 63, 88, 0)};
        };
        return Shots{Shot{say("A flat strip."), nowhere, blank(0)},
                     Shot{say("Both legs cut back at each end."), nowhere, blank(19)},
                     Shot{say("Bent and cut to length."), nowhere, zee}};
    }
    if (id == "closures_set") {
        return comes(pans, zee, above(flange), nowhere);
    }
    if (id == "closures_free") {
        const Shots shots =
            fastened(both(pans, zee), flange, s.along(3), flange.wide * 0.55 + 12, -30);
        return Shots{Shot{shots[0].says, nowhere, shots[0].props},
                     Shot{shots[1].says, nowhere, shots[1].props},
                     Shot{shots[2].says, nowhere, shots[2].props}};
    }
    if (id == "look_closures") {
        return judged(pans, {}, {zee.front()}, zee);
    }
    const auto cap = [&](double lip, double turned, bool clipped, double off) {
        return moved(Props{end_cap(s, lip, turned, clipped)}, {-s.inward * off, 0, 0});
    };
    constexpr double whole = 34, cut = 20, off = 40;
    if (id == "cap_hand") {
        return Shots{
            Shot{say("Which end is open?"), in_place, {}},
            Shot{say("Its cap, held to it."), in_place, cap(whole, 0, false, 90)},
            Shot{say("Its lips point into the piece."), in_place, cap(whole, 0, false, off)}};
    }
    if (id == "cap_cut") {
        return Shots{Shot{say("The flange is long."), nowhere, cap(whole, 0, false, 0)},
                     Shot{say("Cut at its mark."), nowhere, cap((whole + cut) / 2, 0, false, 0)},
                     Shot{say("As wide as the other."), nowhere, cap(cut, 0, false, 0)}};
    }
    if (id == "cap_clip") {
        return Shots{Shot{say("Square corners bind."), nowhere, cap(cut, 0, false, 12)},
                     Shot{say("Clip both."), nowhere, cap(cut, 0.1, true, 12)},
                     Shot{say("Both are clipped."), nowhere, cap(cut, 0, true, 12)}};
    }
    if (id == "cap_fold") {
        return Shots{Shot{say("The lips are flat."), nowhere, cap(cut, 0, true, 0)},
                     Shot{say("Half folded."), nowhere, cap(cut, 0.5, true, 0)},
                     Shot{say("Folded inward."), nowhere, cap(cut, 1, true, 0)}};
    }
    if (id == "cap_look") {
        const Props seal = {bead(s, flange, 8), bead(s, s.face, 8)};
        return Shots{
            Shot{say("Sealant inside the end."), in_place, seal},
            Shot{say("It comes to its place."), in_place, both(seal, cap(cut, 1, true, off))},
            Shot{say("No end is open."), in_place, cap(cut, 1, true, 0)}};
    }
    return {};
}

}  // namespace hemline
