// What each command is told on the command line.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/handover/paper.h"
#include "engine/joint/joint.h"
#include "engine/measure/length_text.h"
#include "engine/panels/panel_layout.h"
#include "engine/record/said_values.h"
#include "engine/roof/edge.h"
#include "engine/trim/practice.h"

namespace hemline {

enum class Output { text, json };

/// A readings file planned at the desk, and under which rules.
struct DeskArguments {
    std::string readings;        ///< path of the CSV
    std::string stock;           ///< length of a stick as typed; empty: practice
    std::optional<Style> style;  ///< every run by itself; none: together, by preference
    Prefer prefer = Prefer::looks;
    bool wrap = false;
    bool cleat = false;
    std::string certificate;  ///< of `plan`: file to write the proof to; empty: none
    std::optional<BareUnit> unit;
    Output output = Output::text;
};

/// Pieces to cut from sticks, without a roof.
struct CutArguments {
    std::string pieces;              ///< path of the CSV: length,count
    std::vector<std::string> stock;  ///< lengths as typed; as many of each as wanted
    std::vector<std::string> have;   ///< LENGTH×N of sticks and offcuts that are used first
    std::string kerf;                ///< metal lost at each cut; empty: none
    std::optional<double> seconds;   ///< to look for fewer sticks at most
    std::string certificate;         ///< file to write the proof to; empty: none
    std::optional<BareUnit> unit;
    Output output = Output::text;
};

struct PitchArguments {
    std::string pitch;
    std::string trim;  ///< empty: all
    Seam seam = Seam::unknown;
    std::optional<std::string> slope, run;  ///< of a gable, as read
    std::optional<BareUnit> unit;
    Output output = Output::text;
};

struct SquareArguments {
    std::string side1, side2;
    std::optional<std::string> diagonal1, diagonal2, across;
    std::optional<BareUnit> unit;
    Output output = Output::text;
};

struct FoldArguments {
    EdgeKind edge = EdgeKind::eave;
    std::string pitch;
    std::optional<std::string> pitch2, corner;
    Fascia fascia = Fascia::plumb;
    Output output = Output::text;
};

struct RoofArguments {
    std::string sides;          ///< path of the CSV
    std::string svg, readings;  ///< files to write; empty: none
    std::optional<BareUnit> unit;
    Output output = Output::text;
};

struct MovementArguments {
    std::string metal, length;
    std::string now, low, high;  ///< temperatures of the metal
    FixedLine fixed = FixedLine::ridge;
    std::string lip, travel;  ///< of the trim and of the clip there is; empty: not judged
    std::optional<BareUnit> unit;
    Output output = Output::text;
};

struct PanelsArguments {
    std::string sides;                          ///< path of the CSV
    std::string plane;                          ///< by its first eave; empty: all
    std::string module, seam_height, side_gap;  ///< as typed; empty: practice
    FixedLine fixed = FixedLine::unsaid;
    std::string now, low, high;  ///< temperatures of the metal; empty: not said
    std::string metal;           ///< of the panels; empty: not said
    bool legs_alike = false;
    std::vector<std::string> pipes, curbs;  ///< "A, 42 in, 6 ft, 9 in"
    std::vector<std::string> reads;         ///< "A, 17 ft, 17 ft, 43 ft 6 in, 43 ft 6 in"
    std::vector<std::string> shifts;        ///< "A, right, 4 9/16 in" or "A, left, 1 in, more"
    bool choices = false;
    std::string zone, valley_leg, coil_width, thickness;  ///< as typed; empty: not said
    ValleyStrip strip = ValleyStrip::unsaid;
    bool coil = false;
    std::string csv, svg;  ///< files to write; empty: none
    std::optional<BareUnit> unit;
    Output output = Output::text;
};

struct OutlineArguments {
    std::string readings;  ///< path of the CSV
    std::optional<BareUnit> unit;
    Output output = Output::text;
};

struct BlankArguments {
    std::string trim;
    std::string pitch, pitch2;  ///< as typed; empty: 6/12, and the same on both sides
    std::string corner;         ///< degrees; empty: square
    Fascia fascia = Fascia::plumb;
    std::optional<BareUnit> unit;
    Output output = Output::text;
};

struct CardArguments {
    DeskArguments desk;
    std::string edge;
    int piece = 0;
    std::string trim;  ///< empty: the edge's main trim
    std::string html;  ///< page to print, to be written; empty: none
    Paper paper = Paper::letter;
};

struct PatternArguments {
    CardArguments card;
    std::string svg, dxf;  ///< files to write; empty: none
};

struct NewArguments {
    std::string job;
    std::string readings;  ///< empty: none yet
    std::string roof;      ///< sides file; empty: none
    std::string name;      ///< empty: the folder's name
    std::string by;
    std::optional<BareUnit> unit;
};

struct TakeArguments {
    std::string job, edge, length, by;
    ReadingOf of = ReadingOf::edge;
    std::optional<BareUnit> unit;
};

struct MergeArguments {
    std::string out;
    std::vector<std::string> jobs;
};

/// A job and the file it is packed into or unpacked from.
struct JobFileArguments {
    std::string job, file;
};

struct CarryArguments {
    std::string job, crew;
    std::string which;  ///< id of the job's beginning, where the crew folder holds several
};

struct PickArguments {
    std::string job, event, by;
    bool put_away = false;  ///< `event` is a number that was written twice
};

struct StepsArguments {
    std::string work;  ///< a kind of edge, or "penetration"
    Output output = Output::text;
};

struct DayArguments {
    std::string job, day;
    std::string html;  ///< file to write; empty: none
    Paper paper = Paper::letter;
    Output output = Output::text;
};

struct ShowArguments {
    std::string job;
    std::optional<BareUnit> unit;
    Output output = Output::text;
};

}  // namespace hemline
