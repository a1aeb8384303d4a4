#include "engine/cutting/cutting.h"

#include <algorithm>

#include "engine/cutting/column_generation.h"
#include "engine/cutting/cutting_fill.h"
#include "engine/cutting/dive.h"
#include "engine/cutting/effort.h"
#include "engine/cutting/search.h"
#include "engine/cutting/worth_bound.h"

namespace hemline {

namespace {

/// Past these sizes the program's tables would outgrow a tablet: what quick filling finds stands.
constexpr std::size_t rows_most = 400;
constexpr std::int64_t pieces_to_search_most = 2000;

/// What is known of a task: the best cutting so far, and the bound it is measured against.
struct Knowledge {
    Cutting best;
    Worths worths;
    std::int64_t refuted = 0;
    std::string bound_from;

    [[nodiscard]] std::int64_t lower_bound() const { return worths.bound + refuted; }
    [[nodiscard]] bool is_settled() const {
        return best.uncut_size == 0 && best.new_sticks <= lower_bound();
    }
};

Knowledge at_first_sight(const CuttingTask& task) {
    Knowledge known{filled(task), l2_bound(task), 0, ""};
    const bool by_volume = volume_bound(task).bound == known.worths.bound;
    known.bound_from = by_volume ? "metal in all" : "long pieces share no stick";
    return known;
}

bool is_searchable(const CuttingTask& task) {
    std::int64_t pieces = 0;
    for (const TaskPiece& piece : task.pieces) {
        pieces += piece.count;
    }
    return task.pieces.size() + task.stock.size() <= rows_most && pieces <= pieces_to_search_most;
}

std::int64_t new_sticks_there_are(const CuttingTask& task) {
    std::int64_t sticks = 0;
    for (const TaskStock& stock : task.stock) {
        sticks += stock.on_hand ? 0 : stock.supply;
    }
    return sticks;
}

/// The bound of the linear program, and the fillings it came from.
std::vector<Filling> price(const CuttingTask& task, Knowledge& known, Effort& effort) {
    const Rest rest = whole(task);
    std::vector<Filling> fillings;
    for (const FillBy by : {FillBy::longest, FillBy::least_left}) {
        const Cutting cutting = fill_sticks(task, by, rest.uncut, rest.supply);
        fillings.insert(fillings.end(), cutting.fillings.begin(), cutting.fillings.end());
    }
    StickProgram program(task, rest.uncut, rest.supply);
    for (const Filling& filling : fillings) {
        program.add(filling);
    }
    Worths worths = generate_columns(task, rest, Seek::bound, program, fillings, effort);
    if (worths.bound > known.worths.bound) {
        known.bound_from = "prices of the pieces";
    }
    if (!worths.piece.empty() && worths.bound >= known.worths.bound) {
        known.worths = std::move(worths);
    }
    return fillings;
}

/// Dives (dive.h) and searches (search.h) in turn for a plan that meets the bound. Where a search
/// shows that there is none, the bound rises by 1.
void close_gap(const CuttingTask& task, Knowledge& known, std::vector<Filling> fillings,
               Effort& effort) {
    const std::vector<Worths> budgets{known.worths, volume_bound(task)};
    const std::int64_t there_are = new_sticks_there_are(task);
    int turn = 0;
    std::int64_t search_steps = 100'000;
    while (!known.is_settled() && known.lower_bound() <= there_are && !effort.is_spent()) {
        const std::int64_t target = known.lower_bound();
        std::optional<Cutting> found;
        for (int dives = 0; dives < 3 && !found; ++dives) {
            found = dive(task, target, turn++, budgets, fillings, effort);
        }
        if (!found) {
            Effort own(effort, search_steps);
            SearchResult result = search(task, target, budgets, own);
            search_steps *= 4;
            if (result.found == Found::plan) {
                found = std::move(result.cutting);
            } else if (result.found == Found::no_plan) {
                ++known.refuted;
                known.bound_from = "every way tried";
                turn = 0;
            }
        }
        if (found) {
            known.best = std::move(*found);
            take_shorter_sticks(task, known.best);
        }
    }
}

}  // namespace

CuttingPlan plan_cutting(const CuttingJob& job, const CuttingEffort& effort) {
    const CuttingTask task = task_of(job);
    Knowledge known = at_first_sight(task);
    const bool has_room = is_searchable(task);
    if (!known.is_settled() && has_room) {
        Effort left(effort);
        std::vector<Filling> fillings = price(task, known, left);
        close_gap(task, known, std::move(fillings), left);
    }
    CuttingPlan plan = plan_of(task, job, known.best);
    plan.certificate = certificate_of(task, job, known.worths);
    plan.certificate.refuted = known.refuted;
    plan.lower_bound = known.lower_bound();
    plan.proved = plan.missing.empty() && plan.sticks == plan.lower_bound;
    plan.bound_from = known.bound_from;
    plan.is_too_large = !known.is_settled() && !has_room;
    return plan;
}

}  // namespace hemline
