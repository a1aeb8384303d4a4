// Labels of the marks under the tape: what the tape reads there, and what to do.
#pragma once

#include <vector>

#include "engine/work/card.h"
#include "field/screens/card/label_rows.h"
#include "field/screens/page/other_tape.h"
#include "field/touch/ui.h"

namespace hemline {

struct MarkLabel {
    Length at;
    Side half = Side::left;  ///< which half of the piece it lies in
    Text deed;               ///< what to do there
};

/// One label for each place on the tape; marks at the same place share it.
std::vector<MarkLabel> labels_of(const Card& card);

struct LabelsLaid {
    Size size = Size::title;  ///< of the values: title, or bold where the page is too low for it
    bool both = false;        ///< on both tapes
    LabelRows rows;
};

/// The values at 30′ and on all tapes asked for, if the box is high enough; else on one tape; else
/// at 22′, then higher than the box if need be. `places`: the pixel of each on the tape.
LabelsLaid lay_labels(const Ui& ui, const std::vector<MarkLabel>& labels,
                      const std::vector<float>& places, Tapes tapes, Box box);
/// In a list that may have scrolled up past `tape`, from where the leaders start; each label is to
/// be seen.
void draw_labels(Ui& ui, const std::vector<MarkLabel>& labels, const LabelsLaid& laid, Marks marks,
                 float tape);

}  // namespace hemline
