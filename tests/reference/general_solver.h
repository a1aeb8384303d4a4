// A general solver for integer programs, asked from outside: GLPK's glpsol, or COIN-OR's cbc.
#pragma once

#include <sys/resource.h>
#include <unistd.h>

#include <chrono>
#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <optional>
#include <string>

namespace reference {

enum class Solver { glpk, cbc };

inline const char* name_of(Solver solver) { return solver == Solver::glpk ? "glpsol" : "cbc"; }

/// The result of a program. `optimum`: only when the solver says that it is proved.
struct Answer {
    std::optional<std::int64_t> optimum;
    double seconds = 0;  ///< of processor time
    bool ran = false;    ///< the solver is installed and read the program
};

/// The number after `mark` in a solver's report, when that line is there.
inline std::optional<double> number_after(const std::string& line, const std::string& mark) {
    const auto at = line.find(mark);
    return at == std::string::npos
               ? std::nullopt
               : std::optional(std::strtod(line.c_str() + at + mark.size(), nullptr));
}

inline double cpu_seconds_of_children() {
    rusage used{};
    getrusage(RUSAGE_CHILDREN, &used);
    const auto seconds = [](const timeval& t) {
        return static_cast<double>(t.tv_sec) + static_cast<double>(t.tv_usec) / 1e6;
    };
    return seconds(used.ru_utime) + seconds(used.ru_stime);
}

/// Solves a program in CPLEX's LP format whose objective is called `sticks`, with the solver's
/// settings, within so many seconds.
inline Answer solve(Solver solver, const std::string& program, int seconds_most) {
    const auto now = std::chrono::steady_clock::now();
    const double before = cpu_seconds_of_children();
    const std::string base = (std::filesystem::temp_directory_path() /
                              ("hemline_reference_" + std::to_string(getpid()) + '_' +
                               std::to_string(now.time_since_epoch().count())))
                                 .string();
    std::ofstream(base + ".lp") << program;
    const std::string limit = std::to_string(seconds_most);
    const std::string command =
        solver == Solver::glpk
            ? "glpsol --lp " + base + ".lp --tmlim " + limit + " -o " + base + ".out >/dev/null"
            : "cbc " + base + ".lp -sec " + limit + " -allow 0 -ratio 0 -solve >" + base + ".out";
    Answer answer;
    answer.ran = std::system((command + " 2>/dev/null").c_str()) == 0;
    answer.seconds = cpu_seconds_of_children() - before;
    std::ifstream out(base + ".out");
    bool proved = false;
    std::optional<double> value;
    for (std::string line; std::getline(out, line);) {
        proved = proved || line.find("INTEGER OPTIMAL") != std::string::npos ||
                 line.find("Result - Optimal solution found") != std::string::npos;
        for (const char* mark : {"Objective:  sticks = ", "Objective value:"}) {
            if (const auto number = number_after(line, mark)) {
                value = number;
            }
        }
    }
    if (proved && value) {
        answer.optimum = std::llround(*value);
    }
    std::filesystem::remove(base + ".lp");
    std::filesystem::remove(base + ".out");
    return answer;
}

}  // namespace reference
