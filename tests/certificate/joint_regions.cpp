#include "tests/certificate/joint_regions.h"

#include <algorithm>

namespace certificate {

namespace {

/// Narrows an end of a range to `to`, and the ranges before or after it where they must rise with
/// it.
Region with_end(Region region, std::size_t place, bool is_most, Int to) {
    for (std::size_t i = 0; i < region.ranges.size(); ++i) {
        auto& [least, most] = region.ranges[i];
        if (is_most && i <= place) {
            most = std::min(most, to);
        } else if (!is_most && i >= place) {
            least = std::max(least, to);
        }
    }
    return region;
}

/// Where the part does not hold all of the region: what of it the part may hold, and the rest.
std::optional<std::pair<Region, Region>> apart(const Region& region, const Region& part,
                                               Int longest) {
    if ((region.classes & ~part.classes) != 0) {
        return std::pair(Region{region.classes & part.classes, region.ranges},
                         Region{region.classes & ~part.classes, region.ranges});
    }
    Region own = region;
    if (own.ranges.empty()) {
        own.ranges.assign(part.ranges.size(), {0, longest});
    }
    for (std::size_t i = part.ranges.size(); i-- > 0;) {
        const Int to = part.ranges[i].second;
        if (to < own.ranges[i].second) {
            return std::pair(with_end(own, i, true, to), with_end(own, i, false, to + 1));
        }
    }
    for (std::size_t i = 0; i < part.ranges.size(); ++i) {
        const Int to = part.ranges[i].first;
        if (to > own.ranges[i].first) {
            return std::pair(with_end(own, i, false, to), with_end(own, i, true, to - 1));
        }
    }
    return std::nullopt;
}

bool meet(const Region& region, const Region& part) {
    if (region.classes != 0 && (region.classes & part.classes) == 0) {
        return false;
    }
    if (region.ranges.size() != part.ranges.size()) {
        return true;
    }
    for (std::size_t i = 0; i < region.ranges.size(); ++i) {
        if (region.ranges[i].first > part.ranges[i].second ||
            part.ranges[i].first > region.ranges[i].second) {
            return false;
        }
    }
    return true;
}

bool meet(const std::vector<Region>& regions, const JointPart& part) {
    for (std::size_t e = 0; e < regions.size(); ++e) {
        if (!meet(regions[e], part.edges[e])) {
            return false;
        }
    }
    return true;
}

}  // namespace

/// Cuts all there is along the first face of a part that does not hold it, and looks at both sides.
bool leaves_nothing_out(const std::vector<JointPart>& parts, const std::vector<Region>& all,
                        const std::vector<Int>& longest) {
    const auto part = std::find_if(parts.begin(), parts.end(),
                                   [&](const JointPart& own) { return meet(all, own); });
    if (part == parts.end()) {
        return false;
    }
    for (std::size_t e = 0; e < all.size(); ++e) {
        if (const auto sides = apart(all[e], part->edges[e], longest[e])) {
            std::vector<Region> inside = all, outside = all;
            inside[e] = sides->first;
            outside[e] = sides->second;
            return leaves_nothing_out(parts, inside, longest) &&
                   leaves_nothing_out(parts, outside, longest);
        }
    }
    return true;
}

}  // namespace certificate
