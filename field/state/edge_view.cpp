#include "field/state/edge_view.h"

#include <algorithm>

#include "engine/words/result.h"
#include "engine/work/confirm.h"
#include "engine/work/order.h"
#include "field/state/gate_view.h"

namespace hemline {

namespace {

Text cut_words(TrimRole role, int piece, const Text& edge) {
    switch (role) {
        case TrimRole::wrap:
            return say("Cut fascia wrap piece {1} of {2}", piece, edge);
        case TrimRole::cleat:
            return say("Cut cleat piece {1} of {2}", piece, edge);
        case TrimRole::main:
            break;
    }
    return say("Cut piece {1} of {2}", piece, edge);
}

TrimRole role_of(Each each) {
    if (each == Each::wrap_piece) {
        return TrimRole::wrap;
    }
    return each == Each::cleat_piece ? TrimRole::cleat : TrimRole::main;
}

NextWork work_of_step(const State& state, const EdgeWork& work, const Step& step) {
    const Text name = title_of(work.edge);
    NextWork next;
    next.where = made_at(work, step);
    if (step.rule->asks == Asks::cut) {
        next.label = say("Next cut");
        next.what = cut_words(next.where.role, step.piece, name);
    } else if (step.rule->asks == Asks::remainder) {
        next.label = say("Measure what is left");
        next.what = say("{1}: measure for the last piece", name);
    } else {
        next.label = step.rule->asks == Asks::tick ? say("Check off") : say("Next step");
        next.what = glued(name, ": ", step.action);
    }
    if (state.way == Way::learn) {
        next.where.screen = Screen::steps;
        next.label = say("Show me how");
    }
    if (wants_gate(state, step)) {
        next.where = {Screen::gate, work.edge.id};
    }
    return next;
}

NextWork look_at_no(const EdgeWork& work) {
    return {{Screen::steps, work.edge.id},
            say("Look at it"),
            say("{1}: somebody said no", title_of(work.edge))};
}

/// What comes next for the foreman: an edge to look at, a disagreement, and when there is neither
/// the day sheet.
NextWork next_to_tick(const State& state) {
    for (const EdgeWork& work : state.job.edges) {
        if (status_on(state, work) == EdgeStatus::held) {
            return look_at_no(work);
        }
    }
    for (const EdgeWork& work : state.job.edges) {
        if (status_on(state, work) == EdgeStatus::to_tick) {
            const Text name = title_of(work.edge);
            return {{Screen::look, work.edge.id},
                    say("Look at it"),
                    say("{1} waits for you to check it off", name)};
        }
    }
    if (!state.job.conflicts.empty()) {
        return {{Screen::apart, {}}, say("Pick one"), say("Two tablets disagree on one thing")};
    }
    return {{Screen::day, {}}, say("Day sheet"), say("No edge waits for you to check it off")};
}

}  // namespace

Where made_at(const EdgeWork& work, const Step& step) {
    Where where{Screen::steps, work.edge.id, TrimRole::main, step.piece, ReadingOf::edge};
    if (step.rule->asks == Asks::cut) {
        where.screen = Screen::card;
        where.role = role_of(step.rule->each);
    } else if (step.rule->asks == Asks::remainder) {
        where.screen = Screen::reading;
        where.reading_of = ReadingOf::remainder;
    }
    return where;
}

const EdgeWork* edge_of(const State& state, std::string_view edge) { return state.job.find(edge); }

std::vector<Step> steps_on(const State& state, const EdgeWork& work) {
    const auto procedure = state.assets->procedures.find(work.edge.kind);
    if (procedure == state.assets->procedures.end()) {
        return {};
    }
    return steps_of(work, state.plan, state.job.practice, procedure->second, state.catalogue,
                    corner_mates(work, state.plan, state.job));
}

std::optional<std::size_t> next_on(const State& state, const std::vector<Step>& steps) {
    return state.way == Way::learn ? next_step(steps) : next_for_installer(steps);
}

std::vector<EdgeValue> values_on(const State& state, const EdgeWork& work) {
    std::vector<EdgeValue> values = edge_values(
        {state.job, state.plan, state.catalogue, state.events}, work, steps_on(state, work));
    std::stable_partition(values.begin(), values.end(),
                          [](const EdgeValue& value) { return !value.outside.empty(); });
    return values;
}

EdgeStatus status_on(const State& state, const EdgeWork& work) {
    return status_of(work, steps_on(state, work), state.job.practice);
}

Result<Card> card_in_hand(const State& state, const Where& where) {
    Result<Card> planned =
        make_card(state.job, state.plan, state.catalogue, where.edge, where.role, where.piece);
    if (!planned) {
        return planned;
    }
    Card card = *planned;
    card.stick_from = Length();
    card.left_over = card.stick_length - card.cut;
    return card;
}

NextWork next_work_on(const State& state, const EdgeWork& work) {
    const std::string& id = work.edge.id;
    const Text name = title_of(work.edge);
    const std::vector<Step> steps = steps_on(state, work);
    switch (status_of(work, steps, state.job.practice)) {
        case EdgeStatus::no_reading:
            return {{Screen::reading, id}, say("Read this edge"), say("{1}: first reading", name)};
        case EdgeStatus::one_reading:
            return {{Screen::reading, id}, say("Read again"), say("{1}: second reading", name)};
        case EdgeStatus::readings_disagree:
            return {{Screen::reading, id}, say("Read again"), say("{1}: a third reading", name)};
        case EdgeStatus::pitch_missing:
            return {{Screen::pitch, id}, say("Read the pitch"), say("{1}: pitch", name)};
        case EdgeStatus::undecided:
            return {{Screen::apart, id}, say("Pick one"), say("{1}: two tablets disagree", name)};
        case EdgeStatus::held:
            if (state.way == Way::tick_off) {
                return look_at_no(work);
            }
            break;  // others go on with what is cut on the ground
        default:
            break;
    }
    const std::optional<std::size_t> next = next_on(state, steps);
    if (!next) {
        return {{Screen::steps, id}, say("Look at it"), say("{1}: finished", name)};
    }
    return work_of_step(state, work, steps[*next]);
}

std::optional<NextWork> next_work(const State& state) {
    if (state.way == Way::tick_off && !state.job.edges.empty()) {
        return next_to_tick(state);
    }
    const std::vector<EdgeNext> all =
        whats_next(state.job, state.plan, state.assets->procedures, state.catalogue);
    if (all.empty()) {
        return std::nullopt;
    }
    const auto can_be_done = [](const EdgeNext& next) {
        return next.waits_for.empty() && next.status != EdgeStatus::to_tick;
    };
    const auto first = std::find_if(all.begin(), all.end(), can_be_done);
    const EdgeNext& chosen = first == all.end() ? all.front() : *first;
    NextWork next = next_work_on(state, *state.job.find(chosen.edge));
    next.waits_for = chosen.waits_for;
    return next;
}

Where opened(const State& state, const EdgeWork& work) {
    if (state.way == Way::tick_off) {
        return {Screen::look, work.edge.id};
    }
    const bool is_plane = find_panels(state.plan, work.edge.id) != nullptr;
    return is_plane ? Where{Screen::panels, work.edge.id} : next_work_on(state, work).where;
}

Text title_of(const Edge& edge) { return title_of(edge.kind, edge.id); }

}  // namespace hemline
