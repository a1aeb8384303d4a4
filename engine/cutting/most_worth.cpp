#include "engine/cutting/most_worth.h"

#include <algorithm>

#include "engine/cutting/wide.h"

namespace hemline {

namespace {

struct Item {
    std::size_t piece = 0;
    std::int64_t size = 0, worth = 0, count = 0;
};

using Items = std::vector<Item>;

/// What may be taken, most worth for its size first.
Items items_of(const CuttingTask& task, const std::vector<std::int64_t>& worth,
               const std::vector<std::int64_t>& counts, std::int64_t capacity) {
    Items items;
    for (std::size_t i = 0; i < task.pieces.size(); ++i) {
        const std::int64_t size = task.pieces[i].size;
        const std::int64_t count = std::min(counts[i], capacity / size);
        if (count > 0 && worth[i] > 0) {
            items.push_back({i, size, worth[i], count});
        }
    }
    std::stable_sort(items.begin(), items.end(), [](const Item& a, const Item& b) {
        return product_exceeds(a.worth, b.size, b.worth, a.size);
    });
    return items;
}

/// Depth-first over the items with the room's worth at the next item's rate as bound.
class DepthFirst {
  public:
    DepthFirst(const Items& items, std::int64_t capacity, std::int64_t steps)
        : items_(items), taken_(items.size(), 0), best_(items.size(), 0), steps_(steps) {
        smallest_.assign(items.size() + 1, capacity + 1);
        for (std::size_t i = items.size(); i-- > 0;) {
            smallest_[i] = std::min(smallest_[i + 1], items[i].size);
        }
        walk(0, capacity, 0);
    }
    [[nodiscard]] bool finished() const { return steps_ > 0; }
    [[nodiscard]] std::int64_t steps_left() const { return steps_; }
    [[nodiscard]] std::int64_t worth() const { return most_; }
    [[nodiscard]] const std::vector<std::int64_t>& best() const { return best_; }

  private:
    void walk(std::size_t i, std::int64_t room, std::int64_t worth) {
        if (worth > most_) {
            most_ = worth;
            best_ = taken_;
        }
        for (; i < items_.size() && smallest_[i] <= room; ++i) {
            const Item& item = items_[i];
            if (--steps_ <= 0 || worth + product_over(room, item.worth, item.size) <= most_) {
                return;
            }
            for (std::int64_t n = std::min(item.count, room / item.size); n > 0; --n) {
                taken_[i] = n;
                walk(i + 1, room - n * item.size, worth + n * item.worth);
            }
            taken_[i] = 0;
        }
    }

    const Items& items_;
    std::vector<std::int64_t> taken_, best_, smallest_;
    std::int64_t most_ = 0;
    std::int64_t steps_;
};

/// Item by item, every room that gives more worth than any smaller room. Slow, but its time is
/// bounded even where the rates lie close together.
class RoomByRoom {
  public:
    RoomByRoom(const Items& items, std::int64_t capacity, std::int64_t states_most)
        : items_(items), states_most_(states_most) {
        states_.push_back({0, 0, 0, 0, 0});
        std::vector<Place> front{0};
        for (std::size_t i = 0; i < items.size(); ++i) {
            // 1, 2, 4, … and the rest make up every count.
            for (std::int64_t left = items[i].count, n = 1; left > 0; left -= n, n *= 2) {
                n = std::min(n, left);
                front = widened(front, i, n, capacity);
                if (states() > states_most_) {
                    return;
                }
            }
        }
        finished_ = true;
        last_ = front.back();
    }
    static constexpr std::int64_t bytes_most(std::int64_t states) {
        return states * static_cast<std::int64_t>(2 * sizeof(State) + 2 * sizeof(Place)) * 3 / 4;
    }
    [[nodiscard]] bool finished() const { return finished_; }
    /// Met, whether or not there was room for them.
    [[nodiscard]] std::int64_t states() const {
        return static_cast<std::int64_t>(states_.size()) + past_room_;
    }
    [[nodiscard]] std::int64_t worth() const { return states_[last_].worth; }
    [[nodiscard]] std::vector<std::int64_t> best() const {
        std::vector<std::int64_t> taken(items_.size(), 0);
        for (std::size_t at = last_; at != 0; at = states_[at].from) {
            taken[states_[at].item] += states_[at].count;
        }
        return taken;
    }

  private:
    using Place = std::uint32_t;  ///< of a state
    struct State {
        std::int64_t room = 0, worth = 0;
        Place from = 0;
        std::uint32_t item = 0, count = 0;
    };

    std::vector<Place> widened(const std::vector<Place>& front, std::size_t item,
                               std::int64_t count, std::int64_t capacity) {
        const std::int64_t size = count * items_[item].size;
        const std::int64_t worth = count * items_[item].worth;
        std::vector<Place> merged;
        std::int64_t held = -1;
        const auto keep = [&](Place state) {
            merged.push_back(state);
            held = states_[state].worth;
        };
        std::size_t old = 0;
        for (const Place base : front) {
            const State next{states_[base].room + size, states_[base].worth + worth, base,
                             static_cast<std::uint32_t>(item), static_cast<std::uint32_t>(count)};
            if (next.room > capacity) {
                break;
            }
            while (old < front.size() && (states_[front[old]].room < next.room ||
                                          (states_[front[old]].room == next.room &&
                                           states_[front[old]].worth >= next.worth))) {
                if (states_[front[old]].worth > held) {
                    keep(front[old]);
                }
                ++old;
            }
            if (next.worth > held && states() > states_most_) {
                ++past_room_;
                held = next.worth;
            } else if (next.worth > held) {
                states_.push_back(next);
                keep(static_cast<Place>(states_.size() - 1));
            }
        }
        for (; old < front.size(); ++old) {
            if (states_[front[old]].worth > held) {
                keep(front[old]);
            }
        }
        return merged;
    }

    const Items& items_;
    std::int64_t states_most_;
    std::vector<State> states_;
    std::int64_t past_room_ = 0;
    Place last_ = 0;
    bool finished_ = false;
};

}  // namespace

MostWorth most_worth(const CuttingTask& task, const std::vector<std::int64_t>& worth,
                     const std::vector<std::int64_t>& counts, std::int64_t capacity,
                     Effort& effort) {
    const Items items = items_of(task, worth, counts, capacity);
    MostWorth result;
    if (items.empty()) {
        return result;
    }
    constexpr std::int64_t first_steps = 20'000;
    // A vector that grows keeps its old memory until the copy is made, and so does each front.
    constexpr std::int64_t states_most = 1'000'000;
    static_assert(RoomByRoom::bytes_most(states_most) <= table_bytes_most);
    const DepthFirst depth_first(items, capacity, first_steps);
    effort.spend(first_steps - depth_first.steps_left());
    std::vector<std::int64_t> taken = depth_first.best();
    result.worth = result.most = depth_first.worth();
    if (!depth_first.finished()) {
        result.most = product_over(capacity, items.front().worth, items.front().size);
        const RoomByRoom room_by_room(items, capacity, states_most);
        effort.spend(room_by_room.states());
        if (room_by_room.finished()) {
            taken = room_by_room.best();
            result.worth = result.most = room_by_room.worth();
        }
    }
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (taken[i] > 0) {
            result.parts.push_back({items[i].piece, taken[i]});
        }
    }
    std::sort(result.parts.begin(), result.parts.end(),
              [](const auto& a, const auto& b) { return a.piece < b.piece; });
    return result;
}

}  // namespace hemline
