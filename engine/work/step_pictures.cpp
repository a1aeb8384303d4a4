#include "engine/work/step_pictures.h"

#include <algorithm>
#include <cmath>

#include "engine/plan/plan.h"
#include "engine/roof/edge_shape.h"
#include "engine/roof/fold_angle.h"
#include "engine/words/result.h"
#include "engine/work/corner_words.h"
#include "engine/work/procedure_words.h"
#include "engine/work/readiness.h"
#include "engine/work/staged_pictures.h"

namespace hemline {

namespace {

constexpr double half = 0.5;
constexpr double comes_mm = 150;  // how far the piece is still away from its lap
/// Ids in the procedures of the steps for the whole edge whose fold is not named by an end of it.
constexpr std::string_view ends_step = "ends", bend_step = "fold";

std::string gauge_angle(double value) {
    const auto count = std::llround(std::abs(value) * 10);
    return std::to_string(count / 10) + (count % 10 == 0 ? "" : "." + std::to_string(count % 10)) +
           "°";
}

/// Where an end's tab begins by the card; a slanted fold by the end of it that is nearest.
bool begins_tab(MarkKind kind) {
    constexpr MarkKind kinds[] = {
        MarkKind::tab_fold,     MarkKind::end_fold, MarkKind::turn_up,   MarkKind::kick_fold,
        MarkKind::valley_fold,  MarkKind::face_cut, MarkKind::wrap_fold, MarkKind::mitre_near,
        MarkKind::corner_point, MarkKind::mitre_far};
    return std::find(std::begin(kinds), std::end(kinds), kind) != std::end(kinds);
}

/// The tab of that end: how long it is by the card, and how far its legs are folded.
struct Tab {
    Length length;
    std::vector<double> degrees;
};
std::optional<Tab> tab_at(const Card& card, const FlatPattern& pattern, Side side) {
    std::optional<Tab> found;
    for (const FlatTab& tab : pattern.tabs) {
        if (tab.side == side) {
            found = found ? found : Tab{card.cut, {}};
            found->degrees.push_back(tab.degrees);
        }
    }
    for (const Mark& mark : card.marks) {
        if (found && mark.toward == side && begins_tab(mark.kind)) {
            found->length =
                std::min(found->length, side == Side::left ? mark.at : card.cut - mark.at);
        }
    }
    return found;
}

/// "63.4°, 56.3°": of `part` of the whole fold, each angle once.
Text folded_by(const Tab& tab, double part) {
    std::vector<Text> angles;
    for (const double degrees : tab.degrees) {
        const Text angle = Text(gauge_angle(degrees * part));
        if (std::find(angles.begin(), angles.end(), angle) == angles.end()) {
            angles.push_back(angle);
        }
    }
    return joined(angles, ", ");
}

/// Everything that the pictures of a step are made from.
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
                            mark.kind == MarkKind::wrap_end ||
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

/// The finished end: folded, or put together with what it meets.
StepPicture Maker::done() const {
    if (const auto tab = tab_at(card, pattern, metal.side)) {
        return {say("The tab is folded {1}.", folded_by(*tab, 1)), folded(FoldStep::finished), {}};
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
    // The metal before any cut of the snips: the legs and bends of the piece with plain ends.
    const auto plain = flat_pattern(*section, pattern.legs.bends, pattern.length, {}, {});
    if (!plain) {
        return plain.problem();
    }
    const auto tab = tab_at(card, pattern, metal.side);
    StepPictures pictures;
    pictures.before_during_done = {
        StepPicture{say("The metal, {1} long.", card.stick > 0 ? card.stick_length : card.cut),
                    folded(*plain, FoldStep::as_cut),
                    {}},
        StepPicture{joined({cut_words(), tab ? flat_words(*tab) : Text()}, " "),
                    folded(FoldStep::as_cut),
                    {}},
        done()};
    return pictures;
}

Result<StepPictures> Maker::tabs() const {
    const auto tab = tab_at(card, pattern, metal.side);
    if (!tab) {
        return cut();
    }
    StepPictures pictures;
    pictures.before_during_done = {
        StepPicture{flat_words(*tab), folded(FoldStep::as_cut), {}},
        StepPicture{say("Half way: {1}.", folded_by(*tab, half)), folded(FoldStep::tabs_half), {}},
        done()};
    return pictures;
}

StepPictures Maker::bend() const {
    const auto angle = fold_at(work.edge);
    const Text done = angle
                          ? say("Bent {1}: the gauge shows {2}.", gauge_angle(angle->bend_degrees),
                                gauge_angle(angle->included_degrees))
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
    } else if (step.piece > 0 && rule.when) {
        const bool left =
            work.edge.left == *rule.when && piece_at(main, work.edge, Side::left) == step.piece;
        metal = {Shows::tabs, TrimRole::main, step.piece, left ? Side::left : Side::right};
    } else if (rule.each == Each::edge && rule.when) {
        const Side side = end_meant(rule, work.edge).value_or(Side::right);
        metal = {Shows::tabs, TrimRole::main, piece_at(main, work.edge, side), side};
    } else if (rule.each == Each::edge && rule.id == ends_step) {
        // A corner's tab was folded before.
        const Side first = first_fitted(work.edge);
        const Side side = turns_a_corner(end_at(work.edge, first)) ? other(first) : first;
        if (!turns_a_corner(end_at(work.edge, side))) {
            metal = {Shows::tabs, TrimRole::main, piece_at(main, work.edge, side), side};
        }
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
    const bool in_metal = metal.shows == Shows::bend || metal.shows == Shows::cut ||
                          (metal.shows == Shows::tabs && step.rule->id == ends_step);
    if (const auto staged = in_metal && has_run(work.edge.kind)
                                ? std::nullopt
                                : staged_pictures(of, step, step.rule->id, work)) {
        return *staged;
    }
    if (metal.shows == Shows::nothing) {
        return Problem{say("This step has no picture."), say("Do it as it says.")};
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
        const auto staged = staged_pictures(
            of, step, metal.shows == Shows::cut ? "cut_square" : "end_square", work);
        return staged ? Result(*staged)
                      : Problem{say("This end is cut square, with nothing to fold."),
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
