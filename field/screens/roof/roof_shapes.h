// The usual roofs that a walk is begun from: a shape is a walk with lengths missing, nothing more.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "engine/work/roof_body.h"
#include "field/state/roof_draft.h"

namespace hemline {

constexpr std::size_t sides_asked_most = 2;

/// A length that is asked: its words, and the sides that are so long.
struct ShapeLength {
    const char* words = nullptr;
    std::array<int, sides_asked_most> sides{-1, -1};  ///< −1: no more
    int usual_feet = 0;                               ///< as drawn before anything is known
};

struct RoofShape {
    const char *name, *words;
    std::size_t lengths;
    std::array<ShapeLength, shape_lengths_most> asks;
};
std::span<const RoofShape> roof_shapes();

/// The walk as it is kept: what closes it is left out. Problem: a length is not keyed in, or the
/// arms are no longer than they are wide.
Result<WalkedBody> shape_walk(const Job& job, const ShapeDraft& draft, bool metric);
/// To draw it: what is not keyed in yet is as long as is usual beside what is.
BodyOnJob shape_drawn(const ShapeDraft& draft, bool metric);

}  // namespace hemline
