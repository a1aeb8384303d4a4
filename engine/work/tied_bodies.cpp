#include "engine/work/tied_bodies.h"

#include <algorithm>

namespace hemline {

namespace {

std::vector<std::string> eaves_named(const WalkedBody& body) {
    std::vector<std::string> named;
    if (body.host) {
        named.push_back(body.host->eave);
    }
    for (const SideWalked& side : body.sides) {
        if (!side.meets.empty()) {
            named.push_back(side.meets);
        }
    }
    return named;
}

bool has_side(const WalkedBody& body, const std::string& id) {
    return std::any_of(body.sides.begin(), body.sides.end(),
                       [&](const SideWalked& side) { return side.id == id; });
}

bool names(const WalkedBody& body, const WalkedBody& other) {
    const std::vector<std::string> named = eaves_named(body);
    return std::any_of(named.begin(), named.end(),
                       [&](const std::string& eave) { return has_side(other, eave); });
}

}  // namespace

std::vector<WalkedBody> tied_to(const WalkedBody& own, std::span<const WalkedBody> all) {
    std::vector<WalkedBody> bodies;
    for (const WalkedBody& body : all) {
        if (body.id != own.id && body.closed) {
            bodies.push_back(body);
        } else if (body.id == own.id) {
            bodies.push_back(own);
        }
    }
    if (std::none_of(bodies.begin(), bodies.end(),
                     [&](const WalkedBody& body) { return body.id == own.id; })) {
        bodies.push_back(own);
    }
    std::vector<bool> tied;
    for (const WalkedBody& body : bodies) {
        tied.push_back(body.id == own.id);
    }
    for (bool more = own.closed; more;) {
        more = false;
        for (std::size_t i = 0; i < bodies.size(); ++i) {
            for (std::size_t k = 0; k < bodies.size() && !tied[i]; ++k) {
                tied[i] = tied[k] && (names(bodies[i], bodies[k]) || names(bodies[k], bodies[i]));
                more = more || tied[i];
            }
        }
    }
    std::vector<WalkedBody> together;
    for (std::size_t i = 0; i < bodies.size(); ++i) {
        if (tied[i]) {
            together.push_back(std::move(bodies[i]));
        }
    }
    return together;
}

const WalkedBody* standing_on(std::span<const WalkedBody> bodies,
                              std::span<const WalkedBody> known) {
    for (const WalkedBody& body : bodies) {
        const std::vector<std::string> named = eaves_named(body);
        const bool stands = std::all_of(named.begin(), named.end(), [&](const std::string& eave) {
            return std::any_of(known.begin(), known.end(),
                               [&](const WalkedBody& other) { return has_side(other, eave); });
        });
        if (stands) {
            return &body;
        }
    }
    return nullptr;
}

bool is_named(std::span<const WalkedBody> bodies, const std::string& side) {
    return std::any_of(bodies.begin(), bodies.end(), [&](const WalkedBody& body) {
        const std::vector<std::string> named = eaves_named(body);
        return std::find(named.begin(), named.end(), side) != named.end();
    });
}

}  // namespace hemline
