// What is half keyed in, screen by screen. A screen edits only its draft; going elsewhere lays all
// of it aside.
#pragma once

#include "field/state/card_draft.h"
#include "field/state/carrying_draft.h"
#include "field/state/device_draft.h"
#include "field/state/edges_draft.h"
#include "field/state/panels_draft.h"
#include "field/state/people_draft.h"
#include "field/state/reading_draft.h"
#include "field/state/roof_draft.h"
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
                RoofDrafts,
                RulesDrafts,
                PeopleDrafts,
                CarryingDrafts,
                PanelsDrafts,
                DeviceDrafts {};

}  // namespace hemline
