#include "field/screens/steps/other_card.h"

#include <algorithm>

namespace hemline {

std::optional<OtherCard> other_card(const Edge& edge, const Step& step) {
    if (step.rule->each == Each::cut_pan) {
        return OtherCard{"pan", say("Its drawing"), Screen::cut_pan, step.piece};
    }
    if (edge.kind == EdgeKind::panels) {
        return OtherCard{"plane", say("The plane"), Screen::panels};
    }
    const std::vector<Only>& only = step.rule->only;
    const bool strip = std::find(only.begin(), only.end(), Only::strip) != only.end();
    if (strip && step.rule->asks == Asks::done) {
        return OtherCard{"strip", say("Strip card"), Screen::strip_card};
    }
    if (step.rule->part == "End cap" && step.rule->asks == Asks::done) {
        return OtherCard{"cap", say("Cap card"), Screen::end_cap};
    }
    return {};
}

}  // namespace hemline
