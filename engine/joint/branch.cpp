#include "engine/joint/branch.h"

#include <algorithm>

namespace hemline {

namespace {

constexpr std::size_t lengths_most = 64;
/// For each number of sticks that is looked for.
constexpr int nodes_most = 200;
/// Dives where every class is decided and the linear program still sees room.
constexpr std::size_t turns_most = 8;

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

JointBranch::JointBranch(const JointNeeds& needs, JointProgram& program, std::int64_t laps,
                         std::int64_t unbalanced, Try try_plan, Effort& effort)
    : needs_(needs),
      program_(program),
      laps_(laps),
      unbalanced_(unbalanced),
      try_plan_(std::move(try_plan)),
      effort_(effort) {}

void JointBranch::close_gap(std::int64_t sticks) {
    const DivisionSets all = all_divisions(needs_);
    const std::vector<std::optional<std::size_t>> none(needs_.edges.size());
    const JointProgram::Answer root =
        program_.solve(all, none, laps_, unbalanced_, sticks, effort_);
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

/// For each edge the division used most; -1 where it has none.
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

/// Fixes the divisions that the linear program uses whole, or most, and solves again, until every
/// edge is divided. Each turn fixes another division first.
bool JointBranch::dive(const DivisionSets& allowed, const JointProgram::Answer& from,
                       std::size_t turn, std::int64_t target) {
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
        answer = program_.solve(allowed, fixed, laps_, unbalanced_, target + 1, effort_);
        if (answer.value > static_cast<double>(target) + 1e-6) {
            return false;
        }
    }
    return false;
}

JointBranch::Found JointBranch::look(const DivisionSets& allowed, std::int64_t target) {
    if (nodes_left_-- <= 0 || effort_.is_spent()) {
        return Found::unknown;
    }
    const std::vector<std::optional<std::size_t>> none(needs_.edges.size());
    const JointProgram::Answer answer =
        program_.solve(allowed, none, laps_, unbalanced_, target + 1, effort_);
    if (answer.worths.bound > target) {
        leaves_.push_back({allowed, answer.worths});
        return Found::no_plan;
    }
    auto fork = fork_by_class(allowed, answer);
    for (std::size_t turn = 0; turn < (fork ? 1 : turns_most); ++turn) {
        if (dive(allowed, answer, turn, target)) {
            return Found::plan;
        }
    }
    fork = fork ? fork : fork_by_length(allowed, answer);
    return fork ? look_at_both(allowed, *fork, answer.worths, target) : Found::unknown;
}

/// Each side of a fork. A side without any division need not be looked at: any worths bound it.
JointBranch::Found JointBranch::look_at_both(const DivisionSets& allowed, const Fork& fork,
                                             const JointWorths& worths, std::int64_t target) {
    bool refuted = true;
    for (const DivisionSet& side : {fork.one, fork.other}) {
        DivisionSets own = allowed;
        own[fork.edge] = side;
        if (!has_division(needs_, fork.edge, side)) {
            leaves_.push_back({own, worths});
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
