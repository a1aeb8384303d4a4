#include "field/screens/roof/roof_packing.h"

#include <algorithm>

#include "field/screens/roof/fill_shape.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr int halvings = 9;

/// Tries to find room for all roofs in a box at a scale: the first in a corner, the others wherever
/// they stay clear of it and of each other, in its inside corners too.
class Packing {
  public:
    Packing(const std::vector<PlanRoof>& roofs, float gap, Box box)
        : roofs_(roofs), gap_(gap), box_(box) {}

    /// Empty: there is no room.
    [[nodiscard]] std::vector<PlacedRoof> at(double scale) const {
        const float w = px(roofs_[0].w(), scale), h = px(roofs_[0].h(), scale);
        if (w > box_.w || h > box_.h) {
            return {};
        }
        if (roofs_.size() == 1) {
            return {{&roofs_[0], box_.mid_x() - w / 2, box_.mid_y() - h / 2, scale}};
        }
        for (const bool right : {false, true}) {
            for (const bool low : {true, false}) {
                std::vector<PlacedRoof> placed = {{&roofs_[0], right ? box_.right() - w : box_.x,
                                                   low ? box_.bottom() - h : box_.y, scale}};
                while (placed.size() < roofs_.size() && add(placed, scale)) {
                }
                if (placed.size() == roofs_.size()) {
                    return placed;
                }
            }
        }
        return {};
    }

  private:
    static float px(double nm, double scale) { return static_cast<float>(nm * scale); }

    /// Puts the next roof down, as far to the right and up as there is room.
    bool add(std::vector<PlacedRoof>& placed, double scale) const {
        constexpr int tries = 12;
        const PlanRoof& roof = roofs_[placed.size()];
        const float w = px(roof.w(), scale), h = px(roof.h(), scale);
        for (int i = 0; i <= tries; ++i) {
            for (int k = 0; k <= tries; ++k) {
                const Box own{box_.right() - w - (box_.w - w) * static_cast<float>(i) / tries,
                              box_.y + (box_.h - h) * static_cast<float>(k) / tries, w, h};
                const bool is_free =
                    std::none_of(placed.begin(), placed.end(), [&](const PlacedRoof& other) {
                        return meets(inset(own, -gap_), other, &other == &placed.front());
                    });
                if (own.w <= box_.w && own.h <= box_.h && is_free) {
                    placed.push_back({&roof, own.x, own.y, scale});
                    return true;
                }
            }
        }
        return false;
    }
    /// `by_line`: it has inside corners worth using.
    static bool meets(Box own, const PlacedRoof& other, bool by_line) {
        const Box whole{other.x, other.y, px(other.roof->w(), other.scale),
                        px(other.roof->h(), other.scale)};
        const Box both = common_of(own, whole);
        if (both.w <= 0 || both.h <= 0) {
            return false;
        }
        if (!by_line || other.roof->planes.empty()) {
            return true;
        }
        const ImVec2 middle{own.mid_x(), own.mid_y()};
        for (const PackedLine& line : other.roof->lines) {
            const ImVec2 from = other.at(line.from), to = other.at(line.to);
            if (is_crossed(own, from.x, from.y, to.x, to.y)) {
                return true;
            }
        }
        return std::any_of(other.roof->planes.begin(), other.roof->planes.end(),
                           [&](const PlanPlane& plane) {
                               return std::any_of(plane.pieces.begin(), plane.pieces.end(),
                                                  [&](const auto& piece) {
                                                      std::vector<ImVec2> shape;
                                                      for (const PlanVector corner : piece) {
                                                          shape.push_back(other.at(corner));
                                                      }
                                                      return is_in_shape(shape, middle);
                                                  });
                           });
    }

    const std::vector<PlanRoof>& roofs_;
    float gap_;
    Box box_;
};

}  // namespace

std::vector<PlacedRoof> packed(const std::vector<PlanRoof>& roofs, float gap, Box box) {
    if (roofs.empty() || box.w <= 0 || box.h <= 0) {
        return {};
    }
    const Packing packing(roofs, gap, box);
    double most = std::min(static_cast<double>(box.w) / roofs[0].w(),
                           static_cast<double>(box.h) / roofs[0].h()) *
                  0.9999;
    std::vector<PlacedRoof> best = packing.at(most);
    if (!best.empty()) {
        return best;
    }
    double least = 0;
    for (int i = 0; i < halvings; ++i) {
        const double scale = (least + most) / 2;
        std::vector<PlacedRoof> placed = packing.at(scale);
        if (placed.empty()) {
            most = scale;
        } else {
            least = scale;
            best = std::move(placed);
        }
    }
    return best;
}

}  // namespace hemline
