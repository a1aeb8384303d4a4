// What a rule of practice is called.
#include <algorithm>
#include <iterator>

#include "engine/measure/length_text.h"
#include "engine/measure/temperature.h"
#include "engine/trim/practice.h"
#include "engine/trim/spoken_value.h"
#include "engine/words/path_text.h"
#include "engine/words/result.h"

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
    {"seam_clear", phrase("screw to seam")},
    {"boot_clear", phrase("boot to seam")},
    {"hole_clear", phrase("hole round a pipe")},
    {"cricket_from", phrase("widest without cricket")},
    {"fixed_line", phrase("panels pinned at")},
    {"seam_height", phrase("height of a seam")},
    {"seam_foot", phrase("width of a seam's foot")},
    {"panel_lip", phrase("lip under a panel's hem")},
    {"side_gap", phrase("last pan to gable or wall")},
    {"end_pan_least", phrase("narrowest end pan")},
    {"seam_off", phrase("seam to wall or valley top")},
    {"order_grid", phrase("marks panels are ordered to")},
    {"valley_open", phrase("open valley at its head")},
    {"clip_spacing", phrase("clip to clip, most")},
    {"clip_end", phrase("seam's end to first clip")},
    {"clip_zone", phrase("width of wind zones")},
    {"clip_zone_spacing", phrase("clip to clip in them")},
    {"strip", phrase("strip of coil for a pan")},
    {"closure_leg", phrase("leg of a closure")},
    {"closure_ear", phrase("ear of a closure")},
    {"tab_gable", phrase("tab at a gable")},
    {"tab_corner_out", phrase("tab, outside corner")},
    {"tab_corner_in", phrase("inside corner, under")},
    {"tab_eave", phrase("tab at an eave")},
    {"tab_ridge", phrase("fold over the peak")},
    {"tab_hip", phrase("fold over a hip")},
    {"tab_valley", phrase("fold into a valley")},
    {"turn_up", phrase("turn-up at a wall")},
    {"kick_out", phrase("kick-out")},
    {"apron_past", phrase("headwall past a corner")},
    {"apron_wrap", phrase("its wall leg round it")},
    {"wall_lap", phrase("sidewall onto the headwall")},
    {"tab_wall", phrase("more at a wall")},
    {"tab_open", phrase("more at an open end")},
    {"panel_metal", phrase("metal of the panels")},
    {"trim_metal", phrase("metal of the trim")},
    {"gutter_metal", phrase("metal of the gutter")},
    {"screw_metal", phrase("metal of the screws")},
    {"treated_wood", phrase("treated wood at the metal")},
    {"trim_held", phrase("how trim is held")},
    {"metal_now", phrase("metal now")},
    {"metal_coldest", phrase("metal at its coldest")},
    {"metal_hottest", phrase("metal at its hottest")},
    {"wind_from", phrase("wind from")},
};

/// "60 F (16 C)", for a crew of either habit.
Text temperature_words(std::string_view value) {
    const auto read = parse_temperature(value);
    if (!read) {
        return Text(value);
    }
    const int tenths = (read->tenths - 320) * 5;
    const int celsius = (tenths + (tenths < 0 ? -45 : 45)) / 90;
    return say("{1} ({2} C)", std::string(value), celsius);
}

bool is_metal(std::string_view key) {
    constexpr std::string_view metal = "_metal";
    return key.size() > metal.size() && key.substr(key.size() - metal.size()) == metal;
}

Text site_words(std::string_view key, std::string_view value) {
    if (is_metal(key)) {
        const bool offered = std::any_of(std::begin(metals_offered), std::end(metals_offered),
                                         [&](const char* metal) { return metal == value; });
        return offered ? say(value) : Text(value);
    }
    if (key == "treated_wood") {
        return value == "yes" ? say("yes") : say("no");
    }
    if (key == "trim_held") {
        return value == "one_point" ? say("at one point") : say("by screws");
    }
    const bool is_warmth = key == "metal_now" || key == "metal_coldest" || key == "metal_hottest";
    return is_warmth ? temperature_words(value) : spaced(std::string(value));
}

}  // namespace

Text spoken_value(std::string_view key, std::string_view value) {
    if (value.empty()) {
        return say("not said");
    }
    if (key == "fixed_line") {
        return value == "ridge" ? say("the ridge") : say("the eave");
    }
    const Result<Length> length = parse_length(value);
    const bool is_length = length && rule_length(Practice(), key);
    return is_length ? Text(*length) : site_words(key, value);
}

Text spoken_rule(std::string_view key) {
    const auto* const found = std::find_if(std::begin(rule_names), std::end(rule_names),
                                           [&](const RuleName& rule) { return key == rule.key; });
    if (found != std::end(rule_names)) {
        return say(found->name);
    }
    const auto of_edge = [&](std::string_view of) {
        return key.substr(0, of.size()) == of ? std::string(key.substr(of.size())) : std::string();
    };
    if (const std::string edge = of_edge("bearing."); !edge.empty()) {
        return say("which way {1} runs, left to right", edge);
    }
    if (const std::string panels = of_edge("seams."); !panels.empty()) {
        return say("how far the seams of {1} are moved", panels);
    }
    const std::string edge = of_edge("first.");
    return edge.empty() ? Text(key) : say("side {1} is fitted from", edge);
}

}  // namespace hemline
