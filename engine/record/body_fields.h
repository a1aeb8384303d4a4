// What is said of the roof as one body: the fields, in the order they are saved.
#pragma once

#include "engine/body/body_sides.h"
#include "engine/record/body_facts.h"
#include "engine/record/field_parts.h"

namespace hemline {

/// More sides than are worked out, and more rows along a side, or lines between two, than a roof
/// has.
constexpr std::size_t event_sides_most = 64, event_side_edges_most = 64;

/// A length that may be negative: which way it goes counts.
template <class Bytes>
void offset(Bytes& bytes, const char* name, Length& length) {
    constexpr std::int64_t most = 1'000'000'000'000;
    std::int64_t nm = length.nm();
    bytes.number(name, nm, -most, most);
    length = Length::of_nm(nm);
}

template <class Bytes>
void fields(Bytes& bytes, SideWalked& side) {
    bytes.text("side", side.id);
    bytes.count("edges", side.edges, sizeof(std::uint32_t), AtMost<event_side_edges_most>());
    for (std::string& edge : side.edges) {
        bytes.text("edge", edge);
    }
    bytes.choice("side's kind", side.kind, SideKind::open);
    maybe(bytes, "pitch", side.pitch, [&](Slope& pitch) { fields(bytes, "pitch", pitch); });
    bytes.text("pitch from", side.pitch_from);
    fields(bytes, "corner angle", side.corner, {}, full_turn);
    maybe(bytes, "length", side.length, [&](Length& length) { bytes.length("length", length); });
    bytes.text("meets", side.meets);
}

template <class Bytes>
void fields(Bytes& bytes, BodyWalked& fact) {
    bytes.text("body", fact.body);
    // A side takes at least the sizes of its texts and its list, its kind, corner and two flags.
    bytes.count("sides", fact.sides, 4 * sizeof(std::uint32_t) + sizeof(std::int64_t) + 3,
                AtMost<event_sides_most>());
    for (SideWalked& side : fact.sides) {
        fields(bytes, side);
    }
    bytes.flag("closed", fact.closed);
    maybe(bytes, "host", fact.host, [&](HostSaid& host) {
        bytes.text("host", host.eave);
        offset(bytes, "along", host.along);
        offset(bytes, "up", host.up);
        offset(bytes, "rise", host.rise);
    });
}

template <class Bytes>
void fields(Bytes& bytes, EdgePlaced& fact) {
    bytes.text("edge", fact.edge);
    bytes.text("body", fact.at.body);
    bytes.text("side", fact.at.side);
    bytes.text("other side", fact.at.other);
    bytes.number("which", fact.at.which, std::int32_t{0}, std::int32_t{63});
}

}  // namespace hemline
