// How long a plane of 200 pans takes to be laid, from its seams to its pairs: at most 2 ms; and the
// layouts worth choosing, every shift tried.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <vector>

#include "engine/panels/panel_choices.h"
#include "engine/panels/panel_layout.h"

namespace {

using namespace hemline;

/// Between hips or gables, its eave as long as 200 pans.
DeckPlane plane_of_200_pans(SideKind side) {
    const auto pitch = [](SideKind kind) {
        return kind == SideKind::eave ? std::optional(rise_in_12(6)) : std::nullopt;
    };
    const Length eave = inches(16) * 200;
    const std::vector<RoofBody> house = {{"house",
                                          {{"A", SideKind::eave, eave, square_out, rise_in_12(6)},
                                           {"B", side, feet(60), square_out, pitch(side)},
                                           {"C", SideKind::eave, eave, square_out, rise_in_12(6)},
                                           {"D", side, feet(60), square_out, pitch(side)}},
                                          {}}};
    const Result<Roof> roof = work_out_roof(house, Tape());
    return deck_plane(*roof, house, roof->planes.front());
}

template <class Deed>
double best_ms(int times, const Deed& deed) {
    double best = 1e9;
    for (int i = 0; i < times; ++i) {
        const auto begin = std::chrono::steady_clock::now();
        deed();
        const std::chrono::duration<double, std::milli> took =
            std::chrono::steady_clock::now() - begin;
        best = std::min(best, took.count());
    }
    return best;
}

/// Whether it is laid within the limit.
bool timed(const char* what, SideKind side) {
    const DeckPlane plane = plane_of_200_pans(side);
    PanelJob job;
    job.legs = SeamLegs::alike;
    const std::vector<Penetration> pipe = {
        {Penetration::Kind::pipe, inches(16) * 100, feet(9), inches(9)}};
    const auto laid = lay_panels(plane, job, pipe);
    const double layout = best_ms(50, [&] { static_cast<void>(lay_panels(plane, job, pipe)); });
    const double choices = best_ms(3, [&] { static_cast<void>(panel_choices(plane, job, pipe)); });
    std::printf("%s, %zu pans, %zu pairs: laid in %.3f ms (at most 2); choices in %.1f ms\n", what,
                laid->pans.size(), laid->pairs.size(), layout, choices);
    return layout <= 2;
}

}  // namespace

int main() {
    const bool gables = timed("a plane between gables", SideKind::gable);
    const bool hips = timed("a plane between hips", SideKind::eave);
    return gables && hips ? 0 : 1;
}
