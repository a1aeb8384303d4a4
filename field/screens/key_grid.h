// Where keys lie: four rows, or three on a low screen; lower still they scroll, and none is ever
// less than 19 mm.
//
//   7 8 9     7 8 9 back
//   4 5 6     4 5 6 .
//   1 2 3     1 2 3 0
//   0 . back
#pragma once

#include "field/touch/ui.h"

namespace hemline {

constexpr int digit_keys = 12, sixteenth_keys = 16;

/// Height of the places to tap above the keys of a length.
constexpr float length_fields_mm = 11;

/// The room that four rows of four keys want, in pixels.
Box key_room(const Ui& ui);

/// Cuts the room for so many keys off `body`, and the gap beside it: from the right, or in portrait
/// from the bottom, below the fields. `beside_mm`: what must be left beside keys in three rows.
Box take_keys(const Ui& ui, Box& body, int keys, float beside_mm);

/// The places of so many keys in a box, which scrolls while this lives where it is too low.
class KeyGrid {
  public:
    KeyGrid(Ui& ui, Box box, int keys);
    KeyGrid(const KeyGrid&) = delete;
    KeyGrid& operator=(const KeyGrid&) = delete;
    ~KeyGrid();
    /// Row by row, from 0.
    [[nodiscard]] Box place(int index) const;
    [[nodiscard]] Box last() const { return place(wide_ * tall_ - 1); }
    /// In three rows.
    [[nodiscard]] bool is_low() const;

  private:
    Ui& ui_;
    Box box_;
    int tall_, wide_ = 0;
    bool scrolls_ = false;
};

}  // namespace hemline
