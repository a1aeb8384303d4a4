// Which screen is shown, and for what on the job: never saved in the job.
#pragma once

#include <string>

#include "engine/record/event.h"

namespace hemline {

/// LeftOff saves these numbers: add a new screen at the end.
enum class Screen {
    jobs,
    roof,
    add_edge,
    reading,
    pitch,
    tilt,
    run,
    card,
    differently,
    spoiled,
    steps,
    send_back,
    look,  ///< an edge's values against practice, for the foreman
    day,   ///< what was done on a day
    history,
    person,
    calibrate,
    sticks,
    stick,
    on_hand,
    stock,
    choices,
    folded,
    section,
    apart,
    hand_over,
    folder,
    papers,  ///< of a piece: printed, or as a drawing
    backup,
    rules,  ///< of the job: laps, tabs, screws, marks
    edge_lap,
    notices,     ///< what the program is made of
    tablet,      ///< how this one is set: hand, units, light, language
    lift,        ///< a no to a safety check
    gate,        ///< what is looked at before roof work, once a day and person
    asked_once,  ///< of a roof: where its panels are pinned, the wind
    strip_card,  ///< what panels or trim hold on: section, bends, cuts
    walk,        ///< round a roof, side by side
    shape,       ///< a walk begun from one of the usual roofs
    end_cap,     ///< what closes an open end: plate, lips, cuts
    panels,      ///< of a plane: pans, lengths to order, what is doubted
    seams,       ///< of a plane: the layouts worth choosing
    cut_pan,     ///< how a pan is cut at both its sides
};

struct Where {
    Screen screen = Screen::jobs;
    std::string edge;
    TrimRole role = TrimRole::main;
    int piece = 0;
    ReadingOf reading_of = ReadingOf::edge;
    int stick = 0;  ///< number of a planned stick, or of a disagreement

    bool operator==(const Where&) const = default;
};

/// Another screen about the same thing.
inline Where at(Where where, Screen screen) {
    where.screen = screen;
    return where;
}

}  // namespace hemline
