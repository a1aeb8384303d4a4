#include "engine/trim/end_work.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace hemline {

namespace {

constexpr std::int64_t past_end_nm = 1'000'000;  // notches stand out of the metal, so none is left

using Range = std::pair<std::size_t, std::size_t>;  // first leg, past the last

/// Removed: everything from the end to the line from (in0, y0) to (in1, y1).
FlatOutline off_to(std::int64_t in0, std::int64_t y0, std::int64_t in1, std::int64_t y1) {
    return {{-past_end_nm, y0}, {-past_end_nm, y1}, {in1, y1}, {in0, y0}};
}

std::int64_t top_of(const FlatLegs& legs, std::size_t leg) { return legs.edges[leg].nm(); }
std::int64_t low_of(const FlatLegs& legs, std::size_t leg) { return legs.edges[leg + 1].nm(); }

void leg_off(EndShape& shape, const FlatLegs& legs, std::size_t leg, Length in) {
    // Past a free edge too, so that no sliver is left there.
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

/// True where the leg's free edge (of the two) is the upper one on the page.
bool free_above(const FlatLegs& legs, std::size_t leg) { return leg == 0 && legs.names.size() > 1; }

void flange_mitre(EndShape& shape, const FlatLegs& legs, const EndStep& step) {
    each(legs, LegName::flange, [&](std::size_t i) {
        const std::int64_t at_fold = step.in.nm(), at_free = (step.in + step.run).nm();
        const bool above = free_above(legs, i);
        shape.notches.push_back(above ? off_to(at_free, top_of(legs, i), at_fold, low_of(legs, i))
                                      : off_to(at_fold, top_of(legs, i), at_free, low_of(legs, i)));
    });
}

/// Snips go through kick and hem as they lie folded: the hem's line comes back out.
void drip_clip(EndShape& shape, const FlatLegs& legs, Length in) {
    std::int64_t at = in.nm();
    for (std::size_t i = 1; i < legs.names.size(); ++i) {
        const std::int64_t width = low_of(legs, i) - top_of(legs, i);
        const bool folded_back = std::abs(legs.bends[i - 1]) >= 180;
        if (legs.names[i] == LegName::kick) {
            shape.notches.push_back(off_to(at, top_of(legs, i), at + width, low_of(legs, i)));
            at += width;
        } else if (legs.names[i] == LegName::hem && folded_back &&
                   legs.names[i - 1] == LegName::kick) {
            shape.notches.push_back(off_to(at, top_of(legs, i), at - width, low_of(legs, i)));
        }
    }
}

void hem_clip(EndShape& shape, const FlatLegs& legs, Length in) {
    each(legs, LegName::hem, [&](std::size_t i) {
        const std::int64_t top = top_of(legs, i), low = low_of(legs, i);
        const std::int64_t at = in.nm(), deep = at + low - top;
        shape.notches.push_back(free_above(legs, i) ? off_to(deep, top, at, low)
                                                    : off_to(at, top, deep, low));
    });
}

void corner_clips(EndShape& shape, const FlatLegs& legs, Length run, bool both) {
    each(legs, LegName::face, [&](std::size_t i) {
        const std::int64_t top = top_of(legs, i), low = low_of(legs, i);
        if (both) {
            shape.notches.push_back({{0, top}, {0, top + run.nm()}, {run.nm(), top}});
        }
        shape.notches.push_back({{0, low - run.nm()}, {0, low}, {run.nm(), low}});
    });
}

void fold_parts(EndShape& shape, const FlatLegs& legs, LegName name, Length in, double degrees) {
    each(legs, name, [&](std::size_t i) { shape.folds.push_back({i, in, degrees}); });
}

void slit_beside(EndShape& shape, const FlatLegs& legs, LegName name, Length in) {
    for (std::size_t bend = 0; bend + 1 < legs.names.size(); ++bend) {
        if ((legs.names[bend] == name) != (legs.names[bend + 1] == name)) {
            shape.slits.push_back({bend, in});
        }
    }
}

/// Two legs folded down meet under the apex: each gives up half the bend between them.
void cap(EndShape& shape, const FlatLegs& legs, const EndStep& step) {
    parts_off(shape, legs, {LegName::hem}, step.in);
    fold_parts(shape, legs, LegName::flange, step.in, step.degrees);
    fold_parts(shape, legs, LegName::face, step.in, step.degrees);
    for (std::size_t bend = 0; bend + 1 < legs.names.size(); ++bend) {
        if (legs.names[bend] != LegName::flange || legs.names[bend + 1] != LegName::face) {
            continue;
        }
        const double half = std::abs(legs.bends[bend]) / 2 * std::numbers::pi / 180;
        const std::int64_t back =
            std::llround(static_cast<double>(step.in.nm()) * std::tan(std::min(half, 1.4)));
        const std::int64_t apex = low_of(legs, bend);
        const std::int64_t up = std::max(apex - back, top_of(legs, bend));
        const std::int64_t down = std::min(apex + back, low_of(legs, bend + 1));
        shape.notches.push_back({{0, up}, {0, down}, {step.in.nm(), apex}});
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
                flange_mitre(shape, legs, step);
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
            case EndDeed::face_cut:
                parts_off(shape, legs, {face, kick, hem}, step.in);
                break;
            case EndDeed::face_slant:
                each(legs, face, [&](std::size_t i) {
                    shape.notches.push_back(off_to((step.in + step.run).nm(), top_of(legs, i),
                                                   step.in.nm(), low_of(legs, i)));
                });
                break;
            case EndDeed::tab:
                fold_parts(shape, legs, face, step.in, step.degrees);
                break;
            case EndDeed::tab_clip:
                corner_clips(shape, legs, step.run, true);
                break;
            case EndDeed::low_clip:
                corner_clips(shape, legs, step.run, false);
                break;
            case EndDeed::relief:
                each(legs, face, [&](std::size_t i) {
                    const std::int64_t at = step.in.nm(), low = low_of(legs, i);
                    shape.notches.push_back(
                        {{at - step.run.nm(), low}, {at, low}, {at, low - step.run.nm()}});
                });
                break;
            case EndDeed::return_tab:
                parts_off(shape, legs, {flange, kick, hem}, step.in);
                fold_parts(shape, legs, face, step.in, step.degrees);
                break;
            case EndDeed::cap:
                cap(shape, legs, step);
                break;
            case EndDeed::kick_out:
                slit_beside(shape, legs, face, step.in);
                fold_parts(shape, legs, face, step.in, -step.degrees);
                break;
            case EndDeed::turn_up:
                parts_off(shape, legs, {hem}, step.in);
                slit_beside(shape, legs, flange, step.in);
                fold_parts(shape, legs, flange, step.in, -step.degrees);
                break;
        }
    }
    return shape;
}

}  // namespace hemline
