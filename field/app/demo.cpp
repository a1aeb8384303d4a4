#include "field/app/demo.h"

#include "engine/handover/readings_file.h"
#include "field/store/folders.h"
#include "field/store/job_folder.h"

namespace hemline {

Result<DemoRoof> read_demo(const Assets& assets) {
    const auto folder = assets_folder();
    if (!folder) {
        return folder.problem();
    }
    const auto bytes = read_file(*folder / "demo" / "readings.csv");
    if (!bytes) {
        return bytes.problem();
    }
    const auto read = read_readings(std::string(bytes->begin(), bytes->end()), assets.catalogue);
    if (const auto* const problem = std::get_if<TableProblem>(&read)) {
        return Problem{say("The demo roof, line {1}: {2}", problem->line, problem->what),
                       Text(problem->mend)};
    }
    DemoRoof demo{"Heron Lane boathouse (demo, invented)", {}};
    for (const EdgeReading& row : *std::get_if<std::vector<EdgeReading>>(&read)) {
        demo.edges.push_back(row.edge);
        // The newcomer reads the pitch too.
        demo.edges.back().pitch.reset();
    }
    if (!demo.edges.empty()) {
        demo.edges.front().wrap = true;
    }
    return demo;
}

}  // namespace hemline
