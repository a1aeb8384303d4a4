// The flat strip a section is folded from: its width, and where the brake bends it.
//
//    0            mark 1          mark 2    mark 3   girth
//    |---flange-----|-----face------|--kick---|--hem--|      one continuous tape reading
//
//   A mark is the middle of its bend. A leg's width runs to the mold lines, so the bend takes a
//   setback from both its legs and gives the bend allowance back.
#pragma once

#include <vector>

#include "engine/roof/fold_angle.h"
#include "engine/trim/section.h"

namespace hemline {

/// What a fold of the metal needs to know of the roof at the edge; 6/12 where no pitch was read.
FoldAsked roof_at(const Edge& edge);

/// Signed bends of the section on that roof (`roof.kind` is ignored: each bend names its kind), in
/// degrees, one between each two legs: + away from the upper face. Problem: fold_of()'s.
Result<std::vector<double>> bends_of(const Section& section, FoldAsked roof);

/// Metal that a bend takes on its middle line: (0.01743·R + 0.0078·T)·N, N in degrees. All lengths
/// in the same unit. Source: the FAA's aviation maintenance handbook, form M.
double bend_allowance(double radius, double thickness, double degrees);
/// From mold line to bend tangent: tan(N/2)·(R + T). Source: the same.
double setback(double radius, double thickness, double degrees);

struct Blank {
    Length legs;                ///< sum of the legs' widths, without bend allowance
    Length girth;               ///< width of the flat strip
    std::vector<Length> marks;  ///< middle of each bend, from the first leg's free edge
    std::vector<Length> flats;  ///< straight metal of each leg, between the bends' tangents
};

/// The blank under these bends, to the nanometer. A fold of 180° (a hem) adds the hem's width and
/// no more (single hem: Navy Steelworker vol. 2; open and tear-drop: common practice, no published
/// source). Problem: a leg that is used up by its bends.
Result<Blank> blank_of(const Section& section, const std::vector<double>& bends);

}  // namespace hemline
