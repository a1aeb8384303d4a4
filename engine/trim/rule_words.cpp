// What a rule of practice is called.
#include <algorithm>
#include <iterator>

#include "engine/trim/practice.h"

namespace hemline {

namespace {

struct RuleName {
    const char *key, *name;
};
constexpr RuleName rule_names[] = {
    {"stock", phrase("new stick")},
    {"tape", phrase("class of the tape")},
    {"lap", phrase("lap")},
    {"lap_valley", phrase("lap in a valley")},
    {"cut_grid", phrase("marks that cuts lie on")},
    {"kerf", phrase("kerf of one cut")},
    {"sliver", phrase("shortest piece")},
    {"offcut_kept", phrase("shortest drop kept")},
    {"screw_spacing", phrase("screw to screw")},
    {"screw_margin", phrase("end to first screw")},
    {"bead_gap", phrase("bead to bead")},
    {"bead_width", phrase("width of a bead")},
    {"hook_gap_most", phrase("gap of a hook, most")},
    {"hem_notch_clear", phrase("hem notch past the lap")},
    {"cleat_clear", phrase("cleat joint to a lap")},
    {"seam_spacing", phrase("seam to seam")},
    {"tab_gable", phrase("tab at a gable")},
    {"tab_corner_out", phrase("tab, outside corner")},
    {"tab_corner_in", phrase("inside corner, under")},
    {"tab_eave", phrase("tab at an eave")},
    {"tab_ridge", phrase("fold over the peak")},
    {"tab_hip", phrase("fold over a hip")},
    {"tab_valley", phrase("fold into a valley")},
    {"turn_up", phrase("turn-up at a wall")},
    {"kick_out", phrase("kick-out")},
    {"tab_wall", phrase("more at a wall")},
    {"tab_open", phrase("more at an open end")},
};

}  // namespace

Text spoken_rule(std::string_view key) {
    const auto* const found = std::find_if(std::begin(rule_names), std::end(rule_names),
                                           [&](const RuleName& rule) { return key == rule.key; });
    return found == std::end(rule_names) ? Text(key) : say(found->name);
}

}  // namespace hemline
