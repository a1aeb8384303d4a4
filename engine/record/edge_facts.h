// What was said of an edge: what it is, how long and how steep, how it is divided, and whether it
// is finished.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "engine/dividing/run.h"
#include "engine/measure/slope.h"
#include "engine/record/kinds.h"
#include "engine/record/said_values.h"
#include "engine/roof/edge.h"

namespace hemline {

struct EdgeAdded {
    static constexpr std::uint16_t kind_number = 2;
    Edge edge;  ///< an id already there is replaced; its lap stays: only LapChosen says it

    bool operator==(const EdgeAdded& other) const;  ///< all but the lap
};
struct ReadingTaken {
    static constexpr std::uint16_t kind_number = 3;
    std::string edge;
    ReadingOf of = ReadingOf::edge;
    Length length;

    bool operator==(const ReadingTaken&) const = default;
};
struct PitchTaken {
    static constexpr std::uint16_t kind_number = 4;
    std::string edge;
    Slope pitch;

    bool operator==(const PitchTaken&) const = default;
};
struct StyleChosen {
    static constexpr std::uint16_t kind_number = 5;
    std::string edge;
    Style style = Style::balanced;

    bool operator==(const StyleChosen&) const = default;
};
struct EdgeFinished {
    static constexpr std::uint16_t kind_number = 10;
    std::string edge;
    std::string remark;

    bool operator==(const EdgeFinished&) const = default;
};
/// What the edge must look like from the ground. Its style, if one was chosen, no longer counts.
struct LooksChosen {
    static constexpr std::uint16_t kind_number = 26;
    std::string edge;
    Looks looks = Looks::by_preference;

    bool operator==(const LooksChosen&) const = default;
};
/// The foreman's other answer: what is wrong, for the crew to fix. Supersedes his sign-off, if
/// there is one.
struct EdgeSentBack {
    static constexpr std::uint16_t kind_number = 40;
    std::string edge;
    std::string reason;

    bool operator==(const EdgeSentBack&) const = default;
};
/// An edge added by mistake is no longer on the job. Metal cut for it is not: cut on another tablet
/// meanwhile, the edge stays. EdgeAdded puts it back.
struct EdgeTakenOff {
    static constexpr std::uint16_t kind_number = 41;
    std::string edge;

    bool operator==(const EdgeTakenOff&) const = default;
};
/// How far the pieces of this edge lap; none: as the job's rule has it. Its run is divided again.
struct LapChosen {
    static constexpr std::uint16_t kind_number = 42;
    std::string edge;
    std::optional<Length> lap;

    bool operator==(const LapChosen&) const = default;
};

/// The foreman has looked at a value outside practice and lets it stand.
struct ValueAccepted {
    static constexpr std::uint16_t kind_number = 56;
    std::string edge;
    std::string value;  ///< EdgeValue::key: of what, and which value

    bool operator==(const ValueAccepted&) const = default;
};

using EdgeFacts = Kinds<EdgeAdded, ReadingTaken, PitchTaken, StyleChosen, EdgeFinished, LooksChosen,
                        EdgeSentBack, EdgeTakenOff, LapChosen, ValueAccepted>;

}  // namespace hemline
