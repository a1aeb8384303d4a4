#include "field/screens/roof/walk_closing.h"

#include <algorithm>

namespace hemline {

namespace {

constexpr std::size_t closing_sides_most = 2;

Angle turned_by(const WalkedBody& walk) {
    Angle turned;
    for (const SideWalked& side : walk.sides) {
        turned += half_turn - side.corner;
    }
    return turned;
}

void add_side(const Job& job, WalkedBody& walk, SideKind kind) {
    SideWalked side;
    side.id = next_side(job, walk.sides);
    side.kind = kind;
    walk.sides.push_back(std::move(side));
}

bool has_open_side(const WalkedBody& walk) {
    return std::any_of(walk.sides.begin(), walk.sides.end(),
                       [](const SideWalked& side) { return side.kind == SideKind::open; });
}

}  // namespace

std::optional<WalkedBody> closed_walk(const Job& job, WalkedBody walk) {
    for (std::size_t more = 0; more <= closing_sides_most; ++more) {
        if (turned_by(walk) == full_turn && walk.sides.size() > 2) {
            walk.closed = true;
            const BodyOnJob body = roof_body(job, walk, rise_in_12(6));
            if (body.worked && !body.problem) {
                return walk;
            }
        }
        if (walk.sides.size() < 2) {
            return {};
        }
        add_side(job, walk, walk.sides[walk.sides.size() - 2].kind);
        walk.closed = false;
    }
    return {};
}

std::optional<WalkedBody> run_in_walk(const Job& job, WalkedBody walk) {
    if (walk.sides.empty() || !walk.sides.front().length || hosts_for(job, walk).empty()) {
        return {};
    }
    if (walk.sides.size() == 1) {
        add_side(job, walk, is_upright(walk.sides.front().kind) ? SideKind::eave : SideKind::gable);
    }
    if (walk.sides.size() == 2 && !has_open_side(walk)) {
        add_side(job, walk, SideKind::open);
    }
    if (!has_open_side(walk)) {
        return {};
    }
    if (walk.sides.back().kind == SideKind::open) {
        add_side(job, walk, walk.sides[walk.sides.size() - 2].kind);
    }
    walk.closed = true;
    return turned_by(walk) == full_turn ? std::optional(walk) : std::nullopt;
}

std::vector<std::string> hosts_for(const Job& job, const WalkedBody& walk) {
    std::vector<std::string> eaves;
    for (const WalkedBody& body : job.bodies) {
        for (const SideWalked& side : body.sides) {
            if (body.closed && body.id != walk.id && !is_upright(side.kind) && side.meets.empty()) {
                eaves.push_back(side.id);
            }
        }
    }
    return eaves;
}

}  // namespace hemline
