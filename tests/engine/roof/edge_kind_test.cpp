#include "engine/roof/edge_kind.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "engine/roof/edge_shape.h"

using namespace hemline;

TEST_CASE("Every kind has one row, and the last number is the last kind's") {
    std::set<EdgeKind> kinds;
    for (const KindOfEdge& one : kinds_of_edge()) {
        CHECK(kinds.insert(one.kind).second);
        CHECK(one.kind <= edge_kind_last);
        CHECK(&facts_of(one.kind) == &one);
    }
    CHECK(kinds.size() == static_cast<std::size_t>(edge_kind_last) + 1);
}

TEST_CASE("A kind's word in files is read back as the kind, and people read another") {
    for (const KindOfEdge& one : kinds_of_edge()) {
        CHECK(edge_kind_of(word_of(one.kind)) == one.kind);
    }
    CHECK(word_of(EdgeKind::high_eave) == "high_eave");
    CHECK(spoken(EdgeKind::high_eave) == "high eave");
    CHECK(title_of(EdgeKind::high_eave, "C") == "High eave C");
    CHECK_FALSE(edge_kind_of("Eave").has_value());
}

TEST_CASE("A kind's usual ends are among those it can have") {
    for (const KindOfEdge& one : kinds_of_edge()) {
        CAPTURE(one.word);
        CHECK(can_end_at(one.kind, Side::left, one.left_usual));
        CHECK(can_end_at(one.kind, Side::right, one.right_usual));
    }
}

TEST_CASE("A sloped edge alone has a foot and a top that differ, and is fitted from its foot") {
    for (const KindOfEdge& one : kinds_of_edge()) {
        CAPTURE(one.word);
        const bool alike =
            std::equal(one.left.begin(), one.left.end(), one.right.begin(), one.right.end());
        CHECK(alike == (one.lies != Lies::sloped));
        Edge edge;
        edge.kind = one.kind;
        edge.first = Side::right;
        CHECK(first_fitted(edge) == (one.lies == Lies::sloped ? Side::left : Side::right));
    }
}
