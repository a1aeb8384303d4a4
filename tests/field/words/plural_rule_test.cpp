// Rules and the counts of each form: GNU gettext manual, "Additional functions for plural forms",
// where it lists the languages by their forms.
#include "field/words/plural_rule.h"
#include "engine/words/result.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

namespace hemline {
namespace {

std::string forms(const std::string& header, const std::vector<std::int64_t>& counts) {
    const Result<PluralRule> rule = PluralRule::read(header);
    REQUIRE(rule.ok());
    std::string said;
    for (const std::int64_t count : counts) {
        said += std::to_string(rule->form_of(count));
    }
    return said;
}

TEST_CASE("Each language of the gettext manual takes the form that the manual gives") {
    // "Only one form", Japanese
    CHECK(forms("nplurals=1; plural=0;", {0, 1, 2, 5}) == "0000");
    // "Two forms, singular used for one only", English, Spanish
    CHECK(forms("nplurals=2; plural=n != 1;", {0, 1, 2, 21}) == "1011");
    // "Two forms, singular used for zero and one", French
    CHECK(forms("nplurals=2; plural=n>1;", {0, 1, 2, 21}) == "0011");
    // "Three forms, special case for zero", Latvian
    CHECK(forms("nplurals=3; plural=n%10==1 && n%100!=11 ? 0 : n != 0 ? 1 : 2;",
                {0, 1, 2, 11, 21, 111, 121}) == "2011010");
    // "Three forms, special cases for numbers ending in 1 and 2, 3, 4, except those ending in
    // 1[1-4]", Russian
    CHECK(forms("nplurals=3; plural=n%10==1 && n%100!=11 ? 0 : n%10>=2 && n%10<=4 && (n%100<10 || "
                "n%100>=20) ? 1 : 2;",
                {0, 1, 2, 4, 5, 11, 12, 14, 21, 22, 25, 101, 111, 112, 122}) == "201122220120221");
    // "Three forms, special case for one and some numbers ending in 2, 3, or 4", Polish
    CHECK(forms("nplurals=3; plural=n==1 ? 0 : n%10>=2 && n%10<=4 && (n%100<10 || n%100>=20) ? 1 "
                ": 2;",
                {0, 1, 2, 4, 5, 12, 21, 22, 101, 102, 112}) == "20112221212");
    // "Four forms, special case for one and all numbers ending in 02, 03, or 04", Slovenian
    CHECK(forms("nplurals=4; plural=n%100==1 ? 0 : n%100==2 ? 1 : n%100==3 || n%100==4 ? 2 : 3;",
                {0, 1, 2, 3, 4, 5, 101, 102, 104, 105}) == "3012230123");
    // "Six forms", Arabic
    CHECK(forms("nplurals=6; plural=n==0 ? 0 : n==1 ? 1 : n==2 ? 2 : n%100>=3 && n%100<=10 ? 3 : "
                "n%100>=11 ? 4 : 5;",
                {0, 1, 2, 3, 10, 11, 99, 100, 102, 103, 111}) == "01233445534");
}

TEST_CASE("Operators bind as in C, and from left to right") {
    CHECK(forms("nplurals=6; plural=8-2-1-n;", {2, 3, 5}) == "320");
    CHECK(forms("nplurals=6; plural=n+1*2;", {0, 3}) == "25");
    CHECK(forms("nplurals=6; plural=(n+1)*2;", {0, 1}) == "24");
    CHECK(forms("nplurals=2; plural=n==1 || n==2 && 0;", {0, 1, 2}) == "010");
    CHECK(forms("nplurals=2; plural=!n==1;", {0, 1}) == "10");
    CHECK(forms("nplurals=2; plural=1<2==n;", {0, 1}) == "01");
    CHECK(forms("nplurals=6; plural=17%10/n;", {2, 7}) == "31");
}

TEST_CASE("A form that there is not, and a division by zero, are the first form") {
    CHECK(forms("nplurals=2; plural=n;", {0, 1, 2, 1000}) == "0100");
    CHECK(forms("nplurals=2; plural=1/n;", {0, 1}) == "01");
    CHECK(forms("nplurals=2; plural=n%n;", {0, 5}) == "00");
    CHECK(forms("nplurals=2; plural=n-1;", {0}) == "0");
}

TEST_CASE("What is no rule of gettext's is refused with the mend") {
    for (const std::string& bad :
         {std::string(""), std::string("nplurals=2"), std::string("nplurals=2; plural=n"),
          std::string("nplurals=0; plural=0;"), std::string("nplurals=7; plural=0;"),
          std::string("nplurals=x; plural=0;"), std::string("nplurals=2; plural=;"),
          std::string("nplurals=2; plural=n=1;"), std::string("nplurals=2; plural=(n;"),
          std::string("nplurals=2; plural=n?1;"), std::string("nplurals=2; plural=system(n);"),
          std::string("nplurals=2; plural=n!=1;;"),
          std::string("nplurals=2; plural=99999999999999999999;"),
          "nplurals=2; plural=" + std::string(100, '(') + "n" + std::string(100, ')') + ";",
          "nplurals=2; plural=" + std::string(400, '!') + "n;",
          "nplurals=2; plural=n" + std::string(1000, '0') + ";"}) {
        CAPTURE(bad);
        const Result<PluralRule> rule = PluralRule::read(bad);
        REQUIRE_FALSE(rule.ok());
        CHECK(rule.problem().mend.english().find("nplurals=2; plural=(n != 1);") !=
              std::string::npos);
    }
}

}  // namespace
}  // namespace hemline
