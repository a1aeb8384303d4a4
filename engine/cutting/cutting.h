// Cutting pieces from the fewest sticks, with a lower bound that anyone can check in integers.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "engine/quantity/length.h"

namespace hemline {

/// One length of stock: how many there are (none: as many as wanted) and whether it is on hand
/// already (an offcut or a bought stick), which costs nothing and is used first.
struct StockLength {
    Length length;
    std::optional<std::int64_t> supply;
    bool on_hand = false;
};

struct CutDemand {
    Length length;  ///< > 0
    std::int64_t count = 1;
};

struct CuttingJob {
    std::vector<StockLength> stock;
    std::vector<CutDemand> demand;
    Length kerf;  ///< metal lost at each cut; 0 for snips
};

/// `times` sticks of stock[`stock`], each cut into demand[index] × count, in cutting order.
struct Layout {
    std::int64_t times = 1;
    std::size_t stock = 0;
    std::vector<std::size_t> cuts;  ///< indices into demand, one for each piece, longest first
};

/// Why no plan can use fewer new sticks. Each piece has a worth; no stick of stock[k] can hold more
/// than stick_worth[k] of it; `share` is the worth that a new stick may hold for its cost of 1.
/// Then, in exact integers,
///
///   new sticks ≥ ⌈(Σ worth·count − Σ supply·max(0, stick_worth − cost·share)) / share⌉
///
/// the second sum over limited stock, cost 0 on hand and 1 new. Unlimited new stock must hold no
/// more than its share; limited sticks of the same length never count as more sticks than there are
/// pieces that fit one. `refuted`: for so many counts of sticks, from the bound on, a full search
/// found no plan. It tries every way to fill the stick that takes the longest piece left, and skips
/// only what these worths and the metal rule out. docs/cutting.md has the proof.
struct Certificate {
    std::vector<std::int64_t> worth;        ///< one for each demand, ≥ 0
    std::vector<std::int64_t> stick_worth;  ///< one for each stock
    std::int64_t share = 1;                 ///< > 0
    std::int64_t bound = 0;                 ///< by the worths alone
    std::int64_t refuted = 0;               ///< lower_bound == bound + refuted
};

struct CuttingPlan {
    std::vector<Layout> layouts;
    std::int64_t sticks = 0;         ///< sticks used that are not on hand
    std::int64_t lower_bound = 0;    ///< no plan can use fewer
    bool proved = false;             ///< sticks == lower_bound and nothing is missing
    std::vector<CutDemand> missing;  ///< what the limited stock cannot yield
    std::string bound_from;          ///< how the bound was reached, for people
    Certificate certificate;         ///< of lower_bound
    /// Not proved, because the job is larger than the proof has room for: the result is what quick
    /// filling finds, beside the first bound.
    bool is_too_large = false;
};

/// Bytes that the tables of a proof may take. The same on every device, so that plans are the same,
/// and small enough for the browser of a small tablet. A proof that needs more is not tried.
constexpr std::int64_t table_bytes_most = std::int64_t{64} << 20U;

/// The most pieces in a plan; those past it are `missing`.
constexpr std::int64_t cut_pieces_most = 1'000'000;

/// How long to look for fewer sticks and a higher bound: counted steps (forty million take about a
/// second), and a function called now and then that says whether to stop.
struct CuttingEffort {
    std::int64_t steps = 4'000'000;
    std::function<bool()> cancelled;
};

/// The fewest new sticks, and among as few the shorter ones. Deterministic: counted steps, no
/// clock. A piece longer than every stock is `missing`.
CuttingPlan plan_cutting(const CuttingJob& job, const CuttingEffort& effort = {});

}  // namespace hemline
