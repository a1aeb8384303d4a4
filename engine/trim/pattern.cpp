// Each end is cut in a box where x counts inward; the right end is then mirrored into place, so
// that left and right hands come from the same numbers.
#include "engine/trim/pattern.h"

#include <algorithm>
#include <cmath>

#include "engine/trim/worked_end.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

/// The two chains joined over the length between them.
FlatOutline join(const FlatOutline& left, const FlatOutline& right, std::int64_t length) {
    FlatOutline joined = left;
    for (auto p = right.rbegin(); p != right.rend(); ++p) {
        joined.push_back({length - p->x, p->y});
    }
    return tidy(std::move(joined));
}

FlatOutline placed(FlatOutline outline, Side side, std::int64_t length) {
    if (side == Side::right) {
        for (FlatPoint& p : outline) {
            p.x = length - p.x;
        }
    }
    return tidy(std::move(outline));
}

/// Stretches of the outline that lie on the line y.
std::vector<std::pair<std::int64_t, std::int64_t>> stretches_on(const FlatOutline& outline,
                                                                std::int64_t y) {
    std::vector<std::pair<std::int64_t, std::int64_t>> stretches;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const FlatPoint& p = outline[i];
        const FlatPoint& q = outline[(i + 1) % outline.size()];
        if (p.y == y && q.y == y) {
            stretches.emplace_back(std::minmax(p.x, q.x));
        }
    }
    return stretches;
}

/// Where there is metal on both sides of the line y: of one outline above it, of the other below.
std::vector<std::pair<std::int64_t, std::int64_t>> joints(const FlatOutline& above,
                                                          const FlatOutline& below,
                                                          std::int64_t y) {
    std::vector<std::pair<std::int64_t, std::int64_t>> shared;
    for (const auto& a : stretches_on(above, y)) {
        for (const auto& b : stretches_on(below, y)) {
            const std::int64_t from = std::max(a.first, b.first);
            const std::int64_t to = std::min(a.second, b.second);
            if (from < to) {
                shared.emplace_back(from, to);
            }
        }
    }
    return shared;
}

/// The stretch of the fold line that the tab hangs on: what the notches left of it.
std::optional<FlatLine> hinge_of(const FlatOutline& tab, const FlatLine& fold) {
    const auto on_line = [&](const FlatPoint& p) {
        const double far = static_cast<double>(fold.b.y - fold.a.y);
        const double x = static_cast<double>(fold.a.x) + static_cast<double>(fold.b.x - fold.a.x) *
                                                             static_cast<double>(p.y - fold.a.y) /
                                                             far;
        return std::abs(static_cast<double>(p.x) - x) <= 2;  // rounded to the nanometer
    };
    std::optional<FlatLine> hinge;
    for (std::size_t i = 0; i < tab.size(); ++i) {
        FlatPoint p = tab[i], q = tab[(i + 1) % tab.size()];
        if (p.y != q.y && on_line(p) && on_line(q)) {
            hinge = p.y < q.y ? FlatLine{p, q} : FlatLine{q, p};
        }
    }
    return hinge;
}

void add_tabs(FlatPattern& pattern, const WorkedEnd& end, Side side) {
    const std::int64_t length = pattern.length.nm();
    const auto place = [&](FlatPoint p) {
        return side == Side::left ? p : FlatPoint{length - p.x, p.y};
    };
    for (const EndFold& fold : end.shape.folds) {
        const std::int64_t top = pattern.legs.edges[fold.leg].nm();
        const std::int64_t low = pattern.legs.edges[fold.leg + 1].nm();
        const FlatLine line{{fold.in_top.nm(), top}, {fold.in_low.nm(), low}};
        for (const FlatOutline& part :
             parts_in(end.outline, {{0, top}, {0, low}, line.b, line.a})) {
            const auto hinge = hinge_of(part, line);
            if (!hinge) {
                continue;
            }
            const FlatLine placed_hinge{place(hinge->a), place(hinge->b)};
            pattern.folds.push_back({placed_hinge, fold.degrees, {}});
            pattern.tabs.push_back(
                {side, fold.leg, placed_hinge, fold.degrees, placed(part, side, length)});
        }
    }
}

/// Whether a cut has parted the metal already along the line y, as far in as `in`.
bool is_parted(const FlatOutline& outline, std::int64_t y, std::int64_t in) {
    const auto along = stretches_on(outline, y);
    return std::find(outline.begin(), outline.end(), FlatPoint{in, y}) != outline.end() ||
           std::any_of(along.begin(), along.end(),
                       [&](const auto& stretch) { return stretch.second == in; });
}

/// A slit begins at the end of the metal: at a corner of the outline on its line, or at the box's
/// end.
void add_slits(FlatPattern& pattern, const WorkedEnd& end, Side side) {
    for (const EndSlit& slit : end.shape.slits) {
        const std::int64_t y = pattern.legs.edges[slit.bend + 1].nm();
        if (is_parted(end.outline, y, slit.in.nm())) {
            continue;
        }
        std::int64_t from = slit.in.nm();
        for (const FlatPoint& p : end.outline) {
            from = p.y == y ? std::min(from, p.x) : from;
        }
        from = from < slit.in.nm() ? from : 0;
        const std::int64_t length = pattern.length.nm(), to = slit.in.nm();
        const FlatLine line = side == Side::left ? FlatLine{{from, y}, {to, y}}
                                                 : FlatLine{{length - to, y}, {length - from, y}};
        pattern.slits.push_back(line);
    }
}

/// The stretch without the slits on its line; a slit always begins at an end of the metal.
std::pair<std::int64_t, std::int64_t> unslit(const FlatPattern& pattern, std::int64_t y,
                                             std::pair<std::int64_t, std::int64_t> stretch) {
    for (const FlatLine& slit : pattern.slits) {
        if (slit.a.y != y) {
            continue;
        }
        if (slit.a.x * 2 < pattern.length.nm()) {
            stretch.first = std::max(stretch.first, slit.b.x);
        } else {
            stretch.second = std::min(stretch.second, slit.a.x);
        }
    }
    return stretch;
}

void add_bends(FlatPattern& pattern) {
    for (std::size_t bend = 0; bend < pattern.legs.bends.size(); ++bend) {
        const std::int64_t y = pattern.legs.edges[bend + 1].nm();
        for (const auto& joint : joints(pattern.panels[bend], pattern.panels[bend + 1], y)) {
            const auto [from, to] = unslit(pattern, y, joint);
            if (from < to) {
                pattern.folds.push_back({{{from, y}, {to, y}}, pattern.legs.bends[bend], bend});
            }
        }
    }
}

/// A tab must hang on its leg only: a leg beside it that is still joined would tear.
std::optional<Problem> check_tabs(const FlatPattern& pattern) {
    const auto check = [&](const FlatTab& tab, const FlatOutline& beside, std::size_t leg,
                           std::size_t bend) -> std::optional<Problem> {
        const std::int64_t y = pattern.legs.edges[bend + 1].nm();
        const bool above = leg == bend;
        for (const auto& joint :
             above ? joints(beside, tab.outline, y) : joints(tab.outline, beside, y)) {
            const auto [from, to] = unslit(pattern, y, joint);
            if (from < to) {
                return Problem{say("The tab at the {1} still hangs on the {2}: it would tear.",
                                   end_spoken(tab.side), spoken(pattern.legs.names[leg])),
                               say("Cut that leg back to the tab's fold, or slit it.")};
            }
        }
        return {};
    };
    for (const FlatTab& tab : pattern.tabs) {
        std::optional<Problem> problem;
        if (tab.leg > 0) {
            problem = check(tab, pattern.panels[tab.leg - 1], tab.leg - 1, tab.leg - 1);
        }
        if (!problem && tab.leg + 1 < pattern.panels.size()) {
            problem = check(tab, pattern.panels[tab.leg + 1], tab.leg + 1, tab.leg);
        }
        for (const FlatTab& beside : pattern.tabs) {
            if (!problem && beside.leg == tab.leg + 1) {
                problem = check(tab, beside.outline, beside.leg, tab.leg);
            }
        }
        if (problem) {
            return problem;
        }
    }
    return {};
}

}  // namespace

Result<FlatPattern> flat_pattern(const Section& section, const std::vector<double>& bends,
                                 Length cut, const std::vector<EndStep>& left,
                                 const std::vector<EndStep>& right) {
    const Result<Blank> blank = blank_of(section, bends);
    if (!blank) {
        return blank.problem();
    }
    FlatPattern pattern;
    pattern.length = cut;
    pattern.root = deck_leg(section);
    for (std::size_t leg = 1; leg < section.legs.size(); ++leg) {
        if (section.legs[leg].bend.fold_of) {
            pattern.main_bend = leg - 1;
            break;
        }
    }
    pattern.legs = flat_legs(section, bends, *blank);
    const Result<WorkedEnd> at_left = work_end(pattern.legs, left, Side::left);
    const Result<WorkedEnd> at_right = work_end(pattern.legs, right, Side::right);
    if (!at_left || !at_right) {
        return at_left ? at_right.problem() : at_left.problem();
    }
    if (at_left->deep + at_right->deep > cut.nm()) {
        return Problem{say("The piece is too short: the work at its two ends would meet."),
                       say("Make the piece longer, or the tab or lap shorter.")};
    }
    pattern.outline = join(end_chain(*at_left), end_chain(*at_right), cut.nm());
    for (std::size_t leg = 0; leg < section.legs.size(); ++leg) {
        const auto left_chain = main_chain(*at_left, pattern.legs, leg, Side::left);
        const auto right_chain = main_chain(*at_right, pattern.legs, leg, Side::right);
        if (!left_chain || !right_chain) {
            return left_chain ? right_chain.problem() : left_chain.problem();
        }
        pattern.panels.push_back(join(*left_chain, *right_chain, cut.nm()));
        pattern.hems.push_back(section.legs[leg].hem);
    }
    add_slits(pattern, *at_left, Side::left);
    add_slits(pattern, *at_right, Side::right);
    add_bends(pattern);
    add_tabs(pattern, *at_left, Side::left);
    add_tabs(pattern, *at_right, Side::right);
    if (auto problem = check_tabs(pattern)) {
        return *problem;
    }
    return pattern;
}

FlatPattern mirrored(const FlatPattern& pattern) {
    FlatPattern other_hand = pattern;
    const std::int64_t length = pattern.length.nm();
    const auto mirror = [length](const FlatOutline& outline) {
        return placed(outline, Side::right, length);
    };
    const auto mirror_line = [length](const FlatLine& line) {
        FlatLine over{{length - line.a.x, line.a.y}, {length - line.b.x, line.b.y}};
        if (over.a.y == over.b.y) {
            std::swap(over.a, over.b);  // level lines run left to right, the others down the page
        }
        return over;
    };
    other_hand.outline = mirror(pattern.outline);
    for (FlatOutline& panel : other_hand.panels) {
        panel = mirror(panel);
    }
    for (FlatTab& tab : other_hand.tabs) {
        const FlatLine hinge{{length - tab.fold.a.x, tab.fold.a.y},
                             {length - tab.fold.b.x, tab.fold.b.y}};
        tab = {other(tab.side), tab.leg, hinge, tab.degrees, mirror(tab.outline)};
    }
    for (FlatFold& fold : other_hand.folds) {
        fold.line = mirror_line(fold.line);
    }
    for (FlatLine& slit : other_hand.slits) {
        slit = mirror_line(slit);
    }
    return other_hand;
}

double area_mm2(const FlatPattern& pattern) { return area_mm2(pattern.outline); }

}  // namespace hemline
