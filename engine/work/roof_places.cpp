#include "engine/work/roof_places.h"

#include <algorithm>
#include <map>
#include <set>

#include "engine/roof/edge_shape.h"
#include "engine/roof/nearest.h"

namespace hemline {

namespace {

class Places {
  public:
    Places(const Job& job, BodyOnJob& roof) : job_(job), roof_(roof) {
        for (const EdgeWork& work : job.edges) {
            const bool is_here =
                has_run(work.edge.kind) && work.place &&
                std::any_of(roof.bodies.begin(), roof.bodies.end(),
                            [&](const auto& one) { return one.id == work.place->body; });
            if (is_here) {
                placed_.push_back(&work);
            }
        }
    }

    void fill() {
        std::map<std::pair<std::string, std::string>, std::int32_t> met;
        for (const BodyEdge& worked : roof_.worked->edges) {
            EdgeOnBody edge{worked, place_of(worked), {}, {}, {}};
            edge.place.which = met[{edge.place.side, edge.place.other}]++;
            edge.expected = nearest_nm(worked.length);
            edge.off = nearest_nm(worked.off);
            roof_.edges.push_back(std::move(edge));
        }
        for (EdgeOnBody& edge : roof_.edges) {
            find_edges(edge, met);
        }
        find_rows();
        for (const EdgeWork* const work : placed_) {
            if (found_.count(work->edge.id) == 0) {
                roof_.without_place.push_back(work->edge.id);
            }
        }
    }

  private:
    /// Of a transition the lower roof goes first, as its pitch does, whichever was walked first or
    /// runs in.
    [[nodiscard]] PlaceOnBody place_of(const BodyEdge& worked) const {
        const std::size_t first = worked.sides.front(), last = worked.sides.back();
        PlaceOnBody place = {body_with(roof_, first).id, id(first), "", 0};
        if (worked.sides.size() > 1) {
            place.other = id(last);
        }
        if (worked.kind == EdgeKind::transition && first != last && worked.planes.front() == last) {
            std::swap(place.side, place.other);
        }
        return place;
    }
    [[nodiscard]] const std::string& id(std::size_t side) const { return roof_.sides[side].id; }

    template <class Count>
    void find_edges(EdgeOnBody& edge, const Count& met) {
        if (edge.worked.sides.size() == 1) {
            // Of a side that other roofs cut in pieces each has its own, the last what is left.
            const std::vector<std::string>& rows = roof_.walked[edge.worked.sides.front()].edges;
            const auto which = static_cast<std::size_t>(edge.place.which);
            const auto pieces = static_cast<std::size_t>(met.at({edge.place.side, ""}));
            const std::size_t end = which + 1 == pieces ? rows.size() : which + 1;
            for (std::size_t i = which; i < std::min(end, rows.size()); ++i) {
                take(edge, rows[i]);
            }
            return;
        }
        for (const EdgeWork* const work : placed_) {
            if (*work->place == edge.place || *work->place == as_placed_before(edge)) {
                take(edge, work->edge.id);
            }
        }
    }
    /// Jobs from before have a transition's sides the other way round.
    [[nodiscard]] static PlaceOnBody as_placed_before(const EdgeOnBody& edge) {
        PlaceOnBody place = edge.place;
        if (edge.worked.kind == EdgeKind::transition) {
            std::swap(place.side, place.other);
        }
        return place;
    }
    /// Edges of upright sides that are only named on the walk: in its order.
    void find_rows() {
        for (EdgeOnBody& edge : roof_.edges) {
            if (!edge.edges.empty() || edge.worked.sides.size() == 1) {
                continue;
            }
            for (const std::size_t side : edge.worked.sides) {
                for (const std::string& row : roof_.walked[side].edges) {
                    if (is_upright(roof_.sides[side]) && edge.edges.empty() &&
                        found_.count(row) == 0) {
                        take(edge, row);
                    }
                }
            }
        }
    }
    void take(EdgeOnBody& edge, const std::string& id) {
        if (job_.find(id) != nullptr && found_.insert(id).second) {
            edge.edges.push_back(id);
        }
    }

    const Job& job_;
    BodyOnJob& roof_;
    std::vector<const EdgeWork*> placed_;
    std::set<std::string> found_;
};

}  // namespace

void find_places(const Job& job, BodyOnJob& roof) { Places(job, roof).fill(); }

}  // namespace hemline
