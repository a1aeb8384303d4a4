#include "engine/record/about_edge.h"

#include <concepts>

namespace hemline {

std::string edge_in(const Fact& fact) {
    return std::visit(
        [](const auto& said) -> std::string {
            if constexpr (requires {
                              { said.edge } -> std::convertible_to<std::string>;
                          }) {
                return said.edge;
            } else {
                return {};
            }
        },
        fact);
}

std::map<std::string, const Event*> last_on_edges(std::span<const Event> events, const Job& job) {
    std::map<std::string, const Event*> last;
    for (const Event& event : events) {
        if (job.struck.count(event.id) == 0) {
            last[edge_in(event.fact)] = &event;
        }
    }
    last.erase("");
    return last;
}

}  // namespace hemline
