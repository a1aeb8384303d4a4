#include "engine/work/edge_values.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <set>
#include <string_view>
#include <utility>

#include "engine/plan/plan.h"
#include "engine/record/event.h"
#include "engine/record/job.h"
#include "engine/work/readiness.h"

namespace hemline {
namespace {

/// Everything that the values of an edge are read from.
struct Reader {
    const ValuesOf& of;
    const EdgeWork& work;
    const std::vector<Step>& steps;
    std::vector<EdgeValue> values = {};
    std::map<EventId, const Event*> cut_events = {};  ///< first event of each cut that stands

    void find_cut_events();
    void add_readings();
    void add_pitch();
    void add_pieces();
    void add_answers();
    void add_problems();
    void add_accepted();

    void add_cut(const CutPiece& cut);
    /// Nothing is left to do but what the foreman does.
    [[nodiscard]] bool is_fitted() const;
    void signed_by(EdgeValue& value, EventId id) const;
};

std::string keyed(const std::string& of, const EdgeValue& value) {
    return of + ": " + value.value.english();
}

bool Reader::is_fitted() const {
    return work.finished || std::all_of(steps.begin(), steps.end(), [](const Step& step) {
               return step.done || step.rule->asks == Asks::tick;
           });
}

void Reader::signed_by(EdgeValue& value, EventId id) const {
    if (const auto event = cut_events.find(id); event != cut_events.end()) {
        value.by = event->second->by;
        value.clock = wall_time(*event->second);
    }
}

void Reader::find_cut_events() {
    std::set<EventId> cuts;
    for (const CutPiece& cut : work.cut) {
        cuts.insert(cut.id);
    }
    for (const Event& event : of.events) {
        if (cuts.count(event.id) > 0) {
            cut_events.emplace(event.id, &event);
        }
    }
}

void Reader::add_readings() {
    for (const RecordedReading& reading : work.readings) {
        if (reading.struck) {
            continue;
        }
        EdgeValue value;
        value.what = reading.of == ReadingOf::edge
                         ? say("Reading of the length")
                         : say("Reading of what is left for the last piece");
        value.value = reading.length;
        value.by = reading.by;
        value.clock = reading.clock;
        values.push_back(value);
    }
    const Verdict verdict = work.verdict(of.job.practice);
    EdgeValue value;
    value.what = say("Length to work with");
    value.value = verdict.length ? Text(*verdict.length) : say("none agreed");
    value.key = keyed("length", value);
    value.wanted = say("two readings at most {1} apart", CloseLength{verdict.allowed});
    if (verdict.agreement == Agreement::none || verdict.agreement == Agreement::once) {
        value.wanted = say("two readings");
    }
    if (!verdict.length) {
        value.outside = verdict.agreement == Agreement::none   ? say("Nobody has read it.")
                        : verdict.agreement == Agreement::once ? say("It was read only once.")
                                                               : explain(verdict);
    }
    if (verdict.length && value.outside.empty()) {
        value.outside = doubt_about_so_long(*verdict.length);
    }
    values.push_back(value);
}

Text range_words(const Text& least, const Text& most) {
    if (most.empty()) {
        return least.empty() ? Text() : say("at least {1}", least);
    }
    return least.empty() ? say("at most {1}", most) : say("at least {1}, at most {2}", least, most);
}

Text pitch_limits(const Trim& trim) {
    return range_words(trim.least ? Text(*trim.least) : Text(),
                       trim.most ? Text(*trim.most) : Text());
}

void Reader::add_pitch() {
    EdgeValue value;
    value.what = say("Pitch");
    value.value = work.edge.pitch ? Text(*work.edge.pitch) : say("not taken");
    value.key = keyed("pitch", value);
    if (const Trim* const trim = of.catalogue.of(work.edge); trim != nullptr && work.edge.pitch) {
        value.wanted = pitch_limits(*trim);
    }
    for (const PlanProblem& problem : of.plan.problems) {
        if (problem.edge == work.edge.id && problem.field == "pitch" &&
            problem.severity != Severity::note && work.edge.pitch) {
            value.outside = problem.what;
        }
    }
    for (const Event& event : of.events) {
        const auto* taken = std::get_if<PitchTaken>(&event.fact);
        if (taken != nullptr && taken->edge == work.edge.id && of.job.struck.count(event.id) == 0) {
            value.by = event.by;
            value.clock = wall_time(event);
        }
    }
    values.push_back(value);
}

Text cut_of(TrimRole role, int piece) {
    switch (role) {
        case TrimRole::wrap:
            return say("Fascia wrap, piece {1} cut", piece);
        case TrimRole::cleat:
            return say("Cleat, piece {1} cut", piece);
        case TrimRole::main:
            break;
    }
    return say("Trim, piece {1} cut", piece);
}

Text cuts_of(TrimRole role) {
    switch (role) {
        case TrimRole::wrap:
            return say("Fascia wrap, pieces cut");
        case TrimRole::cleat:
            return say("Cleat, pieces cut");
        case TrimRole::main:
            break;
    }
    return say("Trim, pieces cut");
}

void Reader::add_cut(const CutPiece& cut) {
    EdgeValue value;
    value.what = cut_of(cut.role, cut.piece);
    value.value = cut.cut;
    signed_by(value, cut.id);
    values.push_back(value);
}

void Reader::add_pieces() {
    for (const Run& run : of.plan.runs) {
        if (run.edge != work.edge.id) {
            continue;
        }
        EdgeValue value;
        value.what = cuts_of(run.role);
        const auto cut = std::count_if(work.cut.begin(), work.cut.end(),
                                       [&](const CutPiece& one) { return one.role == run.role; });
        value.value = Text(std::to_string(cut));
        value.wanted = say("{1} planned", run.pieces.size());
        value.key = keyed("pieces cut " + std::string(word_of(run.role)), value);
        const bool all = cut == static_cast<std::ptrdiff_t>(run.pieces.size());
        if (!all && is_fitted()) {
            value.outside = say("{1} pieces are cut, {2} are planned.", cut, run.pieces.size());
        } else if (!all) {  // under way: neither good nor bad yet
            value.value = say("{1} of {2}", cut, run.pieces.size());
            value.wanted = {};
        }
        values.push_back(value);
        for (const CutPiece& one : work.cut) {
            if (one.role == run.role) {
                add_cut(one);
            }
        }
    }
    if (work.spoiled > 0) {
        EdgeValue value;
        value.what = say("Pieces spoiled");
        value.value = Text(std::to_string(work.spoiled));
        values.push_back(value);
    }
}

void Reader::add_answers() {
    std::map<std::pair<std::string_view, int>, const Step*> asked;
    for (const Step& step : steps) {
        asked.emplace(std::pair<std::string_view, int>(step.rule->id, step.piece), &step);
    }
    for (const DoneStep& done : work.steps) {
        const StepSaid& said = done.step;
        if (said.answer.kind == AnswerKind::done && said.exception.empty()) {
            continue;
        }
        EdgeValue value;
        value.what = Text(said.step);
        value.value = answer_words(said.answer);
        value.key = keyed(said.step + " " + std::to_string(said.piece), value);
        value.outside = said.exception;
        value.noted_by = said.exception_by;
        value.by = done.by;
        value.clock = done.clock;
        const auto step = asked.find(std::pair<std::string_view, int>(said.step, said.piece));
        if (step != asked.end()) {
            value.what = step->second->action;
            value.wanted = limits_of(*step->second);
            if (value.outside.empty()) {
                value.outside = outside_practice(*step->second, said.answer);
            }
        }
        values.push_back(value);
    }
}

void Reader::add_problems() {
    for (const PlanProblem& problem : of.plan.problems) {
        if (problem.edge == work.edge.id && problem.field != "pitch" &&
            problem.severity == Severity::problem) {
            EdgeValue value;
            value.what = say("The plan");
            value.value = say("does not work out");
            value.key = "plan: " + problem.field;
            value.outside = problem.what;
            values.push_back(value);
        }
    }
}

void Reader::add_accepted() {
    for (EdgeValue& value : values) {
        const auto accepted =
            std::find_if(work.accepted.rbegin(), work.accepted.rend(),
                         [&](const AcceptedValue& one) { return one.value == value.key; });
        if (!value.outside.empty() && accepted != work.accepted.rend()) {
            value.accepted_by = accepted->by;
        }
    }
}

}  // namespace

std::vector<EdgeValue> edge_values(const ValuesOf& of, const EdgeWork& work,
                                   const std::vector<Step>& steps) {
    Reader reader{of, work, steps};
    reader.find_cut_events();
    reader.add_readings();
    reader.add_pitch();
    reader.add_problems();
    reader.add_pieces();
    reader.add_answers();
    reader.add_accepted();
    return reader.values;
}

std::vector<EdgeValue> not_accepted(const std::vector<EdgeValue>& values) {
    std::vector<EdgeValue> left;
    std::copy_if(
        values.begin(), values.end(), std::back_inserter(left),
        [](const EdgeValue& value) { return !value.outside.empty() && value.accepted_by.empty(); });
    return left;
}

std::vector<const DoneStep*> exceptions_on(const EdgeWork& work) {
    std::vector<const DoneStep*> exceptions;
    for (const DoneStep& done : work.steps) {
        if (!done.step.exception.empty()) {
            exceptions.push_back(&done);
        }
    }
    return exceptions;
}

Text limits_of(const Step& step) {
    const auto length = [](std::optional<Length> limit) { return limit ? Text(*limit) : Text(); };
    const auto count = [](std::optional<std::int64_t> limit) {
        return limit ? Text(std::to_string(*limit)) : Text();
    };
    const bool by_length = step.length_least || step.length_most;
    return by_length ? range_words(length(step.length_least), length(step.length_most))
                     : range_words(count(step.count_least), count(step.count_most));
}

Text answer_words(const Answer& answer) {
    switch (answer.kind) {
        case AnswerKind::length:
            return answer.length;
        case AnswerKind::count:
            return Text(std::to_string(answer.count));
        case AnswerKind::seen:
            return say(answer.seen);
        case AnswerKind::done:
            break;
    }
    return say("done");
}

}  // namespace hemline
