// hemline-cli: the same engine as the tablet's, for a desk and for tests.
#include <CLI/CLI.hpp>
#include <csignal>
#include <iostream>
#include <map>
#include <new>

#include "engine/words/program_version.h"
#include "engine/words/shown_text.h"
#include "field/words/shown_stream.h"
#include "tools/cli/commands.h"

namespace hemline {
namespace {

const std::map<std::string, Style> style_words = {
    {"balanced", Style::balanced}, {"equal", Style::equal}, {"full", Style::full}};
const std::map<std::string, Prefer> prefer_words = {
    {"looks", Prefer::looks}, {"laps", Prefer::laps}, {"sticks", Prefer::sticks}};
const std::map<std::string, Seam> seam_words = {{"snap_lock", Seam::snap_lock},
                                                {"mechanical", Seam::mechanical},
                                                {"nail_strip", Seam::nail_strip}};
std::map<std::string, EdgeKind> kinds_with_fold() {
    std::map<std::string, EdgeKind> kinds;
    for (const KindOfEdge& one : kinds_of_edge()) {
        if (one.fold != FoldFrom::nothing) {
            kinds.emplace(one.word, one.kind);
        }
    }
    return kinds;
}

const std::map<std::string, EdgeKind> kind_words = kinds_with_fold();
const std::map<std::string, Fascia> fascia_words = {{"plumb", Fascia::plumb},
                                                    {"square", Fascia::square_cut}};
const std::map<std::string, FixedLine> line_words = {{"eave", FixedLine::eave},
                                                     {"ridge", FixedLine::ridge}};
const std::map<std::string, ValleyStrip> strip_words = {{"screwed", ValleyStrip::screwed},
                                                        {"riveted", ValleyStrip::riveted}};
const std::map<std::string, Paper> paper_words = {{"letter", Paper::letter}, {"a4", Paper::a4}};
const std::map<std::string, BareUnit> unit_words = {{"nm", BareUnit::nanometre},
                                                    {"mm", BareUnit::millimetre},
                                                    {"in", BareUnit::inch},
                                                    {"16ths", BareUnit::sixteenth}};

/// An option that takes one of a few words.
template <class Value, class Target>
CLI::Option* add_words(CLI::App& app, const std::string& name, Target& target,
                       const std::map<std::string, Value>& words, const std::string& help) {
    return app
        .add_option_function<std::string>(
            name, [&target, &words](const std::string& word) { target = words.at(word); }, help)
        ->check(CLI::IsMember(words));
}

void add_unit(CLI::App& app, std::optional<BareUnit>& unit) {
    add_words(app, "--unit", unit, unit_words, "unit of every number that has none");
}

void add_json(CLI::App& app, Output& output) {
    app.add_flag_callback(
        "--json", [&output] { output = Output::json; }, "print JSON");
}

void add_desk(CLI::App& app, DeskArguments& desk) {
    app.add_option("READINGS", desk.readings,
                   "readings file (CSV), one row for each edge, or a JOB")
        ->required();
    app.add_option("--stock", desk.stock, "length of a stick, as \"10 ft\"");
    auto* style =
        add_words(app, "--style", desk.style, style_words, "how each run is divided for itself");
    add_words(app, "--prefer", desk.prefer, prefer_words,
              "what counts first when all runs are divided together (looks)")
        ->excludes(style);
    app.add_flag("--wrap", desk.wrap, "plan a fascia wrap on every edge too");
    app.add_flag("--cleat", desk.cleat, "plan the cleats too");
    add_unit(app, desk.unit);
    add_json(app, desk.output);
}

/// The arguments of every command: CLI11 writes into it while it parses.
struct Asked {
    DeskArguments plan;
    CutArguments cut;
    PitchArguments pitch;
    SquareArguments square;
    FoldArguments fold;
    OutlineArguments outline;
    RoofArguments roof;
    MovementArguments movement;
    PanelsArguments panels;
    BlankArguments blank;
    CardArguments card;
    PatternArguments pattern;
    StepsArguments steps;
    std::string journal;
    NewArguments start;
    TakeArguments take;
    ShowArguments show;
    DayArguments day;
    MergeArguments merge;
    JobFileArguments pack, unpack;
    CarryArguments carry;
    PickArguments pick;
    Exit exit = Exit::fine;
};

void add_cut(CLI::App& cut, Asked& asked) {
    cut.add_option("PIECES", asked.cut.pieces, "pieces to cut (CSV): length,count")->required();
    cut.add_option("--stock", asked.cut.stock, "length of a stick, as \"10 ft\"; may be repeated")
        ->required()
        ->allow_extra_args(false);
    cut.add_option("--have", asked.cut.have, "LENGTH×N on hand, used first; may be repeated")
        ->allow_extra_args(false);
    cut.add_option("--kerf", asked.cut.kerf, "metal lost at each cut (0: snips)");
    cut.add_option("--time", asked.cut.seconds, "seconds to look at most")
        ->check(CLI::Range(0.0, 86400.0));
    cut.add_option("--certificate", asked.cut.certificate, "file for the proof (JSON)");
    add_unit(cut, asked.cut.unit);
    add_json(cut, asked.cut.output);
    cut.final_callback([&asked] { asked.exit = cut_pieces(asked.cut); });
}

void add_fold(CLI::App& fold, Asked& asked) {
    add_words(fold, "--edge", asked.fold.edge, kind_words, "kind of edge")->required();
    fold.add_option("--pitch", asked.fold.pitch,
                    "pitch behind the edge, as 5/12; at a transition the lower roof's")
        ->required();
    fold.add_option("--pitch2", asked.fold.pitch2,
                    "the other roof's pitch (ridge, hip, valley: the same); at a transition the "
                    "upper roof's");
    fold.add_option("--corner", asked.fold.corner,
                    "hip, valley: plan angle inside the building between the two eaves (square)");
    add_words(fold, "--fascia", asked.fold.fascia, fascia_words, "eave, high eave (plumb)");
    add_json(fold, asked.fold.output);
    fold.final_callback([&asked] { asked.exit = print_fold(asked.fold); });
}

void add_square(CLI::App& square, Asked& asked) {
    square.add_option("SIDE", asked.square.side1, "one side, as \"30 ft\"")->required();
    square.add_option("OTHER", asked.square.side2, "the side at right angles to it")->required();
    auto* first = square.add_option("--diagonal", asked.square.diagonal1, "one diagonal, as read");
    auto* second =
        square.add_option("--diagonal2", asked.square.diagonal2, "the other one")->needs(first);
    first->needs(second);
    square.add_option("--across", asked.square.across,
                      "between the far ends of the two sides: gives the corner's angle");
    add_unit(square, asked.square.unit);
    add_json(square, asked.square.output);
    square.final_callback([&asked] { asked.exit = check_square(asked.square); });
}

void add_blank(CLI::App& blank, Asked& asked) {
    blank.add_option("--trim", asked.blank.trim, "trim id")->required();
    blank.add_option("--pitch", asked.blank.pitch, "pitch behind the edge, as 5/12 (6/12)");
    blank.add_option("--pitch2", asked.blank.pitch2, "the other roof's pitch, as for fold");
    blank.add_option("--corner", asked.blank.corner, "plan angle inside the building (square)");
    add_words(blank, "--fascia", asked.blank.fascia, fascia_words, "how the fascia stands");
    add_unit(blank, asked.blank.unit);
    add_json(blank, asked.blank.output);
    blank.final_callback([&asked] { asked.exit = show_blank(asked.blank); });
}

void add_movement(CLI::App& movement, Asked& asked) {
    movement
        .add_option("--metal", asked.movement.metal,
                    "steel, copper, stainless steel, aluminum or zinc")
        ->required();
    movement
        .add_option("--length", asked.movement.length,
                    "from the line where the panel is pinned to its free end")
        ->required();
    movement.add_option("--at", asked.movement.now, "the metal now, as 60F or 15C")->required();
    movement.add_option("--low", asked.movement.low, "the coldest it gets")->required();
    movement.add_option("--high", asked.movement.high, "the hottest it gets")->required();
    add_words(movement, "--fixed", asked.movement.fixed, line_words,
              "where the panel is pinned (ridge)");
    movement.add_option("--lip", asked.movement.lip, "the lip there is: whether it jams");
    movement.add_option("--travel", asked.movement.travel,
                        "how far a clip's tab travels: how it is set at the free end");
    add_unit(movement, asked.movement.unit);
    add_json(movement, asked.movement.output);
    movement.final_callback([&asked] { asked.exit = print_movement(asked.movement); });
}

void add_panels(CLI::App& panels, Asked& asked) {
    PanelsArguments& said = asked.panels;
    panels.add_option("SIDES", said.sides, "sides file, as for roof, or a JOB")->required();
    panels.add_option("--plane", said.plane, "this plane alone, by its first eave");
    panels.add_option("--module", said.module, "from seam to seam (16 in)");
    panels.add_option("--seam-height", said.seam_height, "of the finished seam (1 1/2 in)");
    auto* fixed = add_words(panels, "--fixed", said.fixed, line_words,
                            "where the panels are pinned (eave, assumed)");
    auto* now = panels.add_option("--at", said.now, "the metal now, as 60F or 15C");
    auto* low = panels.add_option("--low", said.low, "the coldest it gets");
    auto* high = panels.add_option("--high", said.high, "the hottest it gets");
    now->needs(low)->needs(high);
    low->needs(now);
    high->needs(now);
    panels.add_option("--metal", said.metal, "of the panels (galvanized steel)");
    panels.add_option("--side-gap", said.side_gap,
                      "from a gable or wall to the last pan's turn-up (1/4 in)");
    panels.add_flag("--legs-alike", said.legs_alike,
                    "a pan's two seam legs are alike: it may be turned end for end");
    panels.add_option("--pipe", said.pipes, "PLANE,X,Y,BASE: a pipe's boot; may be repeated")
        ->allow_extra_args(false);
    panels.add_option("--curb", said.curbs, "PLANE,X,Y,WIDTH: a curb's middle; may be repeated")
        ->allow_extra_args(false);
    panels
        .add_option("--read", said.reads,
                    "PLANE,LEFT,RIGHT,RISING,FALLING: slope lengths and diagonals as read; any "
                    "may be empty; may be repeated")
        ->take_all();
    panels
        .add_option("--shift", said.shifts,
                    "PLANE,left|right,LENGTH[,more]: seams as chosen, with a pan more; may be "
                    "repeated")
        ->take_all();
    panels.add_option("--zone", said.zone, "how far zones of high wind reach from the edges");
    panels.add_option("--valley-leg", said.valley_leg, "of the valley's metal, from its center");
    add_words(panels, "--strip", said.strip, strip_words, "what holds the strip in a valley");
    panels.add_flag("--coil", said.coil, "panels formed on the site from a coil");
    panels.add_option("--coil-width", said.coil_width, "strip for one pan (20 in for 16 in pans)");
    panels.add_option("--thickness", said.thickness, "of the metal, for its weight");
    panels.add_flag("--choices", said.choices, "the layouts worth choosing side by side");
    panels.add_option("--csv", said.csv, "file for a table of the pans");
    panels.add_option("--svg", said.svg, "file for a drawing of the planes, 1 : 20");
    add_unit(panels, said.unit);
    add_json(panels, said.output);
    panels.final_callback([&asked, fixed, now] {
        if (asked.panels.fixed == FixedLine::ridge && now->count() == 0) {
            throw CLI::RequiresError(fixed->get_name() + " ridge", "--at, --low and --high");
        }
        asked.exit = print_panels(asked.panels);
    });
}

void add_card(CLI::App& app, CardArguments& card) {
    add_desk(app, card.desk);
    app.add_option("EDGE", card.edge, "id of the edge")->required();
    app.add_option("PIECE", card.piece, "number of the piece, 1 is fitted first")->required();
    app.add_option("--trim", card.trim, "trim id (the edge's main trim)");
}

void add_pattern(CLI::App& pattern, Asked& asked) {
    add_card(pattern, asked.pattern.card);
    pattern.add_option("--svg", asked.pattern.svg, "file for a drawing at true size");
    pattern.add_option("--dxf", asked.pattern.dxf, "file for the shop's cutter, in millimeters");
    pattern.add_option("--html", asked.pattern.card.html,
                       "file for templates of the ends, to print");
    add_words(pattern, "--paper", asked.pattern.card.paper, paper_words,
              "paper to print on (letter)");
    pattern.final_callback([&asked, &pattern] {
        if (pattern.count("--svg") + pattern.count("--dxf") + pattern.count("--html") +
                pattern.count("--json") ==
            0) {
            throw CLI::RequiredError("One of --svg, --dxf, --html and --json");
        }
        asked.exit = draw_pattern(asked.pattern);
    });
}

void add_steps(CLI::App& steps, Asked& asked) {
    std::map<std::string, std::string> works;
    for (const KindOfEdge& one : kinds_of_edge()) {
        works.emplace(one.word, one.word);
    }
    steps.add_option("WORK", asked.steps.work, "kind of edge, or penetration")
        ->required()
        ->check(CLI::IsMember(works));
    add_json(steps, asked.steps.output);
    steps.final_callback([&asked] { asked.exit = print_steps(asked.steps); });
}

void add_desk_commands(CLI::App& app, Asked& asked) {
    auto& plan = *app.add_subcommand("plan", "cut list, sticks and proof of a readings file");
    add_desk(plan, asked.plan);
    plan.add_option("--certificate", asked.plan.certificate, "file for the proof (JSON)")
        ->excludes(plan.get_option("--style"));
    plan.final_callback([&asked] { asked.exit = plan_readings(asked.plan); });

    add_cut(*app.add_subcommand("cut", "cut pieces from the fewest sticks, with the proof"), asked);

    auto& pitch =
        *app.add_subcommand("pitch", "which eave trim serves a pitch, and the fold angles");
    pitch.add_option("PITCH", asked.pitch.pitch, "as 5/12, 22.6deg or 41%")->required();
    pitch.add_option("--trim", asked.pitch.trim, "say whether this trim serves");
    add_words(pitch, "--seam", asked.pitch.seam, seam_words, "seam of the panels (each is judged)");
    auto* slope = pitch.add_option("--slope", asked.pitch.slope, "a gable's slope length, as read");
    auto* run = pitch.add_option("--run", asked.pitch.run, "its level run, as read");
    slope->needs(run);
    run->needs(slope);
    add_unit(pitch, asked.pitch.unit);
    add_json(pitch, asked.pitch.output);
    pitch.final_callback([&asked] { asked.exit = check_pitch_text(asked.pitch); });

    add_fold(*app.add_subcommand("fold", "the angle the metal is folded to at a kind of edge"),
             asked);
    add_square(*app.add_subcommand("square", "square corners by 3-4-5, and by diagonals"), asked);
    add_blank(*app.add_subcommand("blank", "flat width, brake marks and order of bends of a trim"),
              asked);

    auto& outline = *app.add_subcommand("outline", "whether the roof's outline closes");
    outline
        .add_option("READINGS", asked.outline.readings,
                    "readings file (CSV), its eaves and gables in walking order")
        ->required();
    add_unit(outline, asked.outline.unit);
    add_json(outline, asked.outline.output);
    outline.final_callback([&asked] { asked.exit = print_outline(asked.outline); });

    auto& roof =
        *app.add_subcommand("roof", "planes and edges, worked out from the walk round the eaves");
    roof.add_option("SIDES", asked.roof.sides,
                    "sides file: side,kind,length,corner,pitch; the building on the left")
        ->required();
    roof.add_option("--svg", asked.roof.svg, "file for a site drawing");
    roof.add_option("--readings", asked.roof.readings,
                    "readings file to write, its lengths marked as expected");
    add_unit(roof, asked.roof.unit);
    add_json(roof, asked.roof.output);
    roof.final_callback([&asked] { asked.exit = print_roof(asked.roof); });

    add_movement(
        *app.add_subcommand("movement", "how far a panel moves: hook gap, hem, lip, joints"),
        asked);

    add_panels(*app.add_subcommand("panels", "the panels of each plane: seams, lengths, clips"),
               asked);

    auto& card =
        *app.add_subcommand("card", "every mark of one piece, from the end the tape hooks");
    add_card(card, asked.card);
    card.add_option("--html", asked.card.html, "file for the card, to print");
    add_words(card, "--paper", asked.card.paper, paper_words, "paper to print on (letter)");
    card.final_callback([&asked] { asked.exit = show_card(asked.card); });

    add_pattern(*app.add_subcommand("pattern", "the flat pattern of one piece, drawn to be cut"),
                asked);
    add_steps(*app.add_subcommand("steps", "the steps of a kind of edge, or of a penetration"),
              asked);
}

void add_handing_on(CLI::App& app, Asked& asked) {
    auto& merge = *app.add_subcommand("merge", "put several tablets' jobs together into one");
    merge.add_option("OUT", asked.merge.out, "folder of the whole job")->required();
    merge.add_option("JOB", asked.merge.jobs, "folders to put together, in any order")->required();
    merge.final_callback([&asked] { asked.exit = merge_jobs(asked.merge); });

    auto& pack = *app.add_subcommand("pack", "put a job into one file, to hand over");
    pack.add_option("JOB", asked.pack.job, "folder of the job")->required();
    pack.add_option("FILE", asked.pack.file, "job file to write (zip)")->required();
    pack.final_callback([&asked] { asked.exit = pack_to_file(asked.pack); });

    auto& unpack = *app.add_subcommand("unpack", "take a job out of a job file");
    unpack.add_option("FILE", asked.unpack.file, "job file")->required();
    unpack.add_option("OUT", asked.unpack.job, "folder for the job: a new one")->required();
    unpack.final_callback([&asked] { asked.exit = unpack_file(asked.unpack); });

    auto& carry = *app.add_subcommand("carry", "take in and give out through a crew folder");
    carry.add_option("JOB", asked.carry.job, "folder of the job; a new one joins")->required();
    carry.add_option("CREW", asked.carry.crew, "folder that a synchronizer shares")->required();
    carry.add_option("--job", asked.carry.which, "which of the crew folder's jobs to join");
    carry.final_callback([&asked] { asked.exit = carry_job(asked.carry); });

    auto& pick = *app.add_subcommand("pick", "let one of several events made apart stand");
    pick.add_option("JOB", asked.pick.job, "folder of the job")->required();
    pick.add_option("EVENT", asked.pick.event, "id of the event that stands")->required();
    pick.add_option("--by", asked.pick.by, "who picks");
    pick.add_flag("--put-away", asked.pick.put_away,
                  "EVENT is a number that was written twice: its notice goes");
    pick.final_callback([&asked] { asked.exit = pick_event(asked.pick); });
}

void add_job_commands(CLI::App& app, Asked& asked) {
    auto& journal = *app.add_subcommand("journal", "the events of a job, one a line, the id first");
    journal.add_option("JOB", asked.journal, "folder of the job")->required();
    journal.final_callback([&asked] { asked.exit = print_journal(asked.journal); });

    auto& notices = *app.add_subcommand("notices", "what the program is made of, with the notices");
    notices.final_callback([&asked] { asked.exit = print_notices(); });

    auto& start = *app.add_subcommand("new", "start a job");
    start.add_option("JOB", asked.start.job, "folder of the job")->required();
    auto& from = *start.add_option("--from", asked.start.readings,
                                   "readings file: edges and first readings");
    start.add_option("--roof", asked.start.roof, "sides file: the walk, and the edges it gives")
        ->excludes(&from);
    start.add_option("--name", asked.start.name, "name of the job (its folder's)");
    start.add_option("--by", asked.start.by, "who writes");
    add_unit(start, asked.start.unit);
    start.final_callback([&asked] { asked.exit = start_job(asked.start); });

    auto& take = *app.add_subcommand("take", "record one reading");
    take.add_option("JOB", asked.take.job, "folder of the job")->required();
    take.add_option("EDGE", asked.take.edge, "id of the edge")->required();
    take.add_option("LENGTH", asked.take.length, "as \"31 ft 7 5/8 in\" or \"9650 mm\"")
        ->required();
    take.add_option("--by", asked.take.by, "who read the tape");
    take.add_flag_callback(
        "--remainder", [&asked] { asked.take.of = ReadingOf::remainder; },
        "the reading is what is left for the last piece, from its fixed neighbour's end");
    add_unit(take, asked.take.unit);
    take.final_callback([&asked] { asked.exit = take_reading(asked.take); });

    auto& show = *app.add_subcommand("show", "edges, readings, status and next cut of a job");
    show.add_option("JOB", asked.show.job, "folder of the job")->required();
    add_unit(show, asked.show.unit);
    add_json(show, asked.show.output);
    show.final_callback([&asked] { asked.exit = show_job(asked.show); });

    auto& day = *app.add_subcommand("day", "what was done on one day of a job, by whom");
    day.add_option("JOB", asked.day.job, "folder of the job")->required();
    day.add_option("DAY", asked.day.day, "as 2026-05-04, by the clocks of this place")->required();
    day.add_option("--html", asked.day.html, "page to print, a file to write");
    add_words(day, "--paper", asked.day.paper, paper_words, "in the printer (letter)");
    add_json(day, asked.day.output);
    day.final_callback([&asked] { asked.exit = show_day(asked.day); });
}

/// What CLI11 says of wrong words quotes them.
std::string wrong_words(const CLI::App*, const CLI::Error& wrong) {
    return shown_text(wrong.what()) + "\nRun with --help for more information.\n";
}

}  // namespace
}  // namespace hemline

int main(int count, char** words) {
    using namespace hemline;
    std::signal(SIGXFSZ, SIG_IGN);  // too large a file is a failed write
    const ShownStream shown_out(std::cout), shown_err(std::cerr);
    CLI::App app("Plans and records the trim of a standing-seam metal roof.", "hemline-cli");
    app.failure_message(wrong_words);
    app.set_version_flag("--version", words_of(program_version()).english(), "version and commit");
    app.require_subcommand(1);
    Asked asked;
    add_desk_commands(app, asked);
    add_job_commands(app, asked);
    add_handing_on(app, asked);
    try {
        app.parse(count, words);
    } catch (const CLI::ParseError& wrong) {
        const bool asked_for_help = app.exit(wrong) == 0;
        return static_cast<int>(asked_for_help ? Exit::fine : Exit::wrong_usage);
    } catch (const std::bad_alloc&) {
        asked.exit = complain("memory", 0, 0, "This device has no memory left for it.",
                              "Close other programs, then do it again.");
    }
    std::cout.flush();
    if (!std::cout) {
        asked.exit = complain("stdout", 0, 0, "The answer could not be written out in full.",
                              "Make room where it goes to, and ask again.");
    }
    return static_cast<int>(asked.exit);
}
