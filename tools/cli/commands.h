// The commands of hemline-cli; each prints its answer on stdout and returns the exit code.
#pragma once

#include <string>

#include "tools/cli/arguments.h"
#include "tools/cli/complaint.h"

namespace hemline {

/// Cut list, sticks and proof of a readings file.
Exit plan_readings(const DeskArguments& arguments);
/// The fewest sticks for a list of pieces.
Exit cut_pieces(const CutArguments& arguments);
/// Which eave trim and seam suit a pitch, and the fold angles.
Exit check_pitch_text(const PitchArguments& arguments);
/// The angle the metal is folded to at a kind of edge.
Exit print_fold(const FoldArguments& arguments);
/// Whether the walk around a roof's edges closes, and what would close it.
Exit print_outline(const OutlineArguments& arguments);
/// The planes and edges of a roof, from the walk round its eaves.
Exit print_roof(const RoofArguments& arguments);
/// How far a panel moves, and the gap, hem, lip and joints that let it.
Exit print_movement(const MovementArguments& arguments);
/// The panels of each plane: seams, lengths to order, clips, closures, pairs.
Exit print_panels(const PanelsArguments& arguments);
/// Whether a corner or a rectangle is square, by 3-4-5 and by diagonals.
Exit check_square(const SquareArguments& arguments);
/// Width of a trim's blank, its brake marks and the order of its bends.
Exit show_blank(const BlankArguments& arguments);
/// Every mark of a piece.
Exit show_card(const CardArguments& arguments);
/// The steps of a kind of edge, or of a penetration, as the procedure has them.
Exit print_steps(const StepsArguments& arguments);
/// The flat pattern of a piece, as drawings.
Exit draw_pattern(const PatternArguments& arguments);
/// The job's events, one on each line, the id first.
Exit print_journal(const std::string& job);
/// Starts a job, with the edges and first readings of a file.
Exit start_job(const NewArguments& arguments);
/// Records a reading; stdout's last word is its event id, after the sync returned.
Exit take_reading(const TakeArguments& arguments);
/// Merges jobs.
Exit merge_jobs(const MergeArguments& arguments);
/// Puts a job into a single file.
Exit pack_to_file(const JobFileArguments& arguments);
/// Takes a job out of such a file, under a new device number.
Exit unpack_file(const JobFileArguments& arguments);
/// Takes in what is new in a crew folder, and sends out what is new here.
Exit carry_job(const CarryArguments& arguments);
/// Where two tablets disagree, picks a side; the other sides no longer count.
Exit pick_event(const PickArguments& arguments);
/// What was done on a day of a job, by whom.
Exit show_day(const DayArguments& arguments);
/// What the program is made of, with each part's notice.
Exit print_notices();
/// Edges, readings, status and next cut of a job.
Exit show_job(const ShowArguments& arguments);

}  // namespace hemline
