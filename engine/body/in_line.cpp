#include "engine/body/in_line.h"

#include <algorithm>
#include <cmath>

namespace hemline {

namespace {

/// Past these no reading is off: they save looking closer.
constexpr double corner_most = 0.1, apart_most_nm = 1e9;

class InLine {
  public:
    InLine(std::vector<MovingSide> sides, const std::vector<SideWithin>& within)
        : sides_(std::move(sides)), within_(within) {
        for (const MovingSide& side : sides_) {
            lines_.push_back(line_of(side));
            middles_.push_back((side.from + side.to) * 0.5);
        }
        for (const SideWithin& one : within) {
            all_.along += one.along;
            all_.corner += one.corner;
        }
    }

    std::vector<MovingSide> put() {
        bool changed = false;
        std::vector<bool> taken(sides_.size(), false);
        for (std::size_t i = 0; i < sides_.size(); ++i) {
            std::vector<std::size_t> group = {i};
            walked_.clear();
            for (std::size_t k = i + 1; k < sides_.size() && !taken[i]; ++k) {
                if (!taken[k] && in_line(i, k)) {
                    group.push_back(k);
                    taken[k] = true;
                }
            }
            if (group.size() > 1) {
                share_line(group);
                changed = true;
            }
        }
        return changed ? walked_anew() : sides_;
    }

  private:
    [[nodiscard]] bool in_line(std::size_t i, std::size_t k) {
        const MovingLine &one = lines_[i], &other = lines_[k];
        if (std::abs(one.inward - other.inward) > hair || dot(one.along, other.along) < 0) {
            return false;
        }
        const PlanVector away = middle(k) - middle(i);
        const double apart = std::abs(dot(away, one.inside));
        if (apart > apart_most_nm || std::abs(turn(one.along, other.along)) > corner_most ||
            apart > all_.along + (all_.corner + 1e-9) * length_of(away)) {
            return false;
        }
        const SideWithin off = between(i, k);
        const double corner = off.corner + 1e-9;
        return std::abs(turn(one.along, other.along)) < corner &&
               apart < off.along + corner * length_of(away);
    }

    [[nodiscard]] PlanVector middle(std::size_t i) const { return middles_[i]; }

    /// What may be off across the line of `i` along the sides after it, up to each one.
    void walk_from(std::size_t i) {
        SideWithin sum;
        for (std::size_t n = 0; n < sides_.size(); ++n) {
            const std::size_t side = (i + n) % sides_.size();
            if (n > 0) {
                sum.along +=
                    within_[side].along * std::abs(dot(lines_[side].along, lines_[i].inside));
                sum.corner += within_[side].corner;
            }
            walked_.push_back(sum);
        }
    }

    /// The less that may be off between them, walked from `i` to `k` or on from there to `i`.
    [[nodiscard]] SideWithin between(std::size_t i, std::size_t k) {
        if (walked_.empty()) {
            walk_from(i);
        }
        const SideWithin there = walked_[k - i - 1], past = walked_[k - i], all = walked_.back();
        return {std::min(there.along, all.along - past.along),
                std::min(within_[i].corner + there.corner,
                         within_[k].corner + all.corner - past.corner)};
    }

    /// The line through the middles' middle, by their lengths.
    void share_line(const std::vector<std::size_t>& group) {
        PlanVector along, at;
        double whole = 0;
        for (const std::size_t side : group) {
            const double length = length_of(sides_[side].to - sides_[side].from);
            along = along + lines_[side].along * length;
            at = at + middle(side) * length;
            whole += length;
        }
        along = along * (1 / length_of(along));
        const PlanVector inside = {-along.y, along.x};
        for (const std::size_t side : group) {
            lines_[side] = {along, inside, dot(at * (1 / whole), inside), lines_[side].inward};
        }
    }

    [[nodiscard]] std::vector<MovingSide> walked_anew() const {
        std::vector<MovingSide> made = sides_;
        for (std::size_t i = 0; i < sides_.size(); ++i) {
            const std::size_t before = (i + sides_.size() - 1) % sides_.size();
            const MovingLine& line = lines_[i];
            const auto met = meeting_of(lines_[before], line);
            const PlanVector place =
                met ? met->at
                    : sides_[i].from +
                          line.inside * (line.begin - dot(sides_[i].from, line.inside));
            made[i].from = place;
            made[before].to = place;
        }
        return made;
    }

    std::vector<MovingSide> sides_;
    const std::vector<SideWithin>& within_;
    std::vector<MovingLine> lines_;
    std::vector<PlanVector> middles_;
    std::vector<SideWithin> walked_;  ///< from the side that is looked at
    SideWithin all_;                  ///< what may be off at most between two sides
};

}  // namespace

std::vector<MovingSide> put_in_line(std::vector<MovingSide> sides,
                                    const std::vector<SideWithin>& within) {
    return InLine(std::move(sides), within).put();
}

}  // namespace hemline
