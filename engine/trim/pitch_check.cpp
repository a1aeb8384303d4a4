#include "engine/trim/pitch_check.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace hemline {

namespace {

/// The flattest roof that panels with a given seam may lie on.
struct SeamFloor {
    Seam seam;
    Slope least;
};

constexpr std::array<SeamFloor, 3> seam_floors = {{
    {Seam::snap_lock, rise_in_12(3)},
    {Seam::mechanical, {SlopeNotation::rise_in_12, 250'000}},
    {Seam::nail_strip, rise_in_12(3)},
}};

Text source_of(const SeamFloor& floor) {
    return floor.seam == Seam::mechanical ? say("IBC 2012 §1507.4.2; IRC R905.10.2, from memory")
                                          : say("common practice, from memory");
}

/// Slopes that differ by less are the same: a limit in percent and a reading in 12ths may be the
/// same slope.
constexpr double same_rise = 1e-9;

bool flatter(Slope a, Slope b) { return rise_in_12_of(a) < rise_in_12_of(b) - same_rise; }

Text spoken_seams(const std::vector<Seam>& seams) {
    std::vector<Text> words;
    words.reserve(seams.size());
    for (const Seam seam : seams) {
        words.push_back(spoken(seam));
    }
    return listed(words, say("{1} and {2}"));
}

SeamVerdict judge_seam(const SeamFloor& floor, Slope pitch) {
    SeamVerdict verdict;
    verdict.seam = floor.seam;
    verdict.serves = !flatter(pitch, floor.least);
    if (!verdict.serves) {
        verdict.reason = say("{1} panels need at least {2} ({3}), and this roof is {4}",
                             spoken(floor.seam), floor.least, source_of(floor), pitch);
    }
    return verdict;
}

bool has(const std::vector<Seam>& seams, Seam seam) {
    return std::find(seams.begin(), seams.end(), seam) != seams.end();
}

/// What is asked of every trim.
struct Question {
    Slope pitch;
    Seam seam = Seam::unknown;
    const std::vector<SeamVerdict>& verdicts;
};

std::vector<Seam> allowed_seams(const Question& question) {
    std::vector<Seam> allowed;
    for (const SeamVerdict& verdict : question.verdicts) {
        if (verdict.serves) {
            allowed.push_back(verdict.seam);
        }
    }
    return allowed;
}

/// Why the trim's panels do not suit; empty when some do.
Text seam_objection(const Trim& trim, const Question& question) {
    if (question.seam != Seam::unknown) {
        for (const SeamVerdict& verdict : question.verdicts) {
            if (verdict.seam == question.seam && !verdict.serves) {
                return verdict.reason;
            }
        }
        return has(trim.seams, question.seam)
                   ? Text()
                   : say("{1} serves {2} panels only ({3}), and these are {4}", say(trim.name),
                         spoken_seams(trim.seams), say(trim.source), spoken(question.seam));
    }
    const std::vector<Seam> allowed = allowed_seams(question);
    if (allowed.empty()) {
        return question.verdicts[1].reason;  // the mechanical seam's floor is the lowest
    }
    const bool some = std::any_of(trim.seams.begin(), trim.seams.end(),
                                  [&allowed](Seam seam) { return has(allowed, seam); });
    return some ? Text()
                : say("{1} serves {2} panels only ({3}), and a roof of {4} takes only {5} ones",
                      say(trim.name), spoken_seams(trim.seams), say(trim.source), question.pitch,
                      spoken_seams(allowed));
}

/// Why the trim does not serve; empty when it does.
Text objection(const Trim& trim, const Question& question) {
    if (trim.most && flatter(*trim.most, question.pitch)) {
        return say("{1} serves pitches up to {2} ({3}), and this roof is {4}", say(trim.name),
                   *trim.most, say(trim.source), question.pitch);
    }
    if (trim.least && flatter(question.pitch, *trim.least)) {
        return say("{1} serves pitches from {2} ({3}), and this roof is {4}", say(trim.name),
                   *trim.least, say(trim.source), question.pitch);
    }
    return seam_objection(trim, question);
}

/// The objection, and what to do instead.
Text with_way_out(const Text& objection, const PitchCheck& check, const Question& question,
                  const Catalogue& catalogue) {
    if (!check.serves.empty()) {
        std::vector<Text> names;
        std::transform(check.serves.begin(), check.serves.end(), std::back_inserter(names),
                       [&](const std::string& id) { return say(catalogue.find(id)->name); });
        return say("{1}; use {2}.", objection, listed(std::move(names), say("{1} or {2}")));
    }
    const std::vector<Seam> allowed = allowed_seams(question);
    if (question.seam != Seam::unknown && !allowed.empty() && !has(allowed, question.seam)) {
        return say("{1}; use {2} panels.", objection, spoken_seams(allowed));
    }
    return say("{1}; no trim in the catalogue serves this roof.", objection);
}

/// A limit that a reading may be too near to.
struct Limit {
    Slope slope;
    Text owner;
};

std::vector<Limit> limits_that_matter(EdgeKind kind, Seam seam, const Catalogue& catalogue) {
    std::vector<Limit> limits;
    std::vector<Seam> served;
    for (const Trim& trim : catalogue.trims()) {
        if (!serves(trim, kind) || trim.role != TrimRole::main) {
            continue;
        }
        served.insert(served.end(), trim.seams.begin(), trim.seams.end());
        if (seam != Seam::unknown && !has(trim.seams, seam)) {
            continue;
        }
        if (trim.most) {
            limits.push_back({*trim.most, say(trim.name)});
        }
        if (trim.least) {
            limits.push_back({*trim.least, say(trim.name)});
        }
    }
    for (const SeamFloor& floor : seam_floors) {
        if (has(served, floor.seam) && (seam == Seam::unknown || seam == floor.seam)) {
            limits.push_back({floor.least, say("{1} panels", spoken(floor.seam))});
        }
    }
    return limits;
}

std::string tenths(double value) {
    const auto count = std::llround(value * 10);
    return std::to_string(count / 10) + "." + std::to_string(count % 10);
}

/// The sentence about the nearest limit within the error of the reading, or nothing.
Text doubt_at_limit(Slope pitch, const std::vector<Limit>& limits) {
    const double error = reading_error_degrees(pitch);
    const Limit* nearest = nullptr;
    double distance_least = error + same_rise;
    for (const Limit& limit : limits) {
        const double distance = std::abs(degrees_of(pitch) - degrees_of(limit.slope));
        if (distance <= distance_least) {
            nearest = &limit;
            distance_least = distance;
        }
    }
    if (nearest == nullptr) {
        return {};
    }
    return say(
        "The reading of {1} may be {2} degrees off, and {3} has its limit at {4}: measure "
        "the pitch again.",
        pitch, tenths(error), nearest->owner, nearest->slope);
}

}  // namespace

PitchCheck check_pitch(Slope pitch, EdgeKind kind, Seam seam, const Catalogue& catalogue) {
    PitchCheck check;
    for (const SeamFloor& floor : seam_floors) {
        check.seams.push_back(judge_seam(floor, pitch));
    }
    const Question question{pitch, seam, check.seams};
    for (const Trim& trim : catalogue.trims()) {
        if (!serves(trim, kind) || trim.role != TrimRole::main) {
            continue;
        }
        Text reason = objection(trim, question);
        if (reason.empty()) {
            check.serves.push_back(trim.id);
        } else {
            check.refused.push_back({trim.id, std::move(reason)});
        }
    }
    for (Refusal& refusal : check.refused) {
        refusal.reason = with_way_out(refusal.reason, check, question, catalogue);
    }
    for (SeamVerdict& verdict : check.seams) {
        verdict.reason = verdict.serves ? Text() : glued(verdict.reason, ".");
    }
    check.measure_again = doubt_at_limit(pitch, limits_that_matter(kind, seam, catalogue));
    return check;
}

}  // namespace hemline
