// `panels`: the panels of each plane of a roof, worked out from the walk round its eaves.
#include <algorithm>

#include "engine/words/quote.h"
#include "tools/cli/commands.h"
#include "tools/cli/output_file.h"
#include "tools/cli/panels_print.h"
#include "tools/cli/panels_said.h"
#include "tools/cli/print.h"
#include "tools/cli/roof_file.h"

namespace hemline {
namespace {

/// Whether it is a plane of the roof; else stderr has the complaint.
bool is_plane(const std::vector<PlaneAsked>& planes, const char* option, const std::string& name) {
    const bool known = std::any_of(planes.begin(), planes.end(),
                                   [&](const PlaneAsked& one) { return one.plane.name == name; });
    if (!known) {
        complain(option, 1, 1, "No plane of the roof is named " + hemline::quoted(name) + ".",
                 "A plane is named after its first eave.");
    }
    return known;
}

PlaneAsked& plane_named(std::vector<PlaneAsked>& planes, const std::string& name) {
    return *std::find_if(planes.begin(), planes.end(),
                         [&](const PlaneAsked& one) { return one.plane.name == name; });
}

/// Every plane, put right by what was read. Doubts go to `doubts`, by plane. None once stderr has
/// the complaint.
std::optional<std::vector<PlaneAsked>> planes_asked(
    const SidesFile& file, const Roof& roof, const PanelsSaid& said,
    std::vector<OfPlane<std::vector<Problem>>>& doubts) {
    std::vector<PlaneAsked> planes;
    for (const BodyPlane& plane : roof.planes) {
        planes.push_back({deck_plane(roof, file.bodies, plane), said.job, {}});
    }
    for (const auto& [plane, penetration] : said.through) {
        if (!is_plane(planes, "--pipe, --curb", plane)) {
            return {};
        }
        plane_named(planes, plane).through.push_back(penetration);
    }
    for (const auto& [plane, chosen] : said.shifts) {
        if (!is_plane(planes, "--shift", plane)) {
            return {};
        }
        plane_named(planes, plane).job.chosen = chosen;
    }
    for (const auto& [plane, readings] : said.reads) {
        if (!is_plane(planes, "--read", plane)) {
            return {};
        }
        PlaneAsked& asked = plane_named(planes, plane);
        const Result<ReadPlane> read = read_plane(asked.plane, readings, asked.job.practice.tape);
        if (!read) {
            complain("--read", 1, 1, read.problem());
            return {};
        }
        asked.plane = read->plane;
        doubts.push_back({plane, read->doubts});
    }
    return planes;
}

/// All are laid, also where one alone is asked for: seams meet at the ridge. None once stderr has
/// the complaint.
std::optional<std::vector<PlanePrinted>> lay_all(const PanelsArguments& arguments,
                                                 const SidesFile& file, const Roof& roof,
                                                 const PanelsSaid& said) {
    std::vector<OfPlane<std::vector<Problem>>> doubts;
    const auto planes = planes_asked(file, roof, said, doubts);
    if (!planes || (!arguments.plane.empty() && !is_plane(*planes, "--plane", arguments.plane))) {
        return {};
    }
    const Result<std::vector<PanelLayout>> layouts = lay_roof(*planes);
    if (!layouts) {
        complain(arguments.sides, 0, 0, layouts.problem());
        return {};
    }
    std::vector<PlanePrinted> printed;
    for (std::size_t i = 0; i < planes->size(); ++i) {
        const auto& [plane, job, through] = (*planes)[i];
        if (!arguments.plane.empty() && arguments.plane != plane.name) {
            continue;
        }
        printed.push_back({job, (*layouts)[i], {}});
        for (const auto& [name, problems] : doubts) {
            for (const Problem& problem : problems) {
                if (name == plane.name) {
                    printed.back().layout.doubts.push_back({0, problem});
                }
            }
        }
        if (arguments.choices) {
            printed.back().choices = *panel_choices(plane, job, through);
        }
    }
    return printed;
}

}  // namespace

Exit print_panels(const PanelsArguments& arguments) {
    const auto said = read_panels_said(arguments);
    const std::optional<RoofFile> read =
        said ? read_roof_file(arguments.sides, arguments.unit) : std::nullopt;
    if (!read) {
        return Exit::problem_in_input;
    }
    const auto& [file, roof] = *read;
    PanelsPrinted printed{{}, {}, marks_for(arguments.unit)};
    if (roof.closes) {
        auto planes = lay_all(arguments, file, roof, *said);
        if (!planes) {
            return Exit::problem_in_input;
        }
        printed.planes = std::move(*planes);
        if (!write_output_file("--csv", arguments.csv, panels_csv(printed))) {
            return Exit::problem_in_input;
        }
    } else {
        printed.miss = roof.miss;
    }
    if (arguments.output == Output::json) {
        print_panels_json(printed);
    } else {
        print_panels_text(printed);
    }
    return Exit::fine;
}

}  // namespace hemline
