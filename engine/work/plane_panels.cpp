#include "engine/work/plane_panels.h"

#include <algorithm>
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
    PanelJob said = usual_panel_job();
    said.practice = job.practice;
    const Site& site = job.practice.site;
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

void plan_panels(Plan& plan, const Job& job, std::span<const BodyOnJob> bodies) {
    for (const PlaneOnJob& plane : planes_on(job, bodies)) {
        if (plane.panels.empty()) {
            continue;
        }
        const PanelJob said = panel_job_on(job, plane.panels);
        const EdgeWork* const eave = job.find(plane.eave);
        const SeamFrame frame = seam_frame(plane.deck, said.practice.seam_spacing, said.side_gap);
        PlannedPanels panels{plane.eave, eave == nullptr ? Side::left : eave->edge.first,
                             frame.left.square && frame.right.square, nullptr};
        const Result<PanelLayout> layout =
            lay_panels(plane.deck, said, penetrations_on(job, plane));
        if (layout) {
            for (const PanelDoubt& doubt : layout->doubts) {
                add_problem(plan, plane.panels, doubt.problem, Severity::measure_again);
            }
            panels.layout = std::make_shared<const PanelLayout>(*layout);
        } else {
            add_problem(plan, plane.panels, layout.problem(), Severity::problem);
        }
        plan.panels.emplace(plane.panels, std::move(panels));
    }
}

}  // namespace hemline
