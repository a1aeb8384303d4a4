#include "engine/body/stretches.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace hemline {

namespace {

using SidePair = std::pair<std::size_t, std::size_t>;

}  // namespace

std::vector<Space> places_of(const InnerLines& lines) {
    std::vector<Space> places;
    for (const LinePlace& place : lines.places) {
        places.push_back({place.at.x, place.at.y, place.height});
    }
    return places;
}

std::vector<RoofStretch> stretches_of(const InnerLines& lines, const std::vector<Space>& places) {
    std::vector<RoofStretch> made;
    const std::size_t n = lines.plane_of.size();
    made.reserve(n + lines.lines.size());
    for (std::size_t i = 0; i < n; ++i) {
        made.push_back({i, i, places[i], places[(i + 1) % n]});
    }
    for (const InnerLine& line : lines.lines) {
        const auto [first, second] = std::minmax(line.left, line.right);
        made.push_back({first, second, places[line.from], places[line.to]});
    }
    return made;
}

std::vector<std::size_t> one_plane_in_either(const std::vector<std::size_t>& one,
                                             const std::vector<std::size_t>& other) {
    std::vector<std::size_t> first = one;
    const auto root = [&](std::size_t side) {
        while (side < first.size() && first[side] != side) {
            side = first[side];
        }
        return side;
    };
    for (std::size_t side = 0; side < std::min(first.size(), other.size()); ++side) {
        const auto [low, high] = std::minmax({root(side), root(other[side])});
        first[high] = low;
    }
    for (std::size_t& side : first) {
        side = root(side);
    }
    return first;
}

std::vector<Matches> matches_of(std::span<const BodyEdge> edges,
                                const std::vector<RoofStretch>& stretches,
                                const std::vector<std::size_t>& planes) {
    const auto pair_of = [&](std::size_t side, std::size_t other) {
        return side < planes.size() && other < planes.size()
                   ? SidePair(std::minmax({planes[side], planes[other]}))
                   : SidePair(side, other);
    };
    std::map<SidePair, Matches> by_pair;
    for (std::size_t i = 0; i < stretches.size(); ++i) {
        by_pair[pair_of(stretches[i].side, stretches[i].other)].stretches.push_back(i);
    }
    for (const BodyEdge& edge : edges) {
        Matches& here = by_pair[pair_of(edge.sides.front(), edge.sides.back())];
        here.expected += edge.length;
        ++here.edges;
    }
    std::vector<Matches> of_edges;
    for (const BodyEdge& edge : edges) {
        of_edges.push_back(by_pair[pair_of(edge.sides.front(), edge.sides.back())]);
    }
    return of_edges;
}

double off_in(const std::vector<RoofStretch>& stretches, const BodyEdge& edge,
              const Matches& matches) {
    if (matches.stretches.size() == 1 && matches.edges == 1) {
        const RoofStretch& same = stretches[matches.stretches.front()];
        return std::abs(length_of(same.to - same.from) - edge.length);
    }
    const Space middle = (edge.from + edge.to) * 0.5;
    double length = 0, nearest = 0, together = 0;
    for (const std::size_t i : matches.stretches) {
        const RoofStretch& other = stretches[i];
        const double own = length_of(other.to - other.from);
        const double away = length_of((other.from + other.to) * 0.5 - middle);
        together += own;
        if (length == 0 || away < nearest) {
            length = own;
            nearest = away;
        }
    }
    const bool is_otherwise_parted = matches.stretches.size() != matches.edges;
    return std::abs(length > 0 && is_otherwise_parted ? together - matches.expected
                                                      : length - edge.length);
}

}  // namespace hemline
