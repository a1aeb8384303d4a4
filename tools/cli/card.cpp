// `card`: every mark of a piece, in tape order from the end that is hooked.
#include <iostream>

#include "engine/handover/piece_papers.h"
#include "engine/roof/edge_shape.h"
#include "engine/words/quote.h"
#include "engine/words/result.h"
#include "engine/work/card.h"
#include "engine/work/mark_deeds.h"
#include "engine/work/piece_pattern.h"
#include "tools/cli/asked_card.h"
#include "tools/cli/assets_here.h"
#include "tools/cli/commands.h"
#include "tools/cli/output_file.h"
#include "tools/cli/plan_print.h"

namespace hemline {
namespace {

using MaybePattern = std::optional<FlatPattern>;

Json card_json(const Card& card, const MaybePattern& pattern, Marks marks) {
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
        one["deed"] = deed_of(card, mark, pattern).english(marks);
        json["marks"].push_back(one);
    }
    const auto places = [](const std::vector<Length>& screws) {
        Json all = Json::array();
        for (const Length screw : screws) {
            all.push_back(screw.nm());
        }
        return all;
    };
    json["screws_nm"] = card.screws.empty() ? Json::array() : places(card.screws.front().at);
    if (card.screws.size() > 1) {
        json["screws_far_nm"] = places(card.screws.back().at);
    }
    json["screw_lines"] = card.screws.size();
    json["screws"] = count_of(card.screws);
    json["screwed_to"] = card.screwed_to == ScrewedTo::closures ? "closures" : "deck";
    json["from_seam"] = card.screw_places.english(marks);
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

std::string screws_text(const Card& card, Marks marks) {
    std::string text;
    if (card.screwed_to == ScrewedTo::closures || count_of(card.screws) == 0) {
        text = screws_told(card).english(marks) + '\n';
    }
    const bool alike = !card.screws.empty() && card.screws.front().at == card.screws.back().at;
    for (const ScrewLine& line : card.screws) {
        const bool near = &line == &card.screws.front();
        if (line.at.empty() || (alike && !near)) {
            continue;
        }
        text += std::to_string(line.at.size());
        text += clips_hems(card)          ? " clips outside each hem at"
                : card.screws.size() == 1 ? " screws at"
                : alike                   ? " screws along each leg at"
                : near                    ? " screws on this roof at"
                                          : " screws on the other roof at";
        for (const Length& screw : line.at) {
            text += (&screw == &line.at.front() ? " " : ", ") + print_length(screw, marks);
        }
        text += '\n';
    }
    return text;
}

std::string card_text(const Card& card, const MaybePattern& pattern, Marks marks) {
    std::string text = heading_of(card, marks);
    text += "Hook the tape on the " + std::string(word_of(card.hooks)) + " end; " +
            leg_toward_you(card).english() + '\n';
    for (const Mark& mark : card.marks) {
        text += "  " + padded(print_length(mark.at, marks), 18) +
                padded(spoken(mark.kind).english(), 16) +
                deed_of(card, mark, pattern).english(marks);
        if (leaves_waste(card, mark)) {
            text += "; waste to the " + std::string(word_of(mark.toward));
        }
        text += '\n';
    }
    text += screws_text(card, marks);
    if (!card.waits_for.empty()) {
        text += "Wait: " + card.waits_for.english(marks) + '\n';
    }
    return text + std::string(caution()) + '\n';
}

/// The card, and the plan's problems with its edge, so that a wrong trim is noticed before it is
/// cut.
void print_card(const Card& card, const MaybePattern& pattern, const Desk& desk, Output output) {
    Json json = card_json(card, pattern, desk.marks);
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
        std::cout << text << card_text(card, pattern, desk.marks);
    }
}

MaybePattern pattern_of(const AskedCard& asked, const Sections& sections) {
    const Edge& edge = asked.desk.job.find(asked.card.edge)->edge;
    const Result<FlatPattern> pattern = piece_pattern(asked.card, edge, sections);
    return pattern ? MaybePattern(*pattern) : std::nullopt;
}

bool write_page(const AskedCard& asked, const MaybePattern& pattern,
                const CardArguments& arguments) {
    return write_output_file("--html", arguments.html,
                             card_page(asked.card, pattern, asked.desk.marks,
                                       paper_head(asked.desk, arguments), arguments.paper));
}

}  // namespace

Exit show_card(const CardArguments& arguments) {
    const std::optional<Assets> assets = assets_here();
    const std::optional<AskedCard> asked = assets ? asked_card(arguments, *assets) : std::nullopt;
    if (!asked) {
        return Exit::problem_in_input;
    }
    const MaybePattern pattern = pattern_of(*asked, assets->sections);
    if (!arguments.html.empty() && !write_page(*asked, pattern, arguments)) {
        return Exit::problem_in_input;
    }
    print_card(asked->card, pattern, asked->desk, arguments.desk.output);
    return Exit::fine;
}

}  // namespace hemline
