#include "engine/roof/walk_rings.h"

#include "engine/roof/edge_shape.h"

namespace hemline {

namespace {

bool comes_full_circle(std::span<const WalkedEdge> edges, Tape tape) {
    Angle turned;
    for (const WalkSide& side : lay_walk(edges, tape).sides) {
        if (!side.after.inside) {
            return false;
        }
        turned += half_turn - *side.after.inside;
    }
    return turned == full_turn;
}

bool meet_at_corner(const Edge& before, const Edge& after) {
    const bool corner = before.right == End::corner_out || before.right == End::corner_in;
    return corner && before.right == after.left && !is_sloped(before.kind) &&
           !is_sloped(after.kind);
}

}  // namespace

std::size_t full_circle(std::span<const WalkedEdge> edges, Tape tape) {
    for (std::size_t n = edges.size(); n > 2; --n) {
        if (comes_full_circle(edges.first(n), tape)) {
            return n;
        }
    }
    return 0;
}

std::vector<WalkRing> rings_of(std::span<const WalkedEdge> edges, Tape tape) {
    std::vector<WalkedEdge> walked;
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < edges.size(); ++i) {
        if (is_around_house(edges[i].edge.kind)) {
            walked.push_back(edges[i]);
            places.push_back(i);
        }
    }
    std::vector<WalkRing> rings;
    for (std::size_t from = 0; from < walked.size();) {
        const std::size_t circle = full_circle(std::span(walked).subspan(from), tape);
        const std::size_t to = circle == 0 ? walked.size() : from + circle;
        WalkRing ring;
        ring.closed = circle != 0;
        for (; from < to; ++from) {
            ring.edges.push_back(places[from]);
        }
        rings.push_back(std::move(ring));
    }
    return rings;
}

std::vector<WalkPair> corner_pairs(std::span<const WalkedEdge> edges, Tape tape) {
    std::vector<WalkPair> pairs;
    for (const WalkRing& ring : rings_of(edges, tape)) {
        for (std::size_t i = 0; i < ring.edges.size(); ++i) {
            const bool last = i + 1 == ring.edges.size();
            if (last && !ring.closed) {
                continue;
            }
            const WalkPair pair{ring.edges[i], ring.edges[last ? 0 : i + 1]};
            if (meet_at_corner(edges[pair.before].edge, edges[pair.after].edge)) {
                pairs.push_back(pair);
            }
        }
    }
    return pairs;
}

}  // namespace hemline
