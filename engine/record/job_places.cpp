#include "engine/record/job_places.h"

#include <algorithm>

#include "engine/dividing/piece_bounds.h"
#include "engine/record/about_thing.h"

namespace hemline {

PieceKey key_of(TrimRole role, int piece) {
    return {role, std::min(piece, static_cast<int>(pieces_most) + 1)};
}

StepKey key_of(const StepSaid& step, const std::string& by) {
    return {step.step, step.piece, is_personal(step.step) ? by : ""};
}

JobPlaces::JobPlaces(const Job& job) : edges(job.edges.size()), edges_kept(job.edges.size()) {
    for (std::size_t e = 0; e < job.edges.size(); ++e) {
        const EdgeWork& work = job.edges[e];
        for (std::size_t i = 0; i < work.cut.size(); ++i) {
            const PieceKey key = key_of(work.cut[i].role, work.cut[i].piece);
            edges[e].cut.add(key, i);
            edges[e].cut_by.emplace(work.cut[i].id, key);
        }
        for (std::size_t i = 0; i < work.steps.size(); ++i) {
            edges[e].steps.add(key_of(work.steps[i].step, work.steps[i].by), i);
        }
        if (!work.chosen.empty() && work.cut.empty()) {
            picked.insert(e);
        }
    }
    for (std::size_t i = 0; i < job.offcuts.size(); ++i) {
        offcuts.add(job.offcuts[i].left_by, i);
    }
    for (std::size_t i = 0; i < job.gates.size(); ++i) {
        gates.emplace(job.gates[i].id, i);
    }
    for (std::size_t i = 0; i < job.supplies.size(); ++i) {
        supplies.add({job.supplies[i].edge, job.supplies[i].role}, i);
    }
}

void JobPlaces::sweep(Job& job) {
    for (std::size_t e = 0; e < edges.size(); ++e) {
        edges[e].cut.sweep(job.edges[e].cut);
        edges[e].steps.sweep(job.edges[e].steps);
    }
    offcuts.sweep(job.offcuts);
    supplies.sweep(job.supplies);
}

void JobPlaces::divide_anew(Job& job, const Practice& before) {
    // A rule that only marks, fastens or keeps metal does not change how runs are divided.
    Practice now = job.practice;
    for (const auto field :
         {&Practice::offcut_kept, &Practice::cleat_clear, &Practice::hem_notch_clear,
          &Practice::bead_gap, &Practice::bead_width, &Practice::screw_spacing,
          &Practice::screw_margin, &Practice::hook_gap_most, &Practice::seam_spacing,
          &Practice::seam_clear, &Practice::boot_clear, &Practice::hole_clear,
          &Practice::cricket_from}) {
        now.*field = before.*field;
    }
    now.site = before.site;
    now.fixed_line = before.fixed_line;
    if (before != now) {
        for (const std::size_t edge : picked) {
            job.edges[edge].chosen.clear();
        }
        picked.clear();
    }
}

}  // namespace hemline
