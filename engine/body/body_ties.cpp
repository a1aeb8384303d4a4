#include "engine/body/body_ties.h"
#include "engine/words/result.h"

namespace hemline {

std::optional<SideOfRoof> eave_named(std::span<const RoofBody> bodies, const std::string& id) {
    for (std::size_t body = 0; body < bodies.size(); ++body) {
        for (std::size_t i = 0; i < bodies[body].sides.size(); ++i) {
            const BodySide& side = bodies[body].sides[i];
            if (side.id == id && !is_upright(side)) {
                return SideOfRoof{body, i};
            }
        }
    }
    return {};
}

std::optional<Problem> unknown_eave(std::span<const RoofBody> bodies) {
    for (std::size_t body = 0; body < bodies.size(); ++body) {
        std::vector<std::string> named;
        if (bodies[body].host) {
            named.push_back(bodies[body].host->eave);
        }
        for (const BodySide& side : bodies[body].sides) {
            if (!side.meets.empty()) {
                named.push_back(side.meets);
            }
        }
        for (const std::string& id : named) {
            const auto eave = eave_named(bodies, id);
            if (!eave || eave->body == body) {
                return Problem{say("{1} is no eave of another body.", id),
                               say("Name an eave as its body's walk does.")};
            }
        }
    }
    return {};
}

std::size_t stands_on(std::span<const RoofBody> bodies, std::size_t body) {
    for (std::size_t steps = 0; bodies[body].host && steps < bodies.size(); ++steps) {
        body = eave_named(bodies, bodies[body].host->eave)->body;
    }
    return body;
}

bool runs_into(std::span<const RoofBody> bodies, std::size_t body, std::size_t other) {
    for (std::size_t steps = 0; bodies[body].host && steps < bodies.size(); ++steps) {
        body = eave_named(bodies, bodies[body].host->eave)->body;
        if (body == other) {
            return true;
        }
    }
    return false;
}

}  // namespace hemline
