// What screens may read, the drafts they may write, and the wishes they return.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "engine/measure/length_text.h"
#include "engine/measure/tilt.h"
#include "engine/plan/plan.h"
#include "engine/record/clock_doubt.h"
#include "engine/record/event.h"
#include "engine/record/job.h"
#include "engine/trim/section.h"
#include "engine/work/edge_change.h"
#include "engine/work/procedure.h"
#include "engine/work/roof_outline.h"
#include "field/state/outside.h"
#include "field/store/assets.h"
#include "field/store/people.h"
#include "field/touch/ui.h"

namespace hemline {

enum class Place {
    jobs,
    roof,
    add_edge,
    reading,
    pitch,
    tilt,
    run,
    card,
    differently,
    spoiled,
    steps,
    send_back,
    look,  ///< an edge's values against practice, for the foreman
    day,   ///< what was done on one day
    history,
    person,
    calibrate,
    sticks,
    stick,
    on_hand,
    stock,
    choices,
    folded,
    section,
    apart,
    hand_over,
    folder,
    papers,  ///< of one piece: printed, or as a drawing
    backup,
    rules,  ///< of the job: laps, tabs, screws, marks
    edge_lap,
    notices,  ///< what the program is made of
};

/// Where the crew is on the job: never saved, worked out again at a start.
struct Where {
    Place place = Place::jobs;
    std::string edge;
    TrimRole role = TrimRole::main;
    int piece = 0;
    ReadingOf reading_of = ReadingOf::edge;
    int stick = 0;  ///< number of a planned stick, or of what was made apart
};

enum class Language { english, spanish };

/// How the newest event stands: it is shown at once, and called saved when the disk has said so.
enum class Saving { nothing, under_way, saved, failed };

/// Whether the place where jobs are kept may be cleared behind the crew's back: a disk lasts, a
/// browser may promise so.
enum class Promised { lasts, not_asked, given, refused };

/// What the machine does with files and paper (Platform).
struct Abilities {
    bool gives_files = false, chooses_files = false, prints = false;
};

/// Everything a screen may look at.
struct State {
    const Assets* assets = nullptr;
    Job job;
    Plan plan;
    std::optional<RoofOutline> outline;  ///< none: there is no edge to walk along
    std::vector<PlanChoice> choices;     ///< the plans found that are worth a choice, pool by pool
    bool looking = false;                ///< more of them may be found yet
    std::vector<Event> events;
    Where where;
    std::string by;              ///< who holds the tablet
    Way way = Way::cut;          ///< and what for
    std::vector<Person> people;  ///< who has held it, the latest last
    Saving saving = Saving::nothing;
    Text saved;   ///< "saved 9:41", "saving", "not saved"
    Text notice;  ///< one sentence from the app: a torn tail was set aside, …
    Marks marks = Marks::sixteenth;
    bool tilt_there = false;             ///< this tablet has a sensor that may be read
    std::optional<EventId> undo_target;  ///< what undo would strike
    std::vector<ClockDoubt> clocks;      ///< that are wrong, as far as the events tell
    std::uint64_t writer = 0;            ///< the number this tablet writes under in the job
    std::vector<std::filesystem::path> jobs;
    Outside outside;
    Hand hand = Hand::right;  ///< of who holds the tablet
    Language language = Language::english;
    bool both_units = false;  ///< lengths are said on the other tape too
    bool ask_scale = false;   ///< nobody measured the screen, nor put it off
    Abilities can;
    Promised promised = Promised::lasts;
    Text backed_up;  ///< how old the last backup is, in words
};

/// A length being keyed in, field by field. Unset parts are empty.
struct LengthDraft {
    std::string feet;  ///< digits
    std::optional<int> inches;
    std::optional<int> sixteenths;
    std::string millimetres;
    int field = 0;  ///< 0 feet, 1 inches, 2 sixteenths
    Text refused;   ///< why the last key was not taken; cleared by the next one
};

/// The tablet's own sensor being read: samples that come in, and the two readings they make.
struct TiltDraft {
    bool taking = false;
    std::vector<TiltSample> coming, first, turned;
};

/// How the folded piece is looked at.
struct FoldedDraft {
    std::optional<Side> end;       ///< none: the one with more work
    int step = 2;                  ///< as cut, tabs half folded, finished, with what it meets
    float turned = 0, raised = 0;  ///< degrees, by the finger
};

/// The leg, bend or hem that is being said anew, of the section's.
struct SectionDraft {
    int leg = -1, bend = -1, hem = -1;  ///< a hem by its leg
    std::optional<Hem> hem_kind;        ///< none: as it was
    std::string degrees;                ///< digits of the bend
    bool up = false;                    ///< toward the upper face
};

/// An edge that is added, or changed: one thing is asked at a time.
struct EdgeDraft {
    Edge edge;
    std::optional<EdgeField> asked = EdgeField::kind;  ///< none: all that is said of it is shown
    bool one_by_one = true;  ///< the first questions lead from one to the next
    bool choosing = false;   ///< which of the edges that are there is to change
    Text refused;            ///< why that may not change
};

struct Drafts {
    FoldedDraft folded;
    SectionDraft section;
    LengthDraft length;
    bool field_opened = false;           ///< the step has chosen the field its limit lies in
    bool keys_out = false;               ///< who learns has seen the step and keys its value in
    std::optional<LengthDraft> cleared;  ///< what "start again" took off, to be put back
    std::string pitch_number;            ///< digits and a point
    SlopeNotation pitch_notation = SlopeNotation::rise_in_12;
    TiltDraft tilt;
    std::string typed;  ///< keyboard or laser text so far
    std::string count;  ///< digits
    std::string name;
    std::string rule;                    ///< the key of the rule being set
    std::optional<Way> way;              ///< what the person is to do, when it is chosen
    std::optional<std::int64_t> day_ms;  ///< a time on the day that is looked at
    float px_per_mm = 0;                 ///< of the screen being measured, 0: not begun
    bool lay_card = true;                ///< it is measured by a bank card, or by the tape
    bool digits_shown = false;           ///< where letters and digits take turns
    bool naming_job = false;             ///< the name is a new job's, not a person's
    EdgeDraft edge;
    std::int64_t sticks = 1;          ///< so many of the length keyed in lie there
    std::optional<EventId> corrects;  ///< what was counted before
    std::optional<EventId> chosen;    ///< of what was made apart
    bool striking = false;     ///< the last reading: no key lies beside the touch that does it
    bool doubt_shown = false;  ///< the reading was questioned; keeping it again is on purpose
    bool paper_a4 = false;     ///< templates on A4, not letter
    std::optional<std::size_t> part;  ///< of what it is made of: the one whose notice is read
    Text exception_asked;  ///< why the answer lies outside practice; it may be noted by name
};

/// What leaves the program, or comes into it.
enum class Errand {
    back_up,
    choose_file,
    ask_promise,
    print_card,
    print_templates,
    print_day,
    give_svg,
    give_dxf
};

/// What a touch asks for.
struct Wish {
    std::optional<Fact> fact;
    std::vector<EventId> supersedes;
    std::optional<Where> go;
    bool undo = false;
    bool toggle_light = false;
    bool toggle_hand = false;
    bool toggle_language = false;
    bool toggle_units = false;
    bool start_demo = false;
    bool put_off_scale = false;     ///< the screen is not measured now
    std::optional<float> scale_by;  ///< the screen has so many times the pixels in a millimetre
    std::optional<std::string> start_job;  ///< its name
    std::optional<std::filesystem::path> open_job;
    std::optional<EventId> pick;  ///< of what was made apart, this is to stand
    std::optional<OutsideWish> outside;
    std::optional<Errand> errand;
    std::optional<Person> hold;  ///< this person holds the tablet now
};

}  // namespace hemline
