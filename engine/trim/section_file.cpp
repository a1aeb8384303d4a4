// Reads assets/catalogue/sections.csv: one row for each leg, its cells found by name.
#include <algorithm>
#include <array>

#include "engine/measure/angle_text.h"
#include "engine/measure/length_text.h"
#include "engine/trim/practice.h"
#include "engine/trim/section.h"
#include "engine/words/csv.h"
#include "engine/words/quote.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

constexpr std::array<std::string_view, 11> leg_columns = {"trim",      "leg",     "width", "bend",
                                                          "radius",    "hem",     "lies",  "metal",
                                                          "thickness", "painted", "source"};

struct LegRow {
    const Table& table;
    const std::vector<Cell>& cells;

    [[nodiscard]] const Cell& cell(std::string_view name) const {
        const auto index = table.column(name);
        require(index.has_value(), "a column that was checked is there");
        return cells[*index];
    }
    [[nodiscard]] const std::string& operator[](std::string_view name) const {
        return cell(name).text;
    }
    [[nodiscard]] Problem problem(std::string_view name, const std::string& what,
                                  std::string mend) const {
        const Cell& at = cell(name);
        return said_of(
            TableProblem{at.line, at.column, std::string(name) + " " + what, std::move(mend)});
    }
};

/// The value of type `Word` whose word stands in the cell; the first of `count` is 0.
template <class Word>
std::optional<Word> value_of(std::string_view text, int count) {
    for (int i = 0; i < count; ++i) {
        if (word_of(static_cast<Word>(i)) == text) {
            return static_cast<Word>(i);
        }
    }
    return {};
}

std::optional<Problem> read_length(const LegRow& row, std::string_view name, Length& into) {
    const Result<Length> length = parse_length(row[name]);
    if (!length) {
        return row.problem(name, length.problem().what.english(), length.problem().mend.english());
    }
    into = *length;
    return {};
}

std::optional<Problem> read_bend(const LegRow& row, BendRule& bend) {
    const std::string& text = row["bend"];
    bend.fold_of = edge_kind_of(text);
    if (bend.fold_of) {
        return {};
    }
    const bool negative = !text.empty() && text.front() == '-';
    const auto angle = parse_degrees(std::string_view(text).substr(negative ? 1 : 0));
    if (!angle) {
        return row.problem("bend", quoted(text) + " is no bend.",
                           "Write degrees as 90 or -30, or the kind of edge whose fold it is.");
    }
    bend.angle = negative ? -*angle : *angle;
    return {};
}

std::optional<Problem> read_leg_words(const LegRow& row, SectionLeg& leg) {
    const auto name = value_of<LegName>(row["leg"], 4);
    if (!name) {
        return row.problem("leg", quoted(row["leg"]) + " is no leg.",
                           "Write flange, face, kick or hem.");
    }
    const auto hem = row["hem"].empty() ? Hem::none : value_of<Hem>(row["hem"], 4);
    if (!hem) {
        return row.problem("hem", quoted(row["hem"]) + " is no kind of hem.",
                           "Write open, closed or tear_drop, or leave it empty.");
    }
    const auto lies = row["lies"].empty() ? LiesOn::nothing : value_of<LiesOn>(row["lies"], 4);
    if (!lies) {
        return row.problem("lies", quoted(row["lies"]) + " is nothing a leg lies on.",
                           "Write deck, wall or fascia, or leave it empty.");
    }
    if (row["source"].empty()) {
        return row.problem("source", "is empty.",
                           "Name the source, or write common practice, no published source.");
    }
    leg.name = *name;
    leg.hem = *hem;
    leg.lies = *lies;
    leg.source = row["source"];
    return {};
}

std::optional<Problem> read_metal(const LegRow& row, Section& section) {
    if (row["metal"].empty()) {
        return row.problem("metal", "is empty.", "Name the metal at the trim's first leg.");
    }
    const auto painted = value_of<Painted>(row["painted"], 4);
    if (!painted) {
        return row.problem("painted", quoted(row["painted"]) + " is no face of the metal.",
                           "Write upper, under, both or none at the trim's first leg.");
    }
    section.metal = row["metal"];
    section.painted = *painted;
    return read_length(row, "thickness", section.thickness);
}

std::optional<Problem> check_blank(const LegRow& row, std::initializer_list<std::string_view> names,
                                   const std::string& why) {
    for (const std::string_view name : names) {
        if (!row[name].empty()) {
            return row.problem(name, why, "Leave the cell empty.");
        }
    }
    return {};
}

std::optional<Problem> read_leg(const LegRow& row, bool first, Section& section) {
    SectionLeg leg;
    std::optional<Problem> problem = read_leg_words(row, leg);
    leg.as_seam = row["width"] == seam_height_word;
    leg.width = Practice().seam_height;
    problem = problem || leg.as_seam ? problem : read_length(row, "width", leg.width);
    if (first) {
        problem = problem ? problem : read_metal(row, section);
        problem = problem ? problem
                          : check_blank(row, {"bend", "radius"},
                                        "stands at a trim's first leg, before which is no bend.");
    } else {
        problem = problem ? problem : read_bend(row, leg.bend);
        problem = problem ? problem
                          : check_blank(row, {"metal", "thickness", "painted"},
                                        "stands at the trim's first leg only.");
    }
    if (!problem && !row["radius"].empty()) {
        Length radius;
        problem = read_length(row, "radius", radius);
        leg.radius = radius;
    }
    section.legs.push_back(leg);
    return problem;
}

std::string_view field_of(const Section& section, int leg) {
    if (leg < 0) {
        return section.legs.size() > legs_most ? "leg" : "thickness";
    }
    const SectionLeg& wrong = section.legs[static_cast<std::size_t>(leg)];
    if (wrong.width <= Length()) {
        return "width";
    }
    return (wrong.hem != Hem::none) != (wrong.name == LegName::hem) ? "hem" : "bend";
}

/// The whole section once its last leg is read; the problem stands at the leg that is wrong.
std::optional<Problem> check_whole(const Table& table, const Section& section,
                                   std::size_t first_row) {
    int leg = -1;
    const auto problem = check_section(section, &leg);
    if (!problem) {
        return {};
    }
    const auto index = first_row + static_cast<std::size_t>(std::max(leg, 0));
    const LegRow row{table, table.rows[index]};
    return row.problem(field_of(section, leg), "is wrong. " + problem->what.english(),
                       problem->mend.english());
}

std::optional<Problem> check_leg_columns(const Table& table) {
    for (const std::string_view name : leg_columns) {
        if (!table.column(name)) {
            return Problem{Text("Line 1: the sections have no column " + quoted(name) + "."),
                           Text("Add the column to the header and to every row.")};
        }
    }
    if (table.header.size() != leg_columns.size()) {
        return Problem{Text("Line 1: the sections have a column that is not known."),
                       Text("Keep to trim,leg,width,bend,radius,hem,lies,metal,thickness,painted,"
                            "source.")};
    }
    return {};
}

}  // namespace

Result<Sections> Sections::read(std::string_view csv) {
    const auto read = read_table(csv);
    if (const auto* problem = std::get_if<TableProblem>(&read)) {
        return said_of(*problem);
    }
    const Table& table = *std::get_if<Table>(&read);
    if (auto problem = check_leg_columns(table)) {
        return *problem;
    }
    Sections sections;
    std::size_t first_row = 0;
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        const LegRow row{table, table.rows[i]};
        const std::string& trim = row["trim"];
        const bool first = sections.all_.empty() || sections.all_.back().trim != trim;
        if (first) {
            if (trim.empty() || sections.find(trim) != nullptr) {
                return row.problem("trim", trim.empty() ? "is empty." : "begins a second time.",
                                   "Keep all legs of one trim together, under its id.");
            }
            sections.all_.push_back({trim, "", {}, Painted::upper, {}});
            first_row = i;
        }
        Section& section = sections.all_.back();
        if (auto problem = read_leg(row, first, section)) {
            return *problem;
        }
        const bool last =
            i + 1 == table.rows.size() || LegRow{table, table.rows[i + 1]}["trim"] != trim;
        if (last) {
            if (auto problem = check_whole(table, section, first_row)) {
                return *problem;
            }
        }
    }
    return sections;
}

}  // namespace hemline
