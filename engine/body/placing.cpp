#include "engine/body/placing.h"

#include <algorithm>
#include <cmath>

#include "engine/body/body_places.h"
#include "engine/body/planes.h"
#include "engine/body/stretches.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

/// Between bodies that nothing ties together, nm.
constexpr double apart_nm = 3e9;

class Placing {
  public:
    Placing(std::span<const RoofBody> bodies, Tape tape, WalkThatIsOpen open,
            const std::optional<PitchChange>& change)
        : bodies_(bodies), tape_(tape), open_(open), change_(change), known_(bodies.size()) {
        std::size_t first = 0;
        for (const RoofBody& body : bodies) {
            firsts_.push_back(first);
            first += body.sides.size();
        }
    }

    Result<PlacedBodies> all() {
        if (const auto unknown = unknown_eave(bodies_)) {
            return *unknown;
        }
        std::optional<Problem> problem = begin_at(stands_on(bodies_, 0), {});
        if (!problem && known_[0]) {
            seen_from_first();
        }
        for (std::size_t i = 0; i < bodies_.size() && !problem; ++i) {
            if (!known_[i] && !bodies_[i].host) {
                problem = begin_at(i, {{right_most() + apart_nm, 0}, {1, 0}, 0});
            }
        }
        for (std::size_t i = 0; i < bodies_.size() && !problem && made_.closes; ++i) {
            if (!known_[i]) {
                problem =
                    Problem{say("Body {1} runs into a roof that runs into it.", bodies_[i].name),
                            say("Let one of the two stand by itself.")};
            }
        }
        if (problem) {
            return *problem;
        }
        for (std::size_t i = 0; i < bodies_.size() && made_.closes; ++i) {
            made_.bodies.push_back(in_roof(i));
            for (PlacedPlane& plane : made_.bodies.back().planes) {
                plane.host = known_[i]->host;
            }
        }
        for (std::size_t i = 0; i < bodies_.size() && made_.closes; ++i) {
            made_.lain.push_back(*std::move(known_[i]));
        }
        return std::move(made_);
    }

  private:
    /// The body there, and what is tied to it, and so on.
    std::optional<Problem> begin_at(std::size_t root, const BodyPlace& place) {
        if (bodies_[root].host) {
            return {};  // a circle
        }
        if (const auto problem = solve(root)) {
            return problem;
        }
        if (!known_[root]) {
            return {};
        }
        known_[root]->place = place;
        made_.ties.push_back({BodyTie::How::stands, root, {}, {}});
        return tie_all(root);
    }

    /// By itself, in its own plan.
    std::optional<Problem> solve(std::size_t body) {
        const std::vector<BodySide>& sides = bodies_[body].sides;
        const Result<ClosedSides> closed = close_sides(sides, tape_);
        if (!closed) {
            return closed.problem();
        }
        if (!closes(body, *closed)) {
            return {};
        }
        Result<SolvedBody> solved = solve_body(sides, *closed, change_);
        if (!solved) {
            return solved.problem();
        }
        known_[body] = RunIn{*closed, *std::move(solved), {}, {}, {}};
        return {};
    }

    std::optional<Problem> tie_all(std::size_t from) {
        for (std::size_t other = 0; other < bodies_.size(); ++other) {
            if (const auto problem = tie(from, other)) {
                return problem;
            }
        }
        return {};
    }

    /// Places what is not placed yet and is tied to `from`.
    std::optional<Problem> tie(std::size_t from, std::size_t to) {
        if (known_[to] || !made_.closes) {
            return {};
        }
        const RoofBody& body = bodies_[to];
        if (body.host && !lies_under_host(body)) {
            const SideOfRoof host = *eave_named(bodies_, body.host->eave);
            return host.body == from ? tie_run_in(host, to) : std::nullopt;
        }
        for (std::size_t i = 0; i < body.sides.size(); ++i) {
            if (!body.sides[i].meets.empty()) {
                const SideOfRoof eave = *eave_named(bodies_, body.sides[i].meets);
                if (eave.body == from) {
                    return tie_transition({to, i}, eave, to);
                }
            }
        }
        for (std::size_t i = 0; i < bodies_[from].sides.size(); ++i) {
            const std::string& meets = bodies_[from].sides[i].meets;
            if (!meets.empty() && eave_named(bodies_, meets)->body == to) {
                return tie_transition({from, i}, *eave_named(bodies_, meets), to);
            }
        }
        return {};
    }

    std::optional<Problem> tie_run_in(SideOfRoof eave, std::size_t to) {
        const RunIn& host = *known_[eave.body];
        const InnerLines& lines = host.body.lines;
        const std::vector<Plane> planes = planes_of(host.body.sides, lines);
        const bool rises = std::any_of(planes.begin(), planes.end(), [&](const Plane& one) {
            return one.side == lines.plane_of[eave.side] && !one.pieces.empty();
        });
        if (!rises) {
            return Problem{say("No roof rises from {1}.", bodies_[to].host->eave),
                           say("Look at the kinds and pitches of the sides beside it.")};
        }
        const std::vector<Space> places = places_of(lines);
        const BodyAlone alone = {bodies_[eave.body].sides, host.body.sides, lines, places};
        Result<RunIn> run_in = run_into(
            bodies_[to], host_plane_of(alone, eave.side, host.place, host.host), tape_, change_);
        if (!run_in) {
            return run_in.problem();
        }
        if (!closes(to, run_in->closed)) {
            return {};
        }
        known_[to] = *std::move(run_in);
        made_.ties.push_back({BodyTie::How::runs_in, to, {}, eave});
        return tie_all(to);
    }

    /// `low` is the lower body's transition; one of the two bodies is placed.
    std::optional<Problem> tie_transition(SideOfRoof low, SideOfRoof eave, std::size_t to) {
        if (const auto problem = solve(to)) {
            return problem;
        }
        if (!known_[to]) {
            return {};
        }
        const std::optional<double> rise = top_of(low);
        if (!rise) {
            return Problem{say("No level roof comes up to the transition {1}.",
                               bodies_[low.body].sides[low.side].id),
                           say("Look at the kinds and pitches of the sides across from it.")};
        }
        const BodyPlace in_upper =
            place_under_eave(bodies_[low.body], known_[low.body]->body.sides, low.side, *rise,
                             known_[eave.body]->body.sides[eave.side]);
        known_[to]->place = to == low.body
                                ? one_in_other(known_[eave.body]->place, in_upper)
                                : one_in_other(known_[low.body]->place, turned_back(in_upper));
        made_.ties.push_back({BodyTie::How::transition, to, low, eave});
        return tie_all(to);
    }

    /// The height of the planes along an upright side where it is level.
    [[nodiscard]] std::optional<double> top_of(SideOfRoof side) const {
        for (const BodyEdge& edge : known_[side.body]->body.edges) {
            if (edge.kind == EdgeKind::transition && edge.sides.size() == 2 &&
                std::find(edge.sides.begin(), edge.sides.end(), side.side) != edge.sides.end()) {
                return edge.from.z;
            }
        }
        return {};
    }

    void seen_from_first() {
        const BodyPlace back = turned_back(known_[0]->place);
        for (std::optional<RunIn>& one : known_) {
            if (one) {
                one->place = one_in_other(back, one->place);
            }
            if (one && one->host) {
                one->host = seen_from(back, *one->host);
            }
        }
    }

    [[nodiscard]] PlacedBody in_roof(std::size_t body) const {
        return placed(bodies_[body].sides, known_[body]->body, known_[body]->place,
                      {body, firsts_[body]});
    }

    [[nodiscard]] double right_most() const {
        double most = 0;
        for (const std::optional<RunIn>& one : known_) {
            for (const MovingSide& side : one ? one->body.sides : std::vector<MovingSide>()) {
                most = std::max(most, one->place.in_roof(side.from).x);
            }
        }
        return most;
    }

    /// Keeps the first body that does not.
    bool closes(std::size_t body, const ClosedSides& closed) {
        if (body == 0) {
            made_.miss = closed.miss;
        }
        if (!closed.closes && open_ == WalkThatIsOpen::is_said && made_.closes) {
            made_.closes = false;
            made_.miss = closed.miss;
            made_.open_body = body;
        }
        return made_.closes;
    }

    std::span<const RoofBody> bodies_;
    Tape tape_;
    WalkThatIsOpen open_;
    const std::optional<PitchChange>& change_;
    std::vector<std::optional<RunIn>> known_;
    std::vector<std::size_t> firsts_;
    PlacedBodies made_;
};

}  // namespace

Result<PlacedBodies> place_bodies(std::span<const RoofBody> bodies, Tape tape, WalkThatIsOpen open,
                                  const std::optional<PitchChange>& change) {
    return Placing(bodies, tape, open, change).all();
}

}  // namespace hemline
