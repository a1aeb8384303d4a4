#include "engine/trim/triangles.h"

#include <algorithm>

namespace hemline {

namespace {

double whole_turn(const FlatOutline& outline) {
    double sum = 0;
    for (std::size_t i = 1; i + 1 < outline.size(); ++i) {
        sum += turn(outline[0], outline[i], outline[i + 1]);
    }
    return sum;
}

/// What is left of a shape while its ears are cut off.
class Left {
  public:
    explicit Left(const FlatOutline& outline)
        : outline_(outline), sign_(whole_turn(outline) < 0 ? -1 : 1), left_(outline.size()) {
        for (std::size_t i = 0; i < left_.size(); ++i) {
            left_[i] = i;
        }
    }
    [[nodiscard]] std::size_t size() const { return left_.size(); }

    /// The corner, and the neighbors before and after it.
    [[nodiscard]] std::array<std::size_t, 3> corner(std::size_t at) const {
        const std::size_t n = left_.size();
        return {left_[(at + n - 1) % n], left_[at], left_[(at + 1) % n]};
    }
    void cut_off(std::size_t at) { left_.erase(left_.begin() + static_cast<std::ptrdiff_t>(at)); }

    /// The first outside corner whose triangle holds no other corner; size(): there is none.
    /// `touching`: others may lie on its sides.
    [[nodiscard]] std::size_t ear(bool touching) const {
        for (std::size_t at = 0; at < left_.size(); ++at) {
            if (is_ear(corner(at), touching)) {
                return at;
            }
        }
        return left_.size();
    }

  private:
    [[nodiscard]] double turned(std::size_t a, std::size_t b, std::size_t c) const {
        return turn(outline_[a], outline_[b], outline_[c]) * sign_;
    }
    /// Where a shape touches itself a place is two corners.
    [[nodiscard]] bool is_at(std::size_t p, std::size_t q) const {
        return outline_[p].x == outline_[q].x && outline_[p].y == outline_[q].y;
    }
    [[nodiscard]] bool is_ear(const std::array<std::size_t, 3>& corner, bool touching) const {
        const auto [a, b, c] = corner;
        if (turned(a, b, c) <= 0) {
            return false;
        }
        const auto is_in = [&](std::size_t from, std::size_t to, std::size_t p) {
            const double side = turned(from, to, p);
            return touching ? side > 0 : side >= 0;
        };
        return std::none_of(left_.begin(), left_.end(), [&, a = a, b = b, c = c](std::size_t p) {
            return !is_at(p, a) && !is_at(p, b) && !is_at(p, c) && is_in(a, b, p) &&
                   is_in(b, c, p) && is_in(c, a, p);
        });
    }

    const FlatOutline& outline_;
    double sign_;
    std::vector<std::size_t> left_;
};

}  // namespace

double turn(const FlatPoint& a, const FlatPoint& b, const FlatPoint& c) {
    const auto d = [](std::int64_t p, std::int64_t q) { return static_cast<double>(p - q); };
    return d(b.y, a.y) * d(c.x, a.x) - d(b.x, a.x) * d(c.y, a.y);
}

std::vector<std::array<std::size_t, 3>> triangles_of(const FlatOutline& outline) {
    Left left(outline);
    std::vector<std::array<std::size_t, 3>> triangles;
    while (left.size() > 2) {
        std::size_t at = left.ear(false);
        at = at < left.size() ? at : left.ear(true);
        if (at == left.size()) {  // only corners in a line are left: no area
            break;
        }
        triangles.push_back(left.corner(at));
        left.cut_off(at);
    }
    return triangles;
}

}  // namespace hemline
