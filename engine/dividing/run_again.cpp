// Divides a run again around the pieces that are cut already.
#include <algorithm>

#include "engine/dividing/piece_bounds.h"
#include "engine/dividing/run.h"
#include "engine/measure/length_text.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

using Cuts = std::span<const std::optional<Length>>;

struct Attempt {
    std::vector<Division> run;
    Length rest;  ///< > 0: edge left bare; < 0: metal to spare
};

bool is_cut(Cuts cut, std::size_t piece) { return piece < cut.size() && cut[piece].has_value(); }

/// Pieces up to the last one cut: they keep their numbers.
std::size_t pieces_numbered(Cuts cut) {
    std::size_t count = cut.size();
    while (count > 0 && !cut[count - 1]) {
        --count;
    }
    return count;
}

/// `own` changed by the part of `rest` that `last` cannot take, rounded away from 0 to whole grid
/// steps, so that `last` keeps the part that lies off the grid.
Length shifted(const RunRule& rule, Length own, const PieceBounds& bounds, Length beyond) {
    const Length wanted = beyond > Length() ? round_up_to(own + beyond, rule.grid)
                                            : round_down_to(own + beyond, rule.grid);
    const Length least = round_up_to(bounds.least + bounds.extra, rule.grid);
    return std::max(std::min(wanted, bounds.most + bounds.extra), std::min(least, own));
}

/// Keeps the planned cuts on `count` pieces; the uncut pieces take the difference, the last first.
Attempt keep_and_shift(const RunRule& rule, std::span<const Division> plan, Cuts cut,
                       std::size_t count) {
    Attempt attempt;
    std::vector<PieceBounds> bounds;
    Length rest = rule.edge;
    std::optional<std::size_t> last;
    for (std::size_t i = 0; i < count; ++i) {
        bounds.push_back(
            bounds_of(rule, static_cast<std::int64_t>(i), static_cast<std::int64_t>(count)));
        const PieceBounds& b = bounds.back();
        Length own = is_cut(cut, i) ? *cut[i] : i < plan.size() ? plan[i].cut : Length();
        if (!is_cut(cut, i)) {
            own = std::max(std::min(own, b.most + b.extra), b.least + b.extra);
            last = i;
        }
        attempt.run.push_back({own, own - b.extra});
        rest -= own - b.extra;
    }
    const auto change = [&](std::size_t i, Length by) {
        attempt.run[i].cut += by;
        attempt.run[i].covers += by;
        rest -= by;
    };
    const auto last_takes = [&] {
        const Length now = attempt.run[*last].covers;
        return std::max(std::min(now + rest, bounds[*last].most), bounds[*last].least) - now;
    };
    for (std::size_t i = last.value_or(0); i-- > 0;) {
        const Length beyond = rest - last_takes();
        if (beyond != Length() && !is_cut(cut, i)) {
            change(i, shifted(rule, attempt.run[i].cut, bounds[i], beyond) - attempt.run[i].cut);
        }
    }
    if (last) {
        change(*last, last_takes());
    }
    attempt.rest = rest;
    return attempt;
}

/// Metal to spare goes into longer laps, the last lap first; what no lap can hide is trimmed off.
void hide_spare(Attempt& attempt) {
    for (std::size_t i = attempt.run.size() - 1; i-- > 0 && attempt.rest < Length();) {
        const Length hidden = std::min(-attempt.rest, attempt.run[i].covers);
        attempt.run[i].covers -= hidden;
        attempt.rest += hidden;
    }
    attempt.run.back().covers += attempt.rest;
    attempt.rest = Length();
}

/// A piece cut so short that its lap and allowance leave nothing visible.
std::optional<Problem> problem_with_cuts(const Attempt& attempt, Cuts cut) {
    for (std::size_t i = 0; i < attempt.run.size(); ++i) {
        if (is_cut(cut, i) && attempt.run[i].covers <= Length()) {
            return Problem{say("Piece {1} was cut {2}, which its lap and end allowance use up.",
                               i + 1, *cut[i]),
                           say("Mark it spoiled and cut it again.")};
        }
    }
    return std::nullopt;
}

}  // namespace

Result<std::vector<Division>> divide_again(const RunRule& rule, Style style, Cuts cut) {
    auto plan = divide_run(rule, style);
    if (!plan || pieces_numbered(cut) == 0) {
        return plan;
    }
    return divide_around(rule, *plan, cut);
}

Result<std::vector<Division>> divide_around(const RunRule& rule, std::span<const Division> planned,
                                            Cuts cut) {
    const std::size_t numbered = pieces_numbered(cut);
    if (numbered > static_cast<std::size_t>(pieces_most)) {
        return Problem{say("Piece {1} is past any run.", numbered),
                       say("Cross out the cut of that piece.")};
    }
    std::size_t count = std::max({planned.size(), numbered, std::size_t{1}});
    Attempt attempt = keep_and_shift(rule, planned, cut, count);
    while (attempt.rest > Length() && count < static_cast<std::size_t>(pieces_most)) {
        attempt = keep_and_shift(rule, planned, cut, ++count);
    }
    while (attempt.rest < Length() && count > std::max(numbered, std::size_t{1})) {
        Attempt fewer = keep_and_shift(rule, planned, cut, --count);
        if (fewer.rest > Length()) {
            break;
        }
        attempt = std::move(fewer);
    }
    if (const auto problem = problem_with_cuts(attempt, cut)) {
        return *problem;
    }
    if (attempt.rest > Length()) {
        return Problem{say("The run needs more than {1} pieces.", pieces_most),
                       say("Set a longer stock or a shorter lap.")};
    }
    hide_spare(attempt);
    return attempt.run;
}

}  // namespace hemline
