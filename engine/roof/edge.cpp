#include "engine/roof/edge.h"

#include "engine/require.h"

namespace hemline {

namespace {

/// A value with its word in files and its word for people.
template <class T>
struct Word {
    T value;
    std::string_view written, said;
};

constexpr std::array<Word<EdgeKind>, 10> edge_kinds = {{
    {EdgeKind::eave, "eave", "eave"},
    {EdgeKind::gable, "gable", "gable"},
    {EdgeKind::ridge, "ridge", "ridge"},
    {EdgeKind::hip, "hip", "hip"},
    {EdgeKind::valley, "valley", "valley"},
    {EdgeKind::sidewall, "sidewall", "sidewall"},
    {EdgeKind::headwall, "headwall", "headwall"},
    {EdgeKind::transition, "transition", "transition"},
    {EdgeKind::high_eave, "high_eave", "high eave"},
    {EdgeKind::penetration, "penetration", "penetration"},
}};

constexpr std::array<Word<End>, 9> ends = {{
    {End::gable, "gable", "gable"},
    {End::corner_out, "corner_out", "outside corner"},
    {End::corner_in, "corner_in", "inside corner"},
    {End::wall, "wall", "wall"},
    {End::open, "open", "open end"},
    {End::eave, "eave", "eave"},
    {End::ridge, "ridge", "ridge"},
    {End::hip, "hip", "hip"},
    {End::valley, "valley", "valley"},
}};

constexpr std::array<Word<Side>, 2> sides = {{
    {Side::left, "left", "left"},
    {Side::right, "right", "right"},
}};

constexpr std::array<Word<Seam>, 4> seams = {{
    {Seam::unknown, "", "not stated"},
    {Seam::snap_lock, "snap_lock", "snap-lock"},
    {Seam::mechanical, "mechanical", "mechanically seamed"},
    {Seam::nail_strip, "nail_strip", "nail-strip"},
}};

constexpr std::array<Word<Looks>, 3> all_looks = {{
    {Looks::by_preference, "", "by preference"},
    {Looks::balanced, "balanced", "balanced"},
    {Looks::free, "free", "free"},
}};

constexpr std::array<Word<Fascia>, 2> fascias = {{
    {Fascia::plumb, "plumb", "plumb"},
    {Fascia::square_cut, "square", "square-cut"},
}};

template <class Words, class T>
const Word<T>& entry(const Words& words, T value) {
    for (const Word<T>& word : words) {
        if (word.value == value) {
            return word;
        }
    }
    stop("a value without its word");
}

template <class T, std::size_t n>
std::optional<T> value_of(const std::array<Word<T>, n>& words, std::string_view written) {
    for (const Word<T>& word : words) {
        if (word.written == written) {
            return word.value;
        }
    }
    return {};
}

}  // namespace

std::string_view word_of(EdgeKind kind) { return entry(edge_kinds, kind).written; }
std::string_view word_of(End end) { return entry(ends, end).written; }
std::string_view word_of(Side side) { return entry(sides, side).written; }
std::string_view word_of(Seam seam) { return entry(seams, seam).written; }
std::string_view word_of(Looks looks) { return entry(all_looks, looks).written; }
std::string_view word_of(Fascia fascia) { return entry(fascias, fascia).written; }

std::optional<EdgeKind> edge_kind_of(std::string_view word) { return value_of(edge_kinds, word); }
std::optional<End> end_of(std::string_view word) { return value_of(ends, word); }
std::optional<Side> side_of(std::string_view word) { return value_of(sides, word); }
std::optional<Seam> seam_of(std::string_view word) { return value_of(seams, word); }
std::optional<Looks> looks_of(std::string_view word) { return value_of(all_looks, word); }
std::optional<Fascia> fascia_of(std::string_view word) { return value_of(fascias, word); }

std::string_view spoken(EdgeKind kind) { return entry(edge_kinds, kind).said; }
std::string_view spoken(End end) { return entry(ends, end).said; }
std::string_view spoken(Seam seam) { return entry(seams, seam).said; }

}  // namespace hemline
