// The day's safety questions: the fields, in the order they are saved.
#pragma once

#include "engine/record/field_parts.h"
#include "engine/record/gate_facts.h"

namespace hemline {

/// Many times the questions there are.
constexpr std::size_t event_found_most = 64;

template <class Bytes>
void fields(Bytes& bytes, GateAnswered& fact) {
    bytes.text("edge", fact.edge);
    bytes.count("found", fact.found, 2, AtMost<event_found_most>());
    for (GateFound& found : fact.found) {
        bytes.choice("check", found.check, gate_checks.back());
        bytes.choice("finding", found.finding, Finding::bad);
    }
    bytes.text("watcher", fact.watcher);
    bytes.text("hospital", fact.hospital);
}
template <class Bytes>
void fields(Bytes& bytes, GateLifted& fact) {
    bytes.text("edge", fact.edge);
    bytes.count("noes", fact.noes, sizeof(std::uint64_t) + sizeof(std::uint32_t),
                AtMost<event_noes_most>());
    for (EventId& no : fact.noes) {
        fields(bytes, "no", no);
    }
    bytes.text("reason", fact.reason);
}

}  // namespace hemline
