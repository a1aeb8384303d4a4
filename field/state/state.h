// What screens may look at.
#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "engine/measure/length_text.h"
#include "engine/plan/plan.h"
#include "engine/record/clock_doubt.h"
#include "engine/record/event.h"
#include "engine/record/job.h"
#include "engine/trim/section.h"
#include "engine/work/day_sheet.h"
#include "engine/work/roof_body.h"
#include "engine/work/roof_outline.h"
#include "field/state/outside.h"
#include "field/state/where.h"
#include "field/store/assets.h"
#include "field/store/people.h"
#include "field/touch/ui.h"

namespace hemline {

/// Whether the newest event is saved: it is shown at once, and called saved once the disk has
/// confirmed it.
enum class Saving { nothing, under_way, saved, failed };

/// Whether the store of jobs may be cleared without the crew knowing: a disk lasts, a browser may
/// promise that its store does.
enum class Promised { lasts, not_asked, given, refused };

/// What the machine can do with files and paper (Platform).
struct Abilities {
    bool gives_files = false, chooses_files = false, prints = false;
};

/// Everything a screen may look at.
struct State {
    std::shared_ptr<const Assets> assets;  ///< as they were read
    Catalogue catalogue;                   ///< with the trims as this job bends them
    Sections sections;                     ///< likewise
    Job job;
    Plan plan;
    std::optional<RoofOutline> outline;  ///< none: there is no edge to walk along
    std::vector<BodyOnJob> bodies;       ///< worked out from their walks
    std::vector<PlanChoice> choices;     ///< plans worth choosing from, pool by pool
    bool looking = false;                ///< more of them may be found yet
    std::vector<Event> events;
    Where where;
    std::string by;              ///< who holds the tablet
    Way way = Way::cut;          ///< and what for
    std::vector<Person> people;  ///< who has held it, the latest last
    Saving saving = Saving::nothing;
    Text saved;               ///< "saved 9:41", "saving", "not saved"
    Text notice;              ///< a sentence from the app: a torn tail was set aside, …
    bool asks_first = false;  ///< the notice says what was asked for and is not done
    Marks marks = Marks::sixteenth;
    bool tilt_there = false;             ///< this tablet has a sensor that can be read
    std::optional<EventId> undo_target;  ///< what undo would strike
    DaySpan today;                       ///< on this tablet's clock, as it was told last
    std::vector<ClockDoubt> clocks;      ///< clocks that are wrong, as far as the events tell
    std::uint64_t writer = 0;            ///< the number this tablet writes under in the job
    std::vector<std::filesystem::path> jobs;
    Outside outside;
    Hand hand = Hand::right;      ///< of who holds the tablet
    std::string language = "en";  ///< its tag, of those in the assets
    bool both_units = false;      ///< lengths are shown for the other tape too
    CrewWords crew_words;         ///< where the trade has several
    bool ask_scale = false;       ///< nobody has measured the screen or put that off
    Abilities can;
    Promised promised = Promised::lasts;
    Text backed_up;  ///< how old the last backup is, in words
};

}  // namespace hemline
