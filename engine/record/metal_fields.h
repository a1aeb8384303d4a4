// What is said of metal: the fields, in the order they are saved.
#pragma once

#include "engine/record/field_parts.h"
#include "engine/record/metal_facts.h"

namespace hemline {

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
void fields(Bytes& bytes, SupplyChosen& fact) {
    bytes.text("edge", fact.edge);
    bytes.choice("role", fact.role, TrimRole::cleat);
    bytes.choice("supply", fact.supply, Supply::on_hand_only);
}

}  // namespace hemline
