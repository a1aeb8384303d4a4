// What a card says to do at its marks, against the metal of its pattern, cut by cut.
#include "engine/work/mark_deeds.h"

#include <cmath>
#include <cstdio>

#include "every_card.h"

using namespace hemline_test;

namespace {

/// "67.4°", by the standard library.
std::string degrees_text(double degrees) {
    char text[32];
    std::snprintf(text, sizeof text, "%.1f", std::abs(degrees));
    std::string words = text;
    if (words.size() > 2 && words.substr(words.size() - 2) == ".0") {
        words.resize(words.size() - 2);
    }
    return words + "°";
}

bool has(const std::string& words, const std::string& part) {
    return words.find(part) != std::string::npos;
}

struct Said {
    Mark mark;
    std::string deed;
};

std::vector<Said> said_of(const CardInHand& at, Side side) {
    std::vector<Said> said;
    for (const Mark& mark : at.card.marks) {
        if (mark.toward == side && mark.kind != MarkKind::end_cut) {
            said.push_back({mark, deed_of(at.card, mark, at.pattern).english(Marks::sixteenth)});
        }
    }
    return said;
}

/// Whether the square of 1/64 in at that corner of the tab's end is metal.
bool has_corner(const FlatPattern& pattern, Side side, std::int64_t y, bool below) {
    const std::int64_t d = sixteenths(1).nm() / 4;
    const std::int64_t x0 = side == Side::left ? 0 : pattern.length.nm() - d;
    const std::int64_t y0 = below ? y : y - d;
    double there = 0;
    for (const FlatOutline& part :
         parts_in(pattern.outline, {{x0, y0}, {x0, y0 + d}, {x0 + d, y0 + d}, {x0 + d, y0}})) {
        there += area_mm2(part);
    }
    const double whole = static_cast<double>(d) / 1e6;
    return there > 0.5 * whole * whole;
}

/// The gap that a notch leaves between the two legs at the end of the metal, by its outline.
Length gap_at_bend(const FlatPattern& pattern, Side side) {
    const std::int64_t x = side == Side::left ? 0 : pattern.length.nm();
    const std::int64_t bend = pattern.legs.edges[pattern.main_bend + 1].nm();
    std::int64_t above = -1, below = -1;
    for (std::size_t i = 0; i < pattern.outline.size(); ++i) {
        const FlatPoint p = pattern.outline[i];
        const FlatPoint q = pattern.outline[(i + 1) % pattern.outline.size()];
        if (p.x == x && q.x == x && (p.y < bend) != (q.y < bend)) {
            return {};  // the end runs straight across the bend
        }
        if (p.x == x && p.y < bend) {
            above = std::max(above, p.y);
        } else if (p.x == x && p.y > bend) {
            below = below < 0 ? p.y : std::min(below, p.y);
        }
    }
    return above < 0 || below < 0 ? Length() : Length::of_nm(below - above);
}

/// How much of a strip of 1/100 mm above or below the bend is metal, from `x0` to `x1`: 0 to 1.
double beside_bend(const FlatPattern& pattern, std::int64_t y, std::int64_t x0, std::int64_t x1,
                   bool below) {
    const std::int64_t thin = 10'000, y0 = below ? y : y - thin;
    double there = 0;
    for (const FlatOutline& part :
         parts_in(pattern.outline, {{x0, y0}, {x0, y0 + thin}, {x1, y0 + thin}, {x1, y0}})) {
        there += area_mm2(part);
    }
    return there / (static_cast<double>(x1 - x0) * static_cast<double>(thin) / 1e12);
}

/// A foot's or top's tabs: cut square to their folds where they would cross, and only there.
void compare_corner(const CardInHand& at, const std::vector<Said>& said, Side side, int& squares) {
    const auto in = [&](const Mark& mark) {
        return side == Side::left ? mark.at : at.card.cut - mark.at;
    };
    Length point, tab = at.card.cut;
    for (const Said& one : said) {
        const bool corner = one.mark.kind == MarkKind::corner_point;
        point = corner ? in(one.mark) : point;
        if (corner || one.mark.kind == MarkKind::mitre_near ||
            one.mark.kind == MarkKind::mitre_far) {
            tab = std::min(tab, in(one.mark));
        }
    }
    const bool has_tab = std::any_of(said.begin(), said.end(), [](const Said& one) {
        return one.mark.kind == MarkKind::tab_end;
    });
    for (const Said& one : said) {
        const bool near = one.mark.kind == MarkKind::mitre_near;
        if (one.mark.kind == MarkKind::tab_end && point > Length()) {
            // The lines of fold and cut are a tab's length apart, as the job's rule has it.
            CHECK(has(one.deed, "cut along their folds, 1 in past them"));
        }
        if (!has_tab || (!near && one.mark.kind != MarkKind::mitre_far)) {
            continue;
        }
        CAPTURE(one.deed);
        const std::int64_t y = at.pattern.legs.edges[at.pattern.main_bend + 1].nm();
        const std::int64_t a = (point - tab).nm(), b = point.nm(), length = at.card.cut.nm();
        const double there = side == Side::left
                                 ? beside_bend(at.pattern, y, a, b, !near)
                                 : beside_bend(at.pattern, y, length - b, length - a, !near);
        squares += there < 0.5 ? 1 : 0;
        CHECK(has(one.deed, "cut square") == (there < 0.5));
    }
}

bool is_whole_end(MarkKind kind) { return kind == MarkKind::end_fold || kind == MarkKind::turn_up; }

void compare(const CardInHand& at, Side side, int& folds, int& notches, int& slits, int& squares) {
    CAPTURE(at.name());
    CAPTURE(word_of(side));
    const std::vector<Said> said = said_of(at, side);
    compare_corner(at, said, side, squares);
    for (const FlatTab& tab : at.pattern.tabs) {
        if (tab.side != side) {
            continue;
        }
        ++folds;
        const bool told = std::any_of(said.begin(), said.end(), [&](const Said& one) {
            const bool there = one.mark.at.nm() == tab.fold.a.x || one.mark.at.nm() == tab.fold.b.x;
            return there && has(one.deed, degrees_text(tab.degrees)) &&
                   (has(one.deed, "folded") || has(one.deed, "turned"));
        });
        CHECK_MESSAGE(told, tab.degrees);
    }
    for (const FlatLine& slit : at.pattern.slits) {
        const std::int64_t inner = side == Side::left ? slit.b.x : slit.a.x;
        if ((slit.a.x * 2 < at.pattern.length.nm()) != (side == Side::left)) {
            continue;
        }
        ++slits;
        CHECK(beside_bend(at.pattern, slit.a.y, slit.a.x, slit.b.x, false) > 0.99);
        CHECK(beside_bend(at.pattern, slit.a.y, slit.a.x, slit.b.x, true) > 0.99);
        CHECK(std::any_of(said.begin(), said.end(), [&](const Said& one) {
            return one.mark.at.nm() == inner && has(one.deed, "slit along");
        }));
    }
    for (std::size_t i = 0; i < at.pattern.slits.size(); ++i) {
        CHECK(std::count(at.pattern.slits.begin(), at.pattern.slits.end(), at.pattern.slits[i]) ==
              1);
    }
    for (const Said& one : said) {
        CAPTURE(one.deed);
        if (has(one.deed, "slit along")) {
            CHECK(std::any_of(
                at.pattern.slits.begin(), at.pattern.slits.end(), [&](const FlatLine& slit) {
                    return slit.a.x == one.mark.at.nm() || slit.b.x == one.mark.at.nm();
                }));
        }
        if (is_whole_end(one.mark.kind)) {
            const Length gap = gap_at_bend(at.pattern, side);
            const bool both =
                std::count_if(at.pattern.tabs.begin(), at.pattern.tabs.end(),
                              [&](const FlatTab& tab) { return tab.side == side; }) > 1;
            CHECK(has(one.deed, "notch") == (both && gap > Length()));
            if (both && gap > Length()) {
                ++notches;
                const Length half = Length::of_nm((gap.nm() + 1) / 2);
                CHECK(has(one.deed, print_length(half, Marks::sixteenth)));
            }
        }
        if (one.mark.kind == MarkKind::tab_end) {
            for (const FlatTab& tab : at.pattern.tabs) {
                const bool alone =
                    std::any_of(said.begin(), said.end(), [](const Said& other_mark) {
                        return other_mark.mark.kind == MarkKind::tab_fold;
                    });
                if (tab.side != side || !alone || at.pattern.legs.names[tab.leg] != LegName::face) {
                    continue;
                }
                const bool upper =
                    has_corner(at.pattern, side, at.pattern.legs.edges[tab.leg].nm(), true);
                const bool lower =
                    has_corner(at.pattern, side, at.pattern.legs.edges[tab.leg + 1].nm(), false);
                CHECK(has(one.deed, "both corners") == (!upper && !lower));
                CHECK(has(one.deed, "lower corner") == (upper && !lower));
                CHECK(has(one.deed, "upper corner") == (!upper && lower));
                CHECK(has(one.deed, "the tab ends") == (upper && lower));
            }
        }
    }
}

/// What the first piece's card says at that kind of mark.
std::string deed_on(const Edge& edge, TrimRole role, MarkKind kind) {
    Job job;
    job.edges.push_back(read_twice(edge, feet(8)));
    const Catalogue catalogue = own_catalogue();
    const Plan plan = make_plan(job, catalogue);
    const auto card = make_card(job, plan, catalogue, edge.id, role, 1);
    REQUIRE(card.ok());
    const auto pattern = piece_pattern(*card, edge, sections_of_assets());
    REQUIRE(pattern.ok());
    for (const Mark& mark : card->marks) {
        if (mark.kind == kind) {
            return deed_of(*card, mark, *pattern).english();
        }
    }
    return "";
}

Edge of_kind(EdgeKind kind, End left, End right) {
    Edge edge = eave("A", left, right);
    edge.kind = kind;
    return edge;
}

}  // namespace

TEST_CASE("angles, notches, slits, clipped corners of every card are those of its pattern" *
          doctest::test_suite("large")) {
    int folds = 0, notches = 0, slits = 0, squares = 0;
    const auto refused = for_every_card([&](const CardInHand& at) {
        compare(at, Side::left, folds, notches, slits, squares);
        compare(at, Side::right, folds, notches, slits, squares);
    });
    CHECK(refused.empty());
    CHECK(folds > 2000);
    CHECK(notches > 100);
    CHECK(slits > 300);
    CHECK(squares > 100);
}

// The angles by hand, from plane geometry; the deeds are common practice, no published source.

TEST_CASE("a tab is folded by what is left of the corner: 90° at a square one, 45° at 135°") {
    Edge edge = eave("A", End::corner_out, End::gable);
    CHECK(deed_on(edge, TrimRole::main, MarkKind::tab_fold) == "tab folded 90° round the corner");
    edge.corner_left = degrees(135);
    CHECK(deed_on(edge, TrimRole::main, MarkKind::tab_fold) == "tab folded 45° round the corner");
}

TEST_CASE("a sidewall's corner is its own, though its foot lies at the right") {
    Edge edge = of_kind(EdgeKind::sidewall, End::corner_out, End::ridge);
    edge.corner_left = degrees(135);
    Job job;
    job.edges.push_back(read_twice(edge, feet(8)));
    put_foot_right(job.edges.front());
    const Catalogue catalogue = own_catalogue();
    const auto card = make_card(job, make_plan(job, catalogue), catalogue, "A", TrimRole::main, 1);
    REQUIRE(card.ok());
    CHECK(tab_folds(*card, edge, Side::right).tab == doctest::Approx(45));
}

TEST_CASE("a gable's peak is folded onto the other roof: 53.1° over a ridge at 6 in 12") {
    Edge edge = of_kind(EdgeKind::gable, End::open, End::ridge);
    CHECK(deed_on(edge, TrimRole::main, MarkKind::end_fold) ==
          "flange folded down 53.1° here, over the peak");  // 2 · 26.565°
    edge.pitch2 = rise_in_12(12);
    CHECK(deed_on(edge, TrimRole::main, MarkKind::end_fold) ==
          "flange folded down 71.6° here, over the peak");  // 26.565° + 45°
    edge.right = End::eave;                                 // a high eave: plumb
    CHECK(deed_on(edge, TrimRole::main, MarkKind::end_fold) ==
          "flange folded down 116.6° here, over the peak");
}

TEST_CASE("a ridge's folded end is notched by half the bend: 1 in a side for 2 in at 6 in 12") {
    // tan 26.565° = 1/2.
    CHECK(deed_on(of_kind(EdgeKind::ridge, End::gable, End::gable), TrimRole::main,
                  MarkKind::end_fold) ==
          "end folded down 90° here to close it; cut a notch at the bend, from a point here to "
          "1 in each side at the end");
}

TEST_CASE("an eave trim's tab loses both corners, a fascia wrap's the lower one alone") {
    Edge edge = eave("A", End::gable, End::gable);
    edge.wrap = true;
    CHECK(deed_on(edge, TrimRole::main, MarkKind::tab_end) ==
          "both corners of the tab clipped at 45°");
    CHECK(deed_on(edge, TrimRole::wrap, MarkKind::tab_end) ==
          "lower corner of the tab clipped at 45°");
}

TEST_CASE("on the overlapping piece the lap line is where the piece below ends" *
          doctest::test_suite("long")) {
    const auto refused = for_every_card([](const CardInHand& at) {
        for (const Mark& mark : at.card.marks) {
            if (mark.kind != MarkKind::lap_line) {
                continue;
            }
            const EndWork work = mark.toward == Side::left ? at.card.left : at.card.right;
            CHECK(deed_of(at.card, mark, at.pattern) ==
                  (work == EndWork::overlap ? "mark only: the piece below ends here"
                                            : "mark only: the visible part ends here"));
        }
    });
    CHECK(refused.empty());
}
