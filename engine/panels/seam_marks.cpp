#include "engine/panels/seam_marks.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>

#include "engine/roof/nearest.h"

namespace hemline {

namespace {

bool is_marked(const DeckBound& bound) {
    switch (bound.kind.value_or(EdgeKind::penetration)) {
        case EdgeKind::eave:
        case EdgeKind::ridge:
        case EdgeKind::headwall:
        case EdgeKind::high_eave:
        case EdgeKind::transition:
            return std::abs(bound.to.x - bound.from.x) > same_place_nm;
        default:
            return false;
    }
}

/// A line between its ends, which may have several bounds.
struct Line {
    const DeckBound* bound = nullptr;  ///< its first
    double left = 0, right = 0;
};

std::vector<Line> lines_of(const DeckPlane& plane, bool (*wanted)(const DeckBound&)) {
    std::vector<Line> lines;
    for (const DeckBound& bound : plane.bounds) {
        if (!wanted(bound)) {
            continue;
        }
        const double left = std::min(bound.from.x, bound.to.x);
        const double right = std::max(bound.from.x, bound.to.x);
        const auto known = std::find_if(lines.begin(), lines.end(), [&](const Line& line) {
            return line.bound->edge == bound.edge;
        });
        if (known == lines.end()) {
            lines.push_back({&bound, left, right});
        } else {
            known->left = std::min(known->left, left);
            known->right = std::max(known->right, right);
        }
    }
    return lines;
}

bool is_closed(const DeckBound& bound) {
    return bound.kind && facts_of(*bound.kind).closed != Closed::no_side;
}

/// What of a pan lies under a line, square to the seams.
std::map<std::string, std::pair<double, double>> spans_under(const DeckPlane& plane,
                                                             const LaidPan& pan) {
    std::map<std::string, std::pair<double, double>> spans;
    for (const DeckPart& part : pan.flat) {
        const DeckBound& bound = plane.bounds[part.top];
        if (is_closed(bound)) {
            const auto [known, is_new] = spans.emplace(bound.edge, std::pair(part.x1, part.x2));
            known->second.first = std::min(known->second.first, part.x1);
            known->second.second = std::max(known->second.second, part.x2);
        }
    }
    return spans;
}

}  // namespace

std::vector<LineMarks> seam_marks(const PanelLayout& layout) {
    std::vector<LineMarks> all;
    for (const Line& line : lines_of(layout.plane, is_marked)) {
        const bool at_top = layout.plane.top > 0 && line.bound->from.y > same_place_nm;
        const Length aside = at_top ? layout.plane.lean : Length();
        LineMarks marks{line.bound->edge,
                        *line.bound->kind,
                        nearest_nm(line.left) + aside,
                        nearest_nm(line.right) + aside,
                        {}};
        for (const LaidSeam& seam : layout.seams) {
            if (seam.at > marks.begins && seam.at < marks.ends) {
                marks.seams.push_back(seam.at);
            }
        }
        all.push_back(std::move(marks));
    }
    return all;
}

std::vector<std::size_t> laps_on_seams(std::span<const Length> laps, std::span<const Length> seams,
                                       Length off) {
    std::vector<std::size_t> hurt;
    for (std::size_t i = 0; i < laps.size(); ++i) {
        const auto distance = nearest_seam(seams, laps[i]);
        if (distance && *distance < off) {
            hurt.push_back(i);
        }
    }
    return hurt;
}

std::vector<CapScrews> cap_screws(const PanelLayout& layout, const Practice& practice) {
    std::vector<CapScrews> all;
    for (const Line& line : lines_of(layout.plane, is_closed)) {
        const DeckBound& bound = *line.bound;
        const bool rises_left = bound.slope() < 0 && std::abs(bound.slope()) > 1e-3;
        const double begins = rises_left ? line.right : line.left;
        const double stretch = std::hypot(1.0, bound.slope());
        CapScrews screws{bound.edge, {}};
        for (const LaidPan& pan : layout.pans) {
            const auto spans = spans_under(layout.plane, pan);
            const auto span = spans.find(bound.edge);
            if (span == spans.end()) {
                continue;
            }
            const auto [from, to] = span->second;
            for (const double share : {0.25, 0.75}) {
                const double along = std::abs(from + (to - from) * share - begins) * stretch;
                screws.along.push_back(nearest_on(nearest_nm(along), practice.cut_grid));
            }
        }
        std::sort(screws.along.begin(), screws.along.end());
        all.push_back(std::move(screws));
    }
    return all;
}

PanClosures closures_at(std::span<const PanelLayout> layouts, const std::string& edge) {
    PanClosures both{edge, 0, {}, {}};
    std::map<Length, std::int64_t, std::greater<>> blanks;
    for (const PanelLayout& layout : layouts) {
        for (const PanClosures& one : layout.closures) {
            if (one.edge != edge) {
                continue;
            }
            both.count += one.count;
            both.blank = std::max(both.blank, one.blank);
            for (const ClosureBlanks& blank : one.blanks) {
                blanks[blank.blank] += blank.count;
            }
        }
    }
    for (const auto& [blank, count] : blanks) {
        both.blanks.push_back({count, blank});
    }
    return both;
}

}  // namespace hemline
