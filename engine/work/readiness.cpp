// What a cut waits for, each as a sentence that says what to do.
#include "engine/work/readiness.h"

#include <algorithm>

#include "engine/plan/plan.h"
#include "engine/record/job.h"
#include "engine/roof/edge_shape.h"
#include "engine/roof/readings.h"
#include "engine/trim/practice.h"

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

Text reading_missing(const EdgeWork& work, const Practice& practice) {
    if (!work.undecided.empty()) {
        return work.undecided.front().why;
    }
    if (!has_run(work.edge.kind)) {
        return {};
    }
    const std::string& edge = work.edge.id;
    switch (work.verdict(practice).agreement) {
        case Agreement::none:
            return say("Read the length of edge {1} twice.", edge);
        case Agreement::once:
            return say("Read the length of edge {1} a second time.", edge);
        case Agreement::third:
            return say("Read the length of edge {1} a third time.", edge);
        case Agreement::disagree:
            return say("Read the length of edge {1} again: no two readings agree.", edge);
        case Agreement::agree:
            break;
    }
    return work.edge.pitch ? Text() : say("Take the pitch of edge {1} first.", edge);
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
    // Numbered as they lie there, from 1 on.
    const auto place = static_cast<std::size_t>(piece) - 1;
    return piece < 1 || place >= run.pieces.size() ? nullptr : &run.pieces[place];
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

Text remainder_missing(const EdgeWork& work, const Run& run) {
    const int neighbour = run.pieces[run.pieces.size() - 2].number;
    const DoneStep* fastened = find_fastening(work, neighbour);
    if (fastened == nullptr) {
        return say("Fix piece {1}, then measure from its end to the end of the edge.", neighbour);
    }
    const RecordedReading* reading = find_remainder(work);
    if (reading == nullptr) {
        return say("Measure from the end of piece {1} to the end of the edge.", neighbour);
    }
    // The neighbor was fastened again after the reading: it may be somewhere else now.
    if (reading->place < fastened->place) {
        return say("Measure again from the end of piece {1} to the end of the edge.", neighbour);
    }
    return {};
}

Text cut_waits_for(const EdgeWork& work, const Run& run, int piece, const Practice& practice) {
    return cut_waits_for(work, run, piece, reading_missing(work, practice));
}

Text cut_waits_for(const EdgeWork& work, const Run& run, int piece, const Text& reading) {
    const PlannedPiece* planned = find_piece(run, piece);
    if (planned == nullptr || planned->is_cut) {
        return {};
    }
    if (!reading.empty()) {
        return reading;
    }
    for (const PlannedPiece& earlier : run.pieces) {
        if (earlier.number < piece && !earlier.is_cut) {
            return say("Cut piece {1} first.", earlier.number);
        }
    }
    if (needs_remainder(run, piece)) {
        if (Text missing = remainder_missing(work, run); !missing.empty()) {
            return missing;
        }
    }
    return planned->source ? Text() : say("No stick is long enough for this piece: add stock.");
}

}  // namespace hemline
