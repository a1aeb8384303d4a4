// The words of the cut card: what a mark and an end are called.
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
        case MarkKind::corner_top:
            return say("corner line, top");
        case MarkKind::corner_low:
            return say("corner line, low");
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
        case MarkKind::valley_fold:
            return say("valley fold");
        case MarkKind::wrap_end:
            return say("wall leg cut");
        case MarkKind::wrap_fold:
            return say("wall's corner");
        case MarkKind::wrap_top:
            return say("corner fold, top");
        case MarkKind::end_cut:
            break;
    }
    return say("end cut");
}

Text screws_told(const Card& card) {
    if (card.screws.empty()) {
        return say("no screw: it hangs in its hems");
    }
    const std::int64_t count = count_of(card.screws);
    if (count == 0) {
        return say("no screw: nowhere does a whole head lie in the metal");
    }
    if (card.screwed_to == ScrewedTo::closures) {
        return say_count("1 screw, on a pan: {2} from a seam",
                         "{1} screws, two a pan: {2} from a seam", count, card.screw_places);
    }
    const std::vector<Length>& first = card.screws.front().at;
    if (clips_hems(card)) {
        return say("{1} clips outside each hem, first at {2}, last at {3}", first.size(),
                   first.front(), first.back());
    }
    return first.size() == 1 ? say("1 screw, at {1}", first.front())
                             : say("{1} screws, first at {2}, last at {3}", first.size(),
                                   first.front(), first.back());
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
        case EndWork::apron_corner:
            return say("past the wall's corner, wall leg wrapped");
        case EndWork::wall_foot:
            return say("foot onto the headwall, wall leg wrapped");
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
