// Which eaves bodies name: those that they run into, and those that lie on their transitions.
#pragma once

#include <optional>
#include <span>
#include <string>

#include "engine/body/roof.h"

namespace hemline {

struct SideOfRoof {
    std::size_t body = 0, side = 0;
};
/// None: no side of that name, or it is upright.
std::optional<SideOfRoof> eave_named(std::span<const RoofBody> bodies, const std::string& id);

/// The first eave named that is none of another body's.
std::optional<Problem> unknown_eave(std::span<const RoofBody> bodies);

/// Down from the body, through what it runs into, to one that runs into none; itself in a circle.
std::size_t stands_on(std::span<const RoofBody> bodies, std::size_t body);

/// Whether it runs into the other, or into what runs into it.
bool runs_into(std::span<const RoofBody> bodies, std::size_t body, std::size_t other);

}  // namespace hemline
