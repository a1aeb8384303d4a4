#include "engine/cutting/search.h"

#include <algorithm>
#include <set>
#include <string>

#include "engine/cutting/column_generation.h"
#include "engine/cutting/wide.h"

namespace hemline {

namespace {

using Counts = std::vector<std::int64_t>;
using State = std::u16string;

/// The budget of a pricing: the worth that a stick of each stock should hold, and how much may
/// still be wasted.
struct Budget {
    const Worths* worths = nullptr;
    Counts allowance;
    std::int64_t spare = 0;
    /// From each kind of piece on, the kind that is worth most for its size.
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

    SearchResult run(const std::vector<Filling>& begun) {
        for (const Filling& filling : begun) {
            begin_with(filling);
        }
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
    /// Cuts a filling before the search begins; it stays.
    void begin_with(const Filling& filling) {
        Branch branch{filling, {}};
        for (const Budget& budget : budgets_) {
            std::int64_t waste = budget.allowance[filling.stock];
            for (const auto& part : filling.parts) {
                waste -= part.count * budget.worths->piece[part.piece];
            }
            branch.waste.push_back(waste);
        }
        take(branch, filling.times);
        taken_.push_back(filling);
    }

    bool cut_rest() {
        const auto longest = static_cast<std::size_t>(
            std::find_if(rest_.uncut.begin(), rest_.uncut.end(), [](auto n) { return n > 0; }) -
            rest_.uncut.begin());
        if (longest == rest_.uncut.size()) {
            return true;
        }
        State state = state_now();
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
        // About what the hash table takes besides the state.
        constexpr std::int64_t bytes_beside = 96;
        const std::int64_t bytes =
            bytes_beside + static_cast<std::int64_t>(state.size() * sizeof(char16_t));
        if (!effort_.is_spent() && failed_.size() < states_most &&
            bytes <= table_bytes_most - failed_bytes_) {
            failed_bytes_ += bytes;
            failed_.insert(std::move(state));
        }
        return false;
    }

    /// What is left to cut and to cut from: neither is more than the number of pieces to search.
    [[nodiscard]] State state_now() const {
        State state;
        state.reserve(rest_.uncut.size() + rest_.supply.size() + 1);
        for (const Counts* counts : {&rest_.uncut, &rest_.supply}) {
            for (const std::int64_t count : *counts) {
                state.push_back(static_cast<char16_t>(count));
            }
        }
        state.push_back(static_cast<char16_t>(new_left_));
        return state;
    }

    /// `times` below 0 gives them back.
    void take(const Branch& branch, std::int64_t times) {
        const std::size_t k = branch.filling.stock;
        for (const auto& part : branch.filling.parts) {
            rest_.uncut[part.piece] -= times * part.count;
        }
        rest_.supply[k] -= times;
        new_left_ -= task_.stock[k].on_hand ? 0 : times;
        for (std::size_t b = 0; b < budgets_.size(); ++b) {
            budgets_[b].spare -= times * branch.waste[b];
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
            filling_ = {k, 1, {}};
            lacking_.clear();
            for (const Budget& budget : budgets_) {
                lacking_.push_back(budget.allowance[k]);
            }
            add(longest);
            std::vector<Branch> own;
            fill(longest, stock.capacity - task_.pieces[longest].size, own);
            drop_dominated(longest, stock.capacity - task_.pieces[longest].size, own);
            take_back(longest);
            found.insert(found.end(), own.begin(), own.end());
        }
        std::stable_sort(found.begin(), found.end(),
                         [](const Branch& a, const Branch& b) { return a.waste < b.waste; });
        return found;
    }

    /// If a single piece fits beside the longest piece, a filling with the longest such piece is at
    /// least as good as one with other pieces that add up to no more: in any plan the two can be
    /// swapped. Drops the fillings that lose.
    void drop_dominated(std::size_t longest, std::int64_t room, std::vector<Branch>& own) const {
        std::size_t next = longest;
        while (next < task_.pieces.size() &&
               (rest_.uncut[next] == 0 || task_.pieces[next].size > room)) {
            ++next;
        }
        if (next == task_.pieces.size()) {
            return;
        }
        const auto is_dominated = [&](const Branch& branch) {
            std::int64_t beside = -task_.pieces[longest].size;
            std::int64_t of_next = next == longest ? -1 : 0;
            for (const auto& part : branch.filling.parts) {
                beside += part.count * task_.pieces[part.piece].size;
                of_next += part.piece == next ? part.count : 0;
            }
            return of_next == 0 && beside <= task_.pieces[next].size;
        };
        own.erase(std::remove_if(own.begin(), own.end(), is_dominated), own.end());
    }

    void add(std::size_t piece) {
        if (!filling_.parts.empty() && filling_.parts.back().piece == piece) {
            ++filling_.parts.back().count;
        } else {
            filling_.parts.push_back({piece, 1});
        }
        --rest_.uncut[piece];
        for (std::size_t b = 0; b < budgets_.size(); ++b) {
            lacking_[b] -= budgets_[b].worths->piece[piece];
        }
    }

    void take_back(std::size_t piece) {
        if (--filling_.parts.back().count == 0) {
            filling_.parts.pop_back();
        }
        ++rest_.uncut[piece];
        for (std::size_t b = 0; b < budgets_.size(); ++b) {
            lacking_[b] += budgets_[b].worths->piece[piece];
        }
    }

    [[nodiscard]] bool is_bearable(std::size_t from, std::int64_t room) const {
        for (std::size_t b = 0; b < budgets_.size(); ++b) {
            const std::size_t best = budgets_[b].best_from[from];
            const std::int64_t more =
                product_over(room, budgets_[b].worths->piece[best], task_.pieces[best].size);
            if (lacking_[b] - more > budgets_[b].spare) {
                return false;
            }
        }
        return true;
    }

    [[nodiscard]] bool has_room_for_more(std::int64_t room) const {
        for (std::size_t i = task_.pieces.size(); i-- > 0 && task_.pieces[i].size <= room;) {
            if (rest_.uncut[i] > 0) {
                return true;
            }
        }
        return false;
    }

    /// Adds to `found` every way to fill `room` with pieces from `from` on, until no piece left
    /// fits, that stays within every budget.
    void fill(std::size_t from, std::int64_t room, std::vector<Branch>& found) {
        if (!is_bearable(from, room) || !effort_.spend(1)) {
            return;
        }
        if (!has_room_for_more(room)) {
            if (is_bearable(from, 0)) {
                found.push_back({filling_, lacking_});
            }
            return;
        }
        for (std::size_t i = from; i < task_.pieces.size(); ++i) {
            if (rest_.uncut[i] > 0 && task_.pieces[i].size <= room) {
                add(i);
                fill(i, room - task_.pieces[i].size, found);
                take_back(i);
            }
        }
    }

    const CuttingTask& task_;
    Rest rest_;
    std::int64_t new_left_;
    std::vector<Budget> budgets_;
    std::vector<Filling> taken_;
    Filling filling_;  ///< being built, and what it still lacks of each budget
    Counts lacking_;
    std::set<State> failed_;
    std::int64_t failed_bytes_ = 0;
    Effort& effort_;
};

}  // namespace

SearchResult search(const CuttingTask& task, std::int64_t sticks_most,
                    const std::vector<Worths>& budgets, Effort& effort,
                    const std::vector<Filling>& begun) {
    return Search(task, sticks_most, budgets, effort).run(begun);
}

}  // namespace hemline
