#include "field/store/clock.h"

#include <algorithm>
#include <chrono>

namespace hemline {

std::int64_t wall_ms() {
    using namespace std::chrono;
    const auto now = duration_cast<milliseconds>(system_clock::now().time_since_epoch()).count();
    return std::max<std::int64_t>(0, now);
}

}  // namespace hemline
