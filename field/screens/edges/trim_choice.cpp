#include "field/screens/edges/trim_choice.h"

#include <algorithm>

namespace hemline {

namespace {

/// Whether the kind has trims under the panels and over them.
bool lies_both_ways(EdgeKind kind, const Catalogue& catalogue) {
    const std::vector<const Trim*> all = trims_for(kind, catalogue);
    return std::any_of(all.begin(), all.end(),
                       [&](const Trim* trim) { return trim->panels != all.front()->panels; });
}

}  // namespace

Text trim_words(const Trim& trim, EdgeKind kind, const Catalogue& catalogue) {
    const Text name = say(trim.name);
    if (!lies_both_ways(kind, catalogue)) {
        return name;
    }
    const bool under = trim.panels == Panels::under;
    if (trims_for(kind, catalogue).size() > 2) {
        return under ? say("{1}, under the panels", name) : say("{1}, over the panels", name);
    }
    Edge edge;
    edge.kind = kind;
    edge.trim = trim.id;
    const Strip* const strip = under ? nullptr : catalogue.strip_for(edge);
    return under              ? say("under the panels")
           : strip == nullptr ? say("over the panels")
                              : say("over the panels, on a {1}", say(strip->name));
}

Text under_or_over(const Edge& edge, const Catalogue& catalogue) {
    if (!lies_both_ways(edge.kind, catalogue)) {
        return {};
    }
    return must_lie_over(edge)
               ? say("Its foot runs out on panels at the outside corner, so it goes over them.")
               : say("Under the panels: on the deck, before they are laid. Over them: after they "
                     "are laid, on a strip that is riveted to the end pan's turned-up edge.");
}

}  // namespace hemline
