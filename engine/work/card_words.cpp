// The words of the cut card: what a mark and an end are called, and what the hand does there.
#include "engine/work/card.h"

namespace hemline {

Text spoken(MarkKind kind) {
    switch (kind) {
        case MarkKind::lap_line:
            return say("lap line");
        case MarkKind::bead:
            return say("bead line");
        case MarkKind::hem_notch:
            return say("hem notch");
        case MarkKind::hem_clip_45:
            return say("hem clip 45°");
        case MarkKind::flange_cut:
            return say("flange cut");
        case MarkKind::flange_mitre:
            return say("flange miter");
        case MarkKind::tab_fold:
            return say("tab fold");
        case MarkKind::drip_clip_45:
            return say("drip edge 45°");
        case MarkKind::tab_end:
            return say("tab end");
        case MarkKind::relief:
            return say("relief notch");
        case MarkKind::face_cut:
            return say("face cut");
        case MarkKind::plumb_top:
            return say("plumb, top");
        case MarkKind::plumb_foot:
            return say("plumb, foot");
        case MarkKind::corner_point:
            return say("corner point");
        case MarkKind::mitre_near:
            return say("miter, near");
        case MarkKind::mitre_far:
            return say("miter, far");
        case MarkKind::end_fold:
            return say("end fold");
        case MarkKind::turn_up:
            return say("turn-up");
        case MarkKind::kick_fold:
            return say("kick-out");
        case MarkKind::end_cut:
            break;
    }
    return say("end cut");
}

Text deed_of(MarkKind kind) {
    switch (kind) {
        case MarkKind::lap_line:
            return say("mark only: the visible part ends here");
        case MarkKind::bead:
            return say("one bead of sealant across flange and face");
        case MarkKind::hem_notch:
            return say("hem cut away from here to the end");
        case MarkKind::hem_clip_45:
            return say("inner corner of the hem notch clipped at 45°");
        case MarkKind::flange_cut:
            return say("flange cut square from its back edge to the fold");
        case MarkKind::flange_mitre:
            return say("flange cut from its back edge here to the corner line");
        case MarkKind::tab_fold:
            return say("tab folded 90° round the corner");
        case MarkKind::drip_clip_45:
            return say("drip edge cut at 45°, away from the tab");
        case MarkKind::tab_end:
            return say("both corners of the tab clipped at 45°");
        case MarkKind::relief:
            return say("small notch at the fold, so that the tab folds true");
        case MarkKind::face_cut:
            return say("face, kick and hem cut away from here to the end; the flange runs on");
        case MarkKind::plumb_top:
            return say("plumb line begins here, at the fold of flange and face");
        case MarkKind::plumb_foot:
            return say("plumb line ends here, at the lower edge of the face");
        case MarkKind::corner_point:
            return say("mark only: the bend meets the corner here");
        case MarkKind::mitre_near:
            return say(
                "leg on this roof: from its outer edge here to the corner point, cut, or folded "
                "if a tab is left");
        case MarkKind::mitre_far:
            return say(
                "leg on the other roof: from its outer edge here to the corner point, cut, or "
                "folded if a tab is left");
        case MarkKind::end_fold:
            return say("end folded down here to close it");
        case MarkKind::turn_up:
            return say("end turned up here, against the wall");
        case MarkKind::kick_fold:
            return say("slit along the bend from the end to here, wall leg turned out");
        case MarkKind::end_cut:
            break;
    }
    return say("stick cut through square");
}

Text spoken(EndWork end) {
    switch (end) {
        case EndWork::gable_tab:
            return say("gable tab");
        case EndWork::corner_tab:
            return say("outside corner, with tab");
        case EndWork::corner_mitre:
            return say("outside corner, no tab");
        case EndWork::corner_in:
            return say("inside corner");
        case EndWork::underlap:
            return say("underlap");
        case EndWork::overlap:
            return say("overlap");
        case EndWork::eave_return:
            return say("plumb foot, tab returned along the eave");
        case EndWork::peak:
            return say("peak, cut plumb");
        case EndWork::folded:
            return say("folded end");
        case EndWork::turn_up:
            return say("turned up at the wall");
        case EndWork::kick_out:
            return say("kick-out");
        case EndWork::eave_foot:
            return say("foot cut to both eaves");
        case EndWork::top_mitre:
            return say("top cut to the ridge");
        case EndWork::square:
            break;
    }
    return say("square end");
}

}  // namespace hemline
