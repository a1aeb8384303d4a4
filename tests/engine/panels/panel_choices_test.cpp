// Layouts worth choosing: by hand, and each the best of all, laid one by one.
#include "engine/panels/panel_choices.h"

#include <doctest/doctest.h>

#include "tests/engine/panels/said_planes.h"

using namespace hemline;
using namespace hemline::test;

namespace {

PanelChoices choices_of(const DeckPlane& plane, const std::vector<Penetration>& through = {},
                        const PanelJob& job = {}) {
    const Result<PanelChoices> choices = panel_choices(plane, job, through);
    REQUIRE(choices.ok());
    return *choices;
}

const PanelChoice& best_for(const PanelChoices& choices, BestFor sense) {
    for (const PanelChoice& one : choices.choices) {
        if (std::count(one.best_for.begin(), one.best_for.end(), sense) > 0) {
            return one;
        }
    }
    FAIL("no choice");
    return choices.choices.front();
}

/// To order, with pairs.
Length metal_in(const PanelLayout& layout) {
    Length metal;
    for (const LaidPan& pan : layout.pans) {
        metal += pan.length;
    }
    for (const PanPair& pair : layout.pairs) {
        metal += pair.length - layout.pans[pair.first].length - layout.pans[pair.second].length;
    }
    return metal;
}

}  // namespace

TEST_CASE("A plane with nothing in the way has one layout worth choosing: the balanced one") {
    // 40 ft between gables: 1/4 in to either side, nine layouts; with one pan more the ends are
    // 7 3/4 in, from 4 in to there: 60 sixteenths to either side and none.
    const PanelChoices choices = choices_of(said_plane(gable_roof(480, 30)));
    CHECK(choices.tried == 9 + 121);
    REQUIRE(choices.choices.size() == 1);
    CHECK(choices.choices[0].seams == ChosenSeams{});
    CHECK(choices.choices[0].best_for.size() == 4);
    CHECK(choices.choices[0].metal == sixteenths(30 * 3260));
    CHECK(choices.choices[0].left_end == sixteenths(252));
}

TEST_CASE("A pipe near a seam: the least shift beside what looks best") {
    // W 149 7/8, ends 10 15/16: 81 sixteenths to either side; one pan more has ends under 4 in.
    const DeckPlane plane = said_plane(gable_roof(150.375, 30, SideKind::gable, SideKind::wall));
    const PanelChoices choices =
        choices_of(plane, {{Penetration::Kind::pipe, inches(42), inches(60), inches(9)}});
    CHECK(choices.tried == 163);
    const PanelChoice& least = best_for(choices, BestFor::least_shift);
    CHECK(least.seams.shift == sixteenths(73));
    CHECK(least.left_end == sixteenths(248));
    CHECK(least.right_end == sixteenths(102));
    CHECK(least.narrow_ends == 1);
    CHECK(least.staying.empty());
}

TEST_CASE("Where no shift clears all, one pan more is a choice of its own") {
    // As in panel_layout_test.cpp: a seam at 46 with 7 3/4 in asked.
    const PanelChoices choices =
        choices_of(said_plane(gable_roof(300, 30)),
                   {{Penetration::Kind::pipe, inches(46), inches(60), inches(13)}});
    CHECK(best_for(choices, BestFor::least_shift).staying.size() == 1);
    const PanelChoice& looks = best_for(choices, BestFor::looks);
    CHECK(looks.seams.one_more);
    CHECK(looks.staying.empty());
    CHECK(looks.pans == best_for(choices, BestFor::least_shift).pans + 1);
}

TEST_CASE("Each choice is the best of all layouts of its sense, laid one by one") {
    PanelJob alike;
    alike.legs = SeamLegs::alike;
    const std::vector<Penetration> pipe = {
        {Penetration::Kind::pipe, inches(130), inches(60), inches(9)}};
    int several = 0;
    for (const auto& [plane, job] :
         {std::pair(said_plane(hip_roof(471, 24)), PanelJob()),
          std::pair(said_plane(hip_roof(471, 24)), alike),
          std::pair(said_plane(l_roof()), PanelJob()),
          std::pair(said_plane(dormer_roof(450, 190)), PanelJob()),
          std::pair(said_plane(gable_roof(309, 21, SideKind::eave)), alike)}) {
        const PanelChoices choices = choices_of(plane, pipe, job);
        several += choices.choices.size() > 1 ? 1 : 0;
        const PanelChoice& metal = best_for(choices, BestFor::metal);
        const PanelChoice& cut = best_for(choices, BestFor::cut_pans);
        const PanelChoice& looks = best_for(choices, BestFor::looks);
        std::int64_t tried = 0;
        for (const bool more : {false, true}) {
            for (int shift = -256; shift <= 256; ++shift) {
                PanelJob chosen = job;
                chosen.chosen = ChosenSeams{sixteenths(shift), more};
                const PanelLayout layout = laid(plane, chosen, pipe);
                if (layout.shift != sixteenths(shift) || layout.one_more != more) {
                    continue;  // it does not fit
                }
                ++tried;
                std::size_t staying = 0, cuts = 0;
                for (const PanelDoubt& doubt : layout.doubts) {
                    staying += doubt.problem.what.english().find("A seam lies") == 0 ? 1 : 0;
                }
                for (const LaidPan& pan : layout.pans) {
                    cuts += pan.kind == PanKind::cut ? 1 : 0;
                }
                CHECK(staying >= metal.staying.size());
                if (staying == metal.staying.size()) {
                    CHECK(metal_in(layout) >= metal.metal);
                    CHECK(static_cast<std::int64_t>(cuts) >= cut.cut_pans);
                }
                if (metal.seams == *chosen.chosen) {
                    CHECK(metal_in(layout) == metal.metal);
                }
                if (looks.seams == *chosen.chosen) {
                    CHECK(staying == looks.staying.size());
                }
            }
        }
        CHECK(tried == choices.tried);
    }
    CHECK(several >= 3);
}
