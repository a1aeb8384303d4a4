#include "engine/plan/search.h"

#include <algorithm>
#include <set>

#include "engine/plan/column_generation.h"
#include "engine/plan/wide.h"

namespace hemline {

namespace {

using Counts = std::vector<std::int64_t>;

/// One pricing's budget: what a stick of each stock is let off with, and what may still be wasted.
struct Budget {
    const Worths* worths = nullptr;
    Counts allowance;
    std::int64_t spare = 0;
    /// From each kind of piece on, the one that is worth most for its size.
    std::vector<std::size_t> best_from;
};

/// A filling that may be cut next, and what it wastes of each budget.
struct Branch {
    Filling filling;
    Counts waste;
};

class Search {
  public:
    Search(const CuttingTask& task, std::int64_t sticks_most, const std::vector<Worths>& budgets,
           Effort& effort)
        : task_(task), rest_(whole(task)), new_left_(sticks_most), effort_(effort) {
        for (const Worths& worths : budgets) {
            Budget budget{&worths, {}, worth_to_spare(task, worths, sticks_most), {}};
            for (std::size_t k = 0; k < task.stock.size(); ++k) {
                const std::int64_t paid = task.stock[k].on_hand ? 0 : worths.share;
                budget.allowance.push_back(std::max(worths.stick[k], paid));
            }
            budget.best_from.assign(task.pieces.size(), 0);
            for (std::size_t i = task.pieces.size(); i-- > 0;) {
                budget.best_from[i] = i;
                if (i + 1 < task.pieces.size()) {
                    const std::size_t later = budget.best_from[i + 1];
                    const bool better = product_exceeds(worths.piece[later], task.pieces[i].size,
                                                        worths.piece[i], task.pieces[later].size);
                    budget.best_from[i] = better ? later : i;
                }
            }
            budgets_.push_back(std::move(budget));
        }
    }

    SearchResult run() {
        const bool affordable = std::all_of(budgets_.begin(), budgets_.end(),
                                            [](const Budget& b) { return b.spare >= 0; });
        SearchResult result;
        if (!affordable) {
            result.found = Found::no_plan;
        } else if (cut_rest()) {
            result.found = Found::plan;
            result.cutting.fillings = taken_;
            count_up(task_, result.cutting);
        } else {
            result.found = effort_.is_spent() ? Found::not_yet : Found::no_plan;
        }
        return result;
    }

  private:
    bool cut_rest() {
        const auto longest = static_cast<std::size_t>(
            std::find_if(rest_.uncut.begin(), rest_.uncut.end(), [](auto n) { return n > 0; }) -
            rest_.uncut.begin());
        if (longest == rest_.uncut.size()) {
            return true;
        }
        Counts state = rest_.uncut;
        state.insert(state.end(), rest_.supply.begin(), rest_.supply.end());
        state.push_back(new_left_);
        if (failed_.count(state) > 0) {
            return false;
        }
        for (const Branch& branch : branches(longest)) {
            if (!effort_.spend(static_cast<std::int64_t>(rest_.uncut.size()))) {
                return false;
            }
            take(branch, 1);
            taken_.push_back(branch.filling);
            if (cut_rest()) {
                return true;
            }
            taken_.pop_back();
            take(branch, -1);
        }
        constexpr std::size_t states_most = 200'000;
        if (!effort_.is_spent() && failed_.size() < states_most) {
            failed_.insert(std::move(state));
        }
        return false;
    }

    void take(const Branch& branch, std::int64_t sign) {
        const std::size_t k = branch.filling.stock;
        for (const auto& part : branch.filling.parts) {
            rest_.uncut[part.piece] -= sign * part.count;
        }
        rest_.supply[k] -= sign;
        new_left_ -= task_.stock[k].on_hand ? 0 : sign;
        for (std::size_t b = 0; b < budgets_.size(); ++b) {
            budgets_[b].spare -= sign * branch.waste[b];
        }
    }

    /// The affordable fillings that take the longest piece left, least waste first.
    std::vector<Branch> branches(std::size_t longest) {
        std::vector<Branch> found;
        for (std::size_t k = 0; k < task_.stock.size(); ++k) {
            const TaskStock& stock = task_.stock[k];
            const bool there = rest_.supply[k] > 0 && (stock.on_hand || new_left_ > 0);
            if (!there || stock.capacity < task_.pieces[longest].size) {
                continue;
            }
            Counts lacking;
            for (const Budget& budget : budgets_) {
                lacking.push_back(budget.allowance[k]);
            }
            Filling filling{k, 1, {}};
            add(longest, 1, filling, lacking);
            fill(filling, longest, stock.capacity - task_.pieces[longest].size, lacking, found);
        }
        std::stable_sort(found.begin(), found.end(),
                         [](const Branch& a, const Branch& b) { return a.waste < b.waste; });
        return found;
    }

    void add(std::size_t piece, std::int64_t count, Filling& filling, Counts& lacking) const {
        if (!filling.parts.empty() && filling.parts.back().piece == piece) {
            filling.parts.back().count += count;
        } else {
            filling.parts.push_back({piece, count});
        }
        for (std::size_t b = 0; b < budgets_.size(); ++b) {
            lacking[b] -= count * budgets_[b].worths->piece[piece];
        }
    }

    /// Adds to `found` every way to fill `room` further with pieces from `from` on that no piece
    /// left still fits and every budget can bear.
    void fill(const Filling& filling, std::size_t from, std::int64_t room, const Counts& lacking,
              std::vector<Branch>& found) {
        for (std::size_t b = 0; b < budgets_.size() && from < task_.pieces.size(); ++b) {
            const std::size_t best = budgets_[b].best_from[from];
            const std::int64_t more =
                product_over(room, budgets_[b].worths->piece[best], task_.pieces[best].size);
            if (lacking[b] - more > budgets_[b].spare) {
                return;
            }
        }
        if (!effort_.spend(1)) {
            return;
        }
        bool full = true;
        for (std::size_t i = 0; i < task_.pieces.size(); ++i) {
            const std::int64_t size = task_.pieces[i].size;
            if (size > room || left_of(filling, i) == 0) {
                continue;
            }
            full = false;
            if (i >= from) {
                Filling more = filling;
                Counts lacks = lacking;
                add(i, 1, more, lacks);
                fill(more, i, room - size, lacks, found);
            }
        }
        const auto bearable = [&](std::size_t b) { return lacking[b] <= budgets_[b].spare; };
        bool all = full;
        for (std::size_t b = 0; b < budgets_.size(); ++b) {
            all = all && bearable(b);
        }
        if (all) {
            found.push_back({filling, lacking});
        }
    }

    [[nodiscard]] std::int64_t left_of(const Filling& filling, std::size_t piece) const {
        for (const auto& part : filling.parts) {
            if (part.piece == piece) {
                return rest_.uncut[piece] - part.count;
            }
        }
        return rest_.uncut[piece];
    }

    const CuttingTask& task_;
    Rest rest_;
    std::int64_t new_left_;
    std::vector<Budget> budgets_;
    std::vector<Filling> taken_;
    std::set<Counts> failed_;
    Effort& effort_;
};

}  // namespace

SearchResult search(const CuttingTask& task, std::int64_t sticks_most,
                    const std::vector<Worths>& budgets, Effort& effort) {
    return Search(task, sticks_most, budgets, effort).run();
}

}  // namespace hemline
