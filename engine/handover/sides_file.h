// clang-format off
// The sides file: the walk round each body's eaves, the building on the left, one row for each side.
//
//   side,kind,length,corner,pitch           (any order)
//   A,eave,40 ft,,6/12                      kinds: eave, gable, wall, high_eave, open, transition
//   B,gable,24 ft,,                         length in plan along the side; empty: what closes the walk
//                                           corner inside, after this side; empty: 90
//                                           pitch of eaves and transitions; empty: as the eave before
//   optional: body                          rows of one body lie together
//             host, host_along, host_up, host_rise   on a body's first row: what it runs into
//             meets                         on a transition: the other body's eave that lies on it
// clang-format on
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "engine/body/roof.h"
#include "engine/measure/length_text.h"
#include "engine/words/csv.h"

namespace hemline {

struct SidesFile {
    std::vector<RoofBody> bodies;
    std::map<std::string, int> lines;  ///< of every side
};

/// Reads every row. A problem, with its line, its column and what to do: an unknown column or word,
/// a side named twice, a length not above 0, a bare number without `bare`, a pitch before which
/// none was said, a body whose rows lie apart, a host that is said by halves.
std::variant<SidesFile, TableProblem> read_sides(std::string_view csv,
                                                 std::optional<BareUnit> bare = {});

/// The row of the first side or body that a problem with the roof names; the first where it names
/// none.
int line_named(const SidesFile& file, const Problem& problem);

}  // namespace hemline
