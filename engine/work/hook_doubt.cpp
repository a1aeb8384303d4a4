#include "engine/work/hook_doubt.h"

#include <vector>

#include "engine/roof/readings.h"

namespace hemline {

Text hook_doubt(const Job& job) {
    std::vector<Length> second_minus_first;
    for (const EdgeWork& work : job.edges) {
        std::vector<Length> lengths;
        for (const RecordedReading& reading : work.readings) {
            if (!reading.struck && reading.of == ReadingOf::edge) {
                lengths.push_back(reading.length);
            }
        }
        if (lengths.size() >= 2) {
            second_minus_first.push_back(lengths[1] - lengths[0]);
        }
    }
    return hook_suspected(second_minus_first)
               ? say("The second readings are off alike on several edges: likely the hook. Fix it "
                     "or take another tape.")
               : Text();
}

}  // namespace hemline
