#include "engine/handover/roof_ink.h"

#include <algorithm>
#include <array>
#include <cstdio>

#include "engine/handover/svg.h"

namespace hemline {

namespace {

/// Double lines have white in the middle.
struct LineLook {
    EdgeKind kind;
    double thick;
    const char* dashes;
    bool is_double;
};
constexpr std::array<LineLook, 10> looks = {{{EdgeKind::eave, 1.1, "", false},
                                             {EdgeKind::high_eave, 0.8, "", false},
                                             {EdgeKind::gable, 0.8, "", false},
                                             {EdgeKind::ridge, 0.6, "", false},
                                             {EdgeKind::hip, 0.3, "", false},
                                             {EdgeKind::valley, 1.2, "", true},
                                             {EdgeKind::transition, 0.6, "4 1 1 1", false},
                                             {EdgeKind::sidewall, 0.5, "1.6 0.8", false},
                                             {EdgeKind::headwall, 0.5, "1.6 0.8", false},
                                             {EdgeKind::curb_head, 0.5, "1.6 0.8", false}}};

}  // namespace

std::span<const EdgeKind> drawn_kinds() {
    static const std::array<EdgeKind, looks.size()> kinds = [] {
        std::array<EdgeKind, looks.size()> made{};
        std::transform(looks.begin(), looks.end(), made.begin(),
                       [](const LineLook& look) { return look.kind; });
        return made;
    }();
    return kinds;
}

std::string edge_line(EdgeKind kind, PlanVector from, PlanVector to) {
    const LineLook& look = *std::find_if(looks.begin(), looks.end(),
                                         [&](const LineLook& one) { return one.kind == kind; });
    const bool dashed = *look.dashes != 0;
    const auto drawn = [&](const char* ink, double thick) {
        return "<path class=\"" + std::string(word_of(kind)) + "\" d=\"M" + page_figure(from.x) +
               ' ' + page_figure(from.y) + " L" + page_figure(to.x) + ' ' + page_figure(to.y) +
               "\" stroke=\"" + ink + "\" stroke-width=\"" + page_figure(thick) +
               "\" stroke-linecap=\"" + (dashed ? "butt" : "round") + "\"" +
               (dashed ? " stroke-dasharray=\"" + std::string(look.dashes) + "\"" : "") + "/>\n";
    };
    return drawn("#14191c", look.thick) + (look.is_double ? drawn("#fff", look.thick / 3) : "");
}

std::string page_text(PlanVector at, double high, const std::string& words,
                      const std::string& more) {
    return "<text x=\"" + page_figure(at.x) + "\" y=\"" + page_figure(at.y) + "\" font-size=\"" +
           page_figure(high) + "\"" + more + ">" + xml_text(words) + "</text>\n";
}

double letters_wide(const std::string& text, double high) {
    double wide = 0;
    for (const char c : text) {
        wide += c == ' ' || c == '/' || c == '.' ? 0.34 : 0.6;
    }
    return wide * high;
}

std::string page_figure(double value) {
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%.2f", value);
    return text.data();
}

}  // namespace hemline
