// The day's safety questions as rows: each thing that is looked at with its own yes and no.
#pragma once

#include <optional>

#include "engine/record/said_values.h"
#include "engine/work/wind.h"
#include "field/state/people_draft.h"
#include "field/touch/ui.h"

namespace hemline {

constexpr char said_yes = 'y', said_no = 'n';
/// One of them, or anything else for not answered.
char answer_to(const GateDraft& draft, GateCheck check);

/// In a list that scrolls, in two columns where there is room. `sheet`: what is carried there.
void draw_checks(Ui& ui, const std::optional<Sheet>& sheet, GateDraft& draft, Box body);

}  // namespace hemline
