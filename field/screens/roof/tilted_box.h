// A box that lies along a line, as the words along an edge do.
#pragma once

#include <imgui.h>

#include "field/touch/box.h"

namespace hemline {

/// The place so far from `p` in a direction of length 1.
inline ImVec2 moved(ImVec2 p, ImVec2 way, float by) { return {p.x + way.x * by, p.y + way.y * by}; }

struct TiltedBox {
    ImVec2 mid;
    ImVec2 along;          ///< of length 1: the way its words run
    float half_w, half_h;  ///< along, and across
};

bool do_meet(const TiltedBox& a, const TiltedBox& b);
/// Whether the straight line from one point to the other passes through the box.
bool is_crossed(const TiltedBox& box, ImVec2 from, ImVec2 to);
bool is_inside(const TiltedBox& box, Box page);
/// The least upright box around it.
Box upright_of(const TiltedBox& box);
TiltedBox grown(TiltedBox box, float by);

}  // namespace hemline
