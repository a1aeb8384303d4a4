// Writes a cutting back in the indices of the job, in the order people cut it.
#include <algorithm>

#include "engine/cutting/cutting_task.h"
#include "engine/require.h"

namespace hemline {

namespace {

/// How people read it: sticks on hand first, longer stock first, longest pieces first.
bool before(const Filling& a, const Filling& b) {
    if (a.stock != b.stock) {
        return a.stock < b.stock;
    }
    for (std::size_t i = 0; i < std::min(a.parts.size(), b.parts.size()); ++i) {
        const auto& p = a.parts[i];
        const auto& q = b.parts[i];
        if (!(p == q)) {
            return p.piece != q.piece ? p.piece < q.piece : p.count > q.count;
        }
    }
    return a.parts.size() > b.parts.size();
}

/// Hands out the job's stock of the same capacity, limited stock first.
class StockHands {
  public:
    StockHands(const CuttingTask& task, const CuttingJob& job) {
        for (const TaskStock& stock : task.stock) {
            std::vector<std::pair<std::size_t, std::int64_t>> left;
            for (const std::size_t i : stock.from) {
                if (job.stock[i].supply) {
                    left.emplace_back(i, *job.stock[i].supply);
                }
            }
            for (const std::size_t i : stock.from) {
                if (!job.stock[i].supply) {
                    left.emplace_back(i, cut_pieces_most);
                }
            }
            left_.push_back(std::move(left));
        }
        next_.assign(left_.size(), 0);
    }
    std::size_t take(std::size_t stock) {
        auto& left = left_[stock];
        std::size_t& next = next_[stock];
        while (next < left.size() && left[next].second <= 0) {
            ++next;
        }
        require(next < left.size(), "a plan uses no more sticks than there are");
        --left[next].second;
        return left[next].first;
    }

  private:
    std::vector<std::vector<std::pair<std::size_t, std::int64_t>>> left_;
    std::vector<std::size_t> next_;  ///< all before it are taken
};

}  // namespace

CuttingPlan plan_of(const CuttingTask& task, const CuttingJob& job, const Cutting& cutting) {
    std::vector<Filling> fillings = cutting.fillings;
    std::stable_sort(fillings.begin(), fillings.end(), before);
    CuttingPlan plan;
    plan.sticks = cutting.new_sticks;
    plan.missing = task.missing;
    std::vector<std::size_t> next(task.pieces.size(), 0);
    StockHands hands(task, job);
    for (const Filling& filling : fillings) {
        for (std::int64_t time = 0; time < filling.times; ++time) {
            Layout layout;
            layout.stock = hands.take(filling.stock);
            for (const auto& part : filling.parts) {
                for (std::int64_t n = 0; n < part.count; ++n) {
                    layout.cuts.push_back(task.pieces[part.piece].from[next[part.piece]++]);
                }
            }
            const bool again = !plan.layouts.empty() && plan.layouts.back().stock == layout.stock &&
                               plan.layouts.back().cuts == layout.cuts;
            if (again) {
                ++plan.layouts.back().times;
            } else {
                plan.layouts.push_back(std::move(layout));
            }
        }
    }
    for (std::size_t i = 0; i < task.pieces.size(); ++i) {
        const auto& from = task.pieces[i].from;
        if (next[i] < from.size()) {
            const auto left = static_cast<std::int64_t>(from.size() - next[i]);
            plan.missing.push_back({job.demand[from.back()].length, left});
        }
    }
    return plan;
}

}  // namespace hemline
