// How long to look: counted steps, so that every platform stops at the same place.
#pragma once

#include <algorithm>
#include <cstdint>

#include "engine/cutting/cutting.h"

namespace hemline {

/// Steps left of a CuttingEffort. Once spent or canceled it stays so.
class Effort {
  public:
    explicit Effort(const CuttingEffort& effort) : from_(effort), left_(effort.steps) {}
    /// A part of a whole effort: its steps are taken from the whole too, and canceling the whole
    /// ends the part.
    Effort(Effort& whole, std::int64_t steps_most)
        : from_(whole.from_), whole_(&whole), left_(std::min(steps_most, whole.left_)) {}

    /// Counts the steps. False when there are none left, or when the caller has canceled.
    bool spend(std::int64_t steps) {
        left_ -= steps;
        if (whole_ != nullptr) {
            left_ = whole_->spend(steps) ? left_ : 0;
            return left_ > 0;
        }
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
    [[nodiscard]] const std::function<bool()>& cancelled() const { return from_.cancelled; }

  private:
    static constexpr std::int64_t ask_every = 100'000;

    const CuttingEffort& from_;
    Effort* whole_ = nullptr;
    std::int64_t left_ = 0;
    std::int64_t since_asked_ = 0;
};

}  // namespace hemline
