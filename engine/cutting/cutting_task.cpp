#include "engine/cutting/cutting_task.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <tuple>
#include <utility>

namespace hemline {

namespace {

std::int64_t size_of(const Filling& filling, const CuttingTask& task) {
    std::int64_t size = 0;
    for (const auto& part : filling.parts) {
        size += part.count * task.pieces[part.piece].size;
    }
    return size;
}

/// The largest unit that measures every piece; a stick's part below it can hold nothing.
void coarsen(CuttingTask& task) {
    std::int64_t unit = 0;
    for (const TaskPiece& piece : task.pieces) {
        unit = std::gcd(unit, piece.size);
    }
    if (unit > 1) {
        for (TaskPiece& piece : task.pieces) {
            piece.size /= unit;
        }
        for (TaskStock& stock : task.stock) {
            stock.capacity /= unit;
        }
    }
}

void join_stock(CuttingTask& task, const CuttingJob& job, std::int64_t pieces) {
    std::map<std::pair<std::int64_t, bool>, std::size_t> known;
    for (std::size_t i = 0; i < job.stock.size(); ++i) {
        const StockLength& own = job.stock[i];
        const std::int64_t supply = std::min(own.supply.value_or(pieces), pieces);
        if (own.length <= Length() || supply <= 0) {
            continue;
        }
        const std::int64_t capacity = own.length.nm() + std::max(job.kerf, Length()).nm();
        const auto [place, is_new] =
            known.emplace(std::pair(capacity, own.on_hand), task.stock.size());
        if (is_new) {
            task.stock.push_back({capacity, 0, false, own.on_hand, {}});
        }
        TaskStock& stock = task.stock[place->second];
        stock.unlimited = stock.unlimited || !own.supply;
        stock.supply = std::min(stock.supply + supply, pieces);
        stock.from.push_back(i);
    }
    std::stable_sort(task.stock.begin(), task.stock.end(),
                     [](const TaskStock& a, const TaskStock& b) {
                         return std::make_tuple(!a.on_hand, -a.capacity) <
                                std::make_tuple(!b.on_hand, -b.capacity);
                     });
}

}  // namespace

CuttingTask task_of(const CuttingJob& job) {
    CuttingTask task;
    std::map<Length, std::vector<std::size_t>> by_length;
    std::int64_t pieces = 0;
    Length longest;
    for (const StockLength& stock : job.stock) {
        if (stock.supply.value_or(1) > 0) {
            longest = std::max(longest, stock.length);
        }
    }
    for (std::size_t i = 0; i < job.demand.size(); ++i) {
        const CutDemand& demand = job.demand[i];
        if (demand.length <= Length() || demand.count <= 0) {
            continue;
        }
        const std::int64_t taken =
            demand.length > longest ? 0 : std::min(demand.count, cut_pieces_most - pieces);
        if (taken < demand.count) {
            task.missing.push_back({demand.length, demand.count - taken});
        }
        auto& from = by_length[demand.length];
        from.insert(from.end(), static_cast<std::size_t>(taken), i);
        pieces += taken;
    }
    for (auto& [length, from] : by_length) {
        if (!from.empty()) {
            const auto count = static_cast<std::int64_t>(from.size());
            const std::int64_t size = length.nm() + std::max(job.kerf, Length()).nm();
            task.pieces.push_back({size, count, std::move(from)});
        }
    }
    std::reverse(task.pieces.begin(), task.pieces.end());
    join_stock(task, job, pieces);
    coarsen(task);
    return task;
}

void count_up(const CuttingTask& task, Cutting& cutting) {
    cutting.uncut.clear();
    for (const TaskPiece& piece : task.pieces) {
        cutting.uncut.push_back(piece.count);
    }
    cutting.new_sticks = cutting.stock_total = cutting.uncut_size = 0;
    for (const Filling& filling : cutting.fillings) {
        for (const auto& part : filling.parts) {
            cutting.uncut[part.piece] -= filling.times * part.count;
        }
        if (!task.stock[filling.stock].on_hand) {
            cutting.new_sticks += filling.times;
            cutting.stock_total += filling.times * task.stock[filling.stock].capacity;
        }
    }
    for (std::size_t i = 0; i < task.pieces.size(); ++i) {
        cutting.uncut_size += cutting.uncut[i] * task.pieces[i].size;
    }
}

bool better(const Cutting& a, const Cutting& b) {
    return std::tie(a.uncut_size, a.new_sticks, a.stock_total) <
           std::tie(b.uncut_size, b.new_sticks, b.stock_total);
}

void take_shorter_sticks(const CuttingTask& task, Cutting& cutting) {
    std::vector<std::int64_t> left;
    for (const TaskStock& stock : task.stock) {
        left.push_back(stock.supply);
    }
    std::vector<Filling> swapped, fresh;
    for (Filling& filling : cutting.fillings) {
        const bool on_hand = task.stock[filling.stock].on_hand;
        (on_hand ? swapped : fresh).push_back(std::move(filling));
    }
    // The fullest first: they have the least choice.
    std::stable_sort(fresh.begin(), fresh.end(), [&](const Filling& a, const Filling& b) {
        return size_of(a, task) > size_of(b, task);
    });
    for (Filling& filling : fresh) {
        const std::int64_t size = size_of(filling, task);
        for (std::size_t k = task.stock.size(); k-- > 0 && filling.times > 0;) {
            const TaskStock& stock = task.stock[k];
            if (stock.on_hand) {
                break;  // they come before all new ones
            }
            if (stock.capacity < size || left[k] == 0) {
                continue;
            }
            const std::int64_t times = std::min(filling.times, left[k]);
            left[k] -= times;
            filling.times -= times;
            swapped.push_back({k, times, filling.parts});
        }
    }
    cutting.fillings = std::move(swapped);
    count_up(task, cutting);
}

}  // namespace hemline
