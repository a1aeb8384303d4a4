// What is seen of bodies over one another, where all of it moves by little: the same edges, at the
// places found anew.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "engine/body/stretches.h"
#include "engine/body/watched_places.h"

namespace hemline {

class SteadyOverlay {
  public:
    /// `edges`: of the roof. `joined` stays where it is as long as this.
    SteadyOverlay(const JoinedBodies& joined, std::span<const BodyEdge> edges,
                  const SteadyBodies& bodies, const MovedBodies& now);

    /// The edges where the bodies are now. None: they may be others: a place has come to a line, or
    /// a plane to the height of one that hides it.
    [[nodiscard]] std::optional<std::vector<RoofStretch>> edges_with(const MovedBodies& now) const;

  private:
    /// Whether a plane is lower there (-1) than one that is seen, as high (0) or higher (1).
    struct Order {
        std::size_t place = 0, plane = 0;
        std::optional<std::size_t> seen;  ///< none: than the plane into which its body runs
        int sign = 0;
    };
    /// A place and a segment on which it does not lie.
    struct Near {
        std::size_t place = 0, segment = 0;
        double apart = 0;
    };
    /// An edge, over its plane's side.
    struct Edge {
        std::size_t side = 0, other = 0, plane = 0, from = 0, to = 0;
    };
    void take_orders(const MovedBodies& now);
    void take_near();
    void take_edges(std::span<const BodyEdge> edges);
    [[nodiscard]] int sign_of(const Order& order, PlanVector at, const MovedBodies& now) const;
    [[nodiscard]] bool keep_apart(const std::vector<PlanVector>& places) const;

    const JoinedBodies& joined_;
    WatchedPlaces watched_;
    double near_ = 0;
    std::vector<Order> orders_;
    std::vector<Near> near_segments_;
    std::vector<Edge> edges_;
    bool is_fixed_ = true;  ///< every edge ends at places that are watched
};

}  // namespace hemline
