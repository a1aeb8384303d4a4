#include "engine/trim/catalogue.h"

#include <algorithm>

#include "engine/measure/length_text.h"
#include "engine/roof/edge_shape.h"
#include "engine/trim/practice.h"
#include "engine/words/csv.h"
#include "engine/words/quote.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

constexpr std::array<std::string_view, 3> role_words = {"main", "wrap", "cleat"};
constexpr std::array<std::string_view, 4> leg_words = {"flange", "face", "kick", "hem"};
constexpr std::string_view strip_word = "strip";
constexpr std::array<std::string_view, 2> panel_words = {"under", "over"};
constexpr std::array<std::string_view, 13> columns = {"id",     "name",  "kind",  "role", "panels",
                                                      "flange", "face",  "kick",  "hem",  "least",
                                                      "most",   "seams", "source"};

/// One row of the file, its cells found by name.
struct Row {
    const Table& table;
    const std::vector<Cell>& cells;

    [[nodiscard]] const std::string& operator[](std::string_view name) const {
        return cell(name).text;
    }
    [[nodiscard]] const Cell& cell(std::string_view name) const {
        const auto index = table.column(name);
        require(index.has_value(), "a catalogue column that was checked is there");
        return cells[*index];
    }
    [[nodiscard]] Problem problem(std::string_view name, const std::string& what,
                                  std::string mend) const {
        const Cell& at = cell(name);
        return said_of(
            TableProblem{at.line, at.column, std::string(name) + " " + what, std::move(mend)});
    }
};

std::optional<Problem> check_columns(const Table& table) {
    for (const std::string_view name : columns) {
        if (!table.column(name)) {
            return Problem{Text("Line 1: the catalogue has no column " + quoted(name) + "."),
                           Text("Add the column to the header and to every row.")};
        }
    }
    if (table.header.size() != columns.size()) {
        return Problem{
            Text("Line 1: the catalogue has a column it does not know."),
            Text("Keep to id,name,kind,role,panels,flange,face,kick,hem,least,most,seams,source.")};
    }
    return {};
}

std::optional<Problem> read_words(const Row& row, Trim& trim) {
    trim.id = row["id"];
    trim.name = row["name"];
    trim.source = row["source"];
    for (const std::string_view name : {"id", "name", "source"}) {
        if (row[name].empty()) {
            return row.problem(name, "is empty.", "Fill it in for every trim.");
        }
    }
    if (row["role"] == strip_word) {
        return {};
    }
    for (std::size_t i = 0; i < role_words.size(); ++i) {
        if (role_words[i] == row["role"]) {
            trim.role = static_cast<TrimRole>(i);
            return {};
        }
    }
    return row.problem("role", quoted(row["role"]) + " is no part a trim plays.",
                       "Write main, wrap, cleat or strip.");
}

std::optional<Problem> read_panels(const Row& row, Trim& trim) {
    for (std::size_t i = 0; i < panel_words.size(); ++i) {
        if (panel_words[i] == row["panels"]) {
            trim.panels = static_cast<Panels>(i);
            return {};
        }
    }
    return row.problem("panels", quoted(row["panels"]) + " does not say where the trim lies.",
                       "Write under where the panels lie on it, over where it lies on them.");
}

/// The words of a cell, with spaces between.
std::vector<std::string_view> words_of(std::string_view rest) {
    std::vector<std::string_view> words;
    while (!rest.empty()) {
        const std::size_t space = rest.find(' ');
        if (space != 0) {
            words.push_back(rest.substr(0, space));
        }
        rest = space == std::string_view::npos ? std::string_view{} : rest.substr(space + 1);
    }
    return words;
}

/// "eave", or "eave gable": the kinds of edge it is made for, its main kind first.
std::optional<Problem> read_kinds(const Row& row, Trim& trim) {
    std::vector<EdgeKind> kinds;
    for (const std::string_view word : words_of(row["kind"])) {
        const auto kind = edge_kind_of(word);
        if (!kind) {
            return row.problem("kind", quoted(word) + " is no kind of edge.",
                               "Write " + words_of_kinds_with_run() + ".");
        }
        kinds.push_back(*kind);
    }
    if (kinds.empty()) {
        return row.problem("kind", "is empty.", "Name the kind of edge that the trim serves.");
    }
    trim.kind = kinds.front();
    trim.also.assign(kinds.begin() + 1, kinds.end());
    return {};
}

std::optional<Problem> read_legs(const Row& row, Trim& trim) {
    for (std::size_t i = 0; i < leg_words.size(); ++i) {
        const std::string& text = row[leg_words[i]];
        if (text.empty()) {
            continue;
        }
        const bool as_seam = text == seam_height_word;
        const Result<Length> width =
            as_seam ? Result<Length>(Practice().seam_height) : parse_length(text);
        if (!width) {
            return row.problem(leg_words[i], width.problem().what.english(),
                               width.problem().mend.english());
        }
        if (*width == Length()) {
            return row.problem(leg_words[i], quoted(text) + " is zero.",
                               "Leave the cell empty where the trim has no such leg.");
        }
        trim.legs.push_back({static_cast<LegName>(i), *width, as_seam});
    }
    if (trim.legs.empty()) {
        return row.problem("face", "and every other leg is empty.", "Give the trim a leg.");
    }
    return {};
}

std::optional<Problem> read_limit(const Row& row, std::string_view name,
                                  std::optional<Slope>& limit) {
    if (row[name].empty()) {
        return {};
    }
    const Result<Slope> slope = parse_slope(row[name]);
    if (!slope) {
        return row.problem(name, slope.problem().what.english(), slope.problem().mend.english());
    }
    limit = *slope;
    return {};
}

/// "snap_lock mechanical": words with spaces between.
std::optional<Problem> read_seams(const Row& row, Trim& trim) {
    for (const std::string_view word : words_of(row["seams"])) {
        const auto seam = seam_of(word);
        if (!seam) {
            return row.problem("seams", quoted(word) + " is no kind of seam.",
                               "Write snap_lock, mechanical or nail_strip, with spaces between.");
        }
        trim.seams.push_back(*seam);
    }
    if (trim.seams.empty()) {
        return row.problem("seams", "is empty.", "Name the panels that the trim serves.");
    }
    return {};
}

Result<Trim> read_trim(const Row& row) {
    Trim trim;
    std::optional<Problem> problem = read_words(row, trim);
    problem = problem ? problem : read_panels(row, trim);
    problem = problem ? problem : read_kinds(row, trim);
    problem = problem ? problem : read_legs(row, trim);
    problem = problem ? problem : read_limit(row, "least", trim.least);
    problem = problem ? problem : read_limit(row, "most", trim.most);
    problem = problem ? problem : read_seams(row, trim);
    if (problem) {
        return *problem;
    }
    if (trim.least && trim.most && rise_in_12_of(*trim.least) > rise_in_12_of(*trim.most)) {
        return row.problem("least", quoted(row["least"]) + " is steeper than most.",
                           "Exchange the two limits.");
    }
    return trim;
}

Strip strip_of(const Trim& trim) {
    Strip strip{trim.id, trim.name, trim.also, trim.panels, trim.legs, trim.source};
    strip.kinds.push_back(trim.kind);
    return strip;
}

Length sum_of(const std::vector<Leg>& legs) {
    Length sum;
    for (const Leg& leg : legs) {
        sum += leg.width;
    }
    return sum;
}

}  // namespace

Result<Catalogue> Catalogue::read(std::string_view csv) {
    const auto read = read_table(csv);
    if (const auto* problem = std::get_if<TableProblem>(&read)) {
        return said_of(*problem);
    }
    const Table& table = *std::get_if<Table>(&read);
    if (auto problem = check_columns(table)) {
        return *problem;
    }
    Catalogue catalogue;
    for (const auto& cells : table.rows) {
        const Row row{table, cells};
        Result<Trim> trim = read_trim(row);
        if (!trim) {
            return trim.problem();
        }
        const bool is_strip = std::any_of(catalogue.strips_.begin(), catalogue.strips_.end(),
                                          [&](const Strip& strip) { return strip.id == trim->id; });
        if (is_strip || catalogue.find(trim->id) != nullptr) {
            return row.problem("id", quoted(trim->id) + " stands there twice.",
                               "Give every trim an id of its own.");
        }
        if (row["role"] == strip_word) {
            catalogue.strips_.push_back(strip_of(*trim));
            continue;
        }
        catalogue.trims_.push_back(*trim);
    }
    return catalogue;
}

void Catalogue::put(const Trim& trim) {
    std::replace_if(
        trims_.begin(), trims_.end(), [&](const Trim& own) { return own.id == trim.id; }, trim);
}

void Catalogue::put_seam_height(Length height) {
    const auto set = [height](std::vector<Leg>& legs) {
        for (Leg& leg : legs) {
            leg.width = leg.as_seam ? height : leg.width;
        }
    };
    for (Trim& trim : trims_) {
        set(trim.legs);
    }
    for (Strip& strip : strips_) {
        set(strip.legs);
    }
}

const Strip* Catalogue::strip_for(const Edge& edge) const {
    const Trim* const trim = of(edge);
    const bool both_ways = std::any_of(trims_.begin(), trims_.end(), [&](const Trim& other) {
        return trim != nullptr && serves(other, edge.kind) && other.role == TrimRole::main &&
               other.panels != trim->panels;
    });
    for (const Strip& strip : strips_) {
        const bool serves_it =
            std::find(strip.kinds.begin(), strip.kinds.end(), edge.kind) != strip.kinds.end();
        if (serves_it && trim != nullptr && (!both_ways || strip.panels == trim->panels)) {
            return &strip;
        }
    }
    return nullptr;
}

const Trim* Catalogue::find(std::string_view id) const {
    for (const Trim& trim : trims_) {
        if (trim.id == id) {
            return &trim;
        }
    }
    return nullptr;
}

const Trim* Catalogue::default_for(EdgeKind kind, TrimRole role) const {
    for (const Trim& trim : trims_) {
        if (serves(trim, kind) && trim.role == role) {
            return &trim;
        }
    }
    return nullptr;
}

const Trim* Catalogue::of(const Edge& edge) const {
    if (!edge.trim.empty()) {
        return find(edge.trim);
    }
    if (must_lie_over(edge)) {
        for (const Trim& trim : trims_) {
            if (trim.panels == Panels::over && trim.role == TrimRole::main &&
                serves(trim, edge.kind)) {
                return &trim;
            }
        }
    }
    return default_for(edge.kind);
}

bool must_lie_over(const Edge& edge) {
    return edge.kind == EdgeKind::sidewall && edge.left == End::corner_out;
}

bool serves(const Trim& trim, EdgeKind kind) {
    return trim.kind == kind ||
           std::find(trim.also.begin(), trim.also.end(), kind) != trim.also.end();
}

Length leg_width(const Trim& trim, LegName name) {
    for (const Leg& leg : trim.legs) {
        if (leg.name == name) {
            return leg.width;
        }
    }
    return {};
}

Length girth(const Trim& trim) { return sum_of(trim.legs); }
Length girth(const Strip& strip) { return sum_of(strip.legs); }

Trim fitted_to(Trim trim, const Edge& edge) {
    for (Leg& leg : trim.legs) {
        if (leg.name == LegName::face && edge.face) {
            leg.width = *edge.face;
        }
        if (leg.name == LegName::flange && edge.flange) {
            leg.width = *edge.flange;
        }
    }
    return trim;
}

std::string_view word_of(TrimRole role) {
    const auto index = static_cast<std::size_t>(role);
    require(index < role_words.size(), "a role has a word");
    return role_words[index];
}

std::string_view word_of(Panels panels) { return panel_words[static_cast<std::size_t>(panels)]; }

Text spoken(LegName name) {
    switch (name) {
        case LegName::flange:
            return say("flange");
        case LegName::face:
            return say("face");
        case LegName::kick:
            return say("kick");
        case LegName::hem:
            break;
    }
    return say("hem");
}

std::string_view word_of(LegName name) {
    const auto index = static_cast<std::size_t>(name);
    require(index < leg_words.size(), "a leg has a word");
    return leg_words[index];
}

}  // namespace hemline
