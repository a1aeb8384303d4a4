#include "engine/work/mark_deeds.h"

#include <algorithm>
#include <cmath>

#include "engine/roof/edge_shape.h"

namespace hemline {

namespace {

/// An end of the flat pattern, as the marks that belong to it see it.
struct PatternEnd {
    const FlatPattern& pattern;
    Side side;

    [[nodiscard]] std::int64_t end() const { return side == Side::left ? 0 : pattern.length.nm(); }
    [[nodiscard]] const FlatTab* tab_of(LegName leg) const {
        for (const FlatTab& tab : pattern.tabs) {
            if (tab.side == side && pattern.legs.names[tab.leg] == leg) {
                return &tab;
            }
        }
        return nullptr;
    }
    [[nodiscard]] bool slit_to(Length at) const {
        return std::any_of(pattern.slits.begin(), pattern.slits.end(), [&](const FlatLine& slit) {
            return (side == Side::left ? slit.b.x : slit.a.x) == at.nm();
        });
    }
    /// How wide the notch at the main bend is cut on each side of it, at the end of the metal.
    [[nodiscard]] Length notch() const {
        const std::int64_t bend = pattern.legs.edges[pattern.main_bend + 1].nm();
        std::int64_t above = -1, below = -1;
        for (const FlatTab& tab : pattern.tabs) {
            for (const FlatPoint& p : tab.outline) {
                if (tab.side != side || p.x != end()) {
                    continue;
                }
                const std::int64_t off = std::abs(p.y - bend);
                std::int64_t& least = tab.leg <= pattern.main_bend ? above : below;
                least = least < 0 ? off : std::min(least, off);
            }
        }
        return Length::of_nm(above < 0 || below < 0 ? 0 : std::max(above, below));
    }
};

/// Whether the tab is cut away from the bend: no edge of it runs along the bend that it was part
/// of.
bool is_off_bend(const PatternEnd& end, const FlatTab& tab) {
    const std::int64_t y = end.pattern.legs.edges[end.pattern.main_bend + 1].nm();
    const FlatOutline& outline = tab.outline;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        if (outline[i].y == y && outline[(i + 1) % outline.size()].y == y) {
            return false;
        }
    }
    return true;
}

/// Which corners of the tab are gone, at the end of the metal.
struct Clipped {
    bool upper = false, lower = false;
};
Clipped clipped(const PatternEnd& end, const FlatTab& tab) {
    const auto has = [&](Length y) {
        return std::find(tab.outline.begin(), tab.outline.end(), FlatPoint{end.end(), y.nm()}) !=
               tab.outline.end();
    };
    return {!has(end.pattern.legs.edges[tab.leg]), !has(end.pattern.legs.edges[tab.leg + 1])};
}

/// How far past its fold a foot's or top's tab is cut, along the piece at the leg's outer edge.
Length past_fold(const PatternEnd& end, const FlatTab& tab) {
    const std::int64_t bend = end.pattern.legs.edges[end.pattern.main_bend + 1].nm();
    const FlatPoint outer = tab.fold.a.y == bend ? tab.fold.b : tab.fold.a;
    std::int64_t past = 0;
    for (const FlatPoint& p : tab.outline) {
        past = p.y == outer.y ? std::max(past, std::abs(p.x - outer.x)) : past;
    }
    return Length::of_nm(past);
}

/// How far from the line of the bend the metal of the tab begins at its outermost place: what was
/// cut off so that it lies clear of what is round the corner.
Length cleared(const PatternEnd& end, const FlatTab& tab, Length line) {
    const std::int64_t bend = line.nm();
    std::int64_t outermost = 0, off = 0;
    for (const FlatPoint& p : tab.outline) {
        const std::int64_t from_end = std::abs(p.x - end.end());
        const bool first = &p == &tab.outline.front();
        if (first || from_end < outermost) {
            outermost = from_end;
            off = std::abs(p.y - bend);
        } else if (from_end == outermost) {
            off = std::min(off, std::abs(p.y - bend));
        }
    }
    return Length::of_nm(off);
}

/// A tab at a square-cut fascia's corner, whose fold leans.
Text leaning_tab_words(const PatternEnd& end, const FlatTab& tab, bool lower_clipped) {
    const Text upper = say("upper edge of the tab cut from the corner line to {1} down at its end",
                           cleared(end, tab, end.pattern.legs.edges[tab.leg]));
    return lower_clipped ? joined({upper, say("its lower corner clipped at 45°")}, "; ") : upper;
}

Text tab_end_words(const PatternEnd& end, EndWork work) {
    if (work == EndWork::eave_foot || work == EndWork::top_mitre) {
        const FlatTab* const leg = end.tab_of(LegName::flange);
        return leg == nullptr
                   ? say("the tab ends here")
                   : say("both tabs cut along their folds, {1} past them along the piece",
                         past_fold(end, *leg));
    }
    const FlatTab* const tab = end.tab_of(LegName::face);
    const bool folds_alone = end.tab_of(LegName::flange) == nullptr;
    const Clipped gone = tab != nullptr && folds_alone ? clipped(end, *tab) : Clipped();
    if (gone.upper && work == EndWork::corner_tab && tab->fold.a.x != tab->fold.b.x) {
        return leaning_tab_words(end, *tab, gone.lower);
    }
    if (gone.upper && gone.lower) {
        return say("both corners of the tab clipped at 45°");
    }
    if (gone.lower) {
        return say("lower corner of the tab clipped at 45°");
    }
    return gone.upper ? say("upper corner of the tab clipped at 45°") : say("the tab ends here");
}

/// What parts the two legs of an end that is folded as a whole.
Text parted_words(const PatternEnd& end, Length at) {
    const Length notch = end.notch();
    if (notch > Length()) {
        return say("cut a notch at the bend, from a point here to {1} each side at the end", notch);
    }
    return end.slit_to(at) ? say("slit along the bend from the end to here") : Text();
}

Text with_parting(Text deed, const PatternEnd& end, Length at) {
    const Text parted = parted_words(end, at);
    return parted.empty() ? deed : joined({deed, parted}, "; ");
}

/// A whole end folded or turned; a flange alone at a gable's peak.
Text end_words(const PatternEnd& end, const Mark& mark) {
    const FlatTab* const flange = end.tab_of(LegName::flange);
    const FlatTab* const face = end.tab_of(LegName::face);
    const FlatTab* const tab = flange != nullptr ? flange : face;
    const std::string angle = tab == nullptr ? "" : fold_words(tab->degrees);
    if (mark.kind == MarkKind::turn_up) {
        return with_parting(say("end turned up {1} here, against the wall", angle), end, mark.at);
    }
    return face == nullptr
               ? say("flange folded down {1} here, over the peak", angle)
               : with_parting(say("end folded down {1} here to close it", angle), end, mark.at);
}

Text tab_words(const PatternEnd& end) {
    const FlatTab* const tab = end.tab_of(LegName::face);
    const double degrees = tab == nullptr ? 0 : tab->degrees;
    return degrees < 0 ? say("tab folded {1} into the corner", fold_words(degrees))
                       : say("tab folded {1} round the corner", fold_words(degrees));
}

Text leg_words(const PatternEnd& end, MarkKind kind) {
    const bool near = kind == MarkKind::mitre_near;
    const FlatTab* const tab = end.tab_of(near ? LegName::flange : LegName::face);
    if (tab == nullptr) {
        return near ? say("leg on this roof: cut from its outer edge here to the corner point")
                    : say("leg on the other roof: cut from its outer edge here to the corner "
                          "point");
    }
    const std::string angle = fold_words(tab->degrees);
    const Text folded = near
                            ? say("leg on this roof: folded down {1} from its outer edge here to "
                                  "the corner point, its hem cut to the fold",
                                  angle)
                            : say("leg on the other roof: folded down {1} from its outer edge here "
                                  "to the corner point, its hem cut to the fold",
                                  angle);
    return is_off_bend(end, *tab)
               ? joined({folded, say("at the bend the tab cut square to the fold")}, "; ")
               : folded;
}

Text wrap_words(const PatternEnd& end, const FlatTab& tab, const Mark& mark) {
    const std::string angle = fold_words(tab.degrees);
    if (mark.kind == MarkKind::wrap_top) {
        return say("free edge of the wall leg: folded {1} from here to the corner mark", angle);
    }
    return joined({end.slit_to(mark.at) ? say("slit along the bend from the end to here")
                                        : say("cut along the bend from the end to here"),
                   say("wall leg folded {1} round the corner here", angle),
                   say("its lower edge cut from here to {1} up at its end",
                       cleared(end, tab, end.pattern.legs.edges[tab.leg + 1]))},
                  "; ");
}

Text plain_deed(const Card& card, const Mark& mark) {
    switch (mark.kind) {
        case MarkKind::lap_line: {
            const EndWork work = mark.toward == Side::left ? card.left : card.right;
            return work == EndWork::overlap ? say("mark only: the piece below ends here")
                                            : say("mark only: the visible part ends here");
        }
        case MarkKind::bead:
            return !card.screws.empty() && card.screws.front().leg == LegName::kick
                       ? say("one bead of sealant across face, flange and the leg down the channel")
                       : say("one bead of sealant across flange and face");
        case MarkKind::hem_notch:
            return say("hem cut away from here to the end");
        case MarkKind::hem_clip_45:
            return say("inner corner of the hem notch clipped at 45°");
        case MarkKind::flange_cut:
            return say("flange cut square from its back edge to the fold");
        case MarkKind::flange_mitre:
            return say("flange cut from its back edge here to the corner line");
        case MarkKind::tab_fold:
            return say("tab folded round the corner");
        case MarkKind::drip_clip_45:
            return say("drip edge cut at 45°, away from the tab");
        case MarkKind::tab_end:
            return say("the tab ends here");
        case MarkKind::relief:
            return say("small notch at the fold, so that the tab folds true");
        case MarkKind::face_cut:
            return say("face, kick and hem cut away from here to the end; the flange runs on");
        case MarkKind::plumb_top:
            return say("plumb line begins here, at the fold of flange and face");
        case MarkKind::plumb_foot:
            return say("plumb line ends here, at the lower edge of the face");
        case MarkKind::corner_top:
            return say(
                "the line where the two faces meet begins here, at the fold of flange and "
                "face");
        case MarkKind::corner_low:
            return say(
                "the line where the two faces meet ends here, at the lower edge of the "
                "face");
        case MarkKind::corner_point:
            return say("mark only: the bend meets the corner here");
        case MarkKind::mitre_near:
            return say("leg on this roof: from its outer edge here to the corner point");
        case MarkKind::mitre_far:
            return say("leg on the other roof: from its outer edge here to the corner point");
        case MarkKind::end_fold:
            return say("end folded down here to close it");
        case MarkKind::turn_up:
            return say("end turned up here, against the wall");
        case MarkKind::kick_fold:
            return say("slit along the bend from the end to here, wall leg turned out");
        case MarkKind::valley_fold:
            return say("flange folded up from its outer edge here to the corner line");
        case MarkKind::wrap_end:
            return say("wall leg cut away from here to the end; the deck leg runs on");
        case MarkKind::wrap_fold:
            return say(
                "slit along the bend from the end to here, wall leg wrapped round the "
                "corner");
        case MarkKind::wrap_top:
            return say("free edge of the wall leg: folded from here to the corner mark");
        case MarkKind::end_cut:
            break;
    }
    return say("stick cut through square");
}

}  // namespace

Text leg_called(const Card& card, LegName leg) {
    const bool flange = leg == LegName::flange;
    if (card.role != TrimRole::main || (!flange && leg != LegName::face)) {
        return spoken(leg);
    }
    switch (card.kind) {
        case EdgeKind::ridge:
        case EdgeKind::hip:
        case EdgeKind::valley:
            return card.pitches ? say("leg on the {1} roof",
                                      flange ? card.pitches->first : card.pitches->second)
                   : flange     ? say("leg on this roof")
                                : say("leg on the other roof");
        case EdgeKind::sidewall:
        case EdgeKind::headwall:
        case EdgeKind::curb_head:
            return flange ? say("deck leg") : say("wall leg");
        case EdgeKind::transition:
            return flange ? say("leg on the lower roof") : say("leg on the upper roof");
        case EdgeKind::eave:
        case EdgeKind::gable:
        case EdgeKind::high_eave:
        case EdgeKind::penetration:
        case EdgeKind::panels:
            break;
    }
    return spoken(leg);
}

std::vector<Text> legs_called(const Card& card, const std::vector<LegName>& legs) {
    std::vector<Text> called;
    for (const LegName leg : legs) {
        called.push_back(leg_called(card, leg));
    }
    return called;
}

std::string fold_words(double degrees) {
    const auto tenths = std::llround(std::abs(degrees) * 10);
    return std::to_string(tenths / 10) +
           (tenths % 10 == 0 ? "" : "." + std::to_string(tenths % 10)) + "°";
}

Text deed_of(const Card& card, const Mark& mark, const std::optional<FlatPattern>& pattern) {
    if (!pattern) {
        return plain_deed(card, mark);
    }
    const PatternEnd end{*pattern, mark.toward};
    switch (mark.kind) {
        case MarkKind::tab_fold:
            return tab_words(end);
        case MarkKind::tab_end:
            return tab_end_words(end, mark.toward == Side::left ? card.left : card.right);
        case MarkKind::end_fold:
        case MarkKind::turn_up:
            return end_words(end, mark);
        case MarkKind::mitre_near:
        case MarkKind::mitre_far:
            return leg_words(end, mark.kind);
        case MarkKind::corner_point:
            return end.slit_to(mark.at)
                       ? say("the bend meets the corner here: slit along it from the end to here")
                       : plain_deed(card, mark);
        case MarkKind::kick_fold: {
            const FlatTab* const tab = end.tab_of(LegName::face);
            return tab == nullptr
                       ? plain_deed(card, mark)
                       : say("slit along the bend from the end to here, wall leg turned out {1}",
                             fold_words(tab->degrees));
        }
        case MarkKind::wrap_fold:
        case MarkKind::wrap_top: {
            const FlatTab* const tab = end.tab_of(LegName::face);
            return tab == nullptr ? plain_deed(card, mark) : wrap_words(end, *tab, mark);
        }
        case MarkKind::valley_fold: {
            const FlatTab* const tab = end.tab_of(LegName::flange);
            return tab == nullptr
                       ? plain_deed(card, mark)
                       : say("flange folded up {1} from its outer edge here to the corner line",
                             fold_words(tab->degrees));
        }
        default:
            return plain_deed(card, mark);
    }
}

Text leg_toward_you(const Card& card) {
    if (card.role != TrimRole::main) {
        return say("lower edge toward you");
    }
    switch (card.kind) {
        case EdgeKind::eave:
        case EdgeKind::gable:
        case EdgeKind::high_eave:
            return say("flange away, face toward you");
        case EdgeKind::ridge:
        case EdgeKind::hip:
        case EdgeKind::valley:
            return card.pitches ? say("leg on the {1} roof away, leg on the {2} roof toward you",
                                      card.pitches->first, card.pitches->second)
                                : say("leg on this roof away, leg on the other roof toward you");
        case EdgeKind::sidewall:
        case EdgeKind::headwall:
            return say("wall leg away, deck leg toward you");
        case EdgeKind::transition:
            return say("leg on the upper roof away, leg on the lower toward you");
        case EdgeKind::curb_head:
            return say("deck leg away, wall leg toward you");
        case EdgeKind::penetration:
        case EdgeKind::panels:
            break;
    }
    return {};
}

}  // namespace hemline
