// `plan`: cut list, sticks and proof of a readings file.
#include <fstream>
#include <iostream>

#include "tools/cli/assets_here.h"
#include "tools/cli/commands.h"
#include "tools/cli/plan_certificate.h"
#include "tools/cli/plan_print.h"

namespace hemline {

namespace {

Exit write_certificate(const DeskArguments& arguments, const Desk& desk) {
    const PlanCertificate certificate = certificate_of(
        choices_by_pool(desk.job, desk.catalogue, options_of(arguments)), arguments.prefer);
    std::ofstream file(arguments.certificate, std::ios::binary);
    file << json_text(certificate.json, 1);
    file.close();
    if (!file) {
        return complain("--certificate", 0, 0, "The proof could not be written there.",
                        "Name a file in a folder that may be written to.");
    }
    if (certificate.not_shown > 0) {
        complain("--certificate", 0, 0,
                 "The certificate lacks what shows the bounds of " +
                     std::to_string(certificate.not_shown) + " choices.",
                 "They rest on the proof in docs/cutting.md alone.");
    }
    return Exit::fine;
}

}  // namespace

Exit plan_readings(const DeskArguments& arguments) {
    const std::optional<Assets> assets = assets_here();
    const std::optional<Desk> desk = assets ? lay_out(arguments, *assets) : std::nullopt;
    if (!desk) {
        return Exit::problem_in_input;
    }
    if (!arguments.certificate.empty()) {
        const Exit written = write_certificate(arguments, *desk);
        if (written != Exit::fine) {
            return written;
        }
    }
    if (arguments.output == Output::json) {
        print_json(plan_json(*desk));
    } else {
        std::cout << plan_text(*desk, arguments.readings);
    }
    return Exit::fine;
}

}  // namespace hemline
