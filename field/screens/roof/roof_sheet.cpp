#include "field/screens/roof/roof_sheet.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "engine/roof/edge_shape.h"
#include "engine/work/plane_panels.h"
#include "field/screens/roof/roof_packing.h"
#include "field/state/edge_view.h"

namespace hemline {

namespace {

constexpr float between_mm = 9;  // roofs that lie beside each other: room for their lengths

PlanVector left_of(PlanVector from, PlanVector to) {
    const PlanVector way = to - from;
    const double length = std::max(1.0, length_of(way));
    return {-way.y / length, way.x / length};
}

std::optional<Length> read_length(const State& state, const EdgeWork& work) {
    if (const auto agreed = work.length(state.job.practice)) {
        return agreed;
    }
    for (auto reading = work.readings.rbegin(); reading != work.readings.rend(); ++reading) {
        if (reading->of == ReadingOf::edge && !reading->struck) {
            return reading->length;
        }
    }
    return {};
}

void tell_work(const State& state, const std::string& edge, SheetLine& line) {
    line.work = edge.empty() ? nullptr : edge_of(state, edge);
    if (line.work == nullptr) {
        return;
    }
    line.letter = edge;
    line.kind = line.work->edge.kind;
    line.status = status_on(state, *line.work);
    if (const std::optional<Length> read = read_length(state, *line.work)) {
        line.says = read;
        line.is_read = true;
    }
}

/// The edges of the job that lie on it, one after the other.
void add_lines(const State& state, const std::vector<std::string>& edges, const PackedLine& whole,
               PlanRoof& roof) {
    const std::size_t n = std::max<std::size_t>(1, edges.size());
    const PlanVector way = whole.to - whole.from;
    for (std::size_t i = 0; i < n; ++i) {
        PackedLine part = whole;
        part.from = whole.from + way * (static_cast<double>(i) / static_cast<double>(n));
        part.to = whole.from + way * (static_cast<double>(i + 1) / static_cast<double>(n));
        if (n > 1) {
            part.line.says.reset();
        }
        tell_work(state, i < edges.size() ? edges[i] : std::string(), part.line);
        roof.lines.push_back(part);
    }
}

/// The side that the edge lies along; none: it is inside, or where a body stands on another.
std::optional<std::size_t> side_along(const BodyOnJob& roof, const BodyEdge& edge) {
    const std::size_t first = edge.sides.front(), last = edge.sides.back();
    if (&body_with(roof, first) != &body_with(roof, last)) {
        return {};
    }
    const auto found = std::find_if(edge.sides.begin(), edge.sides.end(), [&](std::size_t side) {
        return edge.sides.size() == 1 || is_upright(roof.sides[side]);
    });
    return found == edge.sides.end() ? std::nullopt : std::optional(*found);
}

std::vector<PlanVector> in_plan(const std::vector<Space>& walk) {
    std::vector<PlanVector> plan;
    for (const Space& corner : walk) {
        plan.push_back({corner.x, corner.y});
    }
    return plan;
}

PlanVector way_of(const LaidSide& side) {
    return {side.to.x - side.from.x, side.to.y - side.from.y};
}

/// Through how many others it runs into one that stands by itself.
std::size_t floors_of(const BodyOnJob& roof, std::size_t body) {
    std::size_t floors = 0;
    while (roof.bodies[body].host && floors < roof.bodies.size()) {
        const auto eave = std::find_if(
            roof.sides.begin(), roof.sides.end(),
            [&](const BodySide& side) { return side.id == roof.bodies[body].host->eave; });
        if (eave == roof.sides.end()) {
            break;
        }
        body = static_cast<std::size_t>(
            &body_with(roof, static_cast<std::size_t>(eave - roof.sides.begin())) -
            roof.bodies.data());
        ++floors;
    }
    return floors;
}

/// What stands on a roof is drawn over it.
std::vector<BodyPlane> planes_upward(const BodyOnJob& roof) {
    std::vector<BodyPlane> planes = roof.worked->planes;
    std::stable_sort(planes.begin(), planes.end(), [&](const BodyPlane& a, const BodyPlane& b) {
        return floors_of(roof, a.body) < floors_of(roof, b.body);
    });
    return planes;
}

/// Of the panels that lie on it.
void add_seams(const State& state, const BodyOnJob& body, const BodyPlane& plane, PlanPlane& made) {
    const std::vector<std::string>& eaves = body.walked[plane.side].edges;
    for (const auto& [item, panels] : state.plan.panels) {
        if (panels.layout == nullptr || eaves.empty() || panels.eave != eaves.front()) {
            continue;
        }
        for (const SeamInPlan& seam : seams_in_plan(*panels.layout)) {
            made.seams.emplace_back(seam.from, seam.to);
        }
    }
}

void add_worked(const State& state, const BodyOnJob& body, PlanRoof& roof) {
    for (const EdgeOnBody& edge : body.edges) {
        const std::optional<std::size_t> side = side_along(body, edge.worked);
        PackedLine line;
        line.from = {edge.worked.from.x, edge.worked.from.y};
        line.to = {edge.worked.to.x, edge.worked.to.y};
        line.line.kind = edge.worked.kind;
        line.line.says = edge.expected;
        line.line.outer = side.has_value();
        line.inside = left_of(line.from, line.to);
        // A gable's slope, from its foot up, may run against the walk.
        if (side && dot(line.to - line.from, way_of(body.worked->walk[*side])) < 0) {
            line.inside = line.inside * -1;
        }
        add_lines(state, edge.edges, line, roof);
    }
    for (const BodyPlane& plane : planes_upward(body)) {
        PlanPlane made;
        made.falls = left_of({}, way_of(body.worked->walk[plane.side])) * -1;
        made.pitch = body.sides[plane.side].pitch;
        for (const std::vector<Space>& piece : plane.pieces) {
            made.pieces.push_back(in_plan(piece));
        }
        for (const std::vector<Space>& hole : plane.holes) {
            made.holes.push_back(in_plan(hole));
        }
        add_seams(state, body, plane, made);
        roof.planes.push_back(std::move(made));
    }
}

/// Its own line, before the roof above it is known.
EdgeKind drawn_as(SideKind side) {
    switch (side) {
        case SideKind::eave:
        case SideKind::transition:
            return EdgeKind::eave;
        case SideKind::wall:
            return EdgeKind::headwall;
        case SideKind::high_eave:
            return EdgeKind::high_eave;
        case SideKind::gable:
        case SideKind::open:
            break;
    }
    return EdgeKind::gable;
}

void add_walk(const State& state, const BodyOnJob& body, PlanRoof& roof) {
    for (std::size_t i = 0; i < body.sides.size(); ++i) {
        PackedLine line;
        line.from = body.corners[i];
        line.to = body.corners[i + 1];
        line.inside = left_of(line.from, line.to);
        line.line.kind = drawn_as(body.sides[i].kind);
        line.line.says = body.sides[i].length;
        line.line.is_read = true;
        line.line.letter = body.sides[i].id;
        line.line.is_walked = true;
        add_lines(state, body.walked[i].edges, line, roof);
    }
    if (!body.closed && body.corners.size() > 2) {
        roof.gap = std::pair(body.corners.back(), body.corners.front());
    }
}

PlanRoof plan_of(const State& state, const BodyOnJob& body) {
    PlanRoof roof;
    if (body.worked) {
        add_worked(state, body, roof);
    } else {
        add_walk(state, body, roof);
    }
    for (const PackedLine& line : roof.lines) {
        roof.reach(line.from);
        roof.reach(line.to);
    }
    for (const PlanPlane& plane : roof.planes) {
        for (const auto& piece : plane.pieces) {
            for (const PlanVector corner : piece) {
                roof.reach(corner);
            }
        }
    }
    return roof;
}

/// The rows of a job whose roof nobody has walked.
PlanRoof plan_of_rows(const State& state) {
    PlanRoof roof;
    const Outline& outline = state.outline->outline;
    for (const OutlineLine& row : outline.lines) {
        PackedLine line;
        line.from = {static_cast<double>(row.from.x.nm()), static_cast<double>(row.from.y.nm())};
        line.to = {static_cast<double>(row.to.x.nm()), static_cast<double>(row.to.y.nm())};
        line.inside = left_of(line.from, line.to);
        line.line.kind = row.kind;
        add_lines(state, {row.edge}, line, roof);
        roof.reach(line.from);
        roof.reach(line.to);
    }
    if (!outline.lines.empty() && outline.state == OutlineState::misses) {
        roof.gap = std::pair(roof.lines.back().to, roof.lines.front().from);
    }
    return roof;
}

std::vector<ImVec2> on_page(const PlacedRoof& placed, const std::vector<PlanVector>& walk) {
    std::vector<ImVec2> corners;
    for (const PlanVector corner : walk) {
        corners.push_back(placed.at(corner));
    }
    return corners;
}

void put_on(const PlacedRoof& placed, RoofSheet& sheet) {
    for (const PackedLine& plan : placed.roof->lines) {
        SheetLine line = plan.line;
        line.from = placed.at(plan.from);
        line.to = placed.at(plan.to);
        line.length = std::hypot(line.to.x - line.from.x, line.to.y - line.from.y);
        const float length = std::max(0.001F, line.length);
        line.along = {(line.to.x - line.from.x) / length, (line.to.y - line.from.y) / length};
        line.inside = PlacedRoof::way(plan.inside);
        sheet.lines.push_back(line);
    }
    for (const PlanPlane& plan : placed.roof->planes) {
        SheetPlane plane;
        plane.falls = PlacedRoof::way(plan.falls);
        plane.pitch = plan.pitch;
        for (const auto& piece : plan.pieces) {
            plane.pieces.push_back(on_page(placed, piece));
        }
        for (const auto& hole : plan.holes) {
            plane.holes.push_back(on_page(placed, hole));
        }
        for (const auto& [from, to] : plan.seams) {
            plane.seams.emplace_back(placed.at(from), placed.at(to));
        }
        sheet.planes.push_back(std::move(plane));
    }
    if (placed.roof->gap) {
        sheet.gaps.push_back(
            {placed.at(placed.roof->gap->first), placed.at(placed.roof->gap->second)});
    }
}

RoofSheet laid_out(const State& state, const std::vector<PlanRoof>& roofs, float gap, Box box) {
    RoofSheet sheet;
    sheet.marks = state.marks;
    for (const PlacedRoof& placed : packed(roofs, gap, box)) {
        put_on(placed, sheet);
    }
    return sheet;
}

}  // namespace

RoofSheet roof_sheet(const Ui& ui, const State& state, Box box) {
    std::vector<PlanRoof> roofs;
    for (const BodyOnJob& body : state.bodies) {
        roofs.push_back(plan_of(state, body));
    }
    if (roofs.empty() && state.outline) {
        roofs.push_back(plan_of_rows(state));
    }
    std::stable_sort(roofs.begin(), roofs.end(), [](const PlanRoof& a, const PlanRoof& b) {
        return a.w() * a.h() > b.w() * b.h();
    });
    return laid_out(state, roofs, ui.mm(between_mm), box);
}

RoofSheet shape_sheet(const State& state, const BodyOnJob& body, Box box) {
    // A gable's end is one side, whatever stands above it.
    PlanRoof inside = plan_of(state, body), roof;
    add_walk(state, body, roof);
    for (const PackedLine& line : inside.lines) {
        roof.reach(line.from);
        roof.reach(line.to);
        if (!line.line.outer) {
            roof.lines.push_back(line);
        }
    }
    roof.planes = std::move(inside.planes);
    RoofSheet sheet = laid_out(state, {roof}, 0, box);
    for (SheetLine& line : sheet.lines) {
        line.is_walked = true;
        line.letter.clear();
        line.says.reset();
        line.is_read = false;
    }
    for (SheetPlane& plane : sheet.planes) {
        plane.pitch.reset();
    }
    return sheet;
}

RoofSheet body_sheet(const State& state, const BodyOnJob& body, Box box) {
    RoofSheet sheet = laid_out(state, {plan_of(state, body)}, 0, box);
    for (SheetLine& line : sheet.lines) {
        line.is_walked = true;
    }
    return sheet;
}

}  // namespace hemline
