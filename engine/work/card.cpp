// Makes the cut card: finds the piece and its stick, and puts its ends, marks and screws on it.
#include "engine/work/card.h"

#include <algorithm>

#include "engine/plan/plan.h"
#include "engine/record/job.h"
#include "engine/roof/edge_shape.h"
#include "engine/trim/hem_clearance.h"
#include "engine/words/result.h"
#include "engine/work/card_marks.h"
#include "engine/work/pan_screws.h"
#include "engine/work/readiness.h"

namespace hemline {
namespace {

bool has_tab(const Card& card, Side end) {
    return std::any_of(card.marks.begin(), card.marks.end(), [end](const Mark& mark) {
        return mark.kind == MarkKind::tab_end && mark.toward == end;
    });
}

/// Where a card's pieces and trim come from; all of them are known to exist.
struct Found {
    const EdgeWork* work;
    const Run* run;
    const PlannedPiece* piece;
    Trim trim;
};

Text name_of(TrimRole role) {
    switch (role) {
        case TrimRole::main:
            break;
        case TrimRole::wrap:
            return say("fascia wrap");
        case TrimRole::cleat:
            return say("cleat");
    }
    return say("trim");
}

/// "Choose one of: A, B."
template <class Items, class Name>
Text choose_among(const Items& items, Name name) {
    std::vector<Text> names;
    for (const auto& item : items) {
        names.emplace_back(name(item));
    }
    return say("Choose one of: {1}.", joined(names, ", "));
}

Problem no_edge(const Job& job, std::string_view edge) {
    return {say("There is no edge \"{1}\" on this job.", edge),
            job.edges.empty()
                ? say("Add an edge first.")
                : choose_among(job.edges, [](const EdgeWork& work) { return work.edge.id; })};
}

Problem no_run(const EdgeWork& work, const Plan& plan, TrimRole role, const Practice& practice) {
    std::vector<TrimRole> roles;
    for (const Run& run : plan.runs) {
        if (run.edge == work.edge.id) {
            roles.push_back(run.role);
        }
    }
    const Text missing = reading_missing(work, practice);
    return {say("Edge {1} has no {2} planned.", work.edge.id, name_of(role)),
            !roles.empty()     ? choose_among(roles, name_of)
            : !missing.empty() ? missing
                               : say("See the plan's problems for this edge.")};
}

Result<Found> find_all(const Job& job, const Plan& plan, const Catalogue& catalogue,
                       std::string_view edge, TrimRole role, int piece) {
    const EdgeWork* work = job.find(edge);
    if (work == nullptr) {
        return no_edge(job, edge);
    }
    const Run* run = find_run(plan, edge, role);
    if (run == nullptr) {
        return no_run(*work, plan, role, job.practice);
    }
    const PlannedPiece* planned = find_piece(*run, piece);
    if (planned == nullptr) {
        return Problem{
            say("The {1} of edge {2} has no piece {3}.", name_of(role), work->edge.id, piece),
            choose_among(run->pieces,
                         [](const PlannedPiece& p) { return std::to_string(p.number); })};
    }
    const Trim* trim = catalogue.find(run->trim);
    if (trim == nullptr) {
        return Problem{say("The catalogue has no trim \"{1}\".", run->trim),
                       choose_among(catalogue.trims(), [](const Trim& t) { return t.id; })};
    }
    return Found{work, run, planned, fitted_to(*trim, work->edge)};
}

/// An end of the piece: half of a lap, a butt joint, or the end of the edge.
EndMetal end_of_piece(const Found& found, Side side, const Practice& practice) {
    const Side first = first_fitted(found.work->edge);
    const Run& run = *found.run;
    const PlannedPiece& outermost = side == first ? run.pieces.front() : run.pieces.back();
    if (found.piece == &outermost) {
        return end_metal(found.work->edge, side, found.trim, practice, run.tabs);
    }
    EndMetal lap;
    if (run.lap > Length()) {
        lap.work = side == first ? EndWork::overlap : EndWork::underlap;
    }
    return lap;
}

/// Puts the stick on the card. False when the piece takes all that is left of it, so that nothing
/// is cut through.
bool take_stick(Card& card, const Plan& plan, const PlannedPiece& piece, Length kerf) {
    const PlannedStick* stick = piece.source ? find_stick(plan, piece.source->stick) : nullptr;
    if (stick == nullptr) {
        return true;
    }
    card.stick = stick->number;
    card.offcut = stick->offcut;
    card.stick_length = stick->length;
    card.stick_from = piece.source->from;
    const Length there = stick->length - piece.source->from;
    card.left_over = std::max(Length(), there - piece.cut - kerf);
    return piece.cut < there;
}

std::optional<Side> hand_of(const Found& found) {
    const Run& run = *found.run;
    const bool first = found.piece == &run.pieces.front();
    const bool last = found.piece == &run.pieces.back();
    if (first == last) {
        return {};
    }
    const Side begins = first_fitted(found.work->edge);
    const Side side = first ? begins : other(begins);
    return lies_mirrored(*found.work) ? other(side) : side;
}

/// A miter that cannot be marked makes the piece wait: it would be cut by guess.
Text mitre_missing(const Found& found, const EndMetal& left, const EndMetal& right) {
    const auto missing = [&](const EndMetal& end) {
        const bool corner = end.work == EndWork::corner_tab || end.work == EndWork::corner_mitre ||
                            end.work == EndWork::corner_in || end.work == EndWork::eave_foot;
        return corner && !end.near_back;
    };
    const EndsLike ends = facts_of(found.work->edge.kind).ends;
    const bool mitred = ends == EndsLike::eave || ends == EndsLike::valley;
    const bool main = found.run->role == TrimRole::main;
    const bool flange = leg_width(found.trim, LegName::flange) > Length();
    if (!mitred || !main || !flange || found.piece->is_cut || (!missing(left) && !missing(right))) {
        return {};
    }
    return found.work->edge.pitch
               ? say("Measure the corner and both pitches again: no miter fits them.")
               : say("Take the pitch first: the flange miter depends on it.");
}

/// The wall leg, and the leg on a transition's upper roof, lie away from you as you face the edge;
/// so the deck leg is drawn below it.
std::vector<Leg> as_they_lie(std::vector<Leg> legs, EdgeKind kind, TrimRole role) {
    const bool away =
        kind == EdgeKind::sidewall || kind == EdgeKind::headwall || kind == EdgeKind::transition;
    const auto face = std::find_if(legs.begin(), legs.end(),
                                   [](const Leg& leg) { return leg.name == LegName::face; });
    if (away && role == TrimRole::main && face != legs.end()) {
        std::rotate(legs.begin(), face, face + 1);
    }
    return legs;
}

}  // namespace

bool is_cut_at(const Card& card, const Mark& mark) {
    switch (mark.kind) {
        case MarkKind::lap_line:
        case MarkKind::bead:
        case MarkKind::tab_fold:
        case MarkKind::end_fold:
        case MarkKind::turn_up:
        case MarkKind::corner_point:
        case MarkKind::plumb_top:
        case MarkKind::plumb_foot:
        case MarkKind::valley_fold:
        case MarkKind::wrap_top:
            return false;
        case MarkKind::corner_top:
        case MarkKind::corner_low:
            return !has_tab(card, mark.toward);
        case MarkKind::mitre_near:
        case MarkKind::mitre_far:
            return !has_tab(card, mark.toward);
        default:
            return true;
    }
}

bool leaves_waste(const Card& card, const Mark& mark) {
    return is_cut_at(card, mark) && mark.kind != MarkKind::kick_fold &&
           mark.kind != MarkKind::wrap_fold && mark.kind != MarkKind::relief;
}

bool clips_hems(const Card& card) { return clips_hems(card.kind, card.role); }

Result<Card> make_card(const Job& job, const Plan& plan, const Catalogue& catalogue,
                       std::string_view edge, TrimRole role, int piece) {
    const Result<Found> all = find_all(job, plan, catalogue, edge, role, piece);
    if (!all) {
        return all.problem();
    }
    const Found& found = *all;
    const Practice& practice = job.practice;
    const Side at_left = lies_mirrored(*found.work) ? Side::right : Side::left;
    const EndMetal left = end_of_piece(found, at_left, practice);
    const EndMetal right = end_of_piece(found, other(at_left), practice);

    Card card;
    card.edge = found.work->edge.id;
    card.kind = found.work->edge.kind;
    card.trim = found.trim.id;
    card.trim_name = say(found.trim.name);
    card.role = role;
    card.piece = piece;
    card.pieces = static_cast<int>(found.run->pieces.size());
    card.cut = found.piece->cut;
    card.covers = found.piece->covers;
    card.lap = found.run->lap;
    card.left = left.work;
    card.right = right.work;
    card.edge_left = at_left;
    card.hand = hand_of(found);
    if (has_two_pitches(found.work->edge)) {
        card.pitches = {*found.work->edge.pitch, *found.work->edge.pitch2};
    }
    card.legs = as_they_lie(found.trim.legs, card.kind, role);
    const bool end_cut = take_stick(card, plan, *found.piece, practice.kerf);
    Practice of_metal = practice;
    of_metal.hem_notch_clear =
        hem_clearance(metal_family(metal_of(found.work->edge, practice.site)), card.lap, practice);
    card.marks = card_marks(left, right, *found.run, found.trim, card.cut,
                            end_cut ? EndCut::needed : EndCut::none, of_metal);
    card.screws =
        screw_lines_of(*found.run, *found.piece, found.work->edge, found.trim, practice, at_left);
    card.screwed_to = screwed_to(card.kind, role);
    card.screw_places = seam_places(found.work->edge, role, covered_by(*found.run), practice);
    card.waits_for = mitre_missing(found, left, right);
    if (card.waits_for.empty()) {
        card.waits_for = cut_waits_for(*found.work, *found.run, piece, practice);
    }
    return card;
}

}  // namespace hemline
