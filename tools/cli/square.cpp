// `square`: the 3-4-5 that fits on two sides, what their diagonals say about the rectangle, and the
// corner that a length across them makes.
#include <cmath>
#include <iostream>

#include "engine/roof/nearest.h"
#include "engine/roof/square_check.h"
#include "engine/words/result.h"
#include "tools/cli/commands.h"
#include "tools/cli/print.h"

namespace hemline {
namespace {

/// The lengths that were given; none where `read_square` complained.
struct SquareAsked {
    Length side1, side2;
    std::optional<Length> diagonal1, diagonal2, across;
};

bool read_one(const char* name, const std::string& text, std::optional<BareUnit> unit,
              Length& into) {
    const Result<Length> length = parse_length(text, unit);
    if (!length) {
        complain(name, length.problem());
        return false;
    }
    if (*length <= Length()) {
        complain(name, 0, 0, "A side or diagonal of 0 is none.", "Read it again.");
        return false;
    }
    into = *length;
    return true;
}

std::optional<SquareAsked> read_square(const SquareArguments& arguments) {
    SquareAsked asked;
    const auto optional = [&](const char* name, const std::optional<std::string>& text,
                              std::optional<Length>& into) {
        return !text || read_one(name, *text, arguments.unit, into.emplace());
    };
    const bool read = read_one("SIDE", arguments.side1, arguments.unit, asked.side1) &&
                      read_one("OTHER", arguments.side2, arguments.unit, asked.side2) &&
                      optional("--diagonal", arguments.diagonal1, asked.diagonal1) &&
                      optional("--diagonal2", arguments.diagonal2, asked.diagonal2) &&
                      optional("--across", arguments.across, asked.across);
    return read ? std::optional(asked) : std::nullopt;
}

/// The diagonal of the two sides when they are square to each other, to the nearest nanometer.
Length square_diagonal(const SquareAsked& asked) {
    return nearest_nm(
        std::hypot(static_cast<double>(asked.side1.nm()), static_cast<double>(asked.side2.nm())));
}

Json square_json(const SquareAsked& asked, const std::optional<ThreeFourFive>& triangle,
                 std::optional<double> corner, Marks marks) {
    Json json;
    if (triangle) {
        put_length(json, "three", triangle->three, marks);
        put_length(json, "four", triangle->four, marks);
        put_length(json, "five", triangle->five, marks);
    }
    put_length(json, "diagonal", square_diagonal(asked), marks);
    if (asked.diagonal1) {
        const ShapeCheck check = check_diagonals(*asked.diagonal1, *asked.diagonal2, Tape());
        json["square"] = check.holds();
        put_length(json, "off", check.off, marks);
        put_length(json, "allowed", check.allowed, marks);
        put_length(json, "skew", skew_of(asked.side1, *asked.diagonal1, *asked.diagonal2), marks);
    }
    if (corner) {
        json["corner_deg"] = micro_rounded(*corner);
    }
    return json;
}

std::string square_text(const SquareAsked& asked, const std::optional<ThreeFourFive>& triangle,
                        std::optional<double> corner, Marks marks) {
    const auto words = [&](Length length) { return print_length(length, marks); };
    std::string text = triangle ? "3-4-5: mark " + words(triangle->three) +
                                      " along the shorter side and " + words(triangle->four) +
                                      " along the longer; " + words(triangle->five) +
                                      " across is square\n"
                                : "No 3-4-5 in whole units fits on these sides\n";
    text += "Square, the diagonal is " + words(square_diagonal(asked)) + '\n';
    if (asked.diagonal1) {
        const ShapeCheck check = check_diagonals(*asked.diagonal1, *asked.diagonal2, Tape());
        const Length skew = skew_of(asked.side1, *asked.diagonal1, *asked.diagonal2);
        text += "The diagonals are " + words(absolute(check.off)) + " apart; the tape allows " +
                words(check.allowed) + (check.holds() ? ": square\n" : ": not square\n") +
                "The far side lies " +
                rounded(static_cast<double>(absolute(skew).nm()) / 25.4e6, 3) + " in (" +
                words(absolute(skew)) + ") aside\n";
    }
    if (corner) {
        text += "The corner is " + rounded(*corner, 2) + " deg\n";
    }
    return text;
}

}  // namespace

Exit check_square(const SquareArguments& arguments) {
    const std::optional<SquareAsked> asked = read_square(arguments);
    if (!asked) {
        return Exit::problem_in_input;
    }
    std::optional<double> corner;
    if (asked->across) {
        const Result<double> angle = corner_of(asked->side1, asked->side2, *asked->across);
        if (!angle) {
            return complain("--across", 0, 0, angle.problem());
        }
        corner = *angle;
    }
    const Marks marks = marks_for(arguments.unit);
    const Length unit = marks == Marks::millimetre ? millimetres(100) : feet(1);
    const auto triangle = three_four_five(asked->side1, asked->side2, unit);
    if (arguments.output == Output::json) {
        print_json(square_json(*asked, triangle, corner, marks));
    } else {
        std::cout << square_text(*asked, triangle, corner, marks);
    }
    return Exit::fine;
}

}  // namespace hemline
