#include "engine/work/edge_naming.h"

#include <algorithm>
#include <cmath>

#include "engine/roof/edge_shape.h"
#include "engine/work/edge_change.h"

namespace hemline {

namespace {

/// Its pitches are those of the sides it lies on, said of them alone.
Edge edge_for(const EdgeOnBody& roof, std::string id, const Catalogue& catalogue) {
    const KindOfEdge& facts = facts_of(roof.worked.kind);
    Edge edge;
    edge.id = std::move(id);
    edge.kind = roof.worked.kind;
    edge.trim = usual_trim(edge.kind, catalogue);
    edge.left = end_it_can_have(edge.kind, Side::left, roof.worked.left);
    edge.right = end_it_can_have(edge.kind, Side::right, roof.worked.right);
    if (facts.fold == FoldFrom::eaves_at_foot && roof.worked.corner_degrees) {
        // To a thousandth of a degree, past what a corner is stated to.
        edge.corner_left = microdegrees(std::llround(*roof.worked.corner_degrees * 1000) * 1000);
    }
    return edge;
}

/// An upright side's first edge has its name.
std::string name_for(const Job& job, BodyOnJob& roof, const EdgeOnBody& edge, FreeLetters& free) {
    for (const std::size_t side : edge.worked.sides) {
        if (edge.worked.sides.size() == 1 || is_upright(roof.sides[side])) {
            std::vector<std::string>& edges = roof.walked[side].edges;
            const std::string& id = roof.walked[side].id;
            const bool is_free = edges.empty() && job.find(id) == nullptr;
            edges.push_back(is_free ? id : free.next());
            return edges.back();
        }
    }
    return free.next();
}

}  // namespace

End end_it_can_have(EdgeKind kind, Side side, End end) {
    const KindOfEdge& facts = facts_of(kind);
    const std::span<const End> ends = side == Side::left ? facts.left : facts.right;
    const End usual = side == Side::left ? facts.left_usual : facts.right_usual;
    return std::find(ends.begin(), ends.end(), end) != ends.end() ? end : usual;
}

FreeLetters::FreeLetters(const Job& job, const std::vector<SideWalked>& sides) {
    for (const EdgeWork& work : job.edges) {
        taken_.insert(work.edge.id);
    }
    for (const WalkedBody& body : job.bodies) {
        take(body.sides);
    }
    take(sides);
}

std::string FreeLetters::next() {
    std::string name;
    do {
        name = edge_letters(n_++);
    } while (!taken_.insert(name).second);
    return name;
}

void FreeLetters::take(const std::vector<SideWalked>& sides) {
    for (const SideWalked& side : sides) {
        taken_.insert(side.id);
    }
}

void add_edge(const Job& job, BodyOnJob& roof, const EdgeOnBody& edge, FreeLetters& free,
              const Catalogue& catalogue, std::vector<Fact>& facts) {
    const std::string id = name_for(job, roof, edge, free);
    facts.emplace_back(EdgeAdded{edge_for(edge, id, catalogue)});
    if (edge.worked.sides.size() > 1) {
        facts.emplace_back(EdgePlaced{id, edge.place});
    }
}

std::string edge_letters(std::size_t n) {
    constexpr std::string_view alphabet = "ABCDEFGHJKLMNPQRSTUVWXYZ";
    std::string name;
    for (++n; n > 0; n = (n - 1) / alphabet.size()) {
        name.insert(name.begin(), alphabet[(n - 1) % alphabet.size()]);
    }
    return name;
}

}  // namespace hemline
