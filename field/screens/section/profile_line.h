// A section's legs as a line on the page: corners where it is bent, hems as double lines with their
// gap.
#pragma once

#include <imgui.h>

#include <vector>

#include "field/screens/section/draw_profile.h"

namespace hemline {

struct ProfileLine {
    std::vector<ImVec2> corners;  ///< a leg lies between each two
    std::vector<ImVec2> stroke;   ///< the whole, hems with their round
};

/// As large as the box allows; a hem that is asked about is shown with only the leg it is folded
/// on.
ProfileLine profile_line(const ProfileAsked& asked, Box box);

/// The hem of that leg with a part of the leg that it is folded on, within a circle of that radius.
std::vector<ImVec2> hem_enlarged(const ProfileAsked& asked, const ProfileLine& line, int hem,
                                 ImVec2 middle, float radius);

}  // namespace hemline
