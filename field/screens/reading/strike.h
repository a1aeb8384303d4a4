// Crosses out a reading: any of them, the one in doubt first.
#pragma once

#include <vector>

#include "engine/record/job.h"
#include "field/screens/page/frame.h"
#include "field/state/reading_draft.h"

namespace hemline {

/// In the order taken; struck ones left out.
std::vector<RecordedReading> standing_readings(const EdgeWork& work, ReadingOf of);

/// At least one reading stands.
Wished draw_strike(Ui& ui, const State& state, const EdgeWork& work, ReadingDraft& draft);

}  // namespace hemline
