// Which screen is shown, and of what on the job: never saved, worked out again at a start.
#pragma once

#include <string>

#include "engine/record/event.h"

namespace hemline {

/// Numbers are kept where the program was left (LeftOff): a new one goes to the end.
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
    day,   ///< what was done on one day
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
    papers,  ///< of one piece: printed, or as a drawing
    backup,
    rules,  ///< of the job: laps, tabs, screws, marks
    edge_lap,
    notices,  ///< what the program is made of
};

struct Where {
    Screen screen = Screen::jobs;
    std::string edge;
    TrimRole role = TrimRole::main;
    int piece = 0;
    ReadingOf reading_of = ReadingOf::edge;
    int stick = 0;  ///< number of a planned stick, or of what was made apart

    bool operator==(const Where&) const = default;
};

/// Another screen of the same thing.
inline Where at(Where where, Screen screen) {
    where.screen = screen;
    return where;
}

}  // namespace hemline
