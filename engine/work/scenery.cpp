#include "engine/work/scenery.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "engine/quantity/angle.h"
#include "engine/trim/catalogue.h"

namespace hemline {

namespace {

constexpr double past = 20;        // boards and panels run on past the piece
constexpr double board = 3;        // below the metal
constexpr double on_boards = 130;  // of boards shown past the flange
constexpr double seam_mm = 38, closure_leg = 25;
constexpr double lip_least = 20;
constexpr double skirt_mm = seam_mm + 13;

double mm(Length length) { return static_cast<double>(length.nm()) / 1e6; }

/// Pan level over the flange's upper face.
double pan_level(const Scenery& stage) { return stage.over_panels ? -seam_mm - board : board; }

Props panels_on(const Scenery& stage, const LegPatch& on, double ends_up) {
    const double from = stage.over_panels ? on.wide * 0.35 : 12, to = on.wide + on_boards;
    const double up = pan_level(stage);
    Props props = {sheet(Stuff::panel, on, on.x0 - past, on.x1 + past, from, to, up)};
    for (const double x : {on.x0 + 8, on.x1 - 8}) {
        props.push_back(upright(Stuff::panel, on, x, from, x, to, up, up + seam_mm));
    }
    if (ends_up > 0) {
        const double turn = ends_up * std::numbers::pi / 2, h = seam_mm * 0.7;
        props.push_back(
            {Stuff::panel,
             {figure({on.at(on.x0 + 10, from, up), on.at(on.x1 - 10, from, up),
                      on.at(on.x1 - 10, from - h * std::cos(turn), up + h * std::sin(turn)),
                      on.at(on.x0 + 10, from - h * std::cos(turn), up + h * std::sin(turn))})}});
    }
    return props;
}

Prop closure_on(const LegPatch& on, double up) {
    const double a = on.wide * 0.55, x0 = on.x0 + 10, x1 = on.x1 - 10;
    Prop prop = upright(Stuff::strip, on, x0, a, x1, a, up, up + seam_mm - 1);
    const auto leg = [&](double a0, double a1, double at) {
        prop.facets.push_back(sheet(Stuff::strip, on, x0 + 12, x1 - 12, a0, a1, at).facets.front());
    };
    leg(a, a + closure_leg, up + 1);
    leg(a - closure_leg, a, up + seam_mm - 1);
    return prop;
}

}  // namespace

std::vector<double> Scenery::along(int count) const {
    std::vector<double> places;
    for (int i = 0; i < count; ++i) {
        places.push_back(flange.x0 + (flange.x1 - flange.x0) * (i + 1) / (count + 1));
    }
    return places;
}

Scenery pan_stage(double pitch_degrees) {
    Scenery stage;
    const double turn = radians_of(pitch_degrees);
    const Space across{0, std::cos(turn), std::sin(turn)};
    stage.flange = {0, 406, 300, {}, {1, 0, 0}, across, {0, -std::sin(turn), std::cos(turn)}};
    stage.face = {0, 406, 60, {}, {1, 0, 0}, {0, 0, -1}, {0, -1, 0}};
    return stage;
}

Props wood(const Scenery& stage) {
    const LegPatch &flange = stage.flange, &face = stage.face;
    const double low = stage.over_panels ? pan_level(stage) - board : -board;
    const auto boards = [&](const LegPatch& on, double to, double up) {
        return sheet(Stuff::wood, on, on.x0 - past, on.x1 + past, 0, to, up);
    };
    return {boards(flange, flange.wide + on_boards, low),
            stage.two_roofs ? boards(face, face.wide + on_boards, low)
                            : boards(face, face.wide + past, -board)};
}

Props panels(const Scenery& stage, double ends_up) {
    Props props = panels_on(stage, stage.flange, ends_up);
    return stage.two_roofs ? both(std::move(props), panels_on(stage, stage.face, ends_up)) : props;
}

Prop cleat(const Scenery& stage) {
    const LegPatch& face = stage.face;
    Prop prop = sheet(Stuff::strip, face, face.x0, face.x1, face.wide * 0.35, face.wide, -1.5);
    prop.facets.push_back(
        figure({face.at(face.x0, face.wide, -1.5), face.at(face.x1, face.wide, -1.5),
                face.at(face.x1, face.wide + 9, 7), face.at(face.x0, face.wide + 9, 7)}));
    return prop;
}

Props closure(const Scenery& stage) {
    const double up = pan_level(stage);
    Props props = {closure_on(stage.flange, up)};
    if (stage.two_roofs) {
        props.push_back(closure_on(stage.face, up));
    }
    return props;
}

Prop strip(const Scenery& stage, double bent) {
    const LegPatch& on = stage.flange;
    std::vector<double> widths{38, 5, 19};
    std::vector<double> turns{90, -90};  // between one leg and the next, up from the flange
    if (stage.strip != nullptr) {
        widths.clear();
        for (const Leg& leg : stage.strip->legs) {
            widths.push_back(leg.as_seam ? seam_mm : mm(leg.width));
        }
        turns.assign(widths.size() - 1, -90);
        turns.front() = 90;
        if (stage.strip->id == "channel") {
            turns = {90, 90};
        }
    }
    Prop prop{Stuff::strip, {}};
    double a = on.wide * 0.2 + widths.front(), up = 3, turn = 180;  // the base runs to the bend
    a = std::min(a, on.wide);
    for (std::size_t i = 0; i < widths.size(); ++i) {
        const double next_a = a + widths[i] * std::cos(radians_of(turn));
        const double next_up = up + widths[i] * std::sin(radians_of(turn));
        prop.facets.push_back(
            figure({on.at(on.x0, a, up), on.at(on.x1, a, up), on.at(on.x1, next_a, next_up),
                    on.at(on.x0, next_a, next_up)}));
        a = next_a;
        up = next_up;
        turn -= i < turns.size() ? turns[i] * bent : 0;
    }
    return prop;
}

Prop end_cap(const Scenery& stage, double lip, double turned, bool clipped) {
    const double x = stage.end;
    const Space corners[] = {stage.flange.at(x, stage.flange.wide, 0), stage.flange.at(x, 0, 0),
                             stage.face.at(x, stage.face.wide, 0)};
    const Space middle = (corners[0] + corners[1] + corners[2]) * (1.0 / 3);
    // Down to the pans under each leg that stands on closures.
    std::vector<Space> plate(std::begin(corners), std::end(corners));
    plate.insert(plate.begin(), stage.flange.at(x, stage.flange.wide, -skirt_mm));
    if (stage.two_roofs) {
        plate.push_back(stage.face.at(x, stage.face.wide, -skirt_mm));
    }
    Prop prop{Stuff::strip, {figure(plate)}};
    const double turn = turned * std::numbers::pi / 2, in = clipped ? 0.12 : 0;
    for (int i = 0; i < 2; ++i) {
        const Space &p = corners[i], &q = corners[i + 1], side = q - p;
        Space out = (p + q) * 0.5 - middle;
        out = unit(out - unit(side) * dot(out, unit(side)));
        const double wide = i == 0 ? lip : lip_least;
        const Space to =
            out * (wide * std::cos(turn)) + Space{stage.inward, 0, 0} * (wide * std::sin(turn));
        prop.facets.push_back(figure({p, q, q - side * in + to, p + side * in + to}));
    }
    return prop;
}

Prop pipe(const Scenery& stage) {
    const LegPatch& on = stage.flange;
    Prop prop{Stuff::strip, {}};
    constexpr int sides = 8;
    constexpr double r = 38, tall = 150;
    const Space foot = on.at(on.middle(), on.wide / 2, 0);
    const auto round = [&](int i, double up) {
        const double turn = 2 * std::numbers::pi * i / sides;
        return foot + Space{r * std::cos(turn), r * std::sin(turn), up};
    };
    for (int i = 0; i < sides; ++i) {
        prop.facets.push_back(
            figure({round(i, -20), round(i + 1, -20), round(i + 1, tall), round(i, tall)}));
    }
    return prop;
}

Prop boot(const Scenery& stage) {
    const LegPatch& on = stage.flange;
    Prop prop = sheet(Stuff::membrane, on, on.middle() - 76, on.middle() + 76, on.wide / 2 - 76,
                      on.wide / 2 + 76, 2);
    const Space foot = on.at(on.middle(), on.wide / 2, 2);
    constexpr int sides = 8;
    const auto round = [&](int i, double r, double up) {
        const double turn = 2 * std::numbers::pi * i / sides;
        return foot + on.along * (r * std::cos(turn)) + on.across * (r * std::sin(turn)) +
               on.normal * up;
    };
    for (int i = 0; i < sides; ++i) {
        prop.facets.push_back(
            figure({round(i, 62, 0), round(i + 1, 62, 0), round(i + 1, 41, 70), round(i, 41, 70)}));
    }
    return prop;
}

Props neighbor(const Scenery& stage, double gap) {
    const double x = stage.end - stage.inward * gap;
    const double wide = stage.face.wide;
    // Across the end, away from the piece and back beside it.
    const auto across = [&](const LegPatch& leg, double to) {
        return Prop{Stuff::panel,
                    {figure({leg.at(x, 0, 0), leg.at(x, to, 0), leg.at(x, to, 0) + Space{0, 170, 0},
                             leg.at(x, 0, 0) + Space{0, 170, 0}})}};
    };
    return {
        across(stage.face, wide),
        {Stuff::panel,
         {figure({stage.face.at(x, 0, 0), stage.flange.at(x, stage.flange.wide, 0),
                  stage.flange.at(x + stage.inward * stage.flange.wide, stage.flange.wide, 0)})}}};
}

}  // namespace hemline
