#include "tools/cli/panels_said.h"

#include <algorithm>

#include "tools/cli/complaint.h"
#include "tools/cli/metal_temperatures.h"
#include "tools/cli/pieces_file.h"

namespace hemline {
namespace {

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

/// Between commas, without spaces at their ends.
std::vector<std::string> parts_of(const std::string& text) {
    std::vector<std::string> parts(1);
    for (const char c : text) {
        if (c == ',') {
            parts.emplace_back();
        } else {
            parts.back() += c;
        }
    }
    for (std::string& part : parts) {
        part = without_spaces(part);
    }
    return parts;
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
    const std::vector<std::string> parts = parts_of(text);
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
                  std::optional<BareUnit> unit, std::vector<OfPlane<Penetration>>& into) {
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

bool read_readings_of_planes(const PanelsArguments& arguments,
                             std::vector<OfPlane<PlaneReadings>>& into) {
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

bool read_shifts(const PanelsArguments& arguments, std::vector<OfPlane<ChosenSeams>>& into) {
    for (const std::string& text : arguments.shifts) {
        const std::vector<std::string> parts = parts_of(text);
        const bool more = parts.size() == 4 && parts[3] == "more";
        const bool sided = parts.size() >= 3 && (parts[1] == "left" || parts[1] == "right");
        if (!sided || parts[2].empty() || (parts.size() > 3 && !more)) {
            complain("--shift", 1, 1, "It takes a plane, a direction and a length.",
                     "Write it as \"A, right, 4 in\", with a pan more as \"A, left, 0 in, more\".");
            return false;
        }
        Length shift;
        if (!read_length("--shift", parts[2], arguments.unit, shift)) {
            return false;
        }
        into.push_back({parts[0], {parts[1] == "left" ? -shift : shift, more}});
    }
    return true;
}

/// What is said of all planes. None once stderr has the complaint.
std::optional<PanelJob> read_job(const PanelsArguments& arguments, const Practice& practice) {
    PanelJob job;
    Length valley_leg;
    job.practice = practice;
    if (arguments.fixed != FixedLine::unsaid) {
        job.practice.fixed_line = arguments.fixed;
    }
    if (!arguments.metal.empty()) {
        job.practice.site.panel_metal = arguments.metal;
    }
    job.legs = arguments.legs_alike ? SeamLegs::alike : SeamLegs::of_two_kinds;
    const bool read =
        read_length("--module", arguments.module, arguments.unit, job.practice.seam_spacing) &&
        read_length("--seam-height", arguments.seam_height, arguments.unit,
                    job.practice.seam_height) &&
        read_length("--side-gap", arguments.side_gap, arguments.unit, job.practice.side_gap) &&
        read_length("--zone", arguments.zone, arguments.unit, job.practice.clip_zone) &&
        read_length("--coil-width", arguments.coil_width, arguments.unit, job.practice.strip) &&
        read_length("--valley-leg", arguments.valley_leg, arguments.unit, valley_leg);
    if (!arguments.valley_leg.empty()) {
        job.valley_leg = valley_leg;
    }
    job.strip = arguments.strip;
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

}  // namespace

std::optional<PanelsSaid> read_panels_said(const PanelsArguments& arguments,
                                           const Practice& practice) {
    PanelsSaid said;
    const auto job = read_job(arguments, practice);
    if (!job ||
        !read_through("--pipe", Penetration::Kind::pipe, arguments.pipes, arguments.unit,
                      said.through) ||
        !read_through("--curb", Penetration::Kind::curb, arguments.curbs, arguments.unit,
                      said.through) ||
        !read_readings_of_planes(arguments, said.reads) || !read_shifts(arguments, said.shifts)) {
        return {};
    }
    said.job = *job;
    said.from = arguments.coil ? PanelsFrom::coil : PanelsFrom::ordered_cut;
    Length thickness;
    if (!read_length("--thickness", arguments.thickness, arguments.unit, thickness)) {
        return {};
    }
    if (thickness > Length()) {
        said.thickness = thickness;
    }
    return said;
}

}  // namespace hemline
