#include "tools/cli/desk.h"

#include <algorithm>

#include "engine/roof/edge_shape.h"
#include "engine/words/result.h"
#include "engine/work/job_sections.h"
#include "tools/cli/complaint.h"
#include "tools/cli/given_job.h"
#include "tools/cli/input_file.h"
#include "tools/cli/pieces_file.h"
#include "tools/cli/print.h"

namespace hemline {
namespace {

/// Practice as asked for on the command line.
Result<Practice> practice_for(const DeskArguments& arguments, const Practice& defaults) {
    Practice practice = defaults;
    if (arguments.unit == BareUnit::millimetre) {
        practice.cut_grid = millimetres(1);
    }
    if (arguments.stock.empty()) {
        return practice;
    }
    const Result<Length> stock = parse_length(arguments.stock, arguments.unit);
    if (!stock) {
        return stock.problem();
    }
    practice.stock = *stock;
    if (practice.stock <= practice.lap) {
        return Problem{
            say("A stick of {1} is no longer than the lap of {2}.", *stock, practice.lap),
            say("Give the length of the sticks you buy, as \"10 ft\".")};
    }
    return practice;
}

std::vector<Event> events_of(const std::vector<Fact>& facts) {
    std::vector<Event> events;
    for (const Fact& fact : facts) {
        const auto sequence = static_cast<std::uint32_t>(events.size() + 1);
        events.push_back({{0, sequence}, {0, sequence}, "", {}, fact});
    }
    return events;
}

std::optional<std::string> text_of(const std::string& file) {
    const Result<std::string> text = read_input_file(file);
    if (!text) {
        complain(file, 0, 0, text.problem());
        return {};
    }
    return *text;
}

/// Past any roof: more would fill the memory with pieces before anybody could read them.
constexpr std::int64_t metres_most = 100'000;

std::optional<TableProblem> past_any_roof(const std::vector<EdgeReading>& rows) {
    Length all;
    for (const EdgeReading& row : rows) {
        all += row.length;
        if (all > millimetres(metres_most * 1000)) {
            return TableProblem{row.line, 1,
                                "The edges up to this row are together longer than 100 km.",
                                "Give one roof's edges a file, and look at the units."};
        }
    }
    return {};
}

std::optional<std::vector<EdgeReading>> rows_in(const std::string& text, const std::string& file,
                                                const Assets& assets,
                                                std::optional<BareUnit> unit) {
    auto rows = read_readings(text, assets.catalogue, unit);
    if (const auto* problem = std::get_if<TableProblem>(&rows)) {
        complain(file, *problem);
        return {};
    }
    if (const auto problem = past_any_roof(std::get<0>(rows))) {
        complain(file, *problem);
        return {};
    }
    return std::get<0>(std::move(rows));
}

}  // namespace

std::optional<std::vector<EdgeReading>> read_rows(const std::string& file, const Assets& assets,
                                                  std::optional<BareUnit> unit) {
    const std::optional<std::string> text = text_of(file);
    return text ? rows_in(*text, file, assets, unit) : std::nullopt;
}

std::vector<Fact> facts_of(std::span<const EdgeReading> rows, LengthsAre lengths) {
    std::vector<Fact> facts;
    for (const EdgeReading& row : rows) {
        facts.emplace_back(EdgeAdded{row.edge});
        // Left is also what an empty cell means: the wind may turn that, and not what was said.
        if (row.first_said && row.edge.first == Side::left && !is_sloped(row.edge.kind)) {
            facts.emplace_back(
                RuleSet{"first." + row.edge.id, std::string(word_of(row.edge.first))});
        }
        if (row.edge.lap) {
            facts.emplace_back(LapChosen{row.edge.id, row.edge.lap});
        }
        const ReadingTaken reading{row.edge.id, ReadingOf::edge, row.length};
        const int first = row.expected ? 0 : 1;
        facts.insert(facts.end(), lengths == LengthsAre::agreed ? 2 : first, reading);
    }
    return facts;
}

PlanOptions options_of(const DeskArguments& arguments) {
    PlanOptions options{arguments.wrap, arguments.cleat};
    options.prefer = arguments.prefer;
    options.choices = ListedChoices::all;
    return options;
}

namespace {

/// As the job itself says: its rules, its sticks, how its edges are divided; with `--stock` new
/// sticks of another length.
std::optional<Desk> lay_out_job(const DeskArguments& arguments, const Assets& assets) {
    if (arguments.style) {
        complain("--style", 1, 1, "A job says for itself how its edges are divided.",
                 "Leave --style out, or choose it on the tablet.");
        return {};
    }
    auto job = read_given_job(arguments.readings, assets.practice);
    if (!job) {
        return {};
    }
    if (!arguments.stock.empty()) {
        const Result<Length> stock = parse_length(arguments.stock, arguments.unit);
        const Result<Practice> practice =
            stock ? with_stock(job->practice, *stock) : Result<Practice>(stock.problem());
        if (!practice) {
            complain("--stock", practice.problem());
            return {};
        }
        job->practice = *practice;
    }
    const Marks marks = marks_for(arguments.unit, job->practice);
    Desk desk{std::move(*job), {}, {}, marks, assets.catalogue, assets.sections, {}};
    desk.catalogue = catalogue_on(assets.catalogue, assets.sections, desk.job);
    desk.plan = make_plan(desk.job, desk.catalogue, options_of(arguments));
    return desk;
}

}  // namespace

std::optional<Desk> lay_out(const DeskArguments& arguments, const Assets& assets) {
    if (is_job(arguments.readings)) {
        return lay_out_job(arguments, assets);
    }
    const Result<Practice> practice = practice_for(arguments, assets.practice);
    if (!practice) {
        complain("--stock", practice.problem());
        return {};
    }
    const std::optional<std::string> text = text_of(arguments.readings);
    auto rows = text ? rows_in(*text, arguments.readings, assets, arguments.unit) : std::nullopt;
    if (!rows) {
        return {};
    }
    std::vector<Fact> facts;
    for (EdgeReading& row : *rows) {
        row.edge.wrap = arguments.wrap &&
                        assets.catalogue.default_for(row.edge.kind, TrimRole::wrap) != nullptr;
        if (arguments.style) {
            facts.emplace_back(StyleChosen{row.edge.id, *arguments.style});
        }
    }
    const std::vector<Fact> edges = facts_of(*rows, LengthsAre::agreed);
    facts.insert(facts.begin(), edges.begin(), edges.end());
    Desk desk{replay(events_of(facts), *practice),
              {},
              {},
              marks_for(arguments.unit, *practice),
              assets.catalogue,
              assets.sections,
              {}};
    for (const EdgeReading& row : *rows) {
        if (row.expected) {
            desk.expected.push_back(row.edge.id);
        }
    }
    desk.plan = make_plan(desk.job, assets.catalogue, options_of(arguments));
    if (arguments.style) {
        desk.plan.choices.clear();  // each run is as asked for
    }
    if (auto table = read_table(*text); std::holds_alternative<Table>(table)) {
        desk.table = std::get<Table>(std::move(table));
    }
    return desk;
}

TablePlace place_of(const Table& table, std::string_view edge, std::string_view field) {
    const auto ids = table.column("edge");
    if (!ids) {
        return {};
    }
    const std::size_t id = *ids;
    const auto row = std::find_if(table.rows.begin(), table.rows.end(), [&](const auto& cells) {
        return without_spaces(cells[id].text) == edge;
    });
    if (row == table.rows.end()) {
        return {};
    }
    const auto column = table.column(field);
    const Cell& cell = (*row)[column.value_or(id)];
    return {cell.line, column ? cell.column : 0};
}

}  // namespace hemline
