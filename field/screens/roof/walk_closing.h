// How a walk that is under way may come back: what closes it, or runs it into another roof.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/work/roof_body.h"

namespace hemline {

/// The walk closed as it is, or with one or two sides more whose lengths the others settle, each
/// the kind of the side opposite; none: it does not come back.
std::optional<WalkedBody> closed_walk(const Job& job, WalkedBody walk);

/// The walk with what runs it into another roof: sides that go on under it, open between them.
///
///     ┄┄┄┄┄┄┄ open      walked so far: the front alone (beside a gable come eaves, beside an eave
///     │     │           gables), with the side beside it, or with its open end; none: neither, or
///     └─────┘ front     no roof to run into
std::optional<WalkedBody> run_in_walk(const Job& job, WalkedBody walk);

/// The eaves of other roofs, by the names of their sides.
std::vector<std::string> hosts_for(const Job& job, const WalkedBody& walk);

}  // namespace hemline
