#include "field/app/plan_search.h"

#include <algorithm>
#include <chrono>
#include "engine/plan/make_plan.h"
#include "engine/record/job.h"

#include "engine/record/event.h"

namespace hemline {

void PlanSearch::start(const Job& job, std::span<const Event> /*events*/,
                       const Catalogue& catalogue) {
    cancel();
    cancelled_ = false;
    under_way_ = true;
    if (wake_) {
        thread_ = std::thread([this, job, catalogue] { run(job, catalogue); });
    } else {
        look(job, catalogue, search_steps_at_once);
        under_way_ = false;
    }
}

void PlanSearch::cancel() {
    cancelled_ = true;
    settle();
    found_.reset();
}

void PlanSearch::settle() {
    if (thread_.joinable()) {
        thread_.join();
    }
}

std::optional<std::vector<PlanChoice>> PlanSearch::found() {
    const std::lock_guard guard(lock_);
    return std::exchange(found_, std::nullopt);
}

void PlanSearch::run(const Job& job, const Catalogue& catalogue) {
    if (!look(job, catalogue, search_steps_at_once) && !cancelled_) {
        wake_();
        look(job, catalogue, search_steps_beside);
    }
    under_way_ = false;
    if (!cancelled_) {
        wake_();
    }
}

/// True when every choice found is proved, so that more steps would find nothing.
bool PlanSearch::look(const Job& job, const Catalogue& catalogue, std::int64_t steps) {
    const auto until =
        std::chrono::steady_clock::now() + std::chrono::milliseconds(search_ms_beside);
    const auto stop = [&] { return cancelled_ || std::chrono::steady_clock::now() > until; };
    std::vector<PlanChoice> choices = find_choices(job, catalogue, {steps, stop});
    const bool proved = std::all_of(choices.begin(), choices.end(),
                                    [](const PlanChoice& choice) { return choice.proved; });
    const std::lock_guard guard(lock_);
    if (!cancelled_) {
        found_ = std::move(choices);
    }
    return proved;
}

}  // namespace hemline
