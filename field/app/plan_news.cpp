#include "field/app/plan_news.h"

#include "engine/plan/plan_changes.h"

namespace hemline {

namespace {

/// "Sticks to open: 5, not 4 (fascia wrap).", for each pool where it is so.
std::string stick_changes(const State& now, const Plan& before) {
    std::string words;
    for (const Proof& proof : now.plan.proofs) {
        for (const Proof& then : before.proofs) {
            const Trim* const trim = now.assets->catalogue.find(proof.trim);
            if (then.pool == proof.pool && then.sticks != proof.sticks) {
                words += " Sticks to open: " + std::to_string(proof.sticks) + ", not " +
                         std::to_string(then.sticks) + " (" +
                         (trim == nullptr ? proof.trim : trim->name) + ").";
            }
        }
    }
    return words;
}

}  // namespace

std::string plan_news(const State& now, const Fact& fact, const Plan& before,
                      std::int64_t sticks_before) {
    if (const auto* const off = std::get_if<EdgeTakenOff>(&fact)) {
        return "Edge " + off->edge + " is off the job. Undo puts it back with all that was read.";
    }
    constexpr std::size_t said_most = 3;
    const auto* const read = std::get_if<ReadingTaken>(&fact);
    if (std::holds_alternative<PlanChosen>(fact) || std::holds_alternative<StyleChosen>(fact)) {
        return "";
    }
    std::string words;
    std::size_t said = 0;
    for (const PieceChange& change : changes_between(before, now.plan)) {
        if (read != nullptr && read->edge == change.edge) {
            continue;
        }
        if (++said <= said_most) {
            words += " " + describe(change, now.marks);
        }
    }
    if (said > said_most) {
        words += " And " + std::to_string(said - said_most) + " more.";
    }
    const std::int64_t sticks = sticks_in_all(now.job, now.plan);
    const bool same_runs = before.runs.size() == now.plan.runs.size();
    if (same_runs && sticks != sticks_before && read == nullptr) {
        words += stick_changes(now, before);
    }
    return words.empty() ? "" : "Planned again." + words;
}

}  // namespace hemline
