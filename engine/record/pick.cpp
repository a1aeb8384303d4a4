#include "engine/record/pick.h"

#include <algorithm>
#include <iterator>

#include "engine/record/job.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

/// The sides that a pick names; the latest, if there are more than an event can name.
std::vector<EventId> last_sides(const Conflict& conflict) {
    const std::size_t count = std::min(conflict.sides.size(), supersedes_most / 2);
    std::vector<EventId> ids;
    std::transform(conflict.sides.end() - static_cast<std::ptrdiff_t>(count), conflict.sides.end(),
                   std::back_inserter(ids), [](const Tip& side) { return side.id; });
    return ids;
}

}  // namespace

Result<ToWrite> pick(const Job& job, std::span<const Event> events, EventId chosen) {
    for (const Conflict& conflict : job.conflicts) {
        const auto side =
            std::find_if(conflict.sides.begin(), conflict.sides.end(),
                         [&](const Tip& one) { return one.id == chosen || one.says == chosen; });
        if (side == conflict.sides.end()) {
            continue;
        }
        if (conflict.apart == Apart::edge_back) {
            if (side == conflict.sides.begin()) {
                return Problem{
                    say("Metal is cut or counted for edge {1}: it stays.", conflict.thing.name),
                    say("Undo the cut if it was never made; else keep the edge.")};
            }
            const EdgeWork& work = *job.find(conflict.thing.name);
            return ToWrite{EdgeAdded{said_anew(work, work.edge)}, {}};
        }
        const auto copies = std::count_if(events.begin(), events.end(), [&](const Event& event) {
            return event.id == side->says;
        });
        if (copies > 1) {
            return Problem{
                say("The number of that event stands for two events: it cannot be picked."),
                say("Measure or enter it again.")};
        }
        return ToWrite{Picked{side->says, conflict.thing}, last_sides(conflict)};
    }
    return Problem{say("{1} stands against no other event.", print_event_id(chosen)),
                   say("Pick one of the events that are shown as a conflict.")};
}

Result<ToWrite> put_away(const Job& job, EventId number) {
    for (const Conflict& conflict : job.conflicts) {
        if (conflict.apart == Apart::number_twice && conflict.sides.front().id == number) {
            return ToWrite{CopyNoted{number, static_cast<std::int64_t>(conflict.sides.size())}, {}};
        }
    }
    return Problem{say("There is no notice that {1} was written twice.", print_event_id(number)),
                   say("Take a number that `show` says was written twice.")};
}

}  // namespace hemline
