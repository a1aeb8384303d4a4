#include "engine/plan/plan_changes.h"

#include <algorithm>
#include <numeric>
#include "engine/plan/plan.h"
#include "engine/record/job.h"

namespace hemline {

namespace {

/// The cut of a piece still to be made; none: cut already, or not there.
std::optional<Length> cut_ahead(const Run& run, std::size_t piece) {
    if (piece >= run.pieces.size() || run.pieces[piece].is_cut) {
        return std::nullopt;
    }
    return run.pieces[piece].cut;
}

bool is_cut(const Run& run, std::size_t piece) {
    return piece < run.pieces.size() && run.pieces[piece].is_cut;
}

}  // namespace

std::vector<PieceChange> changes_between(const Plan& before, const Plan& after) {
    std::vector<PieceChange> changes;
    for (const Run& now : after.runs) {
        const Run* was = find_run(before, now.edge, now.role);
        const std::size_t count =
            was == nullptr ? 0 : std::max(was->pieces.size(), now.pieces.size());
        for (std::size_t i = 0; i < count; ++i) {
            const auto then = cut_ahead(*was, i);
            const auto ahead = cut_ahead(now, i);
            // Cut meanwhile, or spoiled and to be cut again: the crew knows, as they did it
            // themselves.
            if (then != ahead && !is_cut(now, i) && !is_cut(*was, i)) {
                changes.push_back({now.edge, now.role, static_cast<int>(i) + 1, then, ahead});
            }
        }
    }
    return changes;
}

std::int64_t sticks_in_all(const Job& job, const Plan& plan) {
    return std::accumulate(plan.proofs.begin(), plan.proofs.end(), job.sticks_opened,
                           [](std::int64_t sum, const Proof& proof) { return sum + proof.sticks; });
}

Text describe(const PieceChange& change) {
    const std::string number = change.edge + "/" + std::to_string(change.piece);
    const Text piece = change.role == TrimRole::main   ? say("Piece {1}", number)
                       : change.role == TrimRole::wrap ? say("Wrap piece {1}", number)
                                                       : say("Cleat piece {1}", number);
    if (!change.after) {
        return say("{1} is no longer needed.", piece);
    }
    const Length after = *change.after;
    return change.before ? say("{1}: {2}, not {3}.", piece, after, *change.before)
                         : say("{1}: {2}, new.", piece, after);
}

}  // namespace hemline
