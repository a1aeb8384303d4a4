#include "field/state/told.h"

#include <algorithm>
#include <map>
#include <memory>

#include "engine/words/path_text.h"
#include "field/state/edge_view.h"
#include "field/state/pool_view.h"

namespace hemline {

namespace {

/// What names are looked up in. A line needs it once or twice, a whole sheet for every line.
class LookedUp {
  public:
    explicit LookedUp(const State& state) : state_(state) {}

    const Event* event(EventId id) {
        constexpr int looks_most = 4;
        if (looks_++ < looks_most) {
            const auto found = std::find_if(state_.events.begin(), state_.events.end(),
                                            [id](const Event& event) { return event.id == id; });
            return found == state_.events.end() ? nullptr : &*found;
        }
        if (events_.empty()) {
            for (const Event& event : state_.events) {
                events_.emplace(event.id, &event);
            }
        }
        const auto found = events_.find(id);
        return found == events_.end() ? nullptr : found->second;
    }
    const std::vector<Step>& steps(const EdgeWork& work) {
        const auto [steps, is_new] = steps_.try_emplace(work.edge.id);
        if (is_new) {
            steps->second = steps_on(state_, work);
        }
        return steps->second;
    }

  private:
    const State& state_;
    int looks_ = 0;
    std::map<EventId, const Event*> events_;
    std::map<std::string, std::vector<Step>> steps_;
};

/// What a step asks, where its numbers are not known: "Cut fascia wrap …".
Text action_of(const StepRule& rule) {
    Text action = say(rule.action);
    for (std::size_t at = action.key.find('{'); at != action.key.npos;
         at = action.key.find('{', at + 1)) {
        const std::size_t end = std::min(action.key.find('}', at), action.key.size());
        action.names.push_back(action.key.substr(at + 1, end - at - 1));
        action.values.emplace_back("…");
    }
    return action;
}

/// A step that the edge no longer has is named by what some procedure asks under that id.
Text name_of_step(const State& state, LookedUp& looked_up, const StepSaid& done) {
    if (const EdgeWork* const work = edge_of(state, done.edge)) {
        for (const Step& step : looked_up.steps(*work)) {
            if (step.rule->id == done.step && step.piece == done.piece) {
                return step.action;
            }
        }
    }
    for (const auto& [kind, rules] : state.assets->procedures) {
        for (const StepRule& rule : rules) {
            if (rule.id == done.step) {
                return action_of(rule);
            }
        }
    }
    return spaced(done.step);
}

Text name_of_offcut(LookedUp& looked_up, EventId id) {
    const Event* const event = looked_up.event(id);
    const auto* const cut = event == nullptr ? nullptr : std::get_if<PieceCut>(&event->fact);
    return cut == nullptr ? say("a piece that is not here")
                          : say("piece {1}", cut->edge + "/" + std::to_string(cut->piece));
}

}  // namespace

Names names_on(const State& state) {
    Names names;
    const auto looked_up = std::make_shared<LookedUp>(state);
    names.step = [&state, looked_up](const StepSaid& done) {
        return name_of_step(state, *looked_up, done);
    };
    names.trim = [&state](const std::string& trim) { return trim_name(state, trim); };
    names.rule = [](const std::string& key) { return spoken_rule(key); };
    names.offcut = [looked_up](EventId id) { return name_of_offcut(*looked_up, id); };
    names.entry = [looked_up](EventId id) {
        return looked_up->event(id) == nullptr ? say("an entry that is not on this tablet")
                                               : say("another entry");
    };
    names.event = [looked_up](EventId id) {
        const Event* const event = looked_up->event(id);
        return event == nullptr ? nullptr : &event->fact;
    };
    return names;
}

Text told(const State& state, const Fact& fact) { return describe(fact, names_on(state)); }

Text clocks_told(const State& state) {
    constexpr std::size_t most = 3;  // of a crew; a damaged job may name any number of tablets
    std::vector<Text> words;
    for (const ClockDoubt& doubt : state.clocks) {
        if ((state.way == Way::tick_off || is_about(doubt, state.writer)) && words.size() < most) {
            words.push_back(words_on(doubt, state.writer));
        }
    }
    return joined(words, " ");
}

}  // namespace hemline
