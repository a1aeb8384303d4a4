#include "engine/cutting/cutting_fill.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace hemline {

namespace {

using Counts = std::vector<std::int64_t>;
using Parts = std::vector<Filling::Part>;

/// What is still to be cut. Kinds that are used up are skipped in a single step, however many there
/// are.
class Uncut {
  public:
    Uncut(const CuttingTask& task, Counts counts)
        : task_(task), counts_(std::move(counts)), next_(counts_.size() + 1) {
        std::iota(next_.begin(), next_.end(), std::size_t{0});
        for (std::size_t i = 0; i < counts_.size(); ++i) {
            drop_if_none(i);
        }
        shortest_ = counts_.size();
        find_shortest();
    }

    [[nodiscard]] std::int64_t count(std::size_t piece) const { return counts_[piece]; }
    [[nodiscard]] std::int64_t size(std::size_t piece) const { return task_.pieces[piece].size; }
    [[nodiscard]] std::size_t kinds() const { return counts_.size(); }
    /// The last kind that is left; kinds() when none is.
    [[nodiscard]] std::size_t shortest() const { return shortest_; }
    /// The first kind from there on that is left and no longer than that; kinds() when none is.
    [[nodiscard]] std::size_t first_fitting(std::size_t from, std::int64_t room) {
        const auto fits = std::partition_point(
            task_.pieces.begin() + static_cast<std::ptrdiff_t>(from), task_.pieces.end(),
            [&](const TaskPiece& piece) { return piece.size > room; });
        return next(static_cast<std::size_t>(fits - task_.pieces.begin()));
    }
    void take(const Parts& parts, std::int64_t times) {
        for (const auto& part : parts) {
            counts_[part.piece] -= times * part.count;
            drop_if_none(part.piece);
        }
        find_shortest();
    }

  private:
    void drop_if_none(std::size_t piece) {
        if (counts_[piece] <= 0) {
            next_[piece] = piece + 1;
        }
    }
    std::size_t next(std::size_t from) {
        std::size_t end = from;
        while (next_[end] != end) {
            end = next_[end];
        }
        while (next_[from] != from) {
            from = std::exchange(next_[from], end);
        }
        return end;
    }
    void find_shortest() {
        if (shortest_ == counts_.size()) {
            while (shortest_ > 0 && counts_[shortest_ - 1] <= 0) {
                --shortest_;
            }
            shortest_ = shortest_ == 0 ? counts_.size() : shortest_ - 1;
            return;
        }
        while (shortest_ > 0 && counts_[shortest_] <= 0) {
            --shortest_;
        }
        shortest_ = counts_[shortest_] <= 0 ? counts_.size() : shortest_;
    }

    const CuttingTask& task_;
    Counts counts_;
    std::vector<std::size_t> next_;  ///< the kind itself where it is left, else a later kind
    std::size_t shortest_ = 0;
};

Parts longest_fit(Uncut& uncut, std::int64_t capacity) {
    Parts taken;
    std::size_t i = uncut.first_fitting(0, capacity);
    while (i < uncut.kinds()) {
        const std::int64_t count = std::min(uncut.count(i), capacity / uncut.size(i));
        taken.push_back({i, count});
        capacity -= count * uncut.size(i);
        i = uncut.first_fitting(i + 1, capacity);
    }
    return taken;
}

/// Looks for the pieces that leave the least of a stick, longest pieces first, within counted
/// steps.
class LeastLeft {
  public:
    LeastLeft(Uncut& uncut, std::int64_t capacity)
        : uncut_(uncut), best_(longest_fit(uncut, capacity)) {
        if (best_.empty()) {
            return;
        }
        least_left_ = capacity;
        for (const auto& part : best_) {
            least_left_ -= part.count * uncut.size(part.piece);
        }
        const std::size_t first = best_.front().piece;
        taken_.push_back({first, 1});
        look(first, capacity - uncut.size(first));
    }
    [[nodiscard]] const Parts& best() const { return best_; }

  private:
    void look(std::size_t from, std::int64_t left) {
        if (left < least_left_) {
            least_left_ = left;
            best_ = taken_;
        }
        for (std::size_t i = from; i <= uncut_.shortest() && uncut_.size(uncut_.shortest()) <= left;
             ++i) {
            if (least_left_ == 0 || ++steps_ > 3000) {
                return;
            }
            if (count_of(i) < uncut_.count(i) && uncut_.size(i) <= left) {
                add(i);
                look(i, left - uncut_.size(i));
                take_back();
            }
        }
    }
    [[nodiscard]] std::int64_t count_of(std::size_t piece) const {
        return taken_.back().piece == piece ? taken_.back().count : 0;
    }
    void add(std::size_t piece) {
        if (taken_.back().piece == piece) {
            ++taken_.back().count;
        } else {
            taken_.push_back({piece, 1});
        }
    }
    void take_back() {
        if (--taken_.back().count == 0) {
            taken_.pop_back();
        }
    }

    Uncut& uncut_;
    Parts best_, taken_;
    std::int64_t least_left_ = 0;
    int steps_ = 0;
};

}  // namespace

Cutting fill_sticks(const CuttingTask& task, FillBy by, Counts uncut, Counts supply) {
    Cutting cutting;
    Uncut left(task, std::move(uncut));
    for (std::size_t k = 0; k < task.stock.size(); ++k) {
        while (supply[k] > 0) {
            const std::int64_t capacity = task.stock[k].capacity;
            Filling filling{k, supply[k],
                            by == FillBy::longest ? longest_fit(left, capacity)
                                                  : LeastLeft(left, capacity).best()};
            if (filling.parts.empty()) {
                break;
            }
            for (const auto& part : filling.parts) {
                filling.times = std::min(filling.times, left.count(part.piece) / part.count);
            }
            supply[k] -= filling.times;
            left.take(filling.parts, filling.times);
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
