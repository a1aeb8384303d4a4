// Times, sorted, and what is read from them.
#pragma once

#include <algorithm>
#include <chrono>
#include <cstddef>
#include <vector>

namespace hemline {

/// Milliseconds that `deed` takes.
template <class Deed>
double ms_of(const Deed& deed) {
    const auto start = std::chrono::steady_clock::now();
    deed();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start)
        .count();
}

struct Times {
    std::vector<double> rising;  ///< ms
    explicit Times(std::vector<double> ms) : rising(std::move(ms)) {
        std::sort(rising.begin(), rising.end());
    }
    [[nodiscard]] double at(int percent) const {
        const std::size_t n = rising.size();
        return n == 0 ? 0 : rising[std::min(n - 1, n * static_cast<std::size_t>(percent) / 100)];
    }
};

}  // namespace hemline
