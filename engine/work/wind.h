// Wind on a sheet that is carried: how hard it pushes, and how much of it so many people hold.
//
//   F = 0.00256·V²·1.2·A    V gust in mph, A the sheet in ft²: velocity pressure of ASCE 7 on a
//   flat
//                           plate (from memory); 25 lb a person (common practice, no published
//                           source). 30 mph stands in a note of OSHA's to "high wind": no
//                           permission below it, and the employer may decide lower.
#pragma once

#include <optional>

#include "engine/plan/plan.h"
#include "engine/trim/section.h"

namespace hemline {

/// In pounds.
double wind_push(double gust_mph, double area_ft2);
/// The most gust, in mph, in which so many people hold it; never over 30. Of no sheet or by nobody
/// none.
double wind_most(double area_ft2, int people);

/// Metal as it is carried: its length, and the width it was bent to from flat.
struct Sheet {
    Length length, width;
};
double area_ft2(const Sheet& sheet);
/// The longest piece planned of the edge's trim; nullopt while none is planned.
std::optional<Sheet> longest_sheet(const Plan& plan, const Edge& edge, const Section& section);
/// That piece; nullopt where the run has none of that number.
std::optional<Sheet> sheet_of(const Plan& plan, const Edge& edge, const Section& section,
                              int piece);

/// Whether one person holds it in less than the 30 mph.
bool is_much_for_one(const Sheet& sheet);
/// "10 ft of 15 in: one person holds it in gusts under 25 mph, two under 30 mph."
Text wind_words(const Sheet& sheet);
/// What goes before any of these figures.
Text wind_note();

}  // namespace hemline
