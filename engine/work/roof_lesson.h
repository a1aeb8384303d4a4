// What the readings of hips, valleys and ridges teach of the roof they lie on.
#pragma once

#include "engine/work/roof_body.h"

namespace hemline {

/// Where agreed readings of inner edges lie outside what the roof says, and one pitch or one side,
/// said otherwise, explains them all: which, and what to read again. Empty: nothing to say.
Text roof_lesson(const Job& job, const BodyOnJob& body);

}  // namespace hemline
