// Divides a cleat: butted sticks whose joints keep clear of the laps of the trim that hooks on it.
//
//   trim    |-----------------|·lap·|-------------------|
//   no joint            <clear|     |clear>
//   cleat   |--------------|---------------------------|--
#include <algorithm>

#include "engine/dividing/piece_bounds.h"
#include "engine/dividing/run.h"
#include "engine/measure/length_text.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

/// A stretch of the edge that no joint may lie strictly inside.
struct Barred {
    Length from, to;
};

std::vector<Barred> barred_by(std::span<const Division> trim, Length clear, Length lap) {
    std::vector<Barred> barred;
    Length at;
    for (std::size_t i = 0; i + 1 < trim.size(); ++i) {
        at += trim[i].covers;
        barred.push_back({at - clear, at + lap + clear});
    }
    return barred;
}

/// The longest piece from `at`, on the grid and not above `own`, whose joint lies in no barred
/// stretch.
Length cut_clear(Length at, Length own, std::span<const Barred> barred, Length grid) {
    for (std::size_t i = barred.size(); i-- > 0;) {
        if (barred[i].from < at + own && at + own < barred[i].to) {
            own = round_down_to(barred[i].from - at, grid);
        }
    }
    return own;
}

}  // namespace

Result<std::vector<Division>> divide_cleat(Length edge, Length stock, Length grid, Length clear,
                                           Length lap, std::span<const Division> trim,
                                           std::span<const std::optional<Length>> cut) {
    if (edge <= Length() || stock <= Length() || grid <= Length() || clear < Length() ||
        lap < Length()) {
        return Problem{
            say("The cleat's edge, stick or grid is not above 0, or a clearance is below it."),
            say("Set the stick and the marks that cuts lie on above 0, the lap and the way from a "
                "cleat joint to it to 0 or more.")};
    }
    const std::vector<Barred> barred = barred_by(trim, clear, lap);
    // A shorter end of cleat would lie within reach of a single lap only.
    const Length end_least = lap + 2 * clear;
    std::vector<Division> run;
    Length at;
    const auto add = [&](Length own) {
        run.push_back({own, own});
        at += own;
    };
    while (at < edge) {
        const std::size_t piece = run.size();
        if (piece >= static_cast<std::size_t>(pieces_most)) {
            return Problem{say("The cleat needs more than {1} pieces.", pieces_most),
                           say("Set a longer stock.")};
        }
        if (piece < cut.size() && cut[piece] && *cut[piece] > Length()) {
            run.push_back({*cut[piece], std::min(*cut[piece], edge - at)});
            at += run.back().covers;
            continue;
        }
        if (edge - at <= stock) {
            add(edge - at);
            break;
        }
        const Length left_for_end = edge - at - end_least;
        const bool end_would_be_short = left_for_end < stock && left_for_end > end_least;
        const Length own = end_would_be_short ? round_down_to(left_for_end, grid) : stock;
        const Length clear_own = cut_clear(at, own, barred, grid);
        if (clear_own <= Length()) {
            return Problem{
                say("A stick of {1} is too short to carry its joint clear of the trim's laps.",
                    stock),
                say("Take a longer stick, or let cleat joints lie nearer to a lap.")};
        }
        add(clear_own);
    }
    return run;
}

}  // namespace hemline
