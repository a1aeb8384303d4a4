// The panels of a plane: drawn true, with what is ordered for it, and what is doubted.
#include <algorithm>

#include "engine/work/edge_naming.h"
#include "engine/work/panel_steps.h"
#include "field/screens/page/frame.h"
#include "field/screens/panels/draw_plane.h"
#include "field/screens/screens.h"
#include "field/state/edge_view.h"
#include "field/state/plane_view.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float plane_part = 0.62F, plane_part_upright = 0.45F;
constexpr float around_plane_mm = 2, pan_row_mm = 11;

Text pinned_line(const State& state) {
    switch (state.job.practice.fixed_line) {
        case FixedLine::eave:
            return say("Pinned at the eave.");
        case FixedLine::ridge:
            return say("Pinned at the ridge.");
        case FixedLine::unsaid:
            break;
    }
    return say("Pinned at the eave: assumed.");
}

Text row_words(const PansAlike& pans) {
    const Text which = pans.first == pans.last ? say("Pan {1}", pans.first)
                                               : say("Pans {1} to {2}", pans.first, pans.last);
    return pans.kind == PanKind::cut
               ? say("{1}: {2}", which, pans.length)
               : say("{1}: {2}, {3} wide, {4}", which, pans.length, pans.width,
                     pans.kind == PanKind::full ? say("whole") : say("end"));
}

/// A row for pans alike; a touch on one that is cut leads to how it is cut.
void draw_rows(Ui& ui, const State& state, const PanelLayout& layout, Box& list, Wished& wish) {
    for (const PansAlike& pans : pans_alike(layout)) {
        if (pans.kind != PanKind::cut) {
            take_top(list, ui.paragraph(list.x, list.y, list.w, row_words(pans)) + ui.mm(1));
            continue;
        }
        const Box row = take_top(list, ui.mm(pan_row_mm));
        take_top(list, ui.mm(gap_mm));
        if (ui.button("pan " + std::to_string(pans.first), row_words(pans), row)) {
            wish = Go{{Screen::cut_pan, state.where.edge, TrimRole::main, pans.first}};
        }
    }
}

/// What is ordered, besides the pans: lines of words.
std::vector<Text> sums_of(const PlannedPanels& panels) {
    const PanelLayout& layout = *panels.layout;
    std::vector<Text> lines;
    lines.push_back(say_count("{2} pans, {1} clip.", "{2} pans, {1} clips.", clips_of(panels),
                              layout.pans.size()));
    lines.push_back(say("Hook gap {1}, hem {2}, lip {3}; tops turned up {4}.", layout.ends.gap,
                        layout.ends.hem, layout.ends.lip, layout.ends.turn_up));
    for (const PanClosures& one : layout.closures) {
        lines.push_back(say("Closures at {1}: {2} of {3}.", one.edge, one.count, one.blank));
    }
    for (const PanPair& pair : layout.pairs) {
        lines.push_back(say("Pans {1} and {2} come from one length of {3}.",
                            layout.pans[pair.first].number, layout.pans[pair.second].number,
                            pair.length));
    }
    return lines;
}

void draw_said(Ui& ui, const State& state, const PlannedPanels& panels, Box box, Wished& wish) {
    Box list = ui.begin_scroll("said of panels " + state.where.edge, box);
    const float top = list.y;
    for (const Text& doubt : doubts_on(state, state.where.edge)) {
        take_top(list, draw_band(ui, doubt, list));
    }
    if (panels.layout != nullptr) {
        draw_rows(ui, state, *panels.layout, list, wish);
        take_top(list, ui.mm(gap_mm));
        for (const Text& line : sums_of(panels)) {
            take_top(list, ui.paragraph(list.x, list.y, list.w, line) + ui.mm(1));
        }
        take_top(list, ui.paragraph(list.x, list.y, list.w, pinned_line(state)) + ui.mm(1));
        take_top(list, ui.paragraph(list.x, list.y, list.w,
                                    say("Read the plane before panels are ordered. The maker's "
                                        "instructions and the engineer go first."),
                                    Size::small, ui.colours().soft));
    }
    ui.end_scroll(list.y - top);
}

/// A pipe or curb through the plane, to be measured by its steps.
Wish pipe_through(const State& state, const EdgeWork& work) {
    FreeLetters free(state.job, {});
    Edge pipe;
    pipe.id = free.next();
    pipe.kind = EdgeKind::penetration;
    return KeepAll{{EdgeAdded{pipe}, EdgePlaced{pipe.id, *work.place}},
                   Where{Screen::steps, pipe.id}};
}

/// The pan that the next step is about.
int pan_in_hand(const State& state, const EdgeWork& work) {
    const std::vector<Step> steps = steps_on(state, work);
    const auto next = next_on(state, steps);
    return next && steps[*next].rule->each == Each::cut_pan ? steps[*next].piece : 0;
}

}  // namespace

Wished draw_panels(Ui& ui, const State& state, Drafts& /*drafts*/) {
    const EdgeWork* const work = edge_of(state, state.where.edge);
    const PlannedPanels* const panels = panels_at(state);
    if (work == nullptr || panels == nullptr) {
        return Go{{Screen::roof, {}}};
    }
    const bool laid = panels->layout != nullptr;
    const Frame frame =
        open_frame(ui, state, say("{1} · on eave {2}", title_of(work->edge), panels->eave),
                   {{"leave", say("Roof")},
                    {"asked", say("Where pinned")},
                    {"pipe", say("Add a pipe")},
                    {"seams", say("Other seams"), laid ? Look::plain : Look::off},
                    {"steps", say("Its steps"), Look::primary}});
    Wished wish = frame.wish;
    Box body = frame.body;
    if (laid) {
        const Box picture = ui.portrait() ? take_top(body, body.h * plane_part_upright)
                                          : take_left(body, body.w * plane_part);
        const auto asked = plane_asked(state.job, state.bodies, state.where.edge);
        draw_pans(ui, *panels->layout, pan_in_hand(state, *work),
                  asked ? asked->through : std::vector<Penetration>(),
                  inset(picture, ui.mm(around_plane_mm)));
        ui.portrait() ? take_top(body, ui.mm(gap_mm)) : take_left(body, ui.mm(gap_mm));
    }
    draw_said(ui, state, *panels, body, wish);
    if (frame.tapped == "leave") {
        wish = Go{{Screen::roof, {}}};
    } else if (frame.tapped == "asked") {
        wish = Go{at(state.where, Screen::asked_once)};
    } else if (frame.tapped == "pipe") {
        wish = pipe_through(state, *work);
    } else if (frame.tapped == "seams") {
        wish = Go{at(state.where, Screen::seams)};
    } else if (frame.tapped == "steps") {
        wish = Go{at(state.where, Screen::steps)};
    }
    return wish;
}

}  // namespace hemline
