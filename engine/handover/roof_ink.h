// Ink of a roof's site drawing: lines by kind of edge, and letters, as elements of an SVG in mm.
#pragma once

#include <span>
#include <string>

#include "engine/body/moving_side.h"
#include "engine/roof/edge_kind.h"

namespace hemline {

/// Every kind that a roof's plan can have, in the order of its list.
std::span<const EdgeKind> drawn_kinds();

/// Each kind its own line, in gray too: thick or thin, dashed, double.
std::string edge_line(EdgeKind kind, PlanVector from, PlanVector to);

/// `more`: further attributes.
std::string page_text(PlanVector at, double high, const std::string& words,
                      const std::string& more = "");

/// About as wide as sans-serif letters of that height are.
double letters_wide(const std::string& text, double high);

/// With two decimals.
std::string page_figure(double value);

}  // namespace hemline
