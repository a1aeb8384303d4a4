// `plan`: cut list, sticks and proof of a readings file.
#include <iostream>

#include "tools/cli/assets_here.h"
#include "tools/cli/commands.h"
#include "tools/cli/plan_print.h"

namespace hemline {

Exit plan_readings(const DeskArguments& arguments) {
    const std::optional<Assets> assets = assets_here();
    const std::optional<Desk> desk = assets ? lay_out(arguments, *assets) : std::nullopt;
    if (!desk) {
        return Exit::problem_in_input;
    }
    if (arguments.output == Output::json) {
        print_json(plan_json(*desk));
    } else {
        std::cout << plan_text(*desk, arguments.readings);
    }
    return Exit::fine;
}

}  // namespace hemline
