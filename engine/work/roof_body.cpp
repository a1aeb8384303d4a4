#include "engine/work/roof_body.h"

#include <algorithm>
#include <set>

#include "engine/body/roof.h"
#include "engine/body/worked_roof.h"
#include "engine/measure/tape.h"
#include "engine/roof/nearest.h"
#include "engine/roof/outline_close.h"
#include "engine/words/result.h"
#include "engine/work/body_said.h"
#include "engine/work/roof_lesson.h"
#include "engine/work/roof_places.h"
#include "engine/work/tied_bodies.h"

namespace hemline {

namespace {

/// As walked: what is not known is as long as the others on average.
std::vector<PlanVector> walked_corners(const std::vector<BodySide>& sides) {
    double known = 0, sum = 0;
    for (const BodySide& side : sides) {
        known += side.length ? 1 : 0;
        sum += side.length ? static_cast<double>(side.length->nm()) : 0;
    }
    Walk walk;
    for (const BodySide& side : sides) {
        WalkSide walked;
        walked.length = side.length;
        if (!side.length) {
            walked.length = known > 0 ? nearest_nm(sum / known) : feet(20);
        }
        walked.after.inside = side.corner;
        walk.sides.push_back(walked);
    }
    return sides.empty() ? std::vector<PlanVector>() : close_walk(walk).places;
}

/// The pitch of a body's eaves without one.
struct PitchOfBody {
    std::string id;
    std::optional<Slope> pitch;
};

std::vector<RoofBody> all_said(const Job& job, const std::vector<WalkedBody>& walks,
                               const SaidHow& how, const PitchOfBody& own) {
    std::vector<RoofBody> bodies;
    for (const WalkedBody& walked : walks) {
        bodies.push_back(
            body_said(job, walked, how, walked.id == own.id ? own.pitch : std::optional<Slope>()));
    }
    return bodies;
}

/// How sides are said that other bodies lie over: with what no edge is read along, once the roof is
/// worked out as walked.
SaidHow with_readings(const Job& job, const std::vector<WalkedBody>& walks,
                      const PitchOfBody& own) {
    SaidHow how;
    bool is_read = false;
    for (const WalkedBody& walked : walks) {
        for (const SideWalked& side : walked.sides) {
            if (is_named(walks, side.id)) {
                how.as_walked.insert(side.id);
                is_read = is_read || is_read_along(job, side);
            }
        }
    }
    if (!is_read) {
        return how;
    }
    const std::vector<RoofBody> bodies = all_said(job, walks, {LengthsFrom::walk, {}, {}}, own);
    const Result<WorkedRoof> worked = work_out(bodies, job.practice.tape, WalkThatIsOpen::is_said);
    if (!worked || !worked->closes) {
        return how;
    }
    const SidesOfRoof sides = sides_of(bodies);
    for (std::size_t i = 0; i < sides.size(); ++i) {
        double covered = length_of(worked->walk[i].to - worked->walk[i].from);
        for (const BodyEdge& edge : worked->edges) {
            covered -= edge.sides == std::vector<std::size_t>{i} ? edge.length : 0;
        }
        if (how.as_walked.count(sides[i]->id) > 0) {
            how.covered[sides[i]->id] = nearest_nm(covered);
        }
    }
    how.as_walked.clear();
    return how;
}

void take_sides(const std::vector<RoofBody>& bodies, BodyOnJob& roof) {
    roof.sides.clear();
    for (const RoofBody& body : bodies) {
        roof.sides.insert(roof.sides.end(), body.sides.begin(), body.sides.end());
    }
}

/// Works the roof out from its readings; where those do not close, from what the walks said.
void work_out_together(const Job& job, const std::vector<WalkedBody>& walks, const PitchOfBody& own,
                       BodyOnJob& roof) {
    const Tape tape = job.practice.tape;
    const std::vector<RoofBody> bodies = all_said(job, walks, with_readings(job, walks, own), own);
    take_sides(bodies, roof);
    const Result<Roof> worked = work_out_roof(bodies, tape);
    if (worked && worked->closes) {
        roof.worked = *worked;
        return;
    }
    roof.problem =
        worked ? Problem{say("The walk round the roof misses by {1}, more than the tapes allow.",
                             worked->miss),
                         say("Look at each side's length and corner.")}
               : worked.problem();
    const std::vector<RoofBody> said = all_said(job, walks, {LengthsFrom::walk, {}, {}}, own);
    const Result<Roof> stated = work_out_roof(said, tape);
    if (stated && stated->closes) {
        roof.worked = *stated;
        take_sides(said, roof);
    }
}

/// What is said of the bodies.
BodyOnJob as_walked(const Job& job, const std::vector<WalkedBody>& walks, const PitchOfBody& own) {
    BodyOnJob roof;
    roof.id = walks.front().id;
    roof.closed = walks.front().closed;
    for (const WalkedBody& walked : walks) {
        roof.bodies.push_back({walked.id, roof.walked.size(), walked.sides.size(), walked.host});
        roof.walked.insert(roof.walked.end(), walked.sides.begin(), walked.sides.end());
    }
    take_sides(all_said(job, walks, {}, own), roof);
    return roof;
}

BodyOnJob together(const Job& job, const std::vector<WalkedBody>& walks, const PitchOfBody& own) {
    BodyOnJob roof = as_walked(job, walks, own);
    if (roof.closed) {
        work_out_together(job, walks, own, roof);
    }
    if (walks.size() == 1) {
        roof.corners = walked_corners(roof.sides);
    }
    if (roof.worked) {
        find_places(job, roof);
    }
    return roof;
}

BodyOnJob alone(const Job& job, const WalkedBody& walked, const PitchOfBody& own,
                const std::optional<Problem>& problem) {
    BodyOnJob roof = as_walked(job, {walked}, own);
    roof.corners = walked_corners(roof.sides);
    roof.problem = problem;
    return roof;
}

/// What can be worked out together, and each of the others by itself, with why it could not.
std::vector<BodyOnJob> as_far_as_they_go(const Job& job, std::vector<WalkedBody> walks,
                                         const BodyOnJob& whole) {
    std::vector<WalkedBody> good;
    std::vector<BodyOnJob> roofs;
    while (const WalkedBody* const next = standing_on(walks, good)) {
        std::vector<WalkedBody> with = good;
        with.push_back(*next);
        const BodyOnJob tried = together(job, with, {});
        if (tried.worked) {
            good = std::move(with);
        } else {
            roofs.push_back(alone(job, *next, {}, tried.problem));
        }
        walks.erase(walks.begin() + (next - walks.data()));
    }
    for (const WalkedBody& walked : walks) {
        roofs.push_back(alone(job, walked, {}, whole.problem));
    }
    if (!good.empty()) {
        roofs.insert(roofs.begin(), together(job, good, {}));
    }
    return roofs;
}

}  // namespace

const BodyInRoof& body_with(const BodyOnJob& roof, std::size_t side) {
    return *std::find_if(roof.bodies.begin(), roof.bodies.end(),
                         [&](const BodyInRoof& body) { return side < body.first + body.sides; });
}

std::vector<RoofBody> bodies_of(const BodyOnJob& roof) {
    std::vector<RoofBody> bodies;
    for (const BodyInRoof& one : roof.bodies) {
        const auto first = roof.sides.begin() + static_cast<std::ptrdiff_t>(one.first);
        bodies.push_back({one.id, {first, first + static_cast<std::ptrdiff_t>(one.sides)}, {}});
        if (one.host) {
            bodies.back().host =
                RunsInto{one.host->eave, one.host->along, one.host->up, one.host->rise};
        }
    }
    return bodies;
}

BodyOnJob roof_body(const Job& job, const WalkedBody& walked, std::optional<Slope> pitch) {
    const std::vector<WalkedBody> walks = tied_to(walked, job.bodies);
    BodyOnJob roof = together(job, walks, {walked.id, pitch});
    return roof.worked || walks.size() == 1 ? roof
                                            : alone(job, walked, {walked.id, pitch}, roof.problem);
}

std::vector<BodyOnJob> roof_bodies(const Job& job) {
    std::vector<BodyOnJob> roofs;
    std::set<std::string> done;
    for (const WalkedBody& walked : job.bodies) {
        if (done.count(walked.id) > 0) {
            continue;
        }
        const std::vector<WalkedBody> walks = tied_to(walked, job.bodies);
        for (const WalkedBody& one : walks) {
            done.insert(one.id);
        }
        BodyOnJob whole = together(job, walks, {});
        const std::vector<BodyOnJob> made = whole.worked || walks.size() == 1
                                                ? std::vector{std::move(whole)}
                                                : as_far_as_they_go(job, walks, whole);
        roofs.insert(roofs.end(), made.begin(), made.end());
    }
    for (BodyOnJob& roof : roofs) {
        roof.lesson = roof_lesson(job, roof);
    }
    return roofs;
}

std::optional<ExpectedLength> expected_of(std::span<const BodyOnJob> bodies,
                                          std::string_view edge) {
    for (const BodyOnJob& body : bodies) {
        for (const EdgeOnBody& one : body.edges) {
            if (one.edges.size() == 1 && one.edges.front() == edge) {
                return ExpectedLength{one.expected, one.off};
            }
        }
    }
    return {};
}

}  // namespace hemline
