// Tablets, and the readings of edge A that they take.
#pragma once

#include <algorithm>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <vector>

#include "engine/record/job.h"

namespace hemline {

inline constexpr std::uint64_t device = 0x00c0ffee00c0ffeeU, ada = 0xada, ben = 0xbe4;

inline ReadingTaken reading(std::int64_t number) {
    return {"A", ReadingOf::edge, sixteenths(number)};
}

inline EdgeAdded edge_a() {
    EdgeAdded added;
    added.edge.id = "A";
    return added;
}

/// How many readings of the first edge count: those whose event is not struck.
inline std::size_t readings_that_count(const std::vector<Event>& events) {
    const Job job = replay(events);
    const auto& readings = job.edges.at(0).readings;
    return static_cast<std::size_t>(std::count_if(
        readings.begin(), readings.end(), [](const RecordedReading& r) { return !r.struck; }));
}

inline void write(const std::filesystem::path& file, const Bytes& bytes) {
    std::ofstream(file, std::ios::binary)
        .write(reinterpret_cast<const char*>(bytes.data()),
               static_cast<std::streamsize>(bytes.size()));
}

}  // namespace hemline
