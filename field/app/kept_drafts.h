// Every field of the drafts that outlives the program, by its key; printing and reading use the
// same list. Refusals and questions on the screen are not kept.
#pragma once

#include <string>

#include "field/state/drafts.h"

namespace hemline {

template <class Each>
void each_of_length(Each& each, const std::string& of, LengthDraft& length) {
    each(of + ".feet", length.feet);
    each(of + ".inches", length.inches, 11);
    each(of + ".sixteenths", length.sixteenths, 15);
    each(of + ".millimetres", length.millimetres);
    each(of + ".field", length.field, 0, 2);
    each(of + ".typed", length.typed);
}

template <class Each>
void each_of_name(Each& each, const std::string& of, NameDraft& name) {
    each(of + ".letters", name.letters);
    each(of + ".digits_shown", name.digits_shown);
}

template <class Each>
void each_of_pitch(Each& each, const std::string& of, PitchDraft& pitch) {
    each(of + ".number", pitch.number);
    each(of + ".notation", pitch.notation, SlopeNotation::percent);
}

template <class Each>
void each_kept(Each& each, ReadingDrafts& drafts) {
    constexpr int pasted_most = 100'000;
    each_of_length(each, "reading", drafts.reading.length);
    bool is_cleared = drafts.reading.cleared.has_value();
    LengthDraft cleared = drafts.reading.cleared.value_or(LengthDraft());
    each("reading.is_cleared", is_cleared);
    each_of_length(each, "cleared", cleared);
    drafts.reading.cleared = is_cleared ? std::optional(cleared) : std::nullopt;
    each("reading.striking", drafts.reading.striking);
    each("reading.which", drafts.reading.which);
    each("reading.doubt_shown", drafts.reading.doubt_shown);
    each("pasted.lines", drafts.pasted.lines);
    each("pasted.number", drafts.pasted.number, 1, pasted_most);
    each("pasted.on_page", drafts.pasted.on_page);
    each_of_pitch(each, "pitch", drafts.pitch);
    each("tilt.first", drafts.tilt.first);
    each("tilt.turned", drafts.tilt.turned);
}

template <class Each>
void each_kept(Each& each, StepsDrafts& drafts) {
    each("step.of", drafts.step.of);
    each_of_length(each, "step", drafts.step.length);
    each("step.field_opened", drafts.step.field_opened);
    each("step.keys_out", drafts.step.keys_out);
    each("step.count", drafts.step.count);
    each("step.singly", drafts.step.singly);
}

template <class Each>
void each_kept(Each& each, CardDrafts& drafts) {
    each_of_length(each, "real_cut", drafts.real_cut.length);
    each("folded.end", drafts.folded.end, Side::right);
    each("folded.step", drafts.folded.step, 0, 3);
    each("papers.a4", drafts.papers.a4);
}

template <class Each>
void each_kept(Each& each, SectionDrafts& drafts) {
    constexpr int legs_most = 64;
    SectionDraft& draft = drafts.section;
    each("section.leg", draft.leg, -1, legs_most);
    each("section.bend", draft.bend, -1, legs_most);
    each("section.hem", draft.hem, -1, legs_most);
    each("section.hem_kind", draft.hem_kind, Hem::tear_drop);
    each("section.degrees", draft.degrees);
    each("section.up", draft.up);
    each_of_length(each, "section", draft.length);
}

template <class Each>
void each_kept(Each& each, SticksDrafts& drafts) {
    constexpr int sticks_most = 999;
    each_of_length(each, "on_hand", drafts.on_hand.length);
    each("on_hand.sticks", drafts.on_hand.sticks, 0, sticks_most);
    each("on_hand.corrects", drafts.on_hand.corrects);
    each_of_length(each, "stick", drafts.stick.length);
}

template <class Each>
void each_kept(Each& each, EdgesDrafts& drafts) {
    EdgeDraft& draft = drafts.edge;
    each("edge", draft.edge);
    each("edge.asked", draft.asked, EdgeField::seam);
    each("edge.one_by_one", draft.one_by_one);
    each("edge.answered", draft.answered, 0, 4);
    each("edge.choosing", draft.choosing);
    each("edge.keyed", draft.keyed, EdgeField::seam);
    each_of_pitch(each, "edge", draft.number);
    each_of_name(each, "edge", draft.name);
    each_of_length(each, "edge_lap", drafts.edge_lap.length);
    each("edge_lap.field_opened", drafts.edge_lap.field_opened);
}

template <class Each>
void each_kept(Each& each, RoofDrafts& drafts) {
    constexpr int shapes_most = 8;
    each("walk.asks", drafts.walk.asks, WalkAsks::rise);
    each("walk.kind", drafts.walk.kind, SideKind::open);
    each_of_length(each, "walk", drafts.walk.length);
    each("walk.corner", drafts.walk.corner, CornerAsked::other);
    each("walk.degrees", drafts.walk.degrees);
    each_of_pitch(each, "walk", drafts.walk.pitch);
    HostDraft& host = drafts.walk.host;
    each("walk.runs_in", host.runs_in);
    each("walk.lies_under", host.lies_under);
    each("walk.host", host.eave);
    each_of_length(each, "walk.along", host.along);
    each_of_length(each, "walk.up", host.up);
    each("walk.is_outside", host.is_outside);
    each_of_length(each, "walk.rise", host.rise);
    each("walk.is_lower", host.is_lower);
    each("shape.shape", drafts.shape.shape, -1, shapes_most);
    each("shape.asked", drafts.shape.asked, 0, static_cast<int>(shape_lengths_most));
    for (std::size_t i = 0; i < shape_lengths_most; ++i) {
        each_of_length(each, "shape." + std::to_string(i), drafts.shape.lengths[i]);
    }
    each_of_pitch(each, "shape", drafts.shape.pitch);
}

template <class Each>
void each_kept(Each& each, RulesDrafts& drafts) {
    each("rule.key", drafts.rule.key);
    each("rule.keyed", drafts.rule.keyed);
    each_of_length(each, "rule", drafts.rule.length);
}

template <class Each>
void each_kept(Each& each, PeopleDrafts& drafts) {
    each_of_name(each, "person", drafts.person.name);
    each("person.way", drafts.person.way, Way::learn);
    each("person.naming_job", drafts.person.naming_job);
    each_of_name(each, "send_back", drafts.send_back.reason);
    each("day.ms", drafts.day.ms);
    each("gate.by", drafts.gate.by);
    each("gate.day_ms", drafts.gate.day_ms);
    each("gate.found", drafts.gate.found);
    each("gate.watcher", drafts.gate.watcher);
    each("gate.hospital", drafts.gate.hospital);
    each("gate.page", drafts.gate.page, GatePage::dew);
    each_of_name(each, "gate", drafts.gate.words);
    each("gate.words_of", drafts.gate.words_of, GatePage::dew);
    each("gate.air", drafts.gate.air);
    each("gate.humidity", drafts.gate.humidity);
    each("gate.humidity_next", drafts.gate.humidity_next);
}

template <class Each>
void each_kept(Each& each, CarryingDrafts& drafts) {
    each("apart.chosen", drafts.apart.chosen);
}

template <class Each>
void each_kept_draft(Each& each, Drafts& drafts) {
    each_kept(each, static_cast<ReadingDrafts&>(drafts));
    each_kept(each, static_cast<StepsDrafts&>(drafts));
    each_kept(each, static_cast<CardDrafts&>(drafts));
    each_kept(each, static_cast<SectionDrafts&>(drafts));
    each_kept(each, static_cast<SticksDrafts&>(drafts));
    each_kept(each, static_cast<EdgesDrafts&>(drafts));
    each_kept(each, static_cast<RoofDrafts&>(drafts));
    each_kept(each, static_cast<RulesDrafts&>(drafts));
    each_kept(each, static_cast<PeopleDrafts&>(drafts));
    each_kept(each, static_cast<CarryingDrafts&>(drafts));
}

}  // namespace hemline
