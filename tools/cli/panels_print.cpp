#include "tools/cli/panels_print.h"

#include <algorithm>
#include <cmath>
#include <iostream>

#include "engine/panels/seam_marks.h"
#include "engine/words/csv_row.h"
#include "tools/cli/print.h"
#include "tools/cli/roof_file.h"

namespace hemline {
namespace {

std::string_view word_of_pan(PanKind kind) {
    switch (kind) {
        case PanKind::end:
            return "end";
        case PanKind::cut:
            return "cut";
        default:
            return "full";
    }
}

std::string_view word_of_line(FixedLine line) {
    return line == FixedLine::ridge ? "ridge" : "eave";
}

/// What nobody said.
std::vector<std::string> assumed_of(const PanelJob& job) {
    std::vector<std::string> assumed;
    if (job.practice.fixed_line == FixedLine::unsaid) {
        assumed.emplace_back("fixed: eave");
    }
    if (job.at && job.practice.site.panel_metal.empty()) {
        assumed.emplace_back("metal: galvanized steel");
    }
    if (job.practice.clip_zone == Length()) {
        assumed.emplace_back("clips: no zones of wind");
    }
    return assumed;
}

Json sides_json(const std::pair<Length, Length>& sides) {
    return {sides.first.nm(), sides.second.nm()};
}

Json pan_json(const LaidPan& pan) {
    Json json;
    json["pan"] = pan.number;
    if (pan.piece > 0) {
        json["piece"] = pan.piece;
    }
    json["from_nm"] = pan.from.nm();
    json["width_nm"] = pan.width.nm();
    if (pan.top_width != pan.width) {
        json["top_width_nm"] = pan.top_width.nm();
    }
    json["length_nm"] = pan.length.nm();
    json["kind"] = word_of_pan(pan.kind);
    json["foot"] = sides_json(pan.foot);
    json["top"] = sides_json(pan.top);
    if (pan.blank) {
        json["blank_nm"] = pan.blank->nm();
    }
    return json;
}

Json panel_closures_json(const PanelLayout& layout) {
    Json json = Json::array();
    for (const PanClosures& closures : layout.closures) {
        Json blanks = Json::array();
        for (const ClosureBlanks& one : closures.blanks) {
            blanks.push_back({{"count", one.count}, {"blank_nm", one.blank.nm()}});
        }
        json.push_back({{"edge", closures.edge},
                        {"count", closures.count},
                        {"blank_nm", closures.blank.nm()},
                        {"blanks", std::move(blanks)}});
    }
    return json;
}

Json doubts_json(const PanelLayout& layout, Marks marks) {
    Json json = Json::array();
    for (const PanelDoubt& doubt : layout.doubts) {
        json.push_back({{"plane", layout.plane.name},
                        {"pan", doubt.pan > 0 ? Json(doubt.pan) : Json()},
                        {"what", doubt.problem.what.english(marks)},
                        {"mend", doubt.problem.mend.english(marks)}});
    }
    return json;
}

std::string_view word_of(BestFor sense) {
    switch (sense) {
        case BestFor::looks:
            return "looks";
        case BestFor::metal:
            return "metal";
        case BestFor::cut_pans:
            return "cut pans";
        default:
            return "least shift";
    }
}

Json choice_json(const PanelChoice& choice, Marks marks) {
    Json json;
    for (const BestFor sense : choice.best_for) {
        json["best_for"].push_back(word_of(sense));
    }
    json["shift_nm"] = choice.seams.shift.nm();
    json["one_more"] = choice.seams.one_more;
    json["pans"] = choice.pans;
    json["cut_pans"] = choice.cut_pans;
    json["narrow_ends"] = choice.narrow_ends;
    json["left_end_nm"] = choice.left_end ? Json(choice.left_end->nm()) : Json();
    json["right_end_nm"] = choice.right_end ? Json(choice.right_end->nm()) : Json();
    json["metal_nm"] = choice.metal.nm();
    json["conflicts"] = Json::array();
    for (const KeepOff& one : choice.staying) {
        json["conflicts"].push_back(one.what.english(marks));
    }
    return json;
}

std::string shifted_text(Length shift, Marks marks) {
    if (shift == Length()) {
        return "not shifted";
    }
    return "shifted " + tell_length(absolute(shift), marks) + " to the " +
           (shift > Length() ? "right" : "left");
}

void print_choices(const PanelChoices& choices, Marks marks) {
    std::cout << "  choices, each the best of " << choices.tried << " layouts tried\n";
    for (const PanelChoice& choice : choices.choices) {
        std::string senses;
        for (const BestFor sense : choice.best_for) {
            senses += (senses.empty() ? "" : ", ") + std::string(word_of(sense));
        }
        std::cout << "    " << senses << ": " << shifted_text(choice.seams.shift, marks)
                  << (choice.seams.one_more ? ", one pan more" : "") << "; " << choice.pans
                  << " pans, " << choice.cut_pans << " cut";
        for (const auto& [end, side] :
             {std::pair(choice.left_end, " left"), {choice.right_end, " right"}}) {
            if (end) {
                std::cout << ", " << tell_length(*end, marks) << side;
            }
        }
        std::cout << "; metal " << tell_length(choice.metal, marks);
        for (const KeepOff& one : choice.staying) {
            std::cout << "; too near " << one.what.english(marks);
        }
        std::cout << '\n';
    }
}

Json plane_json(const PlanePrinted& plane, Marks marks) {
    const PanelLayout& layout = plane.layout;
    Json json;
    json["plane"] = layout.plane.name;
    json["fixed"] = word_of_line(layout.ends.fixed);
    json["assumed"] = assumed_of(plane.job);
    json["lip_nm"] = layout.ends.lip.nm();
    json["gap_nm"] = layout.ends.gap.nm();
    json["hem_nm"] = layout.ends.hem.nm();
    json["shift_nm"] = layout.shift.nm();
    json["pans"] = Json::array();
    for (const LaidPan& pan : layout.pans) {
        json["pans"].push_back(pan_json(pan));
    }
    json["seams_nm"] = Json::array();
    json["clips"] = Json::array();
    for (const LaidSeam& seam : layout.seams) {
        json["seams_nm"].push_back(seam.at.nm());
        json["clips"].push_back(seam.clips.size());
    }
    json["closures"] = panel_closures_json(layout);
    json["marks"] = Json::array();
    for (const LineMarks& marked : seam_marks(layout)) {
        Json seams = Json::array();
        for (const Length seam : marked.seams) {
            seams.push_back(seam.nm());
        }
        json["marks"].push_back({{"edge", marked.edge},
                                 {"from_nm", marked.begins.nm()},
                                 {"to_nm", marked.ends.nm()},
                                 {"seams_nm", std::move(seams)}});
    }
    json["cap_screws"] = Json::array();
    for (const CapScrews& screws : cap_screws(layout, plane.job.practice)) {
        Json along = Json::array();
        for (const Length place : screws.along) {
            along.push_back(place.nm());
        }
        json["cap_screws"].push_back({{"edge", screws.edge}, {"along_nm", std::move(along)}});
    }
    json["pairs"] = Json::array();
    for (const PanPair& pair : layout.pairs) {
        json["pairs"].push_back(
            {layout.pans[pair.first].number, layout.pans[pair.second].number, pair.length.nm()});
    }
    json["problems"] = doubts_json(layout, marks);
    if (plane.choices) {
        json["tried"] = plane.choices->tried;
        json["choices"] = Json::array();
        for (const PanelChoice& choice : plane.choices->choices) {
            json["choices"].push_back(choice_json(choice, marks));
        }
    }
    return json;
}

bool are_alike(const LaidPan& a, const LaidPan& b) {
    return a.width == b.width && a.length == b.length && a.kind == b.kind && a.piece == 0 &&
           b.piece == 0;
}

std::string pan_name(const LaidPan& pan) {
    return std::to_string(pan.number) + (pan.piece > 0 ? "." + std::to_string(pan.piece) : "");
}

void print_pans(const PanelLayout& layout, Marks marks) {
    std::cout << padded("  pan", 10) << padded("width", 14) << padded("length", 18)
              << padded("kind", 6) << "from\n";
    for (std::size_t i = 0; i < layout.pans.size();) {
        std::size_t last = i;
        while (last + 1 < layout.pans.size() && are_alike(layout.pans[i], layout.pans[last + 1])) {
            ++last;
        }
        const LaidPan& pan = layout.pans[i];
        const std::string name =
            pan_name(pan) + (last > i ? " to " + pan_name(layout.pans[last]) : "");
        std::cout << padded("  " + name, 10) << padded(tell_length(pan.width, marks), 14)
                  << padded(tell_length(pan.length, marks), 18) << padded(word_of_pan(pan.kind), 6)
                  << tell_length(pan.from, marks) << '\n';
        i = last + 1;
    }
}

void print_layout(const PanelJob& job, const PanelLayout& layout, Marks marks) {
    std::cout << "Plane " << layout.plane.name << ": pinned at the "
              << word_of_line(layout.ends.fixed)
              << (job.practice.fixed_line == FixedLine::unsaid ? " (nobody said where)" : "");
    if (layout.shift != Length()) {
        std::cout << ", seams " << shifted_text(layout.shift, marks);
    }
    std::cout << '\n';
    print_pans(layout, marks);
    std::size_t clips = 0;
    for (const LaidSeam& seam : layout.seams) {
        clips += seam.clips.size();
    }
    std::cout << "  clips " << clips << " on " << layout.seams.size() << " seams\n";
    for (const PanClosures& closures : layout.closures) {
        std::cout << "  closures at " << closures.edge << ": " << closures.count << ", up to "
                  << tell_length(closures.blank, marks) << '\n';
    }
    for (const PanPair& pair : layout.pairs) {
        std::cout << "  pans " << pan_name(layout.pans[pair.first]) << " and "
                  << pan_name(layout.pans[pair.second]) << " from "
                  << tell_length(pair.length, marks) << (pair.turned ? ", one turned" : "") << '\n';
    }
    for (const PanelDoubt& doubt : layout.doubts) {
        std::cout << "  problem: "
                  << (doubt.pan > 0 ? "pan " + std::to_string(doubt.pan) + ": " : "")
                  << said(doubt.problem).english(marks) << '\n';
    }
}

}  // namespace

Json metal_json(const PanelMetal& metal) {
    return {{"lengths", metal.lengths},
            {"running_nm", metal.running.nm()},
            {"coil_feet", metal.coil_feet > 0 ? Json(metal.coil_feet) : Json()},
            {"pounds", metal.pounds ? Json(*metal.pounds) : Json()},
            {"heaviest_pounds", metal.heaviest ? Json(*metal.heaviest) : Json()}};
}

void print_metal(const PanelMetal& metal, Marks marks) {
    std::cout << "Metal: " << metal.lengths << " lengths, together "
              << tell_length(metal.running, marks);
    if (metal.coil_feet > 0) {
        std::cout << ", " << metal.coil_feet << " ft of coil";
    }
    if (metal.pounds) {
        std::cout << ", " << std::llround(*metal.pounds) << " lb, the heaviest "
                  << std::llround(std::ceil(*metal.heaviest)) << " lb";
    }
    std::cout << '\n';
}

void print_panels_json(const PanelsPrinted& printed) {
    Json json;
    json["planes"] = Json::array();
    for (const PlanePrinted& plane : printed.planes) {
        json["planes"].push_back(plane_json(plane, printed.marks));
    }
    json["metal"] = metal_json(printed.metal);
    json["problems"] = Json::array();
    if (printed.miss) {
        json["problems"].push_back(miss_text(*printed.miss).english(printed.marks));
    }
    print_json(json);
}

void print_panels_text(const PanelsPrinted& printed) {
    if (printed.miss) {
        std::cout << miss_text(*printed.miss).english(printed.marks) << '\n';
        return;
    }
    std::cout << "Worked out from the walk: read every plane before panels are ordered.\n";
    for (const PlanePrinted& plane : printed.planes) {
        print_layout(plane.job, plane.layout, printed.marks);
        if (plane.choices) {
            print_choices(*plane.choices, printed.marks);
        }
    }
    print_metal(printed.metal, printed.marks);
}

std::string panels_csv(const PanelsPrinted& printed) {
    std::string csv =
        csv_row({"plane", "pan", "piece", "from", "width", "length", "kind", "foot_left",
                 "foot_right", "top_left", "top_right", "blank", "alike", "top_width"});
    const auto cell = [&](Length length) { return CsvCell(tell_length(length, printed.marks)); };
    for (const PlanePrinted& plane : printed.planes) {
        const PanelLayout& layout = plane.layout;
        for (const LaidPan& pan : layout.pans) {
            const auto alike =
                std::count_if(layout.pans.begin(), layout.pans.end(), [&](const LaidPan& other) {
                    return other.width == pan.width && other.length == pan.length &&
                           other.kind == pan.kind;
                });
            csv +=
                csv_row({layout.plane.name, std::int64_t{pan.number},
                         pan.piece > 0 ? CsvCell(std::int64_t{pan.piece}) : CsvCell(""),
                         cell(pan.from), cell(pan.width), cell(pan.length), word_of_pan(pan.kind),
                         cell(pan.foot.first), cell(pan.foot.second), cell(pan.top.first),
                         cell(pan.top.second), pan.blank ? cell(*pan.blank) : CsvCell(""),
                         std::int64_t{alike}, cell(pan.top_width)});
        }
    }
    return csv;
}

}  // namespace hemline
