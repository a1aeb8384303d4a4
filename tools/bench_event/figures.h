// Times, sorted, and what is read from them.
#pragma once

#include <algorithm>
#include <chrono>
#include <cstddef>
#include <ctime>
#include <utility>
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

/// Milliseconds of the processor that `deed` takes: what others do on a busy machine is left out.
template <class Deed>
double cpu_ms_of(const Deed& deed) {
    const auto now = [] {
        timespec time{};
        clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
        return static_cast<double>(time.tv_sec) * 1e3 + static_cast<double>(time.tv_nsec) / 1e6;
    };
    const double start = now();
    deed();
    return now() - start;
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
