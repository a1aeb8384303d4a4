#include "field/screens/roof/walk_said.h"

#include <algorithm>

#include "engine/measure/angle_text.h"

namespace hemline {

WalkedBody walk_under_way(const Job& job) {
    for (const WalkedBody& body : job.bodies) {
        if (!body.closed) {
            return body;
        }
    }
    WalkedBody body;
    std::size_t number = job.bodies.size();
    const auto is_taken = [&](const WalkedBody& one) { return one.id == body.id; };
    do {
        body.id = std::to_string(++number);
    } while (std::any_of(job.bodies.begin(), job.bodies.end(), is_taken));
    return body;
}

std::optional<Angle> corner_of(const WalkDraft& draft) {
    switch (draft.corner) {
        case CornerAsked::outside:
            return square_out;
        case CornerAsked::inside:
            return square_in;
        case CornerAsked::other:
            break;
    }
    const Result<Angle> angle = parse_degrees(draft.degrees);
    return angle ? std::optional(*angle) : std::nullopt;
}

WalkedBody with_side(const Job& job, WalkedBody walk, const WalkDraft& draft, bool metric) {
    SideWalked side;
    side.id = next_side(job, walk.sides);
    side.kind = draft.kind           ? *draft.kind
                : walk.sides.empty() ? SideKind::eave
                                     : walk.sides.back().kind;
    if (const Result<Length> length = length_of(draft.length, metric)) {
        side.length = *length;
    }
    side.corner = corner_of(draft).value_or(square_out);
    walk.sides.push_back(std::move(side));
    return walk;
}

}  // namespace hemline
