#include "tools/cli/roof_file.h"

#include "engine/words/result.h"
#include "tools/cli/complaint.h"
#include "tools/cli/input_file.h"

namespace hemline {

std::optional<RoofFile> read_roof_file(const std::string& path, std::optional<BareUnit> unit) {
    const Result<std::string> text = read_input_file(path);
    if (!text) {
        complain(path, 0, 0, text.problem());
        return {};
    }
    auto read = read_sides(*text, unit);
    if (const auto* problem = std::get_if<TableProblem>(&read)) {
        complain(path, *problem);
        return {};
    }
    SidesFile& file = std::get<SidesFile>(read);
    const Result<Roof> roof = work_out_roof(file.bodies, Tape());
    if (!roof) {
        complain(path, line_named(file, roof.problem()), 1, roof.problem());
        return {};
    }
    return RoofFile{std::move(file), *roof};
}

Text miss_text(Length miss) {
    return say("The walk does not close: it misses by {1}, more than its readings allow.", miss);
}

}  // namespace hemline
