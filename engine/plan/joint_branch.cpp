#include "engine/plan/joint_branch.h"

#include <algorithm>

namespace hemline {

namespace {

constexpr std::size_t lengths_most = 64;
/// Of one count of sticks looked for.
constexpr int nodes_most = 200;
/// Dives where every class is decided and the program still sees room.
constexpr std::size_t turns_most = 8;
constexpr double whole_enough = 1 - 1e-6;

}  // namespace

std::vector<Length> lengths_told_apart(const JointNeeds& needs) {
    std::vector<Length> lengths;
    const Length least = std::max(round_down_to(needs.sliver, needs.grid), needs.grid);
    if ((needs.stick - least).nm() / needs.grid.nm() < static_cast<std::int64_t>(lengths_most)) {
        for (Length own = needs.grid; own < needs.stick; own += needs.grid) {
            lengths.push_back(own);
        }
    } else {
        for (const EdgeNeeds& edge : needs.edges) {
            for (const NeedClass& own : edge) {
                for (const auto& way : own.ways) {
                    for (const Length cut : way) {
                        lengths.push_back(round_down_to(cut, needs.grid));
                    }
                }
            }
        }
    }
    lengths.push_back(needs.stick);
    std::sort(lengths.begin(), lengths.end());
    lengths.erase(std::unique(lengths.begin(), lengths.end()), lengths.end());
    return lengths;
}

JointBranch::JointBranch(const JointJob& job, const JointNeeds& needs, std::vector<Length> lengths,
                         std::int64_t laps, std::int64_t unbalanced, Try try_plan, Effort& effort)
    : needs_(needs),
      laps_(laps),
      unbalanced_(unbalanced),
      try_plan_(std::move(try_plan)),
      effort_(effort),
      program_(job, needs, std::move(lengths)) {}

void JointBranch::close_gap(std::int64_t sticks) {
    const Classes all = all_classes(needs_);
    const std::vector<std::optional<std::size_t>> none(needs_.edges.size());
    const JointProgram::Answer root = program_.solve(all, none, laps_, unbalanced_, effort_);
    bound_ = root.worths.bound;
    parts_ = {{all, root.worths}};
    while (bound_ < sticks && !effort_.is_spent()) {
        leaves_.clear();
        nodes_left_ = nodes_most;
        const Found found = look(all, bound_);
        if (found != Found::no_plan) {
            return;
        }
        parts_ = leaves_;
        ++bound_;
    }
}

/// Of each edge the division used most; -1 where it has none.
std::vector<std::ptrdiff_t> JointBranch::most_used(const JointProgram::Answer& answer) const {
    std::vector<std::ptrdiff_t> most(needs_.edges.size(), -1);
    for (std::size_t d = 0; d < answer.division.size(); ++d) {
        std::ptrdiff_t& own = most[program_.divisions()[d].edge];
        if (own < 0 || answer.division[d] > answer.division[static_cast<std::size_t>(own)] + 1e-9) {
            own = static_cast<std::ptrdiff_t>(d);
        }
    }
    return most;
}

bool JointBranch::try_most_used(const JointProgram::Answer& answer, std::int64_t target) {
    std::vector<const JointProgram::Division*> chosen;
    for (const std::ptrdiff_t own : most_used(answer)) {
        chosen.push_back(own < 0 ? nullptr : &program_.divisions()[static_cast<std::size_t>(own)]);
    }
    return try_plan_(chosen) <= target;
}

/// The divisions used, but not whole, the most used first.
std::vector<std::size_t> JointBranch::in_parts(const JointProgram::Answer& answer) const {
    std::vector<std::size_t> found;
    for (std::size_t d = 0; d < answer.division.size(); ++d) {
        if (answer.division[d] > 1e-6 && answer.division[d] < whole_enough) {
            found.push_back(d);
        }
    }
    std::stable_sort(found.begin(), found.end(), [&](std::size_t a, std::size_t b) {
        return answer.division[a] > answer.division[b] + 1e-9;
    });
    return found;
}

/// Fixes what the program uses whole, or most, and solves again, until every edge is divided. Each
/// turn fixes another division first.
bool JointBranch::dive(const Classes& allowed, const JointProgram::Answer& from, std::size_t turn,
                       std::int64_t target) {
    std::vector<std::optional<std::size_t>> fixed(needs_.edges.size());
    JointProgram::Answer answer = from;
    while (!effort_.is_spent()) {
        if (try_most_used(answer, target)) {
            return true;
        }
        const std::vector<std::size_t> parts = in_parts(answer);
        if (parts.size() <= turn) {
            return false;
        }
        for (std::size_t d = 0; d < answer.division.size(); ++d) {
            if (answer.division[d] >= whole_enough) {
                fixed[program_.divisions()[d].edge] = d;
            }
        }
        fixed[program_.divisions()[parts[turn]].edge] = parts[turn];
        turn = 0;
        answer = program_.solve(allowed, fixed, laps_, unbalanced_, effort_);
        if (answer.value > static_cast<double>(target) + 1e-6) {
            return false;
        }
    }
    return false;
}

/// The edge that is least of one class, and the class it is most of.
std::optional<std::pair<std::size_t, std::size_t>> JointBranch::undecided(
    const Classes& allowed, const JointProgram::Answer& answer) const {
    std::optional<std::pair<std::size_t, std::size_t>> found;
    double least = whole_enough;
    for (std::size_t e = 0; e < allowed.size(); ++e) {
        std::vector<double> used(needs_.edges[e].size(), 0);
        for (std::size_t d = 0; d < answer.division.size(); ++d) {
            const JointProgram::Division& own = program_.divisions()[d];
            if (own.edge == e) {
                used[own.of_class] += answer.division[d];
            }
        }
        const auto most = std::max_element(used.begin(), used.end());
        if (most != used.end() && *most < least) {
            least = *most;
            found = std::pair(e, static_cast<std::size_t>(most - used.begin()));
        }
    }
    return found;
}

JointBranch::Found JointBranch::look(const Classes& allowed, std::int64_t target) {
    if (nodes_left_-- <= 0 || effort_.is_spent()) {
        return Found::unknown;
    }
    const std::vector<std::optional<std::size_t>> none(needs_.edges.size());
    const JointProgram::Answer answer = program_.solve(allowed, none, laps_, unbalanced_, effort_);
    if (answer.worths.bound > target) {
        leaves_.push_back({allowed, answer.worths});
        return Found::no_plan;
    }
    const auto branch = undecided(allowed, answer);
    for (std::size_t turn = 0; turn < (branch ? 1 : turns_most); ++turn) {
        if (dive(allowed, answer, turn, target)) {
            return Found::plan;
        }
    }
    if (!branch) {
        return Found::unknown;
    }
    bool refuted = true;
    for (const bool inside : {true, false}) {
        Classes own = allowed;
        const std::uint32_t bit = 1U << branch->second;
        own[branch->first] = inside ? bit : allowed[branch->first] & ~bit;
        if (own[branch->first] == 0) {
            continue;
        }
        const Found found = look(own, target);
        if (found == Found::plan) {
            return found;
        }
        refuted = refuted && found == Found::no_plan;
    }
    return refuted ? Found::no_plan : Found::unknown;
}

}  // namespace hemline
