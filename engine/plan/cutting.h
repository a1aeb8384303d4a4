// Cutting pieces from the fewest sticks, with a lower bound that says how far it could be from fewest.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "engine/measure/length.h"

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
    std::vector<std::size_t> cuts;  ///< indices into demand, one for each piece
};

struct CuttingPlan {
    std::vector<Layout> layouts;
    std::int64_t sticks = 0;       ///< sticks used that are not on hand
    std::int64_t lower_bound = 0;  ///< no plan can use fewer
    bool proved = false;           ///< sticks == lower_bound and nothing is missing
    std::vector<CutDemand> missing;  ///< what the limited stock cannot yield
    std::string bound_from;          ///< how the bound was reached, for people
};

/// Best- and first-fit decreasing against the volume bound and Martello–Toth L2 (the exact method
/// takes this function's place). Deterministic: counted steps, no clock. A piece longer than every
/// stock is `missing`.
CuttingPlan plan_cutting(const CuttingJob& job);

}  // namespace hemline
