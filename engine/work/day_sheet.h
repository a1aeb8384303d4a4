// The day sheet: what was done on a day and by whom, read from the journal as it stands now.
//
//   Finished: C (Ben 15:40)      Cut: C piece 2, 9 ft 4 in (Ada 10:12)     Spoiled · Exceptions ·
//   Sent back · Tablets disagree: of any day
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "engine/record/fact_words.h"
#include "engine/record/job.h"

namespace hemline {

/// From a midnight of the tablet to the next, which no longer belongs to it: Unix ms.
struct DaySpan {
    std::int64_t from_ms = 0, to_ms = 0;

    [[nodiscard]] bool holds(WallTime time) const { return time.ms >= from_ms && time.ms < to_ms; }
    bool operator==(const DaySpan&) const = default;
};

/// What a person did that day, counted.
struct PersonDay {
    std::string name;  ///< empty: nobody named
    std::int64_t finished = 0, cut = 0, sticks_opened = 0, spoiled = 0;
    std::int64_t readings = 0, steps = 0, exceptions = 0, sent_back = 0;
};

/// Everything is counted once, as it stands now: what was struck since is left out, a piece spoiled
/// later does not count as cut, a spare cut counts as spoiled by whoever cut it, and an edge sent
/// back later does not count as finished. A stick stays opened whatever became of its piece.
struct DaySheet {
    std::string job;
    std::vector<Event> finished, cut, spoiled, exceptions, sent_back;  ///< in the common order
    std::int64_t sticks_opened = 0;
    std::vector<PersonDay> people;    ///< by name
    std::vector<Conflict> conflicts;  ///< open now, of any day
};

/// `events` are the job's, in_order().
DaySheet day_sheet(const Job& job, std::span<const Event> events, DaySpan day);

/// The sheet in parts to print or draw: a heading, and under it lines with who and when.
struct DayLine {
    Text words;
    std::string by;
    WallTime clock;  ///< where `by` is not empty
};
struct DayPart {
    Text heading;
    std::vector<DayLine> lines;
};
std::vector<DayPart> parts_of(const DaySheet& sheet, const Names& names = {});

}  // namespace hemline
