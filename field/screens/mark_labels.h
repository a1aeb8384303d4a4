// Labels of the marks under the tape: what the tape reads there, and what the hand does.
//
//   ┬──────────────┬         marks of the left half hang leftmost first, those of the right half
//   │ 6 in  lap    │         rightmost first, each on a line of its own, led down from the tape
//   └──            │
#pragma once

#include <string>
#include <vector>

#include "engine/work/card.h"
#include "field/touch/box.h"
#include "field/touch/ui.h"

namespace hemline {

struct MarkLabel {
    Length at;
    Side half = Side::left;  ///< which half of the piece it lies in
    std::string value;       ///< what the tape reads
    Text deed;               ///< what the hand does there
};

/// One label for each place on the tape; marks of one place share it.
std::vector<MarkLabel> labels_of(const Card& card, Marks marks);
/// Height that the labels take in a box of that place and width; `places`: the pixel of each on the
/// tape.
float height_of(const Ui& ui, const std::vector<MarkLabel>& labels,
                const std::vector<float>& places, Box box);
void draw_labels(Ui& ui, const std::vector<MarkLabel>& labels, const std::vector<float>& places,
                 Box box);

}  // namespace hemline
