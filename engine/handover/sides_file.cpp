#include "engine/handover/sides_file.h"

#include <algorithm>
#include <array>

#include "engine/measure/angle_text.h"
#include "engine/words/quote.h"
#include "engine/words/result.h"
#include "engine/words/shown_text.h"

namespace hemline {

namespace {

constexpr std::array<std::string_view, 5> sides_columns = {"side", "kind", "length", "corner",
                                                           "pitch"};
constexpr std::array<std::string_view, 6> optional_sides_columns = {
    "body", "host", "host_along", "host_up", "host_rise", "meets"};

std::optional<TableProblem> check_sides_columns(const Table& table) {
    for (const Cell& cell : table.header) {
        const auto is_it = [&](std::string_view name) { return cell.text == name; };
        if (std::none_of(sides_columns.begin(), sides_columns.end(), is_it) &&
            std::none_of(optional_sides_columns.begin(), optional_sides_columns.end(), is_it)) {
            return TableProblem{cell.line, cell.column,
                                "The column " + quoted(cell.text) + " is not known.",
                                "Take it out, or mend its name: side, kind, length, corner, pitch; "
                                "and if needed body, host, host_along, host_up, host_rise, meets."};
        }
    }
    for (const std::string_view name : sides_columns) {
        if (!table.column(name)) {
            return TableProblem{table.header.front().line, 1,
                                "The column " + quoted(name) + " is missing from the header.",
                                "Add the column to the header and to every row."};
        }
    }
    return {};
}

/// A row being read into a side; the first problem is kept.
struct SidesRow {
    const Table& table;
    const std::vector<Cell>& cells;
    std::optional<BareUnit> bare;
    std::optional<TableProblem> problem;

    [[nodiscard]] const Cell& cell(std::string_view column) const {
        return cells[table.column(column).value_or(0)];
    }
    /// Empty where the column is not there.
    [[nodiscard]] std::string text(std::string_view column) const {
        return table.column(column) ? cell(column).text : "";
    }
    void refuse(std::string_view column, const std::string& why, std::string mend) {
        if (!problem) {
            problem = TableProblem{cell(column).line, cell(column).column,
                                   std::string(column) + " " + why, std::move(mend)};
        }
    }
    void refuse(std::string_view column, const Problem& why) {
        refuse(column, why.what.english(), why.mend.english());
    }
    /// The column's value; none where it is empty.
    template <class T, class Parse>
    std::optional<T> value(std::string_view column, const Parse& parse) {
        if (text(column).empty()) {
            return {};
        }
        const Result<T> parsed = parse(text(column));
        if (!parsed) {
            refuse(column, parsed.problem());
            return {};
        }
        return *parsed;
    }
};

void read_side_name(SidesRow& row, const SidesFile& before, BodySide& side) {
    side.id = row.text("side");
    if (side.id.empty() || side.id.size() > 40 || !is_plain(side.id)) {
        row.refuse("side", quoted(side.id) + " is no name.", "Give every side a name, such as A.");
    }
    if (before.lines.count(side.id) > 0) {
        row.refuse("side",
                   quoted(side.id) + " stands there already, in line " +
                       std::to_string(before.lines.at(side.id)) + ".",
                   "Give every side a name of its own.");
    }
}

/// The pitch of the eave before, of whichever body.
std::optional<Slope> pitch_before(const SidesFile& before) {
    std::optional<Slope> pitch;
    for (const RoofBody& body : before.bodies) {
        for (const BodySide& side : body.sides) {
            pitch = side.pitch ? side.pitch : pitch;
        }
    }
    return pitch;
}

void read_side_pitch(SidesRow& row, const SidesFile& before, BodySide& side) {
    side.pitch = row.value<Slope>("pitch", parse_slope);
    if (is_upright(side.kind) && side.pitch) {
        row.refuse("pitch", "is that of an upright side.",
                   "Leave it empty: the pitch is said of the eave.");
    } else if (!is_upright(side) && !side.pitch) {
        side.pitch = pitch_before(before);
        if (!side.pitch) {
            row.refuse("pitch", "is empty, and no eave before has one.",
                       "Give the pitch of the first eave.");
        }
    }
}

BodySide read_side(SidesRow& row, const SidesFile& before) {
    BodySide side;
    read_side_name(row, before, side);
    const std::optional<SideKind> kind = side_kind_of(row.text("kind"));
    if (!kind) {
        row.refuse("kind", quoted(row.text("kind")) + " is not a word for it.",
                   "Write eave, gable, wall, high_eave, open or transition.");
    }
    side.kind = kind.value_or(SideKind::eave);
    side.length = row.value<Length>(
        "length", [&](const std::string& text) { return parse_length(text, row.bare); });
    if (side.length && *side.length <= Length()) {
        row.refuse("length", quoted(row.text("length")) + " is zero.", "Give a length above zero.");
    }
    side.corner = row.value<Angle>("corner", parse_degrees).value_or(square_out);
    side.meets = row.text("meets");
    if (!side.meets.empty() && side.kind != SideKind::transition) {
        row.refuse("meets", "stands at a side that is no transition.",
                   "Say transition for the side, or leave it empty.");
    }
    read_side_pitch(row, before, side);
    return side;
}

/// A length that may be 0, or below it: parse_length() reads no sign.
std::optional<Length> read_signed(SidesRow& row, std::string_view column) {
    std::string text = row.text(column);
    const bool below = !text.empty() && text.front() == '-';
    if (text.empty() || text == "0" || text == "-0") {
        return Length();
    }
    const Result<Length> parsed = parse_length(below ? text.substr(1) : text, row.bare);
    if (!parsed) {
        row.refuse(column, parsed.problem());
        return {};
    }
    return below ? -*parsed : *parsed;
}

/// Empty host_along, host_up and host_rise are 0.
std::optional<RunsInto> read_host(SidesRow& row, bool first_of_body) {
    constexpr std::array<std::string_view, 3> where = {"host_along", "host_up", "host_rise"};
    const std::string eave = row.text("host");
    for (const std::string_view column : where) {
        if (eave.empty() && !row.text(column).empty()) {
            row.refuse(column, "stands in a row without a host.",
                       "Name the host's eave in the column host, or leave it empty.");
        }
    }
    if (eave.empty()) {
        return {};
    }
    if (!first_of_body) {
        row.refuse("host", "stands in a later row of its body.",
                   "Say it in the first row of the body, and leave the others empty.");
    }
    RunsInto host = {eave, {}, {}, {}};
    host.along = read_signed(row, "host_along").value_or(Length());
    host.up = read_signed(row, "host_up").value_or(Length());
    host.rise = read_signed(row, "host_rise").value_or(Length());
    return host;
}

/// The body that the row is of: the last one, or a new one.
RoofBody& body_of_row(SidesRow& row, SidesFile& file) {
    const std::string name = row.text("body");
    if (!is_plain(name) || name.size() > 40) {
        row.refuse("body", quoted(name) + " is no name.", "Give every body a name, such as porch.");
    }
    if (file.bodies.empty() || file.bodies.back().name != name) {
        for (const RoofBody& body : file.bodies) {
            if (body.name == name) {
                row.refuse("body", quoted(name) + " comes again after another body's rows.",
                           "Put the rows of one body one after the other.");
            }
        }
        file.bodies.push_back({name, {}, {}});
    }
    return file.bodies.back();
}

}  // namespace

std::variant<SidesFile, TableProblem> read_sides(std::string_view csv,
                                                 std::optional<BareUnit> bare) {
    auto read = read_table(csv);
    if (auto* problem = std::get_if<TableProblem>(&read)) {
        return *problem;
    }
    const Table& table = *std::get_if<Table>(&read);
    if (auto problem = check_sides_columns(table)) {
        return *problem;
    }
    SidesFile file;
    for (const std::vector<Cell>& cells : table.rows) {
        SidesRow row = {table, cells, bare, {}};
        BodySide side = read_side(row, file);
        RoofBody& body = body_of_row(row, file);
        if (const std::optional<RunsInto> host = read_host(row, body.sides.empty())) {
            body.host = host;
        }
        if (row.problem) {
            return *row.problem;
        }
        file.lines[side.id] = row.cell("side").line;
        body.sides.push_back(std::move(side));
    }
    return file;
}

int line_named(const SidesFile& file, const Problem& problem) {
    for (const Text& value : problem.what.values) {
        const std::string words = value.english();
        const std::string name = words.substr(0, words.find(','));
        if (const auto row = file.lines.find(name); row != file.lines.end()) {
            return row->second;
        }
        for (const RoofBody& body : file.bodies) {
            if (body.name == name && !body.sides.empty()) {
                return file.lines.at(body.sides.front().id);
            }
        }
    }
    return 2;
}

}  // namespace hemline
