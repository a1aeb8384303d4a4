// clang-format off
// The readings file: one row for each edge, as a desk or a laser app exports it.
//
//   edge,kind,trim,length,left,right,pitch            (any order; optional columns: first, looks, seam,
//   A,eave,,46 ft 0 1/4 in,gable,corner_out,5/12       metal, thickness, colour, fascia, face, flange,
//                                                      pitch2, corner_left, corner_right, lap, expected)
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
    bool first_said = false;  ///< the row says which side is fitted first, so the wind must not
    bool expected = false;    ///< worked out, not measured
};

/// What the rows are for. An outline needs no trims and may have any kind, end and corner; in it a
/// row without a length is an edge not read yet, with length 0.
enum class RowsFor { plan, outline };

/// Reads and checks every row. A repeated id, an unknown column, word, trim or unit, a length not
/// above 0 or past longest_readable(), a kind that has no trim in the catalogue yet: a problem with
/// its line, its column and what to do.
std::variant<std::vector<EdgeReading>, TableProblem> read_readings(
    std::string_view csv, const Catalogue& catalogue, std::optional<BareUnit> bare = {},
    RowsFor rows_for = RowsFor::plan);

}  // namespace hemline
