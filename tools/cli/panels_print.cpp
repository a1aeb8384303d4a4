#include "tools/cli/panels_print.h"

#include <algorithm>
#include <iostream>

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

Json layout_json(const PanelJob& job, const PanelLayout& layout, Marks marks) {
    Json json;
    json["plane"] = layout.plane.name;
    json["fixed"] = word_of_line(layout.ends.fixed);
    json["assumed"] = assumed_of(job);
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
        json["clips"].push_back(seam.clips);
    }
    json["closures"] = panel_closures_json(layout);
    json["pairs"] = Json::array();
    for (const PanPair& pair : layout.pairs) {
        json["pairs"].push_back(
            {layout.pans[pair.first].number, layout.pans[pair.second].number, pair.length.nm()});
    }
    json["problems"] = doubts_json(layout, marks);
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
        std::cout << ", seams shifted " << tell_length(absolute(layout.shift), marks) << " to the "
                  << (layout.shift > Length() ? "right" : "left");
    }
    std::cout << '\n';
    print_pans(layout, marks);
    std::int64_t clips = 0;
    for (const LaidSeam& seam : layout.seams) {
        clips += seam.clips;
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

void print_panels_json(const PanelsPrinted& printed) {
    Json json;
    json["planes"] = Json::array();
    for (const PanelLayout& layout : printed.layouts) {
        json["planes"].push_back(layout_json(printed.job, layout, printed.marks));
    }
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
    for (const PanelLayout& layout : printed.layouts) {
        print_layout(printed.job, layout, printed.marks);
    }
}

std::string panels_csv(const std::vector<PanelLayout>& layouts, Marks marks) {
    std::string csv =
        csv_row({"plane", "pan", "piece", "from", "width", "length", "kind", "foot_left",
                 "foot_right", "top_left", "top_right", "blank", "alike", "top_width"});
    const auto cell = [&](Length length) { return CsvCell(tell_length(length, marks)); };
    for (const PanelLayout& layout : layouts) {
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
