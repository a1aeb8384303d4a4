#include "engine/work/wall_corners.h"

namespace hemline {

namespace {

bool ends_at(const Edge& edge, End end) { return edge.left == end || edge.right == end; }

bool ends_inside(const Edge& edge) {
    return ends_at(edge, End::wall) || ends_at(edge, End::corner_in);
}

/// A sidewall runs down to an outside corner of its wall by its foot.
bool share_outside_corner(const Edge& headwall, const Edge& sidewall) {
    return ends_at(headwall, End::corner_out) && sidewall.left == End::corner_out;
}

}  // namespace

bool goes_first_at_corner(const Edge& other, const Edge& edge) {
    if (other.kind == EdgeKind::headwall && edge.kind == EdgeKind::sidewall) {
        return share_outside_corner(other, edge);
    }
    return other.kind == EdgeKind::sidewall && edge.kind == EdgeKind::headwall &&
           ends_inside(other) && ends_inside(edge) && !share_outside_corner(edge, other);
}

}  // namespace hemline
