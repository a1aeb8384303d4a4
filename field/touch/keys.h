// Keys of a keyboard that are not text: control characters among what is typed.
#pragma once

namespace hemline {

enum class Key : char {
    next_edge = '\x0e',      ///< down or right arrow
    previous_edge = '\x10',  ///< up or left arrow
    undo = '\x1a',           ///< Ctrl+Z
};

}  // namespace hemline
