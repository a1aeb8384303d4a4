#include "engine/work/step_pictures.h"

#include <algorithm>
#include <cmath>

#include "engine/plan/plan.h"
#include "engine/roof/edge_shape.h"
#include "engine/roof/fold_angle.h"
#include "engine/work/procedure_words.h"
#include "engine/work/readiness.h"

namespace hemline {

namespace {

constexpr double half = 0.5;
constexpr double comes_mm = 150;  // how far the piece still is from its lap
/// The steps of the whole edge that fold what no end of it names, by their ids in the procedures.
constexpr std::string_view ends_step = "ends", bend_step = "fold";

/// The run's piece that lies at that end of the edge; 0 where there is none.
int piece_at(const Run* run, const Edge& edge, Side side) {
    if (run == nullptr || run->pieces.empty()) {
        return 0;
    }
    return side == first_fitted(edge) ? run->pieces.front().number : run->pieces.back().number;
}

std::string tenths(double value) {
    const auto count = std::llround(std::abs(value) * 10);
    return std::to_string(count / 10) + (count % 10 == 0 ? "" : "." + std::to_string(count % 10)) +
           "°";
}

/// The longest tab of that end: how far it reaches past its fold, and by how much it is folded.
struct Tab {
    Length length;
    double degrees = 0;
};
std::optional<Tab> tab_at(const FlatPattern& pattern, Side side) {
    std::optional<Tab> longest;
    for (const FlatTab& tab : pattern.tabs) {
        if (tab.side != side) {
            continue;
        }
        std::int64_t reach = 0;
        for (const FlatPoint& p : tab.outline) {
            const std::int64_t fold = side == Side::left ? std::max(tab.fold.a.x, tab.fold.b.x)
                                                         : std::min(tab.fold.a.x, tab.fold.b.x);
            reach = std::max(reach, side == Side::left ? fold - p.x : p.x - fold);
        }
        const Length length = nanometres(reach);
        if (!longest || length > longest->length) {
            longest = Tab{length, tab.degrees};
        }
    }
    return longest;
}

/// Everything that the pictures of one step are made from.
struct Maker {
    const MeetingOf& of;
    const Step& step;
    const EdgeWork& work;
    StepMetal metal;
    Card card = {};
    FlatPattern pattern = {};

    [[nodiscard]] std::vector<Facet> folded(const FlatPattern& flat, FoldStep fold) const {
        return folded_end(card, work.edge, flat, metal.side, step_of(fold));
    }
    [[nodiscard]] std::vector<Facet> folded(FoldStep fold) const { return folded(pattern, fold); }
    [[nodiscard]] Text cut_words() const;
    [[nodiscard]] Text flat_words(const Tab& tab) const;
    [[nodiscard]] StepPicture done() const;
    [[nodiscard]] Result<StepPictures> cut() const;
    [[nodiscard]] Result<StepPictures> tabs() const;
    [[nodiscard]] StepPictures bend() const;
    [[nodiscard]] Result<StepPictures> lap() const;
};

/// "Cut to 8 ft 1 15/16 in: face cut at 7 ft 10 1/4 in.", as the tape shows it.
Text Maker::cut_words() const {
    std::vector<Text> cuts;
    for (const Mark& mark : card.marks) {
        const bool is_cut = mark.kind == MarkKind::flange_cut || mark.kind == MarkKind::face_cut ||
                            mark.kind == MarkKind::flange_mitre || mark.kind == MarkKind::hem_notch;
        if (mark.toward == metal.side && is_cut) {
            cuts.push_back(say("{1} at {2}", spoken(mark.kind), mark.at));
        }
    }
    return cuts.empty() ? say("Cut to {1}.", card.cut)
                        : say("Cut to {1}: {2}.", card.cut, joined(cuts, ", "));
}

Text Maker::flat_words(const Tab& tab) const {
    return say("The tab of {1} is still flat.", tab.length);
}

/// The end as it is in the end: folded, or put together with what it meets.
StepPicture Maker::done() const {
    if (const auto tab = tab_at(pattern, metal.side)) {
        return {
            say("The tab is folded {1}.", tenths(tab->degrees)), folded(FoldStep::finished), {}};
    }
    const auto meeting = piece_meeting(of, card, metal.side, reach_of(card, metal.side));
    return meeting
               ? StepPicture{say("Put together with {1}.", meeting->other_name), meeting->own,
                             meeting->other}
               : StepPicture{say("The end stays as it was cut."), folded(FoldStep::finished), {}};
}

Result<StepPictures> Maker::cut() const {
    const Result<Section> section = section_of(card, of.sections);
    if (!section) {
        return section.problem();
    }
    // The metal before any snip: the piece's own legs and bends with plain ends.
    const auto plain = flat_pattern(*section, pattern.legs.bends, pattern.length, {}, {});
    if (!plain) {
        return plain.problem();
    }
    const auto tab = tab_at(pattern, metal.side);
    StepPictures pictures;
    pictures.before_during_done = {
        StepPicture{
            say("The metal, {1} long.", card.stick_length), folded(*plain, FoldStep::as_cut), {}},
        StepPicture{joined({cut_words(), tab ? flat_words(*tab) : Text()}, " "),
                    folded(FoldStep::as_cut),
                    {}},
        done()};
    return pictures;
}

Result<StepPictures> Maker::tabs() const {
    const auto tab = tab_at(pattern, metal.side);
    if (!tab) {
        return cut();
    }
    StepPictures pictures;
    pictures.before_during_done = {
        StepPicture{flat_words(*tab), folded(FoldStep::as_cut), {}},
        StepPicture{
            say("Half way: {1}.", tenths(tab->degrees / 2)), folded(FoldStep::tabs_half), {}},
        done()};
    return pictures;
}

StepPictures Maker::bend() const {
    const auto angle = fold_at(work.edge);
    const Text done = angle ? say("Bent {1}: the gauge shows {2}.", tenths(angle->bend_degrees),
                                  tenths(angle->included_degrees))
                            : say("Bent by the roof.");
    StepPictures pictures;
    pictures.before_during_done = {
        StepPicture{say("A flat strip."), folded(FoldStep::flat), {}},
        StepPicture{
            say("Half bent."), folded_end(card, work.edge, pattern, metal.side, {half, 0}), {}},
        StepPicture{done, folded(FoldStep::as_cut), {}}};
    return pictures;
}

Result<StepPictures> Maker::lap() const {
    const auto meeting = piece_meeting(of, card, metal.side, reach_of(card, metal.side));
    if (!meeting) {
        return meeting.problem();
    }
    std::vector<Facet> coming = meeting->own;
    const double away = metal.side == Side::left ? comes_mm : -comes_mm;
    for (Facet& facet : coming) {
        for (Space& corner : facet.corners) {
            corner.x += away;
        }
    }
    const Run* const run = find_run(of.plan, work.edge.id, metal.role);
    const Text lap = run == nullptr ? Text() : Text(run->lap);
    StepPictures pictures;
    pictures.before_during_done = {
        StepPicture{say("The lap line is {1} from the end of {2}.", lap, meeting->other_name),
                    {},
                    meeting->other},
        StepPicture{say("Piece {1} comes over it.", card.piece), coming, meeting->other},
        StepPicture{say("They lap by {1}.", lap), meeting->own, meeting->other}};
    return pictures;
}

}  // namespace

StepMetal metal_of(const Step& step, const EdgeWork& work, const Plan& plan) {
    StepMetal metal;
    const StepRule& rule = *step.rule;
    const Run* const main = find_run(plan, work.edge.id, TrimRole::main);
    if (rule.each == Each::trim_lap) {
        metal = {Shows::lap, TrimRole::main, step.piece, first_fitted(work.edge)};
    } else if (rule.asks == Asks::cut) {
        metal = {Shows::cut, role_of(rule.each), step.piece, Side::left};
    } else if (rule.each == Each::edge && rule.when) {
        const Side side = work.edge.left == *rule.when ? Side::left : Side::right;
        metal = {Shows::tabs, TrimRole::main, piece_at(main, work.edge, side), side};
    } else if (rule.each == Each::edge && rule.id == ends_step) {
        const Side side = first_fitted(work.edge);
        metal = {Shows::tabs, TrimRole::main, piece_at(main, work.edge, side), side};
    } else if (rule.each == Each::edge && rule.id == bend_step) {
        const Side side = first_fitted(work.edge);
        metal = {Shows::bend, TrimRole::main, piece_at(main, work.edge, side), side};
    }
    if (lies_mirrored(work)) {
        metal.side = other(metal.side);
    }
    return metal;
}

Result<StepPictures> step_pictures(const MeetingOf& of, const Step& step, const EdgeWork& work) {
    const StepMetal metal = metal_of(step, work, of.plan);
    if (metal.shows == Shows::nothing) {
        return Problem{say("This step folds no metal."), say("Do it as it says.")};
    }
    const Result<Card> card =
        make_card(of.job, of.plan, of.catalogue, work.edge.id, metal.role, metal.piece);
    if (!card) {
        return card.problem();
    }
    const Result<FlatPattern> pattern = piece_pattern(*card, work.edge, of.sections);
    if (!pattern) {
        return pattern.problem();
    }
    Maker maker{of, step, work, metal, *card, *pattern};
    if (metal.shows == Shows::cut) {
        maker.metal.side = end_worked(*card);
    }
    const bool is_plain = end_steps(*card, maker.metal.side, {}).empty();
    if (is_plain && (metal.shows == Shows::cut || metal.shows == Shows::tabs)) {
        return Problem{say("This end is cut square, with nothing to fold."),
                       say("Cut it as it says.")};
    }
    const Result<StepPictures> made = metal.shows == Shows::cut    ? maker.cut()
                                      : metal.shows == Shows::lap  ? maker.lap()
                                      : metal.shows == Shows::bend ? Result(maker.bend())
                                                                   : maker.tabs();
    if (!made) {
        return made;
    }
    StepPictures pictures = *made;
    pictures.legs = pattern->legs.names;
    pictures.trim = card->trim;
    pictures.side = maker.metal.side;
    return pictures;
}

}  // namespace hemline
