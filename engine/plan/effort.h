// How long to look: counted steps, so that every platform stops at the same place.
#pragma once

#include <cstdint>

#include "engine/plan/cutting.h"

namespace hemline {

/// Steps that are left of a CuttingEffort. Once spent or cancelled it stays so.
class Effort {
  public:
    explicit Effort(const CuttingEffort& effort) : from_(effort), left_(effort.steps) {}

    /// Counts the steps. False when there are none left, or when the caller has cancelled.
    bool spend(std::int64_t steps) {
        left_ -= steps;
        since_asked_ += steps;
        if (since_asked_ >= ask_every) {
            since_asked_ = 0;
            if (from_.cancelled && from_.cancelled()) {
                left_ = 0;
            }
        }
        return left_ > 0;
    }
    [[nodiscard]] bool is_spent() const { return left_ <= 0; }
    [[nodiscard]] std::int64_t left() const { return left_; }

  private:
    static constexpr std::int64_t ask_every = 100'000;

    const CuttingEffort& from_;
    std::int64_t left_ = 0;
    std::int64_t since_asked_ = 0;
};

}  // namespace hemline
