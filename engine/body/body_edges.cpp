#include "engine/body/body_edges.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "engine/body/end_words.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

/// A plane may fall toward an upright side by this (the sine of 10°), as at a gable out of square:
/// from memory.
constexpr double out_of_square_most = 0.17;

class Edges {
  public:
    Edges(std::span<const BodySide> sides, std::span<const MovingSide> moving,
          const InnerLines& lines)
        : sides_(sides), lines_(lines) {
        for (const MovingSide& side : moving) {
            size_ = std::max(size_, length_of(side.to - side.from));
            along_.push_back(line_of(side).along);
        }
    }

    Result<std::vector<BodyEdge>> all() {
        std::vector<BodyEdge> inner;
        std::vector<BodyEdge> upper;
        for (const InnerLine& line : lines_.lines) {
            const bool left = upright(line.left), right = upright(line.right);
            if (left && right) {
                continue;  // a corner of walls
            }
            if (!left && !right) {
                inner.push_back(between(line));
                continue;
            }
            const std::size_t wall = left ? line.left : line.right;
            const std::size_t plane = left ? line.right : line.left;
            if (const auto problem = refused(line, wall, plane)) {
                return *problem;
            }
            if (sides_[wall].kind != SideKind::open) {
                upper.push_back(above(line, wall));
            }
        }
        std::vector<BodyEdge> edges = in_walking_order(upper);
        for (BodyEdge& edge : by_their_foot(std::move(inner))) {
            edges.push_back(std::move(edge));
        }
        std::vector<WordedEdge> worded;
        for (const BodyEdge& edge : edges) {
            const bool is_side = edge.sides.size() == 1;
            worded.push_back({edge, is_side, is_side});
        }
        return with_end_words(std::move(worded), {}, 1e-8 * size_);
    }

  private:
    [[nodiscard]] bool upright(std::size_t side) const { return is_upright(sides_[side]); }
    [[nodiscard]] Space at(std::size_t place) const {
        const LinePlace& it = lines_.places[place];
        return {it.at.x, it.at.y, it.height};
    }
    [[nodiscard]] bool level(const Space& a, const Space& b) const {
        return std::abs(a.z - b.z) < 1e-8 * size_;
    }
    [[nodiscard]] PlanVector inside(std::size_t side) const {
        return {-along_[side].y, along_[side].x};
    }

    /// An edge with its foot or, seen from its first plane, its left end first.
    [[nodiscard]] BodyEdge edge(EdgeKind kind, const InnerLine& line) const {
        BodyEdge edge;
        edge.kind = kind;
        edge.from = at(line.from);
        edge.to = at(line.to);
        edge.sides = {std::min(line.left, line.right), std::max(line.left, line.right)};
        for (const std::size_t side : edge.sides) {
            if (!upright(side)) {
                edge.planes.push_back(side);
            }
        }
        const PlanVector along = along_[edge.planes.front()];
        const PlanVector way = {edge.to.x - edge.from.x, edge.to.y - edge.from.y};
        if (level(edge.from, edge.to) ? dot(way, along) < 0 : edge.from.z > edge.to.z) {
            std::swap(edge.from, edge.to);
        }
        edge.length = length_of(edge.to - edge.from);
        return edge;
    }

    [[nodiscard]] BodyEdge between(const InnerLine& line) const {
        const bool ridge = level(at(line.from), at(line.to));
        BodyEdge made = edge(ridge                ? EdgeKind::ridge
                             : line.inside_corner ? EdgeKind::valley
                                                  : EdgeKind::hip,
                             line);
        if (!ridge) {
            const double turned =
                degrees_in(std::atan2(turn(along_[line.left], along_[line.right]),
                                      dot(along_[line.left], along_[line.right])));
            made.corner_degrees = 180 - turned;
        }
        return made;
    }

    [[nodiscard]] BodyEdge above(const InnerLine& line, std::size_t wall) const {
        const bool flat = level(at(line.from), at(line.to));
        // Where a roof is lower than the eave on its transition, it ends at the wall below that.
        const bool is_transition = sides_[wall].kind == SideKind::transition;
        const bool stands_above =
            line.inside_corner || sides_[wall].kind == SideKind::wall || (is_transition && !flat);
        const EdgeKind top = is_transition ? EdgeKind::transition : EdgeKind::high_eave;
        const EdgeKind kind = flat ? (stands_above ? EdgeKind::headwall : top)
                                   : (stands_above ? EdgeKind::sidewall : EdgeKind::gable);
        return edge(kind, line);
    }

    [[nodiscard]] std::optional<Problem> refused(const InnerLine& line, std::size_t wall,
                                                 std::size_t plane) const {
        const double falls = dot(inside(plane), inside(wall)) * (line.inside_corner ? -1 : 1);
        if (falls > out_of_square_most) {
            return Problem{say("The roof above side {1} falls toward side {2}, which is upright.",
                               sides_[plane].id, sides_[wall].id),
                           say("Look at the kinds of both sides, and at the corners.")};
        }
        if (sides_[wall].kind == SideKind::high_eave && !line.inside_corner &&
            !level(at(line.from), at(line.to))) {
            return Problem{say("The roof above side {1} meets the high eave {2} on a slope.",
                               sides_[plane].id, sides_[wall].id),
                           say("Say gable for side {1}, or look at the corners.", sides_[wall].id)};
        }
        return {};
    }

    /// The sides' own edges: eaves, and what lies on upright sides in the order of the walk.
    [[nodiscard]] std::vector<BodyEdge> in_walking_order(std::vector<BodyEdge> upper) const {
        std::vector<BodyEdge> edges;
        for (std::size_t i = 0; i < sides_.size(); ++i) {
            if (!upright(i)) {
                edges.push_back(eave(i));
                continue;
            }
            std::vector<BodyEdge> here;
            for (const BodyEdge& edge : upper) {
                const bool first = upright(edge.sides.front());
                if (edge.sides[first ? 0 : 1] == i) {
                    here.push_back(edge);
                }
            }
            const PlanVector along = along_[i];
            const auto place = [&](const BodyEdge& edge) {
                return along.x * (edge.from.x + edge.to.x) + along.y * (edge.from.y + edge.to.y);
            };
            std::sort(here.begin(), here.end(),
                      [&](const BodyEdge& a, const BodyEdge& b) { return place(a) < place(b); });
            edges.insert(edges.end(), here.begin(), here.end());
        }
        return edges;
    }

    [[nodiscard]] BodyEdge eave(std::size_t i) const {
        BodyEdge made;
        made.kind = sides_[i].kind == SideKind::eave ? EdgeKind::eave : EdgeKind::transition;
        made.sides = {i};
        made.planes = {lines_.plane_of[i]};
        made.from = at(i);
        made.to = at((i + 1) % sides_.size());
        made.length = length_of(made.to - made.from);
        const std::size_t before = (i + sides_.size() - 1) % sides_.size();
        made.left = end_at_corner(sides_[before].corner, before);
        made.right = end_at_corner(sides_[i].corner, (i + 1) % sides_.size());
        return made;
    }

    [[nodiscard]] End end_at_corner(Angle corner, std::size_t neighbor) const {
        if (corner == half_turn) {
            return End::open;
        }
        const bool outside = corner < half_turn;
        switch (sides_[neighbor].kind) {
            case SideKind::eave:
                return outside ? End::corner_out : End::corner_in;
            case SideKind::transition:
                if (!upright(neighbor)) {
                    return outside ? End::corner_out : End::corner_in;
                }
                return End::wall;  // of the house above
            case SideKind::gable:
            case SideKind::high_eave:
                return outside ? End::gable : End::wall;  // inside, its face stands over this roof
            case SideKind::wall:
                return End::wall;
            case SideKind::open:
                break;
        }
        return End::open;
    }

    /// By the corner of the walk at their foot, then those that begin higher up.
    [[nodiscard]] std::vector<BodyEdge> by_their_foot(std::vector<BodyEdge> inner) const {
        using Order = std::tuple<bool, std::size_t, double>;
        std::vector<std::pair<Order, std::size_t>> orders;
        for (std::size_t i = 0; i < inner.size(); ++i) {
            Order order = {true, inner[i].sides.front(), inner[i].from.z};
            for (std::size_t k = sides_.size(); k-- > 0 && level(inner[i].from, Space());) {
                if (length_of(at(k) - inner[i].from) < 1e-8 * size_) {
                    order = {false, k, 0};
                }
            }
            orders.emplace_back(order, i);
        }
        std::sort(orders.begin(), orders.end());
        std::vector<BodyEdge> ordered;
        for (const auto& [order, i] : orders) {
            ordered.push_back(std::move(inner[i]));
        }
        return ordered;
    }

    std::span<const BodySide> sides_;
    const InnerLines& lines_;
    double size_ = 0;
    std::vector<PlanVector> along_;
};

}  // namespace

Result<std::vector<BodyEdge>> edges_of_body(std::span<const BodySide> sides,
                                            std::span<const MovingSide> moving,
                                            const InnerLines& lines) {
    return Edges(sides, moving, lines).all();
}

}  // namespace hemline
