// What the steps of an edge are made from, and the numbers that they tell.
#pragma once

#include <map>
#include <optional>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/plan/plan.h"
#include "engine/record/job.h"
#include "engine/work/boot.h"
#include "engine/work/closures.h"
#include "engine/work/panel_steps.h"
#include "engine/work/procedure.h"
#include "engine/work/procedure_words.h"
#include "engine/work/strips.h"

namespace hemline {

using StepOf = std::pair<std::string_view, int>;  ///< id of a step, and piece

/// What is recorded of an edge, indexed.
struct Recorded {
    explicit Recorded(const EdgeWork& work);

    [[nodiscard]] const CutPiece* cut_of(TrimRole role, int piece) const {
        const auto found = cuts.find({role, piece});
        return found == cuts.end() ? nullptr : found->second;
    }

    std::map<std::pair<TrimRole, int>, const CutPiece*> cuts;  ///< the latest event of each piece
    std::multimap<StepOf, const DoneStep*> steps;
    std::map<StepOf, const Undecided*> steps_apart;  ///< two tablets disagree, no pick yet
    const Undecided* finish_apart = nullptr;
};

/// Everything that the steps of an edge are made from.
struct EdgeInHand {
    const EdgeWork& work;
    const Plan& plan;
    const Practice& practice;
    const std::vector<StepRule>& procedure;
    const Catalogue& catalogue;
    Recorded recorded;
    Text reading_missing;
    Closures closures;
    Strips strips;
    const Trim* trim = nullptr;  ///< the main trim, or none
    CornerMates mates = {};
    const PlannedPanels* panels = nullptr;  ///< of a plane, or none

    [[nodiscard]] const Run* run(TrimRole role) const { return find_run(plan, work.edge.id, role); }
};

/// Ids of the steps that measure a penetration: across the pipe, across the boot's base, and from
/// the line where panels are pinned.
constexpr std::string_view pipe_step = "size";
constexpr std::string_view base_step = "base";
constexpr std::string_view from_line_step = "from_line";
/// Cuts the strip that panels hold on.
constexpr std::string_view strip_cut_step = "strip_cut";

/// The last length that such a step of the edge was answered with; none yet.
std::optional<Length> measured(const EdgeInHand& ground, std::string_view step);
/// The boot of a penetration as far as it is measured; none: nothing is.
std::optional<Boot> boot_on(const EdgeInHand& ground);

/// Screws, closures and the like, as many as planned.
PlannedCounts counts_planned(const EdgeInHand& ground, const Run& run, int piece);
/// The rule's action with its values filled in.
Text action_of(const StepRule& rule, int piece, const EdgeInHand& ground, const Run& run);
/// The length asked, least and most, where the edge itself sets it; none: the rule says it.
LengthLimits own_limits(const StepRule& rule, int piece, const EdgeInHand& ground);
/// Whether the edge is as the rule asks.
bool holds(Only only, const EdgeInHand& ground);

}  // namespace hemline
