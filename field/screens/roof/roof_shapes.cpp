#include "field/screens/roof/roof_shapes.h"

#include <string>

#include "engine/record/job.h"

namespace hemline {

namespace {

constexpr RoofShape shapes[] = {
    {"shape gable",
     phrase("Gable"),
     2,
     {{{phrase("Along the eave"), {0, -1}, 40}, {phrase("Across the gable"), {1, -1}, 24}}}},
    {"shape hip",
     phrase("Hip"),
     2,
     {{{phrase("The long eave"), {0, -1}, 40}, {phrase("The short eave"), {1, -1}, 24}}}},
    {"shape l",
     phrase("L"),
     3,
     {{{phrase("One arm, outside"), {0, -1}, 46},
       {phrase("The other arm, outside"), {5, -1}, 40},
       {phrase("How wide they are"), {1, 4}, 20}}}},
    {"shape t",
     phrase("T"),
     3,
     {{{phrase("The bar's length"), {0, -1}, 52},
       {phrase("How far the stem stands out"), {3, 5}, 16},
       {phrase("How wide they are"), {1, 4}, 20}}}},
    {"shape lean-to",
     phrase("Lean-to"),
     2,
     {{{phrase("Along the eave"), {0, -1}, 40},
       {phrase("From the eave to the wall, level"), {1, 3}, 18}}}},
};
enum Shape : std::uint8_t { gable, hip, l_shape, t_shape, lean_to };

/// The last sides of a walk, which close it.
constexpr std::size_t closing = 2;

struct ShapeSide {
    SideKind kind;
    Length length;
    Angle corner = square_out;
};

/// Lengths in the order asked.
std::vector<ShapeSide> sides_of(int shape, const std::array<Length, shape_lengths_most>& said) {
    const auto [a, b, wide] = said;
    constexpr SideKind eave = SideKind::eave;
    switch (shape) {
        case gable:
            return {{eave, a}, {SideKind::gable, b}, {eave, a}, {SideKind::gable, b}};
        case hip:
            return {{eave, a}, {eave, b}, {eave, a}, {eave, b}};
        case l_shape:
            return {{eave, a},        {eave, wide}, {eave, a - wide, square_in},
                    {eave, b - wide}, {eave, wide}, {eave, b}};
        case t_shape: {
            const Length beside = Length::of_nm((a - wide).nm() / 2);
            return {{eave, a},      {eave, wide}, {eave, beside, square_in},
                    {eave, b},      {eave, wide}, {eave, b, square_in},
                    {eave, beside}, {eave, wide}};
        }
        default:
            return {{eave, a}, {SideKind::gable, b}, {SideKind::wall, a}, {SideKind::gable, b}};
    }
}

bool has_arms(int shape) { return shape == l_shape || shape == t_shape; }

/// An arm no longer than it is wide is none.
bool are_arms(int shape, const std::array<Length, shape_lengths_most>& said) {
    return !has_arms(shape) || (said[0] > said[2] && (shape == t_shape || said[1] > said[2]));
}

WalkedBody walk_round(const Job& job, int shape,
                      const std::array<Length, shape_lengths_most>& said) {
    WalkedBody walk;
    walk.id = std::to_string(job.bodies.size() + 1);
    walk.closed = true;
    for (const ShapeSide& side : sides_of(shape, said)) {
        SideWalked made;
        made.id = next_side(job, walk.sides);
        made.kind = side.kind;
        made.length = side.length;
        made.corner = side.corner;
        walk.sides.push_back(std::move(made));
    }
    return walk;
}

}  // namespace

std::span<const RoofShape> roof_shapes() { return shapes; }

Result<WalkedBody> shape_walk(const Job& job, const ShapeDraft& draft, bool metric) {
    std::array<Length, shape_lengths_most> said{};
    for (std::size_t i = 0; i < shapes[draft.shape].lengths; ++i) {
        const Result<Length> length = length_of(draft.lengths[i], metric);
        if (!length) {
            return length.problem();
        }
        said[i] = *length;
    }
    if (!are_arms(draft.shape, said)) {
        return Problem{say("An arm is no longer than it is wide."),
                       say("Key in the outside lengths, and how wide the arms are.")};
    }
    WalkedBody walk = walk_round(job, draft.shape, said);
    for (std::size_t i = walk.sides.size() - closing; i < walk.sides.size(); ++i) {
        walk.sides[i].length.reset();
    }
    return walk;
}

BodyOnJob shape_drawn(const ShapeDraft& draft, bool metric) {
    const RoofShape& shape = shapes[draft.shape];
    std::array<Length, shape_lengths_most> usual{}, said{};
    std::optional<double> scale;
    for (std::size_t i = 0; i < shape.lengths; ++i) {
        usual[i] = feet(shape.asks[i].usual_feet);
        const Result<Length> length = length_of(draft.lengths[i], metric);
        if (length && *length > Length()) {
            said[i] = *length;
            scale = scale ? scale
                          : static_cast<double>(said[i].nm()) / static_cast<double>(usual[i].nm());
        }
    }
    for (std::size_t i = 0; i < shape.lengths; ++i) {
        if (said[i] == Length()) {
            said[i] = Length::of_nm(
                static_cast<std::int64_t>(static_cast<double>(usual[i].nm()) * scale.value_or(1)));
        }
    }
    const BodyOnJob body = roof_body(
        {}, walk_round({}, draft.shape, are_arms(draft.shape, said) ? said : usual), rise_in_12(6));
    return body.worked ? body : roof_body({}, walk_round({}, draft.shape, usual), rise_in_12(6));
}

}  // namespace hemline
