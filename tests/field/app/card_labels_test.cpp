// The cut card's marks on real screens: their values at 30′ (readings and cut lengths), each under
// its leader. What Size::title is in minutes of arc is measured in fonts_test.cpp.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "engine/words/result.h"
#include "field/screens/card/mark_labels.h"
#include "field/state/edge_view.h"
#include "tests/field/app/journey.h"
#include "tests/field/app/layout_walks.h"

using namespace hemline;

namespace {

constexpr float px = px_per_mm_unknown;
constexpr Size2 large_mm[] = {{217, 135.6F}, {135.6F, 217}, {280, 175}, {175, 280}};
constexpr Size2 small_mm[] = {{150, 90}, {90, 150}, {172, 108}, {108, 172}};

Card card_on(const Journey& crew) {
    const Result<Card> card = card_in_hand(crew.state(), crew.where());
    REQUIRE(card.ok());
    return *card;
}

/// The eaves' first cards, a fascia wrap's too, one after another: two are cut in between.
void see_cards(Journey& crew, Marks marks, const std::function<void()>& look) {
    const auto see = [&](const std::string& edge, TrimRole role, int pieces) {
        for (int piece = 1; piece <= pieces; ++piece) {
            crew.reach_card(edge, role, piece);
            look();
            crew.tap("cut");
        }
    };
    const Length a = feet(46) + sixteenths(4);
    const Length c = feet(15) + inches(8) + sixteenths(8);
    crew.read_edge("A", a, a, "5");
    crew.tap("leave");
    crew.read_edge("C", c, c, "5");
    if (marks == Marks::millimetre) {
        crew.tap_all({"leave", "rules", "rule cut_grid", "grid 1 mm", "leave", "edge C"});
    }
    REQUIRE(crew.state().marks == marks);
    const bool all = marks == Marks::sixteenth;  // the thumb answers steps in inches alone
    see("C", TrimRole::main, all ? 2 : 1);
    crew.tap_all({"leave", "edge A"});
    see("A", TrimRole::wrap, 1);
    if (all) {
        see("A", TrimRole::main, 2);
    }
}

bool is_shown(const Journey& crew, const std::string& said, Size size, float h_least) {
    const std::vector<Words>& words = crew.screen->ui().words();
    return std::any_of(words.begin(), words.end(), [&](const Words& one) {
        return one.words == said && one.size == size && one.box.h >= h_least;
    });
}

/// Values of marks that show in full, in letters of that size.
int values_shown(const Journey& crew, Size size) {
    const Marks marks = crew.state().marks;
    const float h = crew.screen->ui().figure_height(size, marks) - 1;
    const std::vector<MarkLabel> labels = labels_of(card_on(crew));
    return static_cast<int>(
        std::count_if(labels.begin(), labels.end(), [&](const MarkLabel& label) {
            return is_shown(crew, print_length(label.at, marks), size, h);
        }));
}

std::string overlapping(const Ui& ui) {
    std::string faults;
    const std::vector<Words>& words = ui.words();
    for (std::size_t i = 0; i < words.size(); ++i) {
        for (std::size_t j = i + 1; j < words.size(); ++j) {
            const Box both = common_of(words[i].box, words[j].box);
            if (both.w > 1 && both.h > 1) {
                faults += words[i].words + " lies on " + words[j].words + "\n";
            }
        }
    }
    return faults;
}

void resize(Journey& crew, Size2 mm) {
    crew.screen->resize(mm.w * px, mm.h * px);
    crew.screen->frames(3);
}

/// Leaders and labels as they are laid for that width.
std::string crossed_leaders(const Journey& crew, float w_mm) {
    const Ui& ui = crew.screen->ui();
    const Card card = card_on(crew);
    const std::vector<MarkLabel> labels = labels_of(card);
    const float w = (w_mm - 12) * px;
    const Length whole = std::max(card.cut, card.stick_length - card.stick_from);
    std::vector<float> places;
    for (const MarkLabel& label : labels) {
        places.push_back(w * static_cast<float>(static_cast<double>(label.at.nm()) /
                                                static_cast<double>(whole.nm())));
    }
    std::string faults;
    for (const float h : {0.0F, 1000.0F}) {
        const LabelsLaid laid =
            lay_labels(ui, labels, places, {crew.state().marks, true}, {0, 0, w, h});
        CHECK(laid.size == (h > 0 ? Size::title : Size::bold));
        CHECK(laid.both == (h > 0));
        for (const LabelPlaced& one : laid.rows.labels) {
            for (const LabelPlaced& other : laid.rows.labels) {
                for (std::size_t n = 1; n < one.leader.size() && &one != &other; ++n) {
                    if (is_crossed(inset(other.box, 1), one.leader[n - 1].x, one.leader[n - 1].y,
                                   one.leader[n].x, one.leader[n].y)) {
                        faults += "a leader crosses a label\n";
                    }
                }
            }
        }
    }
    return faults;
}

}  // namespace

TEST_CASE("On 10 and 13 in every mark's value is at 30′ and none has to be scrolled to" *
          doctest::test_suite("long")) {
    for (const Tapes tapes : {Tapes{Marks::sixteenth, false}, Tapes{Marks::sixteenth, true},
                              Tapes{Marks::millimetre, true}}) {
        Journey crew(280 * px, 175 * px);
        if (tapes.both) {
            crew.tap_all({"by", "tablet", "units", "leave"});
        }
        crew.tap("demo");
        int cards = 0;
        see_cards(crew, tapes.marks, [&] {
            const std::vector<MarkLabel> labels = labels_of(card_on(crew));
            for (const Size2 page : large_mm) {
                resize(crew, page);
                CAPTURE(page.w);
                CAPTURE(card_on(crew).trim);
                CHECK(values_shown(crew, Size::title) == static_cast<int>(labels.size()));
                for (const MarkLabel& label : labels) {
                    const std::string other = on_other_tape(label.at, tapes).english();
                    CHECK((other.empty() || is_shown(crew, other, Size::small, 1)));
                }
                CHECK(overlapping(crew.screen->ui()) == "");
                CHECK(crossed_leaders(crew, page.w) == "");
            }
            ++cards;
            resize(crew, large_mm[2]);
        });
        CHECK(cards == (tapes.marks == Marks::sixteenth ? 5 : 2));
    }
}

TEST_CASE("On 7 and 8 in a mark's value is at 22′ at least, and no label lies on another") {
    Journey crew(280 * px, 175 * px);
    crew.tap("demo");
    see_cards(crew, Marks::sixteenth, [&] {
        const int marks = static_cast<int>(labels_of(card_on(crew)).size());
        for (const Size2 page : small_mm) {
            resize(crew, page);
            CAPTURE(page.w);
            CHECK(overlapping(crew.screen->ui()) == "");
            CHECK(crossed_leaders(crew, page.w) == "");
            if (page.w > 150) {  // 8 in, lying: before the first scroll
                CHECK(values_shown(crew, Size::title) + values_shown(crew, Size::bold) >=
                      std::min(marks, 4));
            }
        }
        resize(crew, large_mm[2]);
    });
}
