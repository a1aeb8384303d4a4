#include "engine/joint/program.h"

#include <algorithm>
#include <cmath>

#include "engine/cutting/most_worth.h"

namespace hemline {

namespace {

/// A price, rounded down to a whole number of the scale. Any number that is not below 0 gives a
/// valid bound.
std::int64_t scaled(double price, std::int64_t scale) {
    return static_cast<std::int64_t>(
        std::floor(std::clamp(price, 0.0, 64.0) * static_cast<double>(scale)));
}

}  // namespace

std::int64_t bytes_of_program(const JointJob& job, const JointNeeds& needs, std::size_t lengths) {
    constexpr std::int64_t bytes_of_column = 96;
    const auto stock = static_cast<std::int64_t>(job.stock.size());
    const std::int64_t rows = static_cast<std::int64_t>(needs.edges.size() + lengths) + 2 + stock;
    // The inverse, and, while it is computed again, the matrix and a second inverse.
    const std::int64_t inverse = 3 * rows * rows * static_cast<std::int64_t>(sizeof(double));
    const std::int64_t columns = stock * static_cast<std::int64_t>(lengths) * bytes_of_column;
    return inverse + columns + 2 * bytes_of_pricing(needs);
}

struct JointProgram::Round {
    LinearProgram program;
    std::size_t edges = 0, lengths = 0;  ///< rows, in this order; then laps, unbalanced, stock
    DivisionSets allowed;
    std::vector<std::optional<std::size_t>> fixed;
    std::int64_t laps = 0, unbalanced = 0;
    std::vector<std::ptrdiff_t> row_of_stock;
    std::vector<std::ptrdiff_t> division_of;  ///< of each column; -1: a filling, or a cut down

    [[nodiscard]] std::size_t row_of_laps() const { return edges + lengths; }
};

JointProgram::JointProgram(const JointJob& job, const JointNeeds& needs,
                           std::vector<Length> lengths)
    : job_(job),
      needs_(needs),
      lengths_(std::move(lengths)),
      task_(sticks_for(job, lengths_)),
      of_edges_(needs.edges.size()),
      scale_(std::int64_t{1} << 30) {
    std::int64_t capacity = 1;
    for (const TaskStock& stock : task_.stock) {
        capacity = std::max(capacity, stock.capacity);
    }
    while (scale_ > 1 && capacity > (std::int64_t{1} << 55) / scale_) {
        scale_ /= 2;
    }
    for (const TaskPiece& piece : task_.pieces) {
        count_most_.push_back(piece.count);
    }
    for (std::size_t k = 0; k < task_.stock.size(); ++k) {
        for (std::size_t i = 0; i < task_.pieces.size(); ++i) {
            const std::int64_t count = task_.stock[k].capacity / task_.pieces[i].size;
            if (count > 0) {
                fillings_.push_back({k, {{lengths_.size() - 1 - i, count}}});
            }
        }
    }
    for (std::size_t e = 0; e < needs.edges.size(); ++e) {
        for (std::size_t c = 0; c < needs.edges[e].size(); ++c) {
            for (const auto& way : needs.edges[e][c].ways) {
                know({e, c, way});
            }
        }
    }
}

std::size_t JointProgram::at_least(Length length) const {
    return static_cast<std::size_t>(std::lower_bound(lengths_.begin(), lengths_.end() - 1, length) -
                                    lengths_.begin());
}

void JointProgram::know(Division division) {
    std::sort(division.cuts.begin(), division.cuts.end());
    std::vector<std::size_t>& own = of_edges_[division.edge];
    const auto same = [&](std::size_t d) {
        return divisions_[d].of_class == division.of_class && divisions_[d].cuts == division.cuts;
    };
    if (std::none_of(own.begin(), own.end(), same)) {
        own.push_back(divisions_.size());
        divisions_.push_back(std::move(division));
    }
}

void JointProgram::add_division(Round& round, std::size_t index) const {
    const Division& own = divisions_[index];
    const auto& fixed = round.fixed[own.edge];
    const DivisionSet& allowed = round.allowed[own.edge];
    const bool is_allowed =
        (allowed.classes >> own.of_class & 1U) != 0 && in_ranges(allowed, own.cuts, needs_.grid);
    if (fixed ? *fixed != index : !is_allowed) {
        return;
    }
    std::vector<double> needed(lengths_.size(), 0);
    for (const Length cut : own.cuts) {
        needed[at_least(cut)] -= 1;
    }
    LinearProgram::Entries entries{{own.edge, 1}};
    for (std::size_t j = 0; j < needed.size(); ++j) {
        if (needed[j] != 0) {
            entries.emplace_back(round.edges + j, needed[j]);
        }
    }
    const NeedClass& need = needs_.edges[own.edge][own.of_class];
    if (need.laps > 0) {
        entries.emplace_back(round.row_of_laps(), static_cast<double>(need.laps));
    }
    if (need.is_unbalanced) {
        entries.emplace_back(round.row_of_laps() + 1, 1);
    }
    round.program.add(std::move(entries), 0);
    round.division_of.push_back(static_cast<std::ptrdiff_t>(index));
}

void JointProgram::add_filling(Round& round, const Made& made) const {
    LinearProgram::Entries entries;
    for (const auto& [length, count] : made.parts) {
        entries.emplace_back(round.edges + length, static_cast<double>(count));
    }
    if (round.row_of_stock[made.stock] >= 0) {
        entries.emplace_back(static_cast<std::size_t>(round.row_of_stock[made.stock]), 1);
    }
    round.program.add(std::move(entries), task_.stock[made.stock].on_hand ? 0 : 1);
    round.division_of.push_back(-1);
}

/// The program's prices as whole numbers; a longer piece is never cheaper than a shorter piece.
JointWorths JointProgram::priced(const Round& round) const {
    JointWorths worths;
    worths.from = lengths_;
    std::int64_t most = 0;
    for (std::size_t j = 0; j < lengths_.size(); ++j) {
        most = std::max(most, scaled(round.program.price(round.edges + j), scale_));
        worths.worth.push_back(most);
    }
    worths.lap = scaled(-round.program.price(round.row_of_laps()), scale_);
    worths.unbalanced = scaled(-round.program.price(round.row_of_laps() + 1), scale_);
    worths.stick_worth.assign(job_.stock.size(), 0);
    return worths;
}

/// The most worth that a stick of each stock can hold; offers the fillings that are worth more than
/// they cost.
bool JointProgram::price_sticks(Round& round, JointWorths& worths, Effort& effort) {
    const std::vector<std::int64_t> worth(worths.worth.rbegin(), worths.worth.rend());
    bool gained = false;
    for (std::size_t k = 0; k < task_.stock.size(); ++k) {
        const TaskStock& stock = task_.stock[k];
        const MostWorth found = most_worth(task_, worth, count_most_, stock.capacity, effort);
        for (const std::size_t from : stock.from) {
            worths.stick_worth[from] = found.most;
        }
        double price = stock.on_hand ? 0.0 : 1.0;
        if (round.row_of_stock[k] >= 0) {
            price -= round.program.price(static_cast<std::size_t>(round.row_of_stock[k]));
        }
        if (static_cast<double>(found.worth) / static_cast<double>(scale_) >
            price + 1e-6 * (1 + price)) {
            Made made{k, {}};
            for (const Filling::Part& part : found.parts) {
                made.parts.emplace_back(lengths_.size() - 1 - part.piece, part.count);
            }
            add_filling(round, made);
            fillings_.push_back(std::move(made));
            gained = true;
        }
    }
    return gained;
}

/// The bound of these worths; offers the divisions that cost less than their edge's price.
bool JointProgram::price_edges(Round& round, JointWorths& worths, Effort& effort) {
    const LeastWorth least(needs_, worths, effort);
    bool gained = false;
    std::int64_t sum = 0;
    for (std::size_t e = 0; e < needs_.edges.size(); ++e) {
        if (round.allowed[e].classes == 0) {
            continue;
        }
        Cheapest own = cheapest(needs_.edges[e], round.allowed[e], worths, least, effort);
        sum += own.cost;
        const double cost = static_cast<double>(own.cost) / static_cast<double>(scale_);
        const double price = round.program.price(e);
        if (!round.fixed[e] && cost < price - 1e-6 * (1 + price)) {
            const std::size_t before = divisions_.size();
            know({e, own.of_class, std::move(own.cuts)});
            if (divisions_.size() > before) {
                add_division(round, before);
                gained = true;
            }
        }
    }
    settle(job_, sum, round.laps, round.unbalanced, worths);
    return gained;
}

JointProgram::Answer JointProgram::solve(const DivisionSets& allowed,
                                         const std::vector<std::optional<std::size_t>>& fixed,
                                         std::int64_t laps, std::int64_t unbalanced,
                                         std::int64_t enough, Effort& effort) {
    std::vector<double> lower, upper{static_cast<double>(laps), static_cast<double>(unbalanced)};
    for (const DivisionSet& own : allowed) {
        lower.push_back(own.classes == 0 ? 0 : 1);
    }
    lower.resize(allowed.size() + lengths_.size(), 0);
    std::vector<std::ptrdiff_t> row_of_stock;
    for (const TaskStock& stock : task_.stock) {
        row_of_stock.push_back(
            stock.unlimited ? -1 : static_cast<std::ptrdiff_t>(lower.size() + upper.size()));
        if (!stock.unlimited) {
            upper.push_back(static_cast<double>(stock.supply));
        }
    }
    Round round{{lower, upper}, allowed.size(), lengths_.size(), allowed, fixed,
                laps,           unbalanced,     row_of_stock,    {}};
    for (std::size_t j = 0; j + 1 < lengths_.size(); ++j) {
        round.program.add({{round.edges + j, 1}, {round.edges + j + 1, -1}}, 0);
        round.division_of.push_back(-1);
    }
    for (const Made& made : fillings_) {
        add_filling(round, made);
    }
    for (std::size_t d = 0; d < divisions_.size(); ++d) {
        add_division(round, d);
    }
    Answer answer;
    while (round.program.solve(effort)) {
        JointWorths worths = priced(round);
        const bool more_fillings = price_sticks(round, worths, effort);
        const bool more_divisions = price_edges(round, worths, effort);
        if (answer.worths.worth.empty() || worths.bound > answer.worths.bound) {
            answer.worths = std::move(worths);
        }
        answer.value = round.program.value();
        answer.is_solved = !more_fillings && !more_divisions;
        if (answer.is_solved || answer.worths.bound >= enough || effort.is_spent()) {
            break;
        }
    }
    answer.division.assign(divisions_.size(), 0);
    const std::vector<double> uses = round.program.uses();
    for (std::size_t c = 0; c < uses.size(); ++c) {
        if (round.division_of[c] >= 0) {
            answer.division[static_cast<std::size_t>(round.division_of[c])] += uses[c];
        }
    }
    return answer;
}

}  // namespace hemline
