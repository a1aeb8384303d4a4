// From the walk to the edges that it gives: what a job is told when a body is walked.
#include <algorithm>
#include <map>
#include <tuple>

#include "engine/body/roof.h"
#include "engine/roof/edge_shape.h"
#include "engine/roof/walk_rings.h"
#include "engine/work/edge_naming.h"
#include "engine/work/roof_body.h"

namespace hemline {

namespace {

/// Not where a body stands on another: that is inside the roof.
bool lies_along_side(const BodyOnJob& roof, const EdgeOnBody& edge) {
    const std::size_t first = edge.worked.sides.front(), last = edge.worked.sides.back();
    return first == last || (&body_with(roof, first) == &body_with(roof, last) &&
                             (is_upright(roof.sides[first]) || is_upright(roof.sides[last])));
}

std::vector<Fact> edges_lacking(const Job& job, BodyOnJob& roof, const Catalogue& catalogue) {
    FreeLetters free(job, roof.walked);
    std::vector<Fact> facts;
    for (const EdgeOnBody& edge : roof.edges) {
        if (edge.edges.empty()) {
            add_edge(job, roof, edge, free, catalogue, facts);
        }
    }
    return facts;
}

BodyWalked walked_fact(const BodyOnJob& roof, const BodyInRoof& body) {
    const auto first = roof.walked.begin() + static_cast<std::ptrdiff_t>(body.first);
    return {
        body.id, {first, first + static_cast<std::ptrdiff_t>(body.sides)}, roof.closed, body.host};
}

/// The bodies whose walks name other edges than the job's.
std::vector<Fact> walks_changed(const Job& job, const BodyOnJob& roof) {
    std::vector<Fact> facts;
    for (const BodyInRoof& body : roof.bodies) {
        BodyWalked fact = walked_fact(roof, body);
        const auto known = std::find_if(job.bodies.begin(), job.bodies.end(),
                                        [&](const WalkedBody& one) { return one.id == body.id; });
        if (known == job.bodies.end() || known->sides != fact.sides || !known->closed ||
            !(known->host == fact.host)) {
            facts.emplace_back(std::move(fact));
        }
    }
    return facts;
}

/// Every edge of the roofs of a job.
std::vector<EdgeOnBody> edges_of_roofs(const Job& job) {
    std::vector<EdgeOnBody> edges;
    for (const BodyOnJob& roof : roof_bodies(job)) {
        edges.insert(edges.end(), roof.edges.begin(), roof.edges.end());
    }
    return edges;
}

/// Edges that end otherwise on the new roof, as an eave does that a wing cuts; what metal is cut
/// for stays as it is said.
std::vector<Fact> ends_changed(const Job& job, const BodyOnJob& roof,
                               const std::vector<EdgeOnBody>& before) {
    std::vector<Fact> facts;
    for (const EdgeOnBody& now : roof.edges) {
        const EdgeWork* const work = now.edges.size() == 1 ? job.find(now.edges[0]) : nullptr;
        const auto then = std::find_if(before.begin(), before.end(), [&](const EdgeOnBody& one) {
            return one.edges == now.edges;
        });
        if (work == nullptr || !work->cut.empty() || then == before.end()) {
            continue;
        }
        Edge edge = work->added;
        for (const Side side : {Side::left, Side::right}) {
            const bool is_left = side == Side::left;
            const End was = is_left ? then->worked.left : then->worked.right;
            const End is = is_left ? now.worked.left : now.worked.right;
            if (was != is) {
                (is_left ? edge.left : edge.right) = end_it_can_have(edge.kind, side, is);
            }
        }
        if (!(edge == work->added)) {
            facts.emplace_back(EdgeAdded{edge});
        }
    }
    return facts;
}

/// The others have the pitch of the first; its edge.
std::string share_first_pitch(BodyOnJob& roof, const BodyInRoof& body) {
    std::string first;
    for (std::size_t i = body.first; i < body.first + body.sides; ++i) {
        SideWalked& side = roof.walked[i];
        if (is_upright(roof.sides[i])) {
            continue;
        }
        if (first.empty()) {
            first = side.edges.empty() ? "" : side.edges.front();
        } else if (side.pitch_from.empty()) {
            side.pitch_from = first;
        }
    }
    return first;
}

/// The pitch of the body's own roof. A transition's upper roof is the body's, and its edge alone
/// says that pitch: what is read there is the lower one's.
void say_pitch(const Job& job, const std::string& id, Slope pitch, std::vector<Fact>& facts) {
    const auto is_upper = [](const Edge& edge) {
        return facts_of(edge.kind).fold == FoldFrom::change_of_pitch;
    };
    for (Fact& fact : facts) {
        auto* const added = std::get_if<EdgeAdded>(&fact);
        if (added != nullptr && added->edge.id == id && is_upper(added->edge)) {
            added->edge.pitch2 = pitch;
            return;
        }
    }
    const EdgeWork* const work = job.find(id);
    if (work != nullptr && is_upper(work->edge)) {
        Edge changed = work->edge;
        changed.pitch2 = pitch;
        facts.emplace_back(EdgeAdded{std::move(changed)});
        return;
    }
    facts.emplace_back(PitchTaken{id, pitch});
}

/// Every eave has the pitch of the first that has the same: said there once.
std::vector<Fact> pitches_said(std::vector<BodyOnJob>& roofs) {
    std::map<std::pair<SlopeNotation, std::int64_t>, std::string> first;
    std::vector<Fact> said;
    for (BodyOnJob& roof : roofs) {
        for (SideWalked& side : roof.walked) {
            if (!side.pitch || side.edges.empty() || !side.meets.empty()) {
                continue;
            }
            const auto [known, is_new] = first.emplace(
                std::pair(side.pitch->notation, side.pitch->millionths), side.edges.front());
            side.pitch_from = is_new ? "" : known->second;
            if (is_new) {
                said.emplace_back(PitchTaken{side.edges.front(), *side.pitch});
            }
        }
    }
    return said;
}

}  // namespace

std::string next_side(const Job& job, const std::vector<SideWalked>& walked) {
    return FreeLetters(job, walked).next();
}

WalkedBody walk_of(std::string id, const RoofBody& body) {
    WalkedBody walked;
    walked.id = std::move(id);
    walked.closed = true;
    if (body.host) {
        walked.host = HostSaid{body.host->eave, body.host->along, body.host->up, body.host->rise};
    }
    for (const BodySide& side : body.sides) {
        SideWalked made;
        made.id = side.id;
        made.kind = side.kind;
        made.length = side.length;
        made.corner = side.corner;
        made.pitch = side.pitch;
        made.meets = side.meets;
        walked.sides.push_back(std::move(made));
    }
    return walked;
}

std::vector<Fact> lacking_edges(const Job& job, const BodyOnJob& body, const Catalogue& catalogue) {
    BodyOnJob told = body;
    const std::vector<Fact> edges = edges_lacking(job, told, catalogue);
    std::vector<Fact> facts = walks_changed(job, told);
    facts.insert(facts.end(), edges.begin(), edges.end());
    return facts;
}

std::vector<Fact> facts_of_walk(const Job& job, WalkedBody walked, std::optional<Slope> pitch,
                                const Catalogue& catalogue) {
    BodyOnJob roof = roof_body(job, walked, pitch);
    FreeLetters free(job, roof.walked);
    const std::vector<EdgeOnBody> before = edges_of_roofs(job);
    std::vector<Fact> edges = ends_changed(job, roof, before);
    for (const EdgeOnBody& edge : roof.edges) {
        // What another body lacks on purpose it goes on lacking.
        const bool is_known = edge.place.body != walked.id &&
                              std::any_of(before.begin(), before.end(), [&](const EdgeOnBody& one) {
                                  return one.edges.empty() && one.place == edge.place;
                              });
        if (edge.edges.empty() && !is_known) {
            add_edge(job, roof, edge, free, catalogue, edges);
        }
    }
    const auto own = std::find_if(roof.bodies.begin(), roof.bodies.end(),
                                  [&](const BodyInRoof& one) { return one.id == walked.id; });
    const std::string first = share_first_pitch(roof, *own);
    std::vector<Fact> facts = walks_changed(job, roof);
    facts.insert(facts.end(), edges.begin(), edges.end());
    if (pitch && !first.empty()) {
        say_pitch(job, first, *pitch, facts);
    }
    return facts;
}

Result<std::vector<Fact>> facts_of_walks(const Job& job, const std::vector<WalkedBody>& walks,
                                         const Catalogue& catalogue) {
    Job with = job;
    with.bodies.insert(with.bodies.end(), walks.begin(), walks.end());
    std::vector<BodyOnJob> roofs = roof_bodies(with);
    // Named as one roof is: first what lies along sides, then what is inside, body by body.
    std::vector<std::tuple<bool, std::size_t, BodyOnJob*, std::size_t>> turns;
    for (BodyOnJob& roof : roofs) {
        if (roof.problem) {
            return *roof.problem;
        }
        for (std::size_t i = 0; i < roof.edges.size(); ++i) {
            const auto body = std::find_if(with.bodies.begin(), with.bodies.end(), [&](auto& one) {
                return one.id == roof.edges[i].place.body;
            });
            turns.emplace_back(!lies_along_side(roof, roof.edges[i]),
                               static_cast<std::size_t>(body - with.bodies.begin()), &roof, i);
        }
    }
    std::stable_sort(turns.begin(), turns.end(), [](const auto& a, const auto& b) {
        return std::tie(std::get<0>(a), std::get<1>(a)) < std::tie(std::get<0>(b), std::get<1>(b));
    });
    FreeLetters free(with, {});
    std::vector<Fact> edges;
    for (const auto& [inside, body, roof, i] : turns) {
        if (roof->edges[i].edges.empty()) {
            add_edge(job, *roof, roof->edges[i], free, catalogue, edges);
        }
    }
    const std::vector<Fact> pitches = pitches_said(roofs);
    std::vector<Fact> facts;
    for (const BodyOnJob& roof : roofs) {
        const std::vector<Fact> walked = walks_changed(job, roof);
        facts.insert(facts.end(), walked.begin(), walked.end());
    }
    facts.insert(facts.end(), edges.begin(), edges.end());
    facts.insert(facts.end(), pitches.begin(), pitches.end());
    return facts;
}

std::optional<WalkedBody> body_of_rows(const Job& job) {
    std::vector<WalkedEdge> rows;
    for (const EdgeWork& work : job.edges) {
        if (is_around_house(work.edge.kind)) {
            rows.push_back({work.edge, {}});
        }
    }
    const std::size_t circle = full_circle(rows, job.practice.tape);
    if (circle == 0) {
        return {};
    }
    const Walk walk = lay_walk(std::span(rows).first(circle), job.practice.tape);
    WalkedBody body;
    body.id = "1";
    body.closed = true;
    FreeLetters free(job, {});
    for (const WalkSide& side : walk.sides) {
        const Edge* const row = side.edge ? &walk.edges[*side.edge].edge : nullptr;
        const SideKind kind = row == nullptr || row->kind == EdgeKind::gable ? SideKind::gable
                              : row->kind == EdgeKind::high_eave             ? SideKind::high_eave
                                                                             : SideKind::eave;
        // A gable's two slopes are one side.
        if (body.sides.empty() || body.sides.back().corner != half_turn ||
            body.sides.back().kind != kind || kind != SideKind::gable) {
            body.sides.emplace_back();
            body.sides.back().id = row == nullptr ? free.next() : row->id;
            body.sides.back().kind = kind;
        }
        SideWalked& made = body.sides.back();
        made.corner = side.after.inside.value_or(degrees(90));
        if (row != nullptr) {
            made.edges.push_back(row->id);
        }
    }
    return body;
}

}  // namespace hemline
