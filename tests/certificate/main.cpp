// read_certificate: checks a proof of the fewest sticks from outside, of `cut` or of `plan`.
#include <fstream>
#include <iostream>
#include <iterator>

#include "tests/certificate/joint_file.h"
#include "tests/certificate/plan_print.h"
#include "tests/certificate/table.h"

namespace {

std::string read_file(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    if (!file) {
        throw std::runtime_error(path + " cannot be read");
    }
    return {std::istreambuf_iterator<char>(file), {}};
}

constexpr const char* usage =
    "usage: read_certificate nm|mm|in|16ths PIECES.csv CERTIFICATE.json PLAN.json\n"
    "  the files of: hemline-cli cut PIECES.csv --unit UNIT --stock LENGTH --json "
    "--certificate CERTIFICATE.json > PLAN.json\n"
    "or: read_certificate --plan nm|mm|in|16ths READINGS.csv CERTIFICATE.json PLAN.json\n"
    "  the files of: hemline-cli plan READINGS.csv --unit UNIT --json "
    "--certificate CERTIFICATE.json > PLAN.json\n"
    "  UNIT is that of numbers that have none; exit 1: wrong, 3: nothing wrong, but a bound whose "
    "proof is absent\n";

/// Nanometers in a unit, by any of its names; 0 if it is not a unit.
certificate::Int unit_of(const std::string& name) {
    return name == "nm"      ? 1
           : name == "mm"    ? 1'000'000
           : name == "in"    ? 25'400'000
           : name == "16ths" ? 1'587'500
                             : 0;
}

}  // namespace

int main(int count, char** words) {
    const std::vector<std::string> all(words + 1, words + count);
    const bool of_plan = all.size() == 5 && all[0] == "--plan";
    const certificate::Int unit = of_plan ? unit_of(all[1]) : all.size() == 4 ? unit_of(all[0]) : 0;
    if (unit == 0) {
        std::cerr << usage;
        return 2;
    }
    try {
        const std::string asked = read_file(all[of_plan ? 2 : 1]);
        const auto shown = nlohmann::json::parse(read_file(all[of_plan ? 3 : 2]));
        const auto plan = nlohmann::json::parse(read_file(all[of_plan ? 4 : 3]));
        const auto wrong =
            of_plan
                ? certificate::wrong_with_plan(certificate::read_readings(asked, unit), shown, plan)
                : certificate::wrong_with(certificate::read_pieces(asked, unit), shown, plan);
        for (const std::string& what : wrong) {
            std::cout << "wrong: " << what << '\n';
        }
        if (wrong.empty() && of_plan) {
            const auto readings = certificate::read_readings(asked, unit);
            for (const std::string& what : certificate::unchecked(readings, shown, plan)) {
                std::cout << "not checked: " << what << '\n';
            }
            const auto absent = certificate::proofs_absent(shown);
            for (const std::string& what : absent) {
                std::cout << "not shown: " << what << '\n';
            }
            if (!absent.empty()) {
                return 3;
            }
        }
        if (wrong.empty() && of_plan) {
            std::cout << "with " << shown["prefer"]
                      << " first, every choice divides and cuts its edges as it must, and no plan "
                         "within its laps and unbalanced edges uses fewer new sticks than its "
                         "bound\n";
        } else if (wrong.empty()) {
            std::cout << "every piece lies once on one stick, and no plan uses fewer than "
                      << plan["new_lower_bound"] << " new sticks\n";
        }
        return wrong.empty() ? 0 : 1;
    } catch (const certificate::Refused& problem) {
        std::cerr << all[of_plan ? 2 : 1] << ':' << problem.what() << '\n';
        return 1;
    } catch (const std::exception& problem) {
        std::cerr << problem.what() << '\n';
        return 1;
    }
}
