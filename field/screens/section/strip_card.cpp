// The card of an edge's strip: its section, the flat strip with its bends, and the list of cuts.
#include <cmath>

#include "engine/trim/girth.h"
#include "engine/words/result.h"
#include "engine/work/strips.h"
#include "field/screens/page/frame.h"
#include "field/screens/screens.h"
#include "field/screens/section/draw_profile.h"
#include "field/state/edge_view.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float picture_mm = 70;

/// "Bend 1 at 1 1/2 in, 90° up." for each, marks from the first leg's free edge.
Text bend_line(std::size_t bend, Length mark, double degrees) {
    const auto turned = std::llround(std::abs(degrees));
    return degrees < 0 ? say("Bend {1} at {2}: {3}° up.", bend + 1, CloseLength{mark}, turned)
                       : say("Bend {1} at {2}: {3}° down.", bend + 1, CloseLength{mark}, turned);
}

std::vector<Text> lines_of(const Strips& strips, const Section* section,
                           const std::vector<double>& bends) {
    std::vector<Text> lines = {say("Cut {1}.", stick_words(strips))};
    const auto blank = section == nullptr ? Result<Blank>(Problem{}) : blank_of(*section, bends);
    if (blank) {
        lines.push_back(say("Flat strip {1} wide; {2} where its bends are sharp.",
                            CloseLength{blank->girth}, strips.girth));
        for (std::size_t i = 0; i < blank->marks.size(); ++i) {
            lines.push_back(bend_line(i, blank->marks[i], bends[i]));
        }
    }
    lines.push_back(strips.strip->panels == Panels::under
                        ? say_count("{1} screw, {2} apart.", "{1} screws, {2} apart.",
                                    strips.fasteners, strips.apart)
                        : say_count("{1} rivet, {2} apart.", "{1} rivets, {2} apart.",
                                    strips.fasteners, strips.apart));
    lines.push_back(say("Cut edges are sharp: wear gloves and eye protection."));
    return lines;
}

}  // namespace

Wished draw_strip_card(Ui& ui, const State& state, Drafts& /*drafts*/) {
    const EdgeWork* const work = edge_of(state, state.where.edge);
    const Practice& practice = state.job.practice;
    const Strips strips = work == nullptr
                              ? Strips()
                              : strips_of(work->edge, work->length(practice).value_or(Length()),
                                          state.catalogue, practice);
    if (strips.strip == nullptr) {
        return Go{{Screen::roof, {}}};
    }
    const Frame frame =
        open_frame(ui, state, say("{1} · {2}", title_of(work->edge), say(strips.strip->name)),
                   {{"leave", say("Back to the step"), Look::primary}});
    const Section* const section = state.sections.find(strips.strip->id);
    const auto bends = section == nullptr
                           ? Result<std::vector<double>>(Problem{})
                           : bends_of(*section, {work->edge.kind,
                                                 work->edge.pitch.value_or(rise_in_12(6)),
                                                 work->edge.pitch2,
                                                 {},
                                                 work->edge.fascia});
    Box body = frame.body;
    if (bends) {
        const bool lying = !ui.portrait();
        const Box picture = lying ? take_left(body, body.w / 2)
                                  : take_top(body, std::min(body.h / 2, ui.mm(picture_mm)));
        draw_profile(ui, {*section, *bends, 0, -1, -1, state.marks, -1, leg_names(*strips.strip)},
                     picture);
        lying ? take_left(body, ui.mm(gap_mm)) : take_top(body, ui.mm(gap_mm));
    }
    Box words = ui.begin_scroll("strip words", body);
    const float top = words.y;
    for (const Text& line : lines_of(strips, section, bends ? *bends : std::vector<double>())) {
        take_top(words, ui.paragraph(words.x, words.y, words.w, line) + ui.mm(gap_mm));
    }
    ui.end_scroll(words.y - top);
    return frame.tapped == "leave" ? Wished(Go{at(state.where, Screen::steps)}) : frame.wish;
}

}  // namespace hemline
