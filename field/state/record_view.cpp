#include "field/state/record_view.h"

#include <algorithm>

#include "field/state/told.h"

namespace hemline {

namespace {

/// The strike that stands on that entry; only the tablet that wrote it can take it back.
const Event* strike_on(const State& state, EventId entry) {
    const auto found =
        std::find_if(state.events.rbegin(), state.events.rend(), [&](const Event& event) {
            return struck_by(event.fact) == entry && state.job.struck.count(event.id) == 0;
        });
    return found == state.events.rend() ? nullptr : &*found;
}

bool is_outside_practice(const Fact& fact) {
    const auto* const answered = std::get_if<StepAnswered>(&fact);
    const auto* const done = std::get_if<StepDone>(&fact);
    return (answered != nullptr && !answered->accepted_by.empty()) ||
           (done != nullptr && !done->exception.empty());
}

}  // namespace

Undoing undoing_of(const State& state, const Event& event) {
    const Text entry = told(state, event.fact);
    const bool is_strike = struck_by(event.fact).has_value();
    const bool is_struck = state.job.struck.count(event.id) > 0;
    if (std::holds_alternative<JobStarted>(event.fact)) {
        return {{}, false, say("The job begins here: {1}", entry)};
    }
    if (!is_struck && (!is_strike || event.id.device == state.writer)) {
        return {event.id, is_strike, entry};
    }
    const Event* const strike = is_struck ? strike_on(state, event.id) : &event;
    if (strike == nullptr) {
        return {{}, false, say("Another entry stands in its place: {1}", entry)};
    }
    if (strike->id.device != state.writer) {
        return {{}, true, say("Another tablet crossed it out, and can put it back: {1}", entry)};
    }
    return {strike->id, true, entry};
}

Wished undo_of(const Undoing& undoing, const Where& then) {
    if (!undoing.strike) {
        return std::nullopt;
    }
    return Keep{StruckFor{*undoing.strike, StrikeReason::undone}, then, {*undoing.strike}};
}

RecordShown record_shown(const State& state) {
    RecordShown shown;
    shown.entries.reserve(state.events.size());
    for (auto event = state.events.rbegin(); event != state.events.rend(); ++event) {
        shown.entries.push_back(&*event);
    }
    const auto rest =
        std::stable_partition(shown.entries.begin(), shown.entries.end(), [&](const Event* event) {
            return is_outside_practice(event->fact) && state.job.struck.count(event->id) == 0;
        });
    shown.outside = static_cast<std::size_t>(rest - shown.entries.begin());
    return shown;
}

const Event* tick_on(const State& state, std::string_view edge) {
    const auto found =
        std::find_if(state.events.rbegin(), state.events.rend(), [&](const Event& event) {
            const auto* const tick = std::get_if<EdgeFinished>(&event.fact);
            return tick != nullptr && tick->edge == edge && state.job.struck.count(event.id) == 0;
        });
    return found == state.events.rend() ? nullptr : &*found;
}

}  // namespace hemline
