// Looking for the plans worth a choice beside the hand: first as long as a finger takes, then up to
// ten seconds.
//
//   start(job) ─▶ a few steps ─▶ found ─▶ wake ─▶ many steps, where not all is proved ─▶ found ─▶
//   wake
//        └─ cancel: another event came, and what is looked for is out of date
#pragma once

#include <atomic>
#include <functional>
#include <mutex>
#include <optional>
#include <span>
#include <thread>
#include <vector>

#include "engine/plan/plan.h"
#include "engine/record/job.h"

namespace hemline {

/// Forty million steps take about a second. What takes longer than ten is not waited for: a plan
/// that is found is offered, so it need not be found on every tablet alike.
constexpr std::int64_t search_steps_at_once = 4'000'000, search_steps_beside = 400'000'000;
constexpr std::int64_t search_ms_beside = 10'000;

class PlanSearch {
  public:
    /// `wake` is called on the search's thread when found() has news; empty: there is no thread,
    /// and start() takes the few steps itself. In a browser the page searches in a worker of its
    /// own, and wakes.
    explicit PlanSearch(std::function<void()> wake) : wake_(std::move(wake)) {}
    PlanSearch(const PlanSearch&) = delete;
    PlanSearch& operator=(const PlanSearch&) = delete;
    ~PlanSearch() { cancel(); }

    /// Looks for the choices of this job, which is what its events make; what was looked for before
    /// is cancelled.
    void start(const Job& job, std::span<const Event> events, const Catalogue& catalogue);
    /// Ends within some milliseconds. What was found and not taken is dropped.
    void cancel();
    /// The choices found since it was last asked, pool by pool.
    std::optional<std::vector<PlanChoice>> found();
    /// More may be found yet.
    [[nodiscard]] bool is_under_way() const { return under_way_; }
    /// Waits until nothing more will be found.
    void settle();

    /// In a browser: the worker's answer, and whether it is the last.
    void answered(std::vector<PlanChoice> choices, bool is_last);

  private:
    void run(const Job& job, const Catalogue& catalogue);
    bool look(const Job& job, const Catalogue& catalogue, std::int64_t steps);

    const std::function<void()> wake_;
    std::atomic<bool> cancelled_ = false, under_way_ = false;
    std::mutex lock_;  ///< over what was found
    std::optional<std::vector<PlanChoice>> found_;
    std::thread thread_;
};

}  // namespace hemline
