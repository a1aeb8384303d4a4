#include "engine/body/body.h"

#include <algorithm>
#include <set>

#include "engine/body/off_of_edges.h"
#include "engine/body/past_host.h"
#include "engine/body/roof.h"
#include "engine/body/worked_roof.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

/// A, B … Z, AA …, without I and O, which are read as 1 and 0.
std::string letters(std::size_t n) {
    constexpr std::string_view alphabet = "ABCDEFGHJKLMNPQRSTUVWXYZ";
    std::string name;
    for (++n; n > 0; n = (n - 1) / alphabet.size()) {
        name.insert(name.begin(), alphabet[(n - 1) % alphabet.size()]);
    }
    return name;
}

/// The sides keep their names; what is new takes the next letter that is free.
void name_edges(std::span<const RoofBody> bodies, std::vector<BodyEdge>& edges) {
    const SidesOfRoof sides = sides_of(bodies);
    std::set<std::string> taken;
    for (const BodySide* side : sides) {
        taken.insert(side->id);
    }
    std::set<std::size_t> named;
    std::size_t next = 0;
    for (BodyEdge& edge : edges) {
        const auto own = std::find_if(edge.sides.begin(), edge.sides.end(), [&](std::size_t side) {
            return edge.sides.size() == 1 || is_upright(*sides[side]);
        });
        if (own != edge.sides.end() && named.insert(*own).second) {
            edge.id = sides[*own]->id;
            continue;
        }
        do {
            edge.id = letters(next++);
        } while (!taken.insert(edge.id).second);
    }
}

std::optional<Problem> check(std::span<const RoofBody> bodies) {
    constexpr std::size_t bodies_most = 40;  // as many as a roof has dormers
    if (bodies.empty() || bodies.size() > bodies_most) {
        return Problem{
            say("A roof has 1 to {1} bodies; this one has {2}.", bodies_most, bodies.size()),
            say("Give each roof a file of its own.")};
    }
    for (const RoofBody& body : bodies) {
        if (body.sides.empty()) {
            return Problem{say("Body {1} has no sides.", body.name), say("Walk it.")};
        }
    }
    return {};
}

}  // namespace

SidesOfRoof sides_of(std::span<const RoofBody> bodies) {
    SidesOfRoof sides;
    for (const RoofBody& body : bodies) {
        for (const BodySide& side : body.sides) {
            sides.push_back(&side);
        }
    }
    return sides;
}

Result<Roof> work_out_roof(std::span<const RoofBody> bodies, Tape tape) {
    if (const std::optional<Problem> problem = check(bodies)) {
        return *problem;
    }
    const Result<WorkedRoof> worked = work_out(bodies, tape, WalkThatIsOpen::is_said);
    if (!worked) {
        return worked.problem();
    }
    Roof roof;
    roof.closes = worked->closes;
    roof.miss = worked->miss;
    if (!roof.closes) {
        return roof;
    }
    if (const auto problem = worked->joined ? past_host(*worked->joined, bodies) : std::nullopt) {
        return *problem;
    }
    roof.walk = worked->walk;
    const std::vector<double> off = off_of_edges(bodies, tape, *worked);
    for (std::size_t i = 0; i < worked->edges.size(); ++i) {
        BodyEdge edge = worked->edges[i];
        edge.off = off[i];
        if (edge.length > edge.off) {
            roof.edges.push_back(std::move(edge));
        }
    }
    name_edges(bodies, roof.edges);
    roof.planes = worked->alone ? planes_in_space(*worked->alone) : planes_of_roof(*worked->joined);
    return roof;
}

Result<Body> work_out_body(std::span<const BodySide> sides, Tape tape) {
    const RoofBody body = {{}, {sides.begin(), sides.end()}, {}};
    return work_out_roof(std::span(&body, 1), tape);
}

}  // namespace hemline
