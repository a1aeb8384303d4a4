// `panels`: the panels of each plane of a roof, worked out from the walk round its eaves.
#include <algorithm>
#include <map>

#include "engine/panels/plane_readings.h"
#include "engine/panels/roof_panels.h"
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

/// A plane, and lengths after it; none once stderr has the complaint. An empty one is 0 in
/// `lengths` and false in `said`.
struct PlaneSays {
    std::string plane;
    std::vector<Length> lengths;
    std::vector<bool> said;
};
std::optional<PlaneSays> read_plane_says(const char* name, const std::string& text,
                                         std::size_t count, const char* what, const char* mend,
                                         std::optional<BareUnit> unit) {
    std::vector<std::string> parts(1);
    for (const char c : text) {
        if (c == ',') {
            parts.emplace_back();
        } else {
            parts.back() += c;
        }
    }
    if (parts.size() != count + 1) {
        complain(name, 1, 1, what, mend);
        return {};
    }
    PlaneSays says{parts[0], {}, {}};
    for (std::size_t i = 1; i < parts.size(); ++i) {
        Length length;
        if (!read_length(name, parts[i], unit, length)) {
            return {};
        }
        says.lengths.push_back(length);
        says.said.push_back(!parts[i].empty());
    }
    return says;
}

bool read_through(const char* name, Penetration::Kind kind, const std::vector<std::string>& texts,
                  std::optional<BareUnit> unit, std::vector<Through>& into) {
    constexpr const char* mend = "Write it as \"A, 42 in, 6 ft, 9 in\".";
    for (const std::string& text : texts) {
        const auto says =
            read_plane_says(name, text, 3, "It takes a plane, two places and a width.", mend, unit);
        if (!says) {
            return false;
        }
        if (std::count(says->said.begin(), says->said.end(), false) > 0) {
            complain(name, 1, 1, "A place or the width is left out.", mend);
            return false;
        }
        into.push_back({says->plane, {kind, says->lengths[0], says->lengths[1], says->lengths[2]}});
    }
    return true;
}

/// What was read of a plane.
struct Read {
    std::string plane;
    PlaneReadings readings;
};
bool read_readings_of_planes(const PanelsArguments& arguments, std::vector<Read>& into) {
    for (const std::string& text : arguments.reads) {
        const auto says = read_plane_says("--read", text, 4,
                                          "It takes a plane, two slope lengths, two diagonals.",
                                          "Write it as \"A, 17 ft, 17 ft, 43 ft, 43 ft\"; leave "
                                          "empty what was not read.",
                                          arguments.unit);
        if (!says) {
            return false;
        }
        const auto at = [&](std::size_t i) {
            return says->said[i] ? std::optional(says->lengths[i]) : std::nullopt;
        };
        into.push_back({says->plane, {at(0), at(1), at(2), at(3)}});
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

/// What is said of the planes beside the job.
struct SaidOfPlanes {
    std::vector<Through> through;
    std::vector<Read> reads;
};

bool is_plane(const std::vector<PlaneAsked>& planes, const std::string& name) {
    return std::any_of(planes.begin(), planes.end(),
                       [&](const PlaneAsked& one) { return one.plane.name == name; });
}

/// Whether all names are planes; else stderr has the complaint.
bool all_are_planes(const PanelsArguments& arguments, const std::vector<PlaneAsked>& planes,
                    const SaidOfPlanes& said) {
    constexpr const char* what = "No plane of the roof has this name.";
    constexpr const char* mend = "A plane is named after its first eave.";
    std::vector<std::string> names;
    for (const Through& one : said.through) {
        names.push_back(one.plane);
    }
    for (const Read& one : said.reads) {
        names.push_back(one.plane);
    }
    for (const std::string& name : names) {
        if (!is_plane(planes, name)) {
            complain(name, 0, 0, what, mend);
            return false;
        }
    }
    if (!arguments.plane.empty() && !is_plane(planes, arguments.plane)) {
        complain("--plane", 1, 1, what, mend);
        return false;
    }
    return true;
}

/// Of every plane, also where one alone is asked for: seams meet at the ridge. None once stderr has
/// the complaint.
std::optional<std::vector<PanelLayout>> lay_all(const PanelsArguments& arguments,
                                                const SidesFile& file, const Roof& roof,
                                                const PanelJob& job, const SaidOfPlanes& said) {
    std::vector<PlaneAsked> planes;
    for (const BodyPlane& plane : roof.planes) {
        PlaneAsked asked{deck_plane(roof, file.bodies, plane), job, {}};
        for (const Through& one : said.through) {
            if (one.plane == asked.plane.name) {
                asked.through.push_back(one.penetration);
            }
        }
        planes.push_back(std::move(asked));
    }
    if (!all_are_planes(arguments, planes, said)) {
        return {};
    }
    std::map<std::string, std::vector<Problem>> doubts;
    for (const Read& one : said.reads) {
        for (PlaneAsked& asked : planes) {
            if (asked.plane.name != one.plane) {
                continue;
            }
            const Result<ReadPlane> read = read_plane(asked.plane, one.readings, job.practice.tape);
            if (!read) {
                complain("--read", 1, 1, read.problem());
                return {};
            }
            asked.plane = read->plane;
            doubts[one.plane] = read->doubts;
        }
    }
    const Result<std::vector<PanelLayout>> layouts = lay_roof(planes);
    if (!layouts) {
        complain(arguments.sides, 0, 0, layouts.problem());
        return {};
    }
    std::vector<PanelLayout> shown;
    for (const PanelLayout& layout : *layouts) {
        if (!arguments.plane.empty() && arguments.plane != layout.plane.name) {
            continue;
        }
        shown.push_back(layout);
        for (const Problem& doubt : doubts[layout.plane.name]) {
            shown.back().doubts.push_back({0, doubt});
        }
    }
    return shown;
}

}  // namespace

Exit print_panels(const PanelsArguments& arguments) {
    const auto job = read_job(arguments);
    SaidOfPlanes of_planes;
    if (!job ||
        !read_through("--pipe", Penetration::Kind::pipe, arguments.pipes, arguments.unit,
                      of_planes.through) ||
        !read_through("--curb", Penetration::Kind::curb, arguments.curbs, arguments.unit,
                      of_planes.through) ||
        !read_readings_of_planes(arguments, of_planes.reads)) {
        return Exit::problem_in_input;
    }
    const std::optional<RoofFile> read = read_roof_file(arguments.sides, arguments.unit);
    if (!read) {
        return Exit::problem_in_input;
    }
    const auto& [file, roof] = *read;
    const Marks marks = marks_for(arguments.unit);
    const auto layouts = roof.closes ? lay_all(arguments, file, roof, *job, of_planes)
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
