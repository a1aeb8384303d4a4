// Which edges a gloved finger on the roof's drawing may mean. Every edge is meant somewhere: by its
// letter, beside other letters along its line, or, where those cover it, by what they offer.
//
//      ┌───┐            a finger comes down within 5 mm of where it is aimed
//   ───│ X │── w ──     the letter of X has its own touch; w has room for none, and is meant
//      └───┘            by a touch beside X, or by X's letter too
#pragma once

#include <string>
#include <vector>

#include "field/screens/roof/roof_sheet.h"
#include "field/touch/box.h"

namespace hemline {

/// An edge's letter that can be touched.
struct LetterTouch {
    const SheetLine* line;
    Box box;
};

/// Of these letters, given in turn by line and middle, those that have room for a touch.
struct LetterDrawn {
    const SheetLine* line;
    ImVec2 middle;
};
std::vector<LetterTouch> letters_touched(const Ui& ui, const std::vector<LetterDrawn>& drawn);

class RoofReach {
  public:
    RoofReach(const Ui& ui, const RoofSheet& sheet, std::vector<LetterTouch> letters);
    [[nodiscard]] const std::vector<LetterTouch>& letters() const { return letters_; }

    /// What a touch on the letter means: its edge, and edges that have no other place to be
    /// touched.
    [[nodiscard]] std::vector<std::string> at_letter(const LetterTouch& letter) const;
    /// What a touch beside the letters means: edges without a touch of their own first, then those
    /// that are as near as the nearest.
    [[nodiscard]] std::vector<std::string> beside_letters(ImVec2 touch) const;
    /// That of these edges which is nearest to the touch.
    [[nodiscard]] std::string nearest(const std::vector<std::string>& edges, ImVec2 touch) const;
    /// How many of those have no touch of their own.
    [[nodiscard]] std::size_t unlettered(const std::vector<std::string>& edges) const;

  private:
    /// An edge without a letter's touch.
    struct Unlettered {
        const SheetLine* line;
        bool covered;  ///< nowhere on it are the letters as far as a finger may miss
    };
    /// How far the nearest letter is from that place, along one side of the page.
    [[nodiscard]] float clear_at(ImVec2 place) const;
    [[nodiscard]] bool is_unlettered(const std::string& edge) const;

    const Ui& ui_;
    const RoofSheet& sheet_;
    std::vector<LetterTouch> letters_;
    std::vector<Unlettered> unlettered_;
};

}  // namespace hemline
