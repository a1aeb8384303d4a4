// The roofs of a job laid out on the page, from above and to scale: the largest, and the others
// beside it or below.
#pragma once

#include <imgui.h>

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "field/state/state.h"
#include "field/touch/ui.h"

namespace hemline {

/// An edge as it lies on the page.
struct SheetLine {
    const EdgeWork* work = nullptr;  ///< none: the job has no such edge
    std::string letter;              ///< its name, or that of a side that is being walked
    EdgeKind kind = EdgeKind::eave;
    bool is_walked = false;  ///< a side that is being walked: no edge of the job yet
    bool outer = true;       ///< along the walk, else between planes
    bool is_asked = false;   ///< its length is asked now
    ImVec2 from, to;
    ImVec2 along, inside;  ///< of length 1; `inside` points into the roof
    float length = 0;
    EdgeStatus status = EdgeStatus::no_reading;
    std::optional<Length> says;  ///< read, or what the roof says
    bool is_read = false;
};

/// A plane in its pieces, each walked round.
struct SheetPlane {
    std::vector<std::vector<ImVec2>> pieces, holes;
    std::vector<std::pair<ImVec2, ImVec2>> seams;
    ImVec2 falls;  ///< of length 1
    std::optional<Slope> pitch;
};

/// A walk that has not come back: from its last corner to its first.
struct SheetGap {
    ImVec2 from, to;
};

struct RoofSheet {
    std::vector<SheetLine> lines;
    std::vector<SheetPlane> planes;
    std::vector<SheetGap> gaps;
    Marks marks = Marks::sixteenth;
    std::string now;  ///< the letter of the edge that is next, or of the side in hand
};

/// As large as the box allows.
RoofSheet roof_sheet(const Ui& ui, const State& state, Box box);
/// One body alone, as on the walk.
RoofSheet body_sheet(const State& state, const BodyOnJob& body, Box box);
/// A shape that nobody has measured yet: its sides first, in walking order, then what is inside;
/// without letters, lengths and pitches.
RoofSheet shape_sheet(const State& state, const BodyOnJob& body, Box box);

}  // namespace hemline
