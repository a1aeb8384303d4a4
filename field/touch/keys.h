// Keyboard keys that are not text: control characters within the typed text.
#pragma once

namespace hemline {

enum class Key : char {
    copy = '\x03',           ///< Ctrl+C: what the screen shows, as a table
    enter = '\n',            ///< ends a line; else does what the focus is on
    tab = '\t',              ///< the focus goes on
    back_tab = '\x0b',       ///< Shift+Tab
    next_edge = '\x0e',      ///< Ctrl+down
    previous_edge = '\x10',  ///< Ctrl+up
    up = '\x11',
    down = '\x12',
    left = '\x13',
    right = '\x14',
    page_up = '\x15',
    page_down = '\x16',
    keys = '\x17',    ///< F1, and ? where no words are keyed in: which keys there are
    undo = '\x1a',    ///< Ctrl+Z
    escape = '\x1b',  ///< goes back
};

}  // namespace hemline
