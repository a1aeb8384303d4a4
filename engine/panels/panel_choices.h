// The layouts of a plane that are worth choosing side by side.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "engine/panels/panel_layout.h"

namespace hemline {

/// What a layout is the best for.
enum class BestFor : std::uint8_t {
    least_shift,  ///< as it is laid where nobody chooses
    looks,        ///< the fewest end pans under half a module, then the widest narrow piece
    metal,        ///< what is ordered, pairs from one length counted
    cut_pans,     ///< the fewest
};

struct PanelChoice {
    ChosenSeams seams;
    std::vector<BestFor> best_for;
    std::int64_t pans = 0, cut_pans = 0, narrow_ends = 0;
    std::optional<Length> left_end, right_end;  ///< first and last pan beside a square side
    Length narrowest;                           ///< of ends and pieces at corners
    Length metal;                               ///< running length to order
    std::vector<KeepOff> staying;
};

struct PanelChoices {
    std::int64_t tried = 0;  ///< layouts: every shift on the grid, and with one pan more
    std::vector<PanelChoice> choices;
};

/// Of each sense the best that there is, proved by trying every one; fewer conflicts go before all
/// but for the least shift, which takes no pan more. In the order of BestFor, none twice. Empty
/// where a plane has no seam. Problem: as lay_panels().
Result<PanelChoices> panel_choices(const DeckPlane& plane, const PanelJob& job,
                                   std::span<const Penetration> through = {});

}  // namespace hemline
