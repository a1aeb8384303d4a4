// What is said of an edge: the fields, in the order they are saved.
#pragma once

#include <cstdint>

#include "engine/record/edge_facts.h"
#include "engine/record/field_parts.h"

namespace hemline {

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
void fields(Bytes& bytes, EdgeFinished& fact) {
    bytes.text("edge", fact.edge);
    bytes.text("remark", fact.remark);
}

template <class Bytes>
void fields(Bytes& bytes, LooksChosen& fact) {
    bytes.text("edge", fact.edge);
    bytes.choice("looks", fact.looks, Looks::free);
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
void fields(Bytes& bytes, ValueAccepted& fact) {
    bytes.text("edge", fact.edge);
    bytes.text("value", fact.value);
}

template <class Bytes>
void fields(Bytes& bytes, LapChosen& fact) {
    bytes.text("edge", fact.edge);
    maybe(bytes, "lap", fact.lap, [&](Length& lap) { bytes.length("lap", lap); });
}

}  // namespace hemline
