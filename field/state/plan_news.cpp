#include "field/state/plan_news.h"

#include "engine/plan/plan_changes.h"
#include "engine/words/path_text.h"

namespace hemline {

namespace {

/// "Sticks to open: 5, not 4 (fascia wrap).", for each pool where it is so.
Text stick_changes(const State& now, const Plan& before) {
    std::vector<Text> words;
    for (const Proof& proof : now.plan.proofs) {
        for (const Proof& then : before.proofs) {
            const Trim* const trim = now.catalogue.find(proof.trim);
            if (then.pool == proof.pool && then.sticks != proof.sticks) {
                words.push_back(say("Sticks to open: {1}, not {2} ({3}).", proof.sticks,
                                    then.sticks,
                                    trim == nullptr ? spaced(proof.trim) : say(trim->name)));
            }
        }
    }
    return joined(words, " ");
}

}  // namespace

Text plan_news(const State& now, const Fact& fact, const Plan& before, std::int64_t sticks_before) {
    if (const auto* const off = std::get_if<EdgeTakenOff>(&fact)) {
        return say("Edge {1} is off the job. Undo puts it back with all that was read.", off->edge);
    }
    constexpr std::int64_t said_most = 3;
    const auto* const read = std::get_if<ReadingTaken>(&fact);
    if (std::holds_alternative<PlanChosen>(fact) || std::holds_alternative<StyleChosen>(fact)) {
        return {};
    }
    std::vector<Text> words;
    std::int64_t said = 0;
    for (const PieceChange& change : changes_between(before, now.plan)) {
        if (read != nullptr && read->edge == change.edge) {
            continue;
        }
        if (++said <= said_most) {
            words.push_back(describe(change));
        }
    }
    if (said > said_most) {
        words.push_back(say("And {1} more.", said - said_most));
    }
    const std::int64_t sticks = sticks_in_all(now.job, now.plan);
    const bool same_runs = before.runs.size() == now.plan.runs.size();
    if (same_runs && sticks != sticks_before && read == nullptr) {
        words.push_back(stick_changes(now, before));
    }
    return words.empty() ? Text() : say("Planned again. {1}", joined(words, " "));
}

}  // namespace hemline
