// Readings from a list that was pasted: a line after the other comes into the fields, to be looked
// at and kept. A line is a length ("31' 7 5/8\""), or an edge, a tab and a length.
#pragma once

#include "field/state/reading_draft.h"
#include "field/state/state.h"
#include "field/state/wish.h"
#include "field/touch/ui.h"

namespace hemline {

/// Takes what was pasted, puts the first line into the empty fields, and goes to the edge that it
/// names; nothing: it is about this edge, or cannot be read.
Wished take_pasted(Ui& ui, const State& state, ReadingDrafts& drafts);
[[nodiscard]] inline bool has_pasted(const PastedDraft& pasted) { return !pasted.lines.empty(); }
/// The line as it was written and, if it cannot be read, why; returns the height used.
float draw_pasted(Ui& ui, const State& state, const PastedDraft& pasted, Box box);
/// The first line is done.
void drop_line(PastedDraft& pasted);
/// Where the next line is kept; none: there is none.
std::optional<Where> next_pasted(const State& state, const PastedDraft& pasted);

}  // namespace hemline
