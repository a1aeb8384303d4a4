// The runs of an edge: its main trim, then its wrap, then its cleat, around what is cut already.
#include <algorithm>

#include "engine/dividing/piece_bounds.h"
#include "engine/measure/length_text.h"
#include "engine/plan/plan_parts.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

using Cuts = std::vector<std::optional<Length>>;
using Divided = Result<std::vector<Division>>;

bool is_readable(Length length) { return length > Length() && length <= longest_readable(); }

/// What is cut of a run, piece by piece. A number past any run is kept as the first such number:
/// divide_again() refuses it.
Cuts cuts_of(const EdgeWork& work, TrimRole role) {
    Cuts cuts;
    for (const CutPiece& piece : work.cut) {
        if (piece.role == role && piece.piece >= 1 && is_readable(piece.cut)) {
            const auto most = static_cast<int>(pieces_most) + 1;
            const auto number = static_cast<std::size_t>(std::min(piece.piece, most));
            cuts.resize(std::max(cuts.size(), number));
            cuts[number - 1] = piece.cut;
        }
    }
    return cuts;
}

/// The most that a remainder or a plan may differ from the edge as read: beyond it, it belongs to
/// another piece or another edge.
constexpr Length off_most = feet(1);

/// The run's division by the plan that the crew picked; none where that plan no longer fits this
/// edge.
std::vector<Division> division_picked(const EdgeWork& work, TrimRole role, const RunRule& rule) {
    std::vector<Division> picked;
    Length bare = rule.edge;
    for (const RunChosen& run : work.chosen) {
        if (run.role != role || run.cuts.size() > static_cast<std::size_t>(pieces_most)) {
            continue;
        }
        const auto count = static_cast<std::int64_t>(run.cuts.size());
        for (std::int64_t i = 0; i < count; ++i) {
            const PieceBounds bounds = bounds_of(rule, i, count);
            const Length cut = run.cuts[static_cast<std::size_t>(i)];
            if (cut <= bounds.extra || cut > rule.stock) {
                return {};
            }
            picked.push_back({cut, cut - bounds.extra});
            bare -= picked.back().covers;
        }
    }
    return absolute(bare) <= off_most ? picked : std::vector<Division>{};
}

/// The run from its edge alone: by the plan that was picked, or in the edge's style.
Divided divide_own(const EdgeWork& work, TrimRole role, const RunRule& rule,
                   std::span<const std::optional<Length>> cuts) {
    if (const auto picked = division_picked(work, role, rule); !picked.empty()) {
        Divided kept = divide_around(rule, picked, cuts);
        if (kept) {
            return kept;
        }
    }
    return divide_again(rule, work.style.value_or(Style::balanced), cuts);
}

/// The edge as its remainder says: what the fixed pieces cover, to the end of the last of them,
/// plus what was read from there. Either all pieces but the last are cut, or all are and the last
/// was cut to that reading: whichever comes nearer to the edge as read. None where neither fits.
///
///   |--covers 1--|·lap·|
///                |--covers 2--|·lap·|
///                             :     |--remainder--|
///                             |--covers 3---------|
std::optional<Length> edge_by_remainder(const EdgeWork& work, const RunRule& rule,
                                        const Cuts& cuts) {
    const auto remainder = work.remainder();
    const bool in_order =
        std::all_of(cuts.begin(), cuts.end(), [](const auto& c) { return c.has_value(); });
    if (!remainder || !is_readable(*remainder) || !in_order) {
        return std::nullopt;
    }
    std::optional<Length> nearest;
    for (const std::size_t back : {std::size_t{0}, std::size_t{1}}) {
        if (cuts.size() <= back) {
            continue;
        }
        const std::size_t fixed = cuts.size() - back;
        const Cuts neighbours(cuts.begin(), cuts.begin() + static_cast<std::ptrdiff_t>(fixed));
        const Divided run = divide_own(work, TrimRole::main, rule, neighbours);
        if (!run || run->size() != fixed + 1) {
            continue;
        }
        Length edge = rule.lap + *remainder;
        for (std::size_t i = 0; i < fixed; ++i) {
            edge += (*run)[i].covers;
        }
        if (!nearest || absolute(edge - rule.edge) < absolute(*nearest - rule.edge)) {
            nearest = edge;
        }
    }
    return nearest;
}

Text off_words(Length off, bool longer, bool used) {
    if (used) {
        return longer ? say("What is left for the last piece makes the edge {1} longer than it was "
                            "read.",
                            off)
                      : say("What is left for the last piece makes the edge {1} shorter than it "
                            "was read.",
                            off);
    }
    return longer ? say("What is left for the last piece makes the edge {1} longer than it was "
                        "read, so it is not used.",
                        off)
                  : say("What is left for the last piece makes the edge {1} shorter than it was "
                        "read, so it is not used.",
                        off);
}

/// The edge to divide: as the remainder says where one was read, else as its readings agree.
Length laid_edge(const EdgeWork& work, const RunRule& rule, const Cuts& cuts,
                 const Practice& practice, Plan& plan) {
    const auto by_remainder = edge_by_remainder(work, rule, cuts);
    const Length off = absolute(by_remainder.value_or(rule.edge) - rule.edge);
    const bool used = off <= off_most;
    if (off > allowed_difference(rule.edge, practice.tape)) {
        plan.problems.push_back(
            {work.edge.id, "remainder", Severity::measure_again,
             off_words(off, *by_remainder > rule.edge, used),
             say("Measure again from the end of the fixed piece to the end of the edge.")});
    }
    return used ? by_remainder.value_or(rule.edge) : rule.edge;
}

Divided divide_laid(const EdgeWork& work, const Trim& trim, Length edge, const Practice& practice,
                    const ChosenRuns& chosen, Plan& plan) {
    RunRule rule = run_rule(work.edge, trim, edge, practice, tabs_on(plan, work.edge.id));
    const Cuts cuts = cuts_of(work, trim.role);
    if (trim.role == TrimRole::main) {
        rule.edge = laid_edge(work, rule, cuts, practice, plan);
    }
    if (const auto own = chosen.find({work.edge.id, trim.role}); own != chosen.end()) {
        return own->second;
    }
    return divide_own(work, trim.role, rule, cuts);
}

Divided divide_butted(const EdgeWork& work, const Run& main, const Practice& practice) {
    std::vector<Division> trim;
    Length edge;
    for (const PlannedPiece& piece : main.pieces) {
        trim.push_back({piece.cut, piece.covers});
        edge += piece.covers;
    }
    return divide_cleat(edge, practice.stock, practice.cut_grid, practice.cleat_clear, main.lap,
                        trim, cuts_of(work, TrimRole::cleat));
}

std::string field_of(TrimRole role) {
    return role == TrimRole::main ? "length" : std::string(word_of(role));
}

PlanProblem no_room_for(const std::string& edge, const std::string& field) {
    return {edge, field, Severity::problem,
            say("The edges before this one take nearly {1} pieces, more than one job has.",
                plan_pieces_most),
            say("Look at the lengths and their units, or start another job for this edge.")};
}

/// Adds the run, or the problem that keeps it from being made. True when the run is there.
bool add_run(const EdgeWork& work, const Trim& trim, Length lap, const Divided& divided,
             Plan& plan) {
    if (!divided) {
        plan.problems.push_back({work.edge.id, field_of(trim.role), Severity::problem,
                                 divided.problem().what, divided.problem().mend});
        return false;
    }
    if (plan.pieces + static_cast<std::int64_t>(divided->size()) > plan_pieces_most) {
        plan.problems.push_back(no_room_for(work.edge.id, field_of(trim.role)));
        return false;
    }
    Run run{work.edge.id, trim.id, trim.role, lap, {}};
    run.tabs = tabs_on(plan, work.edge.id);
    const auto is_own = [&](const RunChosen& own) { return own.role == trim.role; };
    run.by = work.style                                                    ? DividedBy::style
             : std::any_of(work.chosen.begin(), work.chosen.end(), is_own) ? DividedBy::plan_chosen
                                                                           : DividedBy::together;
    run.panels = trim.panels;
    Length begins;
    const Cuts cuts = cuts_of(work, trim.role);
    for (const Division& division : *divided) {
        const std::size_t index = run.pieces.size();
        PlannedPiece piece;
        piece.number = static_cast<int>(index) + 1;
        piece.cut = division.cut;
        piece.covers = division.covers;
        piece.begins = begins;
        piece.is_cut = index < cuts.size() && cuts[index].has_value();
        begins += division.covers;
        run.pieces.push_back(piece);
    }
    plan.pieces += static_cast<std::int64_t>(run.pieces.size());
    plan.first_runs.emplace(run.edge, plan.runs.size());
    plan.runs.push_back(std::move(run));
    return true;
}

}  // namespace

void plan_runs(const EdgeWork& work, const Job& job, const Catalogue& catalogue,
               const PlanOptions& options, const ChosenRuns& chosen, Plan& plan) {
    const auto length = work.length(job.practice);
    const Trim* trim = main_trim(work.edge, catalogue);
    if (!length || trim == nullptr) {
        return;
    }
    if (!is_readable(*length)) {
        plan.problems.push_back({work.edge.id, "length", Severity::problem,
                                 say("A length of {1} is no edge of a roof.", *length),
                                 say("Cross out the reading and read the edge again.")});
        return;
    }
    const Practice& practice = job.practice;
    const Length lap = lap_on(work.edge, practice);
    if (const auto fits = with_lap(practice, work.edge.kind, lap); work.edge.lap && !fits) {
        const Problem& problem = fits.problem();
        plan.problems.push_back(
            {work.edge.id, "lap", Severity::problem, problem.what, problem.mend});
        return;
    }
    if (!add_run(work, *trim, lap, divide_laid(work, *trim, *length, practice, chosen, plan),
                 plan)) {
        return;
    }
    const std::size_t main = plan.runs.size() - 1;
    if (options.wrap && work.edge.wrap) {
        if (const Trim* wrap = catalogue.default_for(work.edge.kind, TrimRole::wrap)) {
            add_run(work, *wrap, lap, divide_laid(work, *wrap, *length, practice, chosen, plan),
                    plan);
        } else {
            plan.problems.push_back(
                {work.edge.id, "wrap", Severity::problem,
                 say("The catalogue has no wrap for this kind of edge."),
                 say("Add one to the catalogue, or plan the edge without a wrap.")});
        }
    }
    const Trim* cleat = catalogue.default_for(work.edge.kind, TrimRole::cleat);
    if (options.cleat && cleat != nullptr) {
        add_run(work, *cleat, Length(), divide_butted(work, plan.runs[main], practice), plan);
    }
}

}  // namespace hemline
