// Where keys go: four rows, or three on a low page; a key is never less than 19 mm.
//
//   7 8 9     7 8 9 .
//   4 5 6     4 5 6 0
//   1 2 3     1 2 3 back
//   0 . back
#pragma once

#include "field/touch/ui.h"

namespace hemline {

constexpr int digit_keys = 12, inch_keys = 13;
constexpr int sixteenth_keys = 17;  // with a key to erase at the end

/// On an upright page with room for four keys in a row and no more, all keys of a length are needed
/// for its numbers: the key to erase stands at the end of the fields, on every page of keys.
bool erases_beside_fields(const Ui& ui);

/// The room that four rows of four keys need, in pixels.
Box key_room(const Ui& ui);

/// Cuts the room for so many keys in four rows off the right of `body`, and a gap beside it; where
/// less than 60 mm would be left of it, for a column less.
Box keys_beside(const Ui& ui, Box& body, int keys, float gap);
/// The same off the bottom, under the right thumb: in four rows, or in three rows of at least
/// four keys where less than `above` would be left.
Box keys_below(const Ui& ui, Box& body, int keys, float above);

/// Whether a box has room for so many keys. Without it, a page of keys shows fewer.
bool holds_keys(const Ui& ui, Box box, int keys);

/// The places of so many keys in a box; if even three rows are too high, the box scrolls while this
/// lives.
class KeyGrid {
  public:
    KeyGrid(Ui& ui, Box box, int keys);
    KeyGrid(const KeyGrid&) = delete;
    KeyGrid& operator=(const KeyGrid&) = delete;
    ~KeyGrid();
    /// Row by row, from 0.
    [[nodiscard]] Box place(int index) const;
    [[nodiscard]] Box last() const { return place(wide_ * tall_ - 1); }
    [[nodiscard]] int wide() const { return wide_; }
    /// In three rows.
    [[nodiscard]] bool is_low() const;

  private:
    Ui& ui_;
    Box box_;
    int tall_, wide_ = 0;
    bool scrolls_ = false;
};

}  // namespace hemline
