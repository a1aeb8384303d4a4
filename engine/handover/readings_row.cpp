#include "engine/handover/readings_row.h"

#include <algorithm>

#include "engine/measure/angle_text.h"
#include "engine/roof/edge_shape.h"
#include "engine/words/quote.h"
#include "engine/words/result.h"
#include "engine/words/shown_text.h"
#include "engine/work/edge_change.h"

namespace hemline {

namespace {

std::string_view trimmed(std::string_view text) {
    const std::size_t from = text.find_first_not_of(" \t");
    if (from == std::string_view::npos) {
        return {};
    }
    return text.substr(from, text.find_last_not_of(" \t") - from + 1);
}

/// A row being read into an edge; the first problem is kept, and nothing is read after it.
struct ReadingsRow {
    const Table& table;
    const std::vector<Cell>& cells;
    const Catalogue& catalogue;
    std::optional<BareUnit> bare;
    RowsFor rows_for;
    std::optional<TableProblem> problem;

    /// The cell's text without the spaces around it; empty where the column is not there.
    [[nodiscard]] std::string_view text(std::string_view column) const {
        const auto index = table.column(column);
        return index ? trimmed(cells[*index].text) : std::string_view();
    }
    /// Refuses the column's text: "length "379" does not say …".
    void refuse(std::string_view column, const std::string& why, std::string mend) {
        const auto index = table.column(column);
        const Cell& cell = index ? cells[*index] : cells.front();
        problem =
            TableProblem{cell.line, cell.column, std::string(column) + " " + why, std::move(mend)};
    }
    void refuse_word(std::string_view column, std::string mend) {
        const std::string_view found = text(column);
        refuse(column, found.empty() ? "is empty." : quoted(found) + " is not a word for it.",
               std::move(mend));
    }
};

/// Reads a word of a set; an empty cell changes nothing.
template <class T>
void read_word(ReadingsRow& row, std::string_view column,
               std::optional<T> (*value_of)(std::string_view), T& into, std::string_view mend) {
    const std::string_view word = row.text(column);
    if (row.problem || word.empty()) {
        return;
    }
    if (const std::optional<T> value = value_of(word)) {
        into = *value;
    } else {
        row.refuse_word(column, std::string(mend));
    }
}

/// A length above zero; none for an empty cell.
std::optional<Length> read_length(ReadingsRow& row, std::string_view column) {
    const std::string_view text = row.text(column);
    if (row.problem || text.empty()) {
        return {};
    }
    const Result<Length> length = parse_length(text, row.bare);
    if (!length) {
        row.refuse(column, length.problem().what.english(), length.problem().mend.english());
        return {};
    }
    if (*length == Length()) {
        row.refuse(column, quoted(text) + " is zero.", "Give a length above zero.");
        return {};
    }
    return *length;
}

std::optional<Slope> read_slope(ReadingsRow& row, std::string_view column) {
    const std::string_view text = row.text(column);
    if (row.problem || text.empty()) {
        return {};
    }
    const Result<Slope> slope = parse_slope(text);
    if (!slope) {
        row.refuse(column, slope.problem().what.english(), slope.problem().mend.english());
        return {};
    }
    return *slope;
}

/// The kinds that the catalogue has a main trim for: "eaves".
std::string kinds_served(const Catalogue& catalogue) {
    std::string kinds;
    for (const KindOfEdge& one : kinds_of_edge()) {
        if (catalogue.default_for(one.kind) != nullptr) {
            kinds += (kinds.empty() ? "" : ", ") + spoken(one.kind).english() + "s";
        }
    }
    return kinds.empty() ? "nothing" : kinds;
}

void read_name(ReadingsRow& row, Edge& edge) {
    edge.id = row.text("edge");
    if (edge.id.empty()) {
        row.refuse("edge", "is empty.", "Give every edge a name, such as A.");
    } else if (edge.id.size() > 40) {
        row.refuse("edge", quoted(edge.id) + " is longer than 40 bytes.", "Shorten the name.");
    } else if (!is_plain(edge.id)) {
        row.refuse("edge",
                   quoted(edge.id) + " holds a line end or another character that is not seen.",
                   "Name the edge with letters and figures.");
    }
}

void read_kind(ReadingsRow& row, Edge& edge) {
    if (row.problem) {
        return;
    }
    const auto kind = edge_kind_of(row.text("kind"));
    if (!kind) {
        row.refuse_word("kind", "Write " + words_of_kinds_with_run() + ".");
        return;
    }
    edge.kind = *kind;
    if (row.rows_for == RowsFor::plan && row.catalogue.default_for(*kind) == nullptr) {
        row.refuse("kind",
                   quoted(word_of(*kind)) + ": the catalogue has trims for " +
                       kinds_served(row.catalogue) + " only.",
                   "Add a trim of that kind to the catalogue, or take the row out.");
    }
}

void read_trim(ReadingsRow& row, Edge& edge) {
    edge.trim = row.text("trim");
    if (row.problem || row.rows_for == RowsFor::outline) {
        return;
    }
    if (edge.trim.empty()) {
        edge.trim = usual_trim(edge.kind, row.catalogue);
        return;
    }
    const Trim* trim = row.catalogue.find(edge.trim);
    std::string choice;
    for (const Trim& known : row.catalogue.trims()) {
        if (serves(known, edge.kind) && known.role == TrimRole::main) {
            choice += (choice.empty() ? "" : ", ") + known.id;
        }
    }
    const std::string mend = "Write one of " + choice + ", or leave the cell empty.";
    if (trim == nullptr) {
        row.refuse("trim", quoted(edge.trim) + " is not in the catalogue.", mend);
    } else if (trim->role != TrimRole::main) {
        row.refuse("trim",
                   quoted(edge.trim) + " is a " + std::string(word_of(trim->role)) +
                       ", not the edge's own trim.",
                   mend);
    } else if (!serves(*trim, edge.kind)) {
        row.refuse("trim",
                   quoted(edge.trim) + " is a trim of another kind of edge (" +
                       spoken(trim->kind).english() + ").",
                   mend);
    }
}

/// The ends that this side of the edge can have.
std::string ends_listed(EdgeKind kind, Side side) {
    std::vector<std::string_view> words;
    for (const End end : ends_of(kind, side)) {
        words.push_back(word_of(end));
    }
    return either_of(words);
}

/// "the foot of a gable", "an end of a ridge".
std::string end_named(EdgeKind kind, Side side) {
    const std::string of = (kind == EdgeKind::eave ? " of an " : " of a ") + spoken(kind).english();
    return (!is_sloped(kind) ? "an end" : side == Side::left ? "the foot" : "the top") + of;
}

void read_end(ReadingsRow& row, Side side, Edge& edge) {
    const std::string_view column = word_of(side);
    if (row.problem) {
        return;
    }
    const std::string mend = "Write " + ends_listed(edge.kind, side) + ".";
    const auto end = end_of(row.text(column));
    if (!end) {
        row.refuse_word(column, mend);
        return;
    }
    (side == Side::left ? edge.left : edge.right) = *end;
    if (!can_end_at(edge.kind, side, *end)) {
        row.refuse(column,
                   quoted(word_of(*end)) + " does not stand at " + end_named(edge.kind, side) + ".",
                   mend);
    }
}

/// A corner angle as it is written, above 0; none where the cell is empty.
std::optional<Angle> read_angle(ReadingsRow& row, std::string_view column) {
    const std::string_view text = row.text(column);
    if (row.problem || text.empty()) {
        return {};
    }
    const Result<Angle> angle = parse_degrees(text);
    if (!angle) {
        row.refuse(column, angle.problem().what.english(), angle.problem().mend.english());
        return {};
    }
    if (*angle == Angle()) {
        row.refuse(column, quoted(text) + " is no corner: both edges would lie on one another.",
                   "Write the plan angle inside the building, above 0 and below 360 degrees.");
        return {};
    }
    return *angle;
}

/// The angle of the corner there, turning the way that the end says. A hip and a valley have the
/// angle of the eaves at their foot; a valley's may be given from outside too.
std::optional<Angle> read_corner(ReadingsRow& row, Side side, const Edge& edge) {
    const std::string_view column = side == Side::left ? "corner_left" : "corner_right";
    const auto angle = read_angle(row, column);
    if (!angle) {
        return {};
    }
    const End end = end_at(edge, side);
    const bool over_corner = stands_over_corner(edge.kind);
    const bool hip = over_corner && turns_out(edge.kind), valley = over_corner && !hip;
    const bool out = hip || end == End::corner_out;
    if (!over_corner && end != End::corner_out && end != End::corner_in) {
        row.refuse(column, quoted(row.text(column)) + " stands where the edge has no corner.",
                   "Leave the cell empty, or make that end a corner.");
    } else if (*angle == half_turn) {
        row.refuse(column, quoted(row.text(column)) + " is no corner: the wall runs straight on.",
                   "Write the angle inside the building, or leave the corner out.");
    } else if (!valley && out != (*angle < half_turn)) {
        row.refuse(
            column,
            quoted(row.text(column)) + (out ? " is no outside corner: that is under 180 degrees."
                                            : " is no inside corner: that is over 180 degrees."),
            "Write the angle inside the building, or the other kind of corner.");
    }
    return angle;
}

/// The outline of a roof may have any kind of end and any corner, even where nothing can be
/// planned.
void read_outline_end(ReadingsRow& row, std::string_view column, End& into) {
    const auto end = end_of(row.text(column));
    if (row.problem || end) {
        into = end.value_or(into);
        return;
    }
    row.refuse_word(column,
                    "Write gable, corner_out, corner_in, wall, open, eave, ridge, hip or valley.");
}

void read_ends(ReadingsRow& row, Edge& edge) {
    if (row.rows_for == RowsFor::outline) {
        read_outline_end(row, "left", edge.left);
        read_outline_end(row, "right", edge.right);
        edge.corner_left = read_angle(row, "corner_left");
        edge.corner_right = read_angle(row, "corner_right");
        return;
    }
    read_end(row, Side::left, edge);
    read_end(row, Side::right, edge);
    edge.corner_left = read_corner(row, Side::left, edge);
    edge.corner_right = read_corner(row, Side::right, edge);
}

}  // namespace

std::variant<EdgeReading, TableProblem> read_row(const Table& table, const std::vector<Cell>& cells,
                                                 const Catalogue& catalogue,
                                                 std::optional<BareUnit> bare, RowsFor rows_for) {
    ReadingsRow row{table, cells, catalogue, bare, rows_for, {}};
    EdgeReading reading;
    Edge& edge = reading.edge;
    reading.line = row.cells.front().line;
    read_name(row, edge);
    read_kind(row, edge);
    read_trim(row, edge);
    if (rows_for == RowsFor::plan && !row.problem && row.text("length").empty()) {
        row.refuse("length", "is empty.", "Write the edge's length, as in 31 ft 7 5/8 in.");
    }
    reading.length = read_length(row, "length").value_or(Length());
    read_ends(row, edge);
    edge.pitch = read_slope(row, "pitch");
    read_word(row, "first", side_of, edge.first, "Write left or right, or leave the cell empty.");
    reading.first_said = !row.text("first").empty();
    read_word(row, "looks", looks_of, edge.looks,
              "Write balanced or free, or leave the cell empty.");
    read_word(row, "seam", seam_of, edge.seam,
              "Write snap_lock, mechanical or nail_strip, or leave the cell empty.");
    read_word(row, "fascia", fascia_of, edge.fascia,
              "Write plumb or square, or leave the cell empty.");
    edge.metal = row.text("metal");
    edge.colour = row.text("colour");
    edge.thickness = read_length(row, "thickness");
    edge.face = read_length(row, "face");
    edge.flange = read_length(row, "flange");
    edge.lap = read_length(row, "lap");
    edge.pitch2 = read_slope(row, "pitch2");
    reading.expected = row.text("expected") == "yes";
    if (!row.problem && !reading.expected && !row.text("expected").empty()) {
        row.refuse_word("expected",
                        "Write yes where the length was worked out, or leave it empty.");
    }
    if (row.problem) {
        return *row.problem;
    }
    return reading;
}

}  // namespace hemline
