#include "engine/body/running_in.h"

#include <algorithm>
#include <cmath>

#include "engine/body/stretches.h"
#include "engine/roof/nearest.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

constexpr double under_nm = 1e6;     // an open side ends at least so far under the host
constexpr double longest_nm = 1e12;  // longest_readable()
class RunningIn {
  public:
    RunningIn(const RoofBody& body, const HostPlane& host, Tape tape,
              const std::optional<PitchChange>& change)
        : body_(body), host_(host), tape_(tape), change_(change) {}

    /// Deeper and deeper, until its open sides lie under the host.
    Result<RunIn> deep_enough() {
        for (double by = least_depth(); by < longest_nm; by = 2 * by + 3e8) {
            Result<RunIn> tried = at(by);
            if (!tried || !sticks_out(*tried)) {
                return tried;
            }
        }
        return Problem{say("Body {1} never meets the roof above {2}, into which it runs.",
                           body_.name, body_.host->eave),
                       say("Look at its pitches, at how far up it lies, and at its rise.")};
    }

  private:
    /// Nothing where the lengths are said; else about as far as its eave goes before it meets the
    /// host.
    [[nodiscard]] double least_depth() const {
        const std::size_t n = body_.sides.size();
        for (std::size_t i = 0; i < n; ++i) {
            if (body_.sides[i].kind == SideKind::open && !body_.sides[(i + 1) % n].length &&
                !body_.sides[(i + n - 1) % n].length) {
                const double meets = static_cast<double>(body_.host->rise.nm()) / host_.rise -
                                     static_cast<double>(body_.host->up.nm());
                return std::max(meets, 0.0) + 3e7;
            }
        }
        return 0;
    }

    [[nodiscard]] Result<RunIn> at(double by) const {
        const std::vector<BodySide> sides = lengthened(body_.sides, by);
        const Result<ClosedSides> closed = close_sides(sides, tape_);
        if (!closed) {
            return closed.problem();
        }
        Result<SolvedBody> solved = solve_body(sides, *closed, change_);
        if (!solved) {
            return solved.problem();
        }
        const std::vector<Space> places = places_of(solved->lines);
        const BodyPlace place = place_running_in(
            {body_.sides, solved->sides, solved->lines, places}, *body_.host, host_);
        return RunIn{*closed, *std::move(solved), place, host_, by};
    }

    /// Whether a plane ends at an open side above the host's plane.
    [[nodiscard]] bool sticks_out(const RunIn& tried) const {
        for (const OpenTop& top : placed(body_.sides, tried.body, tried.place, {}).open) {
            for (const Space& end : {top.from, top.to}) {
                if (end.z > host_.height_over({end.x, end.y}) - under_nm) {
                    return true;
                }
            }
        }
        return false;
    }

    const RoofBody& body_;
    const HostPlane& host_;
    Tape tape_;
    const std::optional<PitchChange>& change_;
};

}  // namespace

std::vector<BodySide> lengthened(std::vector<BodySide> sides, double by) {
    const std::size_t n = sides.size();
    for (std::size_t i = 0; i < n; ++i) {
        if (sides[i].kind != SideKind::open) {
            continue;
        }
        BodySide &before = sides[(i + n - 1) % n], &after = sides[(i + 1) % n];
        if (!before.length && !after.length) {
            before.length = Length();
        }
        for (BodySide* beside : {&before, &after}) {
            if (beside->length) {
                *beside->length += nearest_nm(by);
            }
        }
    }
    return sides;
}

Result<RunIn> run_into(const RoofBody& body, const HostPlane& host, Tape tape,
                       const std::optional<PitchChange>& change) {
    return RunningIn(body, host, tape, change).deep_enough();
}

}  // namespace hemline
