// The record of an invented eave: an event of every kind, every field set to something that is not
// its default.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "engine/record/event.h"
#include "engine/record/event_bytes.h"

namespace hemline {

constexpr std::uint64_t eave_device = 0x3f9c'0000'a0b1'c2d3U;
constexpr MetalTaken new_stick{feet(10), {}};

inline Edge invented_eave() {
    Edge edge;
    edge.id = "A";
    edge.kind = EdgeKind::high_eave;
    edge.trim = "eave_two_part";
    edge.left = End::gable;
    edge.right = End::corner_out;
    edge.pitch = Slope{SlopeNotation::degrees, 22'600'000};
    edge.first = Side::right;
    edge.seam = Seam::mechanical;
    edge.looks = Looks::balanced;
    edge.fascia = Fascia::square_cut;
    edge.wrap = true;
    edge.face = inches(4);
    edge.flange = inches(3);
    edge.metal = "steel";
    edge.colour = "gr\xC3\xBCn";
    edge.thickness = tenths_of_millimetre(6);
    edge.pitch2 = rise_in_12(4);
    edge.corner_left = degrees(90);
    edge.corner_right = degrees(135);
    return edge;
}

inline std::vector<Event> eave_record() {
    std::vector<Event> events;
    const auto add = [&](Fact fact, std::vector<EventId> supersedes = {}) {
        const auto number = static_cast<std::uint32_t>(events.size() + 1);
        events.push_back({{eave_device, number},
                          {1'780'000'000'000 + number, number % 3},
                          "Ada",
                          std::move(supersedes),
                          std::move(fact)});
        return events.back().id;
    };
    const Length read = feet(31) + inches(7) + sixteenths(10);
    add(JobStarted{"Invented house", "common practice"});
    add(EdgeAdded{invented_eave()});
    const EventId first = add(ReadingTaken{"A", ReadingOf::edge, read});
    add(ReadingTaken{"A", ReadingOf::edge, read + inches(1)});
    add(Struck{{eave_device, 4}, "burnt inch"});
    add(ReadingTaken{"A", ReadingOf::edge, read + sixteenths(1)}, {first, {7, 9}});
    add(PitchTaken{"A", Slope{SlopeNotation::percent, 41'000'000}});
    add(StyleChosen{"A", Style::full});
    add(RuleSet{"lap", "8 in"});
    const EventId cut = add(PieceCut{"A", TrimRole::main, 1, feet(6), MetalTaken{feet(10), {}}});
    add(PieceCut{"A", TrimRole::wrap, 1, inches(30), MetalTaken{feet(10), cut}});
    add(PieceSpoiled{"A", TrimRole::cleat, 2, inches(40), MetalTaken{feet(12), {}}}, {cut});
    add(StepDone{"A", "lap_measured", 1,
                 Answer{AnswerKind::length, inches(5), 26, "from the ladder"}, "short stick",
                 "Grace"});
    add(ReadingTaken{"A", ReadingOf::remainder, feet(9)});
    add(EdgeFinished{"A", "film off"});
    add(Unknown{60'000, {0, 1, 2, 0xFE, 'H', 'E', 'M', 0xFF}});
    return events;
}

inline Bytes journal_of(const std::vector<Event>& events) {
    Bytes bytes;
    for (const Event& event : events) {
        const Bytes frame = frame_of(event);
        bytes.insert(bytes.end(), frame.begin(), frame.end());
    }
    return bytes;
}

}  // namespace hemline
