// Dividing and cutting as a single integer program, sharing no code with the planner: every
// permitted division of every edge, and every full filling of every stick.
#pragma once

#include <functional>
#include <set>

#include "tests/engine/joint/joint_checker.h"
#include "tests/reference/cutting_model.h"

namespace reference {

/// One division of an edge: its cuts in rising order, and what it costs.
struct Way {
    std::vector<std::int64_t> cuts;
    std::int64_t laps = 0, unbalanced = 0;

    bool operator<(const Way& o) const {
        return std::tie(laps, unbalanced, cuts) < std::tie(o.laps, o.unbalanced, o.cuts);
    }
};

/// Every division whose cuts lie on the grid, up to so many laps more than the fewest; lengths in
/// grid units. The edge, its allowances, lap and stick are whole grid units.
class EveryWay {
  public:
    EveryWay(const hemline::RunRule& rule, bool free, std::int64_t laps_most)
        : rule_(rule), grid_(rule.grid.nm()), free_(free) {
        const std::int64_t fewest = joint_checker::edge_of(rule).fewest;
        for (std::int64_t pieces = fewest; pieces <= fewest + laps_most; ++pieces) {
            count_ = static_cast<std::size_t>(pieces);
            laps_ = pieces - fewest;
            can_ = joint_checker::can_balance(rule, count_);
            nearest_.clear();
            divide(rule.edge.nm());
            // As near as so many pieces can, where they must be balanced and cannot.
            for (const auto& [differ, way] : nearest_) {
                if (differ == nearest_.begin()->first) {
                    all_.insert(way);
                }
            }
        }
    }
    [[nodiscard]] const std::set<Way>& all() const { return all_; }

  private:
    void divide(std::int64_t left) {
        if (covers_.size() + 1 == count_) {
            covers_.push_back(left);
            if (joint_checker::lawful(rule_, covers_)) {
                keep();
            }
            covers_.pop_back();
            return;
        }
        const std::int64_t extra = joint_checker::extra_of(rule_, covers_.size(), count_);
        for (std::int64_t own = grid_; own < left && own + extra <= rule_.stock.nm();
             own += grid_) {
            covers_.push_back(own);
            divide(left - own);
            covers_.pop_back();
        }
    }

    void keep() {
        Way way{{}, laps_, 0};
        bool full_between = true;
        for (std::size_t i = 0; i < count_; ++i) {
            const std::int64_t cut = covers_[i] + joint_checker::extra_of(rule_, i, count_);
            way.cuts.push_back(cut / grid_);
            full_between = full_between && (i == 0 || i + 1 == count_ || cut == rule_.stock.nm());
        }
        std::sort(way.cuts.begin(), way.cuts.end());
        const bool even = joint_checker::balanced(rule_, covers_);
        way.unbalanced = can_ && !even ? 1 : 0;
        if (free_ || (can_ && even)) {
            all_.insert(way);
        } else if (!can_ && full_between && laps_ == 0) {
            nearest_.emplace(std::abs(covers_.front() - covers_.back()), way);
        }
    }

    const hemline::RunRule& rule_;
    std::int64_t grid_;
    bool free_, can_ = false;
    std::size_t count_ = 0;
    std::int64_t laps_ = 0;
    std::vector<std::int64_t> covers_;
    std::set<std::pair<std::int64_t, Way>> nearest_;
    std::set<Way> all_;
};

/// The fewest new sticks within so many laps beyond the fewest and so many unbalanced edges. Kerf
/// and stock are whole grid units, the grid the same on every edge.
inline Program model_of_joint(const hemline::JointJob& job, const std::vector<std::set<Way>>& ways,
                              std::int64_t laps_most, std::int64_t unbalanced_most) {
    Program program;
    const std::int64_t grid = job.edges.front().rule.grid.nm(), kerf = job.kerf.nm() / grid;
    std::map<std::int64_t, Terms> made;  // by length: cut − needed
    Terms laps, unbalanced;
    for (const std::set<Way>& own : ways) {
        Terms one;
        for (const Way& way : own) {
            const int variable = program.variables++;
            one.emplace_back(1, variable);
            std::map<std::int64_t, std::int64_t> needs;
            for (const std::int64_t cut : way.cuts) {
                ++needs[cut];
            }
            for (const auto& [cut, times] : needs) {
                made[cut].emplace_back(-times, variable);
            }
            if (way.laps > 0) {
                laps.emplace_back(way.laps, variable);
            }
            if (way.unbalanced > 0) {
                unbalanced.emplace_back(1, variable);
            }
        }
        program.add_row(one, "=", 1);
    }
    hemline::CuttingJob lengths;
    for (const auto& [cut, terms] : made) {
        lengths.demand.push_back({hemline::nanometres(cut + kerf), 1000});
    }
    Sizes sizes(lengths);
    for (std::size_t k = 0; k < job.stock.size(); ++k) {
        const std::int64_t room = job.stock[k].length.nm() / grid + kerf;
        const EveryFilling every(sizes, room / sizes.unit, 1'000'000);
        Terms limit;
        for (const auto& filling : every.all()) {
            const int variable = program.variables++;
            limit.emplace_back(1, variable);
            if (!job.stock[k].on_hand) {
                program.cost.emplace_back(1, variable);
            }
            for (std::size_t i = 0; i < filling.size(); ++i) {
                if (filling[i] > 0) {
                    made[sizes.size[i] * sizes.unit - kerf].emplace_back(filling[i], variable);
                }
            }
        }
        if (job.stock[k].supply) {
            program.add_row(limit, "<=", *job.stock[k].supply);
        }
    }
    for (const auto& [cut, terms] : made) {
        program.add_row(terms, ">=", 0);
    }
    program.add_row(laps, "<=", laps_most);
    program.add_row(unbalanced, "<=", unbalanced_most);
    return program;
}

}  // namespace reference
