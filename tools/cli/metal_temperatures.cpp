#include "tools/cli/metal_temperatures.h"

#include "engine/words/result.h"
#include "tools/cli/complaint.h"

namespace hemline {

std::optional<MetalTemperatures> read_temperatures(const std::string& now, const std::string& low,
                                                   const std::string& high) {
    MetalTemperatures read;
    for (const auto& [name, text, into] : {std::tuple{"--at", &now, &read.now},
                                           {"--low", &low, &read.coldest},
                                           {"--high", &high, &read.hottest}}) {
        const Result<Temperature> temperature = parse_temperature(*text);
        if (!temperature) {
            complain(name, temperature.problem());
            return {};
        }
        *into = *temperature;
    }
    return read;
}

}  // namespace hemline
