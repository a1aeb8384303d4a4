// `new`: starts a job, with the edges and first readings of a file.
#include <algorithm>
#include <iostream>

#include "engine/handover/readings_file.h"
#include "engine/handover/sides_file.h"
#include "engine/roof/readings.h"
#include "engine/words/result.h"
#include "engine/words/shown_text.h"
#include "engine/work/roof_body.h"
#include "field/store/clock.h"
#include "field/store/folders.h"
#include "field/store/new_job.h"
#include "tools/cli/assets_here.h"
#include "tools/cli/commands.h"
#include "tools/cli/desk.h"
#include "tools/cli/input_file.h"
#include "tools/cli/print.h"

namespace hemline {
namespace {

/// The bodies have the file's names, or are numbered where one has none.
std::vector<WalkedBody> walks_of(const SidesFile& file) {
    const bool named = std::none_of(file.bodies.begin(), file.bodies.end(),
                                    [](const RoofBody& body) { return body.name.empty(); });
    std::vector<WalkedBody> walks;
    for (const RoofBody& body : file.bodies) {
        walks.push_back(walk_of(named ? body.name : std::to_string(walks.size() + 1), body));
    }
    return walks;
}

/// The walks of a sides file, and the edges that the roof has.
std::optional<std::vector<Fact>> with_roof(std::vector<Fact> facts, const NewArguments& arguments) {
    const Result<std::string> text = read_input_file(arguments.roof);
    if (!text) {
        complain(arguments.roof, 0, 0, text.problem());
        return {};
    }
    const auto sides = read_sides(*text, arguments.unit);
    if (const auto* const problem = std::get_if<TableProblem>(&sides)) {
        complain(arguments.roof, *problem);
        return {};
    }
    const SidesFile& file = std::get<0>(sides);
    const std::optional<Assets> assets = assets_here();
    if (!assets) {
        return {};
    }
    const Result<std::vector<Fact>> walked =
        facts_of_walks(Job(), walks_of(file), assets->catalogue);
    if (!walked) {
        complain(arguments.roof, line_named(file, walked.problem()), 1, walked.problem());
        return {};
    }
    facts.insert(facts.end(), walked->begin(), walked->end());
    return facts;
}

/// The facts a new job opens with; says on stderr what is wrong with the file.
std::optional<std::vector<Fact>> first_facts(const NewArguments& arguments) {
    const std::filesystem::path folder = std::filesystem::path(arguments.job).lexically_normal();
    const std::filesystem::path last = folder.has_filename() ? folder : folder.parent_path();
    const std::string name = arguments.name.empty() ? last.filename().string() : arguments.name;
    std::vector<Fact> facts = {JobStarted{name, "common practice"}};
    if (arguments.unit == BareUnit::millimetre) {
        facts.emplace_back(RuleSet{"cut_grid", "1 mm"});  // as `plan --unit mm` cuts
    }
    if (!arguments.roof.empty()) {
        return with_roof(std::move(facts), arguments);
    }
    if (arguments.readings.empty()) {
        return facts;
    }
    const std::optional<Assets> assets = assets_here();
    const auto rows =
        assets ? read_rows(arguments.readings, *assets, arguments.unit) : std::nullopt;
    if (!rows) {
        return {};
    }
    for (const EdgeReading& row : *rows) {
        const Text doubt = row.expected ? Text() : doubt_about_so_long(row.length);
        if (!doubt.empty()) {
            std::cerr << shown_text(arguments.readings) << ':' << row.line
                      << ":1: " << doubt.english(marks_for(arguments.unit)) << '\n';
        }
    }
    const std::vector<Fact> edges = facts_of(*rows, LengthsAre::first_readings);
    facts.insert(facts.end(), edges.begin(), edges.end());
    return facts;
}

}  // namespace

Exit start_job(const NewArguments& arguments) {
    const std::optional<std::vector<Fact>> facts = first_facts(arguments);
    if (!facts) {
        return Exit::problem_in_input;
    }
    const Result<std::uint64_t> device = device_id();
    if (!device) {
        return complain("device", 0, 0, device.problem());
    }
    Disk disk;
    const Result<Text> written =
        write_new_job(disk, arguments.job, *facts, arguments.by, *device, wall_ms());
    if (!written) {
        return complain(arguments.job, 0, 0, written.problem());
    }
    say_aside(*written);
    std::cout << "Saved " << facts->size() << " events in " << shown_text(arguments.job) << '\n';
    return Exit::fine;
}

}  // namespace hemline
