// read_certificate: checks a proof of the fewest sticks from outside.
#include <fstream>
#include <iostream>
#include <iterator>

#include "tests/certificate/reader.h"

namespace {

std::string read_file(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    if (!file) {
        throw std::runtime_error(path + " cannot be read");
    }
    return {std::istreambuf_iterator<char>(file), {}};
}

/// Nanometres in one of a unit's names; 0 for no unit.
certificate::Int unit_of(const std::string& name) {
    return name == "nm"      ? 1
           : name == "mm"    ? 1'000'000
           : name == "in"    ? 25'400'000
           : name == "16ths" ? 1'587'500
                             : 0;
}

}  // namespace

int main(int count, char** words) {
    const certificate::Int unit = count == 5 ? unit_of(words[1]) : 0;
    if (unit == 0) {
        std::cerr
            << "usage: read_certificate nm|mm|in|16ths PIECES.csv CERTIFICATE.json PLAN.json\n"
               "  the files of: hemline-cli cut PIECES.csv --unit UNIT --stock LENGTH --json "
               "--certificate CERTIFICATE.json > PLAN.json\n";
        return 2;
    }
    try {
        const auto pieces = certificate::read_pieces(read_file(words[2]), unit);
        const auto shown = nlohmann::json::parse(read_file(words[3]));
        const auto plan = nlohmann::json::parse(read_file(words[4]));
        const auto wrong = certificate::wrong_with(pieces, shown, plan);
        for (const std::string& what : wrong) {
            std::cout << "wrong: " << what << '\n';
        }
        if (wrong.empty()) {
            std::cout << "every piece lies once on one stick, and no plan uses fewer than "
                      << plan["new_lower_bound"] << " new sticks\n";
        }
        return wrong.empty() ? 0 : 1;
    } catch (const std::exception& problem) {
        std::cerr << problem.what() << '\n';
        return 1;
    }
}
