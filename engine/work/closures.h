// Closures (zees) that fill the pans between seams under a ridge cap, hip cap, headwall flashing,
// transition flashing or high eave trim.
//
//        top leg                    seam   web    seam
//        ________                    |_______________|
//       |  web: as high as a seam    |ear         ear|   clear = module − seam_foot; on a hip
//   ____|                                               both are longer, seen along its line
//   bottom leg
#pragma once

#include <cstdint>
#include <vector>

#include "engine/roof/edge.h"

namespace hemline {

struct Plan;
struct Practice;

/// The closures of one roof that ends at the edge.
struct ClosureSide {
    std::optional<Slope> pitch;  ///< of that roof, where it is known
    std::int64_t count = 0;      ///< pans that touch the line
    Length apart;                ///< seam to seam along the line
    Length blank;                ///< cut length: the clear pan along the line, and both ears
    double ear_degrees = 90;     ///< between web and seam at one end; at the other 180° − this
};

struct Closures {
    std::int64_t count = 0;  ///< on all sides
    std::vector<ClosureSide> sides;
    Length web, leg, ear;     ///< the legs are cut back by the ear at each end
    Length girth;             ///< of sharp bends: web and both legs
    std::int64_t sticks = 0;  ///< of practice.stock, cut one after another
};

/// None for a kind that has no closures. Pans are counted by the module along the line, on each
/// roof apart: a hip between two pitches, or over a corner that is not square, has more on the one
/// than on the other, and none where its seams run along it. Common practice, no published source.
Closures closures_of(const Edge& edge, Length length, const Practice& practice);

/// The same, counted and sized from the pans of all planes that end at the edge, once they are
/// laid.
Closures closures_on(const Edge& edge, Length length, const Practice& practice, const Plan& plan);

/// What holds each closure: sealed rivets into its pan, or screws to the deck on the fixed line
/// (common practice, no published source).
constexpr std::int64_t closure_fasteners = 3;

/// Whether the panels that end at such an edge are pinned there: closures are screwed through to
/// the deck on the fixed line alone.
bool is_pinned_at(EdgeKind kind, const Practice& practice);

/// How many and how long: "34 of 17 in", "9 of 30 3/8 in on the 8/12 roof and 11 of …".
Text count_words(const Closures& closures);
/// "17 in, web 1 1/2 in, legs 1 in, ears 3/4 in", or each side's count, length and ears.
Text bend_words(const Closures& closures);

}  // namespace hemline
