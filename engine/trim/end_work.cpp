#include "engine/trim/end_work.h"

#include <algorithm>
#include <cmath>

namespace hemline {

namespace {

constexpr std::int64_t past_end_nm = 1'000'000;  // notches reach past the metal: no slivers

using Range = std::pair<std::size_t, std::size_t>;  // index of the first leg, and one past the last

/// Removed: everything from the end to the line from (in0, y0) to (in1, y1).
FlatOutline off_to(std::int64_t in0, std::int64_t y0, std::int64_t in1, std::int64_t y1) {
    return {{-past_end_nm, y0}, {-past_end_nm, y1}, {in1, y1}, {in0, y0}};
}

std::int64_t top_of(const FlatLegs& legs, std::size_t leg) { return legs.edges[leg].nm(); }
std::int64_t low_of(const FlatLegs& legs, std::size_t leg) { return legs.edges[leg + 1].nm(); }

void leg_off(EndShape& shape, const FlatLegs& legs, std::size_t leg, Length in) {
    // Reaches past a free edge too, so that no sliver is left there.
    const std::int64_t top = leg == 0 ? -past_end_nm : top_of(legs, leg);
    const std::int64_t low =
        leg + 1 == legs.names.size() ? low_of(legs, leg) + past_end_nm : low_of(legs, leg);
    if (in > Length()) {
        shape.notches.push_back(off_to(in.nm(), top, in.nm(), low));
    }
}

void parts_off(EndShape& shape, const FlatLegs& legs, std::initializer_list<LegName> parts,
               Length in) {
    for (std::size_t i = 0; i < legs.names.size(); ++i) {
        if (std::find(parts.begin(), parts.end(), legs.names[i]) != parts.end()) {
            leg_off(shape, legs, i, in);
        }
    }
}

template <class Do>
void each(const FlatLegs& legs, LegName name, Do act) {
    for (std::size_t i = 0; i < legs.names.size(); ++i) {
        if (legs.names[i] == name) {
            act(i);
        }
    }
}

bool is_drip(const FlatLegs& legs, std::size_t leg) {
    return legs.names[leg] == LegName::kick || legs.names[leg] == LegName::hem;
}

/// True where the leg above it on the page is the flange or face that it is bent from (for flange
/// and face: each other).
bool bend_above(const FlatLegs& legs, std::size_t leg) {
    return leg > 0 && (is_drip(legs, leg) || !is_drip(legs, leg - 1));
}

/// A cut through the leg, `at_bend` at its inner edge and `outside` at the other.
FlatOutline off_leg(const FlatLegs& legs, std::size_t leg, std::int64_t at_bend,
                    std::int64_t outside) {
    return bend_above(legs, leg) ? off_to(at_bend, top_of(legs, leg), outside, low_of(legs, leg))
                                 : off_to(outside, top_of(legs, leg), at_bend, low_of(legs, leg));
}

/// True where the face hangs from its upper edge on the page: a wrap's too, which is bent from
/// nothing.
bool hangs(const FlatLegs& legs, std::size_t face) {
    const bool over_flange = face == 0 && legs.names.size() > 1 && legs.names[1] == LegName::flange;
    return bend_above(legs, face) || (face == 0 && !over_flange);
}

std::int64_t width_of(const FlatLegs& legs, std::size_t leg) {
    return low_of(legs, leg) - top_of(legs, leg);
}

/// Snips cut a leg and the hem folded on it together, so on the flat hem the line runs back.
void hem_off(EndShape& shape, const FlatLegs& legs, std::size_t leg, const EndStep& step) {
    const std::size_t hem = bend_above(legs, leg) ? leg + 1 : leg - 1;  // wraps past 0: no leg
    if (hem < legs.names.size() && legs.names[hem] == LegName::hem) {
        const double share =
            static_cast<double>(width_of(legs, hem)) / static_cast<double>(width_of(legs, leg));
        const std::int64_t outside = (step.in + step.run).nm();
        const std::int64_t back =
            outside - std::llround(static_cast<double>(step.run.nm()) * share);
        shape.notches.push_back(off_leg(legs, hem, outside, back));
    }
}

void mitre(EndShape& shape, const FlatLegs& legs, LegName name, const EndStep& step) {
    each(legs, name, [&](std::size_t i) {
        shape.notches.push_back(off_leg(legs, i, step.in.nm(), (step.in + step.run).nm()));
        hem_off(shape, legs, i, step);
    });
}

/// Two such tabs would cross when folded where their folds are at less than a right angle to the
/// bend, so each is cut square to its fold there.
void corner_tab(EndShape& shape, const FlatLegs& legs, LegName name, const EndStep& step) {
    each(legs, name, [&](std::size_t i) {
        const bool above = bend_above(legs, i);
        const Length outside = step.in + step.run;
        shape.folds.push_back(
            {i, above ? step.in : outside, above ? outside : step.in, step.degrees});
        hem_off(shape, legs, i, step);
        const std::size_t bend = above ? i - 1 : i;
        const bool has_bend =
            bend + 1 < legs.names.size() && !is_drip(legs, bend) && !is_drip(legs, bend + 1);
        // The two legs of a foot part along one line.
        const bool parted = std::any_of(
            shape.slits.begin(), shape.slits.end(),
            [&](const EndSlit& slit) { return slit.bend == bend && slit.in == step.in; });
        if (has_bend && !parted) {
            shape.slits.push_back({bend, step.in});
        }
        if (has_bend && step.run > Length()) {
            // Square to the fold, all the way to the end.
            const double across = static_cast<double>(step.in.nm()) *
                                  static_cast<double>(step.run.nm()) /
                                  static_cast<double>(width_of(legs, i));
            const std::int64_t far =
                std::llround(std::min(across, static_cast<double>(width_of(legs, i))));
            const std::int64_t line = above ? top_of(legs, i) : low_of(legs, i);
            shape.notches.push_back(
                {{0, line}, {0, above ? line + far : line - far}, {step.in.nm(), line}});
        }
    });
}

/// The kick at 45°, together with the hem folded on it; a hem on another leg is cut square.
void drip_clip(EndShape& shape, const FlatLegs& legs, Length in) {
    for (std::size_t i = 0; i < legs.names.size(); ++i) {
        const bool on_kick = i > 0 && legs.names[i - 1] == LegName::kick;
        if (legs.names[i] == LegName::kick) {
            shape.notches.push_back(off_leg(legs, i, in.nm(), in.nm() + width_of(legs, i)));
        } else if (legs.names[i] == LegName::hem && on_kick) {
            const std::int64_t at = in.nm() + width_of(legs, i - 1);
            shape.notches.push_back(off_leg(legs, i, at, at - width_of(legs, i)));
        } else if (legs.names[i] == LegName::hem) {
            leg_off(shape, legs, i, in);
        }
    }
}

void hem_clip(EndShape& shape, const FlatLegs& legs, Length in) {
    each(legs, LegName::hem, [&](std::size_t i) {
        shape.notches.push_back(off_leg(legs, i, in.nm(), in.nm() + width_of(legs, i)));
    });
}

void corner_clips(EndShape& shape, const FlatLegs& legs, Length run, bool both) {
    each(legs, LegName::face, [&](std::size_t i) {
        const std::int64_t top = top_of(legs, i), low = low_of(legs, i);
        const bool bend_at_top = bend_above(legs, i) || i == 0;
        if (both || !bend_at_top) {
            shape.notches.push_back({{0, top}, {0, top + run.nm()}, {run.nm(), top}});
        }
        if (both || bend_at_top) {
            shape.notches.push_back({{0, low - run.nm()}, {0, low}, {run.nm(), low}});
        }
    });
}

void tab(EndShape& shape, const FlatLegs& legs, const EndStep& step) {
    each(legs, LegName::face, [&](std::size_t i) {
        const bool top = bend_above(legs, i) || i == 0;
        const Length at_bend = step.in + step.run;
        shape.folds.push_back({i, top ? at_bend : step.in, top ? step.in : at_bend, step.degrees});
    });
}

void relief(EndShape& shape, const FlatLegs& legs, const EndStep& step) {
    each(legs, LegName::face, [&](std::size_t i) {
        const std::int64_t at = step.in.nm(), low = low_of(legs, i), run = step.run.nm();
        shape.notches.push_back({{at - run, low}, {at, low}, {at, low - run}});
    });
}

void fold_leg(EndShape& shape, const FlatLegs& legs, LegName name, Length in, double degrees) {
    each(legs, name, [&](std::size_t i) { shape.folds.push_back({i, in, in, degrees}); });
}

void flange_fold(EndShape& shape, const FlatLegs& legs, const EndStep& step) {
    each(legs, LegName::flange, [&](std::size_t i) {
        const bool above = bend_above(legs, i);
        const Length outside = step.in + step.run;
        shape.folds.push_back(
            {i, above ? step.in : outside, above ? outside : step.in, step.degrees});
    });
}

void kick_out(EndShape& shape, const FlatLegs& legs, const EndStep& step) {
    for (std::size_t bend = 0; bend + 1 < legs.names.size(); ++bend) {
        if ((legs.names[bend] == LegName::face) != (legs.names[bend + 1] == LegName::face)) {
            shape.slits.push_back({bend, step.in});
        }
    }
    fold_leg(shape, legs, LegName::face, step.in, -step.degrees);
}

void face_clear(EndShape& shape, const FlatLegs& legs, const EndStep& step) {
    each(legs, LegName::face, [&](std::size_t i) {
        const bool above = hangs(legs, i);
        const std::int64_t line = above ? top_of(legs, i) : low_of(legs, i);
        const double tangent = std::tan(radians_of(step.degrees));
        const std::int64_t rise = std::llround(static_cast<double>(step.run.nm()) * tangent);
        const std::int64_t far = std::min(rise, width_of(legs, i));
        const std::int64_t end = (step.in - step.run).nm();
        const std::int64_t reached =
            rise == far ? end : step.in.nm() - std::llround(static_cast<double>(far) / tangent);
        const std::int64_t there = above ? line + far : line - far;
        shape.notches.push_back(
            {{end, line}, {end, there}, {reached, there}, {step.in.nm(), line}});
    });
}

/// Flange and face are folded the same way. On the inside of their bend they would overlap, so each
/// is cut back by half the bend; on the outside they move apart, and a slit is enough.
void close_end(EndShape& shape, const FlatLegs& legs, Length in, double degrees) {
    parts_off(shape, legs, {LegName::kick, LegName::hem}, in);
    fold_leg(shape, legs, LegName::flange, in, degrees);
    fold_leg(shape, legs, LegName::face, in, degrees);
    for (std::size_t bend = 0; bend + 1 < legs.names.size(); ++bend) {
        if (is_drip(legs, bend) || is_drip(legs, bend + 1)) {
            continue;
        }
        if (legs.bends[bend] * degrees <= 0) {
            shape.slits.push_back({bend, in});
            continue;
        }
        const double half = radians_of(std::abs(legs.bends[bend]) / 2);
        const std::int64_t back =
            std::llround(static_cast<double>(in.nm()) * std::tan(std::min(half, 1.4)));
        const std::int64_t at = low_of(legs, bend);
        const std::int64_t up = std::max(at - back, top_of(legs, bend));
        const std::int64_t down = std::min(at + back, low_of(legs, bend + 1));
        shape.notches.push_back({{0, up}, {0, down}, {in.nm(), at}});
    }
}

}  // namespace

FlatLegs flat_legs(const Section& section, const std::vector<double>& bends, const Blank& blank) {
    FlatLegs legs;
    for (const SectionLeg& leg : section.legs) {
        legs.names.push_back(leg.name);
    }
    legs.edges.emplace_back();
    legs.edges.insert(legs.edges.end(), blank.marks.begin(), blank.marks.end());
    legs.edges.push_back(blank.girth);
    legs.bends = bends;
    return legs;
}

EndShape end_shape(const FlatLegs& legs, const std::vector<EndStep>& steps) {
    using enum LegName;
    EndShape shape;
    for (const EndStep& step : steps) {
        switch (step.deed) {
            case EndDeed::flange_cut:
                parts_off(shape, legs, {flange}, step.in);
                break;
            case EndDeed::flange_mitre:
                mitre(shape, legs, flange, step);
                break;
            case EndDeed::face_mitre:
                mitre(shape, legs, face, step);
                break;
            case EndDeed::face_cut:
                parts_off(shape, legs, {face, kick, hem}, step.in);
                break;
            case EndDeed::face_slant:
                each(legs, face, [&](std::size_t i) {
                    const std::int64_t at_bend = (step.in + step.run).nm(), far = step.in.nm();
                    const bool top = hangs(legs, i);
                    shape.notches.push_back(off_to(top ? at_bend : far, top_of(legs, i),
                                                   top ? far : at_bend, low_of(legs, i)));
                });
                break;
            case EndDeed::drip_cut:
                parts_off(shape, legs, {kick, hem}, step.in);
                break;
            case EndDeed::drip_clip:
                drip_clip(shape, legs, step.in);
                break;
            case EndDeed::hem_notch:
                parts_off(shape, legs, {hem}, step.in);
                break;
            case EndDeed::hem_clip:
                hem_clip(shape, legs, step.in);
                break;
            case EndDeed::tab:
                tab(shape, legs, step);
                break;
            case EndDeed::tab_clip:
                corner_clips(shape, legs, step.run, true);
                break;
            case EndDeed::low_clip:
                corner_clips(shape, legs, step.run, false);
                break;
            case EndDeed::relief:
                relief(shape, legs, step);
                break;
            case EndDeed::fold_down:
                close_end(shape, legs, step.in, step.degrees);
                break;
            case EndDeed::turn_up:
                close_end(shape, legs, step.in, -step.degrees);
                break;
            case EndDeed::flange_fold:
                flange_fold(shape, legs, step);
                break;
            case EndDeed::flange_tab:
                corner_tab(shape, legs, flange, step);
                break;
            case EndDeed::face_tab:
                corner_tab(shape, legs, face, step);
                break;
            case EndDeed::kick_out:
                kick_out(shape, legs, step);
                break;
            case EndDeed::face_off:
                parts_off(shape, legs, {face}, step.in);
                break;
            case EndDeed::face_clear:
                face_clear(shape, legs, step);
                break;
        }
    }
    return shape;
}

}  // namespace hemline
