#include "engine/roof/rising_readings.h"

#include <algorithm>
#include <numeric>
#include <tuple>

namespace hemline {

RisingReadings::RisingReadings(std::span<const Length> readings, Tape tape)
    : readings_(readings), order_(readings.size()), tape_(tape) {
    std::iota(order_.begin(), order_.end(), std::size_t{0});
    std::sort(order_.begin(), order_.end(), [&](std::size_t a, std::size_t b) {
        return std::pair(readings_[a], a) < std::pair(readings_[b], b);
    });
    for (std::size_t first = 0, last = 0; first < order_.size(); ++first) {
        last = std::max(last, first);
        while (last + 1 < order_.size() && agree(first, last + 1)) {
            ++last;
        }
        groups_.push_back({first, last});
        most_ = std::max(most_, groups_.back().count());
    }
}

ReadingPair RisingReadings::nearest_pair() const {
    std::optional<ReadingPair> nearest;
    const auto rank = [&](ReadingPair pair) {
        return std::tuple(apart(readings_[pair.first], readings_[pair.second]), pair.second,
                          pair.first);
    };
    std::size_t tried = 1;
    for (const Group& group : groups_) {
        if (group.count() < most_) {
            continue;
        }
        // Such a pair is always side by side.
        const std::size_t last = most_ == 1 ? order_.size() - 1 : group.last;
        for (std::size_t k = std::max(tried, group.first + 1); k <= last; ++k) {
            const ReadingPair pair{std::min(order_[k - 1], order_[k]),
                                   std::max(order_[k - 1], order_[k])};
            nearest = nearest && rank(*nearest) < rank(pair) ? nearest : pair;
        }
        tried = std::max(tried, last + 1);
    }
    return nearest.value_or(ReadingPair());
}

std::optional<std::pair<Length, Length>> RisingReadings::divided(Length mark) const {
    const Group* lowest = nullptr;
    for (const Group& group : groups_) {
        if (most_ < 2 || group.count() < most_) {
            continue;
        }
        if (lowest != nullptr && !agree(lowest->last, group.first)) {
            return std::pair(middle(*lowest, mark), middle(group, mark));
        }
        lowest = lowest == nullptr ? &group : lowest;
    }
    return {};
}

bool RisingReadings::agree(std::size_t low, std::size_t high) const {
    return apart(at(low), at(high)) <= allowed_apart(at(low), at(high), tape_);
}

Length RisingReadings::middle(const Group& group, Length mark) const {
    return agreed_length(at(group.first), at(group.last), mark);
}

Length apart(Length a, Length b) { return absolute(a - b); }

Length allowed_apart(Length a, Length b, Tape tape) {
    return allowed_difference(std::max(a, b), tape);
}

Length agreed_length(Length a, Length b, Length mark) {
    // Rounding the sum to twice the mark rounds the mean to the mark without losing a half.
    return a == b ? a : Length::of_nm(nearest_on(a + b, 2 * mark).nm() / 2);
}

}  // namespace hemline
