// A piece on paper and for the shop: its title, the templates of its ends, its cut card.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/handover/template_page.h"
#include "engine/work/card.h"

namespace hemline {

/// "Edge A, piece 1 of 4, …", on a single line; begins with why it cannot be cut yet, if so.
std::string title_of(const Card& card, Marks marks, const PageWords& words = {});

/// The work at both ends, each with half an inch of plain metal past it.
std::vector<Drawing> end_drawings(const FlatPattern& pattern, const std::string& title, Marks marks,
                                  const PageWords& words = {});

/// The cut card as a printable HTML page: the length, what to take, the metal with its marks
/// numbered along the tape, and what to do at each; the waste side only where metal falls. Not to
/// scale, and the page says so. `pattern`: the flat metal, if there is a pattern.
std::string card_page(const Card& card, const std::optional<FlatPattern>& pattern, Marks marks,
                      const PaperHead& head, Paper paper, const PageWords& words = {});

}  // namespace hemline
