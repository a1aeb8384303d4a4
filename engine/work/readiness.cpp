// What a cut waits for, each as one sentence that says what to do.
#include "engine/work/readiness.h"

#include <algorithm>

#include "engine/roof/edge_shape.h"

namespace hemline {
namespace {

const DoneStep* find_fastening(const EdgeWork& work, int piece) {
    const CutPiece* cut = find_cut(work, TrimRole::main, piece);
    const auto latest =
        std::find_if(work.steps.rbegin(), work.steps.rend(), [&](const DoneStep& done) {
            return done.step.step == fasten_step && done.step.piece == piece && stands(done, cut);
        });
    return latest == work.steps.rend() ? nullptr : &*latest;
}

const RecordedReading* find_remainder(const EdgeWork& work) {
    const auto latest = std::find_if(
        work.readings.rbegin(), work.readings.rend(), [](const RecordedReading& reading) {
            return reading.of == ReadingOf::remainder && !reading.struck;
        });
    return latest == work.readings.rend() ? nullptr : &*latest;
}

}  // namespace

std::string reading_missing(const EdgeWork& work, const Practice& practice) {
    if (!work.undecided.empty()) {
        return Conflict{work.undecided.front(), {}, false}.what();
    }
    if (!has_run(work.edge.kind)) {
        return "";
    }
    const std::string edge = "edge " + work.edge.id;
    switch (work.verdict(practice).agreement) {
        case Agreement::none:
            return "Read the length of " + edge + " twice.";
        case Agreement::once:
            return "Read the length of " + edge + " a second time.";
        case Agreement::third:
            return "Read the length of " + edge + " a third time.";
        case Agreement::disagree:
            return "Read the length of " + edge + " again: no two readings agree.";
        case Agreement::agree:
            break;
    }
    return work.edge.pitch ? "" : "Take the pitch of " + edge + " first.";
}

Side foot_of(const EdgeWork& work) {
    const auto said = std::find_if(work.steps.begin(), work.steps.end(), [](const DoneStep& done) {
        return done.step.step == hand_step && done.step.answer.seen == word_of(Side::right);
    });
    return said == work.steps.end() ? Side::left : Side::right;
}

bool lies_mirrored(const EdgeWork& work) {
    return is_sloped(work.edge.kind) && foot_of(work) == Side::right;
}

const PlannedPiece* find_piece(const Run& run, int piece) {
    const auto found = std::find_if(run.pieces.begin(), run.pieces.end(),
                                    [&](const PlannedPiece& p) { return p.number == piece; });
    return found == run.pieces.end() ? nullptr : &*found;
}

bool needs_remainder(const Run& run, int piece) {
    return run.role == TrimRole::main && run.pieces.size() > 1 && run.pieces.back().number == piece;
}

const CutPiece* find_cut(const EdgeWork& work, TrimRole role, int piece) {
    const auto found = std::find_if(work.cut.rbegin(), work.cut.rend(), [&](const CutPiece& cut) {
        return cut.role == role && cut.piece == piece;
    });
    return found == work.cut.rend() ? nullptr : &*found;
}

bool stands(const DoneStep& done, const CutPiece* cut) {
    return cut != nullptr &&
           !(done.id.device == cut->id.device && done.id.sequence < cut->id.sequence);
}

bool is_fastened(const EdgeWork& work, int piece) { return find_fastening(work, piece) != nullptr; }

std::string remainder_missing(const EdgeWork& work, const Run& run) {
    const int neighbour = run.pieces[run.pieces.size() - 2].number;
    const std::string name = "piece " + std::to_string(neighbour);
    const DoneStep* fastened = find_fastening(work, neighbour);
    if (fastened == nullptr) {
        return "Fix " + name + ", then measure from its end to the end of the edge.";
    }
    const RecordedReading* reading = find_remainder(work);
    if (reading == nullptr) {
        return "Measure from the end of " + name + " to the end of the edge.";
    }
    // The neighbour was fastened anew after the reading: it may lie elsewhere now.
    if (reading->when < fastened->when) {
        return "Measure again from the end of " + name + " to the end of the edge.";
    }
    return "";
}

std::string cut_waits_for(const EdgeWork& work, const Run& run, int piece,
                          const Practice& practice) {
    const PlannedPiece* planned = find_piece(run, piece);
    if (planned == nullptr || planned->is_cut) {
        return "";
    }
    if (std::string missing = reading_missing(work, practice); !missing.empty()) {
        return missing;
    }
    for (const PlannedPiece& earlier : run.pieces) {
        if (earlier.number < piece && !earlier.is_cut) {
            return "Cut piece " + std::to_string(earlier.number) + " first.";
        }
    }
    if (needs_remainder(run, piece)) {
        if (std::string missing = remainder_missing(work, run); !missing.empty()) {
            return missing;
        }
    }
    return planned->source ? "" : "No stick is long enough for this piece: add stock.";
}

}  // namespace hemline
