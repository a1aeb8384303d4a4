// A journal of 64 KiB with any bit flipped, or cut off at any byte: at most one event set aside for
// each flip, and never another value. HEMLINE_NIGHTLY=1 tries all of them; without it one in 101.
#include <doctest/doctest.h>

#include <algorithm>
#include <cstdlib>

#include "engine/record/merge.h"
#include "tests/engine/record/eave_record.h"

namespace hemline {
namespace {

struct Long {
    Bytes bytes;
    std::vector<std::size_t> ends;
};

Long long_journal() {
    Long journal;
    constexpr std::size_t size_least = std::size_t{64} << 10;
    for (std::uint32_t n = 1; journal.bytes.size() < size_least; ++n) {
        for (Event event : eave_record()) {
            event.id.sequence = n++;
            const Bytes frame = frame_of(event);
            journal.bytes.insert(journal.bytes.end(), frame.begin(), frame.end());
            journal.ends.push_back(journal.bytes.size());
        }
    }
    return journal;
}

std::size_t step() { return std::getenv("HEMLINE_NIGHTLY") != nullptr ? 1 : 101; }

TEST_CASE("Any bit of 64 KiB flipped sets one event aside, and no other changes") {
    const Long journal = long_journal();
    std::size_t tried = 0, wrong = 0;
    for (std::size_t bit = 0; bit < journal.bytes.size() * 8; bit += step()) {
        Bytes bytes = journal.bytes;
        bytes[bit / 8] = static_cast<std::uint8_t>(bytes[bit / 8] ^ (1U << (bit % 8)));
        const FramesRead read = read_frames(bytes);
        const auto hit = static_cast<std::size_t>(
            std::upper_bound(journal.ends.begin(), journal.ends.end(), bit / 8) -
            journal.ends.begin());
        bool as_it_was = read.frames.size() + 1 == journal.ends.size() && read.damage.size() == 1;
        for (std::size_t i = 0; as_it_was && i < read.frames.size(); ++i) {
            const std::size_t whole = i < hit ? i : i + 1;
            const std::size_t from = whole == 0 ? 0 : journal.ends[whole - 1];
            // Frames with the same bytes hold the same event.
            as_it_was = read.frames[i].bytes.data() == bytes.data() + from &&
                        read.frames[i].bytes.size() == journal.ends[whole] - from;
        }
        ++tried;
        wrong += as_it_was ? 0 : 1;
    }
    CHECK(wrong == 0);
    MESSAGE(tried << " flips of a journal of " << journal.bytes.size() << " bytes");
}

TEST_CASE("64 KiB cut off at any byte give every whole event before it") {
    const Long journal = long_journal();
    for (std::size_t cut = 0; cut <= journal.bytes.size(); cut += step()) {
        const FramesRead read = read_frames(std::span(journal.bytes).first(cut));
        const auto whole = static_cast<std::size_t>(
            std::upper_bound(journal.ends.begin(), journal.ends.end(), cut) - journal.ends.begin());
        CHECK(read.frames.size() == whole);
        CHECK(read.whole_size == (whole == 0 ? 0 : journal.ends[whole - 1]));
    }
}

}  // namespace
}  // namespace hemline
