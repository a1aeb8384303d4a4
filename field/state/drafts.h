// What is half keyed in, screen by screen. A screen edits its own draft; going elsewhere drops all.
#pragma once

#include "field/state/card_draft.h"
#include "field/state/carrying_draft.h"
#include "field/state/device_draft.h"
#include "field/state/edges_draft.h"
#include "field/state/people_draft.h"
#include "field/state/reading_draft.h"
#include "field/state/rules_draft.h"
#include "field/state/section_draft.h"
#include "field/state/steps_draft.h"
#include "field/state/sticks_draft.h"

namespace hemline {

struct Drafts : ReadingDrafts,
                StepsDrafts,
                CardDrafts,
                SectionDrafts,
                SticksDrafts,
                EdgesDrafts,
                RulesDrafts,
                PeopleDrafts,
                CarryingDrafts,
                DeviceDrafts {};

}  // namespace hemline
