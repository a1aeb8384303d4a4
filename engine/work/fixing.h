// Fastening a run: where its screws go, how many, and how much sealant the laps take.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "engine/trim/catalogue.h"

namespace hemline {

struct EndMetal;
struct PlannedPiece;
struct Practice;
struct Run;

/// What must stay free of screws at a piece's end: a lap, or a tab and what runs past the edge with
/// it.
struct FreeEnd {
    Length length;
    bool laps = false;
    Length metal =
        {};  ///< no screw nearer to the end than this: its head would lie in metal cut away
};

/// Half the head of a screw; common practice for a pancake head, no published source.
constexpr Length screw_head_radius = sixteenths(4);
/// Half the width of a clip; common practice for clips 2 in wide, no published source.
constexpr Length clip_half_width = inches(1);
/// Held by clips over its hems, never by screws: a fastener in the waterway leaks.
bool clips_hems(EdgeKind kind, TrimRole role);

/// The line of the screws on a leg of that width: this far from its outer edge, on 1/8 in; in the
/// middle of a wrap or cleat. Common practice, no published source.
constexpr double screw_line_share = 0.28;
Length screw_line_of(Length leg);

/// What must stay free of screws or clips at the end of an edge: of a trim whose legs are cut along
/// a miter, all that the miter takes where they go.
FreeEnd free_end(const EndMetal& end, EdgeKind kind, const Trim& trim, const Practice& practice);

/// Screws of a piece `cut` long, from its left end: a margin in, then every spacing, the last a
/// margin before the end; none where the whole head does not lie in metal; a last gap under a
/// quarter of the spacing is shared with the gap before it; a single screw in the middle where
/// there is no room. None in a lap (common practice: the joint must move), none in a tab. Beside a
/// lap the margin gets smaller, down to 1/2 in, so that the gap across the lap keeps to the
/// spacing: laps up to spacing − 1 in.
std::vector<Length> screws_of(Length cut, FreeEnd left, FreeEnd right, const Practice& practice);

/// The free ends of a piece of the run, from the ends of the edge.
struct FreeEnds {
    FreeEnd left, right;
};
FreeEnds free_ends_of(const Run& run, const PlannedPiece& piece, const Edge& edge, const Trim& trim,
                      const Practice& practice);

/// A sidewall's flashing over a channel: its leg that goes down over it, the kick, is riveted to
/// it.
bool is_riveted_down(EdgeKind kind, const Trim& trim);

/// The legs that are fastened, this roof's first: both of a ridge, hip and valley, the upper of a
/// transition, else one, so that the roof can move under the other; none where the trim hangs in
/// hems alone (common practice, no published source).
std::vector<LegName> fastened_legs(EdgeKind kind, const Trim& trim);

/// What a leg's screws are placed by.
enum class ScrewedTo : std::uint8_t {
    deck,      ///< every screw_spacing: deck, cleat, fascia or channel
    closures,  ///< two a pan, from its seam
};
ScrewedTo screwed_to(EdgeKind kind, TrimRole role);

/// The fasteners along a leg, from the left end of the metal.
struct ScrewLine {
    LegName leg = LegName::flange;
    std::vector<Length> at;

    bool operator==(const ScrewLine&) const = default;
};

/// The lines of a piece of the run. What stands on closures is screwed twice a pan, a quarter of it
/// from each seam along the edge, none in a lap or in metal cut away; on a hip each leg by its own
/// roof. Seams are counted by the module from the edge's left end. `metal_left`: the end of the
/// edge toward which the metal's left end lies.
std::vector<ScrewLine> screw_lines_of(const Run& run, const PlannedPiece& piece, const Edge& edge,
                                      const Trim& trim, const Practice& practice,
                                      Side metal_left = Side::left);
std::int64_t count_of(const std::vector<ScrewLine>& lines);

/// How far below the trim's bend the cleat's upper edge lies, so that the trim's hem hooks on it
/// with 1/16 in to spare: trim face − cleat face − 1/16 in (computed). Below the deck's edge where
/// the trim's bend stands as high as the seams. None where the face is too short.
std::optional<Length> cleat_line(const Trim& trim, const Trim& cleat, const Practice& practice);

/// Whether the run's laps get sealant: the main trim's do; a wrap's laps lie dry behind the trim,
/// and a cleat has none.
bool is_sealed(const Run& run);

/// Bead lines across the lap, from the underlap's end: two, `bead_gap` apart about its middle; in a
/// lap too short for that, at its thirds.
std::vector<Length> bead_offsets(Length lap, const Practice& practice);

/// The length of the edge that the run covers.
Length covered_by(const Run& run);

struct FixingTally {
    std::int64_t screws = 0;
    std::int64_t laps = 0;
    Length bead;            ///< total length of bead
    double cartridges = 0;  ///< of 10.1 US fl oz, round bead: volume decides
};

/// Totals of a run. A bead crosses flange and face, and the leg that
/// goes down over a channel.
FixingTally fixing_of(const Run& run, const Edge& edge, const Trim& trim, const Practice& practice);

}  // namespace hemline
