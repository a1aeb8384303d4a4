#include "engine/trim/girth.h"
#include "engine/words/result.h"

#include <cmath>

namespace hemline {

namespace {

double nm_of(Length length) { return static_cast<double>(length.nm()); }
Length length_of(double nm) { return Length::of_nm(std::llround(nm)); }

struct Bent {
    double setback = 0, allowance = 0;
};

Bent bent(const Section& section, std::size_t bend, double degrees) {
    const double turn = std::abs(degrees);
    if (turn >= 180) {
        return {};
    }
    const double thickness = nm_of(section.thickness);
    const double radius = nm_of(section.legs[bend + 1].radius.value_or(section.thickness));
    return {setback(radius, thickness, turn), bend_allowance(radius, thickness, turn)};
}

}  // namespace

FoldAsked roof_at(const Edge& edge) {
    FoldAsked roof;
    roof.kind = edge.kind;
    roof.pitch = edge.pitch.value_or(rise_in_12(6));
    roof.pitch2 = edge.pitch2;
    roof.fascia = edge.fascia;
    roof.corner = edge.corner_left ? edge.corner_left : edge.corner_right;
    return roof;
}

Result<std::vector<double>> bends_of(const Section& section, FoldAsked roof) {
    std::vector<double> bends;
    for (std::size_t i = 1; i < section.legs.size(); ++i) {
        const BendRule& rule = section.legs[i].bend;
        if (!rule.fold_of) {
            bends.push_back(degrees_of(rule.angle));
            continue;
        }
        roof.kind = *rule.fold_of;
        const Result<FoldAngle> fold = fold_of(roof);
        if (!fold) {
            return fold.problem();
        }
        bends.push_back(fold->toward == Toward::down ? fold->bend_degrees : -fold->bend_degrees);
    }
    return bends;
}

double bend_allowance(double radius, double thickness, double degrees) {
    return (0.01743 * radius + 0.0078 * thickness) * degrees;
}

double setback(double radius, double thickness, double degrees) {
    return std::tan(radians_of(degrees) / 2) * (radius + thickness);
}

Result<Blank> blank_of(const Section& section, const std::vector<double>& bends) {
    require(bends.size() + 1 == section.legs.size(), "a bend stands between each two legs");
    Blank blank;
    double tape = 0;
    Bent before;
    for (std::size_t i = 0; i < section.legs.size(); ++i) {
        const Bent after = i < bends.size() ? bent(section, i, bends[i]) : Bent{};
        const double flat = nm_of(section.legs[i].width) - before.setback - after.setback;
        if (length_of(flat) <= Length()) {  // to the nanometre: the tangent of 45° is not quite 1
            return Problem{say("The {1} of {2} is used up by its bends.",
                               spoken(section.legs[i].name), section.trim),
                           say("Make it wider, or the bend's radius smaller.")};
        }
        blank.legs += section.legs[i].width;
        blank.flats.push_back(length_of(flat));
        tape += flat;
        if (i < bends.size()) {
            blank.marks.push_back(length_of(tape + after.allowance / 2));
            tape += after.allowance;
        }
        before = after;
    }
    blank.girth = length_of(tape);
    return blank;
}

}  // namespace hemline
