#include "field/screens/told.h"

#include <algorithm>

#include "field/screens/edge_view.h"
#include "field/screens/pool_view.h"

namespace hemline {

namespace {

const Event* event_of(const State& state, EventId id) {
    const auto found = std::find_if(state.events.begin(), state.events.end(),
                                    [id](const Event& event) { return event.id == id; });
    return found == state.events.end() ? nullptr : &*found;
}

/// A step that the edge no longer has is named by its id.
Text name_of_step(const State& state, const StepDone& done) {
    if (const EdgeWork* const work = edge_of(state, done.edge)) {
        for (const Step& step : steps_on(state, *work)) {
            if (step.rule->id == done.step && step.piece == done.piece) {
                return step.action;
            }
        }
    }
    return done.step;
}

Text name_of_offcut(const State& state, EventId id) {
    const Event* const event = event_of(state, id);
    const auto* const cut = event == nullptr ? nullptr : std::get_if<PieceCut>(&event->fact);
    return cut == nullptr ? Text(print_event_id(id))
                          : say("piece {1}", cut->edge + "/" + std::to_string(cut->piece));
}

}  // namespace

Names names_on(const State& state) {
    Names names;
    names.step = [&state](const StepDone& done) { return name_of_step(state, done); };
    names.trim = [&state](const std::string& trim) { return trim_name(state, trim); };
    names.rule = [](const std::string& key) { return spoken_rule(key); };
    names.offcut = [&state](EventId id) { return name_of_offcut(state, id); };
    names.event = [&state](EventId id) {
        const Event* const event = event_of(state, id);
        return event == nullptr ? nullptr : &event->fact;
    };
    return names;
}

Text told(const State& state, const Fact& fact) { return describe(fact, names_on(state)); }

Text clocks_told(const State& state) {
    constexpr std::size_t most = 3;  // of a crew; a job may name more tablets than a roof bears
    std::vector<Text> words;
    for (const ClockDoubt& doubt : state.clocks) {
        if ((state.way == Way::tick_off || is_about(doubt, state.writer)) && words.size() < most) {
            words.push_back(words_on(doubt, state.writer));
        }
    }
    return joined(words, " ");
}

}  // namespace hemline
