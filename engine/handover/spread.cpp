#include "engine/handover/spread.h"

#include <algorithm>

namespace hemline {

namespace {

/// A group of labels that touch: the sum, over its labels, of where the left end of the first would
/// be if that label were where it is wanted.
struct Group {
    std::int64_t wanted = 0, count = 0, wide = 0;

    [[nodiscard]] std::int64_t left() const { return wanted / count; }
};

}  // namespace

std::vector<std::int64_t> spread_out(const std::vector<Spread>& labels, std::int64_t low,
                                     std::int64_t high) {
    // Pool adjacent violators (isotonic regression): groups that would overlap are merged around
    // their middle.
    std::vector<Group> groups;
    for (const Spread& label : labels) {
        Group group{label.at - label.wide / 2, 1, label.wide};
        while (!groups.empty() && groups.back().left() + groups.back().wide > group.left()) {
            const Group& before = groups.back();
            group = {before.wanted + group.wanted - group.count * before.wide,
                     before.count + group.count, before.wide + group.wide};
            groups.pop_back();
        }
        groups.push_back(group);
    }
    std::vector<std::int64_t> lefts;
    std::int64_t from = low;
    for (const Group& group : groups) {
        from = low < high ? std::max(from, group.left()) : group.left();
        lefts.push_back(from);
        from += group.wide;
    }
    std::int64_t to = high;
    for (std::size_t i = groups.size(); i-- > 0 && low < high;) {
        lefts[i] = std::max(low, std::min(lefts[i], to - groups[i].wide));
        to = lefts[i];
    }
    std::vector<std::int64_t> middles;
    std::size_t label = 0;
    for (std::size_t i = 0; i < groups.size(); ++i) {
        std::int64_t left = lefts[i];
        for (std::int64_t n = 0; n < groups[i].count; ++n, ++label) {
            middles.push_back(left + labels[label].wide / 2);
            left += labels[label].wide;
        }
    }
    return middles;
}

}  // namespace hemline
