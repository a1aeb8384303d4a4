#include "field/app/draw_place.h"

#include "field/screens/screens.h"

namespace hemline {

Wish draw_place(Ui& ui, const State& state, Drafts& drafts) {
    switch (state.where.place) {
        case Place::jobs:
            return draw_jobs(ui, state, drafts);
        case Place::roof:
            return draw_roof(ui, state);
        case Place::add_edge:
            return draw_add_edge(ui, state, drafts);
        case Place::reading:
            return draw_reading(ui, state, drafts);
        case Place::pitch:
            return draw_pitch(ui, state, drafts);
        case Place::tilt:
            return draw_tilt(ui, state, drafts);
        case Place::run:
            return draw_run(ui, state);
        case Place::card:
            return draw_card(ui, state);
        case Place::differently:
        case Place::spoiled:
            return draw_real_cut(ui, state, drafts);
        case Place::steps:
            return draw_steps(ui, state, drafts);
        case Place::history:
            return draw_history(ui, state);
        case Place::person:
            return draw_person(ui, state, drafts);
        case Place::calibrate:
            return draw_calibrate(ui, state, drafts);
        case Place::sticks:
            return draw_sticks(ui, state);
        case Place::stick:
            return draw_stick(ui, state, drafts);
        case Place::on_hand:
            return draw_on_hand(ui, state, drafts);
        case Place::stock:
            return draw_stock(ui, state);
        case Place::choices:
            return draw_choices(ui, state);
        case Place::folded:
            return draw_folded(ui, state, drafts);
        case Place::section:
            return draw_section(ui, state, drafts);
        case Place::send_back:
            return draw_send_back(ui, state, drafts);
        case Place::look:
            return draw_look(ui, state);
        case Place::day:
            return draw_day(ui, state, drafts);
        case Place::apart:
            return draw_apart(ui, state, drafts);
        case Place::hand_over:
            return draw_hand_over(ui, state);
        case Place::folder:
            return draw_folder(ui, state);
        case Place::papers:
            return draw_papers(ui, state, drafts);
        case Place::backup:
            return draw_backup(ui, state);
        case Place::rules:
            return draw_rules(ui, state, drafts);
        case Place::edge_lap:
            return draw_edge_lap(ui, state, drafts);
        case Place::notices:
            return draw_notices(ui, state, drafts);
    }
    return {};
}

}  // namespace hemline
