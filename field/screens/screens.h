// Every screen: a function that draws the state, edits its draft and returns a wish or nothing.
// None ever writes.
#pragma once

#include <array>

#include "field/state/drafts.h"
#include "field/state/state.h"
#include "field/state/wish.h"
#include "field/touch/ui.h"

namespace hemline {

Wished draw_jobs(Ui& ui, const State& state, Drafts& drafts);
Wished draw_roof(Ui& ui, const State& state, Drafts& drafts);
Wished draw_add_edge(Ui& ui, const State& state, Drafts& drafts);
Wished draw_reading(Ui& ui, const State& state, Drafts& drafts);
Wished draw_pitch(Ui& ui, const State& state, Drafts& drafts);
Wished draw_tilt(Ui& ui, const State& state, Drafts& drafts);
Wished draw_run(Ui& ui, const State& state, Drafts& drafts);
Wished draw_card(Ui& ui, const State& state, Drafts& drafts);
/// The card of the edge's hook strip, zee or channel.
Wished draw_strip_card(Ui& ui, const State& state, Drafts& drafts);
/// The card of the cap that closes an open end.
Wished draw_end_cap(Ui& ui, const State& state, Drafts& drafts);
/// "Cut differently" and "spoiled": how long the cut really is, how much was lost.
Wished draw_real_cut(Ui& ui, const State& state, Drafts& drafts);
Wished draw_steps(Ui& ui, const State& state, Drafts& drafts);
/// How large the screen is, measured with a bank card or the tape.
Wished draw_calibrate(Ui& ui, const State& state, Drafts& drafts);
/// The foreman says what is to be fixed.
Wished draw_send_back(Ui& ui, const State& state, Drafts& drafts);
/// He lifts a no to a safety check, with the reason.
Wished draw_lift(Ui& ui, const State& state, Drafts& drafts);
/// Before roof work, once a day: whoever holds the tablet says what he has looked at.
Wished draw_gate(Ui& ui, const State& state, Drafts& drafts);
/// After it, once for a roof: where its panels are pinned, where the rain's wind comes from.
Wished draw_asked_once(Ui& ui, const State& state, Drafts& drafts);
/// The values of an edge against practice; the foreman signs it off or sends it back.
Wished draw_look(Ui& ui, const State& state, Drafts& drafts);
/// What was done on a day, by whom.
Wished draw_day(Ui& ui, const State& state, Drafts& drafts);
Wished draw_history(Ui& ui, const State& state, Drafts& drafts);
Wished draw_person(Ui& ui, const State& state, Drafts& drafts);
/// The sticks of a pool, drawn to scale, with their proof; where.edge and role say which pool.
Wished draw_sticks(Ui& ui, const State& state, Drafts& drafts);
/// A planned stick that is not what it should be: measured short, or spoiled whole.
Wished draw_stick(Ui& ui, const State& state, Drafts& drafts);
/// Sticks and offcuts on hand, counted by length.
Wished draw_on_hand(Ui& ui, const State& state, Drafts& drafts);
/// The lengths of new sticks.
Wished draw_stock(Ui& ui, const State& state, Drafts& drafts);
/// Where tablets disagree, one thing at a time: the sides, and which is to stand. where.edge: only
/// for that edge.
Wished draw_apart(Ui& ui, const State& state, Drafts& drafts);
/// The crew folder and job files.
Wished draw_hand_over(Ui& ui, const State& state, Drafts& drafts);
/// A folder to choose.
Wished draw_folder(Ui& ui, const State& state, Drafts& drafts);
/// The plans worth choosing from, side by side.
Wished draw_choices(Ui& ui, const State& state, Drafts& drafts);
/// A piece on paper, or as a drawing for the shop.
Wished draw_papers(Ui& ui, const State& state, Drafts& drafts);
/// The rules of this job, and a new length for a rule.
Wished draw_rules(Ui& ui, const State& state, Drafts& drafts);
/// The lap of a single edge.
Wished draw_edge_lap(Ui& ui, const State& state, Drafts& drafts);
/// The job as a file: how old the last file is, making a new one, taking one in; and whether this
/// browser promises to keep what is saved.
Wished draw_backup(Ui& ui, const State& state, Drafts& drafts);

/// How this tablet is set: hand, units, light, language, size of its screen.
Wished draw_tablet(Ui& ui, const State& state, Drafts& drafts);
/// A walk round a roof: a side after the other, the building on the left.
Wished draw_walk(Ui& ui, const State& state, Drafts& drafts);
/// The walk of a usual roof, from two or three lengths and a pitch.
Wished draw_shape(Ui& ui, const State& state, Drafts& drafts);
/// What the program is made of, and the notice of each part.
Wished draw_notices(Ui& ui, const State& state, Drafts& drafts);
/// The card's piece folded up in steps, to compare with the metal in hand.
Wished draw_folded(Ui& ui, const State& state, Drafts& drafts);
/// The trim's cross-section: touch a leg or bend and key in a new value.
Wished draw_section(Ui& ui, const State& state, Drafts& drafts);

/// The panels of a plane, drawn true.
Wished draw_panels(Ui& ui, const State& state, Drafts& drafts);
/// The layouts of its seams that are worth choosing.
Wished draw_seams(Ui& ui, const State& state, Drafts& drafts);
/// A pan that is cut: both its sides, at foot and top. where.piece: its number.
Wished draw_cut_pan(Ui& ui, const State& state, Drafts& drafts);

/// Which keys a keyboard has here, in place of the screen; true once it is put away.
bool draw_keys(Ui& ui, const State& state);

/// Which function draws which screen, in the order of their numbers.
struct ScreenDrawn {
    Screen screen;
    Wished (*draw)(Ui& ui, const State& state, Drafts& drafts);
};
constexpr auto screens = std::to_array<ScreenDrawn>({
    {Screen::jobs, draw_jobs},
    {Screen::roof, draw_roof},
    {Screen::add_edge, draw_add_edge},
    {Screen::reading, draw_reading},
    {Screen::pitch, draw_pitch},
    {Screen::tilt, draw_tilt},
    {Screen::run, draw_run},
    {Screen::card, draw_card},
    {Screen::differently, draw_real_cut},
    {Screen::spoiled, draw_real_cut},
    {Screen::steps, draw_steps},
    {Screen::send_back, draw_send_back},
    {Screen::look, draw_look},
    {Screen::day, draw_day},
    {Screen::history, draw_history},
    {Screen::person, draw_person},
    {Screen::calibrate, draw_calibrate},
    {Screen::sticks, draw_sticks},
    {Screen::stick, draw_stick},
    {Screen::on_hand, draw_on_hand},
    {Screen::stock, draw_stock},
    {Screen::choices, draw_choices},
    {Screen::folded, draw_folded},
    {Screen::section, draw_section},
    {Screen::apart, draw_apart},
    {Screen::hand_over, draw_hand_over},
    {Screen::folder, draw_folder},
    {Screen::papers, draw_papers},
    {Screen::backup, draw_backup},
    {Screen::rules, draw_rules},
    {Screen::edge_lap, draw_edge_lap},
    {Screen::notices, draw_notices},
    {Screen::tablet, draw_tablet},
    {Screen::lift, draw_lift},
    {Screen::gate, draw_gate},
    {Screen::asked_once, draw_asked_once},
    {Screen::strip_card, draw_strip_card},
    {Screen::walk, draw_walk},
    {Screen::shape, draw_shape},
    {Screen::end_cap, draw_end_cap},
    {Screen::panels, draw_panels},
    {Screen::seams, draw_seams},
    {Screen::cut_pan, draw_cut_pan},
});

constexpr bool in_order() {
    for (std::size_t i = 0; i < screens.size(); ++i) {
        if (screens[i].screen != static_cast<Screen>(i)) {
            return false;
        }
    }
    return true;
}
static_assert(in_order());

inline Wished draw_screen(Ui& ui, const State& state, Drafts& drafts) {
    return screens.at(static_cast<std::size_t>(state.where.screen)).draw(ui, state, drafts);
}

}  // namespace hemline
