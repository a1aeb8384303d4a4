// The pans of a plane between its seams: widths, lengths to order, heights at both sides, and the
// seams between them with their clips.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <utility>
#include <vector>

#include "engine/panels/clips.h"
#include "engine/panels/deck_pieces.h"
#include "engine/panels/pan_ends.h"
#include "engine/panels/seam_layout.h"

namespace hemline {

enum class PanKind : std::uint8_t {
    full,
    end,  ///< narrower than the module, at a square side
    cut,  ///< its foot or top is not level, or a corner is cut out of it
};

/// A pan, or one piece of it where a dormer or curb lies across.
struct LaidPan {
    int number = 0;  ///< 1…, from the left end of the eave
    int piece = 0;   ///< 1…, from the foot, where the pan is in several; else 0
    Length from, width;
    Length top_width;  ///< where it is another: an end pan beside a side that leans
    Length length;     ///< to order, of its longer side, up to 1/4 in
    Length exact;      ///< the same, not rounded
    PanKind kind = PanKind::full;
    std::pair<Length, Length> foot, top;  ///< on the deck, at its left side and its right
    std::optional<Length> blank;  ///< of the outermost pan at a square side: its greater width and
                                  ///< a turn-up; the other side keeps its seam leg
    DeckPiece flat;

    [[nodiscard]] std::pair<int, int> name() const { return {number, piece}; }
};

struct LaidSeam {
    Length at;
    Length length;              ///< on the deck, of all its stretches
    std::vector<Length> clips;  ///< up the slope, as the deck has it
};

/// Of every pan, from the left; of one in pieces, from the foot.
std::vector<LaidPan> laid_pans(const DeckPlane& plane, const SeamFrame& frame,
                               std::span<const Length> seams, const PanEnds& ends);

std::vector<LaidSeam> laid_seams(const DeckPlane& plane, std::span<const Length> seams,
                                 std::span<const LaidPan> pans, const ClipRules& rules);

}  // namespace hemline
