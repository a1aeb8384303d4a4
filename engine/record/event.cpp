#include "engine/record/event.h"

#include <algorithm>
#include <string_view>

#include "engine/measure/angle_text.h"
#include "engine/measure/length_text.h"

namespace hemline {
namespace {

constexpr std::string_view hex_digits = "0123456789abcdef";
constexpr std::size_t device_digits = 16;

std::string role_words(TrimRole role, int piece) {
    const std::string number = std::to_string(piece);
    switch (role) {
        case TrimRole::main:
            return "piece " + number;
        case TrimRole::wrap:
            return "fascia wrap piece " + number;
        case TrimRole::cleat:
            return "cleat piece " + number;
    }
    return "piece " + number;
}

std::string metal_words(const MetalTaken& metal) {
    if (metal.offcut) {
        return "from the offcut of " + print_event_id(*metal.offcut);
    }
    return "from a new stick of " + print_length(metal.stick);
}

std::string part_words(TrimRole role) {
    switch (role) {
        case TrimRole::main:
            break;
        case TrimRole::wrap:
            return ", fascia wrap";
        case TrimRole::cleat:
            return ", cleat";
    }
    return "";
}

std::string counted(std::int64_t count, const std::string& word) {
    return std::to_string(count) + " " + word + (count == 1 ? "" : "s");
}

std::string looks_words(Looks looks) {
    switch (looks) {
        case Looks::by_preference:
            return ": looks as the job prefers";
        case Looks::balanced:
            return " must be balanced";
        case Looks::free:
            return " may run out to one side";
    }
    return "";
}

std::string answer_words(const Answer& answer) {
    switch (answer.kind) {
        case AnswerKind::done:
            return "done";
        case AnswerKind::length:
            return print_length(answer.length);
        case AnswerKind::count:
            return std::to_string(answer.count);
        case AnswerKind::seen:
            return "seen: " + answer.seen;
    }
    return "done";
}

std::string_view words_of(Style style) {
    switch (style) {
        case Style::balanced:
            return "balanced";
        case Style::equal:
            return "equal pieces";
        case Style::full:
            return "full sticks from one side";
    }
    return "balanced";
}

struct Words {
    std::string operator()(const JobStarted& f) const {
        return "Job \"" + f.name + "\" started" +
               (f.practice.empty() ? "" : ", practice \"" + f.practice + "\"");
    }
    std::string operator()(const EdgeAdded& f) const {
        std::string words = "Edge " + f.edge.id + ": ";
        words += spoken(f.edge.kind);
        words += ", left ";
        words += spoken(f.edge.left);
        words += ", right ";
        words += spoken(f.edge.right);
        if (f.edge.pitch) {
            words += ", pitch " + print_slope(*f.edge.pitch);
        }
        return words;
    }
    std::string operator()(const ReadingTaken& f) const {
        return "Edge " + f.edge +
               (f.of == ReadingOf::edge ? " read: " : ", what is left for the last piece read: ") +
               print_length(f.length);
    }
    std::string operator()(const PitchTaken& f) const {
        return "Edge " + f.edge + ", pitch read: " + print_slope(f.pitch);
    }
    std::string operator()(const StyleChosen& f) const {
        return "Edge " + f.edge + ", run chosen: " + std::string(words_of(f.style));
    }
    std::string operator()(const RuleSet& f) const {
        return "Practice: " + f.key + " set to " + f.value;
    }
    std::string operator()(const PieceCut& f) const {
        return "Edge " + f.edge + ", " + role_words(f.role, f.piece) + " cut at " +
               print_length(f.cut) + " " + metal_words(f.metal);
    }
    std::string operator()(const PieceSpoiled& f) const {
        return "Edge " + f.edge + ", " + role_words(f.role, f.piece) +
               " spoiled: " + print_length(f.lost) + " lost " + metal_words(f.metal);
    }
    std::string operator()(const StepDone& f) const {
        std::string words = "Edge " + f.edge;
        if (f.piece > 0) {
            words += ", piece " + std::to_string(f.piece);
        }
        words += ", step " + f.step + ": " + answer_words(f.answer);
        if (!f.exception.empty()) {
            words += " (exception: " + f.exception + ", accepted by " + f.exception_by + ")";
        }
        return words;
    }
    std::string operator()(const EdgeSentBack& f) const {
        return "Edge " + f.edge + " sent back: " + f.reason;
    }
    std::string operator()(const EdgeTakenOff& f) const {
        return "Edge " + f.edge + " taken off the job";
    }
    std::string operator()(const EdgeFinished& f) const {
        return "Edge " + f.edge + " finished" + (f.remark.empty() ? "" : ": " + f.remark);
    }
    std::string operator()(const Struck& f) const {
        return "Struck " + print_event_id(f.target) + (f.reason.empty() ? "" : ": " + f.reason);
    }
    std::string operator()(const PlanChosen& f) const {
        return "Plan chosen for " + f.trim + ": " + counted(f.sticks, "stick") + ", " +
               counted(f.extra_laps, "extra lap") + ", " + counted(f.unbalanced, "unbalanced edge");
    }
    std::string operator()(const MetalCounted& f) const {
        return "On hand for edge " + f.edge + part_words(f.role) + ": " + std::to_string(f.count) +
               " of " + print_length(f.length);
    }
    std::string operator()(const StickMeasured& f) const {
        return "For edge " + f.edge + part_words(f.role) + ", a piece of metal " +
               metal_words(f.metal) + " is only " + print_length(f.length);
    }
    std::string operator()(const StickSpoiled& f) const {
        return "For edge " + f.edge + part_words(f.role) +
               ", metal spoiled whole: " + metal_words(f.metal);
    }
    std::string operator()(const StockChosen& f) const {
        std::string words;
        for (const Length length : f.lengths) {
            words += (words.empty() ? "" : ", ") + print_length(length);
        }
        return "New sticks come in " + (words.empty() ? "no length" : words);
    }
    std::string operator()(const SupplyChosen& f) const {
        return "For edge " + f.edge + part_words(f.role) +
               (f.supply == Supply::as_wanted ? ": new sticks can be had"
                                              : ": only the sticks on hand today");
    }
    std::string operator()(const SectionChosen& f) const {
        if (f.legs.empty()) {
            return "section of " + f.trim + " as the catalogue has it";
        }
        std::string words = "section of " + f.trim + ":";
        for (const LegChosen& leg : f.legs) {
            words += (&leg == &f.legs.front() ? " " : ", ") +
                     (leg.bend_udeg ? "bend " + print_degrees(*leg.bend_udeg) + " to " : "") +
                     print_length(leg.width) +
                     (leg.hem == Hem::none ? "" : " " + std::string(word_of(leg.hem)) + " hem");
        }
        return words;
    }
    std::string operator()(const LooksChosen& f) const {
        return "Edge " + f.edge + looks_words(f.looks);
    }
    std::string operator()(const Unknown& f) const {
        return "An event of kind " + std::to_string(f.kind) +
               " that a newer program wrote; kept as it is (" + std::to_string(f.payload.size()) +
               " bytes)";
    }
};

/// Digits only, no sign, no leading zero, 1 to 4294967295.
std::optional<std::uint32_t> parse_sequence(std::string_view text) {
    if (text.empty() || text.size() > 10 || text.front() == '0') {
        return {};
    }
    std::uint64_t value = 0;
    for (const char c : text) {
        if (c < '0' || c > '9') {
            return {};
        }
        value = value * 10 + static_cast<std::uint64_t>(c - '0');
    }
    if (value > UINT32_MAX) {
        return {};
    }
    return static_cast<std::uint32_t>(value);
}

}  // namespace

std::string print_device(std::uint64_t device) {
    std::string text(device_digits, '0');
    for (std::size_t i = 0; i < device_digits; ++i) {
        text[device_digits - 1 - i] = hex_digits[(device >> (4 * i)) & 0xFU];
    }
    return text;
}

std::optional<std::uint64_t> parse_device(std::string_view text) {
    if (text.size() != device_digits) {
        return {};
    }
    std::uint64_t device = 0;
    for (const char c : text) {
        const std::size_t digit = hex_digits.find(c);
        if (digit == std::string_view::npos) {
            return {};
        }
        device = device << 4U | digit;
    }
    return device;
}

std::string print_event_id(EventId id) {
    return print_device(id.device) + "-" + std::to_string(id.sequence);
}

std::optional<EventId> parse_event_id(std::string_view text) {
    if (text.size() < device_digits + 2 || text[device_digits] != '-') {
        return {};
    }
    const std::optional<std::uint64_t> device = parse_device(text.substr(0, device_digits));
    const std::optional<std::uint32_t> sequence = parse_sequence(text.substr(device_digits + 1));
    if (!device || !sequence) {
        return {};
    }
    return EventId{*device, *sequence};
}

std::string describe(const Fact& fact) {
    std::string words = std::visit(Words{}, fact);
    // One line whatever the texts hold: a line break or a terminal's control code becomes a space.
    std::replace_if(
        words.begin(), words.end(), [](char c) { return (c >= 0 && c < ' ') || c == 0x7F; }, ' ');
    return words;
}

}  // namespace hemline
