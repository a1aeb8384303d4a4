#include "engine/plan/cutting_fill.h"

#include <algorithm>

namespace hemline {

namespace {

using Counts = std::vector<std::int64_t>;

Counts longest_fit(const CuttingTask& task, std::int64_t capacity, const Counts& uncut) {
    Counts taken(uncut.size(), 0);
    const std::int64_t shortest = task.pieces.empty() ? 0 : task.pieces.back().size;
    for (std::size_t i = 0; i < uncut.size() && capacity >= shortest; ++i) {
        if (uncut[i] > 0 && task.pieces[i].size <= capacity) {
            taken[i] = std::min(uncut[i], capacity / task.pieces[i].size);
            capacity -= taken[i] * task.pieces[i].size;
        }
    }
    return taken;
}

/// Looks for the pieces that leave least of a stick, longest pieces first, within counted steps.
class LeastLeft {
  public:
    LeastLeft(const CuttingTask& task, std::int64_t capacity, const Counts& uncut)
        : task_(task), uncut_(uncut), best_(longest_fit(task, capacity, uncut)) {
        const auto first = static_cast<std::size_t>(
            std::find_if(best_.begin(), best_.end(), [](auto n) { return n > 0; }) - best_.begin());
        if (first == best_.size()) {
            return;
        }
        least_left_ = capacity;
        for (std::size_t i = 0; i < best_.size(); ++i) {
            least_left_ -= best_[i] * task.pieces[i].size;
        }
        smallest_.assign(uncut.size() + 1, capacity + 1);
        for (std::size_t i = uncut.size(); i-- > 0;) {
            const bool shorter_left = smallest_[i + 1] <= capacity;
            smallest_[i] = shorter_left || uncut[i] == 0 ? smallest_[i + 1] : task.pieces[i].size;
        }
        taken_.assign(uncut.size(), 0);
        taken_[first] = 1;
        look(first, capacity - task.pieces[first].size);
    }
    [[nodiscard]] const Counts& best() const { return best_; }

  private:
    void look(std::size_t from, std::int64_t left) {
        if (left < least_left_) {
            least_left_ = left;
            best_ = taken_;
        }
        for (std::size_t i = from; i < uncut_.size() && smallest_[i] <= left; ++i) {
            if (least_left_ == 0 || ++steps_ > 3000) {
                return;
            }
            if (taken_[i] < uncut_[i] && task_.pieces[i].size <= left) {
                ++taken_[i];
                look(i, left - task_.pieces[i].size);
                --taken_[i];
            }
        }
    }

    const CuttingTask& task_;
    const Counts& uncut_;
    Counts best_, taken_, smallest_;
    std::int64_t least_left_ = 0;
    int steps_ = 0;
};

}  // namespace

Cutting fill_sticks(const CuttingTask& task, FillBy by, Counts uncut, Counts supply) {
    Cutting cutting;
    for (std::size_t k = 0; k < task.stock.size(); ++k) {
        while (supply[k] > 0) {
            const std::int64_t capacity = task.stock[k].capacity;
            const Counts taken = by == FillBy::longest ? longest_fit(task, capacity, uncut)
                                                       : LeastLeft(task, capacity, uncut).best();
            Filling filling{k, supply[k], {}};
            for (std::size_t i = 0; i < taken.size(); ++i) {
                if (taken[i] > 0) {
                    filling.parts.push_back({i, taken[i]});
                    filling.times = std::min(filling.times, uncut[i] / taken[i]);
                }
            }
            if (filling.parts.empty()) {
                break;
            }
            supply[k] -= filling.times;
            for (const auto& part : filling.parts) {
                uncut[part.piece] -= filling.times * part.count;
            }
            cutting.fillings.push_back(std::move(filling));
        }
    }
    return cutting;
}

Cutting filled(const CuttingTask& task) {
    Counts uncut, supply;
    for (const TaskPiece& piece : task.pieces) {
        uncut.push_back(piece.count);
    }
    for (const TaskStock& stock : task.stock) {
        supply.push_back(stock.supply);
    }
    Cutting best = fill_sticks(task, FillBy::longest, uncut, supply);
    count_up(task, best);
    Cutting other = fill_sticks(task, FillBy::least_left, std::move(uncut), std::move(supply));
    count_up(task, other);
    if (better(other, best)) {
        best = std::move(other);
    }
    take_shorter_sticks(task, best);
    return best;
}

}  // namespace hemline
