#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <string>
#include <vector>

#include "engine/measure/length_text.h"
#include "engine/words/result.h"

using namespace hemline;

namespace {

struct Legal {
    const char* text;
    Length length;
};

struct Illegal {
    const char* text;
    int at;           ///< first byte that cannot be right
    const char* why;  ///< a part of `what`
};

/// 31 ft 7 5/8 in: the reading that most of the notations below write.
constexpr Length reading = feet(31) + inches(7) + sixteenths(10);

}  // namespace

// The inch is 25.4 mm exactly (international yard and pound agreement, 1959), the foot 12 in.

TEST_CASE("Every notation of the LEGAL list gives its length exactly") {
    const std::vector<Legal> table = {
        {"31' 7 5/8\"", reading},
        {"31' 7-5/8", reading},
        {"31-7-5/8", reading},
        {"31 ft 7.625 in", reading},
        {"31ft 7 5/8in", reading},
        {"31' 7", feet(31) + inches(7)},
        {"379 5/8", reading},
        {"7-5/8\"", inches(7) + sixteenths(10)},
        {"5/8 in", sixteenths(10)},
        {"31'", feet(31)},
        {"31.5 ft", feet(31) + inches(6)},
        {"7 inches", inches(7)},
        {"9.65 m", millimetres(9650)},
        {"965 cm", millimetres(9650)},
        {"9650 mm", millimetres(9650)},
        {"9 650 mm", millimetres(9650)},
        {"31′ 7 5⁄8″", reading},
        {"7 ½ in", inches(7) + sixteenths(8)},
        {"0 in", Length()},
        {"30 ft 0 1/4 in", feet(30) + sixteenths(4)},
    };
    for (const Legal& row : table) {
        CAPTURE(row.text);
        const Result<Length> length = parse_length(row.text);
        REQUIRE(length.ok());
        CHECK(length->nm() == row.length.nm());
    }
}

TEST_CASE("Signs of a typographer, spaces, marks and words all read the same") {
    const std::vector<Legal> table = {
        {"31'-7 5/8\"", reading},
        {"31'7 5/8\"", reading},
        {"31-7-5/8\"", reading},
        {"31-7 5/8", reading},
        {"31-7⅝", reading},
        {"31’ 7⅝”", reading},
        {"31' 7 5/8''", reading},
        {"31\u00A0ft\u202F7\u00A05/8\u00A0in", reading},
        {"31 FT 7 5/8 IN", reading},
        {"31 ft. 7 5/8 in.", reading},
        {"31 feet 7 5/8 inches", reading},
        {"  31 ft 7 5/8 in\r\n", reading},
        {"31' 7‑5∕8", reading},
        {"31' 5/8", feet(31) + sixteenths(10)},
        {"0' 7 5/8\"", inches(7) + sixteenths(10)},
        {"7½", inches(7) + sixteenths(8)},
        {"½", sixteenths(8)},
        {"⅛ in", sixteenths(2)},
        {"⅜ in", sixteenths(6)},
        {"⅞ in", sixteenths(14)},
        {"¼ in", sixteenths(4)},
        {"¾ in", sixteenths(12)},
        {"7 0/16 in", inches(7)},
        {"7 63/64 in", inches(7) + sixty_fourths(63)},
        {"7.015625 in", inches(7) + sixty_fourths(1)},
        {"9\u202F650 mm", millimetres(9650)},
        {"9 650.5 mm", tenths_of_millimetre(96505)},
        {"965.05 cm", tenths_of_millimetre(96505)},
        {"0.000000001 m", nanometres(1)},
        {"9.650000000000000 m", millimetres(9650)},
        {"1000 m", longest_readable()},
        {"1 000 000 mm", longest_readable()},
        {"007 in", inches(7)},
        {"31 1/2 ft", feet(31) + inches(6)},
        {"31½'", feet(31) + inches(6)},
        {"31-1/2 ft", feet(31) + inches(6)},
        {"1/4 ft", inches(3)},
        {".5 ft", inches(6)},
        {".5 in", sixteenths(8)},
        {"31' .5\"", feet(31) + sixteenths(8)},
        {"31 pies", feet(31)},
        {"31 pies 7 5/8 pulgadas", reading},
        {"31 PIES 7 5/8 pulg.", reading},
        {"1 pie 1 pulgada", feet(1) + inches(1)},
        {"9.65 metros", millimetres(9650)},
        {"965 centímetros", millimetres(9650)},
        {"9650 milimetros", millimetres(9650)},
        {"965 centimeters", millimetres(9650)},
    };
    for (const Legal& row : table) {
        CAPTURE(row.text);
        const Result<Length> length = parse_length(row.text);
        REQUIRE(length.ok());
        CHECK(length->nm() == row.length.nm());
    }
}

TEST_CASE("Every text of the ILLEGAL list is refused at its place, with a mend") {
    const std::vector<Illegal> table = {
        {"379", 3, "which unit it has"},
        {"9 650", 5, "which unit it has"},
        {"9,65 m", 1, "comma"},
        {"31' 12\"", 4, "twelve inches"},
        {"31-7", 4, "feet and inches, or an unfinished fraction"},
        {"7 5/10 in", 4, "no tape is marked in"},
        {"7 9/8 in", 4, "not less than one"},
        {"-7 in", 0, "negative"},
        {"31.5' 3\"", 6, "not whole"},
        {"9 m 65 cm", 4, "after its metric unit"},
        {"7.1234567 in", 0, "nanometre"},
        {"2 km", 2, "\"km\" where a unit belongs"},
        {"1001 m", 0, "longer than any roof"},
    };
    for (const Illegal& row : table) {
        CAPTURE(row.text);
        const Result<Length> length = parse_length(row.text);
        REQUIRE_FALSE(length.ok());
        CHECK(length.problem().at == row.at);
        CHECK(length.problem().what.english().find(row.why) != std::string::npos);
        CHECK(length.problem().what.english().find(std::string("\"") + row.text + "\"") == 0);
        CHECK_FALSE(length.problem().mend.empty());
    }
}

TEST_CASE("What could be read two ways, or not at all, is refused and never guessed") {
    const std::vector<Illegal> table = {
        {"", 0, "holds no length"},
        {"   ", 0, "holds no length"},
        {"ft", 0, "no figure"},
        {"in 7", 0, "no figure"},
        {"31 7 5/8", 3, "no unit between"},
        {"7 -5/8 in", 2, "dash where none belongs"},
        {"31 7 in", 3, "no unit between"},
        {"9  650 mm", 3, "no unit between"},
        {"9\t650 mm", 2, "no unit between"},
        {"0 650 mm", 2, "no unit between"},
        {"12 34 mm", 3, "no unit between"},
        {"9 650 in", 0, "space between digits"},
        {"31' 1 650", 4, "space between digits"},
        {"9 650 5/8 in", 6, "after decimals or grouped"},
        {"7.5 1/2 in", 4, "after decimals"},
        {"7.5-1/2 in", 4, "after decimals"},
        {"31' 7\" 5/8", 7, "goes on"},
        {"7\" 5/8", 3, "after its inches"},
        {"7 in 31 ft", 5, "after its inches"},
        {"31 ft 65 mm", 6, "twelve inches"},
        {"31 ft 5 mm", 8, "goes on"},
        {"31 ft 7 in 3 mm", 11, "goes on"},
        {"1 200 ft", 0, "feet with a space between digits"},
        {"1 200'", 0, "feet with a space between digits"},
        {"1 200 pies 6 in", 0, "feet with a space between digits"},
        {"31 1/2 ft 3 in", 10, "not whole"},
        {"9 1/2 m", 2, "fraction of a metric unit"},
        {"31-12-1/2", 3, "twelve inches"},
        {"31-7.625", 2, "dash"},
        {"31.5-7-5/8", 4, "dash"},
        {"31 - 7 - 5/8", 3, "dash"},
        {"31-7-5/8 ft", 9, "goes on"},
        {"31--7", 2, "dash"},
        {"31' -7", 4, "no figure"},
        {"31'-", 4, "no figure"},
        {"7-", 1, "dash"},
        {"+7 in", 0, "character"},
        {". in", 0, "no digit before"},
        {"31 ft.5 in", 5, "no digit before"},
        {"31'.5\"", 3, "no digit before"},
        {"..5 in", 0, "no digit before"},
        {".5.5 in", 2, "two points"},
        {"7 .5 in", 2, "no unit between"},
        {"7. in", 1, "no digit after"},
        {"7.5.5 in", 3, "two points"},
        {"1,234 mm", 1, "comma"},
        {"1/3 in", 2, "no tape"},
        {"⅓ in", 0, "no tape"},
        {"5/ in", 3, "not finished"},
        {"5 / 8 in", 2, "not finished"},
        {"5/8/3", 3, "no unit between"},
        {"7 5/0 in", 4, "no tape"},
        {"7 1/128 in", 4, "no tape"},
        {"7 1/4294967298 in", 4, "no tape"},
        {"7 8/8 in", 4, "not less than one"},
        {"½5 in", 2, "no unit between"},
        {"3281 ft", 0, "longer than any roof"},
        {"99999999999999999999999 mm", 0, "longer than any roof"},
        {"7.00000000001 in", 0, "nanometre"},
        {"0.0000000001 m", 0, "nanometre"},
        {"7 in\xFF", 4, "character"},
        {"7 in 💧", 5, "character"},
        {"7 yd", 2, "unit belongs"},
        {"ten ft", 0, "unit belongs"},
        {"7 inft", 2, "unit belongs"},
        {"1e3 mm", 1, "unit belongs"},
    };
    for (const Illegal& row : table) {
        CAPTURE(row.text);
        const Result<Length> length = parse_length(row.text);
        REQUIRE_FALSE(length.ok());
        CHECK(length.problem().at == row.at);
        CAPTURE(length.problem().what);
        CHECK(length.problem().what.english().find(row.why) != std::string::npos);
        CHECK_FALSE(length.problem().mend.empty());
    }
}

TEST_CASE("A bare number takes the unit it was given, and a written unit goes before it") {
    CHECK(parse_length("9650", BareUnit::millimetre).value() == millimetres(9650));
    CHECK(parse_length("9 650", BareUnit::millimetre).value() == millimetres(9650));
    CHECK(parse_length("379", BareUnit::inch).value() == inches(379));
    CHECK(parse_length("379.5", BareUnit::inch).value() == inches(379) + sixteenths(8));
    CHECK(parse_length("379 5/8", BareUnit::inch).value() == reading);
    CHECK(parse_length("4575", BareUnit::sixteenth).value() == sixteenths(4575));
    CHECK(parse_length("9649375000", BareUnit::nanometre).value() == nanometres(9'649'375'000));
    CHECK(parse_length("10 ft", BareUnit::millimetre).value() == feet(10));
    CHECK(parse_length("965 cm", BareUnit::inch).value() == millimetres(9650));
    CHECK_FALSE(parse_length("0.5", BareUnit::nanometre).ok());
    CHECK_FALSE(parse_length("9 650", BareUnit::inch).ok());
    CHECK_FALSE(parse_length("31-7", BareUnit::inch).ok());
    CHECK_FALSE(parse_length("1000000000001", BareUnit::nanometre).ok());
}

TEST_CASE("A fraction of an inch is refused where bare numbers have another unit") {
    const Result<Length> length = parse_length("379 5/8", BareUnit::millimetre);
    REQUIRE_FALSE(length.ok());
    CHECK(length.problem().at == 4);
}

TEST_CASE("Whatever the bytes, reading gives a length in range or a problem inside the text") {
    const auto holds = [](const std::string& text) {
        for (const std::optional<BareUnit> bare :
             {std::optional<BareUnit>(), std::optional(BareUnit::nanometre),
              std::optional(BareUnit::millimetre), std::optional(BareUnit::inch),
              std::optional(BareUnit::sixteenth)}) {
            const Result<Length> length = parse_length(text, bare);
            if (length.ok()) {
                RC_ASSERT(*length >= Length());
                RC_ASSERT(*length <= longest_readable());
            } else {
                RC_ASSERT(length.problem().at >= 0);
                RC_ASSERT(length.problem().at <= static_cast<int>(text.size()));
                RC_ASSERT(!length.problem().what.empty());
                RC_ASSERT(!length.problem().mend.empty());
            }
        }
    };
    CHECK(rc::check("any bytes", [&holds](const std::string& text) { holds(text); }));
    CHECK(rc::check("bits of lengths in any order", [&holds]() {
        const auto bits = *rc::gen::container<std::vector<std::string>>(rc::gen::elementOf(
            std::vector<std::string>{"7",  "31", "650", "5/8", "½",  "⅝", " ", " ",  "'",     "\"",
                                     "ft", "in", "m",   "cm",  "mm", "-", "/", ".",  ",",     "′",
                                     "″",  "⁄",  "\t",  "0",   "12", "9", "°", "''", "\u00A0"}));
        std::string text;
        for (const std::string& bit : bits) {
            text += bit;
        }
        holds(text);
    }));
}

TEST_CASE("Printing rounds to the nearest mark, a half to the longer") {
    struct Printed {
        Length length;
        Marks marks;
        const char* text;
    };
    const std::vector<Printed> table = {
        {reading, Marks::sixteenth, "31 ft 7 5/8 in"},
        {inches(7) + sixteenths(10), Marks::sixteenth, "7 5/8 in"},
        {sixteenths(10), Marks::sixteenth, "5/8 in"},
        {Length(), Marks::sixteenth, "0 in"},
        {feet(10), Marks::sixteenth, "10 ft"},
        {feet(30) + sixteenths(4), Marks::sixteenth, "30 ft 0 1/4 in"},
        {feet(1) - nanometres(1), Marks::sixteenth, "1 ft"},
        {thirty_seconds(1), Marks::sixteenth, "1/16 in"},
        {thirty_seconds(1) - nanometres(1), Marks::sixteenth, "0 in"},
        {thirty_seconds(1), Marks::thirty_second, "1/32 in"},
        {sixty_fourths(1), Marks::thirty_second, "1/32 in"},
        {-inches(7), Marks::sixteenth, "-7 in"},
        {-thirty_seconds(1), Marks::sixteenth, "-1/16 in"},
        {-nanometres(1), Marks::sixteenth, "0 in"},
        {millimetres(9650), Marks::millimetre, "9650 mm"},
        {tenths_of_millimetre(96505), Marks::millimetre, "9651 mm"},
        {tenths_of_millimetre(96504), Marks::millimetre, "9650 mm"},
    };
    for (const Printed& row : table) {
        CHECK(print_length(row.length, row.marks) == row.text);
    }
}

TEST_CASE("Printing and reading again is the identity for every 1/16 in to 200 ft") {
    for (std::int64_t n = 0; n <= 200 * 12 * 16; ++n) {
        const Length length = sixteenths(n);
        const Result<Length> again = parse_length(print_length(length));
        REQUIRE(again.ok());
        REQUIRE(*again == length);
    }
}

TEST_CASE("Printing and reading again is the identity for every 1/32 in and every mm to 60 m") {
    for (std::int64_t n = 0; n <= 60'000; ++n) {
        const Length fine = thirty_seconds(n);
        REQUIRE(parse_length(print_length(fine, Marks::thirty_second)).value() == fine);
        const Length metric = millimetres(n);
        REQUIRE(parse_length(print_length(metric, Marks::millimetre)).value() == metric);
    }
}

TEST_CASE("Every 1/16 in to 200 ft is read alike from all inch notations") {
    CHECK(rc::check([]() {
        const int n = *rc::gen::inRange(0, 200 * 12 * 16);
        const Length length = sixteenths(n);
        const std::string foot = std::to_string(n / 192);
        const std::string inch = std::to_string(n / 16 % 12);
        const std::string part = std::to_string(n % 16) + "/16";
        // 1/16 in is 0.0625 in, so four decimals say every mark exactly.
        const std::string decimals = std::to_string(10'000 + n % 16 * 625).substr(1);
        for (const std::string& text :
             {foot + "' " + inch + " " + part + "\"", foot + "-" + inch + "-" + part,
              foot + " ft " + inch + "." + decimals + " in", std::to_string(n / 16) + " " + part,
              foot + "′ " + inch + "-" + part + "″"}) {
            const Result<Length> read = parse_length(text);
            RC_ASSERT(read.ok());
            RC_ASSERT(*read == length);
        }
    }));
}

TEST_CASE("A length taken apart adds up to its nearest mark") {
    CHECK(rc::check([]() {
        const std::int64_t nm = *rc::gen::inRange<std::int64_t>(-60'000'000'000, 60'000'000'000);
        const Length length = nanometres(nm);
        for (const Marks marks : {Marks::sixteenth, Marks::thirty_second, Marks::millimetre}) {
            const LengthParts parts = take_apart(length, marks);
            RC_ASSERT(parts.inches >= 0 && parts.inches < 12);
            RC_ASSERT(parts.numerator >= 0 && parts.numerator < parts.denominator);
            const Length size = feet(parts.feet) + inches(parts.inches) +
                                millimetres(parts.millimetres) +
                                sixty_fourths(parts.numerator * 64 / parts.denominator);
            const Length off = absolute(size - absolute(length));
            RC_ASSERT(off * 2 <= mark_of(marks));
        }
    }));
}
