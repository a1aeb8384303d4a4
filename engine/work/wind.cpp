#include "engine/work/wind.h"

#include <algorithm>
#include <cmath>

#include "engine/measure/length_text.h"
#include "engine/trim/girth.h"
#include "engine/words/result.h"
#include "engine/work/readiness.h"

namespace hemline {
namespace {

constexpr double pressure = 0.00256, flat_plate = 1.2;
constexpr double held_by_one_lb = 25, most_mph = 30;

std::optional<Length> girth_on(const Edge& edge, const Section& section) {
    const Section fitted = fitted_to(section, edge);
    const auto bends = bends_of(fitted, roof_at(edge));
    const auto blank = bends ? blank_of(fitted, *bends) : Result<Blank>(bends.problem());
    return blank ? std::optional(blank->girth) : std::nullopt;
}

std::optional<Sheet> sheet_as(std::optional<Length> length, const Edge& edge,
                              const Section& section) {
    const auto girth = length ? girth_on(edge, section) : std::nullopt;
    return girth ? std::optional(Sheet{*length, nearest_on(*girth, sixteenths(1))}) : std::nullopt;
}

/// Whole miles an hour, never rounded up.
std::string whole(double mph) { return std::to_string(static_cast<int>(std::floor(mph))); }

}  // namespace

double wind_push(double gust_mph, double area_ft2) {
    return pressure * gust_mph * gust_mph * flat_plate * area_ft2;
}

double wind_most(double area_ft2, int people) {
    if (!(area_ft2 > 0) || people < 1) {
        return 0;
    }
    return std::min(most_mph, std::sqrt(held_by_one_lb * people / wind_push(1, area_ft2)));
}

double area_ft2(const Sheet& sheet) {
    const auto in_feet = [](Length length) {
        return static_cast<double>(length.nm()) / static_cast<double>(feet(1).nm());
    };
    return in_feet(sheet.length) * in_feet(sheet.width);
}

std::optional<Sheet> longest_sheet(const Plan& plan, const Edge& edge, const Section& section) {
    const Run* const run = find_run(plan, edge.id, TrimRole::main);
    std::optional<Length> longest;
    if (run != nullptr) {
        for (const PlannedPiece& piece : run->pieces) {
            longest = std::max(longest.value_or(Length()), piece.cut);
        }
    }
    return sheet_as(longest, edge, section);
}

std::optional<Sheet> sheet_of(const Plan& plan, const Edge& edge, const Section& section,
                              int piece) {
    const Run* const run = find_run(plan, edge.id, TrimRole::main);
    const PlannedPiece* const planned = run == nullptr ? nullptr : find_piece(*run, piece);
    return sheet_as(planned == nullptr ? std::nullopt : std::optional(planned->cut), edge, section);
}

bool is_much_for_one(const Sheet& sheet) { return wind_most(area_ft2(sheet), 1) < most_mph; }

Text wind_words(const Sheet& sheet) {
    const double area = area_ft2(sheet);
    if (!is_much_for_one(sheet)) {
        return say("{1} of {2}: one person holds it in gusts under {3} mph.", sheet.length,
                   sheet.width, whole(most_mph));
    }
    return say("{1} of {2}: one person holds it in gusts under {3} mph, two under {4} mph.",
               sheet.length, sheet.width, whole(wind_most(area, 1)), whole(wind_most(area, 2)));
}

Text wind_note() { return say("Your employer may decide lower: no figure here is a permission."); }

}  // namespace hemline
