#include "engine/body/inner_lines.h"

#include <algorithm>
#include <numeric>
#include <optional>

#include "engine/body/shrinking_walk.h"
#include "engine/body/walk_cleared.h"

namespace hemline {

namespace {

/// The house moved and scaled to size 1, so that a hair is a hair.
struct Scaled {
    PlanVector middle;
    double size = 1;

    explicit Scaled(std::span<const MovingSide> sides) {
        PlanVector least = sides[0].from, most = sides[0].from;
        for (const MovingSide& side : sides) {
            least = {std::min(least.x, side.from.x), std::min(least.y, side.from.y)};
            most = {std::max(most.x, side.from.x), std::max(most.y, side.from.y)};
        }
        middle = (least + most) * 0.5;
        size = std::max(most.x - least.x, most.y - least.y);
    }
    [[nodiscard]] PlanVector in(PlanVector place) const { return (place - middle) * (1 / size); }
    [[nodiscard]] LinePlace out(PlanVector place, double height) const {
        return {place * size + middle, height * size};
    }
};

class Tracing {
  public:
    explicit Tracing(std::span<const MovingSide> sides) : scaled_(sides) {
        for (const MovingSide& side : sides) {
            lines_.push_back(line_of({scaled_.in(side.from), scaled_.in(side.to), side.inward}));
            made_.places.push_back({side.from, 0});
        }
        made_.plane_of.resize(sides.size());
        std::iota(made_.plane_of.begin(), made_.plane_of.end(), std::size_t{0});
        begin(sides);
    }

    InnerLines traced() && {
        while (!walks_.empty() && made_.stuck.empty()) {
            step();
        }
        join_lines();
        return std::move(made_);
    }

  private:
    void begin(std::span<const MovingSide> sides) {
        std::vector<PlanVector> corners;
        std::vector<std::size_t> names(sides.size());
        std::iota(names.begin(), names.end(), std::size_t{0});
        for (const MovingSide& side : sides) {
            corners.push_back(scaled_.in(side.from));
        }
        go_on(clear_walk(corners, names), {});
    }

    /// To the next height at which something happens, in whichever walk.
    void step() {
        std::vector<double> next;
        for (const ShrinkingWalk& walk : walks_) {
            next.push_back(next_height(walk, lines_, height_));
        }
        const double soonest = *std::min_element(next.begin(), next.end());
        still_ = soonest > height_ + hair ? 0 : still_ + 1;
        if (soonest == never || ++steps_ > 20 * lines_.size() || still_ > lines_.size()) {
            stick(walks_.front());
            return;
        }
        height_ = soonest;
        std::vector<ShrinkingWalk> shrinking = std::move(walks_);
        walks_.clear();
        for (std::size_t i = 0; i < shrinking.size() && made_.stuck.empty(); ++i) {
            if (next[i] > height_ + hair) {
                walks_.push_back(std::move(shrinking[i]));
            } else {
                happen(shrinking[i]);
            }
        }
    }

    void happen(const ShrinkingWalk& walk) {
        std::vector<PlanVector> corners;
        std::vector<std::size_t> sides;
        for (const ShrinkingCorner& corner : walk) {
            corners.push_back(corner.place.where(height_));
            sides.push_back(corner.side);
        }
        go_on(clear_walk(corners, sides), walk);
    }

    /// Ends the lines of the corners that are no more, and begins those that are new.
    void go_on(const ClearedWalk& cleared, const ShrinkingWalk& before) {
        std::vector<std::optional<std::size_t>> named(cleared.places.size());
        const auto name_of = [&](std::size_t place) {
            if (before.empty()) {
                return corner_at(cleared, place);
            }
            if (!named[place]) {
                named[place] = made_.places.size();
                made_.places.push_back(scaled_.out(cleared.places[place], height_));
            }
            return *named[place];
        };
        std::vector<bool> goes_on(before.size(), false);
        std::vector<ShrinkingWalk> walks;
        for (const WalkAround& around : cleared.walks) {
            if (doubled_area(around, cleared.places) > hair * hair) {
                walks.push_back(shrinking(around, cleared, before, goes_on, name_of));
                if (walks.back().empty()) {  // all of it joined on one line: nothing shrinks on
                    stick(around);
                }
            }
        }
        for (std::size_t i = 0; i < before.size(); ++i) {
            if (!goes_on[i]) {
                const std::size_t last = before[(i + before.size() - 1) % before.size()].side;
                add_line(last, before[i].side, before[i].begun, name_of(cleared.place_of[i]),
                         before[i].inside);
            }
        }
        for (const BackToBack& met : cleared.met) {
            add_line(met.other, met.one, name_of(met.from), name_of(met.to), false);
        }
        walks_.insert(walks_.end(), walks.begin(), walks.end());
    }

    /// Of the walk's own corners the first that is this place.
    static std::size_t corner_at(const ClearedWalk& cleared, std::size_t place) {
        return static_cast<std::size_t>(
            std::find(cleared.place_of.begin(), cleared.place_of.end(), place) -
            cleared.place_of.begin());
    }

    template <class NameOf>
    ShrinkingWalk shrinking(const WalkAround& around, const ClearedWalk& cleared,
                            const ShrinkingWalk& before, std::vector<bool>& goes_on,
                            const NameOf& name_of) {
        const WalkAround joined = joined_sides(around);
        ShrinkingWalk walk;
        for (std::size_t i = 0; i < joined.size(); ++i) {
            const std::size_t last = joined[(i + joined.size() - 1) % joined.size()].side;
            const WalkStretch& here = joined[i];
            const std::optional<MovingPlace> place = meeting_of(lines_[last], lines_[here.side]);
            if (!place) {
                made_.stuck = {last, here.side};
                return walk;
            }
            ShrinkingCorner corner = {here.side, 0, *place,
                                      turn(lines_[last].along, lines_[here.side].along) < 0};
            const std::optional<std::size_t> same = same_corner(before, cleared, last, here);
            if (same) {
                goes_on[*same] = true;
                corner.begun = before[*same].begun;
            } else {
                corner.begun = name_of(here.place);
            }
            walk.push_back(corner);
        }
        return walk;
    }

    /// The corner between the same two sides that is there already.
    static std::optional<std::size_t> same_corner(const ShrinkingWalk& before,
                                                  const ClearedWalk& cleared, std::size_t last,
                                                  const WalkStretch& here) {
        for (std::size_t i = 0; i < before.size(); ++i) {
            if (before[i].side == here.side && cleared.place_of[i] == here.place &&
                before[(i + before.size() - 1) % before.size()].side == last) {
                return i;
            }
        }
        return {};
    }

    /// Stretches that follow one another on one line with one pitch are a single stretch.
    WalkAround joined_sides(const WalkAround& around) {
        WalkAround joined;
        for (std::size_t i = 0; i < around.size(); ++i) {
            const std::size_t last = around[(i + around.size() - 1) % around.size()].side;
            if (!joins(last, around[i].side)) {
                joined.push_back(around[i]);
            }
        }
        for (WalkStretch& stretch : joined) {
            stretch.side = made_.plane_of[stretch.side];
        }
        return joined;
    }

    bool joins(std::size_t a, std::size_t b) {
        const MovingLine &one = lines_[a], &other = lines_[b];
        if (a == b) {
            return true;
        }
        if (std::abs(turn(one.along, other.along)) >= parallel_within ||
            dot(one.along, other.along) < 0 || std::abs(one.inward - other.inward) > hair) {
            return false;
        }
        const auto [first, second] = std::minmax(made_.plane_of[a], made_.plane_of[b]);
        const std::size_t to = first, from = second;
        std::replace(made_.plane_of.begin(), made_.plane_of.end(), from, to);
        return true;
    }

    void add_line(std::size_t left, std::size_t right, std::size_t from, std::size_t to,
                  bool inside) {
        left = made_.plane_of[left];
        right = made_.plane_of[right];
        if (from != to && left != right) {
            made_.lines.push_back({left, right, from, to, inside});
        }
    }

    /// Sides become one plane after lines beside them were begun: what goes straight on between the
    /// same planes is one line.
    void join_lines() {
        std::vector<InnerLine> joined;
        for (InnerLine line : made_.lines) {
            line.left = made_.plane_of[line.left];
            line.right = made_.plane_of[line.right];
            const auto before = std::find_if(joined.begin(), joined.end(), [&](const auto& one) {
                return one.left == line.left && one.right == line.right && one.to == line.from &&
                       one.inside_corner == line.inside_corner && goes_straight_on(one, line);
            });
            if (line.left == line.right) {
                continue;
            }
            if (before == joined.end()) {
                joined.push_back(line);
            } else {
                before->to = line.to;
            }
        }
        made_.lines = std::move(joined);
    }

    [[nodiscard]] bool goes_straight_on(const InnerLine& one, const InnerLine& next) const {
        const PlanVector a = made_.places[one.to].at - made_.places[one.from].at;
        const PlanVector b = made_.places[next.to].at - made_.places[next.from].at;
        return dot(a, b) > 0 && std::abs(turn(a, b)) < 1e-6 * length_of(a) * length_of(b);
    }

    /// These sides are named: without one the tracing would not end.
    template <class Walk>
    void stick(const Walk& walk) {
        for (const auto& corner : walk) {
            std::vector<std::size_t>& stuck = made_.stuck;
            if (std::find(stuck.begin(), stuck.end(), corner.side) == stuck.end()) {
                stuck.push_back(corner.side);
            }
        }
    }

    Scaled scaled_;
    std::vector<MovingLine> lines_;
    std::vector<ShrinkingWalk> walks_;
    InnerLines made_;
    double height_ = 0;
    std::size_t steps_ = 0;
    std::size_t still_ = 0;  ///< steps at one height: each takes a corner away, or none ever does
};

}  // namespace

InnerLines trace_inner_lines(std::span<const MovingSide> sides) { return Tracing(sides).traced(); }

}  // namespace hemline
