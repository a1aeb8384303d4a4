#include "engine/cutting/worth_bound.h"

#include <algorithm>
#include <optional>

namespace hemline {

namespace {

std::int64_t ceiling(std::int64_t a, std::int64_t b) { return a <= 0 ? 0 : (a + b - 1) / b; }

/// Larger than any sum that matters, and far from overflow: beyond it no more is subtracted.
constexpr std::int64_t enough = std::int64_t{1} << 61;

/// What the pieces are worth beyond what sticks on hand and limited sticks can hold unpaid.
std::int64_t unpaid(const CuttingTask& task, const Worths& worths, std::int64_t share) {
    std::int64_t sum = 0;
    for (std::size_t i = 0; i < task.pieces.size(); ++i) {
        sum += worths.piece[i] * task.pieces[i].count;
    }
    for (std::size_t k = 0; k < task.stock.size(); ++k) {
        const TaskStock& stock = task.stock[k];
        const std::int64_t over = worths.stick[k] - (stock.on_hand ? 0 : share);
        if (over > 0 && sum > -enough) {
            sum -= stock.supply * over;
        }
    }
    return sum;
}

bool alone_unlimited(const CuttingTask& task) {
    return !task.stock.empty() && !task.stock.front().on_hand && task.stock.front().unlimited;
}

}  // namespace

void settle(const CuttingTask& task, Worths& worths) {
    // Unlimited stock must hold no more than its share; past that the best share is some stick's.
    std::int64_t least = 1;
    for (std::size_t k = 0; k < task.stock.size(); ++k) {
        if (!task.stock[k].on_hand && task.stock[k].unlimited) {
            least = std::max(least, worths.stick[k]);
        }
    }
    worths.share = least;
    worths.bound = ceiling(unpaid(task, worths, least), least);
    for (std::size_t k = 0; k < task.stock.size(); ++k) {
        const std::int64_t share = worths.stick[k];
        if (!task.stock[k].on_hand && share > least) {
            const std::int64_t bound = ceiling(unpaid(task, worths, share), share);
            if (bound > worths.bound) {
                worths.share = share;
                worths.bound = bound;
            }
        }
    }
}

std::int64_t worth_to_spare(const CuttingTask& task, const Worths& worths, std::int64_t sticks) {
    return worths.share * sticks - unpaid(task, worths, worths.share);
}

Worths volume_bound(const CuttingTask& task) {
    Worths worths;
    for (const TaskPiece& piece : task.pieces) {
        worths.piece.push_back(piece.size);
    }
    for (const TaskStock& stock : task.stock) {
        worths.stick.push_back(stock.capacity);
    }
    settle(task, worths);
    return worths;
}

namespace {

/// What all pieces are worth over a threshold.
class OverThreshold {
  public:
    explicit OverThreshold(const CuttingTask& task)
        : task_(task), counts_(task.pieces.size() + 1, 0), sizes_(task.pieces.size() + 1, 0) {
        for (std::size_t i = 0; i < task.pieces.size(); ++i) {
            counts_[i + 1] = counts_[i] + task.pieces[i].count;
            sizes_[i + 1] = sizes_[i] + task.pieces[i].size * task.pieces[i].count;
        }
    }
    [[nodiscard]] std::int64_t worth(std::int64_t capacity, std::int64_t a) const {
        const std::size_t longer = longer_than(capacity - a), no_shorter = longer_than(a - 1);
        return capacity * counts_[longer] + sizes_[no_shorter] - sizes_[longer];
    }

  private:
    /// How many kinds of piece, the longest first.
    [[nodiscard]] std::size_t longer_than(std::int64_t size) const {
        const auto end =
            std::partition_point(task_.pieces.begin(), task_.pieces.end(),
                                 [&](const TaskPiece& piece) { return piece.size > size; });
        return static_cast<std::size_t>(end - task_.pieces.begin());
    }

    const CuttingTask& task_;
    std::vector<std::int64_t> counts_, sizes_;  ///< of the pieces before each
};

}  // namespace

Worths l2_bound(const CuttingTask& task) {
    Worths best = volume_bound(task);
    if (!alone_unlimited(task)) {
        return best;
    }
    const std::int64_t capacity = task.stock.front().capacity;
    const OverThreshold over(task);
    std::int64_t bound = best.bound;
    std::optional<std::int64_t> threshold;
    for (const TaskPiece& piece : task.pieces) {
        const std::int64_t a = 2 * piece.size <= capacity ? piece.size : capacity - piece.size + 1;
        if (2 * a <= capacity + 1 && ceiling(over.worth(capacity, a), capacity) > bound) {
            bound = ceiling(over.worth(capacity, a), capacity);
            threshold = a;
        }
    }
    if (threshold) {
        best = {};
        for (const TaskPiece& piece : task.pieces) {
            best.piece.push_back(piece.size > capacity - *threshold ? capacity
                                 : piece.size >= *threshold         ? piece.size
                                                                    : 0);
        }
        best.stick.assign(task.stock.size(), capacity);
        settle(task, best);
    }
    return best;
}

Certificate certificate_of(const CuttingTask& task, const CuttingJob& job, const Worths& worths) {
    Certificate certificate;
    certificate.share = worths.share;
    certificate.bound = worths.bound;
    certificate.worth.assign(job.demand.size(), 0);
    certificate.stick_worth.assign(job.stock.size(), 0);
    for (std::size_t i = 0; i < task.pieces.size(); ++i) {
        for (const std::size_t from : task.pieces[i].from) {
            certificate.worth[from] = worths.piece[i];
        }
    }
    for (std::size_t k = 0; k < task.stock.size(); ++k) {
        for (const std::size_t from : task.stock[k].from) {
            certificate.stick_worth[from] = worths.stick[k];
        }
    }
    return certificate;
}

}  // namespace hemline
