#include "engine/record/event.h"

namespace hemline {

WallTime wall_time(const Event& event) {
    return event.moment ? event.moment->clock : WallTime{event.when.wall_ms};
}

bool EdgeAdded::operator==(const EdgeAdded& other) const {
    Edge with_lap = edge;
    with_lap.lap = other.edge.lap;
    return with_lap == other.edge;
}

}  // namespace hemline
