// The sides of a body's walk, as they are said: the building on the left, one eave height.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/body/moving_side.h"
#include "engine/measure/slope.h"
#include "engine/measure/tape.h"
#include "engine/roof/hip.h"
#include "engine/words/result_declared.h"

namespace hemline {

/// The numbers are saved (BodyWalked) and never reused.
enum class SideKind : std::uint8_t {
    eave,
    transition,  ///< the top of a lower roof, on which another body's eave lies; else as an eave
    gable,
    wall,
    high_eave,
    open,  ///< upright, and no edge
};

std::string_view word_of(SideKind);
std::optional<SideKind> side_kind_of(std::string_view word);
/// Gable, wall, high eave, open: it stands while the others move inward.
bool is_upright(SideKind);

struct BodySide {
    std::string id;
    SideKind kind = SideKind::eave;
    std::optional<Length> length;  ///< in plan; none: worked out where the closing settles it
    Angle corner = square_out;     ///< inside, after this side
    std::optional<Slope> pitch;    ///< of an eave or a transition
    std::string meets = {};        ///< of a transition: the other body's eave that lies on it
};
/// A transition on which an eave lies is the top of its roof, and stands too.
bool is_upright(const BodySide& side);

/// The walk, closed as an outline is: adjusted for working out and drawing, never for cutting.
struct ClosedSides {
    bool closes = false;
    Length miss;
    std::vector<MovingSide> sides;  ///< in nanometers; forced to close where it does not
};

/// Problem, naming sides: turns that are not 360°, lengths missing that nothing settles, an eave
/// without a pitch, a corner below 20° or past 340°, more than 60 sides.
Result<ClosedSides> close_sides(std::span<const BodySide> sides, Tape tape);

}  // namespace hemline
