// Which of a language's forms a count takes, by the rule in its PO file's header:
//
//   Plural-Forms: nplurals=3; plural=(n==1 ? 0 : n%10>=2 && n%10<=4 && (n%100<10 || n%100>=20) ? 1
//   : 2);
//
// Source: GNU gettext manual, "Additional functions for plural forms".
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "engine/words/result_declared.h"

namespace hemline {

class PluralRule {
  public:
    /// Two forms: the first for one, the second for any other count, as English and Spanish have
    /// them.
    PluralRule() = default;
    /// What stands after "Plural-Forms:". Problem: it is not "nplurals=N; plural=…;" with 1 to 6
    /// forms and an expression of n, whole numbers and the operators of C.
    static Result<PluralRule> read(std::string_view header);

    [[nodiscard]] int forms() const { return forms_; }
    /// The form of a count, from 0; the first where the rule gives a form that does not exist.
    [[nodiscard]] int form_of(std::int64_t count) const;

  private:
    int forms_ = 2;
    std::string expression_ = "n!=1";  ///< without spaces
};

}  // namespace hemline
