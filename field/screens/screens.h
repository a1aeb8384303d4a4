// Every screen: a function that draws the state, edits a draft and returns a wish. None ever
// writes.
#pragma once

#include "field/state/state.h"
#include "field/touch/ui.h"

namespace hemline {

Wish draw_jobs(Ui& ui, const State& state, Drafts& drafts);
Wish draw_roof(Ui& ui, const State& state);
Wish draw_add_edge(Ui& ui, const State& state, Drafts& drafts);
Wish draw_reading(Ui& ui, const State& state, Drafts& drafts);
Wish draw_pitch(Ui& ui, const State& state, Drafts& drafts);
Wish draw_tilt(Ui& ui, const State& state, Drafts& drafts);
Wish draw_run(Ui& ui, const State& state);
Wish draw_card(Ui& ui, const State& state);
/// "Cut differently" and "spoiled": how long the cut really is, how much was lost.
Wish draw_real_cut(Ui& ui, const State& state, Drafts& drafts);
Wish draw_steps(Ui& ui, const State& state, Drafts& drafts);
/// How large the screen is: a bank card or the tape is laid on it.
Wish draw_calibrate(Ui& ui, const State& state, Drafts& drafts);
/// The foreman says what is to mend.
Wish draw_send_back(Ui& ui, const State& state, Drafts& drafts);
/// One edge's values against practice; the foreman ticks it off or sends it back.
Wish draw_look(Ui& ui, const State& state);
/// What was done on one day, by whom.
Wish draw_day(Ui& ui, const State& state, Drafts& drafts);
Wish draw_history(Ui& ui, const State& state);
Wish draw_person(Ui& ui, const State& state, Drafts& drafts);
/// The sticks of one pool, drawn to scale, with their proof; where.edge and role say which pool.
Wish draw_sticks(Ui& ui, const State& state);
/// One planned stick that is not what it should be: measured short, or spoiled whole.
Wish draw_stick(Ui& ui, const State& state, Drafts& drafts);
/// Sticks and offcuts that lie there, counted by length.
Wish draw_on_hand(Ui& ui, const State& state, Drafts& drafts);
/// The lengths that new sticks come in.
Wish draw_stock(Ui& ui, const State& state);
/// What tablets made apart, one thing at a time: its sides, and which is to stand. where.edge: of
/// that edge alone.
Wish draw_apart(Ui& ui, const State& state, Drafts& drafts);
/// The crew folder and job files.
Wish draw_hand_over(Ui& ui, const State& state);
/// A folder to choose.
Wish draw_folder(Ui& ui, const State& state);
/// The plans worth a choice, side by side.
Wish draw_choices(Ui& ui, const State& state);
/// One piece on paper, or as a drawing for the shop.
Wish draw_papers(Ui& ui, const State& state, Drafts& drafts);
/// The rules of this job, and a new length for one.
Wish draw_rules(Ui& ui, const State& state, Drafts& drafts);
/// The lap of one edge alone.
Wish draw_edge_lap(Ui& ui, const State& state, Drafts& drafts);
/// The job in a file: how old the last one is, a new one, one taken in; and whether this browser
/// promises to keep what is saved.
Wish draw_backup(Ui& ui, const State& state);

/// What the program is made of, and the notice of each part.
Wish draw_notices(Ui& ui, const State& state, Drafts& drafts);
/// The card's piece folded up, in steps, as it is compared with the metal in hand.
Wish draw_folded(Ui& ui, const State& state, Drafts& drafts);
/// The trim's cross-section: a leg or bend is touched and keyed in anew.
Wish draw_section(Ui& ui, const State& state, Drafts& drafts);

}  // namespace hemline
