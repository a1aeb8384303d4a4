#include "engine/work/plane_panels.h"

#include <algorithm>
#include <cmath>
#include <memory>

#include "engine/body/roof.h"
#include "engine/plan/plan.h"
#include "engine/roof/nearest.h"
#include "engine/words/result.h"
#include "engine/work/edge_in_hand.h"
#include "engine/work/edge_naming.h"

namespace hemline {

namespace {

/// The roof with its edges named as on the job.
Roof named_roof(const BodyOnJob& body) {
    Roof roof = *body.worked;
    for (std::size_t i = 0; i < roof.edges.size(); ++i) {
        if (!body.edges[i].edges.empty()) {
            roof.edges[i].id = body.edges[i].edges.front();
        }
    }
    return roof;
}

std::string item_at(const Job& job, const PlaceOnBody& place) {
    const auto item = std::find_if(job.edges.begin(), job.edges.end(), [&](const EdgeWork& work) {
        return work.edge.kind == EdgeKind::panels && work.place == place;
    });
    return item == job.edges.end() ? std::string() : item->edge.id;
}

/// The last answer to a step that reads a length or counts; null: none.
const Answer* answered(const EdgeWork& work, std::string_view step) {
    const Answer* last = nullptr;
    for (const DoneStep& done : work.steps) {
        last = done.step.step == step ? &done.step.answer : last;
    }
    return last;
}

Length length_answered(const EdgeWork& work, std::string_view step) {
    const Answer* const answer = answered(work, step);
    return answer == nullptr ? Length() : answer->length;
}

/// From its eave up to its top, at a side.
Length height_at(const DeckPlane& deck, double x) {
    double top = 0;
    for (const DeckBound& bound : deck.bounds) {
        top =
            std::max({top, bound.from.x == x ? bound.from.y : 0, bound.to.x == x ? bound.to.y : 0});
    }
    return nearest_nm(top);
}

PlaneExpected expected_of(const DeckPlane& deck, bool up_the_slope) {
    if (!up_the_slope) {
        return {nearest_nm(deck.top), {}, {}, {}};
    }
    const Length left = height_at(deck, deck.left), right = height_at(deck, deck.right);
    const auto across = [&](Length high) {
        return nearest_nm(std::hypot(deck.right - deck.left, static_cast<double>(high.nm())));
    };
    return {left, right, across(right), across(left)};
}

void add_problem(Plan& plan, const std::string& panels, const Problem& problem, Severity severity) {
    plan.problems.push_back({panels, "panels", severity, problem.what, problem.mend});
}

}  // namespace

std::vector<PlaneOnJob> planes_on(const Job& job, std::span<const BodyOnJob> bodies) {
    std::vector<PlaneOnJob> all;
    for (const BodyOnJob& body : bodies) {
        if (!body.worked) {
            continue;
        }
        const Roof roof = named_roof(body);
        const std::vector<RoofBody> said = bodies_of(body);
        for (const BodyPlane& plane : roof.planes) {
            const SideWalked& side = body.walked[plane.side];
            PlaneOnJob one{{body_with(body, plane.side).id, side.id, "", 0}, {}, {}, {}};
            one.eave = side.edges.empty() ? side.id : side.edges.front();
            one.panels = item_at(job, one.place);
            one.deck = deck_plane(roof, said, plane);
            one.deck.name = one.eave;
            all.push_back(std::move(one));
        }
    }
    return all;
}

std::vector<Fact> lacking_panels(const Job& job, std::span<const BodyOnJob> bodies) {
    FreeLetters free(job, {});
    std::vector<Fact> facts;
    for (const PlaneOnJob& plane : planes_on(job, bodies)) {
        if (plane.panels.empty()) {
            Edge item;
            item.id = free.next();
            item.kind = EdgeKind::panels;
            facts.emplace_back(EdgeAdded{item});
            facts.emplace_back(EdgePlaced{item.id, plane.place});
        }
    }
    return facts;
}

PanelJob panel_job_on(const Job& job, std::string_view panels) {
    PanelJob said;
    said.practice = job.practice;
    const Site& site = job.practice.site;
    if (const auto chosen = site.seams.find(panels); chosen != site.seams.end()) {
        said.chosen = ChosenSeams{chosen->second.shift, chosen->second.one_more};
    }
    std::optional<Temperature> now = site.metal_now;
    const EdgeWork* const work = job.find(panels);
    if (const Answer* const own = work == nullptr ? nullptr : answered(*work, warmth_step)) {
        now = fahrenheit(static_cast<std::int32_t>(std::min<std::int64_t>(own->count, 250)));
    }
    if (now) {
        said.at = MetalTemperatures{*now, std::min(site.metal_coldest, *now),
                                    std::max(site.metal_hottest, *now)};
    }
    return said;
}

std::vector<Penetration> penetrations_on(const Job& job, const PlaneOnJob& plane) {
    std::vector<Penetration> through;
    for (const EdgeWork& work : job.edges) {
        const Length base = length_answered(work, base_step);
        const Answer* const along = answered(work, along_step);
        if (work.edge.kind != EdgeKind::penetration || work.place != plane.place ||
            base == Length() || along == nullptr) {
            continue;
        }
        const Length up = length_answered(work, from_line_step);
        const bool from_top = fixed_line_of(job.practice) == FixedLine::ridge;
        const Length top = nearest_nm(plane.deck.top);
        through.push_back({Penetration::Kind::pipe, along->length, from_top ? top - up : up, base});
    }
    return through;
}

std::vector<SeamInPlan> seams_in_plan(const PanelLayout& layout) {
    std::vector<SeamInPlan> all;
    for (const LaidPan& pan : layout.pans) {
        const DeckPart& last = pan.flat.back();
        if (pan.from + pan.width < layout.frame.right.at) {
            all.push_back({in_plan(layout.plane, {last.x2, last.foot2}),
                           in_plan(layout.plane, {last.x2, last.top2})});
        }
    }
    return all;
}

PlaneReadings plane_readings_on(const Job& job, std::string_view panels) {
    const EdgeWork* const work = job.find(panels);
    const auto read = [&](std::string_view step) {
        const Answer* const answer = work == nullptr ? nullptr : answered(*work, step);
        return answer == nullptr || answer->length <= Length() ? std::nullopt
                                                               : std::optional(answer->length);
    };
    return {read(left_slope_step), read(right_slope_step), read(rising_step), read(falling_step)};
}

void plan_panels(Plan& plan, const Job& job, std::span<const BodyOnJob> bodies) {
    std::vector<PlaneAsked> asked;
    std::vector<std::string> items;
    for (PlaneOnJob& plane : planes_on(job, bodies)) {
        if (plane.panels.empty()) {
            continue;
        }
        PlaneAsked one{{}, panel_job_on(job, plane.panels), penetrations_on(job, plane)};
        const EdgeWork* const eave = job.find(plane.eave);
        const SeamFrame frame = seam_task({plane.deck, one.job, {}}).frame;
        const bool up_the_slope = frame.left.square && frame.right.square;
        plan.panels[plane.panels] = {plane.eave, eave == nullptr ? Side::left : eave->edge.first,
                                     up_the_slope, expected_of(plane.deck, up_the_slope), nullptr};
        const Result<ReadPlane> read =
            read_plane(plane.deck, plane_readings_on(job, plane.panels), job.practice.tape);
        const Result<PanEnds> ends = ends_on(plane.deck, one.job);
        const std::optional<Problem> narrow = no_pans(one.job);
        if (!read || !ends || narrow) {
            add_problem(plan, plane.panels,
                        !read   ? read.problem()
                        : !ends ? ends.problem()
                                : *narrow,
                        Severity::problem);
            continue;
        }
        for (const Problem& doubt : read->doubts) {
            add_problem(plan, plane.panels, doubt, Severity::measure_again);
        }
        one.plane = read->plane;
        asked.push_back(std::move(one));
        items.push_back(plane.panels);
    }
    const Result<std::vector<PanelLayout>> laid = lay_roof(asked);
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (!laid) {
            add_problem(plan, items[i], laid.problem(), Severity::problem);
            continue;
        }
        for (const PanelDoubt& doubt : (*laid)[i].doubts) {
            add_problem(plan, items[i], doubt.problem, Severity::measure_again);
        }
        plan.panels[items[i]].layout = std::make_shared<const PanelLayout>((*laid)[i]);
    }
}

std::optional<PlaneAsked> plane_asked(const Job& job, std::span<const BodyOnJob> bodies,
                                      std::string_view panels) {
    for (PlaneOnJob& plane : planes_on(job, bodies)) {
        const Result<ReadPlane> read =
            read_plane(plane.deck, plane_readings_on(job, panels), job.practice.tape);
        if (plane.panels == panels && read) {
            return PlaneAsked{read->plane, panel_job_on(job, panels), penetrations_on(job, plane)};
        }
    }
    return {};
}

}  // namespace hemline
