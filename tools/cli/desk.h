// A readings file laid out as a job: the same events a tablet would have written, never saved.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/handover/readings_file.h"
#include "engine/plan/make_plan.h"
#include "engine/record/event.h"
#include "engine/record/job.h"
#include "field/store/assets.h"
#include "tools/cli/arguments.h"

namespace hemline {

/// The rows of a readings file; says on stderr what is wrong with it.
std::optional<std::vector<EdgeReading>> read_rows(const std::string& file, const Assets& assets,
                                                  std::optional<BareUnit> unit);

/// How a length of a file counts: at a desk as agreed, on a job as a first reading.
enum class LengthsAre { agreed, first_readings };

/// Each edge with its pitch, and its length as a single reading or as two that agree; an expected
/// length is no reading.
std::vector<Fact> facts_of(std::span<const EdgeReading> rows, LengthsAre lengths);

struct Desk {
    Job job;
    Plan plan;
    Table table;  ///< the file's cells, to say where a problem is
    Marks marks = Marks::sixteenth;
    Catalogue catalogue = {};
    Sections sections = {};
    std::vector<std::string> expected = {};  ///< edges whose length was worked out, not measured
};

/// How a readings file is planned: all choices, in the asked order.
PlanOptions options_of(const DeskArguments& arguments);

/// Reads the file, or the job in its place; a file is folded into a job under the asked style and
/// stock, and plans it; says on stderr why it could not. With `--unit mm` cuts lie on whole
/// millimeters.
std::optional<Desk> lay_out(const DeskArguments& arguments, const Assets& assets);

/// Line and column of a field of an edge's row; the row's first cell where the field has no column.
struct TablePlace {
    int line = 0, column = 0;
};
TablePlace place_of(const Table& table, std::string_view edge, std::string_view field);

}  // namespace hemline
