#include "engine/panels/roof_panels.h"

#include <algorithm>
#include <map>

#include "engine/roof/nearest.h"

namespace hemline {

namespace {

/// By its edge: from the least x of a ridge on the plane to the most.
std::map<std::string, LevelLine> ridges_of(const DeckPlane& plane) {
    std::map<std::string, LevelLine> ridges;
    for (const DeckBound& bound : plane.bounds) {
        if (bound.kind != EdgeKind::ridge) {
            continue;
        }
        const Length from = nearest_nm(std::min(bound.from.x, bound.to.x));
        const Length to = nearest_nm(std::max(bound.from.x, bound.to.x));
        const auto [known, is_new] = ridges.emplace(bound.edge, LevelLine{from, to});
        if (!is_new) {
            known->second = {std::min(known->second.from, from), std::max(known->second.to, to)};
        }
    }
    return ridges;
}

/// By their middles: as read, one plane may be a little longer than the other.
Length sum_of(const LevelLine& a, const LevelLine& b) {
    return Length::of_nm((a.from + a.to + b.from + b.to).nm() / 2);
}

void doubt_ridge(PanelLayout& layout, const PanelLayout& other, const std::string& ridge) {
    layout.doubts.push_back(
        {0,
         {say("The seams do not meet those of plane {1} at ridge {2}.", Text(other.plane.name),
              Text(ridge)),
          say("Ask whether that may be seen, or choose another shift for one of them.")}});
}

}  // namespace

std::vector<SharedRidge> shared_ridges(std::span<const PlaneAsked> planes) {
    std::vector<std::pair<Length, SharedRidge>> found;
    for (std::size_t a = 0; a < planes.size(); ++a) {
        const auto ridges = ridges_of(planes[a].plane);
        for (std::size_t b = a + 1; b < planes.size(); ++b) {
            for (const auto& [edge, line] : ridges_of(planes[b].plane)) {
                const auto other = ridges.find(edge);
                const Length module = planes[a].job.practice.seam_spacing;
                if (other != ridges.end() && line.to - line.from > module) {
                    found.push_back(
                        {line.to - line.from, {a, b, sum_of(line, other->second), edge}});
                }
            }
        }
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const auto& x, const auto& y) { return x.first > y.first; });
    std::vector<SharedRidge> ridges;
    for (const auto& one : found) {
        ridges.push_back(one.second);
    }
    return ridges;
}

Result<std::vector<PanelLayout>> lay_roof(std::span<const PlaneAsked> planes) {
    std::vector<SeamTask> tasks;
    for (const PlaneAsked& plane : planes) {
        if (auto problem = no_pans(plane.job)) {
            return *problem;
        }
        tasks.push_back(seam_task(plane));
    }
    const std::vector<SharedRidge> ridges = shared_ridges(planes);
    const MeetingSeams meeting = meeting_seams(tasks, ridges);
    std::vector<PanelLayout> layouts;
    for (std::size_t i = 0; i < planes.size(); ++i) {
        const Result<PanelLayout> layout = lay_panels(planes[i], meeting.layouts[i]);
        if (!layout) {
            return layout.problem();
        }
        layouts.push_back(*layout);
        const auto& chosen = planes[i].job.chosen;
        layouts[i].one_more = chosen && chosen->one_more && meeting.fits[i];
        if (!meeting.fits[i]) {
            layouts[i].doubts.push_back(
                {0,
                 {say("Shifted as chosen, an end pan would be too narrow or too wide."),
                  say("Choose again. Until then the seams are shifted by the least.")}});
        }
    }
    for (std::size_t i = 0; i < ridges.size(); ++i) {
        if (!meeting.met[i]) {
            doubt_ridge(layouts[ridges[i].a], layouts[ridges[i].b], ridges[i].edge);
            doubt_ridge(layouts[ridges[i].b], layouts[ridges[i].a], ridges[i].edge);
        }
    }
    return layouts;
}

}  // namespace hemline
