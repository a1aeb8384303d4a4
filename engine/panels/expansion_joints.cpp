#include "engine/panels/expansion_joints.h"

#include "engine/panels/panel_rules.h"
#include "engine/roof/nearest.h"

namespace hemline {

std::optional<Length> joint_spacing(MetalFamily metal) {
    switch (metal) {
        case MetalFamily::copper:
        case MetalFamily::stainless:
            return feet(40);
        case MetalFamily::aluminum:
            return feet(32);
        default:
            return {};
    }
}

ExpansionJoints joints_in(Length run, Length spacing, MetalFamily metal, Temperature now,
                          Temperature hottest) {
    ExpansionJoints joints;
    joints.count = parts_to_cover(run, spacing) - 1;
    if (joints.count >= 1 && (run - spacing * joints.count) * 2 > spacing) {
        ++joints.count;
    }
    joints.segment = Length::of_nm(run.nm() / (joints.count + 1));
    if (joints.count > 0) {
        const double grows = static_cast<double>(joints.segment.nm()) * expansion_of(metal) *
                             (fahrenheit_of(hottest) - fahrenheit_of(now));
        joints.gap = round_up_to(nearest_nm(grows), panel_rule::bend_grid);
    }
    return joints;
}

}  // namespace hemline
