#include "engine/cutting/column_generation.h"

#include <algorithm>
#include <cmath>

#include "engine/cutting/most_worth.h"

namespace hemline {

namespace {

/// The finest integer prices whose products with a capacity stay far from overflow.
std::int64_t scale_of(const CuttingTask& task) {
    std::int64_t capacity = 1;
    for (const TaskStock& stock : task.stock) {
        capacity = std::max(capacity, stock.capacity);
    }
    // A piece's price is at most 64 sticks, see the program's cost of lacking.
    std::int64_t scale = std::int64_t{1} << 30;
    while (scale > 1 && capacity > (std::int64_t{1} << 55) / scale) {
        scale /= 2;
    }
    return scale;
}

std::int64_t scaled(double price, std::int64_t scale) {
    return static_cast<std::int64_t>(
        std::floor(std::clamp(price, 0.0, 64.0) * static_cast<double>(scale)));
}

}  // namespace

Rest whole(const CuttingTask& task) {
    Rest rest;
    for (const TaskPiece& piece : task.pieces) {
        rest.uncut.push_back(piece.count);
    }
    bool longest_met = false;
    for (const TaskStock& stock : task.stock) {
        rest.supply.push_back(longest_met ? 0 : stock.supply);
        longest_met = longest_met || (!stock.on_hand && stock.unlimited);
    }
    return rest;
}

Worths generate_columns(const CuttingTask& task, const Rest& rest, Seek seek, StickProgram& program,
                        std::vector<Filling>& fillings, Effort& effort) {
    const std::int64_t scale = scale_of(task);
    Worths best;
    while (program.solve(effort)) {
        Worths worths;
        for (std::size_t i = 0; i < task.pieces.size(); ++i) {
            worths.piece.push_back(scaled(program.piece_price(i), scale));
        }
        bool gained = false;
        std::int64_t held = 0;
        for (std::size_t k = 0; k < task.stock.size(); ++k) {
            const TaskStock& stock = task.stock[k];
            if (rest.supply[k] == 0) {
                worths.stick.push_back(held);  // shorter than the stock before it: holds no more
                continue;
            }
            MostWorth found = most_worth(task, worths.piece, rest.uncut, stock.capacity, effort);
            held = found.most;
            worths.stick.push_back(found.most);
            // Not clamped: a scarce stick may have a price far above that of the pieces that only
            // it can hold.
            const double price = (stock.on_hand ? 0.0 : 1.0) + program.stock_price(k);
            const double worth = static_cast<double>(found.worth) / static_cast<double>(scale);
            if (worth > price + 1e-6 * (1 + price)) {
                fillings.push_back({k, 1, std::move(found.parts)});
                program.add(fillings.back());
                gained = true;
            }
        }
        bool settled = false;
        if (seek == Seek::bound) {
            settle(task, worths);
            if (best.piece.empty() || worths.bound >= best.bound) {
                best = std::move(worths);
            }
            settled = static_cast<double>(best.bound) >= program.value() - 1e-6;
        }
        if (!gained || settled || effort.is_spent()) {
            break;
        }
    }
    return best;
}

}  // namespace hemline
