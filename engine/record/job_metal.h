// The metal on hand: sticks opened, offcuts left, sticks counted, and what each event does to it.
#pragma once

#include "engine/record/event.h"
#include "engine/record/job.h"
#include "engine/record/places.h"

namespace hemline {

/// The metal of a job that is being folded.
struct Metal {
    Job& job;
    Places<EventId>& offcuts;  ///< by what left them
};

/// Takes `length` and the kerf from the metal of an event; the rest is an offcut, however short:
/// the plan may have a piece for it. An offcut that is not there (its cut was struck, or another
/// tablet used it) leaves nothing: metal is never invented.
void take_metal(Metal metal, const Event& event, const std::string& edge, TrimRole role,
                const MetalTaken& taken, Length length);

/// Adds what was counted, in place of what the event supersedes. A correction of what is no longer
/// there changes nothing.
void count_metal(Metal metal, const Event& event, const MetalCounted& counted);

/// A new stick becomes a stick on hand of the measured length; an offcut gets the measured length.
void measure_stick(Metal metal, const Event& event, const StickMeasured& measured);

void spoil_stick(Metal metal, const StickSpoiled& spoiled);

/// The longest is the stock that edges are divided by. Lengths that no run can be made of change
/// nothing; of too many the longest are taken.
void choose_stock(Job& job, const StockChosen& chosen);

}  // namespace hemline
