#include "engine/work/panel_steps.h"

#include <algorithm>

#include "engine/panels/panel_layout.h"
#include "engine/plan/plan.h"
#include "engine/words/result.h"
#include "engine/work/procedure.h"

namespace hemline {

namespace {

constexpr int seams_apart = 5;
constexpr Length walk_off_most = inches(3);
constexpr Length creep_most = sixteenths(2);
constexpr Length gap_off_most = sixteenths(1);

/// From the left end, of the one counted from where laying begins.
std::size_t seam_index(const PlannedPanels& panels, int seam) {
    const std::size_t count = panels.layout->seams.size();
    const auto from_begin = static_cast<std::size_t>(seam);
    return panels.begins == Side::left ? from_begin - 1 : count - from_begin;
}

int last_fifth(const PlannedPanels& panels) {
    return static_cast<int>(panels.layout->seams.size()) / seams_apart * seams_apart;
}

/// The pan's number of the one counted from where laying begins.
int pan_number(const PlannedPanels& panels, int from_begin) {
    const int pans = static_cast<int>(panels.layout->seams.size()) + 1;
    return panels.begins == Side::left ? from_begin : pans + 1 - from_begin;
}

Text pans_words(const PlannedPanels& panels, int from, int to) {
    const int first = pan_number(panels, from), last = pan_number(panels, to);
    return first == last ? say("pan {1}", first) : say("pans {1} to {2}", first, last);
}

/// On the tape's marks.
LengthLimits around(Length expected, Length off) {
    const Length read = nearest_on(expected, sixteenths(1));
    return {std::max(read - off, Length()), read + off};
}

}  // namespace

std::vector<int> panel_pieces(Each each, const PlannedPanels* panels) {
    std::vector<int> pieces;
    if (panels == nullptr || panels->layout == nullptr) {
        return pieces;
    }
    if (each == Each::fifth_seam) {
        for (int seam = seams_apart; seam <= last_fifth(*panels); seam += seams_apart) {
            pieces.push_back(seam);
        }
        return pieces;
    }
    for (const LaidPan& pan : panels->layout->pans) {
        if (pan.kind == PanKind::cut && (pieces.empty() || pieces.back() != pan.number)) {
            pieces.push_back(pan.number);
        }
    }
    if (panels->begins == Side::right) {
        std::reverse(pieces.begin(), pieces.end());
    }
    return pieces;
}

Length seam_from_begin(const PlannedPanels& panels, int seam) {
    const PanelLayout& layout = *panels.layout;
    const Length at = layout.seams[seam_index(panels, seam)].at;
    return panels.begins == Side::left ? at - layout.frame.eave.from : layout.frame.eave.to - at;
}

std::optional<Text> panel_words(std::string_view word, int piece, const PlannedPanels& panels) {
    if (word == "eave") {
        return Text(panels.eave);
    }
    if (word == "begin") {
        return panels.begins == Side::left ? say("left") : say("right");
    }
    if (panels.layout == nullptr) {
        return say("what its plane gives");
    }
    const PanelLayout& layout = *panels.layout;
    const int pans = static_cast<int>(layout.seams.size()) + 1;
    if (word == "pan") {
        return Text(std::to_string(piece));
    }
    if (word == "pans") {
        return pans_words(panels, piece - seams_apart + 1, piece);
    }
    if (word == "rest") {
        return pans_words(panels, last_fifth(panels) + 1, pans);
    }
    if (word == "width") {
        const LaidPan& first =
            panels.begins == Side::left ? layout.pans.front() : layout.pans.back();
        return Text(first.blank.value_or(first.width));
    }
    if (word == "gap") {
        return Text(layout.ends.gap);
    }
    if (word == "hem") {
        return Text(layout.ends.hem);
    }
    if (word == "turn_up") {
        return Text(layout.ends.turn_up);
    }
    return word == "clips" ? std::optional(Text(std::to_string(clips_of(panels)))) : std::nullopt;
}

LengthLimits panel_limits(const StepRule& rule, int piece, const PlannedPanels& panels) {
    for (const auto& [id, expected] : {std::pair("left_slope", panels.expected.left),
                                       std::pair("right_slope", panels.expected.right),
                                       std::pair("rising", panels.expected.rising),
                                       std::pair("falling", panels.expected.falling)}) {
        if (rule.id == id) {
            return around(expected, walk_off_most);
        }
    }
    if (panels.layout == nullptr) {
        return {};
    }
    if (rule.id == fifth_seam_step) {
        return around(seam_from_begin(panels, piece), creep_most);
    }
    if (rule.id == "hook") {
        return around(panels.layout->ends.gap, gap_off_most);
    }
    return {};
}

std::int64_t clips_of(const PlannedPanels& panels) {
    std::int64_t clips = 0;
    if (panels.layout != nullptr) {
        for (const LaidSeam& seam : panels.layout->seams) {
            clips += static_cast<std::int64_t>(seam.clips.size());
        }
    }
    return clips;
}

}  // namespace hemline
