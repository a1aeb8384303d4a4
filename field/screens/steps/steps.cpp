// The steps of an edge, one at a time: caution, action, and the value it is answered with.
#include <imgui.h>

#include <algorithm>

#include "engine/roof/edge_shape.h"
#include "engine/work/order.h"
#include "engine/work/step_pictures.h"
#include "field/screens/page/frame.h"
#include "field/screens/page/readback.h"
#include "field/screens/people/values.h"
#include "field/screens/screens.h"
#include "field/screens/section/draw_section.h"
#include "field/screens/steps/cautions.h"
#include "field/screens/steps/confirm.h"
#include "field/screens/steps/draw_step_pictures.h"
#include "field/screens/steps/other_card.h"
#include "field/screens/steps/step_answer.h"
#include "field/state/edge_view.h"
#include "field/state/gate_view.h"

namespace hemline {

namespace {

constexpr float picture_mm_least = 20;
constexpr float section_mm = 33, reasons_mm = 16;  // for an apprentice
constexpr float low_mm = 45;                       // words in a lower room are set smaller
constexpr float room_mm = 60;                      // lower, a value scrolls with its words
constexpr float pinned_mm = 100;  // in a narrower column there is no room between words
constexpr float count_w_mm = 30;  // of a number beside its keys

/// How far the edge is: a tick for each step, filled when done.
void draw_progress(const Ui& ui, const std::vector<Step>& steps, std::size_t now, Box strip) {
    const float w = strip.w / static_cast<float>(steps.size());
    float drawn_to = strip.x - 1;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const float x = strip.x + w * static_cast<float>(i);
        if (x < drawn_to + 1 && i != now) {
            continue;  // less than a pixel from the last tick
        }
        drawn_to = x;
        const ImVec2 from(x, strip.y);
        const ImVec2 to(x + w - ui.mm(0.8F), strip.bottom());
        if (steps[i].done) {
            ui.ink()->AddRectFilled(from, to, ui.colours().ink);
        } else if (i == now) {
            ui.ink()->AddRectFilled(from, to, ui.colours().chalk);
        } else {
            ui.ink()->AddRect(from, to, ui.colours().ink, 0, 0, ui.mm(0.25F));
        }
    }
}

/// Why it matters, and what goes wrong; returns the height used.
float draw_reasons(Ui& ui, const Step& step, Box box) {
    float y = box.y;
    y += ui.paragraph(box.x, y, box.w, say("Why: {1}", say(step.rule->why))) + ui.mm(1);
    y += ui.paragraph(box.x, y, box.w, say("What goes wrong: {1}", say(step.rule->wrong)),
                      Size::body, ui.colours().soft);
    return y - box.y;
}

EaveLayer layer_of(const Step& step, const std::vector<Step>& steps) {
    switch (step.rule->each) {
        case Each::wrap_piece:
            return EaveLayer::wrap;
        case Each::cleat_piece:
            return EaveLayer::cleat;
        case Each::edge:
        case Each::sent_back:
            break;
        default:
            return EaveLayer::trim;
    }
    // A step of the whole edge shows what is on the edge by then.
    EaveLayer layer = EaveLayer::wood;
    for (const Step& before : steps) {
        if (&before == &step) {
            break;
        }
        if (before.rule->each != Each::edge && before.rule->each != Each::sent_back) {
            layer = std::max(layer, layer_of(before, steps));
        }
    }
    return layer;
}

/// An eave in section with what this step puts on it; for other edges the piece of the step.
void draw_picture(Ui& ui, const State& state, const EdgeWork& work, const Step& step,
                  const std::vector<Step>& steps, Box box) {
    const Trim* const trim = state.catalogue.of(work.edge);
    if (trim == nullptr || !work.edge.pitch || box.h < ui.mm(picture_mm_least)) {
        return;
    }
    if (work.edge.kind != EdgeKind::eave) {
        draw_finished_piece(ui, state, work, step, box);
        return;
    }
    draw_eave_section(ui,
                      {.trim = fitted_to(*trim, work.edge),
                       .pitch = *work.edge.pitch,
                       .fascia = work.edge.fascia,
                       .wrap = work.edge.wrap,
                       .up_to = layer_of(step, steps)},
                      box);
}

/// For an apprentice: the pictures of this step's metal, or the edge in section; returns the height
/// used.
float draw_folds(Ui& ui, const State& state, const EdgeWork& work, const std::vector<Step>& steps,
                 const Step& step, float room, Box box) {
    const auto pictures = step_pictures({state.job, state.plan, state.catalogue, state.sections,
                                         state.outline ? &*state.outline : nullptr},
                                        step, work);
    if (pictures) {
        return draw_step_pictures(ui, state, *pictures, room, box);
    }
    if (work.edge.kind != EdgeKind::eave && step.piece == 0) {
        return 0;
    }
    box.h = ui.mm(section_mm);
    draw_picture(ui, state, work, step, steps, box);
    return box.h + ui.mm(2);
}

/// The answer where it does not scroll, beside the keys or just above them; cuts its room off the
/// body.
void pin_answer(Ui& ui, const State& state, const Step& step, StepDraft& draft, const Frame& frame,
                Box& body) {
    const bool counts = step.rule->asks == Asks::count;
    if (counts && frame.beside_keys.w >= ui.mm(count_w_mm)) {
        draw_answer(ui, state, step, draft, frame.beside_keys);
    } else if (counts || step.rule->asks == Asks::length) {
        const float h = counts ? ui.mm(count_fields_mm) : length_fields_height(ui);
        draw_answer(ui, state, step, draft, take_bottom(body, h));
        take_bottom(body, ui.mm(3));
    }
}

std::string list_of(const EdgeWork& work, const Step& step) {
    return "step " + work.edge.id + " " + key_of(step);
}

/// The caution, the action and its answer; then why. Where it is narrow, the answer stays and the
/// words scroll.
Wished draw_words(Ui& ui, const State& state, const EdgeWork& work, const std::vector<Step>& steps,
                  std::size_t now, Drafts& drafts, const Frame& frame) {
    const Step& step = steps[now];
    StepDraft& draft = drafts.step;
    Box body = frame.body;
    draw_progress(ui, steps, now, take_top(body, ui.mm(2.5F)));
    take_top(body, ui.mm(3));
    const std::vector<Text> before = before_roof_step(state, work, steps, step);
    const Text waits = fitting_waits_for(work, state.job, state.catalogue);
    const bool words_above = !before.empty() || !waits.empty();
    const bool pinned =
        ui.portrait() || body.w < ui.mm(pinned_mm) || (words_above && body.h >= ui.mm(room_mm));
    if (pinned && frame.keys.w > 0) {
        pin_answer(ui, state, step, draft, frame, body);
    }
    if (step.rule->asks == Asks::tick) {
        draw_caution(ui, say(step.rule->caution), body);
        take_top(body, ui.paragraph(body.x, body.y, body.w, step.action, Size::title) + ui.mm(3));
        return draw_values(ui, state, work, drafts.values, body);
    }
    Box words = ui.begin_scroll(list_of(work, step), body);
    const float top = words.y;
    if (pinned && is_refused(draft)) {  // what was asked comes before all else
        take_top(words, draw_limits(ui, step, draft, words));
    }
    take_top(words,
             step.refused_by.empty() ? 0 : draw_band(ui, step.waits_for, words, Band::danger));
    for (const Text& caution : before) {
        draw_caution(ui, caution, words);
    }
    draw_caution(ui, say(step.rule->caution), words);
    draw_caution(ui, step.doubt, words);
    const Size size = body.h < ui.mm(low_mm) ? Size::bold : Size::title;
    take_top(words, ui.paragraph(words.x, words.y, words.w, step.action, size) + ui.mm(3));
    take_top(words, draw_band(ui, waits, words));  // below: on a low page what is asked is in sight
    if (!pinned) {
        const float used = draw_answer(ui, state, step, draft, words);
        take_top(words, used > 0 ? used + ui.mm(3) : 0);
    }
    if (!pinned || !is_refused(draft)) {
        take_top(words, draw_limits(ui, step, draft, words));
    }
    ui.to_be_seen({words.x, top, words.w, words.y - top - ui.mm(gap_mm)});
    const bool learns = state.way == Way::learn;
    if (learns) {
        const float room = body.h - (words.y - top) - ui.mm(reasons_mm);
        take_top(words, draw_folds(ui, state, work, steps, step, room, words));
    }
    take_top(words, draw_reasons(ui, step, words));
    const float used = words.y - top;
    if (!learns) {
        take_top(words, ui.mm(3));
        words.h = body.h - used - ui.mm(3);
        draw_picture(ui, state, work, step, steps, words);
    }
    ui.end_scroll(used);
    return {};
}

Wished draw_finished(Ui& ui, const State& state, const EdgeWork& work, ValuesDraft& draft) {
    const Frame frame =
        open_frame(ui, state, say("{1} · finished", title_of(work.edge)),
                   {{"send back", say("Send it back")}, {"leave", say("Roof"), Look::primary}});
    Wished wish = frame.wish;
    Box body = frame.body;
    take_top(body, ui.paragraph(body.x, body.y, body.w,
                                say("Finished, checked off by {1} at {2}", work.finished_by,
                                    clock_time(work.finished_clock)),
                                Size::title) +
                       ui.mm(3));
    draw_values(ui, state, work, draft, body);
    if (frame.tapped == "leave") {
        wish = Go{{Screen::roof, {}}};
    } else if (frame.tapped == "send back") {
        wish = Go{{Screen::send_back, work.edge.id}};
    }
    return wish;
}

/// The step to be answered: a no for the foreman, one that was opened by itself, or the next.
std::optional<std::size_t> step_shown(const State& state, const std::vector<Step>& steps,
                                      const StepDraft& draft) {
    const std::optional<std::size_t> held = held_step(steps);
    if (held && state.way == Way::tick_off) {
        return held;
    }
    const auto opened = std::find_if(steps.begin(), steps.end(), [&](const Step& step) {
        return !step.done && step.waits_for.empty() && key_of(step) == draft.singly;
    });
    if (opened != steps.end()) {
        return static_cast<std::size_t>(opened - steps.begin());
    }
    return next_on(state, steps);
}

}  // namespace

Wished draw_steps(Ui& ui, const State& state, Drafts& drafts) {
    StepDraft& draft = drafts.step;
    const EdgeWork* const work = edge_of(state, state.where.edge);
    if (work == nullptr) {
        return Go{{Screen::roof, {}}};
    }
    const std::vector<Step> steps = steps_on(state, *work);
    const std::optional<std::size_t> now = step_shown(state, steps, draft);
    if (!now) {
        return draw_finished(ui, state, *work, drafts.values);
    }
    const Step& step = steps[*now];
    if (draft.of != key_of(step)) {  // what was keyed in for another step answers none
        const std::string singly = draft.singly;
        draft = {};
        draft.of = key_of(step);
        draft.singly = singly;
    }
    if (wants_gate(state, step)) {
        return Go{{Screen::gate, work->edge.id}};
    }
    const std::vector<std::size_t> together = confirmed_now(state, steps, *now, draft);
    if (!together.empty()) {
        return draw_confirm(ui, state, *work, steps, together, draft);
    }
    const Text title = say("{1} · {2} · step {3} of {4}", title_of(work->edge),
                           say(step.rule->part), *now + 1, steps.size());
    const AnswerActions answers = answers_of(state, *work, step, draft);
    const KeysWanted keys = keys_for(state, step, draft);
    std::vector<Action> actions = {{"leave", say("Roof")}};
    if (has_run(work->edge.kind) && !keys_stand_aside(ui, keys)) {  // else there is no room
        actions.push_back({"run", say("The run")});
    }
    if (!is_on_the_ground(step.rule->asks) && step.refused_by.empty() &&
        !keys_stand_aside(ui, keys)) {
        actions.push_back({"not safe", say("Not safe")});
    }
    const std::optional<OtherCard> other = other_card(work->edge, step);
    if (other) {
        actions.push_back({other->target, other->words});
    }
    actions.insert(actions.end(), answers.actions.begin(), answers.actions.end());
    const std::string list = list_of(*work, step);
    const std::size_t below = ui.left_below(list);
    see_first(actions.back(), below, say("More below"));
    if (below > 0 && step.rule->asks == Asks::side) {  // both are the answer
        actions[actions.size() - 2].look = Look::off;
    }
    const Frame frame = open_frame(ui, state, title, actions, keys);
    Wished wish = frame.wish;
    draw_answer_keys(ui, state, step, draft, frame.keys);
    if (Wished accepted = draw_words(ui, state, *work, steps, *now, drafts, frame)) {
        wish = std::move(accepted);
    }
    if (frame.tapped == below_target) {
        ui.go_on_below(list);
    } else if (frame.tapped == "leave") {
        wish = Go{{Screen::roof, {}}};
    } else if (frame.tapped == "run") {
        wish = Go{{Screen::run, work->edge.id}};
    } else if (other && frame.tapped == other->target) {
        wish = Go{{other->screen, work->edge.id, state.where.role, other->piece}};
    } else if (frame.tapped == "not safe") {
        wish = Go{{Screen::gate, work->edge.id}};
    } else if (!frame.tapped.empty()) {
        wish = answer_with(frame.tapped, state, *work, step, draft);
    }
    return wish;
}

}  // namespace hemline
