#include "engine/work/edge_in_hand.h"

#include <algorithm>
#include <cmath>

#include "engine/roof/edge_shape.h"
#include "engine/words/path_text.h"
#include "engine/work/corner_words.h"
#include "engine/work/fixing.h"
#include "engine/work/pan_screws.h"
#include "engine/work/readiness.h"

namespace hemline {

Recorded::Recorded(const EdgeWork& work) {
    for (const CutPiece& cut : work.cut) {
        cuts[{cut.role, cut.piece}] = &cut;
    }
    for (const DoneStep& done : work.steps) {
        steps.emplace(StepOf{done.step.step, done.step.piece}, &done);
    }
    for (const Undecided& one : work.undecided) {
        if (one.thing.subject == Subject::step) {
            steps_apart.emplace(StepOf{one.thing.step, one.thing.piece}, &one);
        } else if (one.thing.subject == Subject::finish && finish_apart == nullptr) {
            finish_apart = &one;
        }
    }
}

namespace {

std::int64_t screws_planned_on(const Run& run, int number, const EdgeInHand& ground) {
    const PlannedPiece* piece = find_piece(run, number);
    const Trim* trim = ground.catalogue.find(run.trim);
    if (piece == nullptr || trim == nullptr) {
        return 0;
    }
    return count_of(screw_lines_of(run, *piece, ground.work.edge, *trim, ground.practice));
}

bool is_pinned_here(const EdgeInHand& ground) {
    return is_pinned_at(ground.work.edge.kind, ground.practice);
}

std::int64_t rivets_planned_on(const EdgeInHand& ground) {
    return ground.closures.count * closure_fasteners;
}

Text pinned_words(const Practice& practice) {
    if (practice.fixed_line == FixedLine::unsaid) {
        return say("the eave (assumed)");
    }
    return practice.fixed_line == FixedLine::ridge ? say("the ridge") : say("the eave");
}

/// From the trim's bend, or from the deck where the bend stands on the seams, to the top of the
/// cleat that its hem hooks on.
Text cleat_line_words(const EdgeInHand& ground) {
    const Trim* const cleat = ground.catalogue.default_for(ground.work.edge.kind, TrimRole::cleat);
    const std::optional<Length> below =
        ground.trim == nullptr || cleat == nullptr
            ? std::nullopt
            : cleat_line(fitted_to(*ground.trim, ground.work.edge), *cleat, ground.practice);
    return below ? Text(*below) : say("by the trim: its face is short");
}

/// What is told of the edge's closures, strips and cleat.
std::optional<Text> holding_words(std::string_view word, const EdgeInHand& ground, const Run& run) {
    if (word == "places") {
        return seam_places(ground.work.edge, run.role, covered_by(run), ground.practice);
    }
    if (word == "pinned") {
        return pinned_words(ground.practice);
    }
    if (word == "rivets") {
        return Text(std::to_string(rivets_planned_on(ground)));
    }
    if (word == "cleat_line") {
        return cleat_line_words(ground);
    }
    if (word == "strip") {
        return strip_words(ground.strips);
    }
    if (word == "strip_screws") {
        return Text(std::to_string(ground.strips.fasteners));
    }
    if (word == "half") {
        return ground.strips.from_centre;
    }
    return {};
}

/// What is told of a pipe's boot, and of a curb's cricket.
std::optional<Text> hole_words(std::string_view word, const EdgeInHand& ground) {
    if (word == "module") {
        return ground.practice.seam_spacing;
    }
    if (word == "seam_least" || word == "hole") {
        const bool hole = word == "hole";
        const std::optional<Boot> boot = boot_on(ground);
        const bool known =
            boot && (!hole || (measured(ground, pipe_step) && measured(ground, from_line_step)));
        return !known ? say("what its measures give")
               : hole ? Text(boot->hole)
                      : Text(boot->seam_least);
    }
    if (word == "cricket" || word == "cricket_valley") {
        const auto width = ground.work.length(ground.practice);
        if (!width || !ground.work.edge.pitch) {
            return say("what width and pitch give");
        }
        const Cricket cricket = cricket_of(*width, degrees_of(*ground.work.edge.pitch));
        return nearest_on(word == "cricket" ? cricket.height : cricket.valley,
                          ground.practice.cut_grid);
    }
    return {};
}

/// "126.9": to a tenth, as a bevel gauge or a digital level shows it.
std::string tenths(double value) {
    const auto count = std::llround(value * 10);
    return std::to_string(count / 10) + "." + std::to_string(count % 10);
}

std::optional<Text> number_for(std::string_view word, const EdgeInHand& ground, const Run& run,
                               int piece) {
    const PlannedPiece* planned = find_piece(run, piece);
    const Trim* trim = ground.catalogue.find(run.trim);
    if (word == "edge") {
        return Text(ground.work.edge.id);
    }
    if (word == "pieces") {
        return Text(std::to_string(run.pieces.size()));
    }
    if (word == "lap") {
        return run.lap;
    }
    if (word == "spacing") {
        return ground.practice.screw_spacing;
    }
    if (word == "beads") {
        return Text(std::to_string(bead_offsets(run.lap, ground.practice).size()));
    }
    if (word == "fold" || word == "toward") {
        const auto fold = fold_at(ground.work.edge);
        return !fold            ? say("its angle, once the pitch is taken")
               : word == "fold" ? Text(tenths(fold->included_degrees) + "°")
                                : spoken(fold->toward);
    }
    if (word == "corner" || word == "lies") {
        const EdgeEnds ends{ground.work.edge, run, trim, ground.practice};
        return word == "corner" ? corner_angles(ends, piece) : corner_sides(ends, piece);
    }
    if (word == "pitch") {
        const auto& pitch = ground.work.edge.pitch;
        return pitch ? Text(*pitch) : say("the pitch, once it is taken");
    }
    if (word == "closures") {
        return Text(std::to_string(ground.closures.count));
    }
    if (word == "closure") {
        return bend_words(ground.closures);
    }
    if (word == "trim") {
        return trim != nullptr ? say(trim->name) : spaced(run.trim);
    }
    if (word == "reason" && ground.work.sent_back) {
        return say(ground.work.sent_back->reason);
    }
    if (word == "piece") {
        return Text(std::to_string(piece));
    }
    if (word == "neighbour") {
        return Text(std::to_string(piece - 1));
    }
    if (word == "cut" && planned != nullptr) {
        return planned->cut;
    }
    if (word == "screws") {
        return Text(std::to_string(screws_planned_on(run, piece, ground)));
    }
    if (ground.panels != nullptr) {
        return panel_words(word, piece, *ground.panels);
    }
    const std::optional<Text> told = holding_words(word, ground, run);
    return told ? told : hole_words(word, ground);
}

}  // namespace

std::optional<Length> measured(const EdgeInHand& ground, std::string_view step) {
    std::optional<Length> last;
    const auto [from, to] = ground.recorded.steps.equal_range(StepOf{step, 0});
    std::for_each(from, to, [&](const auto& done) {
        const Answer& answer = done.second->step.answer;
        last = answer.kind == AnswerKind::length ? answer.length : last;
    });
    return last;
}

std::optional<Boot> boot_on(const EdgeInHand& ground) {
    const auto base = measured(ground, base_step);
    if (!base) {
        return {};
    }
    return boot_of(measured(ground, pipe_step).value_or(Length()), *base,
                   measured(ground, from_line_step).value_or(Length()),
                   metal_family(ground.work.edge.metal), ground.practice);
}

PlannedCounts counts_planned(const EdgeInHand& ground, const Run& run, int piece) {
    return {screws_planned_on(run, piece, ground), ground.closures.count, rivets_planned_on(ground),
            ground.strips.fasteners, ground.panels == nullptr ? 0 : clips_of(*ground.panels)};
}

LengthLimits own_limits(const StepRule& rule, int piece, const EdgeInHand& ground) {
    if (ground.panels != nullptr) {
        return panel_limits(rule, piece, *ground.panels);
    }
    if (rule.least == half_planned) {
        return {ground.strips.from_centre, {}};
    }
    const auto boot = rule.least == seam_least_planned ? boot_on(ground) : std::nullopt;
    return {boot ? std::optional(boot->seam_least) : std::nullopt, {}};
}

bool holds(Only only, const EdgeInHand& ground) {
    const Panels panels = ground.trim == nullptr ? Panels::over : ground.trim->panels;
    const auto boot = boot_on(ground);
    const bool booted = !boot || fits(*boot);
    const bool wide =
        ground.work.length(ground.practice).value_or(Length()) > ground.practice.cricket_from;
    switch (only) {
        case Only::under:
            return panels == Panels::under;
        case Only::over:
            return panels == Panels::over;
        case Only::pinned:
            return is_pinned_here(ground);
        case Only::free:
            return !is_pinned_here(ground);
        case Only::boot:
            return booted;
        case Only::curb:
            return !booted;
        case Only::cricket:
            return wide;
        case Only::narrow:
            return !wide;
        case Only::strip:
            return ground.strips.strip != nullptr;
        case Only::bare:
            return ground.strips.strip == nullptr;
        case Only::two_pitches:
            return has_two_pitches(ground.work.edge);
        case Only::one_pitch:
            return !has_two_pitches(ground.work.edge);
        case Only::up_the_slope:
            return ground.panels != nullptr && ground.panels->up_the_slope;
        case Only::slanted:
            return ground.panels == nullptr || !ground.panels->up_the_slope;
        case Only::on_plane:
            return ground.work.place.has_value();
    }
    return true;
}

Text action_of(const StepRule& rule, int piece, const EdgeInHand& ground, const Run& run) {
    Text action = say(rule.action);
    for (const std::string& word : words_in_braces(rule.action)) {
        if (const std::optional<Text> value = number_for(word, ground, run, piece)) {
            action.names.push_back(word);
            action.values.push_back(*value);
        }
    }
    return action;
}

}  // namespace hemline
