// Cutting jobs as integer programs for a general solver, sharing no code with the planner: over
// every full filling of a stick, or as flow along the stick (Valério de Carvalho 1999).
#pragma once

#include <algorithm>
#include <map>
#include <numeric>
#include <optional>
#include <set>
#include <vector>

#include "engine/cutting/cutting.h"
#include "tests/reference/linear_text.h"

namespace reference {

/// Sizes (length and one kerf) longest first with their counts, in the coarsest exact unit.
struct Sizes {
    std::vector<std::int64_t> size, count;
    std::int64_t unit = 1;

    explicit Sizes(const hemline::CuttingJob& job) {
        std::map<std::int64_t, std::int64_t, std::greater<>> kinds;
        std::int64_t common = 0;
        for (const auto& demand : job.demand) {
            const std::int64_t own = (demand.length + job.kerf).nm();
            kinds[own] += demand.count;
            common = std::gcd(common, own);
        }
        unit = std::max<std::int64_t>(common, 1);
        for (const auto& [own, times] : kinds) {
            size.push_back(own / unit);
            count.push_back(times);
        }
    }
    [[nodiscard]] std::int64_t room_of(const hemline::CuttingJob& job, std::size_t stock) const {
        return (job.stock[stock].length + job.kerf).nm() / unit;
    }
};

/// Collects the fillings of a stick into which no further piece fits; stops past `most`.
class EveryFilling {
  public:
    EveryFilling(const Sizes& sizes, std::int64_t room, std::size_t most)
        : sizes_(sizes), most_(most), taken_(sizes.size.size(), 0) {
        fill(0, room);
    }
    [[nodiscard]] const std::vector<std::vector<int>>& all() const { return all_; }
    [[nodiscard]] bool too_many() const { return all_.size() > most_ || steps_ > 50'000'000; }

  private:
    void fill(std::size_t from, std::int64_t room) {
        if (too_many()) {
            return;
        }
        ++steps_;
        if (from == taken_.size()) {
            for (std::size_t i = 0; i < taken_.size(); ++i) {
                if (taken_[i] < sizes_.count[i] && sizes_.size[i] <= room) {
                    return;
                }
            }
            if (std::any_of(taken_.begin(), taken_.end(), [](int n) { return n > 0; })) {
                all_.push_back(taken_);
            }
            return;
        }
        if (sizes_.size.back() > room) {
            fill(taken_.size(), room);  // nothing more fits
            return;
        }
        for (std::int64_t n = std::min(sizes_.count[from], room / sizes_.size[from]); n >= 0; --n) {
            taken_[from] = static_cast<int>(n);
            fill(from + 1, room - n * sizes_.size[from]);
        }
        taken_[from] = 0;
    }

    const Sizes& sizes_;
    std::size_t most_;
    std::vector<int> taken_;
    std::vector<std::vector<int>> all_;
    std::int64_t steps_ = 0;
};

/// One variable a filling. None when there are more than `fillings_most`.
inline std::optional<Program> model_of_fillings(const hemline::CuttingJob& job,
                                                std::size_t fillings_most = 60'000) {
    const Sizes sizes(job);
    Program program;
    std::vector<Terms> rows(sizes.size.size());
    for (std::size_t k = 0; k < job.stock.size(); ++k) {
        const EveryFilling every(sizes, sizes.room_of(job, k), fillings_most);
        if (every.too_many()) {
            return std::nullopt;
        }
        Terms limit;
        for (const auto& filling : every.all()) {
            const int variable = program.variables++;
            program.cost.emplace_back(job.stock[k].on_hand ? 0 : 1, variable);
            limit.emplace_back(1, variable);
            for (std::size_t i = 0; i < filling.size(); ++i) {
                if (filling[i] > 0) {
                    rows[i].emplace_back(filling[i], variable);
                }
            }
        }
        if (job.stock[k].supply) {
            program.add_row(limit, "<=", *job.stock[k].supply);
        }
    }
    for (std::size_t i = 0; i < rows.size(); ++i) {
        program.add_row(rows[i], ">=", sizes.count[i]);
    }
    return program;
}

/// Flow along a single unlimited new stick: an arc is a piece from where it begins to where it
/// ends, longer pieces first. None for other stock, or past `arcs_most`.
inline std::optional<Program> model_of_flow(const hemline::CuttingJob& job,
                                            std::size_t arcs_most = 150'000) {
    if (job.stock.size() != 1 || job.stock.front().supply || job.stock.front().on_hand) {
        return std::nullopt;
    }
    const Sizes sizes(job);
    const std::int64_t room = sizes.room_of(job, 0);
    Program program;
    std::map<std::int64_t, Terms> balance;  // by place on the stick: in − out
    std::vector<Terms> rows(sizes.size.size());
    std::set<std::int64_t> reached{0};
    for (std::size_t i = 0; i < sizes.size.size(); ++i) {
        std::set<std::pair<std::int64_t, std::int64_t>> arcs;
        std::set<std::int64_t> ends;
        for (const std::int64_t from : reached) {
            std::int64_t at = from;
            for (std::int64_t n = 0; n < sizes.count[i] && at + sizes.size[i] <= room; ++n) {
                arcs.emplace(at, at + sizes.size[i]);
                at += sizes.size[i];
                ends.insert(at);
            }
        }
        reached.insert(ends.begin(), ends.end());
        for (const auto& [from, to] : arcs) {
            const int variable = program.variables++;
            balance[from].emplace_back(-1, variable);
            balance[to].emplace_back(1, variable);
            rows[i].emplace_back(1, variable);
        }
        if (static_cast<std::size_t>(program.variables) > arcs_most) {
            return std::nullopt;
        }
    }
    const int sticks = program.variables++;
    program.cost.emplace_back(1, sticks);
    balance[0].emplace_back(1, sticks);
    for (const auto& [place, terms] : balance) {
        program.add_row(terms, place == 0 ? "=" : ">=", 0);  // what is not cut further ends there
    }
    for (std::size_t i = 0; i < rows.size(); ++i) {
        program.add_row(rows[i], ">=", sizes.count[i]);
    }
    return program;
}

/// The smaller of the two; none where both are too large.
inline std::optional<Program> smaller_model(const hemline::CuttingJob& job) {
    std::optional<Program> fillings = model_of_fillings(job), flow = model_of_flow(job);
    if (!fillings || (flow && flow->entries < fillings->entries)) {
        return flow;
    }
    return fillings;
}

}  // namespace reference
