// The edges of a roof as its lines have them, and which of them are which where
// the roof was worked out again with other readings.
#pragma once

#include <span>
#include <vector>

#include "engine/body/body.h"
#include "engine/body/inner_lines.h"

namespace hemline {

/// An edge by its sides, twice the same of an eave.
struct RoofStretch {
    std::size_t side = 0, other = 0;
    Space from, to;
};

std::vector<Space> places_of(const InnerLines& lines);
/// Of a body that stands alone: its sides, then its lines.
std::vector<RoofStretch> stretches_of(const InnerLines& lines, const std::vector<Space>& places);

/// Two eaves that a hair parts are one plane in the one roof and two in the
/// other: of all sides that are one plane in either, the first.
std::vector<std::size_t> one_plane_in_either(const std::vector<std::size_t>& one,
                                             const std::vector<std::size_t>& other);

/// The stretches between the planes of an edge.
struct Matches {
    std::vector<std::size_t> stretches;
    double expected = 0;  ///< the length of all edges between them
    std::size_t edges = 0;
};
/// Of each edge; `planes`: the first side of every side's plane, none where
/// sides are their own.
std::vector<Matches> matches_of(std::span<const BodyEdge> edges,
                                const std::vector<RoofStretch>& stretches,
                                const std::vector<std::size_t>& planes);

/// By how much the edge is longer or shorter there, nm. Of the stretches
/// between the same planes the nearest counts; where the one roof has it in two
/// and the other in one, all of them together.
double off_in(const std::vector<RoofStretch>& stretches, const BodyEdge& edge,
              const Matches& matches);

}  // namespace hemline
