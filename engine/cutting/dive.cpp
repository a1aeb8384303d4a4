#include "engine/cutting/dive.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "engine/cutting/column_generation.h"
#include "engine/cutting/cutting_fill.h"
#include "engine/cutting/search.h"

namespace hemline {

namespace {

constexpr std::int64_t most_to_search = 40;
constexpr std::int64_t search_steps = 30'000;

/// The cutting so far and what it leaves.
class WayDown {
  public:
    explicit WayDown(const CuttingTask& task) : task_(task), rest_(whole(task)) {}

    [[nodiscard]] const Rest& rest() const { return rest_; }
    [[nodiscard]] const std::vector<Filling>& fillings() const { return fillings_; }
    [[nodiscard]] std::int64_t pieces_left() const {
        return std::accumulate(rest_.uncut.begin(), rest_.uncut.end(), std::int64_t{0});
    }
    [[nodiscard]] std::int64_t new_sticks() const { return new_sticks_; }
    [[nodiscard]] bool is_done() const {
        return std::all_of(rest_.uncut.begin(), rest_.uncut.end(), [](auto n) { return n == 0; });
    }

    /// Cuts the filling as often as the rest allows, at most `times`. False when not once.
    bool cut(Filling filling, std::int64_t times, StickProgram& program) {
        times = std::min(times, rest_.supply[filling.stock]);
        for (const auto& part : filling.parts) {
            times = std::min(times, rest_.uncut[part.piece] / part.count);
        }
        if (times <= 0 || filling.parts.empty()) {
            return false;
        }
        program.cut(filling, times);
        filling.times = times;
        rest_.supply[filling.stock] -= times;
        for (const auto& part : filling.parts) {
            rest_.uncut[part.piece] -= times * part.count;
        }
        new_sticks_ += task_.stock[filling.stock].on_hand ? 0 : times;
        fillings_.push_back(std::move(filling));
        return true;
    }

    /// The filling without what is no longer wanted, and topped up with what is.
    [[nodiscard]] Filling trimmed(const Filling& filling) const {
        std::vector<std::int64_t> counts(task_.pieces.size(), 0);
        std::int64_t room = task_.stock[filling.stock].capacity;
        for (const auto& part : filling.parts) {
            counts[part.piece] = std::min(part.count, rest_.uncut[part.piece]);
            room -= counts[part.piece] * task_.pieces[part.piece].size;
        }
        Filling trimmed{filling.stock, 1, {}};
        for (std::size_t i = 0; i < counts.size(); ++i) {
            const std::int64_t size = task_.pieces[i].size;
            const std::int64_t more = std::min(rest_.uncut[i] - counts[i], room / size);
            counts[i] += more;
            room -= more * size;
            if (counts[i] > 0) {
                trimmed.parts.push_back({i, counts[i]});
            }
        }
        return trimmed;
    }

    /// The cutting finished by quick filling, when that is whole and within the sticks.
    [[nodiscard]] std::optional<Cutting> finished(std::int64_t sticks_most) const {
        for (const FillBy by : {FillBy::longest, FillBy::least_left}) {
            Cutting cutting = fill_sticks(task_, by, rest_.uncut, rest_.supply);
            cutting.fillings.insert(cutting.fillings.end(), fillings_.begin(), fillings_.end());
            count_up(task_, cutting);
            if (cutting.uncut_size == 0 && cutting.new_sticks <= sticks_most) {
                return cutting;
            }
        }
        return std::nullopt;
    }

  private:
    const CuttingTask& task_;
    Rest rest_;
    std::vector<Filling> fillings_;
    std::int64_t new_sticks_ = 0;
};

/// Cuts every filling that the program uses at least one whole stick of. False when there is none.
bool fix_wholes(const std::vector<StickProgram::Use>& uses, WayDown& way, StickProgram& program) {
    bool fixed = false;
    for (const auto& use : uses) {
        const auto times = static_cast<std::int64_t>(std::floor(use.times + 1e-6));
        fixed = (times > 0 && way.cut(*use.filling, times, program)) || fixed;
    }
    return fixed;
}

}  // namespace

std::optional<Cutting> dive(const CuttingTask& task, std::int64_t sticks_most, int turn,
                            const std::vector<Worths>& budgets, std::vector<Filling>& fillings,
                            Effort& effort) {
    WayDown way(task);
    StickProgram program(task, way.rest().uncut, way.rest().supply);
    for (const Filling& filling : fillings) {
        program.add(filling);
    }
    int choices = 0;
    std::int64_t searched_from = most_to_search * 3 / 2;
    while (!effort.is_spent()) {
        if (auto cutting = way.finished(sticks_most)) {
            return cutting;
        }
        if (way.is_done()) {
            return std::nullopt;
        }
        // Search again only when a third less is left: the same search would end the same way.
        if (way.pieces_left() * 3 <= searched_from * 2) {
            searched_from = way.pieces_left();
            Effort own(effort, search_steps);
            SearchResult result = search(task, sticks_most, budgets, own, way.fillings());
            if (result.found == Found::plan) {
                return std::move(result.cutting);
            }
            if (result.found == Found::no_plan) {
                return std::nullopt;
            }
        }
        generate_columns(task, way.rest(), Seek::fillings, program, fillings, effort);
        const double sticks = static_cast<double>(way.new_sticks()) + program.value();
        if (sticks > static_cast<double>(sticks_most) + 1e-6) {
            return std::nullopt;
        }
        std::vector<StickProgram::Use> uses = program.uses();
        if (fix_wholes(uses, way, program)) {
            continue;
        }
        std::stable_sort(uses.begin(), uses.end(),
                         [](const auto& a, const auto& b) { return a.times > b.times + 1e-9; });
        ++choices;
        const std::size_t choice = choices == turn && uses.size() > 1 ? 1 : 0;
        if (uses.empty() || !way.cut(way.trimmed(*uses[choice].filling), 1, program)) {
            return std::nullopt;
        }
    }
    return std::nullopt;
}

}  // namespace hemline
