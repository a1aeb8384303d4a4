// Every card of every trim on every edge that can have it, with its flat pattern: all ends, both
// hands, several pitches, square corners and corners of 135° (225° inside).
#pragma once

#include <functional>
#include <map>

#include "eave_job.h"
#include "engine/roof/edge_shape.h"
#include "engine/work/piece_pattern.h"
#include "tests/engine/trim/sections.h"

namespace hemline_test {

struct CardInHand {
    const Job& job;
    const Plan& plan;
    const Catalogue& catalogue;
    const Run& run;
    const Edge& edge;
    const Card& card;
    const FlatPattern& pattern;

    [[nodiscard]] std::string name() const {
        return std::string(word_of(edge.kind)) + " " + run.trim + ", " +
               spoken(card.left).english() + ", " + spoken(card.right).english() + ", piece " +
               std::to_string(card.piece);
    }
};

/// The foot said to be at the right, where a step asks for it.
inline void put_foot_right(EdgeWork& work) {
    const Answer said{AnswerKind::seen, {}, 0, "right"};
    work.steps.push_back({{}, {}, "", {work.edge.id, std::string(hand_step), 0, said, {}, ""}});
}

inline std::optional<Angle> slant_corner(const Edge& edge, Side side) {
    const End end = end_at(edge, side);
    const bool over = stands_over_corner(edge.kind);
    if (end == End::corner_out || (over && turns_out(edge.kind))) {
        return degrees(135);
    }
    return end == End::corner_in || over ? std::optional(degrees(225)) : std::nullopt;
}

/// Calls `visit` with each card that has a pattern; returns how often, and for what, there is none.
inline std::map<std::string, int> for_every_card(
    const std::function<void(const CardInHand&)>& visit) {
    const Catalogue catalogue = own_catalogue();
    const Sections sections = sections_of_assets();
    std::map<std::string, int> refused;
    const auto look = [&](const Edge& edge, bool foot_right) {
        Job job;
        job.edges.push_back(read_twice(edge, feet(23)));
        if (foot_right) {
            put_foot_right(job.edges.front());
        }
        const Plan plan = make_plan(job, catalogue);
        for (const Run& run : plan.runs) {
            for (const PlannedPiece& piece : run.pieces) {
                const auto card = make_card(job, plan, catalogue, edge.id, run.role, piece.number);
                REQUIRE(card.ok());
                const auto pattern = piece_pattern(*card, edge, sections);
                if (pattern) {
                    visit({job, plan, catalogue, run, edge, *card, *pattern});
                } else {
                    ++refused[std::string(word_of(edge.kind)) + ", " +
                              spoken(card->left).english() + ", " + spoken(card->right).english() +
                              ": " + pattern.problem().what.english()];
                }
            }
        }
    };
    for (const Trim& trim : catalogue.trims()) {
        std::vector<EdgeKind> kinds = trim.also;
        kinds.push_back(trim.kind);
        for (const EdgeKind kind : kinds) {
            for (const End left : ends_of(kind, Side::left)) {
                for (const End right : ends_of(kind, Side::right)) {
                    for (const auto& [rise, other_rise] :
                         {std::pair(1, 1), {3, 3}, {6, 8}, {12, 4}, {18, 18}}) {
                        Edge edge;
                        edge.id = "A";
                        edge.kind = kind;
                        edge.trim = trim.role == TrimRole::main ? trim.id : "";
                        edge.left = left;
                        edge.right = right;
                        edge.pitch = rise_in_12(rise);
                        edge.pitch2 = rise_in_12(other_rise);
                        edge.wrap = trim.role == TrimRole::wrap;
                        edge.first = rise == 12 ? Side::right : Side::left;
                        look(edge, false);
                        if (edge.kind == EdgeKind::gable || edge.kind == EdgeKind::sidewall) {
                            look(edge, true);
                        }
                        edge.corner_left = slant_corner(edge, Side::left);
                        edge.corner_right = slant_corner(edge, Side::right);
                        if (edge.corner_left || edge.corner_right) {
                            look(edge, edge.kind == EdgeKind::sidewall);
                        }
                    }
                }
            }
        }
    }
    return refused;
}

}  // namespace hemline_test
