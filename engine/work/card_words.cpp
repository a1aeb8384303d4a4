// The words of the cut card: what a mark and an end are called, and what the hand does there.
#include "engine/work/card.h"

namespace hemline {

std::string_view spoken(MarkKind kind) {
    switch (kind) {
        case MarkKind::lap_line:
            return "lap line";
        case MarkKind::bead:
            return "bead line";
        case MarkKind::hem_notch:
            return "hem notch";
        case MarkKind::hem_clip_45:
            return "hem clip 45°";
        case MarkKind::flange_cut:
            return "flange cut";
        case MarkKind::flange_mitre:
            return "flange mitre";
        case MarkKind::tab_fold:
            return "tab fold";
        case MarkKind::drip_clip_45:
            return "drip edge 45°";
        case MarkKind::tab_end:
            return "tab end";
        case MarkKind::relief:
            return "relief notch";
        case MarkKind::face_cut:
            return "face cut";
        case MarkKind::plumb_top:
            return "plumb, top";
        case MarkKind::plumb_foot:
            return "plumb, foot";
        case MarkKind::corner_point:
            return "corner point";
        case MarkKind::mitre_near:
            return "mitre, near";
        case MarkKind::mitre_far:
            return "mitre, far";
        case MarkKind::end_fold:
            return "end fold";
        case MarkKind::turn_up:
            return "turn-up";
        case MarkKind::kick_fold:
            return "kick-out";
        case MarkKind::end_cut:
            break;
    }
    return "end cut";
}

std::string_view deed_of(MarkKind kind) {
    switch (kind) {
        case MarkKind::lap_line:
            return "mark only: the visible part ends here";
        case MarkKind::bead:
            return "one bead of sealant across flange and face";
        case MarkKind::hem_notch:
            return "hem cut away from here to the end";
        case MarkKind::hem_clip_45:
            return "inner corner of the hem notch clipped at 45°";
        case MarkKind::flange_cut:
            return "flange cut square from its back edge to the fold";
        case MarkKind::flange_mitre:
            return "flange cut from its back edge here to the corner line";
        case MarkKind::tab_fold:
            return "tab folded 90° round the corner";
        case MarkKind::drip_clip_45:
            return "drip edge cut at 45°, away from the tab";
        case MarkKind::tab_end:
            return "both corners of the tab clipped at 45°";
        case MarkKind::relief:
            return "small notch at the fold, so that the tab folds true";
        case MarkKind::face_cut:
            return "face, kick and hem cut away from here to the end; the flange runs on";
        case MarkKind::plumb_top:
            return "plumb line begins here, at the fold of flange and face";
        case MarkKind::plumb_foot:
            return "plumb line ends here, at the lower edge of the face";
        case MarkKind::corner_point:
            return "mark only: the bend meets the corner here";
        case MarkKind::mitre_near:
            return "leg on this roof: from its outer edge here to the corner point, cut, or folded "
                   "if a tab is left";
        case MarkKind::mitre_far:
            return "leg on the other roof: from its outer edge here to the corner point, cut, or "
                   "folded if a tab is left";
        case MarkKind::end_fold:
            return "end folded down here to close it";
        case MarkKind::turn_up:
            return "end turned up here, against the wall";
        case MarkKind::kick_fold:
            return "slit along the bend from the end to here, wall leg turned out";
        case MarkKind::end_cut:
            break;
    }
    return "stick cut through square";
}

std::string_view spoken(EndWork end) {
    switch (end) {
        case EndWork::gable_tab:
            return "gable tab";
        case EndWork::corner_tab:
            return "outside corner, with tab";
        case EndWork::corner_mitre:
            return "outside corner, no tab";
        case EndWork::corner_in:
            return "inside corner";
        case EndWork::underlap:
            return "underlap";
        case EndWork::overlap:
            return "overlap";
        case EndWork::eave_return:
            return "plumb foot, tab returned along the eave";
        case EndWork::peak:
            return "peak, cut plumb";
        case EndWork::folded:
            return "folded end";
        case EndWork::turn_up:
            return "turned up at the wall";
        case EndWork::kick_out:
            return "kick-out";
        case EndWork::eave_foot:
            return "foot cut to both eaves";
        case EndWork::top_mitre:
            return "top cut to the ridge";
        case EndWork::square:
            break;
    }
    return "square end";
}

}  // namespace hemline
