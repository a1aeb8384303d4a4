#include "engine/record/job.h"

#include <algorithm>

namespace hemline {
namespace {

EdgeWork* work_on(Job& job, std::string_view edge) {
    const auto found = std::find_if(job.edges.begin(), job.edges.end(),
                                    [&](const EdgeWork& work) { return work.edge.id == edge; });
    return found == job.edges.end() ? nullptr : &*found;
}

/// Takes `length` and the kerf from the stick or offcut; the rest is an offcut, however short: the
/// plan may have a piece for it.
/// An offcut that is not there (its cut was struck, or another tablet used it) leaves nothing:
/// metal is never invented.
void take_metal(Job& job, const Event& event, const std::string& edge, TrimRole role,
                const MetalTaken& metal, Length length) {
    Length from = metal.stick;
    if (metal.offcut) {
        const auto used =
            std::find_if(job.offcuts.begin(), job.offcuts.end(),
                         [&](const Offcut& offcut) { return offcut.left_by == *metal.offcut; });
        if (used == job.offcuts.end()) {
            return;
        }
        from = used->length;
        job.offcuts.erase(used);
    } else {
        ++job.sticks_opened;
    }
    const Length left = from - length - job.practice.kerf;
    if (left > Length()) {
        job.offcuts.push_back({event.id, edge, role, left});
    }
}

/// Folds one fact in. Each says what it does to the job, and nothing when it makes no sense there.
struct Fold {
    Job& job;
    const Event& event;

    void operator()(const JobStarted& fact) const {
        job.name = fact.name;
        job.practice_name = fact.practice;
    }
    void operator()(const EdgeAdded& fact) const {
        if (EdgeWork* work = work_on(job, fact.edge.id)) {
            work->edge = fact.edge;
        } else {
            job.edges.emplace_back().edge = fact.edge;
        }
    }
    void operator()(const ReadingTaken& fact) const {
        if (EdgeWork* work = work_on(job, fact.edge)) {
            const bool struck = job.struck.count(event.id) > 0;
            const auto seen = [&](const RecordedReading& before) {
                return before.of == fact.of &&
                       std::count(event.supersedes.begin(), event.supersedes.end(), before.id) > 0;
            };
            const bool settles =
                std::count_if(work->readings.begin(), work->readings.end(), seen) > 1;
            work->readings.push_back(
                {event.id, event.when, event.by, fact.of, fact.length, struck, settles});
        }
    }
    void operator()(const PitchTaken& fact) const {
        if (EdgeWork* work = work_on(job, fact.edge)) {
            work->edge.pitch = fact.pitch;
        }
    }
    void operator()(const StyleChosen& fact) const {
        if (EdgeWork* work = work_on(job, fact.edge)) {
            work->style = fact.style;
        }
    }
    void operator()(const RuleSet& fact) const {
        const Result<Practice> changed = with_rule(job.practice, fact.key, fact.value);
        if (changed) {
            job.practice = *changed;
        }
    }
    void operator()(const PieceCut& fact) const {
        EdgeWork* work = work_on(job, fact.edge);
        if (work == nullptr || fact.piece < 1) {
            return;
        }
        take_metal(job, event, fact.edge, fact.role, fact.metal, fact.cut);
        if (job.spoiled_cuts.count(event.id) > 0) {
            return;  // its metal is gone, and a cut made apart from it stands on
        }
        // Cut again, whether or not the former is superseded: the later stands, both are metal
        // gone.
        const auto same = [&](const CutPiece& cut) {
            return cut.role == fact.role && cut.piece == fact.piece;
        };
        work->cut.erase(std::remove_if(work->cut.begin(), work->cut.end(), same), work->cut.end());
        work->cut.push_back({event.id, fact.role, fact.piece, fact.cut});
    }
    void operator()(const PieceSpoiled& fact) const {
        EdgeWork* work = work_on(job, fact.edge);
        if (work == nullptr || fact.piece < 1) {
            return;
        }
        ++work->spoiled;
        if (event.supersedes.empty()) {
            take_metal(job, event, fact.edge, fact.role, fact.metal, fact.lost);
            return;
        }
        // The metal went when the piece was cut. A cut that no longer stands takes nothing with it.
        const auto undone = [&](const CutPiece& cut) {
            return std::count(event.supersedes.begin(), event.supersedes.end(), cut.id) > 0;
        };
        work->cut.erase(std::remove_if(work->cut.begin(), work->cut.end(), undone),
                        work->cut.end());
    }
    void operator()(const StepDone& fact) const {
        EdgeWork* work = work_on(job, fact.edge);
        if (work == nullptr || fact.piece < 0) {
            return;
        }
        const auto same = [&](const DoneStep& done) {
            return done.step.step == fact.step && done.step.piece == fact.piece;
        };
        work->steps.erase(std::remove_if(work->steps.begin(), work->steps.end(), same),
                          work->steps.end());
        work->steps.push_back({event.id, event.when, event.by, fact});
    }
    void operator()(const EdgeFinished& fact) const {
        if (EdgeWork* work = work_on(job, fact.edge)) {
            work->finished = event.id;
            work->finished_by = event.by;
            work->finished_when = event.when;
        }
    }
    void operator()(const Struck& fact) const { job.struck.insert(fact.target); }
    void operator()(const Unknown& /*fact*/) const { ++job.unknown_events; }
};

/// Whether an event still has its say though it is struck: a reading is shown as struck, and a
/// strike cannot itself be struck (two that strike each other would have no answer).
bool heard_when_struck(const Fact& fact) {
    return std::holds_alternative<ReadingTaken>(fact) || std::holds_alternative<Struck>(fact);
}

}  // namespace

Verdict EdgeWork::verdict(const Practice& practice) const {
    std::vector<Length> lengths;
    for (const RecordedReading& reading : readings) {
        if (reading.struck || reading.of != ReadingOf::edge) {
            continue;
        }
        if (reading.settles) {
            const auto contradicts = [&](Length before) {
                const Length longer = std::max(before, reading.length);
                return absolute(before - reading.length) >
                       allowed_difference(longer, practice.tape);
            };
            lengths.erase(std::remove_if(lengths.begin(), lengths.end(), contradicts),
                          lengths.end());
        }
        lengths.push_back(reading.length);
    }
    return judge_readings(lengths, practice.tape, practice.cut_grid);
}

std::optional<Length> EdgeWork::length(const Practice& practice) const {
    return verdict(practice).length;
}

std::optional<Length> EdgeWork::remainder() const {
    for (auto reading = readings.rbegin(); reading != readings.rend(); ++reading) {
        if (!reading->struck && reading->of == ReadingOf::remainder) {
            return reading->length;
        }
    }
    return {};
}

const EdgeWork* Job::find(std::string_view edge) const {
    const auto found = std::find_if(edges.begin(), edges.end(),
                                    [&](const EdgeWork& work) { return work.edge.id == edge; });
    return found == edges.end() ? nullptr : &*found;
}

void apply(Job& job, const Event& event) {
    if (job.struck.count(event.id) == 0 || heard_when_struck(event.fact)) {
        std::visit(Fold{job, event}, event.fact);
    }
}

Job replay(std::span<const Event> events, const Practice& practice) {
    Job job;
    job.practice = practice;
    for (const Event& event : events) {
        if (std::holds_alternative<Struck>(event.fact)) {
            apply(job, event);
        }
    }
    for (const Event& event : events) {
        if (std::holds_alternative<PieceSpoiled>(event.fact) && job.struck.count(event.id) == 0) {
            job.spoiled_cuts.insert(event.supersedes.begin(), event.supersedes.end());
        }
    }
    for (const Event& event : events) {
        apply(job, event);
    }
    job.conflicts = find_conflicts(events);
    for (const Conflict& conflict : job.conflicts) {
        for (EdgeWork& work : job.edges) {
            if (is_on(conflict.thing, work.edge.id) || conflict.thing.subject == Subject::rule) {
                work.undecided.push_back(conflict.thing);
            }
        }
    }
    return job;
}

}  // namespace hemline
