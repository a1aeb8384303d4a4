#include "engine/record/last_on_edges.h"

#include "engine/record/about_thing.h"

namespace hemline {

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
