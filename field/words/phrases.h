// The phrases of a language: what a Text says in it.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/words/result_declared.h"
#include "engine/words/text.h"
#include "field/words/crew_words.h"
#include "field/words/plural_rule.h"

namespace hemline {

class Phrases {
  public:
    /// English: every text stays as in the source.
    Phrases() = default;
    /// Reads a PO file (po_file.h); phrases marked fuzzy or not translated stay English. The header
    /// says "Language:", its tag of BCP 47, "X-Language-Name:", its name in that language, and
    /// "Plural-Forms:" (plural_rule.h; without it, as English has them). "X-Ids: short": each msgid
    /// is a short_id(). Problem: names the line, or what the header lacks.
    static Result<Phrases> read(std::string_view po);

    /// "en", "es".
    [[nodiscard]] const std::string& tag() const { return tag_; }
    /// "English", "Español": what its speakers look for.
    [[nodiscard]] const std::string& name() const { return name_; }
    /// The text in this language and the crew's words, lengths on those tape marks.
    [[nodiscard]] std::string of(const Text& text, std::optional<Marks> marks = {},
                                 const CrewWords& words = {}) const;

  private:
    std::string tag_ = "en", name_ = "English";
    PluralRule plural_;
    bool short_ids_ = false;
    std::map<std::string, std::vector<std::string>, std::less<>> strings_;
};

}  // namespace hemline
