// Which edges of a job lie where on a roof that was worked out.
#pragma once

#include "engine/work/roof_body.h"

namespace hemline {

/// Tells each of the roof's edges which edges of the job lie there, and which have no place on it.
void find_places(const Job& job, BodyOnJob& roof);

}  // namespace hemline
