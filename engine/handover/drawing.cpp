#include "engine/handover/drawing.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <set>

#include "engine/handover/spread.h"

namespace hemline {

namespace {

constexpr std::int64_t words_off_nm = 8 * mm_nm;  // of dimensions, from the metal
constexpr std::int64_t tick_nm = 6 * mm_nm;
constexpr std::int64_t label_nm = 4 * mm_nm;       // room that a label with 3 mm letters takes
constexpr std::int64_t middle_nm = mm_nm;          // from the foot of its letters to their middle
constexpr std::int64_t past_metal_nm = 6 * mm_nm;  // how far a label may be pushed past the metal
constexpr std::int64_t tall_leg_nm = 12 * mm_nm;   // room for its name beside a fold's words

std::string degrees_text(double degrees) {
    std::array<char, 64> text{};
    std::snprintf(text.data(), text.size(), "%.1f°", std::abs(degrees));
    return text.data();
}

/// Where something begins or ends along the piece.
std::set<std::int64_t> places_along(const FlatPattern& pattern) {
    std::set<std::int64_t> places = {0, pattern.length.nm()};
    for (const FlatPoint& p : pattern.outline) {
        places.insert(p.x);
    }
    for (const FlatTab& tab : pattern.tabs) {
        places.insert(tab.fold.a.x);
        places.insert(tab.fold.b.x);
    }
    for (const FlatLine& slit : pattern.slits) {
        places.insert(slit.a.x);
        places.insert(slit.b.x);
    }
    return places;
}

/// A dimension: its place on the metal, and its words, which keep clear of the neighbors' words.
struct Dimension {
    std::int64_t at = 0;
    std::string words;
};

std::vector<std::int64_t> label_places(const std::vector<Dimension>& dimensions, std::int64_t from,
                                       std::int64_t to) {
    std::vector<Spread> wanted;
    for (const Dimension& dimension : dimensions) {
        wanted.push_back({dimension.at, label_nm});
    }
    return spread_out(wanted, from - past_metal_nm, to + past_metal_nm);
}

/// The places along the drawn part of the piece. Places that the tape cannot tell apart are labeled
/// once.
void dimension_along(Drawing& drawing, const FlatPattern& pattern, Marks marks) {
    std::vector<Dimension> dimensions;
    for (const std::int64_t x : places_along(pattern)) {
        const std::string words = print_length(Length::of_nm(x), marks);
        const bool inside = x >= drawing.least.x && x <= drawing.most.x;
        if (inside && (dimensions.empty() || dimensions.back().words != words)) {
            dimensions.push_back({x, words});
        }
    }
    const auto labels = label_places(dimensions, drawing.least.x, drawing.most.x);
    for (std::size_t i = 0; i < labels.size(); ++i) {
        drawing.lines.push_back(
            {Layer::mark, {{labels[i], -tick_nm}, {dimensions[i].at, -mm_nm}}, false});
        drawing.words.push_back(
            {{labels[i] + middle_nm, -words_off_nm}, dimensions[i].words, Turned::upright});
    }
}

void dimension_across(Drawing& drawing, const FlatPattern& pattern, Marks marks) {
    const auto& edges = pattern.legs.edges;
    std::vector<Dimension> dimensions;
    for (std::size_t i = 0; i < edges.size(); ++i) {
        std::string text = print_length(edges[i], marks);
        if (i > 0 && i + 1 < edges.size()) {
            const double bend = pattern.legs.bends[i - 1];
            text += ", bend " + degrees_text(bend) + (bend > 0 ? " down" : " up");
        }
        dimensions.push_back({edges[i].nm(), text});
    }
    const auto labels = label_places(dimensions, 0, edges.back().nm());
    const std::int64_t right = pattern.length.nm();
    for (std::size_t i = 0; i < labels.size(); ++i) {
        drawing.lines.push_back({Layer::mark,
                                 {{right + mm_nm, dimensions[i].at}, {right + tick_nm, labels[i]}},
                                 false});
        drawing.words.push_back(
            {{right + words_off_nm, labels[i] + middle_nm}, dimensions[i].words, Turned::level});
    }
}

/// The name of each leg; in a tall leg in its lower part, because the middle is for what is folded.
void name_legs(Drawing& drawing, const FlatPattern& pattern, std::int64_t x) {
    const auto& edges = pattern.legs.edges;
    for (std::size_t i = 0; i < pattern.legs.names.size(); ++i) {
        const std::int64_t top = edges[i].nm(), low = edges[i + 1].nm();
        if (low - top >= label_nm) {
            const std::int64_t foot =
                low - top >= tall_leg_nm ? low - 2 * mm_nm : (top + low) / 2 + middle_nm;
            drawing.words.push_back(
                {{x, foot}, std::string(word_of(pattern.legs.names[i])), Turned::level});
        }
    }
}

void say_tabs(Drawing& drawing, const FlatPattern& pattern) {
    for (const FlatTab& tab : pattern.tabs) {
        const FlatPoint at{(tab.fold.a.x + tab.fold.b.x) / 2 + 3 * mm_nm / 2,
                           (tab.fold.a.y + tab.fold.b.y) / 2};
        drawing.words.push_back(
            {at, "fold " + degrees_text(tab.degrees) + (tab.degrees > 0 ? " down" : " up"),
             Turned::level});
    }
}

/// The outline without its side at this x, where the metal continues: that side is only a mark.
void add_open_outline(Drawing& drawing, FlatOutline outline, std::int64_t x) {
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const FlatPoint a = outline[i], b = outline[(i + 1) % outline.size()];
        if (a.x == x && b.x == x) {
            std::rotate(outline.begin(),
                        outline.begin() + static_cast<std::ptrdiff_t>((i + 1) % outline.size()),
                        outline.end());
            drawing.lines.push_back({Layer::mark, {a, b}, false});
            drawing.lines.push_back({Layer::cut, outline, false});
            return;
        }
    }
    drawing.lines.push_back({Layer::cut, outline, true});
}

}  // namespace

std::string_view name_of(Layer layer) {
    switch (layer) {
        case Layer::cut:
            return "CUT";
        case Layer::bend:
            return "BEND";
        case Layer::mark:
            break;
    }
    return "MARK";
}

std::string mm_text(std::int64_t nm) {
    const std::uint64_t size =
        nm < 0 ? 0 - static_cast<std::uint64_t>(nm) : static_cast<std::uint64_t>(nm);
    std::string decimals = std::to_string(size % 1'000'000);
    decimals.insert(0, 6 - decimals.size(), '0');
    decimals.erase(decimals.find_last_not_of('0') + 1);
    return (nm < 0 ? "-" : "") + std::to_string(size / 1'000'000) +
           (decimals.empty() ? "" : "." + decimals);
}

Drawing drawing_of(const FlatPattern& pattern, const std::string& title, Marks marks) {
    Drawing drawing;
    drawing.title = title;
    drawing.most = {pattern.length.nm(), pattern.legs.edges.back().nm()};
    drawing.lines.push_back({Layer::cut, pattern.outline, true});
    for (const FlatLine& slit : pattern.slits) {
        drawing.lines.push_back({Layer::cut, {slit.a, slit.b}, false});
    }
    for (const FlatFold& fold : pattern.folds) {
        drawing.lines.push_back({Layer::bend, {fold.line.a, fold.line.b}, false});
    }
    dimension_along(drawing, pattern, marks);
    dimension_across(drawing, pattern, marks);
    name_legs(drawing, pattern, pattern.length.nm() / 2);
    say_tabs(drawing, pattern);
    return drawing;
}

Length work_reach(const FlatPattern& pattern, Side end) {
    const std::int64_t length = pattern.length.nm();
    std::int64_t reach = 0;
    for (const std::int64_t x : places_along(pattern)) {
        const std::int64_t in = end == Side::left ? x : length - x;
        reach = in * 2 < length ? std::max(reach, in) : reach;
    }
    return Length::of_nm(reach);
}

Drawing part_of(const FlatPattern& pattern, const std::string& title, Marks marks, Side end,
                Length reach) {
    const std::int64_t length = pattern.length.nm();
    const std::int64_t x0 = end == Side::left ? 0 : std::max<std::int64_t>(0, length - reach.nm());
    const std::int64_t x1 = end == Side::left ? std::min(length, reach.nm()) : length;
    const std::int64_t girth = pattern.legs.edges.back().nm();
    Drawing whole = drawing_of(pattern, title, marks);
    Drawing part;
    part.title = title;
    part.least = {x0, 0};
    part.most = {x1, girth};
    const auto inside = [&](std::int64_t x) { return x >= x0 && x <= x1; };
    const FlatOutline bounds = {{x0, 0}, {x0, girth}, {x1, girth}, {x1, 0}};
    for (const FlatOutline& piece : parts_in(pattern.outline, bounds)) {
        add_open_outline(part, piece, end == Side::left ? x1 : x0);
    }
    for (DrawnLine& line : whole.lines) {
        if (line.closed || line.layer == Layer::mark) {
            continue;
        }
        FlatPoint& a = line.points.front();
        FlatPoint& b = line.points.back();
        if (a.y == b.y) {
            a.x = std::clamp(a.x, x0, x1);
            b.x = std::clamp(b.x, x0, x1);
        }
        if (inside(a.x) && inside(b.x) && a != b) {
            part.lines.push_back(line);
        }
    }
    dimension_along(part, pattern, marks);
    // Where the metal is plain, past the end's work.
    const std::int64_t plain = 12 * mm_nm;
    name_legs(part, pattern, end == Side::left ? std::max(x0, x1 - plain) : x0 + 2 * mm_nm);
    Drawing folds;
    say_tabs(folds, pattern);
    for (const DrawnWords& words : folds.words) {
        if (inside(words.at.x)) {
            part.words.push_back(words);
        }
    }
    return part;
}

}  // namespace hemline
