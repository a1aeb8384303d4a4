#include "engine/roof/pitch_check.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace hemline {

namespace {

/// The flattest roof that panels of a seam may lie on.
struct SeamFloor {
    Seam seam;
    Slope least;
    std::string_view source;
};

constexpr std::array<SeamFloor, 3> seam_floors = {{
    {Seam::snap_lock, rise_in_12(3), "common practice, from memory"},
    {Seam::mechanical,
     {SlopeNotation::rise_in_12, 250'000},
     "IBC 2012 §1507.4.2; IRC R905.10.2, from memory"},
    {Seam::nail_strip, rise_in_12(3), "common practice, from memory"},
}};

/// Below this two slopes are one: a limit in percent and a reading in 12ths may be the same slope.
constexpr double same_rise = 1e-9;

bool flatter(Slope a, Slope b) { return rise_in_12_of(a) < rise_in_12_of(b) - same_rise; }

std::string with_source(const std::string& claim, std::string_view source) {
    return claim + " (" + std::string(source) + ")";
}

std::string listed(const std::vector<std::string>& words, std::string_view last_joint) {
    std::string out;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (i > 0) {
            out += i + 1 == words.size() ? std::string(last_joint) : ", ";
        }
        out += words[i];
    }
    return out;
}

std::string spoken_seams(const std::vector<Seam>& seams) {
    std::vector<std::string> words;
    words.reserve(seams.size());
    for (const Seam seam : seams) {
        words.emplace_back(spoken(seam));
    }
    return listed(words, " and ");
}

SeamVerdict judge_seam(const SeamFloor& floor, Slope pitch) {
    SeamVerdict verdict;
    verdict.seam = floor.seam;
    verdict.serves = !flatter(pitch, floor.least);
    if (!verdict.serves) {
        verdict.reason = std::string(spoken(floor.seam)) + " panels need " +
                         with_source("at least " + print_slope(floor.least), floor.source) +
                         ", and this roof is " + print_slope(pitch);
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
std::string seam_objection(const Trim& trim, const Question& question) {
    const std::string serves =
        with_source(trim.id + " serves " + spoken_seams(trim.seams) + " panels only", trim.source);
    if (question.seam != Seam::unknown) {
        for (const SeamVerdict& verdict : question.verdicts) {
            if (verdict.seam == question.seam && !verdict.serves) {
                return verdict.reason;
            }
        }
        return has(trim.seams, question.seam)
                   ? std::string()
                   : serves + ", and these are " + std::string(spoken(question.seam));
    }
    const std::vector<Seam> allowed = allowed_seams(question);
    if (allowed.empty()) {
        return question.verdicts[1].reason;  // the mechanical seam's floor is the lowest
    }
    const bool some = std::any_of(trim.seams.begin(), trim.seams.end(),
                                  [&allowed](Seam seam) { return has(allowed, seam); });
    return some ? std::string()
                : serves + ", and a roof of " + print_slope(question.pitch) + " takes only " +
                      spoken_seams(allowed) + " ones";
}

/// Why the trim does not serve; empty when it does.
std::string objection(const Trim& trim, const Question& question) {
    const std::string roof = ", and this roof is " + print_slope(question.pitch);
    if (trim.most && flatter(*trim.most, question.pitch)) {
        return with_source(trim.id + " serves pitches up to " + print_slope(*trim.most),
                           trim.source) +
               roof;
    }
    if (trim.least && flatter(question.pitch, *trim.least)) {
        return with_source(trim.id + " serves pitches from " + print_slope(*trim.least),
                           trim.source) +
               roof;
    }
    return seam_objection(trim, question);
}

/// What may be done instead, after the objection.
std::string way_out(const PitchCheck& check, const Question& question) {
    if (!check.serves.empty()) {
        return "; use " + listed(check.serves, " or ") + ".";
    }
    const std::vector<Seam> allowed = allowed_seams(question);
    if (question.seam != Seam::unknown && !allowed.empty() && !has(allowed, question.seam)) {
        return "; use " + spoken_seams(allowed) + " panels.";
    }
    return "; no trim in the catalogue serves this roof.";
}

/// A limit that a reading may lie too near to.
struct Limit {
    Slope slope;
    std::string owner;
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
            limits.push_back({*trim.most, trim.id});
        }
        if (trim.least) {
            limits.push_back({*trim.least, trim.id});
        }
    }
    for (const SeamFloor& floor : seam_floors) {
        if (has(served, floor.seam) && (seam == Seam::unknown || seam == floor.seam)) {
            limits.push_back({floor.least, std::string(spoken(floor.seam)) + " panels"});
        }
    }
    return limits;
}

std::string tenths(double value) {
    const auto count = std::llround(value * 10);
    return std::to_string(count / 10) + "." + std::to_string(count % 10);
}

/// The sentence about the nearest limit within the reading's own error, or nothing.
std::string doubt_at_limit(Slope pitch, const std::vector<Limit>& limits) {
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
    return "The reading of " + print_slope(pitch) + " may be " + tenths(error) +
           " degrees off, and " + nearest->owner + " has its limit at " +
           print_slope(nearest->slope) + ": measure the pitch again.";
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
        std::string reason = objection(trim, question);
        if (reason.empty()) {
            check.serves.push_back(trim.id);
        } else {
            check.refused.push_back({trim.id, std::move(reason)});
        }
    }
    for (Refusal& refusal : check.refused) {
        refusal.reason += way_out(check, question);
    }
    for (SeamVerdict& verdict : check.seams) {
        verdict.reason += verdict.serves ? "" : ".";
    }
    check.measure_again = doubt_at_limit(pitch, limits_that_matter(kind, seam, catalogue));
    return check;
}

}  // namespace hemline
