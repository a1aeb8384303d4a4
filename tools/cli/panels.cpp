// `panels`: the panels of each plane of a roof, worked out from the walk round its eaves.
#include <algorithm>

#include "engine/words/quote.h"
#include "engine/work/roof_body.h"
#include "tools/cli/assets_here.h"
#include "tools/cli/commands.h"
#include "tools/cli/given_job.h"
#include "tools/cli/output_file.h"
#include "tools/cli/panels_drawing.h"
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
    const std::vector<DeckPlane>& decks, const PanelsSaid& said,
    std::vector<OfPlane<std::vector<Problem>>>& doubts) {
    std::vector<PlaneAsked> planes;
    for (const DeckPlane& deck : decks) {
        planes.push_back({deck, said.job, {}});
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
                                                 const std::vector<DeckPlane>& decks,
                                                 const PanelsSaid& said) {
    std::vector<OfPlane<std::vector<Problem>>> doubts;
    const auto planes = planes_asked(decks, said, doubts);
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
        printed.push_back({job, (*layouts)[i], through, {}});
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

/// The planes of a roof, and what the job's rules are.
struct PlanesGiven {
    std::vector<DeckPlane> planes;
    std::optional<Length> miss;  ///< of a walk that does not close
    Practice practice;
};

std::vector<DeckPlane> planes_of(const Roof& roof, std::span<const RoofBody> bodies) {
    std::vector<DeckPlane> planes;
    for (const BodyPlane& plane : roof.planes) {
        planes.push_back(deck_plane(roof, bodies, plane));
    }
    return planes;
}

/// Of all its bodies that are worked out. None once stderr has the complaint.
std::optional<PlanesGiven> planes_of_job(const std::string& path) {
    const auto assets = assets_here();
    const auto job = assets ? read_given_job(path, assets->practice) : std::nullopt;
    if (!job) {
        return {};
    }
    PlanesGiven given{{}, {}, job->practice};
    for (const BodyOnJob& roof : roof_bodies(*job)) {
        if (roof.worked && roof.worked->closes) {
            const std::vector<DeckPlane> planes = planes_of(*roof.worked, bodies_of(roof));
            given.planes.insert(given.planes.end(), planes.begin(), planes.end());
        }
    }
    if (given.planes.empty()) {
        complain(path, 0, 0, "The job has no roof that is worked out.",
                 "Walk it round its eaves until the walk closes.");
        return {};
    }
    return given;
}

std::optional<PlanesGiven> planes_given(const PanelsArguments& arguments) {
    if (is_job(arguments.sides)) {
        return planes_of_job(arguments.sides);
    }
    const std::optional<RoofFile> read = read_roof_file(arguments.sides, arguments.unit);
    if (!read) {
        return {};
    }
    if (!read->roof.closes) {
        return PlanesGiven{{}, read->roof.miss, {}};
    }
    return PlanesGiven{planes_of(read->roof, read->file.bodies), {}, {}};
}

bool write_files(const PanelsArguments& arguments, const PanelsPrinted& printed) {
    return write_output_file("--csv", arguments.csv, panels_csv(printed)) &&
           (arguments.svg.empty() ||
            write_output_file("--svg", arguments.svg, panels_svg(printed)));
}

}  // namespace

Exit print_panels(const PanelsArguments& arguments) {
    const auto given = planes_given(arguments);
    const auto said = given ? read_panels_said(arguments, given->practice) : std::nullopt;
    if (!said) {
        return Exit::problem_in_input;
    }
    PanelsPrinted printed;
    printed.marks = marks_for(arguments.unit, given->practice);
    printed.miss = given->miss;
    if (!given->miss) {
        auto planes = lay_all(arguments, given->planes, *said);
        if (!planes) {
            return Exit::problem_in_input;
        }
        printed.planes = std::move(*planes);
        std::vector<PanelLayout> layouts;
        for (const PlanePrinted& plane : printed.planes) {
            layouts.push_back(plane.layout);
        }
        printed.metal = panel_metal(layouts, said->job.practice, said->from, said->thickness);
        if (!write_files(arguments, printed)) {
            return Exit::problem_in_input;
        }
    }
    if (arguments.output == Output::json) {
        print_panels_json(printed);
    } else {
        print_panels_text(printed);
    }
    return Exit::fine;
}

}  // namespace hemline
