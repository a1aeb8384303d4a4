// The fields of every event, in the order they are saved: read this, and the list of each family
// (job_fields.h and its neighbors), beside docs/journal_format.md. One list serves writing and
// reading, so the two cannot differ.
//
//   payload = header_fields + fields of the fact
//
// A kind's number and its list never change once released: new fields are a new kind. A list says
// in the call how many it may hold: more is refused by its name, before it is kept or when it is
// read. `Bytes` is the writer or the reader of event_bytes.cpp.
#pragma once

#include <algorithm>
#include <array>
#include <cstdint>
#include <variant>

#include "engine/record/body_fields.h"
#include "engine/record/edge_fields.h"
#include "engine/record/event.h"
#include "engine/record/gate_fields.h"
#include "engine/record/job_fields.h"
#include "engine/record/metal_fields.h"
#include "engine/record/record_fields.h"
#include "engine/record/step_fields.h"

namespace hemline {

/// The number of a kind; for a kind that this program does not know, the number that was read.
struct KindNumber {
    template <class One>
    std::uint16_t operator()(const One& /*fact*/) const {
        return One::kind_number;
    }
    std::uint16_t operator()(const Unknown& fact) const { return fact.kind; }
};

/// An empty fact of that kind; Unknown when this program has no such kind.
template <std::size_t place = 0>
Fact blank_fact(std::uint16_t kind) {
    if constexpr (place == Fact::kinds) {
        return Unknown{kind, {}};
    } else {
        using One = std::variant_alternative_t<place, AnyFact>;
        if constexpr (!std::is_same_v<One, Unknown>) {
            if (One::kind_number == kind) {
                return One{};
            }
        }
        return blank_fact<place + 1>(kind);
    }
}

/// What every event has, of unknown kinds too. Version 2 adds its moment, and allows later times
/// than version 1, so that an event can follow any event of version 1.
template <class Bytes>
void header_fields(Bytes& bytes, Event& event) {
    fields(bytes, "event id", event.id);
    bytes.number("time", event.when.wall_ms, std::int64_t{0},
                 event.moment ? time_last.wall_ms : wall_ms_most);
    bytes.number("time", event.when.counter);
    if (event.moment) {
        bytes.number("clock", event.moment->clock.ms, std::int64_t{0}, wall_ms_most);
        maybe(bytes, "after", event.moment->after,
              [&](EventId& id) { fields(bytes, "after", id); });
    }
    bytes.text("by", event.by);
    bytes.count("supersedes", event.supersedes, sizeof(std::uint64_t) + sizeof(std::uint32_t),
                AtMost<supersedes_most>());
    for (EventId& id : event.supersedes) {
        fields(bytes, "supersedes", id);
    }
}

template <class Bytes>
void all_fields(Bytes& bytes, Event& event) {
    header_fields(bytes, event);
    std::visit([&](auto& fact) { fields(bytes, fact); }, event.fact);
}

}  // namespace hemline
