// What is said of other events: the fields, in the order they are saved.
#pragma once

#include "engine/record/field_parts.h"
#include "engine/record/record_facts.h"

namespace hemline {

template <class Bytes>
void fields(Bytes& bytes, Struck& fact) {
    fields(bytes, "target", fact.target);
    bytes.text("reason", fact.reason);
}

template <class Bytes>
void fields(Bytes& bytes, Thing& thing) {
    bytes.choice("about", thing.subject, Subject::place);
    bytes.text("about", thing.name);
    bytes.choice("about", thing.role, TrimRole::cleat);
    bytes.number("about", thing.piece);
    bytes.text("about", thing.step);
    bytes.text("about", thing.by);
}

template <class Bytes>
void fields(Bytes& bytes, Picked& fact) {
    fields(bytes, "picked", fact.chosen);
    fields(bytes, fact.about);
}

template <class Bytes>
void fields(Bytes& bytes, CopyNoted& fact) {
    fields(bytes, "number", fact.number);
    bytes.number("copies", fact.copies, std::int64_t{2}, std::int64_t{1'000'000});
}

template <class Bytes>
void fields(Bytes& bytes, StruckFor& fact) {
    fields(bytes, "target", fact.target);
    bytes.choice("reason", fact.reason, StrikeReason::disk_failed);
}
template <class Bytes>
void fields(Bytes& bytes, Unknown& fact) {
    bytes.rest(fact.payload);
}

}  // namespace hemline
