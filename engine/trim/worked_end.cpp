#include "engine/trim/worked_end.h"
#include "engine/words/result.h"

#include <algorithm>

namespace hemline {

namespace {

constexpr std::int64_t past_work_nm = 1'000'000;  // plain metal at the inner side of an end's box

std::int64_t deepest(const EndShape& shape) {
    std::int64_t deep = 0;
    for (const FlatOutline& notch : shape.notches) {
        for (const FlatPoint& p : notch) {
            deep = std::max(deep, p.x);
        }
    }
    for (const EndFold& fold : shape.folds) {
        deep = std::max({deep, fold.in_top.nm(), fold.in_low.nm()});
    }
    for (const EndSlit& slit : shape.slits) {
        deep = std::max(deep, slit.in.nm());
    }
    return deep + past_work_nm;
}

/// The part that reaches the inner side of the box at both corners; none when severed.
const FlatOutline* whole_part(const std::vector<FlatOutline>& parts, const FlatBox& box) {
    for (const FlatOutline& part : parts) {
        const auto has = [&](FlatPoint p) {
            return std::find(part.begin(), part.end(), p) != part.end();
        };
        if (has({box.x1, box.y0}) && has({box.x1, box.y1})) {
            return &part;
        }
    }
    return nullptr;
}

/// From the box's inner upper corner round by the end of the metal to its inner lower corner.
FlatOutline chain_of(FlatOutline outline, const FlatBox& box) {
    const auto start = std::find(outline.begin(), outline.end(), FlatPoint{box.x1, box.y0});
    require(start != outline.end(), "an end's part reaches the inside of its box");
    std::rotate(outline.begin(), start, outline.end());
    require(outline.back() == FlatPoint({box.x1, box.y1}), "an end's part has a straight inside");
    return outline;
}

/// The metal of a leg between its innermost fold and the inside of the box.
FlatOutline main_bounds(const WorkedEnd& end, const FlatLegs& legs, std::size_t leg) {
    std::int64_t top = 0, low = 0;
    for (const EndFold& fold : end.shape.folds) {
        if (fold.leg == leg) {
            top = std::max(top, fold.in_top.nm());
            low = std::max(low, fold.in_low.nm());
        }
    }
    const std::int64_t y0 = legs.edges[leg].nm(), y1 = legs.edges[leg + 1].nm();
    return {{top, y0}, {low, y1}, {end.deep, y1}, {end.deep, y0}};
}

}  // namespace

Result<WorkedEnd> work_end(const FlatLegs& legs, const std::vector<EndStep>& steps, Side side) {
    WorkedEnd end;
    end.shape = end_shape(legs, steps);
    end.deep = deepest(end.shape);
    end.wide = legs.edges.back().nm();
    const FlatBox box{0, 0, end.deep, end.wide};
    const auto parts = cut_out(box, end.shape.notches);
    const FlatOutline* whole = whole_part(parts, box);
    if (whole == nullptr || parts.size() != 1) {
        return Problem{say("The cuts at the {1} sever a part of the metal.", end_spoken(side)),
                       say("Make the notch shorter, or the leg wider.")};
    }
    end.outline = *whole;
    return end;
}

FlatOutline end_chain(const WorkedEnd& end) {
    return chain_of(end.outline, {0, 0, end.deep, end.wide});
}

Result<FlatOutline> main_chain(const WorkedEnd& end, const FlatLegs& legs, std::size_t leg,
                               Side side) {
    const FlatBox box{0, legs.edges[leg].nm(), end.deep, legs.edges[leg + 1].nm()};
    const auto parts = parts_in(end.outline, main_bounds(end, legs, leg));
    const FlatOutline* whole = whole_part(parts, box);
    if (whole == nullptr || parts.size() != 1) {
        return Problem{
            say("The cuts at the {1} sever the {2}.", end_spoken(side), spoken(legs.names[leg])),
            say("Make the notch shorter, or the leg wider.")};
    }
    return chain_of(*whole, box);
}

}  // namespace hemline
