// Reads a length: figures and units in the orders that have a single meaning, all in integers.
//
//   text := figure [unit]                 one unit, or one that `bare` or a binary fraction gives
//         | whole feet-unit ["-"] figure [inch-unit]
//         | whole "-" whole ("-" | " ") fraction [inch-unit]
#include "engine/measure/length_text.h"

#include "engine/measure/length_figure.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

Result<Length> inches_of(const LengthReader& reader, const LengthFigure& figure) {
    if (figure.whole.grouped) {
        return reader.refuse(figure.at, say("{1} has inches with a space between digits."),
                             say("Write inches without a space, and a fraction with its slash."));
    }
    return length_of(reader, figure, inches(1).nm());
}

/// Refuses anything after a complete length.
std::optional<Problem> refuse_rest(const LengthReader& reader, Text what, Text mend) {
    if (reader.peek().kind == TokenKind::end) {
        return {};
    }
    return reader.refuse(reader.peek().at, std::move(what), std::move(mend));
}

/// The inches after whole feet, and their optional unit, to the end.
Result<Length> read_inches_after(LengthReader& reader, Length whole_feet) {
    const Result<LengthFigure> figure = read_figure(reader);
    if (!figure) {
        return figure.problem();
    }
    const Result<Length> length = inches_of(reader, *figure);
    if (!length) {
        return length.problem();
    }
    if (*length >= feet(1)) {
        return reader.refuse(figure->at, say("{1} has twelve inches or more beside its feet."),
                             say("Carry them over: twelve inches are a foot."));
    }
    if (reader.peek().kind == TokenKind::inch) {
        ++reader.next;
    }
    if (const auto problem =
            refuse_rest(reader, say("{1} goes on where the inches should end."),
                        say("Write feet, then inches and a fraction, and no more."))) {
        return *problem;
    }
    if (whole_feet + *length > longest_readable()) {
        return reader.refuse(0, say("{1} is longer than any roof."), say("At most 1 km is read."));
    }
    return whole_feet + *length;
}

/// "31' …", standing behind the mark.
Result<Length> read_after_feet(LengthReader& reader, const LengthFigure& figure) {
    if (figure.whole.grouped) {
        return reader.refuse(figure.at, say("{1} has feet with a space between digits."),
                             say("Write feet without a space, and a fraction with its slash."));
    }
    const Result<Length> whole_feet = length_of(reader, figure, feet(1).nm());
    if (!whole_feet) {
        return whole_feet.problem();
    }
    if (reader.peek().kind == TokenKind::end) {
        return *whole_feet;
    }
    if (!is_whole(figure.whole) || figure.fraction) {
        return reader.refuse(reader.peek().at, say("{1} has inches after feet that are not whole."),
                             say("Keep decimals and fractions to the last figure, as in 31 ft 6.25 "
                                 "in."));
    }
    const bool dashed =
        reader.peek().kind == TokenKind::dash && !reader.peek().spaced && !reader.peek(1).spaced;
    reader.next += dashed ? 1 : 0;
    return read_inches_after(reader, *whole_feet);
}

/// "31-7-5/8", standing on the first dash.
Result<Length> read_dashed(LengthReader& reader, const LengthFigure& whole_feet) {
    const Token& dash = reader.peek();
    const Token& after = reader.peek(1);
    if (!is_whole(whole_feet.whole) || whole_feet.fraction || dash.spaced || after.spaced ||
        !is_whole(after)) {
        return reader.refuse(dash.at, say("{1} has a dash where none belongs."),
                             say("Write feet and inches, as in 31 ft 7 5/8 in."));
    }
    const Result<Length> head = length_of(reader, whole_feet, feet(1).nm());
    if (!head) {
        return head.problem();
    }
    ++reader.next;
    const std::size_t inches_from = reader.next;
    const Result<LengthFigure> figure = read_figure(reader);
    if (!figure) {
        return figure.problem();
    }
    if (!figure->fraction) {
        return reader.refuse(reader.peek().at,
                             say("{1} may be feet and inches, or an unfinished fraction."),
                             say("Write the units, as in 31 ft 7 in."));
    }
    reader.next = inches_from;
    return read_inches_after(reader, *head);
}

std::int64_t nm_of(BareUnit unit) {
    switch (unit) {
        case BareUnit::nanometre:
            return 1;
        case BareUnit::millimetre:
            return millimetres(1).nm();
        case BareUnit::inch:
            return inches(1).nm();
        case BareUnit::sixteenth:
            return sixteenths(1).nm();
    }
    stop("a bare unit without its size");
}

/// A figure at the end of the text.
Result<Length> read_bare(const LengthReader& reader, const LengthFigure& figure,
                         std::optional<BareUnit> bare) {
    if (figure.fraction && bare.value_or(BareUnit::inch) != BareUnit::inch) {
        return reader.refuse(
            figure.fraction_at,
            say("{1} has a fraction of an inch, where bare numbers have another unit."),
            say("Write in after it, or leave the fraction out."));
    }
    if (figure.fraction || bare == BareUnit::inch) {
        return inches_of(reader, figure);
    }
    if (!bare) {
        return reader.refuse(reader.peek().at, say("{1} does not say which unit it has."),
                             say("Write ft, in, m, cm or mm after the figure."));
    }
    return length_of(reader, figure, nm_of(*bare));
}

/// "9.65 m", standing on the unit.
Result<Length> read_metric(LengthReader& reader, const LengthFigure& figure) {
    const TokenKind unit = reader.peek().kind;
    if (figure.fraction) {
        return reader.refuse(figure.fraction_at, say("{1} has a fraction of a metric unit."),
                             say("Write decimals, as in 9.65 m."));
    }
    ++reader.next;
    if (const auto problem =
            refuse_rest(reader, say("{1} goes on after its metric unit."),
                        say("Write one metric figure with one unit, as in 9650 mm."))) {
        return *problem;
    }
    const std::int64_t mm = unit == TokenKind::metre        ? 1000
                            : unit == TokenKind::centimetre ? 10
                                                            : 1;
    return length_of(reader, figure, millimetres(mm).nm());
}

/// "7 5/8 in", standing on the unit.
Result<Length> read_inches_alone(LengthReader& reader, const LengthFigure& figure) {
    ++reader.next;
    if (const auto problem =
            refuse_rest(reader, say("{1} goes on after its inches."),
                        say("Write feet before inches, and nothing after them."))) {
        return *problem;
    }
    return inches_of(reader, figure);
}

Result<Length> read_length(LengthReader& reader, std::optional<BareUnit> bare) {
    if (reader.peek().kind == TokenKind::end) {
        return reader.refuse(0, say("{1} holds no length."),
                             say("Write a length, as in 31 ft 7 5/8 in."));
    }
    if (reader.peek().kind == TokenKind::dash) {
        return reader.refuse(reader.peek().at, say("{1} is negative."),
                             say("Leave the minus out: a length is never below zero."));
    }
    const Result<LengthFigure> figure = read_figure(reader);
    if (!figure) {
        return figure.problem();
    }
    switch (reader.peek().kind) {
        case TokenKind::end:
            return read_bare(reader, *figure, bare);
        case TokenKind::foot:
            ++reader.next;
            return read_after_feet(reader, *figure);
        case TokenKind::inch:
            return read_inches_alone(reader, *figure);
        case TokenKind::metre:
        case TokenKind::centimetre:
        case TokenKind::millimetre:
            return read_metric(reader, *figure);
        case TokenKind::dash:
            return read_dashed(reader, *figure);
        case TokenKind::number:
        case TokenKind::slash:
            break;
    }
    return reader.refuse(reader.peek().at, say("{1} has two figures with no unit between them."),
                         say("Write the units, as in 31 ft 7 5/8 in."));
}

}  // namespace

Result<Length> parse_length(std::string_view text, std::optional<BareUnit> bare) {
    Result<std::vector<Token>> tokens = length_tokens(text);
    if (!tokens) {
        return tokens.problem();
    }
    LengthReader reader{text, tokens.value(), 0};
    return read_length(reader, bare);
}

}  // namespace hemline
