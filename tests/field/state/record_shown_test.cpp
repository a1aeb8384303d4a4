// In which order the record's entries are shown.
#include <doctest/doctest.h>

#include "field/state/record_view.h"

using namespace hemline;

namespace {

Event event_of(std::uint32_t sequence, Fact fact) {
    Event event;
    event.id = {1, sequence};
    event.fact = std::move(fact);
    return event;
}

StepAnswered answered(const std::string& accepted_by) {
    StepAnswered step;
    step.edge = "A";
    step.accepted_by = accepted_by;
    return step;
}

}  // namespace

TEST_CASE("What stands outside practice is shown before all else, of both the latest first") {
    State state;
    state.events = {event_of(1, answered("Zoe")), event_of(2, answered("")),
                    event_of(3, answered("Ada")), event_of(4, answered("Ben")),
                    event_of(5, ReadingTaken{"A", ReadingOf::edge, feet(3)})};
    state.job.struck = {{1, 4}};
    const RecordShown shown = record_shown(state);
    std::vector<std::uint32_t> order;
    for (const Event* const event : shown.entries) {
        order.push_back(event->id.sequence);
    }
    CHECK(order == std::vector<std::uint32_t>{3, 1, 5, 4, 2});
    CHECK(shown.outside == 2);
}
