#include "engine/roof/edge.h"

#include <array>

#include "engine/require.h"

namespace hemline {

namespace {

/// A value with its word in files.
template <class T>
struct Word {
    T value;
    std::string_view written;
};

constexpr std::array<Word<End>, 9> ends = {{
    {End::gable, "gable"},
    {End::corner_out, "corner_out"},
    {End::corner_in, "corner_in"},
    {End::wall, "wall"},
    {End::open, "open"},
    {End::eave, "eave"},
    {End::ridge, "ridge"},
    {End::hip, "hip"},
    {End::valley, "valley"},
}};

constexpr std::array<Word<Side>, 2> sides = {{
    {Side::left, "left"},
    {Side::right, "right"},
}};

constexpr std::array<Word<Seam>, 4> seams = {{
    {Seam::unknown, ""},
    {Seam::snap_lock, "snap_lock"},
    {Seam::mechanical, "mechanical"},
    {Seam::nail_strip, "nail_strip"},
}};

constexpr std::array<Word<Looks>, 3> all_looks = {{
    {Looks::by_preference, ""},
    {Looks::balanced, "balanced"},
    {Looks::free, "free"},
}};

constexpr std::array<Word<Fascia>, 2> fascias = {{
    {Fascia::plumb, "plumb"},
    {Fascia::square_cut, "square"},
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

std::string_view word_of(End end) { return entry(ends, end).written; }
std::string_view word_of(Side side) { return entry(sides, side).written; }
std::string_view word_of(Seam seam) { return entry(seams, seam).written; }
std::string_view word_of(Looks looks) { return entry(all_looks, looks).written; }
std::string_view word_of(Fascia fascia) { return entry(fascias, fascia).written; }

std::optional<End> end_of(std::string_view word) { return value_of(ends, word); }
std::optional<Side> side_of(std::string_view word) { return value_of(sides, word); }
std::optional<Seam> seam_of(std::string_view word) { return value_of(seams, word); }
std::optional<Looks> looks_of(std::string_view word) { return value_of(all_looks, word); }
std::optional<Fascia> fascia_of(std::string_view word) { return value_of(fascias, word); }

Text spoken(End end) {
    switch (end) {
        case End::gable:
            return say("gable");
        case End::corner_out:
            return say("outside corner");
        case End::corner_in:
            return say("inside corner");
        case End::wall:
            return say("wall");
        case End::open:
            return say("open end");
        case End::eave:
            return say("eave");
        case End::ridge:
            return say("ridge");
        case End::hip:
            return say("hip");
        case End::valley:
            return say("valley");
    }
    stop("an end without its word");
}

Text spoken(Side side) { return side == Side::left ? say("left") : say("right"); }
Text end_spoken(Side side) { return side == Side::left ? say("left end") : say("right end"); }

Text spoken(Seam seam) {
    switch (seam) {
        case Seam::unknown:
            return say("not stated");
        case Seam::snap_lock:
            return say("snap-lock");
        case Seam::mechanical:
            return say("mechanically seamed");
        case Seam::nail_strip:
            return say("nail-strip");
    }
    stop("a seam without its word");
}

}  // namespace hemline
