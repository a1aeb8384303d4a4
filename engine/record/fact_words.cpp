#include "engine/record/fact_words.h"

#include <algorithm>
#include <charconv>
#include <string_view>

#include "engine/measure/length_text.h"
#include "engine/record/gate_words.h"
#include "engine/trim/spoken_value.h"

namespace hemline {
namespace {

Text piece_words(TrimRole role, int piece) {
    switch (role) {
        case TrimRole::main:
            break;
        case TrimRole::wrap:
            return say("fascia wrap piece {1}", piece);
        case TrimRole::cleat:
            return say("cleat piece {1}", piece);
    }
    return say("piece {1}", piece);
}

Text metal_words(const MetalTaken& metal, const Names& names) {
    if (!metal.offcut) {
        return say("from a new stick of {1}", metal.stick);
    }
    return say("from the drop of {1}",
               names.offcut ? names.offcut(*metal.offcut) : Text(print_event_id(*metal.offcut)));
}

Text trim_words(const std::string& trim, const Names& names) {
    return names.trim ? names.trim(trim) : Text(trim);
}

/// The edge, or the part of it whose metal is meant.
Text part_words(const std::string& edge, TrimRole role) {
    switch (role) {
        case TrimRole::main:
            break;
        case TrimRole::wrap:
            return say("{1}, fascia wrap", edge);
        case TrimRole::cleat:
            return say("{1}, cleat", edge);
    }
    return Text(edge);
}

Text answer_words(const Answer& answer) {
    switch (answer.kind) {
        case AnswerKind::done:
            break;
        case AnswerKind::length:
            return answer.length;
        case AnswerKind::count:
            return Text(std::to_string(answer.count));
        case AnswerKind::seen:
            return say("seen: {1}", say(answer.seen));
    }
    return say("done");
}

Text words_of(Style style) {
    switch (style) {
        case Style::balanced:
            break;
        case Style::equal:
            return say("equal pieces");
        case Style::full:
            return say("full sticks from one side");
    }
    return say_of("run", "balanced");
}

Text words_of(StrikeReason reason) {
    switch (reason) {
        case StrikeReason::undone:
            break;
        case StrikeReason::by_hand:
            return say("crossed out by hand");
        case StrikeReason::disk_failed:
            return say("the disk failed while this was being saved");
    }
    return say("undone");
}

Text leg_words(const LegChosen& leg) {
    const Text bent =
        leg.bend ? say("bend {1} to {2}", print_degrees(*leg.bend), leg.width) : leg.width;
    return leg.hem == Hem::none ? bent : say("{1} {2} hem", bent, spoken(leg.hem));
}

/// The value's key is what it is of, then what it was: "length: 46 ft", "hook 1: 3/8 in". A number
/// is the same for every reader; an answer in words is left out.
Text accepted_words(const ValueAccepted& accepted, const Names& names) {
    const std::size_t colon = accepted.value.find(": ");
    const std::string of = accepted.value.substr(0, colon);
    const std::string was =
        colon == std::string::npos ? std::string() : accepted.value.substr(colon + 2);
    const std::size_t space = of.rfind(' ');
    Text thing = say("Pitch");
    if (of == "length") {
        thing = say("Length to work with");
    } else if (of == "plan") {
        thing = say("The plan");
    } else if (of.rfind("pieces cut", 0) == 0) {
        thing = say("Trim, pieces cut");
    } else if (of != "pitch" && space != std::string::npos) {
        StepSaid said;
        said.edge = accepted.edge;
        said.step = of.substr(0, space);
        std::from_chars(of.data() + space + 1, of.data() + of.size(), said.piece);
        thing = step_words(said, names);
    }
    const bool is_number = !was.empty() && was[0] >= '0' && was[0] <= '9';
    return is_number ? glued(thing, ", ", Text(was)) : thing;
}

struct Words {
    const Names& names;

    Text operator()(const JobStarted& f) const {
        return f.practice.empty()
                   ? say("Job \"{1}\" started", f.name)
                   : say("Job \"{1}\" started, practice \"{2}\"", f.name, say(f.practice));
    }
    Text operator()(const EdgeAdded& f) const {
        const Text kind = spoken(f.edge.kind);
        const Text left = spoken(f.edge.left), right = spoken(f.edge.right);
        return f.edge.pitch
                   ? say("Edge {1}: {2}, left {3}, right {4}, pitch {5}", f.edge.id, kind, left,
                         right, *f.edge.pitch)
                   : say("Edge {1}: {2}, left {3}, right {4}", f.edge.id, kind, left, right);
    }
    Text operator()(const ReadingTaken& f) const {
        return f.of == ReadingOf::edge
                   ? say("Edge {1} read: {2}", f.edge, f.length)
                   : say("Edge {1}, what is left for the last piece read: {2}", f.edge, f.length);
    }
    Text operator()(const PitchTaken& f) const {
        return say("Edge {1}, pitch read: {2}", f.edge, f.pitch);
    }
    Text operator()(const StyleChosen& f) const {
        return say("Edge {1}, run chosen: {2}", f.edge, words_of(f.style));
    }
    Text operator()(const RuleSet& f) const {
        const Text rule = names.rule ? names.rule(f.key) : Text(f.key);
        return f.value.empty() ? say("Practice: {1} taken back", rule)
                               : say("Practice: {1} set to {2}", rule,
                                     names.rule ? spoken_value(f.key, f.value) : Text(f.value));
    }
    Text operator()(const PieceCut& f) const {
        return say("Edge {1}, {2} cut at {3} {4}", f.edge, piece_words(f.role, f.piece), f.cut,
                   metal_words(f.metal, names));
    }
    Text operator()(const PieceSpoiled& f) const {
        return say("Edge {1}, {2} spoiled: {3} lost {4}", f.edge, piece_words(f.role, f.piece),
                   f.lost, metal_words(f.metal, names));
    }
    template <AStep One>
    Text operator()(const One& f) const {
        const StepSaid said = f.said();
        const Text words =
            say("Edge {1}, {2}: {3}", f.edge, step_words(said, names), answer_words(said.answer));
        return said.exception_by.empty() ? words
                                         : say("{1} (exception: {2}, accepted by {3})", words,
                                               said.exception, said.exception_by);
    }
    Text operator()(const GateAnswered& f) const {
        std::vector<GateCheck> noes;
        for (const GateFound& found : f.found) {
            if (found.finding != Finding::good) {
                noes.push_back(found.check);
            }
        }
        if (noes.empty()) {
            return say("Looked at before roof work: all safe. {1} watches. Nearest hospital: {2}",
                       f.watcher, f.hospital);
        }
        return f.edge.empty() ? say("No roof work today: {1}", spoken(noes))
                              : say("No work on edge {1}: {2}", f.edge, spoken(noes));
    }
    Text operator()(const GateLifted& f) const {
        return say("The no was lifted: {1}.", say(f.reason));
    }
    Text operator()(const ValueAccepted& f) const {
        return say("Edge {1}, outside practice and accepted: {2}", f.edge,
                   accepted_words(f, names));
    }
    Text operator()(const BodyWalked& f) const {
        return f.sides.empty() ? say("Roof {1} is no longer walked as one", f.body)
                               : say(f.closed ? phrase("Roof {1} walked round: {2}")
                                              : phrase("Roof {1} walked so far: {2}"),
                                     f.body,
                                     say_count("{1} side", "{1} sides",
                                               static_cast<std::int64_t>(f.sides.size())));
    }
    Text operator()(const EdgePlaced& f) const {
        return say("Edge {1} lies on roof {2}, between sides {3} and {4}", f.edge, f.at.body,
                   f.at.side, f.at.other);
    }
    Text operator()(const EdgeSentBack& f) const {
        return say("Edge {1} sent back: {2}", f.edge, say(f.reason));
    }
    Text operator()(const EdgeTakenOff& f) const {
        return say("Edge {1} taken off the job", f.edge);
    }
    Text operator()(const EdgeFinished& f) const {
        return f.remark.empty() ? say("Edge {1} finished", f.edge)
                                : say("Edge {1} finished: {2}", f.edge, f.remark);
    }
    Text operator()(const StruckFor& f) const {
        return say("Crossed out {1}: {2}", quoted(f.target), words_of(f.reason));
    }
    Text operator()(const Struck& f) const {
        const Text what = quoted(f.target);
        return f.reason.empty() ? say("Crossed out {1}", what)
                                : say("Crossed out {1}: {2}", what, say(f.reason));
    }
    Text operator()(const PlanChosen& f) const {
        return say("Plan chosen for {1}: {2}, {3}, {4}", trim_words(f.trim, names),
                   say_count("{1} stick", "{1} sticks", f.sticks),
                   say_count("{1} extra lap", "{1} extra laps", f.extra_laps),
                   say_count("{1} unbalanced edge", "{1} unbalanced edges", f.unbalanced));
    }
    Text operator()(const MetalCounted& f) const {
        return say("On hand for edge {1}: {2} of {3}", part_words(f.edge, f.role), f.count,
                   f.length);
    }
    Text operator()(const StickMeasured& f) const {
        return say("For edge {1}, a piece of metal {2} is only {3}", part_words(f.edge, f.role),
                   metal_words(f.metal, names), f.length);
    }
    Text operator()(const StickSpoiled& f) const {
        return say("For edge {1}, metal spoiled whole: {2}", part_words(f.edge, f.role),
                   metal_words(f.metal, names));
    }
    Text operator()(const StockChosen& f) const {
        std::vector<Text> lengths;
        for (const Length length : f.lengths) {
            lengths.emplace_back(length);
        }
        return lengths.empty() ? say("New sticks come in no length")
                               : say("New sticks come in {1}", joined(lengths, ", "));
    }
    Text operator()(const SupplyChosen& f) const {
        const Text part = part_words(f.edge, f.role);
        return f.supply == Supply::as_wanted
                   ? say("For edge {1}: new sticks can be had", part)
                   : say("For edge {1}: only the sticks on hand today", part);
    }
    Text operator()(const SectionChosen& f) const {
        if (f.legs.empty()) {
            return say("section of {1} as the catalogue has it", trim_words(f.trim, names));
        }
        std::vector<Text> legs;
        for (const LegChosen& leg : f.legs) {
            legs.push_back(leg_words(leg));
        }
        return say("section of {1}: {2}", trim_words(f.trim, names), joined(legs, ", "));
    }
    Text operator()(const LooksChosen& f) const {
        switch (f.looks) {
            case Looks::by_preference:
                break;
            case Looks::balanced:
                return say("Edge {1} must be balanced", f.edge);
            case Looks::free:
                return say("Edge {1} may run out to one side", f.edge);
        }
        return say("Edge {1}: looks as the job prefers", f.edge);
    }
    Text operator()(const LapChosen& f) const {
        return f.lap ? say("Edge {1} laps {2}", f.edge, *f.lap)
                     : say("Edge {1} laps as the job's rule has it", f.edge);
    }
    Text operator()(const Picked& f) const {
        return say("Picked for {1}: {2}", name_of(f.about, thing_names(names)), quoted(f.chosen));
    }
    Text operator()(const CopyNoted& f) const {
        return names.trim ? say("Looked at what stands under one number: {1} events", f.copies)
                          : say("Looked at what stands under one number, {1}: {2} events",
                                print_event_id(f.number), f.copies);
    }
    Text operator()(const Unknown& f) const {
        return say("An event of kind {1} that a newer program wrote; kept as it is ({2} bytes)",
                   f.kind, f.payload.size());
    }

  private:
    [[nodiscard]] Text quoted(EventId id) const {
        const Fact* const fact = names.event ? names.event(id) : nullptr;
        if (fact == nullptr) {
            return names.entry ? names.entry(id) : Text(print_event_id(id));
        }
        Names below = names;
        below.event = nullptr;
        return glued("\"", std::visit(Words{below}, *fact), "\"");
    }
};

}  // namespace

Text step_words(const StepSaid& said, const Names& names) {
    if (names.step) {
        return glued("\"", names.step(said), "\"");
    }
    return said.piece > 0 ? say("piece {1}, step {2}", said.piece, said.step)
                          : say("step {1}", said.step);
}

Text describe(const Fact& fact, const Names& names) { return std::visit(Words{names}, fact); }

}  // namespace hemline
