// The settings of this device: pixels in a millimeter of its screen, which hand works it, who has
// held it, its language, tapes and light. A single file for all shells, not part of a job.
#pragma once

#include <filesystem>
#include <optional>
#include <string>

#include "engine/words/result_declared.h"
#include "field/store/disk.h"
#include "field/store/people.h"
#include "field/words/crew_words.h"

namespace hemline {

constexpr float px_per_mm_least = 2, px_per_mm_most = 40;

struct ScreenScale {
    std::optional<float> px_per_mm;   ///< of window pixels; nothing when nobody measured it
    bool put_off = false;             ///< the crew was asked, and said "not now"
    bool left_hand = false;           ///< the left thumb works it
    std::vector<Person> people = {};  ///< who has held it, the latest last
    std::string language = "en";      ///< its tag
    bool both_units = false;          ///< it shows lengths for both tapes
    std::optional<bool> night = {};   ///< dark ground; nothing: nobody chose
    CrewWords crew_words = {};        ///< the crew's words, where the trade has several
};

/// What …/hemline/screen says; nothing is known where there is no such file. Problem: it cannot be
/// read, or has other lines than "N px/mm" (2 to 40), "later", "left hand", "right hand",
/// "language TAG", "both units", "night", "day", "word LANGUAGE THING=WORD", and people like "cut
/// Ada"; "spanish", which older programs wrote, is "language es".
Result<ScreenScale> read_screen_scale();

/// Writes it there, whole or not at all. Problem: it cannot be written.
std::optional<Problem> keep_screen_scale(Disk& disk, const ScreenScale& scale);

}  // namespace hemline
