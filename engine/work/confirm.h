// Fewer answers for who knows the work: what is done in one go is confirmed in one go, each step
// with the value that was asked. What only a measurement tells stays a step of its own.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "engine/work/procedure.h"

namespace hemline {

struct Card;

/// What the step is answered with where all is as asked: done, seen good, the count planned, the
/// lap to its line; none where it is only known once measured, or where somebody else is asked.
std::optional<Answer> as_asked(const Step& step);

/// The next step for an installer: as next_step(), but of a wrap or cleat all pieces are cut before
/// the first is set.
std::optional<std::size_t> next_for_installer(const std::vector<Step>& steps);

/// The steps that one confirmation answers beside `next`, `next` among them, in order: of a piece
/// of trim, of all pieces of a wrap or cleat, or of the edge up to its next piece, but for what is
/// looked at before all else and what the foreman is asked. Empty where that step is to be answered
/// by itself.
std::vector<std::size_t> confirmed_with(const std::vector<Step>& steps, std::size_t next);

/// Whether two pieces of a run are cut in one go, each from the end of a stick of its own: the same
/// length with the same marks, or pieces of cleat, which have no mark but their length.
bool are_cut_in_one_go(const Card& one, const Card& other);

}  // namespace hemline
