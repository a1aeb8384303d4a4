#include "engine/body/end_words.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace hemline {

namespace {

bool is_foot(EdgeKind kind) { return kind == EdgeKind::eave || kind == EdgeKind::transition; }
bool is_wall(EdgeKind kind) {
    return kind == EdgeKind::sidewall || kind == EdgeKind::headwall || kind == EdgeKind::curb_head;
}

class EndWords {
  public:
    EndWords(const std::vector<WordedEdge>& edges, const std::vector<WalkedCorner>& corners,
             double near)
        : edges_(edges), corners_(corners), near_(near) {}

    [[nodiscard]] End at(const BodyEdge& edge, const Space& place, Side side) const {
        const KindOfEdge& facts = facts_of(edge.kind);
        const auto& can = side == Side::left ? facts.left : facts.right;
        const bool top = side == Side::right && facts.lies == Lies::sloped;
        for (const End end : met_at(edge, place, top)) {
            if (std::find(can.begin(), can.end(), end) != can.end()) {
                return end;
            }
        }
        return End::open;
    }

  private:
    [[nodiscard]] bool same(const Space& a, const Space& b) const {
        return std::abs(a.x - b.x) < near_ && length_of(a - b) < near_;
    }

    /// Which kinds of other edges end there.
    [[nodiscard]] std::vector<EdgeKind> kinds_at(const BodyEdge& edge, const Space& place) const {
        std::vector<EdgeKind> kinds;
        for (const WordedEdge& one : edges_) {
            const BodyEdge& other = one.edge;
            if ((same(other.from, place) || same(other.to, place)) &&
                !(other.sides == edge.sides && same(other.from, edge.from) &&
                  same(other.to, edge.to))) {
                kinds.push_back(other.kind);
            }
        }
        return kinds;
    }

    /// An eave is what an edge begins at; at its top it counts last.
    [[nodiscard]] std::vector<End> met_at(const BodyEdge& edge, const Space& place,
                                          bool top) const {
        const std::vector<EdgeKind> kinds = kinds_at(edge, place);
        const auto any = [&](const auto& which) {
            return std::any_of(kinds.begin(), kinds.end(), which);
        };
        std::vector<End> met;
        for (const WalkedCorner& corner : corners_) {
            if (is_wall(edge.kind) && any(is_wall) &&
                std::hypot(corner.at.x - place.x, corner.at.y - place.y) < near_) {
                met.push_back(corner.inside < half_turn ? End::corner_out : End::corner_in);
            }
        }
        if (!top && any(is_foot)) {
            met.push_back(is_foot(edge.kind) ? End::corner_in : End::eave);
        }
        constexpr std::array<std::pair<EdgeKind, End>, 6> first_of = {
            {{EdgeKind::ridge, End::ridge},
             {EdgeKind::hip, End::hip},
             {EdgeKind::valley, End::valley},
             {EdgeKind::curb_head, End::wall},
             {EdgeKind::gable, End::gable},
             {EdgeKind::high_eave, End::eave}}};
        for (const auto& [kind, end] : first_of) {
            const bool is_a_wall = kind == EdgeKind::curb_head;
            if (is_a_wall ? any(is_wall) : std::count(kinds.begin(), kinds.end(), kind) > 0) {
                met.push_back(end);
            }
        }
        if (!met.empty() && is_foot(edge.kind)) {
            met.push_back(End::wall);  // a roof that it runs against
        }
        if (top && std::count(kinds.begin(), kinds.end(), EdgeKind::eave) > 0) {
            met.push_back(End::eave);
        }
        return met;
    }

    const std::vector<WordedEdge>& edges_;
    const std::vector<WalkedCorner>& corners_;
    double near_;
};

}  // namespace

std::vector<BodyEdge> with_end_words(std::vector<WordedEdge> edges,
                                     const std::vector<WalkedCorner>& corners, double near) {
    const EndWords words(edges, corners, near);
    std::vector<BodyEdge> said;
    for (const WordedEdge& one : edges) {
        BodyEdge edge = one.edge;
        if (!one.left_said) {
            edge.left = words.at(edge, edge.from, Side::left);
        }
        if (!one.right_said) {
            edge.right = words.at(edge, edge.to, Side::right);
        }
        said.push_back(std::move(edge));
    }
    return said;
}

}  // namespace hemline
