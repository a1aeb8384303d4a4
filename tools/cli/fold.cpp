// `fold`: the angle the metal is folded to at a kind of edge, on the metal and on the brake.
#include <iostream>

#include "engine/measure/angle_text.h"
#include "engine/roof/edge_shape.h"
#include "engine/roof/hip.h"
#include "engine/trim/practice.h"
#include "engine/words/result.h"
#include "tools/cli/commands.h"
#include "tools/cli/print.h"

namespace hemline {
namespace {

/// Reads the texts of the options; each is checked, needed or not. Says on stderr what is wrong.
std::optional<FoldAsked> read_fold(const FoldArguments& arguments) {
    FoldAsked asked;
    asked.kind = arguments.edge;
    asked.fascia = arguments.fascia;
    const Result<Slope> pitch = parse_slope(arguments.pitch);
    if (!pitch) {
        complain("--pitch", pitch.problem());
        return {};
    }
    asked.pitch = *pitch;
    if (arguments.pitch2) {
        const Result<Slope> pitch2 = parse_slope(*arguments.pitch2);
        if (!pitch2) {
            complain("--pitch2", pitch2.problem());
            return {};
        }
        asked.pitch2 = *pitch2;
    }
    if (arguments.corner) {
        const Result<Angle> corner = parse_degrees(*arguments.corner);
        if (!corner) {
            complain("--corner", corner.problem());
            return {};
        }
        asked.corner = *corner;
    }
    return asked;
}

/// The line and angles where two roofs meet over a corner of their eaves.
struct OverCorner {
    HipLine line;
    std::optional<Length> jacks1, jacks2;  ///< by how much panels of each roof differ in length
};

/// For a hip or a valley over eaves; none where no line rises.
std::optional<OverCorner> over_corner(const FoldAsked& asked) {
    if (!stands_over_corner(asked.kind)) {
        return {};
    }
    const bool valley = !turns_out(asked.kind);
    Angle inside = asked.corner.value_or(valley ? square_in : square_out);
    if (valley && inside < half_turn) {
        inside = full_turn - inside;
    }
    const Slope pitch2 = asked.pitch2.value_or(asked.pitch);
    const Result<HipLine> line = hip_line({asked.pitch, pitch2, inside});
    if (!line) {
        return {};
    }
    const auto jacks = [&](Slope own, Slope other) {
        const auto difference = jack_difference(Practice().seam_spacing, {own, other, inside});
        return difference ? std::optional(*difference) : std::nullopt;
    };
    return OverCorner{*line, jacks(asked.pitch, pitch2), jacks(pitch2, asked.pitch)};
}

Json fold_json(const FoldAsked& asked, const FoldAngle& fold) {
    Json json;
    json["edge"] = word_of(asked.kind);
    json["included_deg"] = micro_rounded(fold.included_degrees);
    json["bend_deg"] = micro_rounded(fold.bend_degrees);
    json["toward"] = word_of(fold.toward);
    if (const auto over = over_corner(asked)) {
        const HipLine* const line = &over->line;
        json["slope_deg"] = micro_rounded(line->slope_degrees);
        json["plan_from_eave1_deg"] = micro_rounded(line->from_eave1_degrees);
        json["plan_from_eave2_deg"] = micro_rounded(line->from_eave2_degrees);
        json["backing1_deg"] = micro_rounded(line->backing1_degrees);
        json["backing2_deg"] = micro_rounded(line->backing2_degrees);
        if (over->jacks1 && over->jacks2) {
            put_length(json, "jacks1", *over->jacks1, Marks::sixteenth);
            put_length(json, "jacks2", *over->jacks2, Marks::sixteenth);
        }
    }
    return json;
}

std::string fold_text(const FoldAsked& asked, const FoldAngle& fold) {
    std::string name = spoken(asked.kind).english();
    name.front() = static_cast<char>(name.front() - 'a' + 'A');
    std::string text =
        name + " fold, " + print_slope(asked.pitch) +
        (asked.pitch2 && joins_two_roofs(asked.kind) ? " and " + print_slope(*asked.pitch2) : "") +
        ": " + rounded(fold.included_degrees, 2) + " deg included on the metal, bend " +
        rounded(fold.bend_degrees, 2) + " deg on the brake, turned " +
        std::string(word_of(fold.toward)) + '\n';
    if (const auto over = over_corner(asked)) {
        const HipLine* const line = &over->line;
        text += name + " line: rises at " + rounded(line->slope_degrees, 2) + " deg; in plan " +
                rounded(line->from_eave1_degrees, 2) + " deg from the first eave and " +
                rounded(line->from_eave2_degrees, 2) + " from the second\n";
        if (over->jacks1 && over->jacks2) {
            text += "Panels " + print_length(Practice().seam_spacing) + " wide differ by " +
                    print_length(absolute(*over->jacks1)) + " on the first roof, by " +
                    print_length(absolute(*over->jacks2)) + " on the second\n";
        }
    }
    return text;
}

}  // namespace

Exit print_fold(const FoldArguments& arguments) {
    const std::optional<FoldAsked> asked = read_fold(arguments);
    if (!asked) {
        return Exit::problem_in_input;
    }
    const Result<FoldAngle> fold = fold_of(*asked);
    if (!fold) {
        const bool transition = facts_of(asked->kind).fold == FoldFrom::change_of_pitch;
        complain(transition ? "--pitch2" : "--corner", fold.problem());
        return transition ? Exit::wrong_usage : Exit::problem_in_input;
    }
    if (arguments.output == Output::json) {
        print_json(fold_json(*asked, *fold));
    } else {
        std::cout << fold_text(*asked, *fold);
    }
    return Exit::fine;
}

}  // namespace hemline
