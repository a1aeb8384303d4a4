#include "tools/bench_event/saving.h"

#include <fcntl.h>

#include "engine/words/result.h"
#include "field/store/disk_problem.h"
#include "field/store/journal_file.h"
#include "field/store/open_file.h"

namespace hemline {

namespace {

constexpr std::uint64_t device = 1;

ReadingTaken reading(int number) { return {"A", ReadingOf::edge, feet(31) + sixteenths(number)}; }

}  // namespace

Result<SavingTimes> time_saving(const std::filesystem::path& folder, int count) {
    const auto here = JournalFile::open(folder / "here", device, Opening::new_job);
    const auto apart = JournalFile::open(folder / "apart", device, Opening::new_job,
                                         std::make_shared<Disk>(), [] {});
    if (!here || !apart) {
        return here ? apart.problem() : here.problem();
    }
    Disk disk;
    const std::filesystem::path path = folder / "bare";
    const OpenFile bare(disk.open(path, O_WRONLY | O_APPEND | O_CREAT));
    std::vector<double> append_ms, bare_ms, hand_over_ms;
    for (int i = 0; i < count; ++i) {
        Result<Event> kept = Problem{};
        append_ms.push_back(ms_of([&] { kept = (*here)->append(reading(i), "Ada", {}, 1); }));
        if (!kept) {
            return kept.problem();
        }
        const Bytes frame = frame_of(*kept);
        bool written = false;
        bare_ms.push_back(ms_of([&] {
            written = write_all(disk, bare.get(), frame) == 0 && disk.sync(bare.get()) == 0;
        }));
        if (!written) {
            return disk_problem("written", path, errno);
        }
        hand_over_ms.push_back(
            ms_of([&] { kept = (*apart)->hand_over(reading(i), "Ada", {}, 1); }));
        (*apart)->settle();
        for (const SaveReturned& back : (*apart)->returned()) {
            if (back.problem) {
                return *back.problem;
            }
        }
    }
    return SavingTimes{Times(append_ms), Times(bare_ms), Times(hand_over_ms)};
}

}  // namespace hemline
