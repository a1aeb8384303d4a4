#include "engine/work/pan_screws.h"

#include <algorithm>

#include "engine/roof/edge_shape.h"
#include "engine/trim/practice.h"

namespace hemline {

namespace {

/// A pan along the edge: what of it lies before the edge's end.
struct Pan {
    Length from, to;
    bool whole = false;
};

/// The pans that a stretch of the edge touches.
std::vector<Pan> pans_in(const ClosureSide& side, Length edge, Stretch stretch) {
    std::vector<Pan> pans;
    const std::int64_t first = std::max<std::int64_t>(0, stretch.from.nm() / side.apart.nm());
    for (std::int64_t i = first; side.apart * i < std::min(stretch.to, edge); ++i) {
        const Length from = side.apart * i;
        pans.push_back({from, std::min(from + side.apart, edge), from + side.apart <= edge});
    }
    return pans;
}

/// As practice says, but a quarter of the pan where that is less.
Length clear_of_seams(const ClosureSide& side, const Practice& practice) {
    return std::min(practice.seam_clear, Length::of_nm(side.apart.nm() / 4));
}

std::vector<Length> places_in(const Pan& pan, const PanPlaces& places, Length clear) {
    if (pan.whole || pan.from + places.second <= pan.to) {
        return {pan.from + places.first, pan.from + places.second};
    }
    if (pan.from + places.first <= pan.to) {
        return {pan.from + places.first};
    }
    const Length half = Length::of_nm((pan.to - pan.from).nm() / 2);
    return half >= clear ? std::vector<Length>{pan.from + half} : std::vector<Length>();
}

/// The middle of the widest part of the room that keeps clear of the seams; none where there is
/// none.
std::vector<Length> widest_middle(const std::vector<Pan>& pans, Stretch room, Length clear,
                                  Length grid) {
    Stretch widest{};
    for (const Pan& pan : pans) {
        const Length from = std::max(room.from, pan.from + clear);
        const Length to = std::min(room.to, pan.whole ? pan.to - clear : pan.to);
        widest = to - from > widest.to - widest.from ? Stretch{from, to} : widest;
    }
    if (widest.to <= widest.from) {
        return {};
    }
    const Length middle = Length::of_nm((widest.from.nm() + widest.to.nm()) / 2);
    return {std::clamp(nearest_on(middle, grid), widest.from, widest.to)};
}

}  // namespace

PanPlaces pan_places(const ClosureSide& side, const Practice& practice) {
    const Length quarter = nearest_on(Length::of_nm(side.apart.nm() / 4), practice.cut_grid);
    return {quarter, nearest_on(side.apart - quarter, practice.cut_grid)};
}

std::vector<Length> pan_screws(const ClosureSide& side, Length edge, Length begins, Stretch room,
                               const Practice& practice) {
    if (room.to <= room.from) {
        return {};
    }
    const Stretch on_edge{room.from + begins, room.to + begins};
    const std::vector<Pan> pans = pans_in(side, edge, on_edge);
    const PanPlaces places = pan_places(side, practice);
    const Length clear = clear_of_seams(side, practice);
    std::vector<Length> screws;
    for (const Pan& pan : pans) {
        for (const Length place : places_in(pan, places, clear)) {
            if (place >= on_edge.from && place <= on_edge.to) {
                screws.push_back(place);
            }
        }
    }
    if (screws.empty()) {
        screws = widest_middle(pans, on_edge, clear, practice.cut_grid);
    }
    for (Length& screw : screws) {
        screw = std::clamp(nearest_on(screw - begins, practice.cut_grid), room.from, room.to);
    }
    return screws;
}

Text seam_places(const Edge& edge, TrimRole role, Length length, const Practice& practice) {
    if (screwed_to(edge.kind, role) == ScrewedTo::deck) {
        return {};
    }
    const Closures closures = closures_of(edge, length, practice);
    const bool alike =
        !closures.sides.empty() && closures.sides.front().apart == closures.sides.back().apart;
    std::vector<Text> each;
    for (const ClosureSide& side : closures.sides) {
        if (side.count == 0) {
            continue;
        }
        const PanPlaces at = pan_places(side, practice);
        const Text places = say("{1} and {2}", at.first, at.second);
        if (alike) {
            return places;
        }
        each.push_back(side.pitch ? say("{1} on the {2} roof", places, *side.pitch) : places);
    }
    return joined(each, ", ");
}

}  // namespace hemline
