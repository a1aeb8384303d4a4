// Answers to steps: the fields, in the order they are saved.
#pragma once

#include "engine/record/field_parts.h"
#include "engine/record/step_facts.h"

namespace hemline {

/// As many as there are findings.
constexpr std::size_t event_findings_most = 4;

template <class Bytes>
void fields(Bytes& bytes, StepDone& fact) {
    bytes.text("edge", fact.edge);
    bytes.text("step", fact.step);
    bytes.number("piece", fact.piece);
    bytes.choice("answer", fact.answer.kind, AnswerKind::seen);
    bytes.length("answer", fact.answer.length);
    bytes.number("answer", fact.answer.count);
    bytes.text("answer", fact.answer.seen);
    bytes.text("exception", fact.exception);
    bytes.text("exception by", fact.exception_by);
}
template <class Bytes>
void fields(Bytes& bytes, PracticeLimits& limits) {
    const auto length = [&](Length& value) { bytes.length("limit", value); };
    const auto count = [&](std::int64_t& value) {
        bytes.number("limit", value, std::int64_t{0}, count_most);
    };
    bytes.text("rule", limits.rule);
    maybe(bytes, "limit", limits.length_least, length);
    maybe(bytes, "limit", limits.length_most, length);
    maybe(bytes, "limit", limits.count_least, count);
    maybe(bytes, "limit", limits.count_most, count);
    bytes.count("findings", limits.findings, 1, AtMost<event_findings_most>());
    for (Finding& finding : limits.findings) {
        bytes.choice("finding", finding, Finding::right);
    }
}
template <class Bytes>
void fields(Bytes& bytes, StepAnswered& fact) {
    bytes.text("edge", fact.edge);
    bytes.text("step", fact.step);
    bytes.number("piece", fact.piece);
    bytes.choice("answer", fact.kind, AnswerKind::seen);
    bytes.length("answer", fact.length);
    bytes.number("answer", fact.count, std::int64_t{0}, count_most);
    bytes.choice("answer", fact.finding, Finding::right);
    fields(bytes, fact.limits);
    bytes.text("accepted by", fact.accepted_by);
}
template <class Bytes>
void fields(Bytes& bytes, StepLifted& fact) {
    bytes.text("edge", fact.edge);
    bytes.text("step", fact.step);
    bytes.text("reason", fact.reason);
    bytes.text("lifted by", fact.lifted_by);
}

}  // namespace hemline
