// Drafts of the roof's drawing, and of the walk round a roof: the side that is keyed in.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "engine/body/body_sides.h"
#include "field/state/length_draft.h"
#include "field/state/reading_draft.h"

namespace hemline {

/// The drawing looked at closer: about a place along an edge, and moved from there by a finger.
struct CloserLook {
    int times = 0;      ///< each makes it larger; 0: the whole roof
    std::string about;  ///< an edge
    float along = 0;    ///< part of that edge
    float x_mm = 0, y_mm = 0;
};

struct RoofDraft {
    CloserLook closer, if_closer;   ///< and what it becomes by the next touch on "closer"
    std::vector<std::string> near;  ///< edges near a touch that may have meant any of them
    float drag_mm = 0;  ///< sideways, since it was last seen from above: it is turned so far
};

/// What is keyed in now.
enum class WalkAsks : std::uint8_t { length, degrees, pitch, host, along, up, rise };
enum class CornerAsked : std::uint8_t { outside, inside, other };

/// Where a body lies on another roof.
struct HostDraft {
    bool runs_in = false;     ///< its sides go on under that roof; else it stands on it,
    bool lies_under = false;  ///< or has its eave on a transition
    std::string eave;         ///< empty: it stands by itself
    LengthDraft along, up, rise;
    bool is_outside = false, is_lower = false;  ///< up and rise go the other way
};

struct WalkDraft {
    WalkAsks asks = WalkAsks::length;
    std::optional<SideKind> kind;  ///< none: as the side before
    LengthDraft length;
    CornerAsked corner = CornerAsked::outside;
    std::string degrees;  ///< of another corner
    PitchDraft pitch;
    HostDraft host;
};

constexpr std::size_t shape_lengths_most = 3;

/// A shape: which of them, its lengths in turn, then the pitch.
struct ShapeDraft {
    int shape = -1;  ///< none yet
    int asked = 0;
    std::array<LengthDraft, shape_lengths_most> lengths;
    PitchDraft pitch;
};

struct RoofDrafts {
    RoofDraft roof;
    WalkDraft walk;
    ShapeDraft shape;
};

}  // namespace hemline
