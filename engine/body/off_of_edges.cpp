#include "engine/body/off_of_edges.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "engine/body/steady_closing.h"
#include "engine/body/steady_lines.h"
#include "engine/body/steady_overlay.h"
#include "engine/body/stretches.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

struct Stretches {
    std::vector<RoofStretch> all;
    std::vector<std::size_t>
        plane_of;  ///< of a body that stands alone: the first side of each plane
};

class Changes {
  public:
    Changes(std::span<const RoofBody> bodies, Tape tape, const WorkedRoof& worked)
        : bodies_(bodies.begin(), bodies.end()),
          tape_(tape),
          expected_(worked.edges),
          off_(worked.edges.size()) {
        if (worked.alone) {
            look_for_what_stays(*worked.alone);
        } else {
            look_for_what_stays(*worked.placed, *worked.joined);
        }
    }

    std::vector<double> off() {
        for (std::size_t of = 0; of < bodies_.size(); ++of) {
            RoofBody& body = bodies_[of];
            for (std::size_t i = 0; i < body.sides.size(); ++i) {
                BodySide& side = body.sides[i];
                if (side.length) {
                    length_both_ways(*side.length, SideOfRoof{of, i});
                }
                corner_both_ways(side.corner);
            }
            if (body.host) {
                length_both_ways(body.host->along, {});
                length_both_ways(body.host->up, {});
                length_both_ways(body.host->rise, {});
            }
        }
        pitches_both_ways();
        return off_;
    }

  private:
    /// Most changes leave the lines of a body as they are, and only move them.
    void look_for_what_stays(const SolvedBody& body) {
        sides_ = body.sides;
        plane_of_ = body.lines.plane_of;
        matches_ = matches_of(expected_, stretches_of(body.lines, places_of(body.lines)),
                              one_plane_in_either(plane_of_, plane_of_));
        steady_.emplace(sides_, body.lines);
        closing_.emplace(bodies_[0].sides, tape_);
    }

    void look_for_what_stays(const PlacedBodies& placed, const JoinedBodies& joined) {
        tied_.emplace(bodies_, placed, tape_);
        const std::optional<MovedBodies> now = tied_->as_it_is();
        if (!now) {
            return;
        }
        overlay_.emplace(joined, expected_, *tied_, *now);
        const auto same = overlay_->edges_with(*now);
        const double near = overlay_hair * joined.overlay.size;
        for (std::size_t i = 0; i < expected_.size() && overlay_; ++i) {
            if (!same || length_of((*same)[i].from - expected_[i].from) > near ||
                length_of((*same)[i].to - expected_[i].to) > near) {
                overlay_.reset();
            }
        }
        if (overlay_) {
            matches_ = matches_of(expected_, *same, {});
        }
    }

    /// The edges where their lines stay what they are; none: they may not.
    [[nodiscard]] std::optional<std::vector<RoofStretch>> moved(
        const std::optional<SideOfRoof>& side, const std::optional<PitchChange>& pitch) const {
        if (overlay_) {
            const auto now = tied_->with(bodies_, side, pitch);
            return now ? overlay_->edges_with(*now) : std::nullopt;
        }
        if (!steady_) {
            return {};
        }
        const auto sides = side ? closing_->with(side->side, *bodies_[0].sides[side->side].length)
                                : std::optional(with_change(bodies_[0].sides, sides_, pitch));
        const auto places = sides ? steady_->places_with(*sides) : std::nullopt;
        return places ? std::optional(stretches_of(steady_->lines(), *places)) : std::nullopt;
    }

    /// `side`: whose length it is; none: where a body lies on its host.
    void length_both_ways(Length& length, const std::optional<SideOfRoof>& side) {
        const Length kept = length;
        const Length off = nanometres(allowed_difference(absolute(length), tape_).nm() / 2);
        std::vector<double> most(expected_.size());
        for (const int way : {-1, 1}) {
            length = kept + off * way;
            compare(side, {}, most);
        }
        length = kept;
        add(most);
    }

    void corner_both_ways(Angle& corner) {
        const Angle kept = corner, off = off_of_stated(corner);
        if (off == Angle()) {
            return;
        }
        std::vector<double> most(expected_.size());
        for (const Angle changed : {kept - off, kept + off}) {
            corner = changed;
            compare_anew({}, most);
        }
        corner = kept;
        add(most);
    }

    /// A pitch that several sides have was read once.
    void pitches_both_ways() {
        std::set<std::pair<SlopeNotation, std::int64_t>> pitches;
        for (const RoofBody& body : bodies_) {
            for (const BodySide& side : body.sides) {
                if (side.pitch) {
                    pitches.emplace(side.pitch->notation, side.pitch->millionths);
                }
            }
        }
        for (const auto& [notation, millionths] : pitches) {
            const Slope pitch = {notation, millionths};
            std::vector<double> most(expected_.size());
            for (const int way : {-1, 1}) {
                const PitchChange change = {pitch,
                                            degrees_of(pitch) + way * reading_error_degrees(pitch)};
                compare({}, change, most);
            }
            add(most);
        }
    }

    void compare(const std::optional<SideOfRoof>& side, const std::optional<PitchChange>& pitch,
                 std::vector<double>& most) const {
        const std::optional<std::vector<RoofStretch>> steady = moved(side, pitch);
        if (!steady) {
            compare_anew(pitch, most);
            return;
        }
        for (std::size_t i = 0; i < expected_.size(); ++i) {
            most[i] = std::max(most[i], off_in(*steady, expected_[i], matches_[i]));
        }
    }

    void compare_anew(const std::optional<PitchChange>& change, std::vector<double>& most) const {
        const Stretches changed = stretches(change);
        if (changed.all.empty()) {
            return;
        }
        const std::vector<Matches> matches =
            matches_of(expected_, changed.all, one_plane_in_either(plane_of_, changed.plane_of));
        for (std::size_t i = 0; i < expected_.size(); ++i) {
            most[i] = std::max(most[i], off_in(changed.all, expected_[i], matches[i]));
        }
    }

    /// What the roof's edges would be; none where it would be no roof. Of a body
    /// that stands alone its lines say as much, and it is most of what is asked.
    [[nodiscard]] Stretches stretches(const std::optional<PitchChange>& change) const {
        Stretches made;
        if (bodies_.size() > 1 || bodies_[0].host) {
            const auto worked = work_out(bodies_, tape_, WalkThatIsOpen::is_forced, change);
            for (const BodyEdge& edge : worked ? worked->edges : std::vector<BodyEdge>()) {
                made.all.push_back({edge.sides.front(), edge.sides.back(), edge.from, edge.to});
            }
            return made;
        }
        const Result<ClosedSides> closed = close_sides(bodies_[0].sides, tape_);
        if (!closed) {
            return made;
        }
        const InnerLines lines =
            trace_inner_lines(with_change(bodies_[0].sides, closed->sides, change));
        if (lines.stuck.empty()) {
            made.all = stretches_of(lines, places_of(lines));
            made.plane_of = lines.plane_of;
        }
        return made;
    }

    void add(const std::vector<double>& most) {
        for (std::size_t i = 0; i < most.size(); ++i) {
            off_[i] += most[i];
        }
    }

    std::vector<RoofBody> bodies_;
    Tape tape_;
    std::span<const BodyEdge> expected_;
    std::vector<double> off_;
    std::vector<Matches> matches_;
    // Of a body that stands alone, as its readings are.
    std::vector<MovingSide> sides_;
    std::vector<std::size_t> plane_of_;
    std::optional<SteadyLines> steady_;
    std::optional<SteadyClosing> closing_;
    // Of several bodies.
    std::optional<SteadyBodies> tied_;
    std::optional<SteadyOverlay> overlay_;
};

}  // namespace

std::vector<double> off_of_edges(std::span<const RoofBody> bodies, Tape tape,
                                 const WorkedRoof& expected) {
    return Changes(bodies, tape, expected).off();
}

}  // namespace hemline
