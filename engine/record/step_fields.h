// Answers to steps: the fields, in the order they are saved.
#pragma once

#include "engine/record/field_parts.h"
#include "engine/record/step_facts.h"

namespace hemline {

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

}  // namespace hemline
