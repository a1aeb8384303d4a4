// Any bytes as a journal: every byte is accounted for, what is read writes back the same, and the
// merge and the job it makes hold together.
#include <cstdlib>

#include "engine/record/fact_words.h"
#include "engine/record/job.h"
#include "engine/record/merge.h"
#include "engine/record/pick.h"

using namespace hemline;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const std::span<const std::uint8_t> journal(bytes, size);
    const JournalRead read = read_journal(journal);
    std::size_t counted = 0;
    for (const SetAside& stretch : read.set_aside) {
        counted += stretch.size;
    }
    for (const Event& event : read.events) {
        counted += frame_of(event).size();
        describe(event.fact);
    }
    Merge once, twice;
    once.add(1, journal);
    twice.add(1, journal);
    twice.add(1, journal);
    if (counted != size || !(once.journals() == twice.journals())) {
        std::abort();
    }
    const std::vector<Event> events = in_order(read.events);
    const Job job = replay(events);
    for (const Conflict& conflict : job.conflicts) {
        pick(job, events, conflict.sides.front().id).ok();
    }
    return 0;
}
