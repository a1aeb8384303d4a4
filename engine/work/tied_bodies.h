// Which bodies of a job are worked out together: one names an eave of the other, because it runs
// into the roof above it, or has it on its transition.
#pragma once

#include <span>
#include <vector>

#include "engine/record/job.h"

namespace hemline {

/// The body and those that it is tied to, through one another, in their order; `own` is one of
/// `all` or comes last. A walk that is open is tied to nothing yet.
std::vector<WalkedBody> tied_to(const WalkedBody& own, std::span<const WalkedBody> all);

/// The first whose named eaves are all sides of `known`; null where there is none.
const WalkedBody* standing_on(std::span<const WalkedBody> bodies,
                              std::span<const WalkedBody> known);

/// Whether one of the bodies names the side.
bool is_named(std::span<const WalkedBody> bodies, const std::string& side);

}  // namespace hemline
