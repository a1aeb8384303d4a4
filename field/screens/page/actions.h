// The buttons under the thumb: a single row where their words fit, the primary action last and
// widest, on the side of the hand in use.
//
//   [ Roof ] [ Spoiled ] [      Cut as shown ]     or     [ Roof ] [ Spoiled ]
//                                                         [   Cut as shown   ]
#pragma once

#include <string>
#include <vector>

#include "field/touch/ui.h"

namespace hemline {

struct Action {
    std::string name;
    Text label;
    Look look = Look::plain;
    bool discards = false;   ///< spoils work: it is set apart from its neighbors
    Text first = {};         ///< "2 more marks below": takes its place until they are seen
    bool waits = false;      ///< for that
    bool goes_back = false;  ///< Esc is this; so is what is named "leave"
};
inline Action way_back(Action action) {
    action.goes_back = true;
    return action;
}

/// The name of what takes its place.
constexpr const char* below_target = "below";
/// While so many things are below what shows, a main action that could be touched says so in these
/// words; its touch is for its screen to scroll to them.
void see_first(Action& main, std::size_t below, const Text& words);

/// Whether the page is low: on 7 and 8 in, lying.
bool is_low(const Ui& ui);

/// The rows in which actions lie, for a width in pixels.
class ActionRows {
  public:
    ActionRows(const Ui& ui, const std::vector<Action>& actions, float w);
    [[nodiscard]] float height() const;
    /// Draws them in a box of that width and height; returns the name of the action tapped, or
    /// empty.
    std::string draw(Ui& ui, Box box) const;

  private:
    struct Row {
        std::size_t from = 0, to = 0;
        float h = 0;
    };
    [[nodiscard]] std::vector<float> widths(const Row& row) const;
    [[nodiscard]] float gap_after(std::size_t action) const;
    [[nodiscard]] float gap_below(std::size_t row) const;

    const std::vector<Action>& actions_;
    std::vector<float> least_;  // width of each
    std::vector<Row> rows_;
    float w_, gap_, far_, other_most_;
    bool has_main_ = true;  ///< the last is the main action; else all are of the usual size
};

}  // namespace hemline
