#include "engine/panels/deck_plane.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "engine/quantity/angle.h"

namespace hemline {

namespace {

/// A bound belongs to the edge that it lies on, within this.
constexpr double on_edge_nm = 1e6;

double distance_to(const BodyEdge& edge, const Space& place) {
    const Space along = edge.to - edge.from;
    const double length = dot(along, along);
    const double share =
        length > 0 ? std::clamp(dot(place - edge.from, along) / length, 0.0, 1.0) : 0;
    return length_of(place - (edge.from + along * share));
}

const BodyEdge* edge_at(const Roof& roof, const BodyPlane& plane, const Space& place) {
    const BodyEdge* nearest = nullptr;
    double least = on_edge_nm;
    for (const BodyEdge& edge : roof.edges) {
        const bool bounds =
            std::find(edge.planes.begin(), edge.planes.end(), plane.side) != edge.planes.end();
        const double distance = bounds ? distance_to(edge, place) : least;
        if (distance < least) {
            least = distance;
            nearest = &edge;
        }
    }
    return nearest;
}

/// From the roof's plan to the deck.
struct OnDeck {
    PlanVector origin, along;
    double stretch = 1;  ///< 1/cos θ

    [[nodiscard]] PlanVector operator()(const Space& place) const {
        const PlanVector from = PlanVector{place.x, place.y} - origin;
        return {dot(from, along), turn(along, from) * stretch};
    }
};

void add_bounds(DeckPlane& deck, const Roof& roof, const BodyPlane& plane,
                const std::vector<Space>& walk, const OnDeck& on_deck) {
    for (std::size_t i = 0; i < walk.size(); ++i) {
        const Space &from = walk[i], &to = walk[(i + 1) % walk.size()];
        const BodyEdge* const edge = edge_at(roof, plane, (from + to) * 0.5);
        DeckBound bound{{}, {}, on_deck(from), on_deck(to)};
        if (edge) {
            bound.kind = edge->kind;
            bound.edge = edge->id;
        }
        deck.bounds.push_back(std::move(bound));
    }
}

/// x from the eave's left end, whole, and one x for what is on one line up the slope.
void put_in_line(DeckPlane& deck) {
    double eave = std::numeric_limits<double>::infinity();
    std::vector<double*> all;
    for (DeckBound& bound : deck.bounds) {
        all.insert(all.end(), {&bound.from.x, &bound.to.x});
        if (bound.kind == EdgeKind::eave) {
            eave = std::min({eave, bound.from.x, bound.to.x});
        }
    }
    std::sort(all.begin(), all.end(), [](const double* a, const double* b) { return *a < *b; });
    const double begin = std::isfinite(eave) ? eave : *all.front();
    double last = -std::numeric_limits<double>::infinity();
    for (double* const x : all) {
        const double whole = std::round(*x - begin);
        last = whole - last < same_place_nm ? last : whole;
        *x = last;
    }
    deck.origin = deck.origin + deck.along * begin;
    deck.left = *all.front();
    deck.right = *all.back();
}

}  // namespace

PlanVector in_plan(const DeckPlane& plane, PlanVector on_deck) {
    const PlanVector up{-plane.along.y, plane.along.x};
    return plane.origin + plane.along * on_deck.x + up * (on_deck.y / plane.stretch);
}

DeckPlane deck_plane(const Roof& roof, std::span<const RoofBody> bodies, const BodyPlane& plane) {
    const BodySide& side = *sides_of(bodies)[plane.side];
    const LaidSide& eave = roof.walk[plane.side];
    const PlanVector way{eave.to.x - eave.from.x, eave.to.y - eave.from.y};
    const OnDeck on_deck{{eave.from.x, eave.from.y},
                         way * (1 / length_of(way)),
                         1 / std::cos(radians_of(degrees_of(*side.pitch)))};
    DeckPlane deck;
    deck.name = side.id;
    deck.origin = on_deck.origin;
    deck.along = on_deck.along;
    deck.stretch = on_deck.stretch;
    for (const auto& walk : plane.pieces) {
        add_bounds(deck, roof, plane, walk, on_deck);
    }
    for (const auto& walk : plane.holes) {
        add_bounds(deck, roof, plane, walk, on_deck);
    }
    put_in_line(deck);
    for (const DeckBound& bound : deck.bounds) {
        deck.top = std::max(deck.top, bound.to.y);
    }
    return deck;
}

}  // namespace hemline
