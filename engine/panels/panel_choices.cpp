#include "engine/panels/panel_choices.h"

#include <algorithm>
#include <array>
#include <tuple>

namespace hemline {

namespace {

/// What is ordered, with every pair from its one length.
Length metal_of_all(std::span<const LaidPan> pans, SeamLegs legs, Length order_grid) {
    Length metal;
    for (const LaidPan& pan : pans) {
        metal += pan.length;
    }
    for (const PanPair& pair : pan_pairs(pans, legs, order_grid)) {
        metal -= pair.saved;
    }
    return metal;
}

class Choosing {
  public:
    Choosing(const PlaneAsked& asked, const PanEnds& ends)
        : asked_(asked), ends_(ends), task_(seam_task(asked)) {
        for (const bool one_more : {false, true}) {
            const std::vector<Length> base =
                one_more ? seams_with_one_more(task_.frame) : balanced_seams(task_.frame);
            if (!base.empty()) {
                for (const Length shift : shifts_in(shift_room(task_.frame, base))) {
                    try_out({shift, one_more});
                }
            }
        }
    }

    [[nodiscard]] PanelChoices chosen() {
        PanelChoices result{static_cast<std::int64_t>(tried_.size()), {}};
        const auto key = [](const PanelChoice& one, BestFor sense) {
            const auto hurt = static_cast<std::int64_t>(one.staying.size());
            const std::int64_t more = one.seams.one_more ? 1 : 0;
            const std::int64_t shift = absolute(one.seams.shift).nm();
            const std::int64_t thin = -one.narrowest.nm();
            const std::int64_t metal = one.metal.nm();
            switch (sense) {
                case BestFor::least_shift:
                    return std::array{more, hurt, shift, metal, thin, one.cut_pans};
                case BestFor::looks:
                    return std::array{hurt, one.narrow_ends, thin, more, shift, metal};
                case BestFor::metal:
                    return std::array{hurt, metal, one.narrow_ends, thin, more, shift};
                default:
                    return std::array{hurt, one.cut_pans, metal, one.narrow_ends, thin, shift};
            }
        };
        for (const BestFor sense :
             {BestFor::least_shift, BestFor::looks, BestFor::metal, BestFor::cut_pans}) {
            const auto best = std::min_element(tried_.begin(), tried_.end(),
                                               [&](const PanelChoice& a, const PanelChoice& b) {
                                                   return key(a, sense) < key(b, sense);
                                               });
            if (best != tried_.end()) {
                add(result.choices, *best, sense);
            }
        }
        return result;
    }

  private:
    static void add(std::vector<PanelChoice>& choices, const PanelChoice& best, BestFor sense) {
        auto known = std::find_if(choices.begin(), choices.end(), [&](const PanelChoice& other) {
            return other.seams == best.seams;
        });
        if (known == choices.end()) {
            known = choices.insert(choices.end(), best);
        }
        known->best_for.push_back(sense);
    }

    void try_out(const ChosenSeams& seams) {
        const SeamFrame& frame = task_.frame;
        const auto layout = lay_seams(frame, task_.keep_off, seams);
        const std::vector<LaidPan> pans = laid_pans(asked_.plane, frame, layout->seams, ends_);
        PanelChoice choice{seams, {}, pans.back().number, 0, 0, {}, {}, {}, {}, layout->staying};
        for (const LaidPan& pan : pans) {
            choice.cut_pans += pan.kind == PanKind::cut ? 1 : 0;
        }
        for (const auto& [side, pan, end] :
             {std::tuple(&frame.left, &pans.front(), &choice.left_end),
              std::tuple(&frame.right, &pans.back(), &choice.right_end)}) {
            if (side->square) {
                *end = pan->width;
                const bool narrow = std::min(pan->width, pan->top_width) * 2 < frame.module;
                choice.narrow_ends += narrow ? 1 : 0;
            }
        }
        choice.narrowest = narrowest_end(frame, layout->seams);
        choice.metal = metal_of_all(pans, asked_.job.legs, ends_.order_grid);
        tried_.push_back(std::move(choice));
    }

    const PlaneAsked& asked_;
    const PanEnds& ends_;
    SeamTask task_;
    std::vector<PanelChoice> tried_;
};

}  // namespace

Result<PanelChoices> panel_choices(const DeckPlane& plane, const PanelJob& job,
                                   std::span<const Penetration> through) {
    if (auto problem = no_pans(job)) {
        return *problem;
    }
    const Result<PanEnds> ends = ends_on(plane, job);
    if (!ends) {
        return ends.problem();
    }
    const PlaneAsked asked{plane, job, {through.begin(), through.end()}};
    return Choosing(asked, *ends).chosen();
}

}  // namespace hemline
