#include "engine/body/overlay.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace hemline {

namespace {

/// As far as it can lie in the box.
std::optional<PlanLine> crossing_within(const PlanBox& box, const EndlessPlane& a,
                                        const EndlessPlane& b) {
    if (box.least.x >= box.most.x || box.least.y >= box.most.y) {
        return {};
    }
    // The height of a less that of b changes along `slope`.
    const PlanVector slope = a.inside * a.rise - b.inside * b.rise;
    const double steep = length_of(slope);
    if (steep < 1e-9) {
        return {};
    }
    const PlanVector middle = (box.least + box.most) * 0.5;
    const double apart = a.height_over(middle) - b.height_over(middle);
    const PlanVector nearest = middle - slope * (apart / steep / steep);
    const double reach = box.across();
    if (length_of(nearest - middle) > reach) {
        return {};
    }
    const PlanVector along = {-slope.y / steep, slope.x / steep};
    return PlanLine{nearest - along * reach, nearest + along * reach};
}

class Overlaying {
  public:
    Overlaying(std::span<const PlacedPlane> planes, std::span<const PlanLine> lines)
        : planes_(planes) {
        PlanBox all = {lines[0].from, lines[0].from};
        for (const PlanLine& line : lines) {
            const PlanVector whole = line.to - line.from;
            PlanBox box = {line.from, line.from};
            box.take(line.to);
            all.take(line.from);
            all.take(line.to);
            lines_.push_back({line, whole, length_of(whole), box});
        }
        made_.size = all.across();
        near_ = overlay_hair * made_.size;
    }

    Overlay overlaid() && {
        for (const Line& line : lines_) {
            gather(line.from);
            gather(line.to);
        }
        for (std::size_t i = 0; i < lines_.size(); ++i) {
            for (std::size_t k = i + 1; k < lines_.size(); ++k) {
                if (lines_[i].box.reaches(lines_[k].box, 2 * near_)) {
                    cross(lines_[i], lines_[k]);
                }
            }
        }
        for (std::size_t i = 0; i < lines_.size(); ++i) {
            cut(i);
        }
        for (const auto& [ends, lines] : on_) {
            OverlayPiece piece = {ends.first, ends.second, {}, {}, lines};
            see_both_sides(piece);
            if (piece.left != piece.right) {
                made_.pieces.push_back(std::move(piece));
            }
        }
        return std::move(made_);
    }

  private:
    struct Line : PlanLine {
        PlanVector whole;
        double length = 0;
        PlanBox box;
    };

    void gather(PlanVector place) {
        auto at = std::lower_bound(by_x_.begin(), by_x_.end(), std::pair(place.x - near_, 0.0));
        for (; at != by_x_.end() && at->first < place.x; ++at) {
            if (length_of(place - PlanVector{at->first, at->second}) < near_) {
                return;
            }
        }
        const auto here = at;
        for (; at != by_x_.end() && at->first < place.x + near_; ++at) {
            if (length_of(place - PlanVector{at->first, at->second}) < near_) {
                return;
            }
        }
        by_x_.insert(here, {place.x, place.y});
        made_.places.push_back(place);
    }

    void cross(const Line& a, const Line& b) {
        const double turned = turn(a.whole, b.whole);
        if (std::abs(turned) <= 1e-12 * a.length * b.length) {
            return;  // where they lie on one another they are cut by their ends
        }
        const double along_a = turn(b.from - a.from, b.whole) / turned * a.length;
        const double along_b = turn(b.from - a.from, a.whole) / turned * b.length;
        if (along_a > -near_ && along_a < a.length + near_ && along_b > -near_ &&
            along_b < b.length + near_) {
            gather(a.from + a.whole * (along_a / a.length));
        }
    }

    void cut(std::size_t index) {
        const Line& line = lines_[index];
        if (line.length < near_) {
            return;
        }
        std::vector<std::pair<double, std::size_t>> on;
        for (std::size_t i = 0; i < made_.places.size(); ++i) {
            if (!line.box.holds(made_.places[i], 2 * near_)) {
                continue;
            }
            const PlanVector seen = made_.places[i] - line.from;
            const double ahead = dot(seen, line.whole) / line.length;
            if (ahead > -near_ && ahead < line.length + near_ &&
                std::abs(turn(line.whole, seen)) / line.length < near_) {
                on.emplace_back(ahead, i);
            }
        }
        std::sort(on.begin(), on.end());
        for (std::size_t i = 0; i + 1 < on.size(); ++i) {
            on_[std::minmax(on[i].second, on[i + 1].second)].push_back(index);
        }
    }

    /// The planes just beside the middle of the piece.
    void see_both_sides(OverlayPiece& piece) const {
        const PlanVector from = made_.places[piece.from], to = made_.places[piece.to];
        const double length = length_of(to - from);
        const PlanVector way = (to - from) * (1 / length);
        const double off = std::min(1e-6 * made_.size, length / 8);
        const PlanVector middle = (from + to) * 0.5, beside = PlanVector{-way.y, way.x} * off;
        piece.left = plane_seen_at(planes_, middle + beside, made_.size);
        piece.right = plane_seen_at(planes_, middle - beside, made_.size);
    }

    std::span<const PlacedPlane> planes_;
    std::vector<Line> lines_;
    Overlay made_;
    double near_ = 0;
    std::vector<std::pair<double, double>> by_x_;  ///< the places, sorted
    std::map<std::pair<std::size_t, std::size_t>, std::vector<std::size_t>> on_;
};

}  // namespace

Overlay overlay_of(std::span<const PlacedPlane> planes, std::span<const PlanLine> lines) {
    return Overlaying(planes, lines).overlaid();
}

std::optional<std::size_t> plane_seen_at(std::span<const PlacedPlane> planes, PlanVector place,
                                         double size) {
    std::optional<std::size_t> seen;
    double highest = 0;
    for (std::size_t i = 0; i < planes.size(); ++i) {
        if (!planes[i].box.holds(place, 0)) {
            continue;
        }
        const double height = planes[i].height_over(place);
        if ((!seen || height > highest + 1e-10 * size) && planes[i].holds(place) &&
            !planes[i].is_under_host(place)) {
            seen = i;
            highest = height;
        }
    }
    return seen;
}

std::optional<PlanLine> crossing_of(const PlacedPlane& a, const PlacedPlane& b) {
    PlanBox box = a.box;
    const PlanBox& other = b.box;
    box.least = {std::max(box.least.x, other.least.x), std::max(box.least.y, other.least.y)};
    box.most = {std::min(box.most.x, other.most.x), std::min(box.most.y, other.most.y)};
    return crossing_within(box, a, b);
}

std::optional<PlanLine> host_crossing_of(const PlacedPlane& plane) {
    return plane.host ? crossing_within(plane.box, plane, *plane.host) : std::nullopt;
}

}  // namespace hemline
