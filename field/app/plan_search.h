// Looks for the plans worth choosing from on a separate thread: first for as long as a finger
// takes, then for up to ten seconds.
//
//   start(job) ─▶ a few steps ─▶ found ─▶ wake ─▶ many steps, where not all is proved ─▶ found ─▶
//   wake
//        └─ cancel: another event came, and the search is out of date
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

/// Forty million steps take about a second; a search stops after about ten seconds. A plan found is
/// only offered, so tablets need not all find the same.
constexpr std::int64_t search_steps_at_once = 4'000'000, search_steps_beside = 400'000'000;
constexpr std::int64_t search_ms_beside = 10'000;

class PlanSearch {
  public:
    /// `wake` is called on the search's thread when found() has news; empty: there is no thread,
    /// and start() itself takes the few steps. In a browser the page searches in a worker, and
    /// wakes.
    explicit PlanSearch(std::function<void()> wake) : wake_(std::move(wake)) {}
    PlanSearch(const PlanSearch&) = delete;
    PlanSearch& operator=(const PlanSearch&) = delete;
    ~PlanSearch() { cancel(); }

    /// Looks for the choices of this job, which must match its events; an earlier search is
    /// canceled.
    void start(const Job& job, std::span<const Event> events, const Catalogue& catalogue);
    /// Ends within some milliseconds. Choices found but not fetched are dropped.
    void cancel();
    /// The choices found since the last call, pool by pool.
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
    std::mutex lock_;  ///< guards what was found
    std::optional<std::vector<PlanChoice>> found_;
    std::thread thread_;
};

}  // namespace hemline
