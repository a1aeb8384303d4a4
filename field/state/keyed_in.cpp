#include "field/state/keyed_in.h"

#include <algorithm>

#include "field/state/edge_view.h"

namespace hemline {

namespace {

bool is_begun(const LengthDraft& draft) { return !is_empty(draft) || !draft.typed.empty(); }

bool says_length(const Drafts& drafts) {
    const std::array<LengthDraft, shape_lengths_most>& of_shape = drafts.shape.lengths;
    const HostDraft& host = drafts.walk.host;
    return is_begun(drafts.reading.length) || is_begun(drafts.step.length) ||
           is_begun(drafts.real_cut.length) || is_begun(drafts.on_hand.length) ||
           is_begun(drafts.stick.length) || is_begun(drafts.edge_lap.length) ||
           is_begun(drafts.rule.length) || is_begun(drafts.section.length) ||
           is_begun(drafts.walk.length) || is_begun(host.along) || is_begun(host.up) ||
           is_begun(host.rise) || std::any_of(of_shape.begin(), of_shape.end(), is_begun);
}

bool says_letters(const Drafts& drafts) {
    const GateDraft& gate = drafts.gate;
    return !drafts.person.name.letters.empty() || !drafts.send_back.reason.letters.empty() ||
           !drafts.edge.name.letters.empty() || !gate.words.letters.empty();
}

bool says_number(const Drafts& drafts) {
    const GateDraft& gate = drafts.gate;
    return !drafts.step.count.empty() || !drafts.pitch.number.empty() ||
           !drafts.edge.number.number.empty() || !drafts.section.degrees.empty() ||
           !drafts.walk.degrees.empty() || !drafts.walk.pitch.number.empty() ||
           !drafts.shape.pitch.number.empty() || !gate.air.empty() || !gate.humidity.empty() ||
           drafts.on_hand.sticks != 1;
}

bool says_choice(const Drafts& drafts) {
    return drafts.person.way.has_value() || drafts.section.hem_kind.has_value() ||
           drafts.walk.kind.has_value() || drafts.walk.corner != CornerAsked::outside ||
           !drafts.walk.host.eave.empty() || drafts.apart.chosen.has_value();
}

/// An answer to the day's questions; what is known of today or of the job is there by itself.
bool answers_gate(const State& state, const Where& where, const GateDraft& draft) {
    return where.screen == Screen::gate && (!draft.found.empty() || !draft.watcher.empty()) &&
           draft.by == state.by;
}

bool has_tilt(const TiltDraft& draft) { return draft.taking || !draft.first.empty(); }

/// Whether an edge being added has an answer, or an existing edge is being changed.
bool says_edge(const State& state, const Where& where, const EdgeDraft& draft) {
    if (where.screen != Screen::add_edge) {
        return false;
    }
    const EdgeWork* const there = edge_of(state, where.edge);
    if (there == nullptr) {
        return draft.answered > 0;
    }
    if (draft.edge.id != where.edge) {
        return false;  // nothing is said of it yet
    }
    Edge said = draft.edge;
    said.pitch = there->edge.pitch;  // have their own screens
    said.looks = there->edge.looks;
    return !(said == there->edge);
}

}  // namespace

bool is_keyed_in(const State& state, const Where& where, const Drafts& drafts) {
    return says_length(drafts) || says_letters(drafts) || says_number(drafts) ||
           says_choice(drafts) || answers_gate(state, where, drafts.gate) ||
           has_tilt(drafts.tilt) || says_edge(state, where, drafts.edge);
}

}  // namespace hemline
