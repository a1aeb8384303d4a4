// The fields of every kind of event, in the order they are saved: read this beside
// docs/journal_format.md. One list serves writing and reading, so the two cannot differ.
//
//   payload = header_fields + fields of the fact
//
// A kind's number and its list never change once released: new fields are a new kind. A list says
// in the call how many it may hold: more is refused by its name, before it is kept or when it is
// read. `Bytes` is the writer or the reader of event_bytes.cpp.
#pragma once

#include <cstdint>
#include <optional>
#include <variant>

#include "engine/record/event.h"

namespace hemline {

template <class>
constexpr std::uint16_t kind_number = 0;
template <>
inline constexpr std::uint16_t kind_number<JobStarted> = 1;
template <>
inline constexpr std::uint16_t kind_number<EdgeAdded> = 2;
template <>
inline constexpr std::uint16_t kind_number<ReadingTaken> = 3;
template <>
inline constexpr std::uint16_t kind_number<PitchTaken> = 4;
template <>
inline constexpr std::uint16_t kind_number<StyleChosen> = 5;
template <>
inline constexpr std::uint16_t kind_number<RuleSet> = 6;
template <>
inline constexpr std::uint16_t kind_number<PieceCut> = 7;
template <>
inline constexpr std::uint16_t kind_number<PieceSpoiled> = 8;
template <>
inline constexpr std::uint16_t kind_number<StepDone> = 9;
template <>
inline constexpr std::uint16_t kind_number<EdgeFinished> = 10;
template <>
inline constexpr std::uint16_t kind_number<Struck> = 11;
template <>
inline constexpr std::uint16_t kind_number<PlanChosen> = 20;
template <>
inline constexpr std::uint16_t kind_number<MetalCounted> = 21;
template <>
inline constexpr std::uint16_t kind_number<StickMeasured> = 22;
template <>
inline constexpr std::uint16_t kind_number<StickSpoiled> = 23;
template <>
inline constexpr std::uint16_t kind_number<StockChosen> = 24;
template <>
inline constexpr std::uint16_t kind_number<SupplyChosen> = 25;
template <>
inline constexpr std::uint16_t kind_number<LooksChosen> = 26;
template <>
inline constexpr std::uint16_t kind_number<SectionChosen> = 30;
template <>
inline constexpr std::uint16_t kind_number<EdgeSentBack> = 40;
template <>
inline constexpr std::uint16_t kind_number<EdgeTakenOff> = 41;
template <>
inline constexpr std::uint16_t kind_number<LapChosen> = 42;
template <>
inline constexpr std::uint16_t kind_number<Picked> = 43;
template <>
inline constexpr std::uint16_t kind_number<CopyNoted> = 44;

/// More pieces, sticks or laps than any job has.
constexpr std::int64_t count_most = 1'000'000;
/// Bytes of a text: a page of remarks.
constexpr std::size_t text_most = 4096;
/// No brake bends as many legs, and no supplier has as many lengths.
constexpr std::size_t event_legs_most = 64, event_stock_most = 64;
/// No roof has as many runs of one trim; and as many pieces make 300 m from sticks of a foot.
constexpr std::size_t event_runs_most = 1000, event_cuts_most = 1000;

/// How many a list may hold. It is part of the call's type: a list without it, or with one past
/// what any event needs, does not compile.
template <std::size_t most>
struct AtMost {
    static_assert(most > 0 && most <= text_most, "a list that makes work without bound");
};

/// An empty fact of that kind; Unknown when this program has no such kind.
inline Fact blank_fact(std::uint16_t kind) {
    switch (kind) {
        case kind_number<JobStarted>:
            return JobStarted{};
        case kind_number<EdgeAdded>:
            return EdgeAdded{};
        case kind_number<ReadingTaken>:
            return ReadingTaken{};
        case kind_number<PitchTaken>:
            return PitchTaken{};
        case kind_number<StyleChosen>:
            return StyleChosen{};
        case kind_number<RuleSet>:
            return RuleSet{};
        case kind_number<PieceCut>:
            return PieceCut{};
        case kind_number<PieceSpoiled>:
            return PieceSpoiled{};
        case kind_number<StepDone>:
            return StepDone{};
        case kind_number<EdgeFinished>:
            return EdgeFinished{};
        case kind_number<Struck>:
            return Struck{};
        case kind_number<PlanChosen>:
            return PlanChosen{};
        case kind_number<MetalCounted>:
            return MetalCounted{};
        case kind_number<StickMeasured>:
            return StickMeasured{};
        case kind_number<StickSpoiled>:
            return StickSpoiled{};
        case kind_number<StockChosen>:
            return StockChosen{};
        case kind_number<SupplyChosen>:
            return SupplyChosen{};
        case kind_number<LooksChosen>:
            return LooksChosen{};
        case kind_number<EdgeSentBack>:
            return EdgeSentBack{};
        case kind_number<EdgeTakenOff>:
            return EdgeTakenOff{};
        case kind_number<LapChosen>:
            return LapChosen{};
        case kind_number<SectionChosen>:
            return SectionChosen{};
        case kind_number<Picked>:
            return Picked{};
        case kind_number<CopyNoted>:
            return CopyNoted{};
        default:
            return Unknown{kind, {}};
    }
}

/// A flag, and the value only where the flag is 1.
template <class Bytes, class T, class Each>
void maybe(Bytes& bytes, const char* name, std::optional<T>& value, Each each) {
    bool there = value.has_value();
    bytes.flag(name, there);
    if (there) {
        each(value ? *value : value.emplace());
    }
}

template <class Bytes>
void fields(Bytes& bytes, const char* name, EventId& id) {
    bytes.number(name, id.device);
    bytes.number(name, id.sequence, std::uint32_t{1}, std::uint32_t{0xFFFF'FFFF});
}

template <class Bytes>
void fields(Bytes& bytes, const char* name, Angle& angle, Angle least, Angle most) {
    std::int64_t number = angle.microdegrees();
    bytes.number(name, number, least.microdegrees(), most.microdegrees());
    angle = microdegrees(number);
}

template <class Bytes>
void fields(Bytes& bytes, const char* name, Slope& slope) {
    bytes.choice(name, slope.notation, SlopeNotation::percent);
    const bool in_degrees = slope.notation == SlopeNotation::degrees;
    bytes.number(name, slope.millionths, std::int64_t{0},
                 in_degrees ? std::int64_t{89'999'999} : std::int64_t{1'000'000'000'000});
}

template <class Bytes>
void fields(Bytes& bytes, const char* name, MetalTaken& metal) {
    bytes.length(name, metal.stick);
    maybe(bytes, "offcut", metal.offcut, [&](EventId& id) { fields(bytes, "offcut", id); });
}

template <class Bytes>
void fields(Bytes& bytes, Edge& edge) {
    const auto length = [&](Length& value) { bytes.length("edge size", value); };
    const auto slope = [&](Slope& value) { fields(bytes, "pitch", value); };
    const auto corner = [&](Angle& value) { fields(bytes, "corner angle", value, {}, full_turn); };
    bytes.text("edge", edge.id);
    bytes.choice("kind", edge.kind, edge_kind_last);
    bytes.text("trim", edge.trim);
    bytes.choice("left", edge.left, End::valley);
    bytes.choice("right", edge.right, End::valley);
    maybe(bytes, "pitch", edge.pitch, slope);
    bytes.choice("first", edge.first, Side::right);
    bytes.choice("seam", edge.seam, Seam::nail_strip);
    bytes.choice("looks", edge.looks, Looks::free);
    bytes.choice("fascia", edge.fascia, Fascia::square_cut);
    bytes.flag("wrap", edge.wrap);
    maybe(bytes, "face", edge.face, length);
    maybe(bytes, "flange", edge.flange, length);
    bytes.text("metal", edge.metal);
    bytes.text("colour", edge.colour);
    maybe(bytes, "thickness", edge.thickness, length);
    maybe(bytes, "pitch2", edge.pitch2, slope);
    maybe(bytes, "corner_left", edge.corner_left, corner);
    maybe(bytes, "corner_right", edge.corner_right, corner);
}

template <class Bytes>
void fields(Bytes& bytes, JobStarted& fact) {
    bytes.text("name", fact.name);
    bytes.text("practice", fact.practice);
}
template <class Bytes>
void fields(Bytes& bytes, EdgeAdded& fact) {
    fields(bytes, fact.edge);
}
template <class Bytes>
void fields(Bytes& bytes, ReadingTaken& fact) {
    bytes.text("edge", fact.edge);
    bytes.choice("reading of", fact.of, ReadingOf::remainder);
    bytes.length("length", fact.length);
}
template <class Bytes>
void fields(Bytes& bytes, PitchTaken& fact) {
    bytes.text("edge", fact.edge);
    fields(bytes, "pitch", fact.pitch);
}
template <class Bytes>
void fields(Bytes& bytes, StyleChosen& fact) {
    bytes.text("edge", fact.edge);
    bytes.choice("style", fact.style, Style::full);
}
template <class Bytes>
void fields(Bytes& bytes, RuleSet& fact) {
    bytes.text("rule", fact.key);
    bytes.text("value", fact.value);
}
template <class Bytes>
void fields(Bytes& bytes, PieceCut& fact) {
    bytes.text("edge", fact.edge);
    bytes.choice("role", fact.role, TrimRole::cleat);
    bytes.number("piece", fact.piece);
    bytes.length("cut", fact.cut);
    fields(bytes, "stick", fact.metal);
}
template <class Bytes>
void fields(Bytes& bytes, PieceSpoiled& fact) {
    bytes.text("edge", fact.edge);
    bytes.choice("role", fact.role, TrimRole::cleat);
    bytes.number("piece", fact.piece);
    bytes.length("lost", fact.lost);
    fields(bytes, "stick", fact.metal);
}
template <class Bytes>
void fields(Bytes& bytes, StepDone& fact) {
    bytes.text("edge", fact.edge);
    bytes.text("step", fact.step);
    bytes.number("piece", fact.piece);
    bytes.choice("answer", fact.answer.kind, AnswerKind::seen);
    bytes.length("answer", fact.answer.length);
    bytes.number("answer", fact.answer.count);
    bytes.text("answer", fact.answer.seen);
    bytes.text("exception", fact.exception);
    bytes.text("exception by", fact.exception_by);
}
template <class Bytes>
void fields(Bytes& bytes, EdgeFinished& fact) {
    bytes.text("edge", fact.edge);
    bytes.text("remark", fact.remark);
}
template <class Bytes>
void fields(Bytes& bytes, Struck& fact) {
    fields(bytes, "target", fact.target);
    bytes.text("reason", fact.reason);
}
template <class Bytes, std::size_t most>
void lengths(Bytes& bytes, const char* name, std::vector<Length>& many, AtMost<most> bound) {
    bytes.count(name, many, sizeof(std::int64_t), bound);
    for (Length& length : many) {
        bytes.length(name, length);
    }
}
template <class Bytes>
void fields(Bytes& bytes, RunChosen& run) {
    bytes.text("edge", run.edge);
    bytes.choice("role", run.role, TrimRole::cleat);
    lengths(bytes, "cuts", run.cuts, AtMost<event_cuts_most>());
}
template <class Bytes>
void fields(Bytes& bytes, PlanChosen& fact) {
    bytes.choice("prefer", fact.prefer, Prefer::sticks);
    bytes.text("trim", fact.trim);
    bytes.number("extra laps", fact.extra_laps, std::int64_t{0}, count_most);
    bytes.number("unbalanced", fact.unbalanced, std::int64_t{0}, count_most);
    bytes.number("sticks", fact.sticks, std::int64_t{0}, count_most);
    // A run takes at least the size of its name, its role and its number of cuts.
    bytes.count("runs", fact.runs, 2 * sizeof(std::uint32_t) + 1, AtMost<event_runs_most>());
    for (RunChosen& run : fact.runs) {
        fields(bytes, run);
    }
}
template <class Bytes>
void fields(Bytes& bytes, MetalCounted& fact) {
    bytes.text("edge", fact.edge);
    bytes.choice("role", fact.role, TrimRole::cleat);
    bytes.length("length", fact.length);
    bytes.number("count", fact.count, std::int64_t{0}, count_most);
}
template <class Bytes>
void fields(Bytes& bytes, StickMeasured& fact) {
    bytes.text("edge", fact.edge);
    bytes.choice("role", fact.role, TrimRole::cleat);
    fields(bytes, "stick", fact.metal);
    bytes.length("length", fact.length);
}
template <class Bytes>
void fields(Bytes& bytes, StickSpoiled& fact) {
    bytes.text("edge", fact.edge);
    bytes.choice("role", fact.role, TrimRole::cleat);
    fields(bytes, "stick", fact.metal);
}
template <class Bytes>
void fields(Bytes& bytes, StockChosen& fact) {
    lengths(bytes, "stock", fact.lengths, AtMost<event_stock_most>());
}
template <class Bytes>
void fields(Bytes& bytes, SupplyChosen& fact) {
    bytes.text("edge", fact.edge);
    bytes.choice("role", fact.role, TrimRole::cleat);
    bytes.choice("supply", fact.supply, Supply::on_hand_only);
}
template <class Bytes>
void fields(Bytes& bytes, LooksChosen& fact) {
    bytes.text("edge", fact.edge);
    bytes.choice("looks", fact.looks, Looks::free);
}
template <class Bytes>
void fields(Bytes& bytes, SectionChosen& fact) {
    bytes.text("trim", fact.trim);
    bytes.count("legs", fact.legs, sizeof(std::int64_t) + 2, AtMost<event_legs_most>());
    for (LegChosen& leg : fact.legs) {
        bytes.length("leg", leg.width);
        bytes.choice("hem", leg.hem, Hem::tear_drop);
        maybe(bytes, "bend", leg.bend,
              [&](Angle& bend) { fields(bytes, "bend", bend, -half_turn, half_turn); });
    }
}
template <class Bytes>
void fields(Bytes& bytes, EdgeSentBack& fact) {
    bytes.text("edge", fact.edge);
    bytes.text("reason", fact.reason);
}
template <class Bytes>
void fields(Bytes& bytes, EdgeTakenOff& fact) {
    bytes.text("edge", fact.edge);
}
template <class Bytes>
void fields(Bytes& bytes, LapChosen& fact) {
    bytes.text("edge", fact.edge);
    maybe(bytes, "lap", fact.lap, [&](Length& lap) { bytes.length("lap", lap); });
}
template <class Bytes>
void fields(Bytes& bytes, Thing& thing) {
    bytes.choice("about", thing.subject, Subject::loss);
    bytes.text("about", thing.name);
    bytes.choice("about", thing.role, TrimRole::cleat);
    bytes.number("about", thing.piece);
    bytes.text("about", thing.step);
    bytes.text("about", thing.by);
}
template <class Bytes>
void fields(Bytes& bytes, Picked& fact) {
    fields(bytes, "picked", fact.chosen);
    fields(bytes, fact.about);
}
template <class Bytes>
void fields(Bytes& bytes, CopyNoted& fact) {
    fields(bytes, "number", fact.number);
    bytes.number("copies", fact.copies, std::int64_t{2}, std::int64_t{1'000'000});
}
template <class Bytes>
void fields(Bytes& bytes, Unknown& fact) {
    bytes.rest(fact.payload);
}

/// What every event has, of unknown kinds too. Version 2 has its moment besides, and times after
/// the last of version 1, so that an event can follow any of them.
template <class Bytes>
void header_fields(Bytes& bytes, Event& event) {
    fields(bytes, "event id", event.id);
    bytes.number("time", event.when.wall_ms, std::int64_t{0},
                 event.moment ? time_last.wall_ms : wall_ms_most);
    bytes.number("time", event.when.counter);
    if (event.moment) {
        bytes.number("clock", event.moment->clock.ms, std::int64_t{0}, wall_ms_most);
        maybe(bytes, "after", event.moment->after,
              [&](EventId& id) { fields(bytes, "after", id); });
    }
    bytes.text("by", event.by);
    bytes.count("supersedes", event.supersedes, sizeof(std::uint64_t) + sizeof(std::uint32_t),
                AtMost<supersedes_most>());
    for (EventId& id : event.supersedes) {
        fields(bytes, "supersedes", id);
    }
}

template <class Bytes>
void all_fields(Bytes& bytes, Event& event) {
    header_fields(bytes, event);
    std::visit([&](auto& fact) { fields(bytes, fact); }, event.fact);
}

}  // namespace hemline
