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

/// The room that four rows of four keys want, in pixels.
Box key_room(const Ui& ui);

/// What stands beside the keys, or in portrait above them, in pixels.
struct BesideKeys {
    float w_min = 0;  ///< keys lie in three rows only where this much is left beside them
    float h_min = 0;  ///< in portrait keys that leave less than this above them scroll
};

/// Cuts the room for so many keys off `body`, and the gap beside it: from the right, or from the
/// bottom in portrait.
Box take_keys(const Ui& ui, Box& body, int keys, BesideKeys beside);

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
