// `panels`: the panels of each plane of a roof, worked out from the walk round its eaves.
#include <algorithm>

#include "tools/cli/commands.h"
#include "tools/cli/metal_temperatures.h"
#include "tools/cli/output_file.h"
#include "tools/cli/panels_print.h"
#include "tools/cli/print.h"
#include "tools/cli/roof_file.h"

namespace hemline {
namespace {

/// A pipe or curb, and on which plane.
struct Through {
    std::string plane;
    Penetration penetration;
};

/// Reads an option that is a length, where it is said. False once stderr has the complaint.
bool read_length(const char* name, const std::string& text, std::optional<BareUnit> unit,
                 Length& into) {
    if (text.empty()) {
        return true;
    }
    const Result<Length> length = parse_length(text, unit);
    if (!length) {
        complain(name, length.problem());
        return false;
    }
    into = *length;
    return true;
}

bool read_through(const char* name, Penetration::Kind kind, const std::vector<std::string>& texts,
                  std::optional<BareUnit> unit, std::vector<Through>& into) {
    for (const std::string& text : texts) {
        std::vector<std::string> parts(1);
        for (const char c : text) {
            if (c == ',') {
                parts.emplace_back();
            } else {
                parts.back() += c;
            }
        }
        if (parts.size() != 4) {
            complain(name, 1, 1, "It takes a plane, two places and a width.",
                     "Write it as \"A, 42 in, 6 ft, 9 in\".");
            return false;
        }
        Through one{parts[0], {kind, {}, {}, {}}};
        Penetration& at = one.penetration;
        for (const auto& [part, length] :
             {std::pair(1, &at.x), std::pair(2, &at.y), std::pair(3, &at.wide)}) {
            const std::string& said = parts[static_cast<std::size_t>(part)];
            if (!read_length(name, said.empty() ? " " : said, unit, *length)) {
                return false;
            }
        }
        into.push_back(std::move(one));
    }
    return true;
}

/// What is said of all planes. None once stderr has the complaint.
std::optional<PanelJob> read_job(const PanelsArguments& arguments) {
    PanelJob job = usual_panel_job();
    job.practice.fixed_line = arguments.fixed;
    job.practice.site.panel_metal = arguments.metal;
    job.legs = arguments.legs_alike ? SeamLegs::alike : SeamLegs::of_two_kinds;
    const bool read =
        read_length("--module", arguments.module, arguments.unit, job.practice.seam_spacing) &&
        read_length("--seam-height", arguments.seam_height, arguments.unit,
                    job.practice.seam_height) &&
        read_length("--side-gap", arguments.side_gap, arguments.unit, job.side_gap);
    if (!read) {
        return {};
    }
    if (!arguments.now.empty()) {
        job.at = read_temperatures(arguments.now, arguments.low, arguments.high);
        if (!job.at) {
            return {};
        }
    }
    return job;
}

/// None once stderr has the complaint.
std::optional<std::vector<PanelLayout>> lay_all(const PanelsArguments& arguments,
                                                const SidesFile& file, const Roof& roof,
                                                const PanelJob& job,
                                                const std::vector<Through>& through) {
    std::vector<PanelLayout> layouts;
    std::vector<std::string> names;
    for (const BodyPlane& plane : roof.planes) {
        const DeckPlane deck = deck_plane(roof, file.bodies, plane);
        names.push_back(deck.name);
        if (!arguments.plane.empty() && arguments.plane != deck.name) {
            continue;
        }
        std::vector<Penetration> here;
        for (const Through& one : through) {
            if (one.plane == deck.name) {
                here.push_back(one.penetration);
            }
        }
        const Result<PanelLayout> layout = lay_panels(deck, job, here);
        if (!layout) {
            complain(deck.name, 0, 0, layout.problem());
            return {};
        }
        layouts.push_back(*layout);
    }
    const auto is_there = [&](const std::string& name) {
        return std::find(names.begin(), names.end(), name) != names.end();
    };
    for (const Through& one : through) {
        if (!is_there(one.plane)) {
            complain(one.plane, 0, 0, "No plane of the roof has this name.",
                     "A plane is named after its first eave.");
            return {};
        }
    }
    if (!arguments.plane.empty() && !is_there(arguments.plane)) {
        complain("--plane", 1, 1, "No plane of the roof has this name.",
                 "A plane is named after its first eave.");
        return {};
    }
    return layouts;
}

}  // namespace

Exit print_panels(const PanelsArguments& arguments) {
    const auto job = read_job(arguments);
    std::vector<Through> through;
    if (!job ||
        !read_through("--pipe", Penetration::Kind::pipe, arguments.pipes, arguments.unit,
                      through) ||
        !read_through("--curb", Penetration::Kind::curb, arguments.curbs, arguments.unit,
                      through)) {
        return Exit::problem_in_input;
    }
    const std::optional<RoofFile> read = read_roof_file(arguments.sides, arguments.unit);
    if (!read) {
        return Exit::problem_in_input;
    }
    const auto& [file, roof] = *read;
    const Marks marks = marks_for(arguments.unit);
    const auto layouts = roof.closes ? lay_all(arguments, file, roof, *job, through)
                                     : std::optional(std::vector<PanelLayout>());
    if (!layouts ||
        (roof.closes && !write_output_file("--csv", arguments.csv, panels_csv(*layouts, marks)))) {
        return Exit::problem_in_input;
    }
    const PanelsPrinted printed{*job, *layouts,
                                roof.closes ? std::nullopt : std::optional(roof.miss), marks};
    if (arguments.output == Output::json) {
        print_panels_json(printed);
    } else {
        print_panels_text(printed);
    }
    return Exit::fine;
}

}  // namespace hemline
