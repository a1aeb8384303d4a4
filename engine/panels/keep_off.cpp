#include "engine/panels/keep_off.h"

#include <algorithm>

#include "engine/roof/nearest.h"
#include "engine/trim/practice.h"

namespace hemline {

namespace {

void add_penetration(std::vector<KeepOff>& all, const Penetration& through,
                     const Practice& practice) {
    const Length half = Length::of_nm(through.wide.nm() / 2);
    if (through.kind == Penetration::Kind::pipe) {
        const Length off = half + practice.boot_clear + Length::of_nm(practice.seam_foot.nm() / 2);
        all.push_back({say("the pipe at {1}", through.x), through.x, off});
        return;
    }
    for (const Length wall : {through.x - half, through.x + half}) {
        all.push_back({say("the curb's side at {1}", wall), wall, practice.seam_off});
    }
}

/// Of the same kind and place only once: a wall's bounds, a valley's two stretches.
void add_once(std::vector<KeepOff>& all, const KeepOff& one) {
    if (std::none_of(all.begin(), all.end(), [&](const KeepOff& other) {
            return other.at == one.at && other.on_it == one.on_it;
        })) {
        all.push_back(one);
    }
}

}  // namespace

std::vector<KeepOff> keep_offs(const DeckPlane& plane, const std::vector<Penetration>& through,
                               const Practice& practice) {
    std::vector<KeepOff> all;
    for (const Penetration& one : through) {
        add_penetration(all, one, practice);
    }
    for (const DeckBound& bound : plane.bounds) {
        const double x = bound.head().x;
        if (!bound.kind || x == plane.left || x == plane.right) {
            continue;
        }
        const Length at = nearest_nm(x), off = practice.seam_off;
        if (bound.is_upright()) {
            add_once(all, {say("the wall line {1}", bound.edge), at, off});
        } else if (*bound.kind == EdgeKind::valley) {
            add_once(all, {say("the top of valley {1}", bound.edge), at, off});
        } else if (*bound.kind == EdgeKind::hip) {
            add_once(all, {say("the top of hip {1}", bound.edge), at, off, true});
        }
    }
    return all;
}

}  // namespace hemline
