// What to look out for on a plane whose panels are laid.
#pragma once

#include <vector>

#include "engine/panels/panel_layout.h"

namespace hemline {

/// Conflicts that stay, with the way out; end pans that are narrow, too wide, or not as wide at the
/// top; a top that is not level; pans that nothing pins; hems that are not bent; a valley's leg
/// that is too narrow, a strip in it that must not be screwed.
std::vector<PanelDoubt> panel_doubts(const PanelLayout& layout, const SeamLayout& seams,
                                     const PanelJob& job);

}  // namespace hemline
