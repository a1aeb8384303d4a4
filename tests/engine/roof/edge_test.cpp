#include <doctest/doctest.h>

#include "engine/roof/edge.h"

using namespace hemline;

TEST_CASE("Every word of the readings file is read back as the value it was written for") {
    for (int i = 0; i < 9; ++i) {
        CHECK(end_of(word_of(static_cast<End>(i))) == static_cast<End>(i));
    }
    for (int i = 0; i < 4; ++i) {
        CHECK(seam_of(word_of(static_cast<Seam>(i))) == static_cast<Seam>(i));
    }
    for (int i = 0; i < 3; ++i) {
        CHECK(looks_of(word_of(static_cast<Looks>(i))) == static_cast<Looks>(i));
    }
    for (int i = 0; i < 2; ++i) {
        CHECK(side_of(word_of(static_cast<Side>(i))) == static_cast<Side>(i));
        CHECK(fascia_of(word_of(static_cast<Fascia>(i))) == static_cast<Fascia>(i));
    }
}

TEST_CASE("Files and people each get their own word") {
    CHECK(word_of(End::corner_out) == "corner_out");
    CHECK(spoken(End::corner_out) == "outside corner");
    CHECK(word_of(Seam::snap_lock) == "snap_lock");
    CHECK(spoken(Seam::snap_lock) == "snap-lock");
    CHECK(word_of(Fascia::square_cut) == "square");
}

TEST_CASE("A word nobody wrote has no value") {
    CHECK_FALSE(end_of("corner").has_value());
    CHECK_FALSE(end_of("").has_value());
    CHECK_FALSE(seam_of("snap-lock").has_value());
    CHECK_FALSE(side_of("l").has_value());
}
