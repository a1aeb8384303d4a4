// `card`: every mark of one piece, in tape order from the end that is hooked.
#include <iostream>

#include "engine/handover/piece_papers.h"
#include "engine/roof/edge_shape.h"
#include "engine/words/quote.h"
#include "engine/work/card.h"
#include "engine/work/piece_pattern.h"
#include "tools/cli/asked_card.h"
#include "tools/cli/assets_here.h"
#include "tools/cli/commands.h"
#include "tools/cli/output_file.h"
#include "tools/cli/plan_print.h"

namespace hemline {
namespace {

Json card_json(const Card& card, Marks marks) {
    Json json;
    json["edge"] = card.edge;
    json["kind"] = word_of(card.kind);
    json["trim"] = card.trim;
    json["role"] = word_of(card.role);
    json["piece"] = card.piece;
    json["pieces"] = card.pieces;
    put_length(json, "cut", card.cut, marks);
    put_length(json, "covers", card.covers, marks);
    put_length(json, "lap", card.lap, marks);
    json["left"] = spoken(card.left).english();
    json["right"] = spoken(card.right).english();
    json["hooks"] = word_of(card.hooks);
    json["hand"] = card.hand ? Json(word_of(*card.hand)) : Json();
    json["marks"] = Json::array();
    for (const Mark& mark : card.marks) {
        Json one;
        one["mark"] = spoken(mark.kind).english();
        put_length(one, "at", mark.at, marks);
        one["toward"] = word_of(mark.toward);
        one["cuts"] = is_cut_at(card, mark);
        one["waste"] = leaves_waste(card, mark) ? Json(word_of(mark.toward)) : Json();
        one["deed"] = deed_of(mark.kind).english();
        json["marks"].push_back(one);
    }
    json["screws_nm"] = Json::array();
    for (const Length screw : card.screws) {
        json["screws_nm"].push_back(screw.nm());
    }
    json["screw_lines"] = card.screw_lines;
    json["stick"] = card.stick;
    json["stock_nm"] = card.stick_length.nm();
    json["from_nm"] = card.stick_from.nm();
    json["left_over_nm"] = card.left_over.nm();
    json["waits_for"] = card.waits_for.english(marks);
    return json;
}

std::string heading_of(const Card& card, Marks marks) {
    std::string text = "Edge " + shown_text(card.edge) + ", piece " + std::to_string(card.piece) +
                       " of " + std::to_string(card.pieces) + ": " + card.trim_name.english() +
                       " (" + card.trim + ")\n";
    text += "Cut " + print_length(card.cut, marks) + ", covers " +
            print_length(card.covers, marks) + '\n';
    if (card.stick > 0) {
        text += "From stick " + std::to_string(card.stick) + " of " +
                print_length(card.stick_length, marks) + ", at " +
                print_length(card.stick_from, marks) + "; left after it " +
                print_length(card.left_over, marks) + '\n';
    }
    const bool sloped = is_sloped(card.kind);
    text += std::string(sloped ? "Left end, the foot: " : "Left end: ") +
            spoken(card.left).english() + (sloped ? ". Right end, the top: " : ". Right end: ") +
            spoken(card.right).english() + ".";
    if (card.hand) {
        text += " A " + std::string(word_of(*card.hand)) + "-hand piece.";
    }
    return text + '\n';
}

std::string card_text(const Card& card, Marks marks) {
    std::string text = heading_of(card, marks);
    text += "Hook the tape on the " + std::string(word_of(card.hooks)) + " end\n";
    for (const Mark& mark : card.marks) {
        text += "  " + padded(print_length(mark.at, marks), 18) +
                padded(spoken(mark.kind).english(), 16) + deed_of(mark.kind).english();
        if (leaves_waste(card, mark)) {
            text += "; waste to the " + std::string(word_of(mark.toward));
        }
        text += '\n';
    }
    text += std::to_string(card.screws.size()) +
            (card.screw_lines > 1 ? " screws along each leg at" : " screws at");
    for (std::size_t i = 0; i < card.screws.size(); ++i) {
        text += (i == 0 ? " " : ", ") + print_length(card.screws[i], marks);
    }
    text += '\n';
    if (!card.waits_for.empty()) {
        text += "Wait: " + card.waits_for.english(marks) + '\n';
    }
    return text + std::string(caution()) + '\n';
}

/// The card, and what the plan has against its edge: a wrong trim is said before it is cut.
void print_card(const Card& card, const Desk& desk, Output output) {
    Json json = card_json(card, desk.marks);
    std::string text;
    json["problems"] = Json::array();
    for (const PlanProblem& problem : desk.plan.problems) {
        if (problem.edge == card.edge) {
            json["problems"].push_back(problem_json(problem, desk));
            text += std::string(word_of(problem.severity)) + ": " +
                    problem.what.english(desk.marks) + ' ' + problem.mend.english(desk.marks) +
                    '\n';
        }
    }
    if (output == Output::json) {
        print_json(json);
    } else {
        std::cout << text << card_text(card, desk.marks);
    }
}

bool write_page(const AskedCard& asked, const CardArguments& arguments, const Sections& sections) {
    const Edge& edge = asked.desk.job.find(asked.card.edge)->edge;
    const Result<FlatPattern> pattern = piece_pattern(asked.card, edge, sections);
    return write_output_file(
        "--html", arguments.html,
        card_page(asked.card, pattern ? std::optional(*pattern) : std::nullopt, asked.desk.marks,
                  paper_head(asked.desk, arguments), arguments.paper));
}

}  // namespace

Exit show_card(const CardArguments& arguments) {
    const std::optional<Assets> assets = assets_here();
    const std::optional<AskedCard> asked = assets ? asked_card(arguments, *assets) : std::nullopt;
    if (!asked) {
        return Exit::problem_in_input;
    }
    if (!arguments.html.empty() && !write_page(*asked, arguments, assets->sections)) {
        return Exit::problem_in_input;
    }
    print_card(asked->card, asked->desk, arguments.desk.output);
    return Exit::fine;
}

}  // namespace hemline
