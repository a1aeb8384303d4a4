// Making the cut card: the marks of each end, measured from that end, then laid along the tape.
//
//   left end: at = in                       right end: at = cut − in
//   |<-in->|_________________________________|<-in->|
#include "engine/work/card.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "engine/roof/cut_offset.h"
#include "engine/work/fixing.h"
#include "engine/work/readiness.h"

namespace hemline {
namespace {

struct EndMark {
    MarkKind kind;
    Length in;  ///< from the end of the metal, inward
};

/// One end of the piece, with all that its marks are made of.
struct PieceEnd {
    EndWork work = EndWork::square;
    Length allowance;
    std::optional<Length> mitre;  ///< set back from the corner line; none where there is no mitre
};

/// Where a card's pieces and trim come from, found and known to be there.
struct Found {
    const EdgeWork* work;
    const Run* run;
    const PlannedPiece* piece;
    Trim trim;
};

std::string_view name_of(TrimRole role) {
    return role == TrimRole::main ? "trim" : role == TrimRole::wrap ? "fascia wrap" : "cleat";
}

template <class Items, class Name>
std::string listed(const Items& items, Name name) {
    std::string list;
    for (const auto& item : items) {
        list += (list.empty() ? "" : ", ") + std::string(name(item));
    }
    return list;
}

Problem no_edge(const Job& job, std::string_view edge) {
    const std::string ids = listed(job.edges, [](const EdgeWork& work) { return work.edge.id; });
    return {"There is no edge \"" + std::string(edge) + "\" on this job.",
            ids.empty() ? "Add an edge first." : "Choose one of: " + ids + "."};
}

Problem no_run(const EdgeWork& work, const Plan& plan, TrimRole role, const Practice& practice) {
    std::vector<TrimRole> roles;
    for (const Run& run : plan.runs) {
        if (run.edge == work.edge.id) {
            roles.push_back(run.role);
        }
    }
    std::string missing = reading_missing(work, practice);
    std::string mend = !roles.empty()     ? "Choose one of: " + listed(roles, name_of) + "."
                       : !missing.empty() ? missing
                                          : "See the plan's problems for this edge.";
    return {"Edge " + work.edge.id + " has no " + std::string(name_of(role)) + " planned.", mend};
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
        return Problem{"The " + std::string(name_of(role)) + " of edge " + work->edge.id +
                           " has no piece " + std::to_string(piece) + ".",
                       "Choose one of: " + listed(run->pieces, [](const PlannedPiece& p) {
                           return std::to_string(p.number);
                       }) + "."};
    }
    const Trim* trim = catalogue.find(run->trim);
    if (trim == nullptr) {
        return Problem{"The catalogue has no trim \"" + run->trim + "\".",
                       "Choose one of: " + listed(catalogue.trims(), [](const Trim& t) {
                           return t.id;
                       }) + "."};
    }
    return Found{work, run, planned, fitted_to(*trim, work->edge)};
}

EndWork work_of(End end, Length allowance) {
    const bool tab = allowance > Length();
    switch (end) {
        case End::gable:
            return tab ? EndWork::gable_tab : EndWork::square;
        case End::corner_out:
            return tab ? EndWork::corner_tab : EndWork::corner_mitre;
        case End::corner_in:
            return EndWork::corner_in;
        default:
            return EndWork::square;
    }
}

/// Set back from the corner line at the back edge of the flange: w·cosθ·cot(C/2), the two pitches
/// equal; 90° where no corner angle was read. None without a pitch, a flange or an outside corner.
std::optional<Length> mitre_setback(const Found& found, Side side, EndWork work, Length grid) {
    const Edge& edge = found.work->edge;
    const Length flange = leg_width(found.trim, LegName::flange);
    const bool corner = work == EndWork::corner_tab || work == EndWork::corner_mitre;
    if (!corner || found.run->role != TrimRole::main || !edge.pitch || flange <= Length()) {
        return {};
    }
    const Length square = flange_mitre_setback(flange, *edge.pitch);
    const auto corner_udeg = side == Side::left ? edge.corner_left_udeg : edge.corner_right_udeg;
    if (!corner_udeg) {
        return nearest_on(square, grid);
    }
    const double half = static_cast<double>(*corner_udeg) / 2e6 * std::numbers::pi / 180.0;
    if (half <= 0 || half >= std::numbers::pi / 2) {
        return {};
    }
    const double nm = std::min(static_cast<double>(square.nm()) / std::tan(half),
                               static_cast<double>(longest_readable().nm()));
    return nearest_on(Length::of_nm(std::llround(nm)), grid);
}

PieceEnd end_of_piece(const Found& found, Side side, const Practice& practice) {
    const Edge& edge = found.work->edge;
    const Run& run = *found.run;
    const bool toward_first = side == edge.first;
    const PlannedPiece& outermost = toward_first ? run.pieces.front() : run.pieces.back();
    if (found.piece != &outermost) {
        const EndWork lap = toward_first ? EndWork::overlap : EndWork::underlap;
        return {run.lap > Length() ? lap : EndWork::square, {}, {}};
    }
    if (run.role == TrimRole::cleat) {
        return {};
    }
    Length covered;
    for (const PlannedPiece& piece : run.pieces) {
        covered += piece.covers;
    }
    const RunRule rule = run_rule(edge, run.role, covered, practice);
    const Length allowance = toward_first ? rule.allowance_first : rule.allowance_last;
    const EndWork work = work_of(end_at(edge, side), allowance);
    return {work, allowance, mitre_setback(found, side, work, practice.cut_grid)};
}

std::vector<EndMark> marks_of(const PieceEnd& end, const Run& run, const Trim& trim,
                              const Practice& practice) {
    std::vector<EndMark> marks;
    if (end.work == EndWork::underlap || end.work == EndWork::overlap) {
        marks.push_back({MarkKind::lap_line, run.lap});
        if (end.work == EndWork::underlap) {
            for (const Length offset : bead_offsets(run.lap, practice)) {
                marks.push_back({MarkKind::bead, offset});
            }
            if (run.role == TrimRole::main && leg_width(trim, LegName::hem) > Length()) {
                marks.push_back({MarkKind::hem_notch, run.lap + practice.hem_notch_clear});
                marks.push_back({MarkKind::hem_clip_45, run.lap + practice.hem_notch_clear});
            }
        }
        return marks;
    }
    if (end.allowance > Length()) {
        // At an inside corner the flange laps past the line: it is not cut there, nor the drip
        // edge.
        if (end.work != EndWork::corner_in) {
            if (leg_width(trim, LegName::flange) > Length()) {
                marks.push_back({MarkKind::flange_cut, end.allowance});
            }
            marks.push_back({MarkKind::drip_clip_45, end.allowance});
        }
        marks.push_back({MarkKind::tab_fold, end.allowance});
        marks.push_back({MarkKind::tab_end, Length()});
    }
    if (end.mitre) {
        marks.push_back({MarkKind::flange_mitre, end.allowance + *end.mitre});
    }
    return marks;
}

/// Order of the hands' work where marks share a place: lines and beads, snips, folds, the end cut.
int turn_of(MarkKind kind) {
    constexpr MarkKind order[] = {
        MarkKind::lap_line,     MarkKind::bead,       MarkKind::hem_notch,    MarkKind::hem_clip_45,
        MarkKind::flange_mitre, MarkKind::flange_cut, MarkKind::drip_clip_45, MarkKind::tab_fold,
        MarkKind::tab_end,      MarkKind::end_cut};
    return static_cast<int>(std::find(std::begin(order), std::end(order), kind) -
                            std::begin(order));
}

std::vector<Mark> lay_along_tape(const std::vector<EndMark>& left,
                                 const std::vector<EndMark>& right, Length cut, bool end_cut) {
    std::vector<Mark> marks;
    marks.reserve(left.size() + right.size() + 1);
    for (const EndMark& mark : left) {
        marks.push_back({mark.kind, std::clamp(mark.in, Length(), cut), Side::left});
    }
    for (const EndMark& mark : right) {
        marks.push_back({mark.kind, std::clamp(cut - mark.in, Length(), cut), Side::right});
    }
    if (end_cut) {
        marks.push_back({MarkKind::end_cut, cut, Side::right});
    }
    std::stable_sort(marks.begin(), marks.end(), [](const Mark& a, const Mark& b) {
        return a.at != b.at ? a.at < b.at : turn_of(a.kind) < turn_of(b.kind);
    });
    return marks;
}

/// Puts the stick on the card. False when the piece takes all that is left of it: no cut through.
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
    return first ? found.work->edge.first : other(found.work->edge.first);
}

bool is_corner_out(EndWork work) {
    return work == EndWork::corner_tab || work == EndWork::corner_mitre;
}

/// A mitre that cannot be marked keeps the piece waiting: it would be cut by guess.
std::string mitre_missing(const Found& found, const PieceEnd& left, const PieceEnd& right) {
    const bool main = found.run->role == TrimRole::main;
    const bool flange = leg_width(found.trim, LegName::flange) > Length();
    const bool missing =
        (is_corner_out(left.work) && !left.mitre) || (is_corner_out(right.work) && !right.mitre);
    if (!main || !flange || !missing || found.piece->is_cut) {
        return "";
    }
    return found.work->edge.pitch ? "Measure the corner again: outside, it is under 180 degrees."
                                  : "Take the pitch first: the flange mitre depends on it.";
}

}  // namespace

Result<Card> make_card(const Job& job, const Plan& plan, const Catalogue& catalogue,
                       std::string_view edge, TrimRole role, int piece) {
    const Result<Found> all = find_all(job, plan, catalogue, edge, role, piece);
    if (!all) {
        return all.problem();
    }
    const Found& found = *all;
    const Practice& practice = job.practice;
    const PieceEnd left = end_of_piece(found, Side::left, practice);
    const PieceEnd right = end_of_piece(found, Side::right, practice);
    const auto laps = [](const PieceEnd& end) {
        return end.work == EndWork::underlap || end.work == EndWork::overlap;
    };

    Card card;
    card.edge = found.work->edge.id;
    card.trim = found.trim.id;
    card.trim_name = found.trim.name;
    card.role = role;
    card.piece = piece;
    card.pieces = static_cast<int>(found.run->pieces.size());
    card.cut = found.piece->cut;
    card.covers = found.piece->covers;
    card.lap = found.run->lap;
    card.left = left.work;
    card.right = right.work;
    card.hand = hand_of(found);
    card.legs = found.trim.legs;
    const bool end_cut = take_stick(card, plan, *found.piece, practice.kerf);
    card.marks =
        lay_along_tape(marks_of(left, *found.run, found.trim, practice),
                       marks_of(right, *found.run, found.trim, practice), card.cut, end_cut);
    card.screws = screws_of(*found.piece, laps(left), laps(right), found.run->lap, practice);
    card.waits_for = mitre_missing(found, left, right);
    if (card.waits_for.empty()) {
        card.waits_for = cut_waits_for(*found.work, *found.run, piece, practice);
    }
    return card;
}

}  // namespace hemline
