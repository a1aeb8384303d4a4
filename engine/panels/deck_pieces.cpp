#include "engine/panels/deck_pieces.h"

#include <algorithm>

namespace hemline {

namespace {

std::vector<double> corners_between(const DeckPlane& plane, double from, double to) {
    std::vector<double> all = {from, to};
    for (const DeckBound& bound : plane.bounds) {
        if (bound.from.x > from && bound.from.x < to) {
            all.push_back(bound.from.x);
        }
    }
    std::sort(all.begin(), all.end());
    all.erase(std::unique(all.begin(), all.end()), all.end());
    return all;
}

/// No corner lies between the two.
std::vector<DeckPart> parts_between(const DeckPlane& plane, double x1, double x2) {
    const double middle = (x1 + x2) / 2;
    std::vector<std::size_t> crossed;
    for (std::size_t i = 0; i < plane.bounds.size(); ++i) {
        const auto& [from, to] = std::pair(plane.bounds[i].from.x, plane.bounds[i].to.x);
        if (std::min(from, to) < middle && std::max(from, to) > middle) {
            crossed.push_back(i);
        }
    }
    std::sort(crossed.begin(), crossed.end(), [&](std::size_t a, std::size_t b) {
        return plane.bounds[a].y_at(middle) < plane.bounds[b].y_at(middle);
    });
    std::vector<DeckPart> parts;
    for (std::size_t i = 0; i + 1 < crossed.size(); i += 2) {
        const DeckBound &foot = plane.bounds[crossed[i]], &top = plane.bounds[crossed[i + 1]];
        parts.push_back({x1, x2, foot.y_at(x1), foot.y_at(x2), top.y_at(x1), top.y_at(x2),
                         crossed[i], crossed[i + 1]});
    }
    return parts;
}

/// Whether they have more than a corner in common where the one ends and the other begins.
bool go_on(const DeckPart& left, const DeckPart& right) {
    return left.x2 == right.x1 &&
           std::min(left.top2, right.top1) - std::max(left.foot2, right.foot1) > same_place_nm;
}

double lowest(const DeckPiece& piece) {
    double least = piece.front().foot1;
    for (const DeckPart& part : piece) {
        least = std::min({least, part.foot1, part.foot2});
    }
    return least;
}

}  // namespace

std::vector<DeckPiece> deck_pieces(const DeckPlane& plane, double from, double to) {
    std::vector<DeckPiece> pieces;
    const std::vector<double> corners = corners_between(plane, from, to);
    for (std::size_t i = 0; i + 1 < corners.size(); ++i) {
        for (const DeckPart& part : parts_between(plane, corners[i], corners[i + 1])) {
            DeckPiece joined;
            for (DeckPiece& piece : pieces) {
                if (std::any_of(piece.begin(), piece.end(),
                                [&](const DeckPart& left) { return go_on(left, part); })) {
                    joined.insert(joined.end(), piece.begin(), piece.end());
                    piece.clear();
                }
            }
            std::erase_if(pieces, [](const DeckPiece& piece) { return piece.empty(); });
            joined.push_back(part);
            pieces.push_back(std::move(joined));
        }
    }
    for (DeckPiece& piece : pieces) {
        std::stable_sort(piece.begin(), piece.end(),
                         [](const DeckPart& a, const DeckPart& b) { return a.x1 < b.x1; });
    }
    std::stable_sort(pieces.begin(), pieces.end(),
                     [](const DeckPiece& a, const DeckPiece& b) { return lowest(a) < lowest(b); });
    return pieces;
}

double area_of(const DeckPiece& piece) {
    double area = 0;
    for (const DeckPart& part : piece) {
        area += (part.x2 - part.x1) * (part.top1 - part.foot1 + part.top2 - part.foot2) / 2;
    }
    return area;
}

}  // namespace hemline
