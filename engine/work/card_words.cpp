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
        case EndWork::square:
            break;
    }
    return "square end";
}

}  // namespace hemline
