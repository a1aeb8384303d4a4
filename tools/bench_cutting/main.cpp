// bench_cutting: how soon the fewest sticks are proved, what general solvers take for the same
// jobs, whether they find the same counts, and how long a replan takes.
#include <cstdio>
#include <cstdlib>
#include <string>
#include <thread>

#include "tools/bench_cutting/against.h"
#include "tools/bench_cutting/replan.h"
#include "tools/bench_cutting/roofs.h"
#include "tools/bench_cutting/timing.h"

namespace {

using namespace hemline;

struct Wanted {
    int jobs = 200, races = 3, race_seconds = 10, cutting = 160, joint = 160, first = 0,
        seconds = 60, steps = 4;
};

constexpr const char* usage =
    "usage: bench_cutting [--jobs N] [--races N] [--race-seconds S] [--cutting N] [--joint N] "
    "[--first N] [--steps N] [--seconds S]\n"
    "  --jobs          of each class, timed (200)\n"
    "  --races         of each class, against glpsol and cbc (3) within --race-seconds (10) each\n"
    "  --cutting       jobs whose count is compared with a reference (160), within --seconds (60)\n"
    "  --joint         roofs whose every choice is compared (160), within --seconds\n"
    "  --steps         millions, for the choices of nine roofs on a fine grid (4)\n"
    "  --first         of those roofs, counted from 0: the same roof in every run (0)\n";

bool read(int count, char** words, Wanted& wanted) {
    for (int i = 1; i < count; i += 2) {
        const std::string name = words[i];
        int* own = name == "--jobs"           ? &wanted.jobs
                   : name == "--races"        ? &wanted.races
                   : name == "--race-seconds" ? &wanted.race_seconds
                   : name == "--cutting"      ? &wanted.cutting
                   : name == "--joint"        ? &wanted.joint
                   : name == "--first"        ? &wanted.first
                   : name == "--steps"        ? &wanted.steps
                   : name == "--seconds"      ? &wanted.seconds
                                              : nullptr;
        char* end = nullptr;
        const long number = i + 1 < count ? std::strtol(words[i + 1], &end, 10) : -1;
        if (own == nullptr || number < 0 || number > 100'000 || *end != '\0') {
            return false;
        }
        *own = static_cast<int>(number);
    }
    return true;
}

double share(int part, int all) { return all == 0 ? 0 : 100.0 * part / all; }

/// Prints what was asked for beside what was reached.
bool tell(const char* what, bool reached) {
    std::printf("  %-66s %s\n", what, reached ? "reached" : "NOT REACHED");
    return reached;
}

bool time_classes(const std::vector<JobClass>& classes) {
    std::printf("%-24s %5s %9s %9s %9s   %8s %6s %6s\n", "class, proved within", "jobs", "median",
                "p99", "most ms", "100 ms", "1 s", "2 s");
    bool trim_proved = true, fast = true;
    int packed = 0, packed_proved = 0, wrong = 0;
    for (const JobClass& own : classes) {
        const ClassFigures f = time_class(own);
        std::printf("%-24s %5d %9.2f %9.2f %9.2f   %6.1f %% %4.1f %% %4.1f %%\n", own.name.c_str(),
                    f.jobs, percentile(f.ms, 50), percentile(f.ms, 99), percentile(f.ms, 100),
                    share(f.proved_in_100_ms, f.jobs), share(f.proved_in_1_s, f.jobs),
                    share(f.proved_in_2_s, f.jobs));
        std::fflush(stdout);
        wrong += f.wrong;
        if (own.group == ClassGroup::trim) {
            trim_proved = trim_proved && f.proved_in_2_s == f.jobs;
            fast = fast && percentile(f.ms, 50) <= 1 && percentile(f.ms, 99) <= 200;
        } else {
            packed += f.jobs;
            packed_proved += f.proved_in_2_s;
        }
    }
    std::printf("bin packing classes together: %.1f %% proved within 2 s\n",
                share(packed_proved, packed));
    bool fine = tell("every roof-like and short-flashing job proved", trim_proved);
    fine = tell("their median at most 1 ms, their p99 at most 200 ms", fast) && fine;
    fine = tell("95 % of the bin packing classes within 2 s", packed_proved * 100 >= packed * 95) &&
           fine;
    return tell("every plan and bound passes the tests' checker", wrong == 0) && fine;
}

bool compare_counts(const Wanted& wanted) {
    const Against cutting = compare_cutting(wanted.cutting, wanted.seconds);
    const Against joint = compare_joint(wanted.first, wanted.joint, wanted.seconds);
    for (const auto& [name, own] :
         {std::pair{"cutting alone", cutting}, std::pair{"joint", joint}}) {
        std::printf(
            "%-14s %4d counts compared, %d not proved by the reference within %d s, %d not "
            "proved by us (%d take more than the reference proves), %d wrong\n",
            name, own.jobs, own.not_proved, wanted.seconds, own.open, own.more, own.wrong);
    }
    return tell("same count wherever both prove theirs", cutting.wrong + joint.wrong == 0);
}

}  // namespace

int main(int count, char** words) {
    Wanted wanted;
    if (!read(count, words, wanted)) {
        std::fputs(usage, stderr);
        return 2;
    }
    double load = 0;
    getloadavg(&load, 1);
    std::printf("times are of the processor; load of the machine at the start: %.1f of %u cores\n",
                load, std::thread::hardware_concurrency());
    const std::vector<JobClass> classes = job_classes(wanted.jobs);
    bool fine = wanted.jobs == 0 || time_classes(classes);
    std::printf("\nreplan after an event, roof of 70 edges\n");
    fine = tell("16 ms at the median", time_replans()) && fine;
    std::printf("\nchoices of nine generated roofs, %d million steps each\n", wanted.steps);
    time_roofs(std::int64_t{1'000'000} * wanted.steps);
    std::printf("\nthe same jobs by general solvers, within %d s each\n", wanted.race_seconds);
    int differ = 0;
    for (const JobClass& own : classes) {
        differ += race(own, wanted.races, wanted.race_seconds);
    }
    fine = tell("same count wherever both prove theirs", differ == 0) && fine;
    std::printf("\ncounts against references\n");
    fine = compare_counts(wanted) && fine;
    return fine ? 0 : 1;
}
