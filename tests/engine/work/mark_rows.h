// The marks of a card, as rows worked out by hand.
#pragma once

#include <tuple>
#include <vector>

#include "engine/work/card.h"

namespace hemline_test {

using namespace hemline;

using Row = std::tuple<MarkKind, Length, Side>;

constexpr Side L = Side::left;
constexpr Side R = Side::right;

inline std::vector<Row> rows_of(const Card& card) {
    std::vector<Row> rows;
    for (const Mark& mark : card.marks) {
        rows.emplace_back(mark.kind, mark.at, mark.toward);
    }
    return rows;
}

}  // namespace hemline_test
