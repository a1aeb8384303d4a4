#include "field/screens/section/section_words.h"

#include <cmath>
#include <cstdio>
#include <string>

#include "engine/words/text.h"

namespace hemline {

namespace {

std::string degrees_words(double degrees) {
    char text[32];
    std::snprintf(text, sizeof text, "%.1f°", std::abs(degrees));
    return text;
}

}  // namespace

Text words_of(Hem hem) {
    switch (hem) {
        case Hem::open:
            return say("open hem");
        case Hem::closed:
            return say("closed hem");
        case Hem::tear_drop:
            return say("tear-drop hem");
        case Hem::none:
            break;
    }
    return say("no hem");
}

Text bend_words(const SectionLeg& leg, double bend) {
    const std::string degrees = degrees_words(bend);
    if (leg.bend.fold_of) {
        return bend < 0 ? say("bend {1} up, by the roof", degrees)
                        : say("bend {1} down, by the roof", degrees);
    }
    return bend < 0 ? say("bend {1} up", degrees) : say("bend {1} down", degrees);
}

}  // namespace hemline
