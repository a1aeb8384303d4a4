// The plan for people: what to cut for each edge, from which stick, and how few sticks it takes.
#include <map>

#include "engine/roof/edge_shape.h"
#include "tools/cli/plan_print.h"

namespace hemline {
namespace {

std::string_view spoken(Style style) {
    switch (style) {
        case Style::balanced:
            return "balanced";
        case Style::equal:
            return "equal pieces";
        case Style::full:
            return "full sticks from one side";
    }
    return "";
}

/// How a run is divided: as asked for, or how it looks after all were divided together.
std::string divided(const Run& run, const EdgeWork& work, Length edge, const Desk& desk) {
    const Trim* trim = desk.catalogue.find(run.trim);
    if (trim == nullptr || work.style || run.role == TrimRole::cleat) {
        return std::string(spoken(work.style.value_or(Style::balanced)));
    }
    const RunRule rule = run_rule(work.edge, *trim, edge, desk.job.practice, run.tabs);
    std::vector<Division> pieces;
    for (const PlannedPiece& piece : run.pieces) {
        pieces.push_back({piece.cut, piece.covers});
    }
    const auto count = static_cast<std::int64_t>(pieces.size());
    return is_balanced(pieces, rule) || !can_balance(rule, count) ? "balanced" : "run out";
}

std::string heading_of(const Run& run, const EdgeWork& work, const Desk& desk) {
    const Length length = work.length(desk.job.practice).value_or(Length());
    std::string text = "Edge " + shown_text(run.edge) + ", " +
                       hemline::spoken(work.edge.kind).english() + ": " +
                       print_length(length, desk.marks) + ", " + run.trim + ", " +
                       divided(run, work, length, desk) + ", fitted from the " +
                       std::string(is_sloped(work.edge.kind) ? "foot" : word_of(work.edge.first));
    if (run.lap > Length()) {
        text += ", laps " + print_length(run.lap, desk.marks);
    }
    return text + '\n';
}

std::string lines_of(const Run& run, Marks marks) {
    std::string text =
        "  " + padded("piece", 5) + padded("cut", 20) + padded("covers", 20) + "from\n";
    for (const PlannedPiece& piece : run.pieces) {
        text += "  " + padded(std::to_string(piece.number), 5) +
                padded(print_length(piece.cut, marks), 20) +
                padded(print_length(piece.covers, marks), 20);
        text += piece.source ? "stick " + std::to_string(piece.source->stick) + " at " +
                                   print_length(piece.source->from, marks)
                             : std::string("no stick");
        text += '\n';
    }
    return text;
}

/// The cuts of each stick by where they begin on it: "A-1 5 ft", "B-3 4 ft 2 in".
using CutsOfSticks = std::map<int, std::map<Length, std::string>>;

CutsOfSticks cuts_of_sticks(const Plan& plan, Marks marks) {
    CutsOfSticks cuts;
    for (const Run& run : plan.runs) {
        for (const PlannedPiece& piece : run.pieces) {
            if (piece.source) {
                cuts[piece.source->stick][piece.source->from] = shown_text(run.edge) + '-' +
                                                                std::to_string(piece.number) + ' ' +
                                                                print_length(piece.cut, marks);
            }
        }
    }
    return cuts;
}

std::string sticks_text(const Desk& desk) {
    const CutsOfSticks cuts = cuts_of_sticks(desk.plan, desk.marks);
    std::string text = "Sticks\n";
    for (const PlannedStick& stick : desk.plan.sticks) {
        text += "  " + padded(std::to_string(stick.number), 5) +
                padded(stick.trim + ' ' + print_length(stick.length, desk.marks), 20);
        const auto on_it = cuts.find(stick.number);
        if (on_it != cuts.end()) {
            for (const auto& [from, cut] : on_it->second) {
                text += cut + ", ";
            }
        }
        text += "left " + print_length(stick.left, desk.marks) + '\n';
    }
    return text;
}

std::string fixed_line_text(const Practice& practice) {
    const bool ridge = fixed_line_of(practice) == FixedLine::ridge;
    const bool assumed = practice.fixed_line == FixedLine::unsaid;
    return std::string("panels are pinned at the ") + (ridge ? "ridge" : "eave") +
           (assumed ? ": assumed, say fixed_line" : "");
}

/// "  end cap for edge R, left: …", a line for what is cut and folded.
std::string end_caps_text(const EdgeWork& work, const Desk& desk) {
    const auto cap = end_cap_on(work, desk);
    if (!cap) {
        return {};
    }
    std::string ends;
    for (const Side side : capped_ends(work.edge)) {
        ends += (ends.empty() ? "" : " and ") + std::string(word_of(side));
    }
    std::string text = "  end cap for edge " + shown_text(work.edge.id) + ", " + ends + ":";
    if (!*cap) {
        return text + ' ' + said(cap->problem()).english(desk.marks) + '\n';
    }
    for (const Text& line : cap_lines(**cap, work.edge)) {
        text += "\n    " + line.english(desk.marks);
    }
    return text + '\n';
}

std::string proof_text(const Desk& desk) {
    std::string text = "Count\n";
    for (const Proof& proof : desk.plan.proofs) {
        text += "  " + proof.trim + ": " + std::to_string(proof.sticks) +
                (proof.sticks == 1 ? " stick" : " sticks") + ", none can use fewer than " +
                std::to_string(proof.lower_bound) + (proof.proved ? ": proved fewest" : "") +
                too_large_words(proof.is_too_large) + '\n';
    }
    for (const PlanChoice& choice : desk.plan.choices) {
        if (choice.is_too_large) {
            text += "  " + choice.trim + " in " + std::to_string(choice.sticks) +
                    ", laps more: " + std::to_string(choice.extra_laps) +
                    ", unbalanced edges: " + std::to_string(choice.unbalanced) +
                    too_large_words(true) + '\n';
        }
    }
    for (const EdgeWork& work : desk.job.edges) {
        const Closures closures = closures_on(work, desk);
        if (closures.count > 0) {
            text += "  closures for edge " + shown_text(work.edge.id) + ": " +
                    count_words(closures).english(desk.marks) + " from " +
                    std::to_string(closures.sticks) +
                    (closures.sticks == 1 ? " stick" : " sticks") + ", stretch-out " +
                    print_length(closures.girth, desk.marks) + ", held by " +
                    std::to_string(closures.count * closure_fasteners) +
                    (is_pinned_at(work.edge.kind, desk.job.practice)
                         ? " screws to the deck: panels are pinned here\n"
                         : " sealed rivets to the pans alone\n");
        }
        const Strips strips = strips_on(work, desk);
        if (strips.strip != nullptr) {
            text += "  " + strips.strip->name + " for edge " + shown_text(work.edge.id) + ": " +
                    strip_words(strips).english(desk.marks) + ", " +
                    std::to_string(strips.fasteners) +
                    (strips.strip->panels == Panels::under ? " screws\n" : " rivets\n");
            if (!strips.problem.empty()) {
                text += "    " + strips.problem.english(desk.marks) + '\n';
            }
        }
        text += end_caps_text(work, desk);
    }
    return text + "  " + fixed_line_text(desk.job.practice) + '\n';
}

std::string fixing_text(const Desk& desk) {
    std::string text = "Fixing\n";
    for (const Run& run : desk.plan.runs) {
        const FixingTally fixing = fixing_on(run, desk);
        text += "  edge " + shown_text(run.edge) + ", " + run.trim + ": " +
                std::to_string(fixing.screws) + (fixing.screws == 1 ? " screw" : " screws");
        if (fixing.bead > Length()) {
            text += ", " + print_length(fixing.bead, desk.marks) + " of bead in " +
                    std::to_string(fixing.laps) + (fixing.laps == 1 ? " lap, " : " laps, ") +
                    rounded(fixing.cartridges, 2) + " cartridges of 10.1 fl oz";
        }
        text += '\n';
    }
    return text;
}

std::string problems_text(const Desk& desk, const std::string& file) {
    if (desk.plan.problems.empty()) {
        return "No problems\n";
    }
    std::string text = "Problems\n";
    for (const PlanProblem& problem : desk.plan.problems) {
        const TablePlace place = place_of(desk.table, problem.edge, problem.field);
        text += "  " + shown_text(file) + ':' + std::to_string(place.line) + ':' +
                std::to_string(place.column) + ": " + std::string(word_of(problem.severity)) +
                ": edge " + shown_text(problem.edge) + ": " + problem.what.english(desk.marks) +
                ' ' + problem.mend.english(desk.marks) + '\n';
    }
    return text;
}

std::string expected_text(const Desk& desk) {
    std::string edges;
    for (const std::string& edge : desk.expected) {
        edges += (edges.empty() ? "" : ", ") + edge;
    }
    return edges.empty() ? ""
                         : "Worked out, not measured: " + shown_text(edges) +
                               ". Measure before anything is cut.\n\n";
}

}  // namespace

Closures closures_on(const EdgeWork& work, const Desk& desk) {
    const Length length = work.length(desk.job.practice).value_or(Length());
    return closures_of(work.edge, length, desk.job.practice);
}

Strips strips_on(const EdgeWork& work, const Desk& desk) {
    const Length length = work.length(desk.job.practice).value_or(Length());
    return strips_of(work.edge, length, desk.catalogue, desk.job.practice);
}

std::optional<Result<EndCap>> end_cap_on(const EdgeWork& work, const Desk& desk) {
    return capped_ends(work.edge).empty()
               ? std::nullopt
               : std::optional(end_cap_of(work.edge, desk.catalogue.of(work.edge), desk.sections,
                                          desk.job.practice));
}

FixingTally fixing_on(const Run& run, const Desk& desk) {
    const EdgeWork* const work = desk.job.find(run.edge);
    const Trim* const trim = desk.catalogue.find(run.trim);
    return work == nullptr || trim == nullptr
               ? FixingTally()
               : fixing_of(run, work->edge, *trim, desk.job.practice);
}

std::string plan_text(const Desk& desk, const std::string& file) {
    std::string text;
    for (const Run& run : desk.plan.runs) {
        if (const EdgeWork* work = desk.job.find(run.edge)) {
            text += heading_of(run, *work, desk) + lines_of(run, desk.marks) + '\n';
        }
    }
    return text + sticks_text(desk) + '\n' + proof_text(desk) + '\n' + fixing_text(desk) + '\n' +
           expected_text(desk) + problems_text(desk, file) + '\n' + std::string(caution()) + '\n';
}

}  // namespace hemline
