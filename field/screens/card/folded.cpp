// The folded piece: its end in steps, from as cut to finished and put together with what it meets,
// turned with a finger, to be compared with the metal in hand.
#include <algorithm>

#include "engine/words/result.h"
#include "engine/work/folded_end.h"
#include "engine/work/mark_deeds.h"
#include "engine/work/piece_meeting.h"
#include "field/screens/card/draw_solid.h"
#include "field/screens/page/frame.h"
#include "field/screens/screens.h"
#include "field/state/edge_view.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float button_mm = 12, degrees_a_mm = 1.5F, column_mm = 54;
constexpr double raised_at_first = 28, turned_at_first = 38, raised_most = 89;
constexpr double before_the_corner = 45;  // both faces of a corner put together are seen

struct StepRow {
    const char *name, *label, *says;
};
constexpr StepRow steps[] = {
    {"step cut", phrase("As cut"),
     phrase("Bent on the brake, cut at the end; the tabs are still flat.")},
    {"step half", phrase("Tabs half"), phrase("The tabs half folded, by hand.")},
    {"step finished", phrase("Finished"),
     phrase("Every fold done. Compare it with the metal in hand.")},
    {"step meeting", phrase("Joined"), phrase("Put together with the piece that it meets.")},
};
constexpr int meeting_step = 3;

/// What is drawn, and what is said of it.
struct Shown {
    std::vector<SolidPart> parts;
    std::vector<FoldFault> faults;
    Text says;
    std::optional<double> seen_from = {};  ///< turned at first, where not toward its end
};

Result<Shown> shown_of(const State& state, const EdgeWork& work, const Card& card,
                       const FlatPattern& pattern, Side side, int step) {
    const Section* const section = state.sections.find(card.trim);
    const Painted painted = section == nullptr ? Painted::none : section->painted;
    Shown shown;
    shown.says = say(steps[step].says);
    if (step == meeting_step) {
        const auto meeting = piece_meeting({state.job, state.plan, state.catalogue, state.sections,
                                            state.outline ? &*state.outline : nullptr},
                                           card, side, reach_of(card, side));
        if (!meeting) {
            return meeting.problem();
        }
        shown.parts = {{meeting->own, painted, false}, {meeting->other, painted, true}};
        shown.faults = meeting->faults;
        shown.says = say("Put together with {1}.", meeting->other_name);
        const EndWork work_there = side == Side::left ? card.left : card.right;
        if (work_there == EndWork::corner_tab || work_there == EndWork::corner_mitre) {
            shown.seen_from = before_the_corner;
        }
        return shown;
    }
    constexpr FoldStep folds[] = {FoldStep::as_cut, FoldStep::tabs_half, FoldStep::finished};
    shown.parts = {
        {folded_end(card, work.edge, pattern, side, step_of(folds[step])), painted, false}};
    shown.faults = tab_faults(pattern);
    return shown;
}

/// The steps and the two ends as buttons.
void draw_choices_of(Ui& ui, FoldedDraft& draft, Side side, bool can_meet, Box& body) {
    const float h = ui.mm(button_mm), gap = ui.mm(gap_mm);
    const auto step_button = [&](int i, Box box) {
        const bool off = i == meeting_step && !can_meet;
        if (ui.button(steps[i].name, say(steps[i].label), box,
                      off               ? Look::off
                      : draft.step == i ? Look::chosen
                                        : Look::plain)) {
            draft.step = i;
        }
    };
    const auto end_button = [&](Side end, Box box) {
        const std::string word(word_of(end));
        if (ui.button("end " + word, (end == Side::left ? say("Left end") : say("Right end")), box,
                      end == side ? Look::chosen : Look::plain)) {
            draft.end = end;
            draft.turned = draft.raised = 0;  // start the view again
        }
    };
    if (ui.portrait()) {
        const auto ends = columns(take_bottom(body, h), 2, gap);
        end_button(Side::left, ends[0]);
        end_button(Side::right, ends[1]);
        take_bottom(body, gap);
        const auto places = columns(take_bottom(body, h), 4, gap);
        for (int i = 0; i < 4; ++i) {
            step_button(i, places[static_cast<std::size_t>(i)]);
        }
        take_bottom(body, gap);
        return;
    }
    const Box column = take_right(body, ui.mm(column_mm));
    take_right(body, gap);
    Box list = ui.begin_scroll("folded steps", column);
    const float top = list.y;
    for (int i = 0; i < 4; ++i) {
        step_button(i, take_top(list, h));
        take_top(list, gap);
    }
    take_top(list, gap);
    const auto ends = columns(take_top(list, h), 2, gap);
    end_button(Side::left, ends[0]);
    end_button(Side::right, ends[1]);
    take_top(list, gap);
    take_top(list, draw_solid_key(ui, draft.step == meeting_step, list));
    ui.end_scroll(list.y - top);
}

void draw_shown(Ui& ui, const Shown& shown, const std::vector<Text>& legs, FoldedDraft& draft,
                Side side, Box body) {
    take_top(body, ui.paragraph(body.x, body.y, body.w, shown.says, Size::bold) + ui.mm(1));
    for (const FoldFault& fault : shown.faults) {
        take_top(body, draw_band(ui, said(fault), body));
    }
    const Ui::Moved moved = ui.dragged(body);
    draft.turned -= moved.x / ui.mm(1) * degrees_a_mm;
    draft.raised += moved.y / ui.mm(1) * degrees_a_mm;
    const double from =
        shown.seen_from.value_or(side == Side::right ? turned_at_first : -turned_at_first);
    draft.raised = std::clamp(draft.raised, static_cast<float>(-raised_most - raised_at_first),
                              static_cast<float>(raised_most - raised_at_first));
    const float line = ui.line_height(Size::small);
    ui.text(body.x, body.bottom() - line, say("Drag to turn it."), Size::small, Align::left,
            ui.colours().soft);
    take_bottom(body, line);
    draw_solid(ui, shown.parts, legs,
               {from + static_cast<double>(draft.turned),
                raised_at_first + static_cast<double>(draft.raised)},
               body);
}

}  // namespace

Wished draw_folded(Ui& ui, const State& state, Drafts& drafts) {
    const EdgeWork* const work = edge_of(state, state.where.edge);
    const Result<Card> card = card_in_hand(state, state.where);
    if (work == nullptr || !card) {
        return Go{{Screen::roof, {}}};
    }
    std::vector<Action> actions{{"leave", say("Roof")},
                                {"section", say("The section")},
                                {"to card", say("The cut card"), Look::primary}};
    if (state.can.prints || state.can.gives_files) {
        actions.insert(actions.begin() + 1, {"papers", say("On paper")});
    }
    const Frame frame = open_frame(
        ui, state, say("{1} · piece {2} folded", title_of(work->edge), card->piece), actions);
    Wished wish = frame.wish;
    FoldedDraft& draft = drafts.folded;
    const Side side = draft.end.value_or(end_worked(*card));
    Box body = frame.body;
    const Result<FlatPattern> pattern = piece_pattern(*card, work->edge, state.sections);
    if (!pattern) {
        ui.paragraph(body.x, body.y, body.w, said(pattern.problem()));
    } else {
        const bool can_meet = shown_of(state, *work, *card, *pattern, side, meeting_step).ok();
        draft.step = draft.step == meeting_step && !can_meet ? meeting_step - 1 : draft.step;
        draw_choices_of(ui, draft, side, can_meet, body);
        const Result<Shown> shown = shown_of(state, *work, *card, *pattern, side, draft.step);
        if (shown) {
            draw_shown(ui, *shown, legs_called(*card, pattern->legs.names), draft, side, body);
        }
    }
    if (frame.tapped == "leave") {
        wish = Go{{Screen::roof, {}}};
    } else if (frame.tapped == "papers") {
        wish = Go{at(state.where, Screen::papers)};
    } else if (frame.tapped == "section") {
        wish = Go{at(state.where, Screen::section)};
    } else if (frame.tapped == "to card") {
        wish = Go{at(state.where, Screen::card)};
    }
    return wish;
}

}  // namespace hemline
