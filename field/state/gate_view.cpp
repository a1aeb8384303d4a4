#include "field/state/gate_view.h"

#include <algorithm>

namespace hemline {

const KeptGate* gate_passed(const State& state) {
    const auto answers_all = [](const KeptGate& gate) {
        return !gate.watcher.empty() && !gate.hospital.empty() &&
               std::all_of(gate_checks.begin(), gate_checks.end(), [&](GateCheck check) {
                   return std::any_of(gate.found.begin(), gate.found.end(),
                                      [&](const GateFound& one) { return one.check == check; });
               });
    };
    const auto last =
        std::find_if(state.job.gates.rbegin(), state.job.gates.rend(), [&](const KeptGate& gate) {
            return gate.by == state.by && state.today.holds(gate.clock) && answers_all(gate);
        });
    return last == state.job.gates.rend() ? nullptr : &*last;
}

bool has_passed_gate(const State& state) { return gate_passed(state) != nullptr; }

bool wants_gate(const State& state, const Step& step) {
    return !is_on_the_ground(step.rule->asks) && step.refused_by.empty() && !has_passed_gate(state);
}

bool asks_of_roof(const State& state) {
    const Site& site = state.job.practice.site;
    return state.job.practice.fixed_line == FixedLine::unsaid || !site.wind_from ||
           site.bearings.empty();
}

bool is_roof_work(const Fact& fact) {
    if (const auto* const reading = std::get_if<ReadingTaken>(&fact)) {
        return reading->of == ReadingOf::remainder;
    }
    const auto step = step_in(fact);
    return step && !says_no(*step) && !std::holds_alternative<StepLifted>(fact);
}

const StepRule* prompt_for(const State& state, const EdgeWork& work) {
    const auto procedure = state.assets->procedures.find(work.edge.kind);
    const bool began = std::any_of(work.steps.begin(), work.steps.end(), [&](const DoneStep& done) {
        return done.by == state.by && state.today.holds(done.clock);
    });
    return began || procedure == state.assets->procedures.end() ? nullptr
                                                                : prompt_of(procedure->second);
}

std::string hospital_known(const State& state) {
    const auto last = std::find_if(state.job.gates.rbegin(), state.job.gates.rend(),
                                   [](const KeptGate& gate) { return !gate.hospital.empty(); });
    return last == state.job.gates.rend() ? "" : last->hospital;
}

std::optional<Sheet> sheet_on(const State& state, const EdgeWork& work, int piece) {
    const Trim* const trim = state.catalogue.of(work.edge);
    const Section* const section = trim == nullptr ? nullptr : state.sections.find(trim->id);
    if (section == nullptr) {
        return std::nullopt;
    }
    return piece == 0 ? longest_sheet(state.plan, work.edge, *section)
                      : sheet_of(state.plan, work.edge, *section, piece);
}

}  // namespace hemline
