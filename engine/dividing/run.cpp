#include "engine/dividing/run.h"

#include <algorithm>

#include "engine/dividing/piece_bounds.h"
#include "engine/measure/length_text.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

using Covers = std::vector<Length>;

std::optional<Problem> problem_with(const RunRule& rule) {
    if (rule.edge <= Length()) {
        return Problem{say("The edge has no length to cover."),
                       say("Take the reading of the edge again.")};
    }
    if (rule.grid <= Length()) {
        return Problem{say("The grid of the cuts is not above 0."),
                       say("Set the marks that cuts lie on, such as 1/16 in.")};
    }
    if (rule.allowance_first < Length() || rule.allowance_last < Length() || rule.lap < Length() ||
        rule.sliver < Length()) {
        return Problem{say("A lap, an end allowance or the shortest piece is below 0."),
                       say("Set lap, tab and sliver to 0 or more.")};
    }
    if (rule.lap >= rule.stock) {
        return Problem{
            say("The lap of {1} is not shorter than the stick of {2}.", rule.lap, rule.stock),
            say("Set a longer stock or a shorter lap.")};
    }
    const Length extra = std::max(rule.allowance_first + rule.lap, rule.allowance_last);
    if (extra + rule.grid > rule.stock) {
        return Problem{
            say("Lap and end allowance leave nothing of the stick of {1} to cover the edge.",
                rule.stock),
            say("Set a longer stock, or a shorter lap or tab.")};
    }
    return std::nullopt;
}

/// A cut of about `wanted`, on the grid; a whole stick needs no cut and may lie off it.
Length cut_near(const RunRule& rule, Length wanted, Length least, Length most) {
    Length cut = nearest_on(wanted, rule.grid);
    if (cut > most) {
        cut = most == rule.stock ? most : round_down_to(most, rule.grid);
    }
    return cut < least ? round_up_to(least, rule.grid) : cut;
}

bool holds(const RunRule& rule, const Covers& covers) {
    const auto count = static_cast<std::int64_t>(covers.size());
    for (std::int64_t i = 0; i < count; ++i) {
        const PieceBounds bounds = bounds_of(rule, i, count);
        const Length c = covers[static_cast<std::size_t>(i)];
        if (c < bounds.least || c > bounds.most) {
            return false;
        }
    }
    return true;
}

/// Full sticks between two ends as equal as sliver and stick allow. Where full sticks would leave
/// slivers at the ends, the middle pieces are shortened alike.
Covers balanced_covers(const RunRule& rule, std::int64_t count) {
    const PieceBounds first = bounds_of(rule, 0, count);
    const PieceBounds last = bounds_of(rule, count - 1, count);
    const std::int64_t middles = count - 2;
    const Length end_least = std::max(first.least, last.least);
    Length middle = rule.stock - rule.lap;
    if (middles > 0 && rule.edge - middles * middle < 2 * end_least) {
        const Length share = nanometres((rule.edge - 2 * end_least).nm() / middles);
        middle = round_down_to(share + rule.lap, rule.grid) - rule.lap;
    }
    const Length ends = rule.edge - middles * middle;
    const Length least = std::max(first.least, ends - last.most) + first.extra;
    const Length most = std::min(first.most, ends - last.least) + first.extra;
    const Length half = nanometres(ends.nm() / 2);
    Covers covers(static_cast<std::size_t>(count), middle);
    covers.front() = cut_near(rule, half + first.extra, least, most) - first.extra;
    covers.back() = ends - covers.front();
    return covers;
}

/// The level at which the visible lengths, held within their bounds, fill the edge.
Length equal_level(const RunRule& rule, std::int64_t count) {
    const auto filled = [&](Length level) {
        const auto part = [&](std::int64_t index) {
            const PieceBounds b = bounds_of(rule, index, count);
            return std::max(b.least, std::min(level, b.most));
        };
        return part(0) + part(count - 1) + (count > 2 ? (count - 2) * part(1) : Length());
    };
    Length low, high = rule.stock;
    while (high - low > nanometres(1)) {
        const Length middle = nanometres((low.nm() + high.nm()) / 2);
        (filled(middle) <= rule.edge ? low : high) = middle;
    }
    return filled(high) <= rule.edge ? high : low;
}

/// Equal visible lengths. Every cut is first rounded down to the grid; then pieces get one more
/// grid step each, from the first on, until the last piece is no longer than they are.
Covers equal_covers(const RunRule& rule, std::int64_t count) {
    const Length level = equal_level(rule, count);
    const Length last_most = bounds_of(rule, count - 1, count).most;
    Covers covers;
    Length rest = rule.edge;
    for (std::int64_t i = 0; i + 1 < count; ++i) {
        const PieceBounds b = bounds_of(rule, i, count);
        Length cut = std::min(level, b.most) + b.extra;
        if (cut != rule.stock) {
            cut = round_down_to(cut, rule.grid);
        }
        if (cut < b.least + b.extra) {
            cut = round_up_to(b.least + b.extra, rule.grid);
        }
        covers.push_back(cut - b.extra);
        rest -= covers.back();
    }
    for (bool moved = true; moved;) {
        moved = false;
        for (std::int64_t i = 0; i + 1 < count; ++i) {
            Length& own = covers[static_cast<std::size_t>(i)];
            const Length step = std::min(rule.grid, bounds_of(rule, i, count).most - own);
            if (step > Length() && (rest > last_most || rest - own >= rule.grid)) {
                own += step;
                rest -= step;
                moved = true;
            }
        }
    }
    covers.push_back(rest);
    return covers;
}

/// Full sticks from the side fitted first; where the last would be a sliver, the piece before it is
/// shortened.
Covers full_covers(const RunRule& rule, std::int64_t count) {
    Covers covers;
    Length rest = rule.edge;
    for (std::int64_t i = 0; i + 1 < count; ++i) {
        covers.push_back(bounds_of(rule, i, count).most);
        rest -= covers.back();
    }
    const Length least = bounds_of(rule, count - 1, count).least;
    if (rest < least) {
        const Length extra = bounds_of(rule, count - 2, count).extra;
        const Length both = covers.back() + rest;
        covers.back() = round_down_to(both - least + extra, rule.grid) - extra;
        rest = both - covers.back();
    }
    covers.push_back(rest);
    return covers;
}

/// Visible lengths at this count, or nothing where sliver and stick leave no such division.
Covers covers_at(const RunRule& rule, Style style, std::int64_t count) {
    if (count == 1) {
        return {rule.edge};
    }
    Covers covers = style == Style::balanced ? balanced_covers(rule, count)
                    : style == Style::equal  ? equal_covers(rule, count)
                                             : full_covers(rule, count);
    return holds(rule, covers) ? covers : Covers();
}

}  // namespace

std::int64_t fewest_pieces(const RunRule& rule) {
    const Length whole = rule.edge + rule.allowance_first + rule.allowance_last;
    return whole <= rule.stock ? 1 : parts_to_cover(whole - rule.lap, rule.stock - rule.lap);
}

Result<std::vector<Division>> divide_run(const RunRule& rule, Style style) {
    if (const auto problem = problem_with(rule)) {
        return *problem;
    }
    const std::int64_t fewest = fewest_pieces(rule);
    if (fewest >= pieces_most) {
        return Problem{say("The edge would take {1} pieces.", fewest),
                       say("Set a longer stock or a shorter lap.")};
    }
    Covers covers = covers_at(rule, style, fewest);
    if (covers.empty()) {
        covers = covers_at(rule, style, fewest + 1);
    }
    if (covers.empty()) {
        return Problem{say("No division keeps every piece between {1} and the stick of {2}.",
                           rule.sliver, rule.stock),
                       say("Set a longer stock, or a shorter sliver.")};
    }
    std::vector<Division> run;
    const auto count = static_cast<std::int64_t>(covers.size());
    for (std::int64_t i = 0; i < count; ++i) {
        const Length own = covers[static_cast<std::size_t>(i)];
        run.push_back({own + bounds_of(rule, i, count).extra, own});
    }
    return run;
}

bool is_balanced(std::span<const Division> run, const RunRule& rule) {
    if (run.empty()) {
        return false;
    }
    if (run.size() == 1) {
        return true;
    }
    const auto full = [&](const Division& d) { return d.covers == rule.stock - rule.lap; };
    return absolute(run.front().covers - run.back().covers) <= sixteenths(1) &&
           std::all_of(run.begin() + 1, run.end() - 1, full);
}

}  // namespace hemline
