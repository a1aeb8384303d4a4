// clang-format off
// The readings file: one row an edge, as a desk or a laser app hands it over.
//
//   edge,kind,trim,length,left,right,pitch            (any order; optional columns: first, looks, seam,
//   A,eave,,46 ft 0 1/4 in,gable,corner_out,5/12       metal, thickness, colour, fascia, face, flange,
//                                                      pitch2, corner_left, corner_right, lap)
// clang-format on
#pragma once

#include <optional>
#include <string_view>
#include <variant>
#include <vector>

#include "engine/measure/length_text.h"
#include "engine/roof/edge.h"
#include "engine/trim/catalogue.h"
#include "engine/words/csv.h"

namespace hemline {

struct EdgeReading {
    Edge edge;
    Length length;
    int line = 0;
};

/// What the rows are wanted for. An outline needs no trims, and has any kind, end and corner; a row
/// without a length is an edge not read yet, its length 0.
enum class RowsFor { plan, outline };

/// Reads and checks every row. A repeated id, an unknown column, word, trim or unit, a length not
/// above 0 or past longest_readable(), a kind that has no trim in the catalogue yet: a problem with
/// its line, column, and mend.
std::variant<std::vector<EdgeReading>, TableProblem> read_readings(
    std::string_view csv, const Catalogue& catalogue, std::optional<BareUnit> bare = {},
    RowsFor rows_for = RowsFor::plan);

}  // namespace hemline
