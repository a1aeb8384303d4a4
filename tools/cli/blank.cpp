// `blank`: the strip a trim is folded from, its brake marks, and the order of its bends.
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <iostream>

#include "engine/measure/angle_text.h"
#include "engine/trim/brake.h"
#include "engine/words/quote.h"
#include "engine/words/result.h"
#include "tools/cli/assets_here.h"
#include "tools/cli/commands.h"
#include "tools/cli/print.h"

namespace hemline {
namespace {

struct Bent {
    const Section& section;
    FoldAsked roof;
    std::vector<double> bends;
    Blank blank;
    std::vector<BrakeStep> order;
};

std::string degrees_text(double degrees) {
    std::array<char, 64> text{};
    std::snprintf(text.data(), text.size(), "%.1f", degrees);
    return text.data();
}

/// Which end is under the jaw and which face is up, for the hand at the brake.
std::string hold_text(const BrakeStep& step, const Section& section) {
    const SectionLeg& held =
        step.clamped == Clamped::first_legs ? section.legs.front() : section.legs.back();
    const bool upper = step.up == FaceUp::upper;
    const bool painted_up = section.painted == Painted::both ||
                            section.painted == (upper ? Painted::upper : Painted::under);
    const std::string face = section.painted == Painted::none ? upper ? "upper face" : "under face"
                             : painted_up                     ? "painted face"
                                                              : "bare face";
    return std::string(word_of(held.name)) + " side under the jaw, " + face + " up";
}

Json blank_json(const Bent& bent, Marks marks) {
    Json json;
    json["trim"] = bent.section.trim;
    json["metal"] = bent.section.metal;
    json["thickness_nm"] = bent.section.thickness.nm();
    json["painted"] = word_of(bent.section.painted);
    json["pitch"] = print_slope(bent.roof.pitch);
    json["pitch2"] = bent.roof.pitch2 ? Json(print_slope(*bent.roof.pitch2)) : Json();
    put_length(json, "girth", bent.blank.girth, marks);
    put_length(json, "legs_sum", bent.blank.legs, marks);
    json["marks_nm"] = Json::array();
    json["marks"] = Json::array();
    for (const Length mark : bent.blank.marks) {
        json["marks_nm"].push_back(mark.nm());
        json["marks"].push_back(print_length(mark, marks));
    }
    json["legs"] = Json::array();
    for (std::size_t i = 0; i < bent.section.legs.size(); ++i) {
        const SectionLeg& leg = bent.section.legs[i];
        Json one;
        one["leg"] = word_of(leg.name);
        put_length(one, "width", leg.width, marks);
        one["bend_deg"] = i == 0 ? Json() : Json(bent.bends[i - 1]);
        one["hem"] = word_of(leg.hem);
        one["lies"] = word_of(leg.lies);
        one["source"] = leg.source;
        json["legs"].push_back(one);
    }
    json["order"] = Json::array();
    for (const BrakeStep& step : bent.order) {
        Json one;
        one["bend"] = step.bend + 1;
        put_length(one, "mark", step.mark, marks);
        one["degrees"] = step.degrees;
        one["clamped"] = step.clamped == Clamped::first_legs ? "first_legs" : "last_legs";
        one["up"] = step.up == FaceUp::upper ? "upper" : "under";
        one["can_be_made"] = step.in_the_way.empty();
        one["in_the_way"] = step.in_the_way.english(marks);
        json["order"].push_back(one);
    }
    return json;
}

std::string blank_text(const Bent& bent, Marks marks) {
    const Section& section = bent.section;
    std::string text = section.trim + ": blank " + print_length(bent.blank.girth, marks) +
                       ", legs " + print_length(bent.blank.legs, marks) + ", " + section.metal +
                       "; pitch " + print_slope(bent.roof.pitch) +
                       (bent.roof.pitch2 ? ", other roof " + print_slope(*bent.roof.pitch2) : "") +
                       '\n';
    text += "Brake marks in one reading from the " + std::string(word_of(section.legs[0].name)) +
            "'s free edge, each the middle of its bend\n";
    for (std::size_t i = 0; i < bent.bends.size(); ++i) {
        text += "  " + padded(print_length(bent.blank.marks[i], marks), 18) +
                std::string(word_of(section.legs[i].name)) + " to " +
                std::string(word_of(section.legs[i + 1].name)) + ", bend " +
                degrees_text(std::abs(bent.bends[i])) + " deg\n";
    }
    text += "Order on the brake\n";
    int number = 0;
    for (const BrakeStep& step : bent.order) {
        text += "  " + padded(std::to_string(++number) + ".", 4) +
                padded(print_length(step.mark, marks), 16) +
                padded(degrees_text(step.degrees) + " deg", 11) + hold_text(step, section) + '\n';
        if (!step.in_the_way.empty()) {
            text += "      cannot be made on this brake: " + step.in_the_way.english(marks) + '\n';
        }
    }
    return text + std::string(caution()) + '\n';
}

std::string ids_of(const Sections& sections) {
    std::string ids;
    for (const Section& section : sections.all()) {
        ids += (ids.empty() ? "" : ", ") + section.trim;
    }
    return ids;
}

/// Reads an option into `value`; an empty text leaves it unchanged. False once the complaint is
/// printed.
template <class Parse, class Value>
bool read_option(const char* name, const std::string& text, Parse parse, Value& value) {
    if (text.empty()) {
        return true;
    }
    const auto read = parse(text);
    if (!read) {
        complain(name, read.problem());
        return false;
    }
    value = *read;
    return true;
}

/// A transition's bend needs both its roofs; where neither was given, the upper roof is 9/12.
void suppose_upper_roof(const BlankArguments& arguments, const Section& section, FoldAsked& roof) {
    const bool transition =
        std::any_of(section.legs.begin(), section.legs.end(),
                    [](const SectionLeg& leg) { return leg.bend.fold_of == EdgeKind::transition; });
    if (transition && arguments.pitch.empty() && arguments.pitch2.empty()) {
        roof.pitch2 = rise_in_12(9);
    }
}

}  // namespace

Exit show_blank(const BlankArguments& arguments) {
    FoldAsked roof;
    roof.pitch = rise_in_12(6);
    roof.fascia = arguments.fascia;
    if (!read_option("--pitch", arguments.pitch, parse_slope, roof.pitch) ||
        !read_option("--pitch2", arguments.pitch2, parse_slope, roof.pitch2) ||
        !read_option("--corner", arguments.corner, parse_degrees, roof.corner)) {
        return Exit::problem_in_input;
    }
    const std::optional<Assets> assets = assets_here();
    if (!assets) {
        return Exit::problem_in_input;
    }
    const Section* section = assets->sections.find(arguments.trim);
    if (section == nullptr) {
        return complain("--trim", 1, 1,
                        "No section is called " + hemline::quoted(arguments.trim) + ".",
                        "Name one of: " + ids_of(assets->sections) + ".");
    }
    suppose_upper_roof(arguments, *section, roof);
    const Result<std::vector<double>> bends = bends_of(*section, roof);
    if (!bends) {
        return complain("--trim", bends.problem());
    }
    const Result<Blank> blank = blank_of(*section, *bends);
    if (!blank) {
        return complain("--trim", blank.problem());
    }
    const Bent bent{*section, roof, *bends, *blank, brake_order(*section, *bends, *blank)};
    const Marks marks = marks_for(arguments.unit);
    if (arguments.output == Output::json) {
        print_json(blank_json(bent, marks));
    } else {
        std::cout << blank_text(bent, marks);
    }
    return Exit::fine;
}

}  // namespace hemline
