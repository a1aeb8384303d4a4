// `pattern`: the flat pattern of a piece, for people, the shop's cutter and the printer.
#include <iostream>

#include "engine/handover/dxf.h"
#include "engine/handover/piece_papers.h"
#include "engine/handover/svg.h"
#include "engine/words/result.h"
#include "engine/work/piece_pattern.h"
#include "tools/cli/asked_card.h"
#include "tools/cli/assets_here.h"
#include "tools/cli/commands.h"
#include "tools/cli/output_file.h"
#include "tools/cli/print.h"

namespace hemline {
namespace {

Json points_json(const FlatOutline& outline) {
    Json points = Json::array();
    for (const FlatPoint& p : outline) {
        points.push_back({p.x, p.y});
    }
    return points;
}

Json pattern_json(const FlatPattern& pattern, const Card& card, Marks marks) {
    Json json;
    json["edge"] = card.edge;
    json["trim"] = card.trim;
    json["piece"] = card.piece;
    put_length(json, "cut", pattern.length, marks);
    put_length(json, "girth", pattern.legs.edges.back(), marks);
    json["area_mm2"] = area_mm2(pattern);
    json["outline_nm"] = points_json(pattern.outline);
    json["folds"] = Json::array();
    for (const FlatFold& fold : pattern.folds) {
        Json one;
        one["of"] = fold.bend ? "bend" : "tab";
        one["degrees"] = fold.degrees;
        one["line_nm"] = points_json({fold.line.a, fold.line.b});
        json["folds"].push_back(one);
    }
    json["slits"] = Json::array();
    for (const FlatLine& slit : pattern.slits) {
        json["slits"].push_back(points_json({slit.a, slit.b}));
    }
    json["waits_for"] = card.waits_for.english(marks);
    return json;
}

}  // namespace

Exit draw_pattern(const PatternArguments& arguments) {
    const std::optional<Assets> assets = assets_here();
    const std::optional<AskedCard> asked =
        assets ? asked_card(arguments.card, *assets) : std::nullopt;
    if (!asked) {
        return Exit::problem_in_input;
    }
    const Card& card = asked->card;
    const Edge& edge = asked->desk.job.find(card.edge)->edge;
    const Result<FlatPattern> pattern = piece_pattern(card, edge, assets->sections);
    if (!pattern) {
        return complain("PIECE", pattern.problem());
    }
    const Marks marks = asked->desk.marks;
    const std::string title = title_of(card, marks);
    const Drawing drawing = drawing_of(*pattern, title, marks);
    const bool written =
        write_output_file("--svg", arguments.svg, svg_of(drawing)) &&
        write_output_file("--dxf", arguments.dxf, dxf_of(drawing)) &&
        write_output_file(
            "--html", arguments.card.html,
            template_page(end_drawings(*pattern, title, marks), title,
                          paper_head(asked->desk, arguments.card), arguments.card.paper));
    if (!written) {
        return Exit::problem_in_input;
    }
    if (arguments.card.desk.output == Output::json) {
        print_json(pattern_json(*pattern, card, marks));
    } else {
        std::cout << title << "\nBlank " << print_length(pattern->legs.edges.back(), marks) << " x "
                  << print_length(card.cut, marks) << '\n'
                  << caution() << '\n';
    }
    return Exit::fine;
}

}  // namespace hemline
