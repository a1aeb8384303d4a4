// The panels of a job: an item for each plane of its roofs, laid as the job says and as its steps
// were answered.
//
//   walk ──▶ roof ──▶ planes ──▶ an item each ──▶ layout ──▶ steps, closures, marks
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/panels/plane_readings.h"
#include "engine/panels/roof_panels.h"
#include "engine/work/roof_body.h"

namespace hemline {

struct Plan;

/// Ids of the steps that read a plane's two slope lengths and diagonals, and how warm its metal is
/// in whole degrees Fahrenheit.
constexpr std::string_view left_slope_step = "left_slope", right_slope_step = "right_slope",
                           rising_step = "rising", falling_step = "falling", warmth_step = "warmth";
/// Of a penetration: from its plane's eave's left end.
constexpr std::string_view along_step = "along";

/// A plane of the roof, and the item of the job that its panels are.
struct PlaneOnJob {
    PlaceOnBody place;   ///< of its first eave
    std::string eave;    ///< that edge of the job, or its side
    std::string panels;  ///< empty: not an item of the job
    DeckPlane deck;      ///< bounds by the job's edges
};

/// Of all roofs that are worked out.
std::vector<PlaneOnJob> planes_on(const Job& job, std::span<const BodyOnJob> bodies);

/// An item for each plane that has none, and where it lies.
std::vector<Fact> lacking_panels(const Job& job, std::span<const BodyOnJob> bodies);

/// What is said of the panels of that item; how warm their metal is by their own steps, else as the
/// job has it.
PanelJob panel_job_on(const Job& job, std::string_view panels);
/// What goes through the plane, as far as it is measured.
std::vector<Penetration> penetrations_on(const Job& job, const PlaneOnJob& plane);

PlaneReadings plane_readings_on(const Job& job, std::string_view panels);
/// What the layout of that item is made from; none: its plane is not worked out, or its readings
/// make no plane.
std::optional<PlaneAsked> plane_asked(const Job& job, std::span<const BodyOnJob> bodies,
                                      std::string_view panels);

/// A seam, or a stretch of one beside a dormer, in the roof's plan.
struct SeamInPlan {
    PlanVector from, to;
};
std::vector<SeamInPlan> seams_in_plan(const PanelLayout& layout);

/// Lays the panels of each item. What cannot be laid, or is doubted, is a problem of the plan.
void plan_panels(Plan& plan, const Job& job, std::span<const BodyOnJob> bodies);

}  // namespace hemline
