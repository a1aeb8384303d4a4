#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

#include "engine/body/between_bodies.h"
#include "engine/body/body_ties.h"
#include "engine/body/end_words.h"
#include "engine/body/joined_bodies.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

/// What a piece of the overlay is a piece of.
struct PartOf {
    enum class What : std::uint8_t { own, meeting, standing } what = What::own;
    std::size_t edge = 0;   ///< own: of the bodies' edges
    std::size_t plane = 0;  ///< meeting: of the body that runs in; standing: on which it stands
    std::size_t other = 0;  ///< meeting: the host's; own: 1 + the upper plane on a transition;
                            ///< standing: the side that stands there

    auto operator<=>(const PartOf&) const = default;
};

class EdgesOfRoof {
  public:
    EdgesOfRoof(const JoinedBodies& joined, std::span<const RoofBody> bodies)
        : joined_(joined), bodies_(bodies), sides_(sides_of(bodies)), seen_(bodies.size()) {}

    Result<std::vector<BodyEdge>> all() {
        for (const OverlayPiece& piece : joined_.overlay.pieces) {
            take(piece, piece.left, piece.right, piece.from, piece.to);
            take(piece, piece.right, piece.left, piece.to, piece.from);
        }
        for (std::size_t body = 0; body < bodies_.size() && !problem_; ++body) {
            if (!seen_[body]) {
                problem_ = Problem{say("Body {1} lies under another roof.", bodies_[body].name),
                                   say("Look at where it lies, and at its rise.")};
            }
        }
        if (problem_) {
            return *problem_;
        }
        std::vector<WordedEdge> edges;
        for (auto& [part, stretches] : parts_) {
            for (const auto& [from, to] : runs_of(stretches)) {
                edges.push_back(edge(part, from, to));
                if (problem_) {
                    return *problem_;
                }
                orders_.emplace_back(order_of(part, edges.back().edge), edges.size() - 1);
            }
        }
        std::stable_sort(orders_.begin(), orders_.end(),
                         [](const auto& a, const auto& b) { return a.first < b.first; });
        std::vector<WordedEdge> ordered;
        for (const auto& one : orders_) {
            ordered.push_back(edges[one.second]);
        }
        return with_end_words(std::move(ordered), corners(), near());
    }

  private:
    using RoofStretch = std::pair<std::size_t, std::size_t>;
    using Order = std::tuple<int, std::size_t, std::size_t, double>;

    [[nodiscard]] double near() const { return 4 * overlay_hair * joined_.overlay.size; }
    [[nodiscard]] PlanVector at(std::size_t place) const { return joined_.overlay.places[place]; }
    [[nodiscard]] double over(std::size_t plane, std::size_t place) const {
        return joined_.planes[plane].height_over(at(place));
    }
    [[nodiscard]] bool bounds(const BodyEdge& edge, std::size_t plane) const {
        return std::find(edge.planes.begin(), edge.planes.end(), joined_.planes[plane].side) !=
               edge.planes.end();
    }
    [[nodiscard]] bool is_top(const BodyEdge& edge) const {
        return edge.kind == EdgeKind::transition && edge.sides.size() == 2;
    }

    /// The piece as a boundary of `here`, on the left of from → to; `across` is on its right.
    void take(const OverlayPiece& piece, std::optional<std::size_t> here,
              std::optional<std::size_t> across, std::size_t from, std::size_t to) {
        if (!here) {
            return;
        }
        seen_[joined_.planes[*here].body] = true;
        const bool meet = across && std::abs(over(*here, from) - over(*across, from)) < near() &&
                          std::abs(over(*here, to) - over(*across, to)) < near();
        for (const std::size_t line : piece.lines) {
            if (line < joined_.edges.size() && bounds(joined_.edges[line], *here) &&
                take_own(line, *here, across, meet, {from, to}, piece)) {
                return;
            }
        }
        if (meet) {
            if (is_the_one_that_runs_in(*here, *across)) {
                add({PartOf::What::meeting, 0, *here, *across}, from, to);
            }
        } else if (!ends_in_the_air(piece, *here) && across &&
                   over(*across, from) + over(*across, to) > over(*here, from) + over(*here, to)) {
            add({PartOf::What::standing, 0, *here, standing_there(piece, *across)}, from, to);
        }
    }

    [[nodiscard]] bool is_the_one_that_runs_in(std::size_t here, std::size_t across) const {
        const std::size_t body = joined_.planes[here].body, other = joined_.planes[across].body;
        const bool in = runs_into(bodies_, body, other), out = runs_into(bodies_, other, body);
        return in != out ? in : here > across;
    }

    /// Whether the edge is still what it is for its body alone; then the piece is of it.
    bool take_own(std::size_t line, std::size_t here, std::optional<std::size_t> across, bool meet,
                  RoofStretch stretch, const OverlayPiece& piece) {
        const BodyEdge& edge = joined_.edges[line];
        if (edge.planes.size() == 2) {
            if (!across || !bounds(edge, *across)) {
                return false;
            }
            if (here < *across) {
                add({PartOf::What::own, line, 0, 0}, stretch.first, stretch.second);
            }
            return true;
        }
        if (meet && edge.kind == EdgeKind::eave && lies_on_transition(piece, *across)) {
            return true;  // the transition is that edge
        }
        add({PartOf::What::own, line, 0, meet && is_top(edge) ? *across + 1 : 0}, stretch.first,
            stretch.second);
        return true;
    }

    [[nodiscard]] bool lies_on_transition(const OverlayPiece& piece, std::size_t low) const {
        return std::any_of(piece.lines.begin(), piece.lines.end(), [&](std::size_t line) {
            return line < joined_.edges.size() && is_top(joined_.edges[line]) &&
                   bounds(joined_.edges[line], low);
        });
    }

    /// At an open side, or where it comes to its host's plane and the host is not there.
    bool ends_in_the_air(const OverlayPiece& piece, std::size_t here) {
        const PlacedPlane& plane = joined_.planes[here];
        const std::size_t open = joined_.edges.size(), hosts = open + joined_.open.size();
        for (const std::size_t line : piece.lines) {
            const bool ends = line < open    ? false
                              : line < hosts ? body_of(joined_.open[line - open].side) == plane.body
                                             : plane.host && line < hosts + joined_.host_crossings;
            if (ends && plane.host && !problem_) {
                problem_ =
                    Problem{say("Body {1} goes on past the roof above {2}, into which it runs.",
                                bodies_[plane.body].name, bodies_[plane.body].host->eave),
                            say("Look at its pitches, at how far up it lies, and at its rise.")};
            }
            if (ends) {
                return true;
            }
        }
        return false;
    }

    [[nodiscard]] std::size_t body_of(std::size_t side) const {
        std::size_t body = 0;
        for (; side >= bodies_[body].sides.size(); ++body) {
            side -= bodies_[body].sides.size();
        }
        return body;
    }

    /// The side of the walk along the piece that the higher plane ends at.
    [[nodiscard]] std::size_t standing_there(const OverlayPiece& piece, std::size_t higher) const {
        for (const std::size_t line : piece.lines) {
            if (line < joined_.edges.size() && bounds(joined_.edges[line], higher)) {
                const BodyEdge& edge = joined_.edges[line];
                const auto upright =
                    std::find_if(edge.sides.begin(), edge.sides.end(),
                                 [&](std::size_t side) { return is_upright(*sides_[side]); });
                return upright == edge.sides.end() ? edge.sides.front() : *upright;
            }
        }
        return joined_.planes[higher].side;
    }

    void add(const PartOf& part, std::size_t from, std::size_t to) {
        parts_[part].emplace_back(from, to);
    }

    /// Stretches of one straight line, each that follows another joined to it.
    [[nodiscard]] std::vector<RoofStretch> runs_of(std::vector<RoofStretch> stretches) const {
        const PlanVector way = at(stretches.front().second) - at(stretches.front().first);
        for (RoofStretch& one : stretches) {
            if (dot(at(one.second) - at(one.first), way) < 0) {
                std::swap(one.first, one.second);
            }
        }
        std::sort(stretches.begin(), stretches.end(),
                  [&](const RoofStretch& a, const RoofStretch& b) {
                      return dot(at(a.first), way) < dot(at(b.first), way);
                  });
        std::vector<RoofStretch> runs;
        for (const RoofStretch& one : stretches) {
            if (!runs.empty() && runs.back().second == one.first) {
                runs.back().second = one.second;
            } else {
                runs.push_back(one);
            }
        }
        return runs;
    }

    [[nodiscard]] WordedEdge edge(const PartOf& part, std::size_t from, std::size_t to) {
        return part.what == PartOf::What::own ? own(part, from, to) : between(part, from, to);
    }

    [[nodiscard]] Space in_space(std::size_t plane, std::size_t place) const {
        return {at(place).x, at(place).y, over(plane, place)};
    }

    /// What is seen of a body's edge; ends that it keeps keep their words.
    [[nodiscard]] WordedEdge own(const PartOf& part, std::size_t from, std::size_t to) const {
        WordedEdge made = {joined_.edges[part.edge], true, true};
        BodyEdge& edge = made.edge;
        std::size_t plane = 0;
        while (joined_.planes[plane].side != edge.planes.front()) {
            ++plane;
        }
        Space first = in_space(plane, from), last = in_space(plane, to);
        if (dot(last - first, edge.to - edge.from) < 0) {
            std::swap(first, last);
        }
        if (length_of(first - edge.from) > near()) {
            edge.from = first;
            made.left_said = false;
        }
        if (length_of(last - edge.to) > near()) {
            edge.to = last;
            made.right_said = false;
        }
        edge.length = length_of(edge.to - edge.from);
        if (part.other > 0) {
            edge.planes.push_back(joined_.planes[part.other - 1].side);
        }
        return made;
    }

    /// Between two bodies: where planes meet, or where one stands on a plane of the other.
    [[nodiscard]] WordedEdge between(const PartOf& part, std::size_t from, std::size_t to) {
        const BetweenEnds ends = {in_space(part.plane, from), in_space(part.plane, to), near()};
        const PlacedPlane& plane = joined_.planes[part.plane];
        const Result<BodyEdge> edge =
            part.what == PartOf::What::meeting
                ? where_they_meet(plane, joined_.planes[part.other], ends, sides_)
                : where_it_stands(part.other, plane, ends, sides_);
        if (!edge) {
            problem_ = edge.problem();
            return {};
        }
        return {*edge};
    }

    /// First what lies along sides; an edge between two bodies is of the one that runs in.
    [[nodiscard]] Order order_of(const PartOf& part, const BodyEdge& edge) const {
        if (part.what == PartOf::What::own) {
            const bool along_side =
                edge.sides.size() == 1 ||
                std::any_of(edge.sides.begin(), edge.sides.end(),
                            [&](std::size_t side) { return is_upright(*sides_[side]); });
            return {along_side ? 0 : 1, body_of(edge.sides.front()), part.edge, 0};
        }
        const std::size_t all = joined_.edges.size();
        return {1, body_of(edge.sides.front()), part.what == PartOf::What::meeting ? all : all + 1,
                edge.from.z};
    }

    /// The walks' corners, for the words of what stands there.
    [[nodiscard]] std::vector<WalkedCorner> corners() const {
        std::vector<WalkedCorner> all;
        for (const BodyEdge& edge : joined_.edges) {
            if (edge.sides.size() == 1) {
                const std::size_t body = body_of(edge.sides[0]);
                std::size_t first = edge.sides[0];
                for (std::size_t i = 0; i < body; ++i) {
                    first -= bodies_[i].sides.size();
                }
                const std::size_t n = bodies_[body].sides.size();
                all.push_back({edge.from, bodies_[body].sides[(first + n - 1) % n].corner});
                all.push_back({edge.to, bodies_[body].sides[first].corner});
            }
        }
        return all;
    }

    const JoinedBodies& joined_;
    std::span<const RoofBody> bodies_;
    SidesOfRoof sides_;
    std::vector<bool> seen_;
    std::map<PartOf, std::vector<RoofStretch>> parts_;
    std::vector<std::pair<Order, std::size_t>> orders_;
    std::optional<Problem> problem_;
};

}  // namespace

Result<std::vector<BodyEdge>> edges_of_roof(const JoinedBodies& joined,
                                            std::span<const RoofBody> bodies) {
    return EdgesOfRoof(joined, bodies).all();
}

}  // namespace hemline
