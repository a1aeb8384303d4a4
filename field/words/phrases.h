// The phrases of one language: what a Text says in it.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/words/result.h"
#include "engine/words/text.h"

namespace hemline {

class Phrases {
  public:
    /// English: every text says what its source says.
    Phrases() = default;
    /// Reads a PO file (po_file.h); phrases marked fuzzy or not translated stay English. Counts of
    /// one take the first form, others the second, as English, Spanish and their like do. Problem:
    /// names the line.
    static Result<Phrases> read(std::string_view po);

    /// The text in this language, lengths for a reader who works on those marks.
    [[nodiscard]] std::string of(const Text& text, std::optional<Marks> marks = {}) const;

  private:
    std::map<std::string, std::vector<std::string>, std::less<>> strings_;
};

}  // namespace hemline
