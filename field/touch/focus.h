// Which target a key of the keyboard leads to, among all of a screen, those scrolled out of sight
// too.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "field/touch/box.h"
#include "field/touch/keys.h"

namespace hemline {

/// A target that the focus can go to.
struct Focusable {
    std::string name;
    Box box;                     ///< where it lies, though it may be scrolled out of sight
    Box shown;                   ///< what of it shows
    bool in_sight = true;        ///< enough of it shows to be tapped
    bool primary = false;        ///< the screen's main action
    const void* list = nullptr;  ///< the list it scrolls with; null: none
    Box list_view = {};          ///< the place of that list
};

/// As one reads: row by row, from the left; a list as a whole, where it stands.
std::vector<std::size_t> reading_order(const std::vector<Focusable>& all);
/// The next or the one before in that order, from the last on to the first; `from` empty: the first
/// or last. Empty where there is none.
std::optional<std::size_t> after(const std::vector<Focusable>& all, std::optional<std::size_t> from,
                                 Key tab);
/// The nearest that way (up, down, left or right), in the same list first; empty: none is there.
std::optional<std::size_t> beside(const std::vector<Focusable>& all, std::size_t from, Key way);

}  // namespace hemline
