// Before roof work, once a day: each thing that is looked at has its own yes and said_no, who
// watches and the nearest hospital are said. A no holds the edge or the whole roof.
#include <algorithm>

#include "field/screens/page/frame.h"
#include "field/screens/people/dew.h"
#include "field/screens/people/gate_checks.h"
#include "field/screens/people/reason_page.h"
#include "field/screens/screens.h"
#include "field/state/edge_view.h"
#include "field/state/gate_view.h"

namespace hemline {

namespace {

bool has_no(const GateDraft& draft) { return draft.found.find(said_no) != std::string::npos; }

bool is_whole(const GateDraft& draft) {
    return !draft.watcher.empty() && !draft.hospital.empty() &&
           std::all_of(gate_checks.begin(), gate_checks.end(),
                       [&](GateCheck check) { return answer_to(draft, check) == said_yes; });
}

GateAnswered answered(const GateDraft& draft, const std::string& edge) {
    GateAnswered gate{edge, {}, draft.watcher, draft.hospital};
    for (const GateCheck check : gate_checks) {
        const char said = answer_to(draft, check);
        if (said == said_yes || said == said_no) {
            gate.found.push_back({check, said == said_yes ? Finding::good : Finding::bad});
        }
    }
    return gate;
}

/// Names of the crew, without whoever goes up.
std::vector<std::string> who_can_watch(const State& state) {
    std::vector<std::string> names;
    const auto add = [&](const std::string& name) {
        constexpr std::size_t names_most = 6;
        if (!name.empty() && name != state.by && names.size() < names_most &&
            std::find(names.begin(), names.end(), name) == names.end()) {
            names.push_back(name);
        }
    };
    for (auto person = state.people.rbegin(); person != state.people.rend(); ++person) {
        add(person->name);
    }
    for (auto event = state.events.rbegin(); event != state.events.rend(); ++event) {
        add(event->by);
    }
    return names;
}

/// Who watches, or which hospital: touched or keyed in.
Wished ask_words(Ui& ui, const State& state, GateDraft& draft) {
    const bool watcher = draft.page == GatePage::watcher;
    if (draft.words_of != draft.page) {
        draft.words = {};
        draft.words_of = draft.page;
    }
    const std::vector<std::string> names =
        watcher ? who_can_watch(state) : std::vector<std::string>();
    ReasonAsked asked_for{
        watcher ? say("Who watches and can call?") : say("Nearest hospital: its name and street"),
        say("Keep it"),
        {}};
    for (const std::string& name : names) {
        asked_for.usual.push_back(name.c_str());
    }
    const ReasonGiven given = ask_reason(ui, state, asked_for, draft.words);
    if (!given.reason.empty()) {
        (watcher ? draft.watcher : draft.hospital) = given.reason;
    }
    if (!given.reason.empty()) {
        draft.words = {};
    }
    if (given.leave || !given.reason.empty()) {
        draft.page = GatePage::checks;
    }
    return given.wish;
}

std::vector<Action> actions_of(const GateDraft& draft, const Where& where) {
    std::vector<Action> actions = {{"leave", say("Roof")}};
    if (!has_no(draft)) {
        actions.push_back(
            {"go up", say("All safe: go up"), is_whole(draft) ? Look::primary : Look::off});
        return actions;
    }
    if (!where.edge.empty()) {
        actions.push_back({"not here", say("Not here: edge {1}", where.edge)});
    }
    actions.push_back({"not today", say("Not today: whole roof"), Look::primary});
    return actions;
}

/// What he said this morning, all of it good until he says otherwise; else the hospital.
void begin_with_known(const State& state, GateDraft& draft) {
    if (draft.hospital.empty()) {
        draft.hospital = hospital_known(state);
    }
    if (const KeptGate* const gate = gate_passed(state); gate != nullptr && draft.found.empty()) {
        draft.watcher = gate->watcher;
        draft.found.assign(gate_checks.size(), said_yes);
    }
}

/// To the roof step that waited.
Where after_gate(const State& state, const EdgeWork& work) {
    const std::vector<Step> steps = steps_on(state, work);
    const std::optional<std::size_t> next = next_on(state, steps);
    Where where = next ? made_at(work, steps[*next]) : Where{Screen::steps, work.edge.id};
    where.screen = state.way == Way::learn ? Screen::steps : where.screen;
    return where;
}

}  // namespace

Wished draw_gate(Ui& ui, const State& state, Drafts& drafts) {
    GateDraft& draft = drafts.gate;
    if (draft.by != state.by || draft.day_ms != state.today.from_ms) {
        draft = {};  // another person or another day answers anew
        draft.by = state.by;
        draft.day_ms = state.today.from_ms;
    }
    if (draft.page == GatePage::dew) {
        return draw_dew(ui, state, draft);
    }
    if (draft.page != GatePage::checks) {
        return ask_words(ui, state, draft);
    }
    begin_with_known(state, draft);
    const EdgeWork* const work = edge_of(state, state.where.edge);
    const Frame frame = open_frame(ui, state, say("Safe to go up today? · {1}", state.by),
                                   actions_of(draft, work == nullptr ? Where() : state.where));
    draw_checks(ui, work == nullptr ? std::nullopt : sheet_on(state, *work), draft, frame.body);
    const std::string here = work == nullptr ? "" : work->edge.id;
    if (frame.tapped == "leave") {
        return Go{{Screen::roof, {}}};
    }
    if (frame.tapped == "go up" && has_passed_gate(state)) {
        return Go{work == nullptr ? Where{Screen::roof, {}} : next_work_on(state, *work).where};
    }
    if (frame.tapped == "go up" && asks_of_roof(state)) {
        return Keep{answered(draft, ""), at(state.where, Screen::asked_once)};
    }
    if (frame.tapped == "go up") {
        return Keep{answered(draft, ""),
                    work == nullptr ? Where{Screen::roof, {}} : after_gate(state, *work)};
    }
    if (frame.tapped == "not here" || frame.tapped == "not today") {
        return Keep{answered(draft, frame.tapped == "not here" ? here : ""),
                    Where{Screen::roof, {}}};
    }
    return frame.wish;
}

}  // namespace hemline
