#include "field/screens/roof/fill_shape.h"

#include <cmath>

#include "engine/trim/triangles.h"

namespace hemline {

void fill_shape(const Ui& ui, const std::vector<ImVec2>& shape, Colour colour) {
    constexpr float parts_of_a_pixel = 1024;
    FlatOutline flat;
    for (const ImVec2 p : shape) {
        flat.push_back(
            {std::llround(p.x * parts_of_a_pixel), std::llround(p.y * parts_of_a_pixel)});
    }
    ImDrawList* const ink = ui.ink();
    const ImDrawListFlags flags = ink->Flags;
    ink->Flags &= ~ImDrawListFlags_AntiAliasedFill;
    for (const auto& [a, b, c] : triangles_of(flat)) {
        ink->AddTriangleFilled(shape[a], shape[b], shape[c], colour);
    }
    ink->Flags = flags;
}

bool is_in_shape(const std::vector<ImVec2>& shape, ImVec2 at) {
    bool in = false;
    for (std::size_t i = 0, j = shape.size() - 1; i < shape.size(); j = i++) {
        const ImVec2 p = shape[i], q = shape[j];
        if ((p.y > at.y) != (q.y > at.y) && at.x < (q.x - p.x) * (at.y - p.y) / (q.y - p.y) + p.x) {
            in = !in;
        }
    }
    return in;
}

}  // namespace hemline
