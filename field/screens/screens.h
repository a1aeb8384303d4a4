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
/// "Cut differently" and "spoiled": how long the cut really is, how much was lost.
Wished draw_real_cut(Ui& ui, const State& state, Drafts& drafts);
Wished draw_steps(Ui& ui, const State& state, Drafts& drafts);
/// How large the screen is: a bank card or the tape is laid on it.
Wished draw_calibrate(Ui& ui, const State& state, Drafts& drafts);
/// The foreman says what is to mend.
Wished draw_send_back(Ui& ui, const State& state, Drafts& drafts);
/// One edge's values against practice; the foreman ticks it off or sends it back.
Wished draw_look(Ui& ui, const State& state, Drafts& drafts);
/// What was done on one day, by whom.
Wished draw_day(Ui& ui, const State& state, Drafts& drafts);
Wished draw_history(Ui& ui, const State& state, Drafts& drafts);
Wished draw_person(Ui& ui, const State& state, Drafts& drafts);
/// The sticks of one pool, drawn to scale, with their proof; where.edge and role say which pool.
Wished draw_sticks(Ui& ui, const State& state, Drafts& drafts);
/// One planned stick that is not what it should be: measured short, or spoiled whole.
Wished draw_stick(Ui& ui, const State& state, Drafts& drafts);
/// Sticks and offcuts that lie there, counted by length.
Wished draw_on_hand(Ui& ui, const State& state, Drafts& drafts);
/// The lengths that new sticks come in.
Wished draw_stock(Ui& ui, const State& state, Drafts& drafts);
/// What tablets made apart, one thing at a time: its sides, and which is to stand. where.edge: of
/// that edge alone.
Wished draw_apart(Ui& ui, const State& state, Drafts& drafts);
/// The crew folder and job files.
Wished draw_hand_over(Ui& ui, const State& state, Drafts& drafts);
/// A folder to choose.
Wished draw_folder(Ui& ui, const State& state, Drafts& drafts);
/// The plans worth a choice, side by side.
Wished draw_choices(Ui& ui, const State& state, Drafts& drafts);
/// One piece on paper, or as a drawing for the shop.
Wished draw_papers(Ui& ui, const State& state, Drafts& drafts);
/// The rules of this job, and a new length for one.
Wished draw_rules(Ui& ui, const State& state, Drafts& drafts);
/// The lap of one edge alone.
Wished draw_edge_lap(Ui& ui, const State& state, Drafts& drafts);
/// The job in a file: how old the last one is, a new one, one taken in; and whether this browser
/// promises to keep what is saved.
Wished draw_backup(Ui& ui, const State& state, Drafts& drafts);

/// What the program is made of, and the notice of each part.
Wished draw_notices(Ui& ui, const State& state, Drafts& drafts);
/// The card's piece folded up, in steps, as it is compared with the metal in hand.
Wished draw_folded(Ui& ui, const State& state, Drafts& drafts);
/// The trim's cross-section: a leg or bend is touched and keyed in anew.
Wished draw_section(Ui& ui, const State& state, Drafts& drafts);

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
