// Each end's marks are measured from that end, inward, then laid along the tape.
//
//   left end: at = in                       right end: at = cut − in
//   |<-in->|_________________________________|<-in->|
#include "engine/work/card_marks.h"
#include "engine/plan/plan.h"

#include <algorithm>

#include "engine/work/fixing.h"

namespace hemline {

namespace {

struct EndMark {
    MarkKind kind;
    Length in;  ///< from the end of the metal, inward
};

/// An end of a piece of a run, and what its marks depend on.
struct EndOfPiece {
    const EndMetal& end;
    const Run& run;
    const Trim& trim;
    const Practice& practice;

    [[nodiscard]] bool has(LegName leg) const { return leg_width(trim, leg) > Length(); }
};

/// A wrap's laps lie behind the trim, where no water stands: they get no sealant, but their hems
/// are notched like the trim's, or they would bind.
std::vector<EndMark> lap_marks(const EndOfPiece& at) {
    std::vector<EndMark> marks = {{MarkKind::lap_line, at.run.lap}};
    if (at.end.work == EndWork::overlap) {
        return marks;
    }
    if (is_sealed(at.run)) {
        for (const Length offset : bead_offsets(at.run.lap, at.practice)) {
            marks.push_back({MarkKind::bead, offset});
        }
    }
    if (at.has(LegName::hem)) {
        marks.push_back({MarkKind::hem_notch, at.run.lap + at.practice.hem_notch_clear});
        marks.push_back({MarkKind::hem_clip_45, at.run.lap + at.practice.hem_notch_clear});
    }
    return marks;
}

/// The slanted line along which two square-cut faces meet.
std::vector<EndMark> lean_marks(const EndOfPiece& at) {
    const Length line = at.end.added();
    return at.end.lean == Length()
               ? std::vector<EndMark>()
               : std::vector<EndMark>{{MarkKind::corner_top, line},
                                      {MarkKind::corner_low, line + at.end.lean}};
}

/// A tab folded around the corner from the end of the edge, and the flange's miter where it has
/// one.
std::vector<EndMark> tab_marks(const EndOfPiece& at) {
    const Length line = at.end.added(), low = line + at.end.lean;
    std::vector<EndMark> marks = lean_marks(at);
    if (at.end.tab > Length()) {
        if (at.has(LegName::flange)) {
            marks.push_back({MarkKind::flange_cut, line});
        }
        marks.push_back({MarkKind::drip_clip_45, low});
        if (at.run.role == TrimRole::wrap) {
            marks.push_back({MarkKind::relief, low});
        }
        marks.push_back({MarkKind::tab_fold, low});
        marks.push_back({MarkKind::tab_end, Length()});
    }
    if (at.end.near_back) {
        marks.push_back({MarkKind::flange_mitre, line + *at.end.near_back});
    }
    return marks;
}

/// The face stops at the line. The flange fitted first runs on square, under the neighbor's, and is
/// folded where the other roof begins; the other flange is cut along the line between the two
/// roofs.
std::vector<EndMark> inside_corner_marks(const EndOfPiece& at) {
    std::vector<EndMark> marks = lean_marks(at);
    if (at.end.added() > Length()) {
        marks.push_back({MarkKind::face_cut, at.end.added()});
    }
    if (at.end.near_back && at.end.tab == Length()) {
        marks.push_back({MarkKind::flange_mitre, at.end.past + *at.end.near_back});
    } else if (at.end.near_back) {
        marks.push_back({MarkKind::valley_fold, at.end.added() + *at.end.near_back});
    }
    return marks;
}

/// A gable's foot and top: the face cut or folded along a plumb line.
std::vector<EndMark> gable_marks(const EndOfPiece& at) {
    const bool foot = at.end.work == EndWork::eave_return;
    const Length tab = at.end.tab;
    const Length top = foot ? tab + at.end.plumb : tab;
    const Length low = foot ? tab : tab + at.end.plumb;
    std::vector<EndMark> marks;
    if (at.end.plumb > Length()) {
        marks.push_back({MarkKind::plumb_top, top});
        marks.push_back({MarkKind::plumb_foot, low});
    }
    if (foot && at.end.added() > Length()) {
        marks.push_back({MarkKind::flange_cut, top});
    } else if (!foot && at.end.added() + at.end.plumb > Length()) {
        marks.push_back({MarkKind::face_cut, top});
    }
    if (tab > Length()) {
        if (foot) {
            marks.push_back({MarkKind::drip_clip_45, tab});
        }
        marks.push_back({foot ? MarkKind::tab_fold : MarkKind::end_fold, tab});
        marks.push_back({MarkKind::tab_end, Length()});
    }
    return marks;
}

/// Both legs cut to the same corner point: a hip's or valley's foot, a valley's top.
std::vector<EndMark> corner_marks(const EndOfPiece& at) {
    const Length point = at.end.added();
    std::vector<EndMark> marks = {{MarkKind::corner_point, point}};
    if (at.end.near_back) {
        marks.push_back({MarkKind::mitre_near, point + *at.end.near_back});
    }
    if (at.end.far_back) {
        marks.push_back({MarkKind::mitre_far, point + *at.end.far_back});
    }
    if (at.end.tab > Length()) {
        marks.push_back({MarkKind::tab_end, Length()});
    }
    return marks;
}

/// A wall leg wrapped round the corner of its wall.
std::vector<EndMark> wrap_marks(const EndOfPiece& at) {
    std::vector<EndMark> marks = {{MarkKind::wrap_fold, at.end.past}};
    if (at.end.plumb > Length()) {
        marks.push_back({MarkKind::wrap_top, at.end.past + at.end.plumb});
    }
    if (at.end.wrap < at.end.past) {
        marks.push_back({MarkKind::wrap_end, at.end.past - at.end.wrap});
    }
    return marks;
}

/// A single fold across the end.
std::vector<EndMark> fold_marks(const EndOfPiece& at, MarkKind fold) {
    if (at.end.tab == Length()) {
        return {};
    }
    std::vector<EndMark> marks = {{fold, at.end.tab}};
    if (fold == MarkKind::end_fold) {
        marks.push_back({MarkKind::tab_end, Length()});
    }
    return marks;
}

std::vector<EndMark> marks_at(const EndOfPiece& at) {
    switch (at.end.work) {
        case EndWork::underlap:
        case EndWork::overlap:
            return lap_marks(at);
        case EndWork::corner_in:
            return inside_corner_marks(at);
        case EndWork::eave_return:
        case EndWork::peak:
            return gable_marks(at);
        case EndWork::eave_foot:
        case EndWork::top_mitre:
            return corner_marks(at);
        case EndWork::folded:
            return fold_marks(at, MarkKind::end_fold);
        case EndWork::turn_up:
            return fold_marks(at, MarkKind::turn_up);
        case EndWork::kick_out:
            return fold_marks(at, MarkKind::kick_fold);
        case EndWork::apron_corner:
        case EndWork::wall_foot:
            return wrap_marks(at);
        case EndWork::gable_tab:
        case EndWork::corner_tab:
        case EndWork::corner_mitre:
        case EndWork::square:
            break;
    }
    return tab_marks(at);
}

/// Order of work where marks share a place: lines and beads, snips, folds, the end cut.
int turn_of(MarkKind kind) {
    constexpr MarkKind order[] = {
        MarkKind::lap_line,   MarkKind::bead,         MarkKind::corner_point,
        MarkKind::hem_notch,  MarkKind::hem_clip_45,  MarkKind::mitre_near,
        MarkKind::mitre_far,  MarkKind::flange_mitre, MarkKind::flange_cut,
        MarkKind::plumb_top,  MarkKind::plumb_foot,   MarkKind::corner_top,
        MarkKind::corner_low, MarkKind::face_cut,     MarkKind::wrap_end,
        MarkKind::wrap_fold,  MarkKind::wrap_top,     MarkKind::drip_clip_45,
        MarkKind::relief,     MarkKind::kick_fold,    MarkKind::tab_fold,
        MarkKind::end_fold,   MarkKind::valley_fold,  MarkKind::turn_up,
        MarkKind::tab_end,    MarkKind::end_cut};
    return static_cast<int>(std::find(std::begin(order), std::end(order), kind) -
                            std::begin(order));
}

}  // namespace

std::vector<Mark> card_marks(const EndMetal& left, const EndMetal& right, const Run& run,
                             const Trim& trim, Length cut, EndCut end_cut,
                             const Practice& practice) {
    std::vector<Mark> marks;
    for (const EndMark& mark : marks_at({left, run, trim, practice})) {
        marks.push_back({mark.kind, std::clamp(mark.in, Length(), cut), Side::left});
    }
    for (const EndMark& mark : marks_at({right, run, trim, practice})) {
        marks.push_back({mark.kind, std::clamp(cut - mark.in, Length(), cut), Side::right});
    }
    if (end_cut == EndCut::needed) {
        marks.push_back({MarkKind::end_cut, cut, Side::right});
    }
    std::stable_sort(marks.begin(), marks.end(), [](const Mark& a, const Mark& b) {
        return a.at != b.at ? a.at < b.at : turn_of(a.kind) < turn_of(b.kind);
    });
    return marks;
}

}  // namespace hemline
