#include "engine/record/gate_words.h"

#include <algorithm>
#include <iterator>

namespace hemline {

Text spoken(GateCheck check) {
    switch (check) {
        case GateCheck::anchors:
            break;
        case GateCheck::ladder:
            return say("the ladder");
        case GateCheck::wires:
            return say("wires");
        case GateCheck::wind:
            return say("wind");
        case GateCheck::wet:
            return say("wet or frost");
        case GateCheck::heat:
            return say("heat");
    }
    return say("anchors and lines");
}

Text spoken(const std::vector<GateCheck>& checks) {
    std::vector<Text> words;
    std::transform(checks.begin(), checks.end(), std::back_inserter(words),
                   [](GateCheck check) { return spoken(check); });
    return joined(words, ", ");
}

}  // namespace hemline
